package records

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"
)

// written writes a book as CSV files, each accepted row once, in the format's
// plainest form. Columns are found by the names of the fields.
func written(b *Book) map[string]string {
	rows := map[string]any{"trays.csv": b.Trays, "lots.csv": b.Lots, "sowings.csv": b.Sowings, "out.csv": b.Outs,
		"counts.csv": b.Counts, "scores.csv": b.Scores, "costs.csv": b.Costs, "chamber.csv": b.Chamber, "house.csv": b.House,
		"wishes.csv": b.Wishes, "changes.csv": b.Changes}
	files := map[string]string{}
	for _, f := range b.Files {
		if f.Name != "book.csv" {
			files[f.Name] = writeLog(b, logOf(f.Name), f.Columns, reflect.ValueOf(rows[f.Name]))
		}
	}
	return files
}

func writeLog(b *Book, l Log, columns []string, rows reflect.Value) string {
	var out bytes.Buffer
	w := csv.NewWriter(&out)
	_ = w.Write(columns)
	for i := range rows.Len() {
		var cells []string
		for _, c := range columns {
			cells = append(cells, writeCell(b, l, c, rows.Index(i)))
		}
		_ = w.Write(cells)
	}
	w.Flush()
	return out.String()
}

func writeCell(b *Book, l Log, col string, row reflect.Value) string {
	if len(col) == 2 && col[0] == 's' && l.Name == "scores.csv" {
		return writeValue(row.FieldByName("S").Index(int(col[1]-'1')).Interface(), 1)
	}
	if col == "time" {
		r := row.Interface().(ChamberReading)
		if !r.Minute.Known {
			return r.Date.String()
		}
		return fmt.Sprintf("%sT%02d:%02d", r.Date, r.Minute.Value/60, r.Minute.Value%60)
	}
	times := 1.0
	if col == "germ_label" || col == "humidity" {
		times = 100
	}
	return writeValue(field(b, l, col, row).Interface(), times)
}

// field is the field of a row that a column is read into: that of its name, or of a
// log's own code, Code.
func field(b *Book, l Log, col string, row reflect.Value) reflect.Value {
	if l.Name == "sowings.csv" && col == "batch" || l.Name == "lots.csv" && col == "lot" {
		col = "Code"
	}
	if c, ok := row.Interface().(Count); ok {
		switch col {
		case "batch":
			return reflect.ValueOf(b.Code(c.Batch))
		case "cause":
			return reflect.ValueOf(b.Said(&c).Cause)
		case "note":
			return reflect.ValueOf(b.Said(&c).Note)
		}
	}
	return row.FieldByNameFunc(func(n string) bool { return foldHeader(n) == foldHeader(col) })
}

func writeValue(v any, times float64) string {
	switch v := v.(type) {
	case Maybe[int32]:
		return writeValue(Maybe[int]{int(v.Value), v.Known}, 1)
	case Maybe[int]:
		if v.Known {
			return itoa(v.Value)
		}
		return ""
	case Maybe[float64]:
		if !v.Known {
			return ""
		}
		return writeValue(v.Value, times)
	case Maybe[bool]:
		if v.Known {
			return writeValue(v.Value, 1)
		}
		return ""
	case float64:
		if times == 1 {
			return strconv.FormatFloat(v, 'f', -1, 64)
		}
		return strconv.FormatFloat(math.Round(v*times*1e9)/1e9, 'f', -1, 64)
	case bool:
		return map[bool]string{true: "yes", false: "no"}[v]
	}
	return fmt.Sprint(v)
}

// Nothing is lost or changed between a row and the book: a book written out and
// read again is the same book without a problem left to report.
func roundTrip(t testing.TB, b *Book) {
	t.Helper()
	files := written(b)
	again, problems := load(files)
	for _, p := range problems {
		if p.Severity == Error {
			t.Errorf("written out and read again: %v", p)
		}
	}
	for name, s := range written(again) {
		if s != files[name] {
			t.Errorf("%s: first\n%s\nthen\n%s", name, files[name], s)
		}
	}
}

func TestRoundTrip(t *testing.T) {
	for _, name := range []string{"tiny", "poor/third-blank", "checks/c15"} {
		b, _ := Load(os.DirFS("../examples/" + name))
		roundTrip(t, b)
	}
}

// shuffled puts the rows of every log of a folder in another order.
func shuffled(t *testing.T, folder string, luck *rand.Rand) fstest.MapFS {
	t.Helper()
	files := fstest.MapFS{}
	paths, _ := filepath.Glob(folder + "/*.csv")
	for _, path := range paths {
		f, err := os.Open(path)
		if err != nil {
			t.Fatal(err)
		}
		rows, err := csv.NewReader(f).ReadAll()
		f.Close()
		if err != nil {
			t.Fatal(err)
		}
		body := rows[1:]
		luck.Shuffle(len(body), func(i, j int) { body[i], body[j] = body[j], body[i] })
		var out bytes.Buffer
		_ = csv.NewWriter(&out).WriteAll(rows)
		files[filepath.Base(path)] = &fstest.MapFile{Data: out.Bytes()}
	}
	return files
}

// The order of rows changes nothing: the same rows are accepted, and as many
// problems of each kind are found.
func TestOrderOfRowsChangesNothing(t *testing.T) {
	for _, name := range []string{"ottermoss", "ottermoss-broken"} {
		folder := "../examples/" + name
		b, problems := Load(os.DirFS(folder))
		want := sortedLines(written(b))
		for seed := range uint64(3) {
			again, found := Load(shuffled(t, folder, rand.New(rand.NewPCG(seed, 0))))
			if got := sortedLines(written(again)); !slices.Equal(got, want) {
				t.Errorf("%s: other rows after shuffling", name)
			}
			if got, want := counted(found), counted(problems); !sameCounts(got, want) {
				t.Errorf("%s: got %v, want %v", name, got, want)
			}
		}
	}
}

func sortedLines(files map[string]string) []string {
	var all []string
	for name, s := range files {
		for line := range strings.Lines(s) {
			if name != "book.csv" {
				all = append(all, name+": "+line)
			}
		}
	}
	slices.Sort(all)
	return all
}

// Every row is in the book or counted as left out.
func TestRowsAddUp(t *testing.T) {
	for _, path := range catalogue(t) {
		b, _ := Load(catalogueBook(t, path))
		addUp(t, b)
	}
}
