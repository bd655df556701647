package templates

import (
	"fmt"
	"html/template"

	"traybook/records"
	"traybook/report/chart"
	"traybook/report/trays"
	"traybook/report/words"
)

// nextWords says how many to buy and what that rests on.
func (p *page) nextWords(pb trays.Payback) template.HTML {
	b := pb.Buy
	if b == nil {
		return ""
	}
	seasons := make([]string, len(b.Seasons))
	for i, s := range b.Seasons {
		seasons[i] = fmt.Sprint(s)
	}
	out := say("The sowings of %s were gone through again, day by day, as if %s and %s stood in one row and each sowing took the lowest free numbers. At the fullest, %s of the two were needed at once; %s of %s are owned.",
		list(seasons), name(pb.Tray), name(pb.Other), words.Plural(b.PeakInUse, "tray", "trays"), words.Whole(b.Owned), name(pb.Tray))
	return join(out, p.stopWords(pb))
}

// stopWords says where buying stops paying.
func (p *page) stopWords(pb trays.Payback) template.HTML {
	b := pb.Buy
	if b.PeakInUse <= b.Owned {
		return "So no further tray would ever have been used."
	}
	if b.N == 0 {
		out := say("Already the next tray, the %s, would stand idle too often to earn its price", ordinal(b.Owned+1))
		if b.High == 0 {
			return say("%s, even at the high end of the gain.", out)
		}
		return say("%s; at the high end of the gain, %s more would.", out, words.Whole(b.High))
	}
	return say("Up to the %s a tray is worth its price: %s more, %s at the low end of the gain and %s at the high end. Above, that is told to the nearest 5.",
		ordinal(b.Owned+b.N), words.Whole(b.N), words.Whole(b.Low), words.Whole(b.High))
}

// ordinal writes 31st, 32nd, 43rd.
func ordinal(n int) string {
	ending := "th"
	if n%100 < 11 || n%100 > 13 {
		switch n % 10 {
		case 1:
			ending = "st"
		case 2:
			ending = "nd"
		case 3:
			ending = "rd"
		}
	}
	return words.Whole(n) + ending
}

// nextChart draws how often a season each further tray would have been used.
func (p *page) nextChart(pb trays.Payback) more {
	f := p.figure(chart.Name("nexttray", pb.Tray, pb.Other), "Each further tray", "How often a season it would have been used.", nil)
	return more{Summary: "Drawn, tray by tray", Figures: []*figure{f}}
}

// nextTable sets trays with the same uses and verdicts in one row.
func (p *page) nextTable(pb trays.Payback) *table {
	t := p.table("nexttray-"+slug(pb.Tray+" "+pb.Other), say("Each further %s", name(pb.Tray)), "next_tray",
		plain("Tray"), nums("Uses a season"), plain("Buy?", "Low end", "High end"), nums("Seasons to pay back", "Worth today, "+p.money.Code()))
	for run := range runsOfTrays(p.r.Trays.NextTray, pb) {
		a, z := run[0], run[len(run)-1]
		t.add(nthWords(a.Nth, z.Nth), words.TenthsNumber(a.Uses), paysCell(a.Pays), paysCell(a.PaysLow), paysCell(a.PaysHigh),
			words.Of(a.PaybackSeasons, words.TenthsNumber), words.Of(a.WorthToday, p.money.SumNumber))
	}
	return t
}

// nthWords names a run of trays: 43rd, or 43rd to 47th.
func nthWords(first, last int) string {
	if first == last {
		return ordinal(first)
	}
	return ordinal(first) + " to " + ordinal(last)
}

// paysCell is yes, no, or a dash where it cannot be told.
func paysCell(b records.Maybe[bool]) cell {
	class := ""
	if b.Known {
		class = map[bool]string{true: "good", false: "bad"}[b.Value]
	}
	return cell{Value: markup(map[bool]string{true: yesNo(b), false: words.None}[b.Known]), Class: class}
}

// runsOfTrays yields a pair's further trays, those that are alike together.
func runsOfTrays(all []trays.NextTray, pb trays.Payback) func(func([]trays.NextTray) bool) {
	return func(yield func([]trays.NextTray) bool) {
		var run []trays.NextTray
		for _, n := range all {
			if n.Tray != pb.Tray || n.Other != pb.Other {
				continue
			}
			if len(run) > 0 && !alike(run[0], n) {
				if !yield(run) {
					return
				}
				run = nil
			}
			run = append(run, n)
		}
		if len(run) > 0 {
			yield(run)
		}
	}
}

// alike reports whether two further trays may share a row.
func alike(a, b trays.NextTray) bool {
	return a.Uses == b.Uses && a.Pays == b.Pays && a.PaysLow == b.PaysLow && a.PaysHigh == b.PaysHigh
}
