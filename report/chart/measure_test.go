package chart

import (
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"
)

// A page is read with the reader's own sans-serif. DejaVu Sans is the widest in
// common use: texts must not be measured narrower than it sets them. The widths
// are the sums of its advances in font units, 2048 to the em: DejaVu Sans 2.37,
// table hmtx.
func TestTextIsNotMeasuredTooNarrow(t *testing.T) {
	dejaVu := map[string]float64{
		"Lettuce Northlight, 50 cells, air-pruning": 40371,
		"Cost of a usable transplant, cents":        34481,
		"too few batches (1)":                       19928,
		"WWW MMM 100 %":                             19184,
	}
	for text, units := range dejaVu {
		least := units / 2048 * fontSize
		if got := textWidth(text, fontSize); got < least*0.98 || got > least*1.3 {
			t.Errorf("%q is %.1f wide, in DejaVu Sans %.1f", text, got, least)
		}
	}
}

func TestMeasureFontReadsTheSize(t *testing.T) {
	for _, font := range []string{"28px sans-serif", "bold 28px 'Some Face'", "normal normal 28px x"} {
		if got := measureFont("kale", font); got != textWidth("kale", 28) {
			t.Errorf("%q: %g", font, got)
		}
	}
}

// Lines are no wider than asked, and nothing but white space is lost.
func TestWrapKeepsEveryLetter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		name, room := rapid.String().Draw(t, "name"), rapid.Float64Range(30, 300).Draw(t, "room")
		lines := wrap(name, room)
		for _, l := range lines {
			if textWidth(l, fontSize) > room+1e-9 {
				t.Errorf("%q is wider than %g", l, room)
			}
			if !utf8.ValidString(l) {
				t.Errorf("%q cuts a letter", l)
			}
		}
		bare := func(s string) string { return strings.Join(strings.Fields(s), "") }
		if got, want := bare(strings.Join(lines, "")), bare(printable(name)); got != want {
			t.Errorf("%q became %q", want, got)
		}
	})
}

func TestClipMarksWhatItLeavesOut(t *testing.T) {
	if got := clip([]string{"a", "b", "c"}, 2); len(got) != 2 || got[1] != "b…" {
		t.Errorf("%q", got)
	}
}
