package records

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
)

// Whatever one change does to a good book, there is no panic, and each row of the book as
// it was is still there and says the same, or it is the one that was touched and says
// what now stands in it, or a message names it or the row that it hangs on.
func TestOneChange(t *testing.T) {
	kinds, told, same, times := map[string]int{}, 0, 0, uint64(200)
	if testing.Short() {
		times = 20
	}
	for _, folder := range []string{"../examples/tiny", "../examples/poor/sowings-only", "../templates/testdata/house"} {
		g := goodBook(t, folder)
		for seed := range times {
			c := g.changed(rand.New(rand.NewPCG(seed, 12)))
			b, problems := loadChanged(t, g, c)
			kinds[c.kind]++
			if why := unexplained(g, c, b, problems); why != "" {
				t.Errorf("%s, seed %d: %v: %s\n%v", folder, seed, c, why, problems)
			}
			addUp(t, b)
			if len(problems) > 0 {
				told++
			} else if len(missing(g.says, saying(b))) == 0 {
				same++
			}
		}
	}
	if !testing.Short() && (len(kinds) < 10 || told < 250 || same < 50) { // else the changes have lost their bite
		t.Errorf("%v, %d told, %d the same", kinds, told, same)
	}
}

func loadChanged(t *testing.T, g good, c mishap) (*Book, []Problem) {
	t.Helper()
	defer func() {
		if p := recover(); p != nil {
			t.Fatalf("%s, %v: %v", g.name, c, p)
		}
	}()
	return load(c.files)
}

// said is a row of a log: which, and what it says.
type said struct{ file, row string }

// missing are the rows of one book that another has not, each as often as it is missing.
func missing(of, from map[string][]string) (all []said) {
	for file, rows := range of {
		has := map[string]int{}
		for _, r := range from[file] {
			has[r]++
		}
		for _, r := range rows {
			if has[r]--; has[r] < 0 {
				all = append(all, said{file, r})
			}
		}
	}
	return all
}

// unexplained says what a change did to a book without a word; empty where all is
// accounted for.
func unexplained(g good, c mishap, b *Book, problems []Problem) string {
	if i := slices.IndexFunc(problems, func(p Problem) bool { return p.Severity == Fatal }); i >= 0 {
		if problems[i].File == c.file {
			return ""
		}
		return "nothing is built for a fault elsewhere"
	}
	after := saying(b)
	lost, gained := missing(g.says, after), missing(after, g.says)
	switch {
	case c.file == "book.csv":
		return settingsChanged(g, c, b, lost, problems)
	case c.kind == "a file deleted" || c.kind == "a file emptied" || c.kind == "a file cut" || slices.Contains(c.lines, 1):
		return logChanged(g, c, b, lost, gained, problems)
	}
	for _, r := range lost {
		if !g.explains(c, r, gained, problems) {
			return "lost without a word: " + r.row
		}
	}
	for _, r := range gained {
		if r.file != c.file {
			return "a row of another file has changed: " + r.row
		}
	}
	if len(problems) == 0 {
		return quietly(g, c, b, lost, gained)
	}
	if len(gained) > len(c.lines)+1 {
		return fmt.Sprint("more rows than were touched: ", gained)
	}
	return ""
}

// explains reports whether a row that is gone is one that was touched, if a message or a
// changed row stands in its place, has an error of its own, or hangs on the batch of such a
// row.
func (g good) explains(c mishap, r said, gained []said, problems []Problem) bool {
	line := 2 + slices.Index(g.says[r.file], r.row)
	if r.file == c.file && slices.Contains(c.lines, line) && (len(gained) > 0 || strings.Contains(c.kind, "deleted")) {
		return true
	}
	near := func(p Problem) bool {
		at := line
		if r.file == c.file && line > c.lines[0] {
			at += c.shift
		}
		return p.File == r.file && (p.Line == at || r.file == c.file && slices.Contains(c.lines, line) && p.Line >= line && p.Line <= line+1) &&
			(p.Severity == Error || p.Check == "repeats")
	}
	return slices.ContainsFunc(problems, near) || g.hangs(c, r, problems)
}

// hangs reports whether a row is of the batch of a sowing that was touched and left out.
func (g good) hangs(c mishap, r said, problems []Problem) bool {
	if c.file != "sowings.csv" || !slices.ContainsFunc(problems, func(p Problem) bool { return p.File == c.file && p.Severity == Error }) {
		return false
	}
	for _, line := range c.lines {
		if line < 2 || line > len(g.rows[c.file]) {
			continue
		}
		code := strings.ToLower(g.rows[c.file][line-1][slices.Index(g.rows[c.file][0], "batch")])
		if slices.Contains(strings.Split(r.row, "\x1f"), code) {
			return true
		}
	}
	return false
}

