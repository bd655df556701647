package records

import (
	"io/fs"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
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
// is no panic, every problem stands inside its file, and what is accepted is
// read the same again.
func FuzzLoad(f *testing.F) {
	for _, path := range catalogue(f) {
		folder := catalogueBook(f, path).(fstest.MapFS)
		for i, l := range Logs {
			if file := folder[l.Name]; file != nil {
				f.Add(uint8(i), file.Data)
			}
		}
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
		if name != "book.csv" && !slices.ContainsFunc(problems, func(p Problem) bool { return p.Severity == Fatal }) {
			roundTrip(t, b)
		}
	})
}

// inside checks that a problem stands in its file, or just past a line's end.
func inside(t *testing.T, p Problem, files map[string]string) {
	t.Helper()
	s := files[p.File]
	if d := decode([]byte(s)); d.bad == "" {
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
