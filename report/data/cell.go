package data

import (
	"cmp"
	"strconv"
	"strings"
	"unicode/utf8"

	"traybook/records"
	"traybook/report/rate"
)

// Cell is one value of a table: text, a number, or nothing. The zero Cell is
// empty: there is no figure.
type Cell struct {
	text   string
	number float64
	kind   kind
}

// kind is what a cell holds, in the order in which cells sort. Empty cells stand first in
// a file, numbers before words: nothing else would let a column that holds both be put in
// one order.
type kind int

const (
	empty kind = iota
	number
	text
)

// Empty reports whether the cell holds nothing.
func (c Cell) Empty() bool { return c.kind == empty }

// String writes the cell as in the CSV file, unguarded: a decimal point, no
// exponent, no rounding.
func (c Cell) String() string {
	if c.kind == number {
		return string(c.appendNumber(nil))
	}
	return c.text
}

// appendNumber writes the number of a cell that holds one. Most are whole: those that a
// float64 holds to the last digit have a shorter way to the same text.
func (c Cell) appendNumber(out []byte) []byte {
	if c.kind != number {
		return out
	}
	if whole := int64(c.number); float64(whole) == c.number && -1<<53 < whole && whole < 1<<53 {
		return strconv.AppendInt(out, whole, 10)
	}
	return strconv.AppendFloat(out, c.number, 'f', -1, 64)
}

// formula are the signs with which a spreadsheet begins a formula, or takes a cell apart;
// some take the full-width forms for the same.
const formula = "=+-@\uff1d\uff0b\uff0d\uff20\t\r"

func firstRune(s string) rune {
	r, _ := utf8.DecodeRuneInString(s)
	return r
}

// guarded is the text of a cell as it is written: one that a spreadsheet would take for a
// formula gets a leading apostrophe.
func (c Cell) guarded() string {
	if c.kind == text && strings.ContainsRune(formula, firstRune(c.text)) {
		return "'" + c.text
	}
	return c.text
}

// compare orders cells: empty first, numbers as numbers, text by bytes.
func compare(a, b Cell) int {
	return cmp.Or(cmp.Compare(a.kind, b.kind), cmp.Compare(a.number, b.number), cmp.Compare(a.text, b.text))
}

// str is text; an empty one is no value. A blank in a log and a word that no one wrote are
// the same to a reader of CSV.
func str[S ~string](s S) Cell {
	if s == "" {
		return Cell{}
	}
	return Cell{text: string(s), kind: text}
}

// num is a number as it was figured, without rounding.
func num[N ~int | ~float64](v N) Cell {
	if v == 0 { // no minus zero
		return Cell{kind: number}
	}
	return Cell{number: float64(v), kind: number}
}

// maybe is a figure that may be missing: then the cell is empty, never 0.
func maybe[N int | float64](m records.Maybe[N]) Cell {
	if !m.Known {
		return Cell{}
	}
	return num(m.Value)
}

// date is ISO 8601, empty where it is unknown. A day is text to a reader of CSV and sorts
// as such, since a year has four digits.
func date(d records.Date) Cell { return str(d.String()) }

// Words, not 1 and 0: in a column beside shares a 1 would be taken for one.
func yes(b bool) Cell {
	if b {
		return str("yes")
	}
	return str("no")
}

// maybeYes is an answer that may not be known: neither yes nor no.
func maybeYes(m records.Maybe[bool]) Cell {
	if !m.Known {
		return Cell{}
	}
	return yes(m.Value)
}

// only keeps a number where there is one to speak of. Some figures are plain numbers in
// the report, with what says whether they mean anything in another field; here both become
// one cell.
func only(known bool, v float64) rate.Num { return rate.Num{Value: v, Known: known} }
