package templates

import (
	"crypto/sha256"
	"encoding/base64"
	"regexp"
	"slices"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
)

// weekReport has one line of every kind: batches of the sample in the parts of the
// week's list.
func weekReport(t *testing.T, hostile bool) *report.Report {
	r := sample(t, hostile)
	b := func(i int) *report.Batch {
		one := *r.Batches[i]
		one.EndHow, one.Wanted = report.Open, records.Known(100)
		r.Batches[i] = &one
		return r.Batches[i]
	}
	count, late, short, lost, near := b(1), b(3), b(5), b(7), b(9)
	count.Trays, late.Kind, lost.Planned = 2.5, "air-pruning", 0
	r.Leeway = []report.Leeway{{Kind: "air-pruning", DaysLate: 8, Rate: shareOf(86, 100, 9, 0.78, 0.91)}}
	r.Book.Settings.BenchPlaces = records.Known(106.0)
	r.Week = []report.WeekLine{
		{What: report.ToCount, Batch: count, Subject: count.Code, Value: num(9), TypicalDays: num(7), Date: day(t, "2025-04-10")},
		{What: report.Freeing, Date: day(t, "2025-04-14"), Subject: "A72", Value: num(4)},
		{What: report.Late, Batch: late, Subject: late.Code, Date: day(t, "2025-04-02"), Value: num(10)},
		{What: report.RoomLeft, Date: r.LastDate, Subject: report.BenchName, Value: num(-3)},
		{What: report.Short, Batch: lost, Subject: lost.Code, Expected: num(80.2), Value: num(19.8)},
		{What: report.Short, Batch: short, Subject: short.Code, Expected: num(60.6), Value: num(39.4), Date: day(t, "2025-04-20"), ResowPossible: true},
		{What: report.Short, Batch: near, Subject: near.Code, Expected: num(98.9), Value: num(1.1), Date: day(t, "2025-03-20")},
	}
	return r
}

// Every line says what to do with which batch, and why; what can still be mended
// by sowing stands first.
func TestWeek(t *testing.T) {
	expect(t, words(t, buildOf(t, weekReport(t, false), nil), "week.html"),
		"As of 12 April 2025.",
		"To count 1", "Count B01 Fenwimple: lettuce Fenwimple, 2.5 trays of A72", "9 days ago; its crop has not been timed here, so 7 days stand in",
		"Late 1", "Set out, pot on or clear B03 Fenwimple", "Planned for 2 April 2025, 10 days ago. In air-pruning trays, plants looked at 8 to 14 days late were still fit in 86 % (78 to 91), 9 batches.",
		"Likely short 3", "Re-sow for B05 Fenwimple: lettuce Fenwimple, 2 trays of A72 by 20 April 2025", "Wanted 100; its 144 cells give 61 at the low end of what like batches gave: short by 39. A sowing up to that day should still be ready",
		"Check B07 Fenwimple", "No planned day is written",
		"Spare every plant of B09 Fenwimple", "Wanted 100; its 144 cells give 99 at the low end of what like batches gave: short by 1.",
		"Trays coming free", "14 April 2025", "A72", "4",
		"Room left", "3 trays too many on the benches, which hold 106.")
}

// A week with nothing to do says so, part by part.
func TestEmptyWeek(t *testing.T) {
	b := buildOf(t, sample(t, false), nil)
	expect(t, words(t, b, "week.html"), "No batch is open", "Nothing to count", "Nothing is late", "Nothing looks short",
		"No trays come free in the next two weeks.", "It cannot be told: write bench_places and chamber_places into book.csv.")
	expect(t, words(t, b, "sheets.html"), "No batch stands on this week’s list: the forms are blank.", "Germination counts")
}

// The forms' columns are those of the logs they are typed into, in the contract's
// order.
func TestFormsHaveTheLogsColumns(t *testing.T) {
	r := weekReport(t, false)
	outOnly := weekReport(t, false)
	outOnly.Book.Outs = []records.Out{{Batch: "x"}}
	p := newPlace(newSite(r, nil), spec{})
	v, n := p.sheets()
	q := newPlace(newSite(outOnly, nil), spec{})
	w, _ := q.sheets()
	if n != 5 {
		t.Errorf("%d batches on the forms, want 5", n)
	}
	if w.Forms[2].Log != "out.csv" || v.Forms[2].Log != "sowings.csv" {
		t.Errorf("forms for setting out: %s and %s", w.Forms[2].Log, v.Forms[2].Log)
	}
	for _, f := range append(v.Forms, w.Forms[2]) {
		at := slices.IndexFunc(records.Logs, func(l records.Log) bool { return l.Name == f.Log })
		last := -1
		for _, c := range f.Columns {
			i := slices.IndexFunc(records.Logs[at].Columns, func(col records.Column) bool { return col.Name == c.Head })
			if i <= last {
				t.Errorf("%s: column %s is not a column of %s, or out of order", f.Title, c.Head, f.Log)
			}
			last = i
		}
		if rows := len(f.Rows); rows < blankRows {
			t.Errorf("%s: %d rows leave no room to write", f.Title, rows)
		}
	}
	if len(v.Labels) != 3+2+2+2+2 {
		t.Errorf("%d labels, want one for each tray begun: 11", len(v.Labels))
	}
}

var styled = regexp.MustCompile(`(?s)<style>(.*?)</style>`)

// The file of sheets needs no other file: its style stands in it and is the one
// its policy lets pass; names in it are text.
func TestSheetFile(t *testing.T) {
	for _, hostile := range []bool{false, true} {
		body, n, err := SheetFile(weekReport(t, hostile))
		if err != nil || n != 5 {
			t.Fatalf("%d batches, %v", n, err)
		}
		text := string(body)
		if !strings.HasPrefix(text, "<html") {
			t.Errorf("starts with %.20q", text)
		}
		for _, e := range elements(t, "sheets", text) {
			_, src := e.attrs["src"]
			_, href := e.attrs["href"]
			_, inline := e.attrs["style"]
			if src || href || inline || slices.Contains([]string{"link", "script", "img", "b"}, e.name) {
				t.Errorf("holds %s %v", e.name, e.attrs)
			}
		}
		style := styled.FindStringSubmatch(text)
		if strings.Contains(style[1], "url(") || strings.Contains(style[1], "@import") {
			t.Error("the style needs another file")
		}
		sum := sha256.Sum256([]byte(style[1]))
		if want := "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"; !strings.Contains(strings.ReplaceAll(text, "&#43;", "+"), strings.ReplaceAll(want, "'", "&#39;")) {
			t.Errorf("the policy does not name %s", want)
		}
	}
	if _, n, err := SheetFile(sample(t, false)); err != nil || n != 0 {
		t.Errorf("without a list: %d batches, %v", n, err)
	}
}
