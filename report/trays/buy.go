package trays

// buy is how many further trays to buy, what they cost and are worth, and what would
// flip it, where the trays beyond those owned would be used so often a season, most
// first (rule "How many to buy"). The pair has a gain.
func (pr *pair) buy(back *Payback, beyond []float64) *Buy {
	s, _ := pr.stakeOf(back, written)
	b := &Buy{OtherLives: otherLives(back)}
	b.N = s.count(s.plants.mid, b.OtherLives[0], beyond)
	b.Low, b.High = b.N, b.N
	for _, life := range b.OtherLives {
		mid := s.count(s.plants.mid, life, beyond)
		b.Low = min(b.Low, mid, s.count(s.plants.low, life, beyond))
		b.High = max(b.High, mid, s.count(s.plants.high, life, beyond))
		b.TurnsOnOtherLife = b.TurnsOnOtherLife || (mid == 0) != (b.N == 0)
	}
	bought := beyond[:b.N]
	b.Outlay = float64(b.N) * pr.tray.Price.Value
	b.Worth = pr.worthOf(back.Gain.Value, bought)
	b.WorthLow, b.WorthHigh = pr.worthOf(back.GainLow.Value, bought), pr.worthOf(back.GainHigh.Value, bought)
	s.flips(back, b, beyond)
	return b
}

// count is how many further trays to buy at one end of what the plants are worth and
// one life of the other: up to the one at which the running sum of worth today is
// greatest and above 0. What is worth just its price adds nothing and is not bought.
func (s stake) count(plants, otherUses float64, beyond []float64) int {
	gain := s.gain(plants, otherUses)
	best, most, running := 0, 0.0, 0.0
	for i, uses := range beyond {
		running += s.worthOfNext(gain, uses)
		if running > most {
			best, most = i+1, running
		}
	}
	return best
}

// worthOf adds up the worth today of trays.
func (pr *pair) worthOf(gain float64, uses []float64) float64 {
	var worths []float64
	for _, u := range uses {
		worths = append(worths, pr.worthOfNext(gain, u))
	}
	return sum(worths...)
}

// Sure reports whether buying pays at every end: only then is it said outright.
func (b *Buy) Sure() bool { return b.Low > 0 }

// MayPay reports whether some trays pay in the middle and none at the low end.
func (b *Buy) MayPay() bool { return b.N > 0 && b.Low == 0 }

// evenPart is the part of the money out below which what it brings is about even.
const evenPart = 0.1

// AboutEven reports whether the trays to buy are worth hardly more than they cost.
func (b *Buy) AboutEven() bool { return b.N > 0 && b.Worth < evenPart*b.Outlay }
