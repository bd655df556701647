package templates

import (
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
)

// What the leeway says, kind by kind: the last stretch of days in which at least
// 80 of 100 plants are still fit, and how it goes on.
func TestLeewaySentence(t *testing.T) {
	band := func(late int, fit float64, batches int) report.Leeway {
		l := report.Leeway{Kind: "air-pruning", DaysLate: late, Rate: report.Rate{Batches: batches}}
		if batches >= report.FewBatches {
			l.Rate = shareOf(fit, 100, batches, 0.5, 0.9)
		}
		return l
	}
	tests := []struct {
		name  string
		bands []report.Leeway
		want  string
	}{
		{"all fit", []report.Leeway{band(0, 95, 9), band(15, 80, 4)}, "In air-pruning trays, 15 days late or more still left 80 % (50 to 90) of the plants fit, 4 batches."},
		{"then not", []report.Leeway{band(4, 85, 5), band(8, 79.4, 6)}, "4 to 7 days late still left 85 % (50 to 90) of the plants fit, 5 batches; 8 to 14 days late left 79 % (50 to 90), 6 batches."},
		{"then too few", []report.Leeway{band(1, 85, 5), band(4, 10, 2)}, "1 to 3 days late still left 85 % (50 to 90) of the plants fit, 5 batches; fewer than 3 batches were looked at later than that."},
		{"never", []report.Leeway{band(0, 60, 5)}, "In air-pruning trays fewer than 80 % were fit at any time: up to the planned day 60 % (50 to 90), 5 batches."},
		{"too few throughout", []report.Leeway{band(0, 60, 2)}, "In air-pruning trays the records cannot tell: no stretch of days past the planned one has looks at 3 batches."},
	}
	for _, tt := range tests {
		got := strings.ReplaceAll(bare(string(leewaySentence("air-pruning", tt.bands))), nbsp, " ")
		if !strings.Contains(got, tt.want) {
			t.Errorf("%s: got %q, want %q", tt.name, got, tt.want)
		}
	}
}

// bare takes the tags off a sentence.
func bare(s string) string {
	for {
		i, j := strings.IndexByte(s, '<'), strings.IndexByte(s, '>')
		if i < 0 || j < i {
			return s
		}
		s = s[:i] + s[j+1:]
	}
}

// Quality: the farm's own words, and groups looked at too seldom below a line.
func TestQualityPage(t *testing.T) {
	r := sample(t, false)
	r.Book.Settings.ScoreWords = [5]string{"compost", "poor", "will do", "good", "picture"}
	g := report.Group{Season: 2025, Crop: "lettuce", Variety: "Fenwimple", Cells: records.Known(72), Kind: "air-pruning"}
	few := g
	few.Variety = "Ragamuffin"
	r.Quality = []report.Quality{{Group: few, Rate: shareOf(2, 10, 1, 0, 0)},
		{Group: g, Rate: shareOf(54, 60, 4, 0.8, 0.96), S: [5]report.Num{num(1), num(5), num(20), num(30), num(4)}, Marks: 2}}
	r.Leeway = []report.Leeway{{Kind: "air-pruning", DaysLate: 8, Rate: shareOf(86, 100, 9, 0.78, 0.91)}, {Kind: "air-pruning", DaysLate: 15, Rate: report.Rate{Batches: 2}}}
	r.Usable = []report.Usable{{Group: g, Rate: shareOf(300, 400, 4, 0.6, 0.85), LeftOut: 1}}
	expect(t, words(t, buildOf(t, r, nil), "quality.html"),
		"In air-pruning trays, 8 to 14 days late still left 86 % (78 to 91) of the plants fit, 9 batches; fewer than 3 batches were looked at later than that.",
		"8 to 14 days late", "86 %", "3: will do – fit to set out from here up",
		"Fenwimple", "90 %", "80 to 96", "Looked at too seldom to judge: fewer than 3 batches", "Ragamuffin",
		"2 looks with one overall mark only", "1 compost", "Usable plants of the cells sown", "75 %", "What the records could not tell")
}

