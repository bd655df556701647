package templates

import (
	"html/template"
	"slices"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/words"
)

// minutesText writes a time to mend: 35 min, 2.5 h; empty where there is nothing to
// write down.
func minutesText(minutes int) string {
	switch {
	case minutes == 0:
		return ""
	case minutes < 120:
		return words.Plural(minutes, "min", "min")
	}
	return words.Tenths(float64(minutes)/60, "h", "h")
}

// seasonSum is how many gaps a season has and how long it takes to mend them.
type seasonSum struct {
	season, gaps, minutes int
}

// seasonSums are the seasons with gaps, the one at hand first: the last comes first, what
// touches all seasons last.
func (p *page) seasonSums() []seasonSum {
	seasons, of := batch.GroupBy(p.r.Missing, func(m report.Missing) int { return m.Season })
	slices.Sort(seasons)
	slices.Reverse(seasons)
	var sums []seasonSum
	for _, season := range seasons {
		s := seasonSum{season: season, gaps: len(of[season])}
		for _, m := range of[season] {
			s.minutes += m.Minutes
		}
		sums = append(sums, s)
	}
	return sums
}

// missingFinding says how long it takes to mend what can be mended, and what costs most.
// The number is a time, as that is what keeps a grower from it: most lists of gaps turn
// out to be an evening.
func (p *page) missingFinding() finding {
	sums := p.seasonSums()
	gaps, minutes := 0, 0
	for _, s := range sums {
		gaps, minutes = gaps+s.gaps, minutes+s.minutes
	}
	if gaps == 0 {
		return finding{Title: "Nothing is missing", Big: "0", What: "gaps in the logs", Say: []template.HTML{"Every figure of the review rests on what is written down."}}
	}
	f := finding{Title: p.costliest(), Big: words.Whole(minutes), Unit: "min", What: say("to mend what can be mended"),
		Range: say("%s", words.Plural(gaps, "gap", "gaps")), Side: sumTable(sums)}
	if minutes >= 120 {
		f.Big, f.Unit = words.TenthsNumber(float64(minutes)/60), "h"
	}
	past := len(batch.Filter(p.r.Missing, func(m report.Missing) bool { return len(m.Places) == 0 }))
	f.Say = []template.HTML{p.pastWords(gaps, past)}
	if minutes > 0 {
		f.Note = "The time is an estimate: 1 minute a cell, 3 for what stands on a bill, a packet or a shelf, 5 for a count or a setting."
	}
	return f
}

// costliest is the finding: the gap that takes most, of those that can be closed if there
// is one. What cannot be mended any more is named only where
// nothing else is left.
func (p *page) costliest() template.HTML {
	m := p.r.Missing[max(0, slices.IndexFunc(p.r.Missing, func(m report.Missing) bool { return len(m.Places) > 0 }))]
	return say("The costliest gap: %s", gapTitle(m))
}

// pastWords says how many gaps can still be closed.
func (p *page) pastWords(gaps, past int) template.HTML {
	switch past {
	case 0:
		return "All of it can still be written down."
	case gaps:
		return "Nothing of it can be written down any more; it can only be done better next time."
	}
	return say("%s can be closed, %s can only be done better next time.", words.Plural(gaps-past, "gap", "gaps"), words.Whole(past))
}

// sumTable is a small table of the time by season, for the margin.
func sumTable(sums []seasonSum) template.HTML {
	out := template.HTML(`<table class="mini"><caption>What is missing, by season</caption><thead><tr><th scope="col">Season</th><th scope="col">Gaps</th><th scope="col">Minutes</th></tr></thead><tbody>`)
	for _, s := range sums {
		out += say(`<tr><th scope="row">%s</th><td>%s</td><td>%s</td></tr>`, seasonWord(s.season), words.Whole(s.gaps), words.Whole(s.minutes))
	}
	return out + "</tbody></table>"
}
