package templates

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"golang.org/x/text/currency"

	"traybook/records"
	"traybook/report"
)

// The signs of a number on a page: a space that does not break, a minus as wide
// as a plus, and what stands where there is no figure.
const (
	nbsp    = "\u00a0"
	minus   = "\u2212"
	noneYet = "–"
	tooFew  = "too few batches"
)

// fixed writes v rounded to some decimals, half away from zero, with thousands
// set apart by a comma and a typographic minus; never "minus nothing".
func fixed(v float64, decimals int) string {
	scale := math.Pow(10, float64(decimals))
	rounded := math.Round(v*scale*(1+1e-12)) / scale
	if math.IsNaN(rounded) || math.IsInf(rounded, 0) {
		return noneYet
	}
	digits, part, _ := strings.Cut(strconv.FormatFloat(math.Abs(rounded), 'f', decimals, 64), ".")
	for i := len(digits) - 3; i > 0; i -= 3 {
		digits = digits[:i] + "," + digits[i:]
	}
	if part != "" {
		digits += "." + part
	}
	if rounded < 0 {
		return minus + digits
	}
	return digits
}

// number writes a quantity with as many decimals as it needs, at most two.
func number(v float64) string {
	s := fixed(v, 2)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	return s
}

// whole writes a whole number.
func whole[N int | float64](n N) string { return fixed(float64(n), 0) }

// of writes a figure, or a dash where there is none.
func of(n report.Num, write func(float64) string) string {
	if !n.Known {
		return noneYet
	}
	return write(n.Value)
}

// percent writes a share of 1 as whole percent: 82 %.
func percent(v float64) string { return percentNumber(v) + nbsp + "%" }

func percentNumber(v float64) string { return fixed(100*v, 0) }

// points writes a difference of two shares in percentage points, signed.
func points(v float64) string { return signed(100*v, 0) + nbsp + unit(100*v, "point", "points") }

func signed(v float64, decimals int) string {
	s := fixed(v, decimals)
	if v > 0 && strings.Trim(s, "0.,") != "" {
		return "+" + s
	}
	return s
}

// unit is the word for one or for several of v as it is shown.
func unit(v float64, one, many string) string {
	if math.Round(math.Abs(v)) == 1 && math.Abs(math.Abs(v)-1) < 0.005 {
		return one
	}
	return many
}

// interval writes the two ends of an interval in brackets: (76 to 87); or that
// too few batches stand behind it.
func interval(low, high report.Num, write func(float64) string) string {
	if !low.Known || !high.Known {
		return tooFew
	}
	return "(" + write(low.Value) + nbsp + "to" + nbsp + write(high.Value) + ")"
}

// shareText writes a rate with its interval for a sentence: 82 % (76 to 87), or
// 82 % (too few batches for an interval); where there are several batches but none
// of one kind to show how batches differ, it says that.
func shareText(s report.Rate) string {
	switch {
	case !s.Share.Known:
		return "not known"
	case s.Low.Known && s.High.Known:
		return percent(s.Share.Value) + " " + interval(s.Low, s.High, percentNumber)
	case s.Batches >= report.FewBatches:
		return percent(s.Share.Value) + " (no range: too few batches are alike)"
	}
	return percent(s.Share.Value) + " (" + tooFew + " for an interval)"
}

// plural writes a count with its word: 1 batch, 12 batches.
func plural[N int | float64](n N, one, many string) string {
	return number(float64(n)) + nbsp + unit(float64(n), one, many)
}

// tenths writes a quantity to one decimal with its word: 16.5 uses.
func tenths(v float64, one, many string) string {
	v = math.Round(v*10) / 10
	return number(v) + nbsp + unit(v, one, many)
}

func tenthsNumber(v float64) string { return number(math.Round(v*10) / 10) }

func batchCount(n int) string { return plural(n, "batch", "batches") }

// days writes days to halves: 6.5 days.
func days(v float64) string {
	half := math.Round(v*2) / 2
	return number(half) + nbsp + unit(half, "day", "days")
}

func daysNumber(v float64) string { return number(math.Round(v*2) / 2) }

// money writes in one currency.
type money struct {
	code     string
	decimals int // of its smallest coin
}

// newMoney returns the writer for an ISO 4217 code; an unknown code has cents.
func newMoney(code string) money {
	code = strings.ToUpper(strings.TrimSpace(code))
	decimals := 2
	if u, err := currency.ParseISO(code); err == nil {
		decimals, _ = currency.Standard.Rounding(u)
	}
	return money{code, decimals}
}

// sum writes an amount to the smallest coin: USD 1,240.50.
func (m money) sum(v float64) string { return m.with(m.sumNumber(v)) }

// each writes what one plant costs or is worth, to tenths of a cent: USD 0.123.
func (m money) each(v float64) string { return m.with(m.eachNumber(v)) }

func (m money) sumNumber(v float64) string  { return fixed(v, m.decimals) }
func (m money) eachNumber(v float64) string { return fixed(v, m.decimals+1) }

func (m money) with(s string) string {
	if m.code == "" {
		return s
	}
	return m.code + nbsp + s
}

// longDate writes a date for a sentence: 14 March 2026.
func longDate(d records.Date) string {
	if !d.Known() {
		return "no date"
	}
	return fmt.Sprintf("%d%s%s %d", d.Time().Day(), nbsp, d.Month(), d.Year())
}

// isoDate writes a date for a table: 2026-03-14.
func isoDate(d records.Date) string {
	if !d.Known() {
		return noneYet
	}
	return d.String()
}

// monthName is the name of month 1 to 12.
func monthName(m int) string { return time.Month(m).String() }

// degrees writes a temperature in the book's own unit.
func degrees(fahrenheit bool) func(celsius float64) string {
	if fahrenheit {
		return func(c float64) string { return fixed(c*9/5+32, 0) + nbsp + "°F" }
	}
	return func(c float64) string { return fixed(c, 0) + nbsp + "°C" }
}

// roundPlants is a number of plants as it is shown, so that sums on a page add up.
func roundPlants(v float64) float64 { return math.Round(v) }
