package trays

// PaysVerdict says whether a tray pays (rule "The average tray"), in words; empty:
// unknown.
type PaysVerdict string

// The verdicts.
const (
	PaysLow    PaysVerdict = "pays even at the low end"
	PaysMiddle PaysVerdict = "pays in the middle of what the records show"
	PaysHigh   PaysVerdict = "pays only at the high end"
	PaysNever  PaysVerdict = "pays not at all"
)

// TwinPaysMiddle and TwinPaysLow are what chance alone says of a tray that is
// the twin of the other in all but name and costs just what it saves: the shares
// of books in which it is said to pay in the middle or better, and even at the
// low end of a 95 % interval. Both were met in 1,000 simulated books of eight
// matched sowings (0.50 and 0.03).
const (
	TwinPaysMiddle = 0.5
	TwinPaysLow    = 0.025
)

// paysVerdict compares the price with what a life gains at the low end, in the
// middle and at the high end (rule "The average tray"); empty where one is missing.
func paysVerdict(price, uses Num, g gains) PaysVerdict {
	if !price.Known || !uses.Known || !g.low.Known {
		return ""
	}
	for _, at := range []struct {
		gain    Num
		verdict PaysVerdict
	}{{g.low, PaysLow}, {g.mid, PaysMiddle}, {g.high, PaysHigh}} {
		if price.Value <= at.gain.Value*uses.Value {
			return at.verdict
		}
	}
	return PaysNever
}

// Reason says why a pair has no gain, or no verdict; the pages put it in words.
type Reason string

// The reasons, in the order in which they are looked for.
const (
	NoMatches   Reason = "no matched sowings"
	FewMatches  Reason = "too few matched sowings"    // fewer than EnoughMatches
	FewDates    Reason = "too few sowing dates"       // on fewer than EnoughDates
	NoValue     Reason = "value of a plant unknown"   // no transplant_value and no cost for any of its crops
	NoOtherLife Reason = "life of the other unknown"  // its uses not written, and it was not used
	NoLife      Reason = "life of the tray unknown"   // its uses not written, and it was not used
	FewValues   Reason = "too few matches with value" // one: a middle without a range
)

// EnoughMatches and EnoughDates are the fewest matches, on so many first dates, that
// tell anything (rule "Matched sowings").
const (
	EnoughMatches = 4
	EnoughDates   = 3
)

// enough reports whether the matches may tell anything, or why not.
func (pr *pair) enough() Reason {
	switch {
	case len(pr.matches) == 0:
		return NoMatches
	case len(pr.matches) < EnoughMatches:
		return FewMatches
	case pr.firstDates() < EnoughDates:
		return FewDates
	}
	return ""
}

// whyNot names the first gap behind a missing gain or verdict of matches enough.
func whyNot(back *Payback) Reason {
	switch {
	case back.Valued == 0:
		return NoValue
	case !back.OtherLife.Uses.Known:
		return NoOtherLife
	case !back.Life.Uses.Known:
		return NoLife
	case !back.GainLow.Known:
		return FewValues
	}
	return ""
}
