package templates

import (
	"html/template"
	"math"

	"traybook/report"
)

// decision is the answer box: whether to buy more trays, how many, how sure that
// is, what would change it and what is not in it.
type decision struct {
	ID      string
	Title   string
	Answers []trayAnswer
	Without string // what the answer leaves out
}

// trayAnswer is the answer for one pair of trays.
type trayAnswer struct {
	Verdict template.HTML // one sentence
	Known   bool
	Reason  template.HTML
	Range   template.HTML
	Changes template.HTML
}

// What no answer about trays counts in.
const notCounted = "Not counted: losses in the field, earliness, and whatever else happens after setting out. Not tax advice."

// decision answers for each pair of trays of which the book has prices; nil if
// there is none.
func (p *place) decision() *decision {
	d := decision{ID: p.id("trays-answer"), Title: "Buy more trays?", Without: notCounted}
	for _, pb := range p.r.Payback {
		d.Answers = append(d.Answers, p.trayAnswer(pb))
	}
	if len(d.Answers) == 0 {
		d.Answers = []trayAnswer{{Verdict: "The records cannot tell whether dearer trays pay.",
			Reason: "There are no two tray codes of the same cells, of different kind and both with a price in trays.csv."}}
	}
	return &d
}

// trayAnswer answers for one pair.
func (p *place) trayAnswer(pb report.Payback) trayAnswer {
	if pb.Verdict == "" {
		reason := markup(pb.Why)
		return trayAnswer{Verdict: say("The records cannot tell whether %s pays beside %s.", name(pb.Tray), name(pb.Other)), Reason: join(reason, p.trialWords(pb))}
	}
	return trayAnswer{Known: true, Verdict: p.buyWords(pb), Reason: p.gainWords(pb), Range: p.rangeWords(pb), Changes: p.flipWords(pb)}
}

// buyWords is the verdict in one sentence.
func (p *place) buyWords(pb report.Payback) template.HTML {
	pair := say("%s %s", name(pb.Tray), pb.Verdict)
	if pb.Buy == nil {
		return say("%s; how many more cannot be told.", pair)
	}
	n, low, high := toFive(pb.Buy.N), toFive(pb.Buy.Low), toFive(pb.Buy.High)
	if n == 0 && high == 0 {
		return say("Buy no more %s: a further tray %s.", name(pb.Tray), "would not pay for itself")
	}
	if n == 0 {
		return say("Buy no more %s for now (0 to %s).", name(pb.Tray), whole(high))
	}
	return say("Buy about %s more %s (%s to %s).", whole(n), name(pb.Tray), whole(low), whole(high))
}

// toFive rounds a number of trays to 5, as far as an answer is worth telling.
func toFive(n int) int { return int(math.Round(float64(n)/5)) * 5 }

// gainWords says why.
func (p *place) gainWords(pb report.Payback) template.HTML {
	if !pb.Gain.Known {
		return ""
	}
	out := say("Each use of one gained %s %s over %s, in %s on %s.", p.money.sum(pb.Gain.Value),
		interval(pb.GainLow, pb.GainHigh, p.money.sumNumber), name(pb.Other),
		plural(pb.Matches, "matched sowing", "matched sowings"), plural(pb.Dates, "date", "dates"))
	if pb.PaybackUses.Known {
		out = join(out, say("A tray at %s has paid for itself after %s.", of(pb.Price, p.money.sum), plural(pb.PaybackUses.Value, "use", "uses")))
	}
	return out
}

// rangeWords says how many there are and how the trays were used.
func (p *place) rangeWords(pb report.Payback) template.HTML {
	if pb.Buy == nil {
		return ""
	}
	return say("The farm owns %s; at the peak %s of the two codes together were needed at once.", whole(pb.Buy.Owned), plural(pb.Buy.PeakInUse, "tray", "trays"))
}

// flipWords says what would turn the answer round.
func (p *place) flipWords(pb report.Payback) template.HTML {
	var parts []template.HTML
	if pb.FlipPrice.Known {
		parts = append(parts, say("a tray at %s", p.money.sum(pb.FlipPrice.Value)))
	}
	if pb.FlipValue.Known {
		parts = append(parts, say("a usable plant worth %s", p.money.each(pb.FlipValue.Value)))
	}
	out := template.HTML("")
	if len(parts) > 0 {
		out = say("It turns at %s.", orList(parts))
	}
	if pb.HalfLifePays.Known {
		out = join(out, say("If the trays lasted half as long, they would %s.", map[bool]string{true: "still pay", false: "not pay"}[pb.HalfLifePays.Value]))
	}
	return out
}

func orList(parts []template.HTML) template.HTML {
	if len(parts) == 2 {
		return say("%s, or at %s", parts[0], parts[1])
	}
	return list(parts)
}

// trialWords says which side-by-side trial would tell.
func (p *place) trialWords(pb report.Payback) template.HTML {
	for _, t := range p.r.Trial {
		if t.Tray == pb.Tray && t.Other == pb.Other && t.Difference == 0.05 && t.Sowings.Known {
			return say("To see a difference of 5 plants in 100, sow one tray of each side by side, same seed and same day, on %s.", plural(t.Sowings.Value, "date", "dates"))
		}
	}
	return ""
}
