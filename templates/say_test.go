package templates

import "testing"

// A word begins large whatever its letter, and stays text.
func TestCapital(t *testing.T) {
	for s, want := range map[string]string{"": "", "kale": "Kale", "épinard": "Épinard", "öland": "Öland", "капуста": "Капуста", "9 beds": "9 beds"} {
		if got := capital(s); got != want {
			t.Errorf("%q: %q, want %q", s, got, want)
		}
	}
}
