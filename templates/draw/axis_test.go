package draw

import (
	"math"
	"strconv"
	"testing"
)

// A length is written as the decimal number nearest to it with one digit, the shortest way;
// nothing has no sign.
func TestPixels(t *testing.T) {
	for y, want := range map[float64]string{0: "0", 0.04: "0", -0.04: "0", 0.05: "0.1", -0.3: "-0.3", 12: "12", 35.44: "35.4", -12.06: "-12.1", 99.96: "100", 1e17: "100000000000000000"} {
		if got := pixels(y); got != want {
			t.Errorf("%g is written %s, want %s", y, got, want)
		}
	}
	for i := range 4000 {
		y := float64(i-2000) * 0.0371
		want := strconv.FormatFloat(math.Round(y*10)/10, 'f', -1, 64)
		if got := pixels(y); got != want && want != "-0" {
			t.Fatalf("%g is written %s, want %s", y, got, want)
		}
	}
}
