package report

import (
	"fmt"
	"strings"
	"testing"
)

// A note names every batch of a few, of many the first; how many there are it always says.
func TestListed(t *testing.T) {
	codes := func(n int) (all []string) {
		for i := range n {
			all = append(all, fmt.Sprint("B", i))
		}
		return all
	}
	for n, want := range map[int]string{
		0:                "0 batches",
		1:                "1 batch: B0",
		3:                "3 batches: B0, B1, B2",
		mostListed:       fmt.Sprintf("%d batches: %s", mostListed, strings.Join(codes(mostListed), ", ")),
		mostListed + 1:   fmt.Sprintf("%d batches: %s and 1 more", mostListed+1, strings.Join(codes(mostListed), ", ")),
		mostListed + 979: fmt.Sprintf("%d batches: %s and 979 more", mostListed+979, strings.Join(codes(mostListed), ", ")),
	} {
		if got := listed(codes(n)); got != want {
			t.Errorf("%d: %s, want %s", n, got, want)
		}
	}
}
