package templates

import (
	"fmt"
	"html/template"
	"strings"
	"testing"
)

// Things are cut in order, each part within its limit, the first within its own; what is
// too long by itself is a part.
func TestChunks(t *testing.T) {
	self := func(n int) int { return n }
	for _, tt := range []struct {
		of          []int
		first, most int
		want        string
	}{
		{nil, 10, 10, "[]"},
		{[]int{4, 6}, 10, 10, "[[4 6]]"},
		{[]int{4, 7}, 10, 10, "[[4] [7]]"},
		{[]int{4, 4, 4, 4, 4}, 5, 12, "[[4] [4 4 4] [4]]"},
		{[]int{30, 1, 30}, 10, 10, "[[30] [1] [30]]"},
		{[]int{3, 3}, -1, 10, "[[3] [3]]"},
	} {
		if got := fmt.Sprint(chunks(tt.of, self, tt.first, tt.most)); got != tt.want {
			t.Errorf("%v within %d and %d: %s, want %s", tt.of, tt.first, tt.most, got, tt.want)
		}
	}
}

// One folder below, a link leads up first; one to the page itself leads to the page.
func TestDeeper(t *testing.T) {
	in := template.HTML(`<a href="../a.html#x">a</a> <a href="#y">b</a> <use href="#g"/> c`)
	if got := deeper(in, "p.html"); got != `<a href="../../a.html#x">a</a> <a href="../p.html#y">b</a> <use href="#g"/> c` {
		t.Error(got)
	}
}

// cutPage is a page of one table with so many rows of about a kilobyte of each crop.
func cutPage(t *testing.T, each int, crops ...string) (*page, *rows) {
	t.Helper()
	p := newPage(newSite(houseReport(t), nil), spec{path: "2025/germination.html", title: "Germination, 2025", season: 2025})
	table := p.rows("emergence", "germ", "All rows.", "emergence", col{Head: "Name"})
	for _, crop := range crops {
		table.under("", "")
		table.of(crop)
		for i := range each {
			table.add("", "", say("%s %s", name(crop), strings.Repeat("x", 900)+fmt.Sprint(i)))
		}
	}
	p.cutLong()
	return p, table
}

// A page that is too long keeps the first row of each crop, says how many there are and
// leads to all of them; a short one, and one crop alone, stay.
func TestCutByCrop(t *testing.T) {
	p, table := cutPage(t, 200, "lettuce", "leek")
	if len(p.extras) != 2 || rowsIn(table) != 2 {
		t.Fatalf("%d pages, %d rows stay", len(p.extras), rowsIn(table))
	}
	if got := bare(table.Notes[len(table.Notes)-1]); got != "2 of 400 rows: the first of each crop. The others stand on a page for each crop. All are in emergence.csv." {
		t.Error(got)
	}
	if got := bare(p.byCrop); got != "Leek and Lettuce" {
		t.Error(got)
	}
	leek := p.extras[0]
	view := leek.view.(partPage)
	if leek.spec.path != "2025/germination/leek.html" || rowsIn(view.Blocks[0].Rows) != 200 || view.after.Label != "Lettuce" || view.before != nil {
		t.Errorf("%s has %d rows, after it %+v", leek.spec.path, rowsIn(view.Blocks[0].Rows), view.after)
	}
	if p, table := cutPage(t, 100, "lettuce", "leek"); len(p.extras) > 0 || rowsIn(table) != 200 {
		t.Errorf("%d pages of a page that is short enough", len(p.extras))
	}
}

// Rows that belong to one crop are cut by number, in order, none left out.
func TestCutByNumber(t *testing.T) {
	p, table := cutPage(t, 700, "lettuce")
	n := rowsIn(table)
	if got, want := bare(table.Notes[len(table.Notes)-1]), fmt.Sprintf("The first %d of 700 rows; the others: %d to ", n, n+1); !strings.HasPrefix(got, want) || !strings.HasSuffix(got, "All are in emergence.csv.") {
		t.Errorf("%s, want %s", got, want)
	}
	for i, x := range p.extras {
		if want := fmt.Sprintf("2025/germination/emergence-%d.html", i+2); x.spec.path != want {
			t.Errorf("%s, want %s", x.spec.path, want)
		}
		for _, g := range x.view.(partPage).Blocks[0].Rows.Groups {
			for _, r := range g.Rows {
				if !strings.HasSuffix(string(r.Cells[0]), fmt.Sprint("x", n)) {
					t.Fatalf("%s: row %d is %s", x.spec.path, n, r.Cells[0][len(r.Cells[0])-8:])
				}
				n++
			}
		}
	}
	if n != 700 {
		t.Errorf("%d rows on all pages", n)
	}
}
