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

// verdict asks at the low end, in the middle and at the high end of the gain whether
// the average tray is worth its price today; empty where that is unknown.
func (pr *pair) verdict(back *Payback, mid, low, high Num) PaysVerdict {
	for _, at := range []struct {
		gain    Num
		verdict PaysVerdict
	}{{low, PaysLow}, {mid, PaysMiddle}, {high, PaysHigh}} {
		switch worth := pr.averageWorth(back, at.gain); {
		case !worth.Known:
			return ""
		case worth.Value >= 0:
			return at.verdict
		}
	}
	return PaysNever
}

// Reason says why a pair has no gain, no verdict, or no number to buy; the pages put it
// in words.
type Reason string

// The reasons, in the order in which they are looked for.
const (
	NoMatches   Reason = "no matched sowings"
	FewMatches  Reason = "too few matched sowings"    // fewer than EnoughMatches
	FewDates    Reason = "too few sowing dates"       // on fewer than EnoughDates
	NoValue     Reason = "value of a plant unknown"   // no transplant_value and no cost for any of its crops
	FewValues   Reason = "too few matches with value" // one: nothing that a range could be told of
	NoOtherLife Reason = "life of the other unknown"  // its uses not written, and neither code was used
	NoLife      Reason = "life of the tray unknown"   // its uses not written, and it was not used: no verdict
	NoOwned     Reason = "trays owned unknown"        // a count of the tray is blank: no number to buy
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
	case back.Valued == 1:
		return FewValues
	case !back.OtherLife.Uses.Known:
		return NoOtherLife
	case !back.Life.Uses.Known:
		return NoLife
	}
	return ""
}

// whyNoGain names the gap behind a missing gain; empty where there is one.
func whyNoGain(back *Payback) Reason {
	if back.Gain.Known {
		return ""
	}
	return back.Why
}
