package words

import (
	"math"
	"strconv"
)

// Unit is the word for one or for several of v. Only what is written as 1, with two
// decimals at most, is one: 0 trays, 0.5 trays, 1 tray, 1.5 trays.
func Unit(v float64, one, many string) string {
	if math.Abs(math.Abs(v)-1) < 0.005 {
		return one
	}
	return many
}

// Plural writes a quantity with its word: 1 batch, 12 batches, 2.5 trays.
func Plural[N int | int32 | float64](n N, one, many string) string {
	return with(Number(float64(n)), float64(n), one, many)
}

// Count writes a count with its word as plain text, for charts and terminals: the
// space may break and thousands are not set apart.
func Count(n int, one, many string) string {
	return strconv.Itoa(n) + " " + Unit(float64(n), one, many)
}

// Batches writes a sample: 1 batch, 12 batches.
func Batches(n int) string { return Plural(n, "batch", "batches") }

// Tenths writes a quantity to one decimal with its word: 16.5 uses.
func Tenths(v float64, one, many string) string {
	return with(TenthsNumber(v), Round(v, 1), one, many)
}

// TenthsNumber is Tenths without a word.
func TenthsNumber(v float64) string { return Number(Round(v, 1)) }

// Days writes days to halves: 6.5 days.
func Days(v float64) string { return with(DaysNumber(v), roundTo(v, 2), "day", "days") }

// DaysNumber is Days without the word.
func DaysNumber(v float64) string { return Number(roundTo(v, 2)) }

// with puts the word for v behind v as it is written.
func with(written string, v float64, one, many string) string {
	return written + NBSP + Unit(v, one, many)
}

// RoundPlants is a number of plants as it is shown, so that sums on a page add up.
func RoundPlants(v float64) float64 { return Round(v, 0) }
