package templates

import (
	"cmp"
	"html/template"
	"math"
	"slices"

	"traybook/report/trays"
	"traybook/report/words"
)

// decision is the answer box: whether to buy more trays, how many, how sure that
// is, what would change it and what is not in it.
type decision struct {
	ID      string
	Title   string
	Answers []trayAnswer
	Without string // what the answer leaves out
	More    template.HTML
}

// trayAnswer is the answer for one pair of trays.
type trayAnswer struct {
	Verdict template.HTML // one sentence
	Known   bool
	Reason  template.HTML
	Changes template.HTML
}

// What no answer about trays counts in.
const notCounted = "Not counted: losses in the field, earliness, and whatever else happens after setting out. Not tax advice."

// decision answers for each pair of trays of which the book has prices, those that
// can be told first.
func (p *page) decision() *decision {
	d := decision{ID: p.id("trays-answer"), Title: "Buy more trays?", Without: notCounted}
	if p.spec.path != "trays.html" {
		d.More = p.moreOn("trays.html", "Trays")
	}
	for _, pb := range p.r.Trays.Payback {
		d.Answers = append(d.Answers, p.trayAnswer(pb))
	}
	slices.SortStableFunc(d.Answers, func(a, b trayAnswer) int { return cmp.Compare(rank(a), rank(b)) })
	if len(d.Answers) == 0 {
		d.Answers = []trayAnswer{{Verdict: "The records cannot tell whether dearer trays pay.",
			Reason: "There are no two tray codes of the same cells, of different kind and both with a price in trays.csv."}}
	}
	return &d
}

// rank orders answers: those that can be told come first.
func rank(a trayAnswer) int { return map[bool]int{true: 0, false: 1}[a.Known] }

// trayAnswer answers for one pair.
func (p *page) trayAnswer(pb trays.Payback) trayAnswer {
	if pb.Verdict == "" {
		return trayAnswer{Verdict: say("The records cannot tell whether %s pays beside %s.", name(pb.Tray), name(pb.Other)),
			Reason: join(p.whyWords(pb), p.trialWords(pb))}
	}
	return trayAnswer{Known: true, Verdict: p.buyWords(pb), Reason: p.gainWords(pb), Changes: p.flipWords(pb)}
}

// whyWords says why the records cannot tell of a pair.
func (p *page) whyWords(pb trays.Payback) template.HTML {
	switch pb.Why {
	case trays.NoMatches:
		return "No crop, variety and lot was sown in both within a week."
	case trays.FewMatches:
		return say("Matched sowings found: %s; it takes %s.", words.Whole(pb.Matches), words.Whole(trays.EnoughMatches))
	case trays.FewDates:
		return say("The matched sowings began on %s; it takes %s.", words.Plural(pb.Dates, "date", "dates"), words.Whole(trays.EnoughDates))
	case trays.NoValue, trays.FewValues:
		return "What one more plant is worth is not known: write transplant_value into book.csv, or what seed, mix and sowing cost."
	case trays.NoLife:
		return say("How long %s lasts is not known: write lasts or uses in trays.csv.", name(pb.Tray))
	case trays.NoOtherLife:
		return say("How long %s lasts is not known: write lasts or uses in trays.csv.", name(pb.Other))
	}
	return markup(pb.Why)
}

// buyWords is the verdict in one sentence.
func (p *page) buyWords(pb trays.Payback) template.HTML {
	pair := say("%s %s", name(pb.Tray), pb.Verdict)
	if pb.Buy == nil {
		return say("%s; how many more cannot be told.", pair)
	}
	return p.buyCount(pb.Tray, *pb.Buy)
}

// buyCount tells how many more trays to buy.
func (p *page) buyCount(tray string, b trays.Buy) template.HTML {
	if b.High <= 0 {
		if b.PeakInUse <= b.Owned {
			return say("Buy no more %s: a further tray would stand idle.", name(tray))
		}
		return say("Buy no more %s: a further tray would not pay for itself.", name(tray))
	}
	ends := say("(%s"+words.NBSP+"to"+words.NBSP+"%s)", words.Whole(roundTrays(b.Low)), words.Whole(roundTrays(b.High)))
	switch n := roundTrays(b.N); {
	case n == 0:
		return say("Buy no more %s for now %s.", name(tray), ends)
	case n < 5:
		return say("Buy %s more %s %s.", words.Whole(n), name(tray), ends)
	default:
		return say("Buy about %s more %s %s.", words.Whole(n), name(tray), ends)
	}
}

