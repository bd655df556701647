package words

import (
	"strings"

	"golang.org/x/text/currency"
)

// Money writes amounts in one currency.
type Money struct {
	code     string // ISO 4217; empty: none is written
	decimals int    // of its smallest coin
}

// NewMoney returns the writer for an ISO 4217 code; an unknown code has cents.
func NewMoney(code string) Money {
	code = strings.ToUpper(strings.TrimSpace(code))
	decimals := 2
	if u, err := currency.ParseISO(code); err == nil {
		decimals, _ = currency.Standard.Rounding(u)
	}
	return Money{code, decimals}
}

// Sum writes an amount to the smallest coin: USD 1,240.50.
func (m Money) Sum(v float64) string { return m.named(m.SumNumber(v)) }

// Each writes what one plant costs or is worth, to a tenth of the smallest coin:
// USD 0.123.
func (m Money) Each(v float64) string { return m.named(m.EachNumber(v)) }

// SumNumber is Sum without the currency, which stands in the head of a table.
func (m Money) SumNumber(v float64) string { return Fixed(v, m.decimals) }

// EachNumber is Each without the currency, likewise.
func (m Money) EachNumber(v float64) string { return Fixed(v, m.decimals+1) }

// SignedNumber writes a difference of money with its sign: +0.36.
func (m Money) SignedNumber(v float64) string { return Signed(v, m.decimals) }

// Code is the currency's code for the caption of a table; empty where none is written.
func (m Money) Code() string { return m.code }

// named puts the currency before an amount.
func (m Money) named(amount string) string {
	if m.code == "" {
		return amount
	}
	return m.code + NBSP + amount
}
