package templates

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report"
	"traybook/report/chart"
)

func day(t testing.TB, iso string) records.Date {
	t.Helper()
	d, ok := records.ParseISO(iso)
	if !ok {
		t.Fatalf("%s is no date", iso)
	}
	return d
}

func num(v float64) report.Num { return records.Known(v) }

func shareOf(x, n float64, batches int, low, high float64) report.Rate {
	s := report.Rate{Batches: batches, X: x, N: n, Share: num(x / n)}
	if high > 0 {
		s.Low, s.High = num(low), num(high)
	}
	return s
}

// sample is a report made by hand, with names that try to break a page where
// hostile is true. The figures need not agree with one another.
func sample(t testing.TB, hostile bool) *report.Report {
	t.Helper()
	crop, variety, lot, note := "lettuce", "Fenwimple", "L1", "Dry under the fan."
	if hostile {
		crop, variety = `</script><script>alert(1)</script>`, `=cmd|' /C calc'!A0`
		lot, note = "\u202eתרד\u202c <img src=x onerror=alert(2)>", `"><b onmouseover=alert(3)>`
	}
	book := &records.Book{
		Settings: records.Settings{Farm: "Farm " + crop, Currency: "USD", SeasonStarts: 1, Confidence: 0.95, SureOfTarget: 0.9, UsableFrom: 3, DiscountRate: 0.05},
		Costs:    []records.Cost{{Category: records.Seed, Amount: num(3), Date: day(t, "2025-03-01")}, {Category: records.Heat, Amount: num(40), Date: day(t, "2025-03-01")}},
		Files:    []records.File{{Name: "sowings.csv", Rows: 14}, {Name: "counts.csv", Rows: 9, LeftOut: 2}, {Name: "costs.csv", Rows: 5, LeftOut: 1}},
		Notes: []records.Note{{File: "notes/2025.md", Year: 2025, Text: "# 2025: " + note + "\n\nHot. ![the tap](https://example.org/t.png)\n\n" +
			"```figure emergence\n```\n\n### Trays\n\n| a | b |\n|---|--:|\n| 1 | ~~2~~ |\n\n```figure nothing\n```\n\n<script>alert(4)</script>\n\n[x](javascript:alert(5))\n"}},
	}
	problems := []records.Problem{{Pos: records.Pos{File: "counts.csv", Line: 4, Column: 7, Cell: "D4"}, Severity: records.Error, Check: "x", Found: "read " + note, Expected: "a whole number", Remedy: "write digits"}}
	r, err := report.New(book, problems, report.Options{})
	if err != nil {
		t.Fatal(err)
	}
	r.Season, r.Seasons, r.LastDate = 2025, []int{2024, 2025}, day(t, "2025-04-12")
	r.Inputs = []records.Input{{Name: "farm", Value: book.Settings.Farm, Source: "written"}}
	for i := range 14 {
		season := 2024 + i%2
		b := &report.Batch{Season: season, TrayCells: records.Known(72), Kind: []string{"air-pruning", "solid-wall"}[i/2%2], CellsSown: records.Known(144), FromSeed: true,
			End: day(t, fmt.Sprint(season, "-04-12")), EndHow: report.Written, Looked: num(144), Emerged: num(float64(100 + 3*i)), EverUp: num(120),
			Usable: num(float64(90 + i)), UsableHow: report.ByOut, Parts: report.Parts{Seed: 3, Heat: 9}, Cost: num(12), PerTransplant: num(0.13)}
		b.Code, b.Sown, b.Crop, b.Variety, b.Lot = fmt.Sprintf("B%02d %s", i, variety), day(t, fmt.Sprint(season, "-03-0", 1+i%9)), crop, variety, lot
		b.Tray, b.Trays, b.SeedsPerCell, b.Start, b.Note, b.Planned = "A72", 2, 1, records.FromSeed, note, b.End
		b.Counts = []records.Count{{Batch: b.Code, Date: b.Sown + 10, Cells: records.Known(144), Emerged: records.Known(100 + 3*i), Cause: note, Lost: records.Known(2)}}
		b.Looks = []records.Score{{Date: b.End, Looked: records.Known(20), Usable: records.Known(18)}}
		b.SetOut, b.PlantsOut, b.Surplus = b.End, records.Known(90), records.Known(2)
		r.Batches = append(r.Batches, b)
	}
	for _, season := range r.Seasons {
		g := report.Group{Season: season, Crop: crop, Variety: variety, Cells: records.Known(72), Kind: "air-pruning"}
		other := g
		other.Variety, other.Kind = "Ragamuffin", "solid-wall"
		r.Emergence = append(r.Emergence, report.Emergence{Group: g, Rate: shareOf(410, 500, 5, 0.76, 0.87)},
			report.Emergence{Group: other, Rate: shareOf(300, 500, 4, 0.5, 0.7)}, report.Emergence{Group: other, Rate: shareOf(40, 50, 1, 0, 0)})
		r.Cost = append(r.Cost, report.Cost{Group: g, Batches: 6, Rests: 5, Usable: num(480), Total: num(60), PerTransplant: num(0.125), FailedShare: num(0.2), EstimatedShare: num(0.1)})
	}
	r.Ledger = []report.LedgerLine{{Season: 2025, Category: "seed", Ledger: 20, Borne: 19, Unborne: 1}, {Season: 2025, Category: report.TrayCharge, Ledger: 60, Borne: 50, Unborne: 10}}
	r.Differences = []report.Difference{{Season: 2025, Crop: crop, Variety: variety, Batches: 5, OtherBatches: 4, Difference: num(0.22), Low: num(0.1), High: num(0.3), Verdict: report.ClearlyHigher},
		{Season: 2025, Crop: crop, Variety: "Ragamuffin", Batches: 4, OtherBatches: 5, Difference: num(-0.22), Low: num(-0.3), High: num(-0.1), Verdict: report.ClearlyLower}}
	r.Payback = []report.Payback{{Tray: "A72", Other: "S72", Cells: 72, Matches: 14, Dates: 9, Difference: num(0.061), DifferenceLow: num(0.02), DifferenceHigh: num(0.1),
		Gain: num(1.42), GainLow: num(0.4), GainHigh: num(2.4), Price: num(12), OtherPrice: num(1.2), PaybackUses: num(8.5), WorthToday: num(21.3), Life: report.Life{Uses: num(30)},
		FlipValue: num(0.08), FlipPrice: num(31), HalfLifePays: records.Known(true), Verdict: report.PaysLow, Buy: &report.Buy{Owned: 40, N: 23, Low: 8, High: 41, PeakInUse: 62}}}
	r.Missing = []report.Missing{{What: "date set out", Batches: []string{r.Batches[0].Code, r.Batches[2].Code}, Costs: "Their cost a transplant rests on a guess.", Remedy: "Fill set_out in sowings.csv, or write a row in out.csv."}}
	return r
}

// drawn is a drawing with ids and references as the drawer makes them.
func drawn(name string) chart.Drawing {
	return chart.Drawing{Name: name, SVG: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 200" role="img" aria-labelledby="` + name + `-title ` + name + `-desc"><title id="` + name + `-title">T</title><desc id="` + name + `-desc">D</desc>` +
		`<defs><clipPath id="` + name + `-c1"><path d="M0 0L9 9"></path></clipPath></defs><rect x="20" y="20" width="400" height="60" fill="var(--c1)" clip-path="url(#` + name + `-c1)"></rect><text x="20" y="120" fill="var(--ink)" font-size="14">url(#` + name + `-c1) is only text</text></svg>`}
}

func sampleCharts() Charts {
	matches := chart.Name("matches", "A72", "S72")
	return Charts{"emergence-2025": drawn("emergence-2025"), "costs-2025": drawn("costs-2025"), matches: {Name: matches, Missing: chart.MissingRuntime}}
}
