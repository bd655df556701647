package chart

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// Every shape is drawn a second time, narrow: as wide as a phone, with the same names
// as text, the same bytes each time.
func TestNarrowDrawings(t *testing.T) {
	b := bundle(t)
	var specs []Spec
	for i, words := range []string{"lettuce", hostile[0], hostile[1], strings.Repeat("word ", 40)} {
		for _, shape := range shapes(words, 0.5) {
			for _, s := range shape.both() {
				s.Name = fmt.Sprintf("%s-%d", s.Name, i)
				specs = append(specs, s)
			}
		}
	}
	drawn := drawAll(t, DrawerOptions{Bundle: b}, specs)
	for i, d := range drawn {
		wellFormed(t, d.SVG)
		want := fmt.Sprintf(`viewBox="0 0 %d `, specs[i].Width)
		if !strings.Contains(d.SVG, want) || strings.Contains(d.SVG, "<script") || strings.Contains(d.SVG, "<img") {
			t.Errorf("%s: not %s, or markup of a name in it", d.Name, want)
		}
		if narrow := strings.Contains(d.Name, narrowSuffix); narrow != (specs[i].Width < 400) {
			t.Errorf("%s is %d wide", d.Name, specs[i].Width)
		}
	}
	if !slices.Equal(drawn, drawAll(t, DrawerOptions{Bundle: b, Workers: 2}, specs)) {
		t.Error("drawn again, a chart differs")
	}
}

// The narrow drawing says what the wide one says.
func TestNarrowSaysTheSame(t *testing.T) {
	for _, s := range shapes("lettuce", 0.5) {
		if n := *s.narrow; n.Label != s.Label || n.Title != s.Title || n.Name != NarrowName(s.Name) {
			t.Errorf("%s: label %q, title %q", n.Name, n.Label, n.Title)
		}
	}
}
