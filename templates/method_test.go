package templates

import "testing"

// A value worked out is told to four figures, one that was written as it is.
func TestShortened(t *testing.T) {
	for value, want := range map[string]string{"0.02235393965868012": "0.02235", "41": "41", "0.32": "0.32", "ymd": "ymd", "2-5": "2-5"} {
		if got := shortened(value); got != want {
			t.Errorf("%s: %s, want %s", value, got, want)
		}
	}
}
