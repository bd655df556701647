package templates

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
	"traybook/report/words"
)

// Every gap has its anchor; each kind is told once, the costliest first, with the cells
// that close it and the time that takes.
func TestToMend(t *testing.T) {
	r := houseReport(t)
	b := buildOf(t, r, nil)
	for i := range r.Missing {
		if !strings.Contains(b.pages["missing.html"], fmt.Sprintf(`id="gap-%d"`, i+1)) {
			t.Errorf("gap %d has no anchor", i+1)
		}
	}
	todo, past := pageOf(t, r).toMend(r.Missing, mostPlaces)
	n := 0
	for _, list := range [][]toMend{todo, past} {
		told := map[string]bool{}
		for _, m := range list {
			if told[m.What+m.Remedy] {
				t.Errorf("%s is told twice", m.What)
			}
			told[m.What+m.Remedy] = true
			n += len(m.Seasons)
		}
	}
	if n != len(r.Missing) {
		t.Errorf("%d gaps of %d are told", n, len(r.Missing))
	}
	for _, m := range past {
		for _, s := range m.Seasons {
			if s.Time != "" || len(s.Files) > 0 || m.When != "Next time" {
				t.Errorf("%s cannot be mended, yet %+v", m.What, s)
			}
		}
	}
}

// A cell is named as the spreadsheet does, with its line where that is not the cell's own
// row; a row to add by what it is about.
func TestPlaces(t *testing.T) {
	p := pageOf(t, houseReport(t))
	for _, tt := range []struct {
		at   report.Place
		want string
	}{
		{report.Place{File: "sowings.csv", Column: "set_out", Line: 45, Cell: "Q45", Of: "x"}, "sowings.csv set_out: Q45 x"},
		{report.Place{File: "sowings.csv", Column: "set_out", Line: 46, Cell: "Q45", Of: "x"}, "sowings.csv set_out: line 46, Q45 x"},
		{report.Place{File: "sowings.csv", Column: "surplus", Line: 7, Of: "x"}, "sowings.csv a new column surplus: line 7 x"},
		{report.Place{File: "counts.csv", Column: "emerged", Of: "LS25-7"}, "counts.csv a new row for LS25-7"},
		{report.Place{File: "book.csv", Column: "value", Of: "wage"}, "book.csv a new row"},
		{report.Place{File: "sowings.csv", Column: "wanted", Of: "wage"}, "sowings.csv column wanted"},
		{report.Place{File: "costs.csv", Column: "amount"}, "costs.csv new rows"},
	} {
		of := p.placesOf(report.Missing{What: "wage", Places: []report.Place{tt.at}}, mostPlaces)[0]
		got := of.File + " " + of.What
		for _, place := range of.Places {
			got += " " + bare(place)
		}
		if got != tt.want {
			t.Errorf("%q, want %q", got, tt.want)
		}
	}
	many := make([]report.Place, 500)
	for i := range many {
		many[i] = report.Place{File: "sowings.csv", Column: "set_out", Line: i + 2, Cell: fmt.Sprint("Q", i+2), Of: "x"}
	}
	of := p.placesOf(report.Missing{Places: many}, mostPlaces)
	if len(of) != 1 || len(of[0].Places) != openPlaces || len(of[0].Places)+len(of[0].More) != mostPlaces || of[0].Rest != "and 100 more like it" {
		t.Errorf("of 500 places %d stand open, %d behind the line, %q", len(of[0].Places), len(of[0].More), of[0].Rest)
	}
}

// The finding says how long it takes, by season, and what costs most.
func TestMissingFinding(t *testing.T) {
	sheet := []report.Place{{File: "sowings.csv", Column: "set_out", Line: 2, Cell: "Q2"}}
	gap := func(what string, season, touched, minutes int, places []report.Place) report.Missing {
		return report.Missing{What: what, Season: season, Touched: touched, Minutes: minutes, Places: places}
	}
	count, wage, late := gap("plants out", 2025, 7, 40, sheet), gap("wage", 0, 0, 90, sheet), gap("late enough last count", 2025, 9, 0, nil)
	for _, tt := range []struct {
		missing                []report.Missing
		title, big, unit, says string
	}{
		{nil, "Nothing is missing", "0", "", "Every figure of the review rests on what is written down."},
		{[]report.Missing{late, count}, "The costliest gap: 7 batches of 2025 without a number of plants out", "40", "min", "1 gap can be closed, 1 can only be done better next time."},
		{[]report.Missing{wage, count}, "The costliest gap: hours of work without a wage", "2.2", "h", "All of it can still be written down."},
		{[]report.Missing{late}, "The costliest gap: 9 batches of 2025 last counted so early that more may have come up since", "0", "min", "Nothing of it can be written down any more; it can only be done better next time."},
	} {
		r := *houseReport(t)
		r.Missing = tt.missing
		f := pageOf(t, &r).missingFinding()
		if bare(f.Title) != tt.title || f.Big != tt.big || f.Unit != tt.unit || bare(f.Say[0]) != tt.says {
			t.Errorf("%q %s %s %q, want %+v", bare(f.Title), f.Big, f.Unit, bare(f.Say[0]), tt)
		}
	}
}

