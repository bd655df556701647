package templates

import (
	"html/template"
	"slices"

	"traybook/report/trays"
	"traybook/report/words"
)

// trialPart is the side-by-side trial that would tell where the records cannot.
type trialPart struct {
	Words template.HTML
	Table *table
}

// trialPart is nil where every pair has an answer.
func (p *page) trialPart() *trialPart {
	unknown := slices.ContainsFunc(p.r.Trays.Payback, func(pb trays.Payback) bool { return pb.Verdict == "" })
	if !unknown && len(p.r.Trays.Payback) > 0 {
		return nil
	}
	return &trialPart{join(fairWords, p.trialSize()), p.trialTable()}
}

// fairWords says why a trial is laid out side by side.
const fairWords = template.HTML("The same seed, sown on the same day in both trays, is the only fair comparison.")

// trialSize says what the numbers of the table are, or why there are none.
func (p *page) trialSize() template.HTML {
	if len(p.r.Trays.Payback) == 0 {
		return "How many sowing dates it takes can be told once both codes stand in trays.csv, with the same cells, different kinds and a price each, and both were sown with one variety."
	}
	if !slices.ContainsFunc(p.r.Trays.Trial, func(t trays.Trial) bool { return t.Sowings.Known }) {
		return "How many sowing dates it takes cannot be told yet: too few batches have plants out and plants left over written."
	}
	return "This is how many sowing dates it takes to see a difference of so many plants in 100 cells, four times in five; the smaller the difference, the more dates."
}

// trialTable is how many sowing dates tell a difference, by pair.
func (p *page) trialTable() *table {
	t := p.table("trial", "Sowing dates with one tray of each", "trial", plain("Trays"), nums("2 in 100", "5 in 100", "10 in 100"))
	for _, pb := range p.r.Trays.Payback {
		if pb.Verdict == "" && p.trialKnown(pb) {
			t.add(say("%s beside %s", name(pb.Tray), name(pb.Other)), p.sowingsFor(pb, 0.02), p.sowingsFor(pb, 0.05), p.sowingsFor(pb, 0.10))
		}
	}
	return t
}

// trialKnown reports whether any size of trial can be told for a pair.
func (p *page) trialKnown(pb trays.Payback) bool {
	return slices.ContainsFunc(p.r.Trays.Trial, func(t trays.Trial) bool {
		return t.Tray == pb.Tray && t.Other == pb.Other && t.Sowings.Known
	})
}

// sowingsFor is the sowing dates that tell a difference, a share of cells.
func (p *page) sowingsFor(pb trays.Payback, difference float64) string {
	for _, t := range p.r.Trays.Trial {
		if t.Tray == pb.Tray && t.Other == pb.Other && t.Difference == difference && t.Sowings.Known {
			return words.Whole(t.Sowings.Value)
		}
	}
	return words.None
}
