package records

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"
)

// plainSlips is the optimal string alignment distance by its whole table, as its recurrence is
// written down (L. Boytsov, Indexing methods for approximate dictionary searching, 2011).
func plainSlips(x, y []rune) int {
	d := make([][]int, len(x)+1)
	for i := range d {
		d[i] = make([]int, len(y)+1)
		for j := range d[i] {
			switch {
			case i == 0 || j == 0:
				d[i][j] = i + j
			default:
				other := 1
				if x[i-1] == y[j-1] {
					other = 0
				}
				d[i][j] = min(d[i-1][j]+1, d[i][j-1]+1, d[i-1][j-1]+other)
				if i > 1 && j > 1 && x[i-1] == y[j-2] && x[i-2] == y[j-1] {
					d[i][j] = min(d[i][j], d[i-2][j-2]+1)
				}
			}
		}
	}
	return d[len(x)][len(y)]
}

// someWord is a word of few letters, so that many are near, some of them of two bytes.
func someWord(luck *rand.Rand, most int) string {
	var s strings.Builder
	for range luck.IntN(most + 1) {
		s.WriteRune([]rune("abé1")[luck.IntN(4)])
	}
	return s.String()
}

// The short cut through the table finds what the whole table holds, up to three slips.
func TestSlipsAreThoseOfTheWholeTable(t *testing.T) {
	luck, near := rand.New(rand.NewPCG(1, 2)), 0
	for range 20_000 {
		a, b := someWord(luck, 9), someWord(luck, 9)
		want := min(plainSlips([]rune(a), []rune(b)), tooFar)
		if got := slips(a, b); got != want {
			t.Fatalf("%q and %q: %d slips, want %d", a, b, got, want)
		}
		if want < tooFar {
			near++
		}
	}
	if near < 1000 {
		t.Errorf("%d pairs are near", near)
	}
	if got := slips(strings.Repeat("a", longestNear+1), strings.Repeat("a", longestNear)); got != tooFar {
		t.Errorf("a page of text is %d slips off", got)
	}
}

// Looking names up finds for each the same one before it as setting it beside each.
func TestNeighboursAreThoseOfAllPairs(t *testing.T) {
	luck, found := rand.New(rand.NewPCG(3, 4)), 0
	var names []string
	seen := newNeighbours()
	for i := range 1500 {
		name, want := someWord(luck, 14), -1
		for j, before := range names {
			if nearlySame(before, name) {
				want = j
				break
			}
		}
		if got := seen.first(name, func(j int) bool { return nearlySame(names[j], name) }); got != want {
			t.Fatalf("%q: found %d, want %d", name, got, want)
		}
		if want >= 0 {
			found++
		}
		names = append(names, name)
		seen.add(name, i)
	}
	if found < 100 {
		t.Errorf("%d are near", found)
	}
}

// Thousands of crops and varieties that are near one another, and names as long as a
// page, are compared in passing, and what is found of the first of them is told.
func TestThousandsOfNearNames(t *testing.T) {
	var text strings.Builder
	text.WriteString("batch,sown,crop,variety,tray,trays\n")
	for i := range 6000 {
		fmt.Fprintf(&text, "B%d,2025-03-03,crop %c%c%c,%s,Q,1\n", i, 'a'+i%20, 'a'+i/20%20, 'a'+i/400, strings.Repeat(string('a'+rune(i%25)), 9000*(i%2)+5))
	}
	_, problems := load(map[string]string{"sowings.csv": text.String()})
	if got := counted(problems); got["warning near-name"] < 5000 || len(got) != 1 {
		t.Error(got)
	}
}