// Problems of a kind stand together, the errors first, three of each; the rest is counted.
func TestProblemsOfAKind(t *testing.T) {
	r := *houseReport(t)
	r.Problems = nil
	for i := range 5 {
		r.Problems = append(r.Problems,
			records.Problem{Pos: records.Pos{File: "costs.csv", Line: i + 2, Column: 3, Cell: fmt.Sprint("C", i+2)}, Check: "repeats", Found: "twice"},
			records.Problem{Pos: records.Pos{File: "counts.csv", Line: i + 2, Cell: fmt.Sprint("E", i+2)}, Severity: records.Error, Check: "number", Found: "6O", Expected: "a number", Remedy: "mend it"})
	}
	records.SortProblems(r.Problems)
	list := pageOf(t, &r).problemList()
	if got := bare(list.Title); got != "5 errors and 5 warnings in the logs and notes" {
		t.Error(got)
	}
	var told []string
	for _, g := range list.Table.Groups {
		told = append(told, bare(g.Sub), bare(g.Rows[0].Cells[0]), bare(g.Rows[len(g.Rows)-1].Cells[0]), fmt.Sprint(len(g.Rows)))
	}
	want := "5 errors in counts.csv|counts.csv, line 2, E2|and 2 more like it|4|5 warnings in costs.csv|costs.csv, line 2, C2|and 2 more like it|4"
	if got := strings.Join(told, "|"); got != want {
		t.Errorf("%s\nwant %s", got, want)
	}
	warning, fault := records.Problem{}, records.Problem{Severity: records.Error}
	for _, tt := range []struct {
		problems []records.Problem
		want     string
	}{
		{nil, "No problem was found in the logs and notes"},
		{[]records.Problem{warning}, "1 warning in the logs and notes"},
		{[]records.Problem{fault, fault}, "2 errors in the logs and notes"},
	} {
		if got := bare(problemTitle(tt.problems)); got != tt.want {
			t.Errorf("%q, want %q", got, tt.want)
		}
	}
}

// The page of the sowings-only book is worth opening: what to write down next, the pages
// that it gives, and nothing that is not so.
func TestMissingOfPoorBooks(t *testing.T) {
	r := reportOf(t, example("poor/sowings-only"), report.Options{})
	b, batches := buildOf(t, r, nil), words.Batches(len(r.Records))
	expect(t, textOf(t, b, "missing.html"), "The costliest gap: "+bare(batches)+" in trays of which nothing is written", "can only be done better next time", "What to write down, the costliest first",
		"Tray codes", "Write down: a row for each tray code in trays.csv", bare(batches), "trays.csv a new row for", "What can only be done better next time",
		"Germination counts", "Next time:", "No problem was found in the logs and notes", "Pages that are not there yet", "Seed lots", "Write a row for each packet into lots.csv")
	broken := buildOf(t, reportOf(t, example("ottermoss-broken"), report.Options{}), nil)
	expect(t, textOf(t, broken, "missing.html"), "2 errors in the logs and notes", "2 rows of 2 files were left out of every figure.", "1 error in counts.csv", "the letter O stands for a zero", "1 error in out.csv", "2024-02-30")
}

