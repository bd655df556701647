package main

import (
	"bytes"
	"encoding/csv"
	"maps"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"golang.org/x/text/cases"
	"golang.org/x/text/unicode/norm"

	"traybook/records"
	"traybook/report"
	"traybook/templates"
)

// hostileWords are names that some system keeps for a device, cannot write, cuts at its
// end or takes for another one. The devices are those of "Naming Files, Paths, and
// Namespaces" in the documentation of Windows.
var hostileWords = []string{
	"CON", "con.csv", "Prn", "AUX", "nul", "NUL.txt", "COM1", "com9", "COM¹", "LPT1", "lpt9.html", "CONIN$", "CLOCK$",
	"end.", "end..", "end", "a<b", "a>b", "a:b", `a"b`, "a/b", `a\b`, "a|b", "a?b", "a*b", "a b", "...", "..", "../../up", `..\..\up`, "C:\\farm",
	"Kohlrabi", "Stra\u00dfe", "Strasse", "caf\u00e9", "cafe\u0301 2", "cafe", "白菜", "菠菜", "\u0130lk", "ilk", "index", "records", "-rf", "~", "$HOME",
	strings.Repeat("long ", 60), strings.Repeat("long ", 60) + "er", "ﬁne", "fine", "con crop", "con-crop", "K\u212a",
}

