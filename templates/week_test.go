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

// Every line says what to do with which batch, and why; what can still be mended
// by sowing stands first.
func TestWeek(t *testing.T) {
	full := changedHouse(t, func(b *records.Book) { b.Settings.BenchPlaces = records.Known(7.0) })
	expect(t, textOf(t, buildOf(t, full, nil), "week.html"),
		"As of 10 June 2025.",
		"To count 1", "Count LS25-7: lettuce Fenwimple, 2 trays of S72", "Sown on 27 May 2025, 14 days ago; half of what comes up is usually up after 4.5 days.",
		"Late 2", "Set out, pot on or clear LA25-4", "Planned for 2 June 2025, 8 days ago. In air-pruning trays, plants looked at 8 to 14 days late were still fit in 88 %", "3 batches.",
		"Likely short 5", "Re-sow for LS25-9: lettuce Fenwimple, 1 tray of S72 by 13 June 2025",
		"Wanted 70; its 72 cells give 53 at the low end of what like batches gave: short by 17. A sowing up to that day should still be ready for 20 July 2025.",
		"Check LS25-10", "No planned day is written",
		"Find plants elsewhere for LS25-11", "To be ready for 16 June 2025 a new sowing was due by 10 May 2025.",
		"Spare every plant of LS25-12", "Wanted 54; its 72 cells give 53 at the low end of what like batches gave: short by 1.",
		"Trays coming free", "19 June 2025", "S72", "1",
		"Room left", "2.5 trays too many on the benches, which hold 7.", "2 places left in the chambers, of 2.")
}

// A crop that was never timed is due by the usual days, and its line says so.
func TestUntimedCrop(t *testing.T) {
	r := changedHouse(t, func(b *records.Book) {
		b.Sowings = append(b.Sowings, records.Sowing{Code: "S25-1", Sown: day(t, "2025-06-01"), Crop: "spinach", Variety: "Larkleaf", Tray: "S72", Trays: 1, SeedsPerCell: 1, Start: records.FromSeed})
	})
	expect(t, textOf(t, buildOf(t, r, nil), "week.html"), "Count S25-1: spinach Larkleaf, 1 tray of S72", "9 days ago; its crop has not been timed here, so 7 days stand in")
}

// A week with nothing to do says so, part by part.
func TestEmptyWeek(t *testing.T) {
	done := changedHouse(t, func(b *records.Book) {
		b.Settings.BenchPlaces, b.Settings.ChamberPlaces = records.Maybe[float64]{}, records.Maybe[float64]{}
		b.Sowings = slices.DeleteFunc(b.Sowings, func(s records.Sowing) bool { return !s.SetOut.Known() })
	})
	b := buildOf(t, done, nil)
	expect(t, textOf(t, b, "week.html"), "No batch is open", "Nothing to count", "Nothing is late", "Nothing looks short",
		"No trays come free in the next two weeks.", "It cannot be told: write bench_places and chamber_places into book.csv.")
	expect(t, textOf(t, b, "sheets.html"), "No batch stands on this week’s list: the forms are blank.", "Germination counts")
}

// outsOnly is the report of a farm that writes what leaves the house into out.csv.
func outsOnly(t *testing.T) *report.Report {
	t.Helper()
	return changedHouse(t, func(b *records.Book) {
		for i := range b.Sowings {
			b.Sowings[i].SetOut = 0
		}
	})
}

// The forms' columns are those of the logs they are typed into, in the contract's
// order.
func TestFormsHaveTheLogsColumns(t *testing.T) {
	v, n := pageOf(t, houseReport(t)).sheets()
	w, _ := pageOf(t, outsOnly(t)).sheets()
	if n != 7 {
		t.Errorf("%d batches on the forms, want 7", n)
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
	if len(v.Labels) != 2+3+1+1+1+1+1 { // LA25-4 stands in two trays and a half
		t.Errorf("%d labels, want one for each tray begun: 10", len(v.Labels))
	}
}

var styled = regexp.MustCompile(`(?s)<style>(.*?)</style>`)

// The file of sheets needs no other file: its style stands in it and is the one
// its policy lets pass; names in it are text.
func TestSheetFile(t *testing.T) {
	for _, r := range []*report.Report{houseReport(t), hostileReport(t)} {
		body, n, err := SheetFile(r)
		if err != nil || n != 7 {
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
	over := changedHouse(t, func(b *records.Book) {
		b.Sowings = slices.DeleteFunc(b.Sowings, func(s records.Sowing) bool { return !s.SetOut.Known() })
	})
	if _, n, err := SheetFile(over); err != nil || n != 0 {
		t.Errorf("without a list: %d batches, %v", n, err)
	}
}