// roundTrays rounds a number of trays to 5, as far as an answer is worth telling; one or
// two are told as they are, for they are not none.
func roundTrays(n int) int {
	if n < 3 {
		return n
	}
	return int(math.Round(float64(n)/5)) * 5
}

// gainWords says why.
func (p *page) gainWords(pb trays.Payback) template.HTML {
	if !pb.Gain.Known {
		return ""
	}
	out := say("Each use of %s gained %s %s over %s, in %s on %s.", name(pb.Tray), p.money.Sum(pb.Gain.Value),
		words.Interval(pb.GainLow, pb.GainHigh, p.money.SumNumber), name(pb.Other),
		words.Plural(pb.Matches, "matched sowing", "matched sowings"), words.Plural(pb.Dates, "date", "dates"))
	if pb.PaybackUses.Known {
		out = join(out, say("A tray at %s has paid for itself after %s%s.", words.Of(pb.Price, p.money.Sum), words.Tenths(pb.PaybackUses.Value, "use", "uses"), lastsWords(pb)))
	}
	if pb.Buy != nil {
		out = join(out, say("The farm owns %s.", words.Whole(pb.Buy.Owned)))
	}
	return out
}

// lastsWords says how many uses a tray lasts, where that is known.
func lastsWords(pb trays.Payback) string {
	if !pb.Life.Uses.Known {
		return ""
	}
	return "; it lasts " + words.TenthsNumber(pb.Life.Uses.Value)
}

// midPays reports whether the tray pays in the middle of what the records show.
func midPays(pb trays.Payback) bool {
	return pb.Verdict == trays.PaysLow || pb.Verdict == trays.PaysMiddle
}

// flipWords says what would turn the answer round, each alone.
func (p *page) flipWords(pb trays.Payback) template.HTML {
	pays, above, below := "would pay", "less", "more"
	if midPays(pb) {
		pays, above, below = "would not pay", "more", "less"
	}
	var parts []template.HTML
	if pb.FlipPrice.Known {
		parts = append(parts, say("a tray cost %s than %s", above, p.money.Sum(pb.FlipPrice.Value)))
	}
	if pb.FlipValue.Known {
		if pb.Difference.Value < 0 { // the dearer tray loses plants: the less they are worth, the better for it
			below = above
		}
		parts = append(parts, say("one more plant were worth %s than %s", below, p.money.Each(pb.FlipValue.Value)))
	}
	if pb.PaybackUses.Known {
		parts = append(parts, say("a tray lasted %s than %s", map[string]string{"more": "fewer", "less": "more"}[above], words.Tenths(pb.PaybackUses.Value, "use", "uses")))
	}
	out := template.HTML("")
	if len(parts) > 0 {
		out = say("It %s if %s.", pays, orList(parts))
	}
	if pb.HalfLifePays.Known && pb.Verdict != trays.PaysHigh && pb.Verdict != trays.PaysNever {
		out = join(out, say("At half the life it would %s.", map[bool]string{true: "still pay", false: "not pay"}[pb.HalfLifePays.Value]))
	}
	return out
}

// orList joins conditions: a, if b, or if c.
func orList(parts []template.HTML) template.HTML {
	out := parts[0]
	for i, part := range parts[1:] {
		if i == len(parts)-2 {
			out = say("%s, or if %s", out, part)
		} else {
			out = say("%s, if %s", out, part)
		}
	}
	return out
}

// trialWords says which side-by-side trial would tell.
func (p *page) trialWords(pb trays.Payback) template.HTML {
	for _, t := range p.r.Trays.Trial {
		if t.Tray == pb.Tray && t.Other == pb.Other && t.Difference == 0.05 && t.Sowings.Known {
			return say("To see a difference of 5 plants in 100, sow one tray of each side by side, same seed and same day, on %s.", words.Plural(t.Sowings.Value, "date", "dates"))
		}
	}
	return ""
}
