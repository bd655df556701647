package records

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
)

// counted is what TestExamples looks for in a book: problems by severity and
// check.
func counted(problems []Problem) map[string]int {
	n := map[string]int{}
	for _, p := range problems {
		n[p.Severity.String()+" "+p.Check]++
	}
	return n
}

// The example books are clean, but for what they show on purpose: an invoice
// that repeats a purchase of trays, and in the broken copy two slips.
func TestExamples(t *testing.T) {
	wanted := map[string]map[string]int{
		"ottermoss":        {"warning repeats": 1},
		"ottermoss-broken": {"error whole-number": 1, "error date": 1},
	}
	books, err := filepath.Glob("../examples/*/sowings.csv")
	more, _ := filepath.Glob("../examples/*/*/sowings.csv")
	if err != nil || len(books)+len(more) < 9 {
		t.Fatal("no examples", err)
	}
	for _, path := range append(books, more...) {
		folder := filepath.Dir(path)
		b, problems := Load(os.DirFS(folder))
		if got, want := counted(problems), wanted[filepath.Base(folder)]; !sameCounts(got, want) {
			t.Errorf("%s: got %v, want %v: %v", folder, got, want, problems)
		}
		for _, f := range b.Files {
			if f.Rows == 0 || len(f.Columns) == 0 {
				t.Errorf("%s: nothing read of %s", folder, f.Name)
			}
		}
	}
}

func sameCounts(a, b map[string]int) bool {
	for k, n := range a {
		if b[k] != n {
			return false
		}
	}
	return len(a) == len(b)
}

// What a row says is what the book holds: rows of the tiny example, by eye.
func TestTinyExample(t *testing.T) {
	b, _ := Load(os.DirFS("../examples/tiny"))
	a := b.Sowings[0]
	want := Sowing{At: At{Line: 2, Row: 2}, Code: "A", Sown: NewDate(2025, 3, 3), Crop: "lettuce",
		Variety: "Fenwimple", Lot: "L1", Tray: "A50", Trays: 2, SeedsPerCell: 1, Start: FromSeed,
		Planned: NewDate(2025, 4, 12), Wanted: Known(80), SetOut: NewDate(2025, 4, 12), PlantsOut: Known(85), Surplus: Known(5)}
	if want.Note, want.ref = a.Note, a.ref; a != want {
		t.Errorf("got %+v\nwant %+v", a, want)
	}
	if o := b.Outs[1]; o.To != Sold || !o.Last || o.Plants != 40 || o.Money != Known(12.0) {
		t.Errorf("got %+v", o)
	}
	if lot := b.Lots[0]; lot.GermLabel != Known(0.95) || lot.Organic != Known(true) || lot.Treated != Known(false) {
		t.Errorf("got %+v", lot)
	}
	if s := b.Scores[1]; s.S != [5]Maybe[int32]{Known[int32](1), Known[int32](2), Known[int32](7), Known[int32](8), Known[int32](2)} || s.Looked.Known {
		t.Errorf("got %+v", s)
	}
	if b.Settings.DiscountRate != 0 || b.Settings.Wage != Known(20.0) {
		t.Errorf("got %+v", b.Settings)
	}
}

// Degrees Fahrenheit come out in Celsius: 78.2 F = 25.67 C (the definition:
// C = (F - 32) x 5/9), and back again as written.
func TestFahrenheit(t *testing.T) {
	b, _ := Load(os.DirFS("../examples/ottermoss"))
	r := b.Chamber[0]
	if r.Temp < 25.666 || r.Temp > 25.667 || r.Minute != Known(7*60) || r.Humidity != Known(0.92) {
		t.Errorf("got %+v", r)
	}
	if f := b.Settings.Degrees(r.Temp); f < 78.1999 || f > 78.2001 || b.Settings.DegreeSign() != "°F" {
		t.Errorf("got %v", f)
	}
}

// load reads a book of one text a file.
func load(files map[string]string) (*Book, []Problem) {
	folder := fstest.MapFS{}
	for name, s := range files {
		folder[name] = &fstest.MapFile{Data: []byte(s)}
	}
	return Load(folder)
}

const oneSowing = "batch,sown,crop,variety,tray,trays\nA,2025-03-03,lettuce,Fenwimple,A50,2\n"

// Names of files are matched without case where the exact name is missing; the
// folder's other files are left alone.
func TestFileNames(t *testing.T) {
	b, problems := load(map[string]string{"Sowings.CSV": oneSowing, "site/index.html": "x", "photo.jpg": "x", "notes/2025.md": "\ufeff# Wet\r\n"})
	if len(problems) > 0 || len(b.Sowings) != 1 || !b.Has("sowings.csv") || b.Files[0].As != "Sowings.CSV" {
		t.Error(problems, b.Sowings)
	}
	if want := []Note{{"notes/2025.md", 2025, "# Wet\n"}}; !slices.Equal(b.Notes, want) {
		t.Errorf("got %+v", b.Notes)
	}
}

// A file's name cannot forge a second line of messages.
func TestHostileFileNames(t *testing.T) {
	_, problems := load(map[string]string{"sowings.csv": oneSowing, "notes/a\nb\u202e.md": "x", "count\n.csv": "x"})
	for _, p := range problems {
		if strings.ContainsAny(p.String(), "\n\u202e") {
			t.Errorf("%q", p.String())
		}
	}
	if len(problems) != 2 {
		t.Error(problems)
	}
}

// closed is a folder that cannot be listed, or whose files cannot be read.
type closed struct {
	fs.FS
	list bool
}

func (c closed) Open(name string) (fs.File, error) {
	if name == "." && c.list || strings.HasSuffix(name, "sowings.csv") {
		return nil, &fs.PathError{Op: "open", Path: "/home/someone/book", Err: fs.ErrPermission}
	}
	return c.FS.Open(name)
}

func TestFolderCannotBeListed(t *testing.T) {
	for check, list := range map[string]bool{"folder": true, "file": false} {
		_, problems := Load(closed{fstest.MapFS{"sowings.csv": {Data: []byte(oneSowing)}}, list})
		if len(problems) != 1 || problems[0].Check != check || problems[0].Severity != Fatal ||
			strings.Contains(problems[0].String(), "someone") {
			t.Error(check, problems)
		}
	}
	if got := cause(errors.New("x")); got != "x" {
		t.Error(got)
	}
}
