package records

import (
	"io/fs"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
	"unicode"
	"unicode/utf8"

	"github.com/rogpeppe/go-internal/txtar"
)

func catalogueBook(t testing.TB, path string) fs.FS {
	t.Helper()
	a, err := txtar.ParseFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return book(t, a)
}

// FuzzLoad puts any bytes in place of any log, beside a small sound book. There
// is no panic, every problem stands inside its file, no row is lost, and what is
// accepted is read the same again.
func FuzzLoad(f *testing.F) {
	for _, path := range catalogue(f) {
		folder := catalogueBook(f, path).(fstest.MapFS)
		for i, l := range Logs {
			if file := folder[l.Name]; file != nil {
				f.Add(uint8(i), file.Data)
			}
		}
	}
	for _, text := range []string{ // blanks of every kind, heads written otherwise, sums, marks
		"batch,date,emerged\n\u00a0,\u2003,\u00a0\n \n\t\n,,\n\"\",\" \",\"\n\"\nA\u00a0,2025-03-10,6\u00a0000\n",
		"\ufeffsep=;\n\n Batch ;DATE (y-m-d);emerged (#);;\nA;10.3.25;60;;x\n", "\"batch\",\"date\",\"emer\nged\",\nA,2025-03-10,60,\n",
		"Counts of 2025,,\n\nbatch,date,emerged\nA,2025-03-10,60\n", "batch,date,emerged\nTotal:,,60\nsum,,\n = ,,\n", "batch,date,emerged,emerged,empty\n",
		"batch|date|emerged\r\rA|2025-03-10|60\r", "batch,date,emerged\nA,2025-03-10,60\x0b\x0c\x85\nA,\"2025-03-10\n,60\n",
	} {
		f.Add(uint8(slices.IndexFunc(Logs, func(l Log) bool { return l.Name == "counts.csv" })), []byte(text))
	}
	f.Fuzz(func(t *testing.T, which uint8, data []byte) {
		files := map[string]string{
			"sowings.csv": oneSowing,
			"trays.csv":   "tray,kind,cells\nA50,air-pruning,50\n",
			"lots.csv":    "lot,crop,variety\nL1,lettuce,Fenwimple\n",
		}
		name := Logs[int(which)%len(Logs)].Name
		files[name] = string(data)
		b, problems := load(files)
		for _, p := range problems {
			inside(t, p, files)
		}
		addUp(t, b)
		noneLost(t, b, name, string(data))
		if name != "book.csv" && !slices.ContainsFunc(problems, func(p Problem) bool { return p.Severity == Fatal }) {
			roundTrip(t, b)
		}
	})
}

// inside checks that a problem stands in its file, or just past a line's end.
func inside(t *testing.T, p Problem, files map[string]string) {
	t.Helper()
	s := strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(files[p.File])
	if d := decode([]byte(files[p.File])); d.bad == "" {
		s = string(d.body) // as an editor shows it
	}
	lines := strings.Split(s, "\n")
	if p.Line > len(lines) || p.Column > 0 && p.Column > utf8.RuneCountInString(lines[p.Line-1])+1 {
		t.Errorf("%v is not inside its file: %q", p, s)
	}
	if p.Found == "" || strings.ContainsAny(p.String(), "\n\r\x00") {
		t.Errorf("no clear line: %q", p.String())
	}
}

// rowsRead counts the rows that a book holds of each log.
func rowsRead(b *Book) map[string]int {
	return map[string]int{"trays.csv": len(b.Trays), "lots.csv": len(b.Lots), "sowings.csv": len(b.Sowings), "out.csv": len(b.Outs),
		"counts.csv": len(b.Counts), "scores.csv": len(b.Scores), "costs.csv": len(b.Costs), "chamber.csv": len(b.Chamber), "house.csv": len(b.House),
		"wishes.csv": len(b.Wishes), "changes.csv": len(b.Changes)}
}

// addUp checks that every row is in the book or counted as left out.
func addUp(t testing.TB, b *Book) {
	t.Helper()
	read := rowsRead(b)
	for _, f := range b.Files {
		if f.Name != "book.csv" && read[f.Name]+f.LeftOut != f.Rows || f.LeftOut < 0 {
			t.Errorf("%s has %d rows, %d read, %d left out", f.Name, f.Rows, read[f.Name], f.LeftOut)
		}
	}
}

// noneLost checks the rows of a log against its lines, in a text so plain that each line
// is a row. Whether one of separators alone is a row hangs on which of them parts cells.
func noneLost(t *testing.T, b *Book, name, text string) {
	t.Helper()
	i := slices.IndexFunc(b.Files, func(f File) bool { return f.Name == name })
	if i < 0 || !utf8.ValidString(text) || strings.ContainsAny(text, "\"\r\ufeff") || strings.HasPrefix(strings.TrimSpace(strings.ToLower(text)), "sep=") {
		return
	}
	least, most := -1, -1 // the header is none
	blank := func(r rune) bool { return unicode.IsSpace(r) || strings.ContainsRune(",;|", r) }
	for line := range strings.SplitSeq(text, "\n") {
		if strings.TrimFunc(line, blank) != "" {
			least++
		}
		if strings.TrimSpace(line) != "" {
			most++
		}
	}
	if n := b.Files[i].Rows; n < least || n > most {
		t.Errorf("%s: %d rows of %d to %d lines: %q", name, n, least, most, text)
	}
}

// FuzzNumber: what is read as a number is written and read the same again.
func FuzzNumber(f *testing.F) {
	for _, s := range []string{"0", "-1,234.50", "1 234", ".5", "1e9", "−3"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		x, ok := parseNumber(s, point)
		if !ok {
			return
		}
		if again, ok := parseNumber(plain(x), point); !ok || again != x {
			t.Errorf("%q = %v, then %v", s, x, again)
		}
	})
}

// FuzzDate: a date is read in at most one way in each order, and is a day.
func FuzzDate(f *testing.F) {
	for _, s := range []string{"2025-03-31", "31/3/25", "3.31.2025", "25/03/31", "99/99/9999"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		d, ok := parseSlashed(s)
		if !ok {
			return
		}
		for _, day := range d.readings() {
			if again, ok := ParseISO(day.String()); !ok || again != day {
				t.Errorf("%q = %v, then %v", s, day, again)
			}
		}
	})
}
