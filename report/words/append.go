package words

import (
	"bytes"
	"math"
	"strconv"

	"traybook/records"
)

// The functions of this file write as those of the same name without Append do, behind
// what already stands in out. A page of many numbers makes no string of each.

// AppendFixed writes as Fixed does.
func AppendFixed(out []byte, v float64, decimals int) []byte {
	rounded := Round(v, decimals)
	if math.IsNaN(rounded) || math.IsInf(rounded, 0) {
		return append(out, None...)
	}
	if rounded < 0 {
		out = append(out, Minus...)
	}
	var room [32]byte
	digits := appendDigits(room[:0], math.Abs(rounded), decimals)
	whole := len(digits)
	if decimals > 0 {
		whole -= decimals + 1
	}
	for i, digit := range digits[:whole] {
		if i > 0 && (whole-i)%3 == 0 {
			out = append(out, ',')
		}
		out = append(out, digit)
	}
	return append(out, digits[whole:]...)
}

// mostExact is below what a float64 holds to the last digit, with room for a digit that
// its rounding may cost: up to it the digits of a number are those of a whole number of
// its smallest parts.
const mostExact = 1e14

// appendDigits writes a number that is rounded already, 0 or above, as strconv does, which
// takes several times as long.
func appendDigits(out []byte, rounded float64, decimals int) []byte {
	parts := math.Round(rounded * math.Pow10(decimals))
	if decimals < 0 || decimals > 9 || parts > mostExact {
		return strconv.AppendFloat(out, rounded, 'f', decimals, 64)
	}
	from := len(out)
	out = strconv.AppendInt(out, int64(parts), 10)
	if decimals == 0 {
		return out
	}
	for len(out)-from <= decimals { // 5 hundredths are 0.05
		out = append(out, 0)
		copy(out[from+1:], out[from:])
		out[from] = '0'
	}
	out = append(out, 0)
	point := len(out) - 1 - decimals
	copy(out[point+1:], out[point:])
	out[point] = '.'
	return out
}

// AppendNumber writes as Number does.
func AppendNumber(out []byte, v float64) []byte {
	from := len(out)
	out = AppendFixed(out, v, 2)
	if bytes.IndexByte(out[from:], '.') < 0 {
		return out // what is no number
	}
	kept := bytes.TrimRight(bytes.TrimRight(out[from:], "0"), ".")
	return out[:from+len(kept)]
}

// AppendWhole writes as Whole does.
func AppendWhole[N int | int32 | float64](out []byte, n N) []byte {
	return AppendFixed(out, float64(n), 0)
}

// AppendPlural writes as Plural does.
func AppendPlural[N int | int32 | float64](out []byte, n N, one, many string) []byte {
	out = append(AppendNumber(out, float64(n)), NBSP...)
	return append(out, Unit(float64(n), one, many)...)
}

// AppendDays writes as Days does.
func AppendDays(out []byte, v float64) []byte {
	days := roundTo(v, 2)
	out = append(AppendNumber(out, days), NBSP...)
	return append(out, Unit(days, "day", "days")...)
}

// AppendPercent writes as Percent does.
func AppendPercent(out []byte, v float64) []byte {
	return append(AppendFixed(out, 100*v, 0), NBSP+"%"...)
}

// AppendLongDate writes as LongDate does.
func AppendLongDate(out []byte, d records.Date) []byte {
	if !d.Known() {
		return append(out, "no date"...)
	}
	year, month, day := d.Time().Date()
	out = append(strconv.AppendInt(out, int64(day), 10), NBSP...)
	out = append(append(out, month.String()...), ' ')
	return strconv.AppendInt(out, int64(year), 10)
}

// AppendSum writes as Sum does.
func (m Money) AppendSum(out []byte, v float64) []byte { return m.append(out, v, m.decimals) }

// AppendEach writes as Each does.
func (m Money) AppendEach(out []byte, v float64) []byte { return m.append(out, v, m.decimals+1) }

// AppendSumNumber writes as SumNumber does.
func (m Money) AppendSumNumber(out []byte, v float64) []byte {
	return AppendFixed(out, v, m.decimals)
}

// AppendEachNumber writes as EachNumber does.
func (m Money) AppendEachNumber(out []byte, v float64) []byte {
	return AppendFixed(out, v, m.decimals+1)
}

// append writes an amount behind its currency.
func (m Money) append(out []byte, v float64, decimals int) []byte {
	if m.code != "" {
		out = append(append(out, m.code...), NBSP...)
	}
	return AppendFixed(out, v, decimals)
}