// A page's gap line counts the gaps of its season and those of all seasons, in its logs.
func TestGapLine(t *testing.T) {
	r := *houseReport(t)
	r.Missing = []report.Missing{
		{What: "plants out", Season: 2025, Batches: []string{"a", "b"}, Remedy: "plants_out in sowings.csv"},
		{What: "count", Season: 2024, Batches: []string{"c"}, Remedy: "a row in counts.csv"},
		{What: "wage", Remedy: "wage in book.csv"},
	}
	s := newSite(&r, nil)
	for _, tt := range []struct {
		season int
		logs   []string
		want   string
	}{
		{2025, allLogs, "2 gaps in the records of 2025; the costliest: 2 batches without a number of plants out."},
		{2024, []string{"counts.csv"}, "1 gap in the records of 2024; the costliest: 1 batch without a count."},
		{0, []string{"book.csv"}, "1 gap in the records."},
		{2025, []string{"house.csv"}, ""},
	} {
		line := s.gapLine(newPage(s, spec{season: tt.season, logs: tt.logs}))
		if bare(line) != tt.want {
			t.Errorf("%+v, want %q", line, tt.want)
		}
	}
}

// The heading of what is missing names any gap there is in a phrase that goes on from its
// batches, or stands without them.
func TestGapTitle(t *testing.T) {
	for _, tt := range []struct {
		m    report.Missing
		want string
	}{
		{report.Missing{What: "count", Season: 2025, Touched: 12}, "12 batches of 2025 without a count"},
		{report.Missing{What: "cells sown, or plants out", Season: 2024, Touched: 1}, "1 batch of 2024 with more plants than cells"},
		{report.Missing{What: "price of a tray: FLAT", Touched: 3}, "3 batches in tray FLAT without a price"},
		{report.Missing{What: "price of a tray: FLAT"}, "tray FLAT without a price"},
		{report.Missing{What: "seeds in a lot: L-1, L-2"}, "lots L-1 and L-2 without a number of seeds"},
		{report.Missing{What: "tray codes", Touched: 34}, "34 batches in trays of which nothing is written"},
		{report.Missing{What: "costs", Touched: 34}, "34 batches without a cost"},
		{report.Missing{What: "wage", Touched: 34}, "hours of work without a wage"},
		{report.Missing{What: "places on the benches", Touched: 34}, "benches without a number of places"},
	} {
		if got := bare(gapTitle(tt.m)); got != tt.want {
			t.Errorf("%s: got %q, want %q", tt.m.What, got, tt.want)
		}
	}
	sources, err := filepath.Glob("../report/missing_*.go")
	if err != nil {
		t.Fatal(err)
	}
	kinds := 0
	for _, source := range sources {
		text, err := os.ReadFile(source)
		if err != nil {
			t.Fatal(err)
		}
		for _, found := range regexp.MustCompile(`gap\{"([^"]+)"`).FindAllSubmatch(text, -1) {
			kinds++
			what := string(found[1])
			if gapPhrases[what] == "" && settingPhrases[what] == "" {
				t.Errorf("%s: no phrase for %q", source, what)
			}
		}
	}
	if kinds < 40 {
		t.Errorf("%d kinds of gaps found", kinds)
	}
}

// What batches lack, as the line at a page's foot says it: grammar for one code and for
// many, and no name of a gap that the records of any example give is without its phrase.
func TestGapWords(t *testing.T) {
	for what, want := range map[string]string{
		"count":                     "without a count",
		"price of a tray: FLAT":     "in tray FLAT without a price",
		"life of a tray: A, B":      "in trays A and B without a length of life",
		"trays bought: A, B, C, D":  "in trays A, B and 2 more with more broken or sold than bought",
		"price of a seed lot: L-1":  "from lot L-1 without a price",
		"minutes a use: A and B":    "in trays to compare, without the minutes that a use takes",
		"cells sown, or plants out": "with more plants than cells",
		"something new":             "without something new",
	} {
		if got := bare(gapWords(report.Missing{What: what})); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
	told := 0
	for _, r := range []*report.Report{houseReport(t), reportOf(t, example("ottermoss-broken"), report.Options{}), reportOf(t, example("tiny"), report.Options{}),
		reportOf(t, example("poor/third-blank"), report.Options{}), reportOf(t, example("poor/sowings-only"), report.Options{})} {
		for _, m := range r.Missing {
			what, _, _ := strings.Cut(m.What, ": ")
			if _, known := gapPhrases[what]; len(m.Batches) > 0 && !known {
				t.Errorf("%s has no phrase", what)
			}
			told += len(m.Batches)
		}
	}
	if told == 0 {
		t.Error("no gap was told")
	}
}
