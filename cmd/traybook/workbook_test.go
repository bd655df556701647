package main

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"traybook/records"
	"traybook/records/workbook"
	"traybook/report"
	"traybook/report/data"
	"traybook/templates"
)

// mute is a voice that nobody hears.
func mute() *voice { return &voice{stdout: io.Discard, stderr: io.Discard} }

// dataOf are the data files of a book, by name, without the list of problems: its
// places are those of lines in one kind of book and of rows in another.
func dataOf(t *testing.T, path string) map[string]string {
	t.Helper()
	l, err := load(mute(), path)
	if err != nil {
		t.Fatal(err)
	}
	day, _ := records.ParseISO("2026-05-17")
	l.book.Settings.Farm = "" // the book's own name, where none is written
	r, err := l.compute(report.Options{Today: day})
	if err != nil {
		t.Fatalf("%s: %v: %v", path, err, l.problems)
	}
	all := map[string]string{}
	for f := range data.Files(r) {
		body, err := f.CSV()
		if err != nil {
			t.Fatal(err)
		}
		all[f.Name] = string(body)
	}
	delete(all, "problems")
	return all
}

// sameData compares the data files of two books byte for byte.
func sameData(t *testing.T, got, want map[string]string) {
	t.Helper()
	if len(want) < 10 {
		t.Fatalf("%d data files", len(want))
	}
	for name, w := range want {
		if g := got[name]; g != w {
			t.Errorf("%s.csv differs: %s", name, firstDifference(g, w))
		}
	}
}

// firstDifference shows the first line in which two texts differ.
func firstDifference(got, want string) string {
	g, w := strings.Split(got, "\n"), strings.Split(want, "\n")
	for i := range min(len(g), len(w)) {
		if g[i] != w[i] {
			return "got " + g[i] + "\nwant " + w[i]
		}
	}
	return "one is longer"
}

// asWorkbook writes the logs of a folder as a workbook, typed as a grower would.
func asWorkbook(t *testing.T, folder string) string {
	t.Helper()
	files := map[string][]byte{}
	for _, log := range records.Logs {
		if body, err := os.ReadFile(filepath.Join(folder, log.Name)); err == nil {
			files[log.Name] = body
		}
	}
	sheets, err := tables(files)
	if err != nil {
		t.Fatal(err)
	}
	body, err := workbook.Write(sheets, "sowings")
	if err != nil {
		t.Fatal(err)
	}
	name := filepath.Join(t.TempDir(), "FARM.xlsx")
	if err := os.WriteFile(name, body, 0o644); err != nil {
		t.Fatal(err)
	}
	return name
}

// The example in a workbook, as traybook writes one and as a spreadsheet saves it in
// both kinds, gives the figures of its CSV files to the byte.
func TestExampleAsWorkbookInOffice(t *testing.T) {
	const folder = "../../examples/ottermoss"
	want := dataOf(t, folder)
	name := asWorkbook(t, folder)
	t.Run("written", func(t *testing.T) { sameData(t, dataOf(t, name), want) })
	for _, kind := range []string{"xlsx", "ods"} {
		t.Run(kind, func(t *testing.T) { sameData(t, dataOf(t, saved(t, name, kind)), want) })
	}
}

// logNamed is a log's file in a page, a data file of such a name among them, or the word
// for what a book in a folder is made of.
var logNamed = regexp.MustCompile(`.{0,40}\b(?:(?:sowings|out|counts|scores|trays|lots|costs|chamber|house|wishes|changes|book)\.csv|files?|folders?|CSV)\b`)

// Who keeps a workbook has no files of logs: no sentence of a page names one or speaks of
// files, while links to the data files stay, two of which are called as a log is.
func TestPagesOfAWorkbookNameSheets(t *testing.T) {
	dataLink := regexp.MustCompile(`<a href="[^"]*data/[a-z_]+\.csv">[a-z_]+\.csv</a>`)
	tags := regexp.MustCompile(`<[^>]*>`)
	for _, folder := range []string{"ottermoss", "ottermoss-broken", "poor/third-blank"} {
		l, err := load(mute(), asWorkbook(t, filepath.Join("../../examples", folder)))
		if err != nil {
			t.Fatal(err)
		}
		r, err := l.compute(report.Options{})
		if err != nil {
			t.Fatal(err)
		}
		links, sheets := 0, 0
		for page, err := range templates.Pages(r, nil) {
			if err != nil {
				t.Fatal(err)
			}
			if !strings.HasSuffix(page.Path, ".html") {
				continue
			}
			body := string(page.Body)
			links += len(dataLink.FindAllString(body, -1))
			body = tags.ReplaceAllString(dataLink.ReplaceAllString(body, ""), "")
			sheets += strings.Count(body, "sheet sowings")
			for _, found := range logNamed.FindAllString(body, 3) {
				t.Errorf("%s: %s: %q", folder, page.Path, found)
			}
		}
		if links == 0 || sheets == 0 {
			t.Errorf("%s: %d links to data, %d sentences on sheets: nothing was tried", folder, links, sheets)
		}
	}
}