// quietly checks a change of which no message tells.
func quietly(g good, c mishap, b *Book, lost, gained []said) string {
	told := fmt.Sprintf("%d rows gone, %d new, and no word: %q, %q", len(lost), len(gained), lost, gained)
	want := [2]int{0, 0}
	switch c.kind {
	case "a row deleted":
		want = [2]int{1, 0}
	case "a row twice":
		if want = [2]int{0, 1}; c.file != "counts.csv" && c.file != "costs.csv" && c.file != "chamber.csv" {
			return "a row stands twice, and no word"
		}
	case "rows swapped", "a row moved":
	case "a copy of a file":
		return "a copy of a file, and no word"
	default:
		return quietCell(g, c, b, lost, gained, told)
	}
	if [2]int{len(lost), len(gained)} != want {
		return told
	}
	return ""
}

// quietCell checks a change of a cell, or of a byte, of which no message tells: what the
// row says differs in the changed column alone, and differs where the cell does.
func quietCell(g good, c mishap, b *Book, lost, gained []said, told string) string {
	if len(lost) != len(gained) || len(lost) > 1 {
		if strings.HasPrefix(c.kind, "a byte") && len(lost) <= len(c.lines) && len(gained) <= len(lost)+1 {
			return "" // a line end is gone, or one more: both rows are whole
		}
		return told
	}
	if c.kind != "a cell" {
		return ""
	}
	file := b.Files[slices.IndexFunc(b.Files, func(f File) bool { return f.Name == c.file })]
	head := g.rows[c.file][0][c.col]
	if len(lost) == 0 {
		if was := g.rows[c.file][c.lines[0]-1][c.col]; !alike(head, was, c.cell) {
			return fmt.Sprintf("%q became %q, which says nothing else", was, c.cell)
		}
		return ""
	}
	before, now := strings.Split(lost[0].row, "\x1f"), strings.Split(gained[0].row, "\x1f")
	for i, col := range file.Columns {
		if col != canonicalHeader(head, logOf(c.file)) && before[i] != now[i] {
			return fmt.Sprintf("column %s became %q although %s was changed", col, now[i], head)
		}
	}
	return ""
}

// alike reports whether two cells of a column say the same: in another case, with other
// space, as another way to write a number, or as what a blank stands for.
func alike(col, a, b string) bool {
	standard := map[string]string{"seeds_per_cell": "1", "start": "seed", "task": "care", "last": "no"}
	plainest := func(s string) string {
		s = strings.ToLower(strings.Join(strings.Fields(s), " "))
		if s == "" {
			s = standard[col]
		}
		if yes, ok := yesNo[s]; ok && (col == "last" || col == "organic" || col == "treated") {
			s = yesOrNo(yes)
		}
		return strings.NewReplacer(",", "", "$", "", "%", "", " ", "").Replace(s)
	}
	return plainest(a) == plainest(b)
}

// logChanged checks a change of a whole log or of its header: the other logs' rows are as
// they were or have a message, and of its own only those behind a cut are gone.
func logChanged(g good, c mishap, b *Book, lost, gained []said, problems []Problem) string {
	own := 0
	for _, r := range append(slices.Clone(lost), gained...) {
		if r.file == c.file {
			own++
			continue
		}
		line := 2 + slices.Index(g.says[r.file], r.row)
		if !slices.ContainsFunc(problems, func(p Problem) bool { return p.File == r.file && p.Line == line }) && !g.hangs(c, r, problems) {
			return "another file's row is gone without a word: " + r.row
		}
	}
	i := slices.IndexFunc(b.Files, func(f File) bool { return f.Name == c.file })
	switch {
	case c.kind == "a file deleted":
		if i >= 0 || own != len(g.says[c.file]) {
			return "a file that is gone was read"
		}
	case i < 0:
		return "a file was not read, and no word"
	case c.kind == "a file cut":
		whole := g.says[c.file][:max(c.lines[0]-2, 0)]
		if n := len(missing(map[string][]string{"": whole}, map[string][]string{"": saying(b)[c.file]})); n > 0 && len(problems) == 0 {
			return fmt.Sprintf("%d whole rows above the cut are gone without a word", n)
		}
	case own > 0 && len(problems) == 0 && len(b.Files[i].Unread) == 0 && !(c.kind == "a cell" && g.blankColumn(c)):
		return "a head was changed, and no word"
	}
	return ""
}

// blankColumn reports whether nothing stands below the head that was changed.
func (g good) blankColumn(c mishap) bool {
	return !slices.ContainsFunc(g.rows[c.file][1:], func(row []string) bool { return row[c.col] != "" })
}

// settingsChanged checks a change of book.csv: one setting is another, or one is gone and
// one new, and rows are gone only with a message of their own.
func settingsChanged(g good, c mishap, b *Book, lost []said, problems []Problem) string {
	other, read := 0, false // settings by which other cells are read
	for i, in := range b.Settings.Inputs {
		if in != g.is.Settings.Inputs[i] {
			other++
			read = read || slices.Contains([]string{"decimal", "dates", "temperature", "currency"}, in.Name)
		}
	}
	switch {
	case (c.kind == "rows swapped" || c.kind == "a row moved") && other > 0, strings.HasPrefix(c.kind, "a row") && other > 1:
		return fmt.Sprintf("%d settings have changed", other)
	case c.kind == "a cell" && other > 2:
		return fmt.Sprintf("%d settings have changed by one cell", other)
	case len(lost) > 0 && !read && len(problems) == 0:
		return "rows are gone without a word"
	}
	return ""
}
