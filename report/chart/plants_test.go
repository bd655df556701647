package chart

import (
	"testing"

	"traybook/report/plants"
	"traybook/report/words"
)

// Every band of days late has its words.
func TestBandsAreNamed(t *testing.T) {
	for _, first := range plants.LeewayBands {
		if words.DaysLate(first) == "" {
			t.Errorf("the band from day %d has no name", first)
		}
	}
}
