package words

import (
	"math"
	"strings"

	"traybook/report/rate"
)

// The signs of a number on a page.
const (
	NBSP   = "\u00a0" // a space that does not break
	Minus  = "\u2212" // as wide as a plus
	None   = "–"      // what stands where there is no figure
	TooFew = "too few batches"
)

// hair is the part of a number by which a product of float64 may lie below the half
// that its factors mean: 100 x 0.285 is 28.499999999999996.
const hair = 1e-12

// Round rounds to some decimals, half away from zero.
func Round(v float64, decimals int) float64 { return roundTo(v, math.Pow10(decimals)) }

// roundTo rounds to whole parts of 1: 2 for halves, 10 for tenths. Nothing has no sign.
func roundTo(v, parts float64) float64 {
	if r := math.Round(v*parts*(1+hair)) / parts; r != 0 {
		return r
	}
	return 0
}

// Fixed writes v rounded to some decimals with thousands set apart by a comma and a
// typographic minus; never "minus nothing". What is no finite number is a dash.
func Fixed(v float64, decimals int) string {
	var room [32]byte
	return string(AppendFixed(room[:0], v, decimals))
}

// Number writes a quantity with as many decimals as it needs, at most two.
func Number(v float64) string {
	var room [32]byte
	return string(AppendNumber(room[:0], v))
}

// Whole writes a whole number.
func Whole[N int | int32 | float64](n N) string { return Fixed(float64(n), 0) }

// Signed writes a difference with its sign; what rounds to nothing has none.
func Signed(v float64, decimals int) string {
	s := Fixed(v, decimals)
	if v > 0 && strings.Trim(s, "0.,") != "" {
		return "+" + s
	}
	return s
}

// Percent writes a share of 1 as whole percent: 82 %.
func Percent(v float64) string { return PercentNumber(v) + NBSP + "%" }

// PercentNumber is Percent without its sign: 82.
func PercentNumber(v float64) string { return Fixed(100*v, 0) }

// Of writes a figure in a way, or a dash where there is none.
func Of(n rate.Num, write func(float64) string) string {
	if !n.Known {
		return None
	}
	return write(n.Value)
}
