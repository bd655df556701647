package templates

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"traybook/report"
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
	long := strings.Repeat("a", mostLineBytes/2-10)
	if got := written(func(w *pen) { w.lineList(3, func(int) { w.put(long) }) }); len(got) > mostLineBytes+60 || !strings.HasSuffix(got, "a; and 1 more; all are in the log.") {
		t.Errorf("long lines: %d bytes, ending in %s", len(got), got[len(got)-60:])
	}
}

// A batch with thousands of rows in each log, all with long notes, is told on a page that
// opens on a telephone, and so are many with rows enough for a story.
func TestStoriesOfManyRows(t *testing.T) {
	for name, of := range map[string]struct {
		batches, counts, outs int
		note                  string
	}{
		"one with everything": {1, 3000, 3000, strings.Repeat(`"'&<`, 1600)},
		"many with sales":     {150, 1, 190, ""},
		"many with notes":     {60, 12, 12, strings.Repeat("a word on it ", 60)},
	} {
		book := fstest.MapFS{}
		logs := map[string]*strings.Builder{}
		row := func(log, format string, args ...any) {
			if logs[log] == nil {
				logs[log] = &strings.Builder{}
			}
			fmt.Fprintf(logs[log], format+"\n", args...)
		}
		note := `"` + strings.ReplaceAll(of.note, `"`, `""`) + `"`
		row("trays.csv", "tray,kind,cells\nC72,solid-wall,72")
		row("sowings.csv", "batch,sown,crop,variety,tray,trays,note")
		row("counts.csv", "batch,date,tray,emerged,note")
		row("scores.csv", "batch,date,looked,usable,note")
		row("out.csv", "batch,date,plants,to,note")
		for b := range of.batches {
			row("sowings.csv", "B%d,2025-03-01,kale,Red,C72,9000,%s", b, note)
			for i := range of.counts {
				row("counts.csv", "B%d,2025-03-%02d,%d,70,%s", b, 12+i%3, i+1, note)
				row("scores.csv", "B%d,2025-04-%02d,20,%d,%s", b, 1+i%28, i%20, note)
			}
			for i := range of.outs {
				row("out.csv", "B%d,2025-05-%02d,40,sold,%s", b, 1+i%28, note)
			}
		}
		for log, text := range logs {
			book[log] = &fstest.MapFile{Data: []byte(text.String())}
		}
		r := reportOf(t, book, report.Options{})
		if len(r.Book.Outs) != of.batches*of.outs || len(r.Book.Counts) != of.batches*of.counts {
			t.Fatalf("%s: %d rows of out.csv are read, %v", name, len(r.Book.Outs), r.Problems[:1])
		}
		b := buildOf(t, r, nil)
		told := 0
		for page, body := range b.pages {
			if len(body) > mostOfPage {
				t.Errorf("%s: %s takes %d bytes", name, page, len(body))
			}
			told += strings.Count(body, `<article class="rec"`)
		}
		if told != of.batches {
			t.Errorf("%s: %d batches are told", name, told)
		}
	}
}
