package templates

import (
	"strings"
	"testing"
)

// Up to the limit a batch's story tells every row of its logs; beyond it how many more
// there are and where they stand.
func TestLinesOfAStory(t *testing.T) {
	for n, want := range map[int]string{
		0:               "",
		1:               "Row &amp;.",
		3:               "Row &amp;; row &amp;; row &amp;.",
		mostLines:       "Row &amp;" + strings.Repeat("; row &amp;", mostLines-1) + ".",
		mostLines + 1:   "Row &amp;" + strings.Repeat("; row &amp;", mostLines-1) + "; and 1 more; all are in the log.",
		mostLines + 999: "Row &amp;" + strings.Repeat("; row &amp;", mostLines-1) + "; and 999 more; all are in the log.",
	} {
		if got := written(func(w *pen) { w.lineList(n, func(int) { w.put("row &amp;") }) }); got != want {
			t.Errorf("%d lines: %.40s ... %s", n, got, got[max(0, len(got)-60):])
		}
	}
}