// The starter workbook is the starter folder in one file: the same figures, the same
// bytes each time, every column with its comment, and no macro.
func TestStarterWorkbook(t *testing.T) {
	dir := t.TempDir()
	a, b, folder := filepath.Join(dir, "a.xlsx"), filepath.Join(dir, "b.xlsx"), filepath.Join(dir, "folder")
	for _, args := range [][]string{{"new", "--workbook", a}, {"new", "--workbook", b}, {"new", "--all", folder}} {
		var said strings.Builder
		if code := run(args, &said, &said); code != done {
			t.Fatal(args, said.String())
		}
	}
	one, err := os.ReadFile(a)
	two, err2 := os.ReadFile(b)
	if err != nil || err2 != nil || !bytes.Equal(one, two) {
		t.Error("two starter workbooks differ", err, err2)
	}
	sameData(t, dataOf(t, a), dataOf(t, folder))
}

// A drop-down list offers each crop once, in the order in which they were first typed, and
// a crop typed later too, after the first row was taken out, as a grower takes out the
// invented rows; so does the list of a column where nothing repeats.
func TestListsInOffice(t *testing.T) {
	book := asWorkbook(t, "../../examples/ottermoss")
	sowings := readSowings(t)
	var crops, batches []string
	for _, s := range sowings[1:] {
		batches = append(batches, s.Code)
		if !slices.Contains(crops, s.Crop) {
			crops = append(crops, s.Crop)
		}
	}
	for _, tt := range []struct {
		sheet, head, word string
		rows              int // of the sheet, the new one too
		want              []string
	}{
		{"sowings", "crop", "skirret", len(sowings), append(crops, "skirret")},
		{"sowings", "from", batches[0], len(sowings), batches},
	} {
		for _, kind := range []string{"", "ods"} {
			from, to := book, filepath.Join(t.TempDir(), "offered.xlsx")
			if kind != "" {
				from = saved(t, book, kind)
			}
			log := records.Logs[slices.IndexFunc(records.Logs, func(l records.Log) bool { return l.Sheet() == tt.sheet })]
			col := slices.IndexFunc(log.Columns, func(c records.Column) bool { return c.Name == tt.head })
			offered(t, from, to, tt.sheet, col, tt.rows, tt.word)
			raw, err := os.ReadFile(to)
			if err != nil {
				t.Fatal(err)
			}
			told, err := workbook.Read(raw, func(sheet string) bool { return sheet == "offered" })
			if err != nil {
				t.Fatal(err)
			}
			var got []string
			for _, row := range told.Sheets[0].Rows {
				got = append(got, row.Cells[0].Text)
			}
			want := append([]string{strconv.Itoa(len(tt.want))}, tt.want[:min(len(tt.want), 40)]...)
			if !slices.Equal(got, want) {
				t.Errorf("%s %s, %s: offered %v, want %v", tt.sheet, tt.head, kind, got, want)
			}
		}
	}
}

// readSowings are the sowings of the example, in the order of its rows.
func readSowings(t *testing.T) []records.Sowing {
	t.Helper()
	l, err := load(mute(), "../../examples/ottermoss")
	if err != nil {
		t.Fatal(err)
	}
	return l.book.Sowings
}

// A row typed into the starter workbook in a spreadsheet, a formula in it, is in the
// review, whichever kind the spreadsheet saves.
func TestRowTypedInOffice(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "FARM.xlsx")
	var said strings.Builder
	if code := run([]string{"new", "--workbook", name}, &said, &said); code != done {
		t.Fatal(said.String())
	}
	for kind, filter := range map[string]string{"xlsx": "Calc MS Excel 2007 XML", "ods": "calc8"} {
		to := filepath.Join(dir, "typed."+kind)
		withRow(t, name, to, filter)
		l, err := load(mute(), to)
		if err != nil {
			t.Fatal(err)
		}
		typed := func(c records.Count) bool { // the row
			return l.book.Code(c.Batch) == "T1" && c.Date.String() == "2026-03-24" && c.Emerged == records.Known[int32](133)
		}
		if len(l.problems) > 0 || !slices.ContainsFunc(l.book.Counts, typed) {
			t.Errorf("%s: %v, %+v", kind, l.problems, l.book.Counts)
		}
		if code := run([]string{"build", to, "--strict"}, &said, &said); code != done {
			t.Errorf("%s: %s", kind, said.String())
		}
	}
}