// hostileBook writes a book that holds each of them as batch, crop, variety, tray and lot,
// in two seasons.
func hostileBook(t *testing.T) string {
	t.Helper()
	dir := filepath.Join(t.TempDir(), "book")
	sowings := [][]string{{"batch", "sown", "crop", "variety", "tray", "trays", "lot", "plants_out"}}
	counts := [][]string{{"batch", "date", "emerged"}}
	trays := [][]string{{"tray", "kind", "cells", "count", "price"}}
	lots := [][]string{{"lot", "crop", "variety", "supplier", "germination"}}
	for _, w := range hostileWords {
		trays = append(trays, []string{w, "solid-wall", "72", "20", "2.50"})
		lots = append(lots, []string{w, w, w, w, "90"})
		for _, year := range []string{"2024", "2025"} {
			sowings = append(sowings, []string{w + " " + year, year + "-03-01", w, w, w, "2", w, "60"})
			counts = append(counts, []string{w + " " + year, year + "-03-12", "100"})
		}
	}
	if err := os.Mkdir(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	for name, rows := range map[string][][]string{"sowings.csv": sowings, "counts.csv": counts, "trays.csv": trays, "lots.csv": lots} {
		var text bytes.Buffer
		if err := csv.NewWriter(&text).WriteAll(rows); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, name), text.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

// computed loads a book and computes its report.
func computed(t *testing.T, book string, o report.Options) *report.Report {
	t.Helper()
	l, err := load(mute(), book)
	if err != nil {
		t.Fatal(err)
	}
	r, err := l.compute(o)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

var (
	plainPath = regexp.MustCompile(`^[a-z0-9][a-z0-9/._-]*$`)
	device    = regexp.MustCompile(`(?i)^(con|prn|aux|nul|com[0-9]|lpt[0-9])$`)
)

// Whatever a grower calls things, each file of a site has a name that every system can
// write, and no two of them are one file where case or the form of accents count for
// nothing.
func TestPathsWorkOnEverySystem(t *testing.T) {
	book := hostileBook(t)
	for name, e := range map[string]edition{"own": {}, "public": {Public: true}, "single": {Single: true}} {
		r := computed(t, book, report.Options{Public: e.Public})
		var files []string
		for f, err := range e.site(r, templates.Charts{}) {
			if err != nil {
				t.Fatal(err)
			}
			files = append(files, f.Path)
		}
		if crops := len(r.Batches.Seasons) * 30; name == "own" && len(files) < crops {
			t.Errorf("only %d files: not every crop has its page", len(files))
		}
		seen := map[string]string{}
		for _, f := range append(files, marker) {
			folded := norm.NFC.String(cases.Fold().String(norm.NFC.String(f)))
			if other, ok := seen[folded]; ok {
				t.Errorf("%s: %s and %s are one file on some systems", name, f, other)
			}
			seen[folded] = f
			if why := badPath(f); why != "" {
				t.Errorf("%s: %q: %s", name, f, why)
			}
		}
	}
}

// badPath says why a path is none for every system; empty: it is.
func badPath(name string) string {
	if !plainPath.MatchString(name) || path.Clean(name) != name || len(name) > 200 {
		return "its signs or its length"
	}
	for part := range strings.SplitSeq(name, "/") {
		stem, _, _ := strings.Cut(part, ".")
		if device.MatchString(stem) || strings.HasSuffix(part, ".") {
			return "Windows has no file " + part
		}
	}
	return ""
}

// The judge refuses what it must.
func TestBadPathsAreSeen(t *testing.T) {
	for _, word := range []string{"con", "a/nul.html", "com1.tar.gz", "aux/x", "end.", "end./x", "a b", "A", "a:b", "a\\b", "../up", "a//b", "/a", "caf\u00e9", strings.Repeat("x", 201)} {
		if badPath(word) == "" {
			t.Errorf("%q passes", word)
		}
	}
}

// A book written on Windows is the same book: lines that end there as they do, its files
// in capitals, and its notes.
func TestTheBookOfAnotherSystemIsTheSame(t *testing.T) {
	for _, example := range []string{"tiny", "ottermoss"} {
		from := filepath.Join("../../examples", example)
		to := filepath.Join(t.TempDir(), example)
		copied := 0
		for _, pattern := range []string{"*.csv", "notes/*.md"} {
			names, err := filepath.Glob(filepath.Join(from, pattern))
			if err != nil {
				t.Fatal(err)
			}
			for _, name := range names {
				asOnWindows(t, name, filepath.Join(to, strings.TrimPrefix(name, from)))
				copied++
			}
		}
		sameData(t, dataOf(t, to), dataOf(t, from))
		if copied < 5 {
			t.Errorf("%s: only %d files of the book", example, copied)
		}
		wantNotes, gotNotes := computed(t, from, report.Options{}).Book.Notes, computed(t, to, report.Options{}).Book.Notes
		if !slices.EqualFunc(wantNotes, gotNotes, func(a, b records.Note) bool { return a.Year == b.Year && a.Text == b.Text }) {
			t.Errorf("%s: the notes differ", example)
		}
	}
}

// asOnWindows copies a file of a book with lines that end in two signs, its folder and
// name in capitals: SOWINGS.CSV, NOTES/2025.md.
func asOnWindows(t *testing.T, from, to string) {
	t.Helper()
	body, err := os.ReadFile(from)
	if err != nil {
		t.Fatal(err)
	}
	dir, base := filepath.Split(to)
	if filepath.Base(dir) == "notes" {
		dir = filepath.Join(filepath.Dir(filepath.Clean(dir)), "NOTES")
	} else {
		base = strings.ToUpper(base)
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, base), bytes.ReplaceAll(body, []byte("\n"), []byte("\r\n")), 0o644); err != nil {
		t.Fatal(err)
	}
}

// A site whose list was given Windows' ends of lines is still known for ours.
func TestASiteOfAnotherSystemIsOurs(t *testing.T) {
	dir := t.TempDir()
	list := markerHeader + "2025/index.html\nindex.html\n"
	if err := os.WriteFile(filepath.Join(dir, marker), []byte(strings.ReplaceAll(list, "\n", "\r\n")), 0o644); err != nil {
		t.Fatal(err)
	}
	ours, err := marked(dir)
	if want := map[string]bool{marker: true, "index.html": true, "2025/index.html": true, "2025/": true}; err != nil || !maps.Equal(ours, want) {
		t.Errorf("%v, %v", ours, err)
	}
}

// The top of a drive has no name to call a farm by, and a folder's name that was typed
// with a backslash at its end loses the quotation mark that Windows leaves there.
func TestNamesTypedOnWindows(t *testing.T) {
	for folder, want := range map[string]string{"/": "", "/home/farm": "farm", "farm/": "farm", "/x/Hollow Lane.": "Hollow Lane."} {
		if got := nameOf(folder); got != want {
			t.Errorf("%s: %q, want %q", folder, got, want)
		}
	}
	got := unquoted([]string{"build", `C:\my book"`, `\\server\share\book`, "--out=D:\\site"})
	if want := []string{"build", `C:\my book`, `\\server\share\book`, `--out=D:\site`}; !slices.Equal(got, want) {
		t.Errorf("%q", got)
	}
}
