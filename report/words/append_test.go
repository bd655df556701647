package words

import (
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"traybook/records"
)

// numbers are those at which writing might go wrong, and many between them.
func numbers() []float64 {
	all := []float64{0, math.Copysign(0, -1), 0.004, 0.005, 0.05, 0.285, 0.999, 0.9995, 1, 1.005, 9.995, 10, 99.5, 100, 999.5, 999.995, 1000, 12345.678, 999999.5, 1e6,
		1e11, 6e11, 1e13 - 0.5, 1e14, 1e14 + 1, 123456789012345.67, 1e15, 1 << 53, 1e17, 1e22, 1.5e300, math.MaxFloat64, math.SmallestNonzeroFloat64, math.Inf(1), math.NaN()}
	rnd := rand.New(rand.NewPCG(1, 2))
	for range 2000 {
		all = append(all, rnd.Float64(), math.Round(rnd.Float64()*1e6)/1000, math.Exp(rnd.Float64()*60-15))
	}
	for _, v := range all {
		all = append(all, -v)
	}
	return all
}

// byStrconv is how a number is written with the standard library alone: its digits, then
// the commas.
func byStrconv(v float64, decimals int) string {
	v = Round(v, decimals)
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return None
	}
	digits, part, _ := strings.Cut(strconv.FormatFloat(math.Abs(v), 'f', decimals, 64), ".")
	for i := len(digits) - 3; i > 0; i -= 3 {
		digits = digits[:i] + "," + digits[i:]
	}
	if part != "" {
		digits += "." + part
	}
	if v < 0 {
		return Minus + digits
	}
	return digits
}

// A number has the digits that strconv gives it, whatever its size.
func TestDigitsAreThoseOfStrconv(t *testing.T) {
	for _, v := range numbers() {
		for decimals := range 12 {
			if got, want := Fixed(v, decimals), byStrconv(v, decimals); got != want {
				t.Fatalf("%v to %d decimals: %q, want %q", v, decimals, got, want)
			}
		}
	}
}

// What is appended is what the function without Append writes, behind what was there.
func TestAppended(t *testing.T) {
	usd, yen, none := NewMoney("USD"), NewMoney("JPY"), NewMoney("")
	before := []byte("before 1.00 ")
	for i, v := range numbers() {
		d := records.Date(i * 37 % 900000)
		for name, c := range map[string]struct {
			got  []byte
			want string
		}{
			"AppendFixed":      {AppendFixed(before, v, 3), Fixed(v, 3)},
			"AppendNumber":     {AppendNumber(before, v), Number(v)},
			"AppendWhole":      {AppendWhole(before, v), Whole(v)},
			"AppendPlural":     {AppendPlural(before, v, "tray", "trays"), Plural(v, "tray", "trays")},
			"AppendDays":       {AppendDays(before, v), Days(v)},
			"AppendPercent":    {AppendPercent(before, v), Percent(v)},
			"AppendLongDate":   {AppendLongDate(before, d), LongDate(d)},
			"AppendSum":        {usd.AppendSum(before, v), usd.Sum(v)},
			"AppendEach":       {yen.AppendEach(before, v), yen.Each(v)},
			"AppendSumNumber":  {yen.AppendSumNumber(before, v), yen.SumNumber(v)},
			"AppendEachNumber": {none.AppendEachNumber(before, v), none.EachNumber(v)},
		} {
			if string(c.got) != string(before)+c.want {
				t.Fatalf("%s of %v: %q, want %q", name, v, c.got, c.want)
			}
		}
	}
}
