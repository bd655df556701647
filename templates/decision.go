package templates

import (
	"html/template"

	"traybook/report/trays"
	"traybook/report/words"
)

// whyWords says why the records cannot tell of a pair.
func (p *page) whyWords(pb pairOf) template.HTML {
	switch pb.Decision.Why {
	case trays.NoMatches:
		return "No crop, variety and lot was sown in both within a week."
	case trays.FewMatches:
		return say("Matched sowings found: %s; it takes %s.", words.Whole(pb.Matches), words.Whole(trays.EnoughMatches))
	case trays.FewDates:
		return say("The matched sowings began on %s; it takes %s.", words.Plural(pb.Dates, "date", "dates"), words.Whole(trays.EnoughDates))
	case trays.NoValue, trays.FewValues:
		return "What one more plant is worth is not known: write transplant_value into book.csv, or what seed, mix and sowing cost."
	case trays.NoOwned:
		return say("How many %s are owned is not known: a count in trays.csv is blank.", name(pb.tray()))
	case trays.NoLife:
		return say("How long %s lasts is not known: write lasts or uses in trays.csv.", name(pb.tray()))
	case trays.NoOtherLife:
		return say("How long %s lasts is not known: write lasts or uses in trays.csv.", name(pb.other()))
	}
	return markup(pb.Decision.Why)
}

// trialWords says which side-by-side trial would tell.
func (p *page) trialWords(pb pairOf) template.HTML {
	for _, t := range p.r.Trays.Trial {
		if t.Tray == pb.tray() && t.Other == pb.other() && t.Trays == 1 && t.Difference == 0.05 && t.Sowings.Known {
			return say("To see a difference of 5 plants in 100, sow one tray of each side by side, same seed and same day, on %s.", words.Plural(t.Sowings.Value, "date", "dates"))
		}
	}
	return ""
}