// Lots: the verdict of each in words.
func TestLotVerdicts(t *testing.T) {
	yes, no := records.Known(true), records.Known(false)
	counted := report.LotFigure{Batches: []string{"B"}, Counted: 1, Rate: shareOf(80, 100, 1, 0.7, 0.9), SeedRate: num(0.8), SeedLow: num(0.7), SeedHigh: num(0.9)}
	tests := []struct {
		want   string
		change func(*report.LotFigure)
	}{
		{"below its packet", func(l *report.LotFigure) { l.Below, l.Label = yes, num(0.99) }},
		{"within what a mix allows", func(l *report.LotFigure) { l.Below, l.Label = no, num(0.9) }},
		{"not compared: a sown seed is a ball of several", func(l *report.LotFigure) { l.Cluster, l.Label = true, num(0.9) }},
		{"no figure on the packet", func(l *report.LotFigure) {}},
		{"not sown", func(l *report.LotFigure) { l.Batches, l.Counted = nil, 0 }},
		{"not counted", func(l *report.LotFigure) { l.Counted = 0 }},
		{"different seeds a cell: no rate of one seed", func(l *report.LotFigure) { l.Label, l.SeedRate = num(0.9), report.Num{} }},
		{"too few batches", func(l *report.LotFigure) { l.Label = num(0.9) }},
	}
	for _, tt := range tests {
		l := counted
		tt.change(&l)
		if got := string(lotVerdict(l).Value); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
}

// Lots: the flagged one as a sentence, the trail, batches without a lot, and what
// the marks say together.
func TestLotsPage(t *testing.T) {
	r := sample(t, false)
	r.Batches[1].Lot = ""
	lot := func(code string, organic, treated records.Maybe[bool]) report.LotFigure {
		return report.LotFigure{Lot: records.Lot{Code: code, Crop: "lettuce", Variety: "Fenwimple", Supplier: "Tuppenny Seed Loft", LotNumber: "T1", Organic: organic, Treated: treated},
			Batches: []string{"B03 Fenwimple"}, Counted: 1, Rate: shareOf(60, 100, 1, 0.5, 0.7), SeedRate: num(0.6), SeedLow: num(0.5), SeedHigh: num(0.7),
			SeedsPerCell: records.Known(1), SeedsBought: num(500), SeedsSown: num(144), Minimum: num(0.8)}
	}
	yes, no := records.Known(true), records.Known(false)
	flagged := lot("L1", yes, yes)
	flagged.Label, flagged.Allowance, flagged.Below = num(0.9), num(0.07), yes
	over := lot("L2", no, records.Maybe[bool]{})
	over.SeedsSown = num(600)
	r.Lots = []report.LotFigure{flagged, over}
	expect(t, words(t, buildOf(t, r, nil), "lots.html"),
		"1 lot sown in season 2025. Of 1 with a packet’s figure and counts enough, 1 came up worse than a mix allows.",
		"L1, lettuce Fenwimple: 60 of 100 seeds came up (50 to 70), 1 batch. The packet says 90, and up to 7 points lower is usual in a mix",
		"It lies below the legal minimum of 80 % too", "Emergence in a mix is not a laboratory test.", "below its packet", "7 CFR 201.31",
		"five years", "7 CFR 205.103", "1 batch from seed without a lot: B01 Fenwimple.", "Tuppenny Seed Loft", "356", "of 500", "100 more sown than bought",
		"Marked as both organic and treated", "Of 1 lot it is not written whether they are treated.", "Treated seed carries a pesticide.")
}

// Germination: verdicts in words, groups sown too seldom below a line, the rate of
// one seed, losses, and the caution wherever there is a chamber.
func TestGerminationPage(t *testing.T) {
	r := sample(t, false)
	r.Emergence[3].SeedsPerCell, r.Emergence[3].SeedRate = records.Known(4), num(0.36)
	r.Losses = []report.Loss{{Season: 2025, Crop: "lettuce", Cause: "mice", Cells: 40, Batches: 2, ByMonth: [13]int{3: 30, 4: 10}},
		{Season: 2025, Crop: "kale", Cause: "", Cells: 5, Batches: 1, ByMonth: [13]int{4: 5}}}
	r.Chambers = []report.ChamberFigure{{Season: 2025, Chamber: "big box", Rate: shareOf(80, 100, 4, 0, 0), DaysIn: num(3), Readings: 12, MeanTemp: num(22), LowTemp: num(20), HighTemp: num(24),
		Crops: []report.ChamberCrop{{Crop: "lettuce", Batches: 4, UsualLow: num(15), UsualHigh: num(21), MeanTemp: num(22), Outside: num(0.75)}}}}
	r.Room = []report.Room{{Season: 2025, Place: report.ChamberName, Kind: report.ChamberPlace, Capacity: num(14), Peak: 16, PeakDate: day(t, "2025-04-02"), DaysOver: records.Known(3)}}
	r.Timing = []report.Timing{{Group: r.Emergence[3].Group, Batches: 3, T50: num(4.4), Earliest: num(3), Latest: num(6), Mean: num(5), Before: 2, CountedEarly: 1}}
	b := buildOf(t, r, nil)
	expect(t, words(t, b, "germination.html"), "Ragamuffin", "60 %", "Fenwimple", "82 %", "Sown too seldom to judge: fewer than 3 batches", "what came up of one seed", "4", "36 %",
		"clearly worse", "−22", "−30.0 to −10.0", "clearly better", "4.5", "3 to 6", "1 counted early and 2 up before the first count",
		"45 cells that had come up were lost again. Causes: mice (40 cells in 2 batches, most of it lettuce) and no cause written (5 cells in 1 batch, most of it kale).",
		"Most trays stood in the chambers on 2 April 2025: 16 trays, where 14 fit: too full on 3 days.", "big box", "15 to 21 °C", "75 %",
		"Harrington and Minges (1954)", "Follow the local code", "licensed electrician", "residual-current", "over-temperature cut-out", "Earlier seasons")
	r.Chambers = nil
	if strings.Contains(words(t, buildOf(t, r, nil), "germination.html"), "electrician") {
		t.Error("a caution about chambers where there is none")
	}
}
