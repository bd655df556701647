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
	v, w := pageOf(t, houseReport(t)).sheets(0), pageOf(t, outsOnly(t)).sheets(0)
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
}

// codesOn are the batches on a form.
func codesOn(f form) string {
	var codes []string
	for _, r := range f.Rows {
		if r.Code != "" {
			codes = append(codes, bare(r.Code))
		}
	}
	return strings.Join(codes, " ")
}

// Each form holds the batches that are due for it: looks from ten days before the planned
// day on, setting out from seven.
func TestFormsHoldWhatIsDue(t *testing.T) {
	v := pageOf(t, houseReport(t)).sheets(0)
	for i, want := range []string{"LS25-7", "LA25-4 LS25-11 LS25-12 LS25-8", "LA25-4 LS25-11 LS25-8"} {
		if got := codesOn(v.Forms[i]); got != want {
			t.Errorf("%s: %s, want %s", v.Forms[i].Title, got, want)
		}
	}
	if v.Batches != 5 {
		t.Errorf("%d batches, want 5", v.Batches)
	}
	edge := func(planned records.Date) string {
		r := changedHouse(t, func(b *records.Book) {
			for i := range b.Sowings {
				if b.Sowings[i].Code == "LS25-9" {
					b.Sowings[i].Planned = planned
				}
			}
		})
		return codesOn(pageOf(t, r).sheets(0).Forms[1])
	}
	if !strings.Contains(edge(today+10), "LS25-9") || strings.Contains(edge(today+11), "LS25-9") {
		t.Error("a look is due ten days before the planned day, not eleven")
	}
}

// Labels are one for each tray begun of what was sown in the last seven days, or since a
// day, or is written down for the next seven, with all that a tray in the house must tell.
func TestLabels(t *testing.T) {
	r := changedHouse(t, func(b *records.Book) {
		for code, sown := range map[string]records.Date{"now": today, "week": today - 6, "before": today - 7, "ahead": today + 7, "later": today + 8} {
			b.Sowings = append(b.Sowings, records.Sowing{Code: code, Sown: sown, Crop: "spinach", Variety: "Larkleaf", Tray: "S72", Trays: 1.5, SeedsPerCell: 3,
				Start: records.FromSeed, Lot: "FEN-25", Planned: today + 40})
		}
	})
	codes := func(v sheetsPage) string {
		var out []string
		for _, l := range v.Labels {
			out = append(out, bare(l.Code))
		}
		return strings.Join(out, " ")
	}
	if got := codes(pageOf(t, r).sheets(0)); got != "ahead ahead now now week week" {
		t.Errorf("labels of %s", got)
	}
	v := pageOf(t, r).sheets(today - 7)
	if got := codes(v); got != "ahead ahead before before now now week week" {
		t.Errorf("since a week ago: labels of %s", got)
	}
	var lines []string
	for _, l := range v.Labels[1].Lines {
		lines = append(lines, bare(l))
	}
	want := "spinach Larkleaf|sown 2025-06-17 · for 2025-07-20|3 seeds a cell · lot FEN-25|S72 · tray 2 of 2"
	if got := strings.Join(lines, "|"); got != want {
		t.Errorf("a label says %s, want %s", got, want)
	}
	pot := report.Record{}
	for _, b := range houseReport(t).Records {
		if !b.FromSeed && b.From != "" {
			pot = *b
		}
	}
	if got := bare(seedLine(&pot)); !strings.HasPrefix(got, "from "+pot.From) {
		t.Errorf("a batch that was potted on: %q", got)
	}
}

var styled = regexp.MustCompile(`(?s)<style>(.*?)</style>`)

// The file of sheets needs no other file: its style stands in it and is the one
// its policy lets pass; names in it are text.
func TestSheetFile(t *testing.T) {
	for _, r := range []*report.Report{houseReport(t), hostileReport(t)} {
		sheets, err := SheetFile(r, day(t, "2025-05-27"))
		if err != nil || sheets.Batches != 5 || sheets.Labels != 2 {
			t.Fatalf("%d batches, %d labels, %v", sheets.Batches, sheets.Labels, err)
		}
		text := string(sheets.Body)
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
	if sheets, err := SheetFile(over, 0); err != nil || sheets.Batches+sheets.Labels != 0 {
		t.Errorf("without a list: %d batches, %d labels, %v", sheets.Batches, sheets.Labels, err)
	}
}
