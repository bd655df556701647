package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/report/trays"
	"traybook/report/words"
	"traybook/templates/draw"
)

// pairOf is a pair of trays with its figures and what they say of buying.
type pairOf struct {
	trays.Payback
	trays.Decision
	id string
}

// pairs are the pairs of trays, those to buy first, then those not to, then those that the
// records cannot tell of. Every pair of trays has its figures from one table and its
// answer from another, by the two codes; a pair without a decision has none of the second
// and is told as unknown.
func (p *page) pairs() []pairOf {
	var out []pairOf
	for _, back := range p.r.Trays.Payback {
		pair := pairOf{Payback: back, id: "pair-" + slug(back.Tray+" "+back.Other)}
		for _, d := range p.r.Trays.Decisions {
			if d.Tray == back.Tray && d.Other == back.Other {
				pair.Decision = d
			}
		}
		out = append(out, pair)
	}
	slices.SortStableFunc(out, func(a, b pairOf) int { return a.rank() - b.rank() })
	return out
}

// tray and other are the codes of the pair, the dearer first.
func (a pairOf) tray() string  { return a.Payback.Tray }
func (a pairOf) other() string { return a.Payback.Other }

// rank orders pairs by their answer. An answer to buy is worth reading first, one that
// nothing is known of last. Pairs of one rank keep the order of the figures.
func (a pairOf) rank() int {
	switch b := a.Decision.Buy; {
	case b == nil:
		return 2
	case b.N == 0:
		return 1
	}
	return 0
}

// buyTitle is the answer of one pair in a few words. It says no more than the range
// allows: where the low end of the range is none, the trays "may pay"; where only the
// other tray's life decides, that is said in place of a number.
func (a pairOf) buyTitle() template.HTML {
	b, tray := a.Decision.Buy, name(a.tray())
	switch {
	case b == nil && a.Decision.Why == trays.NoOwned:
		return say("How many more %s to buy cannot be told", tray)
	case b == nil:
		return say("For %s the records cannot tell", tray)
	case b.TurnsOnOtherLife:
		return say("Whether more %s pay turns on how long %s lasts", tray, name(a.other()))
	case b.N == 0 && b.High == 0:
		return say("Buy no more %s", tray)
	case b.N == 0:
		return say("Buy no more %s for now", tray)
	case b.MayPay():
		return say("%s more %s may pay", upper(markup(numberWord(b.N))), tray)
	}
	return say("Buy %s more %s", numberWord(b.N), tray)
}

// numberWord is a small number as a word, a larger one in figures.
func numberWord(n int) string {
	small := []string{"no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"}
	if n >= 0 && n < len(small) {
		return small[n]
	}
	return words.Whole(n)
}

// pairFinding is the answer of one pair with its number large. Where there is no number to
// buy, the reason takes its place, with the side-by-side trial that would bring one.
func (p *page) pairFinding(a pairOf) finding {
	f := finding{ID: a.id, Title: a.buyTitle(), Big: "?", What: say("more %s to buy", name(a.tray()))}
	b := a.Decision.Buy
	if b == nil {
		f.Range = a.shortOf()
		f.Say = []template.HTML{p.whyWords(a), p.trialWords(a)}
		f.Note = p.pairNote(a)
		return f
	}
	f.Big, f.Range = words.Whole(b.N), a.buyRange()
	f.Say = []template.HTML{join(p.outlayWords(a), p.gainSentence(a)), p.flipSentence(a), p.lifeSentence(a), p.plugSentence(a)}
	f.Note = p.pairNote(a)
	f.Side = p.nextSide(a)
	return f
}

// buyRange is the least and the most to buy. It takes in both ends of the gain and, where
// the book shows how long the other tray lasts, that too.
func (a pairOf) buyRange() template.HTML {
	b := a.Decision.Buy
	if b.High == 0 {
		return "none even at the high end"
	}
	return say("%s to %s", words.Whole(b.Low), words.Whole(b.High))
}

// shortOf is how far the matched sowings are from enough. Only where matches are what is
// lacking: a missing price or count is no matter of more sowings.
func (a pairOf) shortOf() template.HTML {
	if a.Decision.Why == trays.FewMatches || a.Decision.Why == trays.NoMatches {
		return say("%s of %s matches", words.Whole(a.Matches), words.Whole(trays.EnoughMatches))
	}
	return ""
}

// outlayWords says what the trays to buy cost and are worth today, or what the next one
// would lose. What they are worth is beyond their price, as of today, so that 0 is even;
// the range beside it may begin below.
func (p *page) outlayWords(a pairOf) template.HTML {
	b := a.Decision.Buy
	if b.N == 0 {
		return p.nextLoses(a)
	}
	worth := say("worth %s more than that today (%s to %s)", p.money.Sum(b.Worth), p.money.SignedNumber(b.WorthLow), p.money.SignedNumber(b.WorthHigh))
	out := say("%s cost %s and are %s.", upper(markup(numberWord(b.N))), p.money.Sum(b.Outlay), worth)
	if b.N == 1 {
		out = say("It costs %s and is %s.", p.money.Sum(b.Outlay), worth)
	}
	if b.AboutEven() {
		out = join(out, "That is about even.")
	}
	if b.MayPay() {
		out = join(out, say("At the low end of what the records show, none pays; at the high end, %s do.", numberWord(b.High)))
	}
	return out
}

// nextLoses says why not even the next tray is bought. Two reasons are told apart: that it
// would have stood idle, and that it would have been used but too seldom.
func (p *page) nextLoses(a pairOf) template.HTML {
	b := a.Decision.Buy
	if b.PeakInUse <= b.Owned {
		return say("No further tray would have been used: %s are owned, and at most %s were needed at once.", words.Whole(b.Owned), words.Whole(b.PeakInUse))
	}
	for _, n := range p.r.Trays.NextTray {
		if n.Tray == a.tray() && n.Other == a.other() && n.Nth == b.Owned+1 && n.WorthToday.Known {
			return say("The %s would be used %s a season and lose %s over its life.", draw.Ordinal(n.Nth), timesOf(n.Uses), p.money.Sum(max(-n.WorthToday.Value, 0)))
		}
	}
	return "The next tray would be used too seldom to earn its price."
}

// timesOf is how often, in words: once, 1.3 times.
func timesOf(uses float64) string {
	if words.Round(uses, 1) == 1 {
		return "once"
	}
	return words.Tenths(uses, "time", "times")
}

// gainSentence is what a use gains, and on how much that rests. The range is of the mean
// gain of a use, in money. Matches without a worth of a plant count for the difference and
// not here, so their number may be smaller.
func (p *page) gainSentence(a pairOf) template.HTML {
	return say("Each use of %s gained %s over %s %s, in %s on %s.", name(a.tray()), words.Of(a.Gain, p.money.Sum), name(a.other()),
		words.Interval(a.GainLow, a.GainHigh, p.money.SumNumber), words.Plural(a.Valued, "matched sowing", "matched sowings"), words.Plural(a.Dates, "date", "dates"))
}

// lifeSentence names the life of the other where it decides, and half the tray's own. How
// long a tray lasts is what a grower knows least, so what hangs on it is said beside the
// answer.
func (p *page) lifeSentence(a pairOf) template.HTML {
	b := a.Decision.Buy
	var out template.HTML
	if b.TurnsOnOtherLife {
		out = say("As written, %s lasts %s; what the book shows of it would change the answer.", name(a.other()), usesOf(a.OtherLife))
	}
	if b.N > 0 && b.HalfLifePays.Known {
		out = join(out, say("At half its life the first would %s.", map[bool]string{true: "still pay", false: "not pay"}[b.HalfLifePays.Value]))
	}
	if a.OtherRaised {
		out = join(out, say("%s has already stood more uses than its written life, so the life it has stood is taken.", name(a.other())))
	}
	return out
}

// plugSentence tells of plants bought in, where that changes the answer. A plant is
// usually worth what it saves in seed, mix and sowing. Where plants had to be bought in,
// one more plant saved that price instead.
func (p *page) plugSentence(a pairOf) template.HTML {
	row, ok := p.r.Trays.If(a.tray(), a.other(), 1, trays.BoughtIn)
	if !ok || row.N == a.Decision.Buy.N || a.AtPlugPrice == nil {
		return ""
	}
	return say("Where an extra plant saves buying one in, which %s of them did, it would be %s (%s to %s).",
		words.Percent(a.AtPlugPrice.Gap), words.Whole(row.N), words.Whole(row.Low), words.Whole(row.High))
}

// pairNote is what is owned and at what price. Crops that were sown in the cheaper tray
// alone were left out of the uses: nobody knows what the dearer one would have done for
// them.
func (p *page) pairNote(a pairOf) template.HTML {
	owned := template.HTML("How many are owned is not written.")
	if a.Decision.Owned.Known {
		owned = say("%s owned, at %s each.", words.Whole(a.Decision.Owned.Value), words.Of(a.Price, p.money.Sum))
	}
	if len(a.NotCompared) == 0 {
		return owned
	}
	var crops []template.HTML
	for _, n := range a.NotCompared {
		crops = append(crops, markup(name(n.Crop)))
	}
	return join(owned, say("Sown in %s but never in both, and so not counted: %s.", name(a.other()), list(crops)))
}

// nextSide draws the uses of each further tray. The most used stands first, since those to
// buy are counted from there. Nothing is drawn where no tray beyond those owned was ever
// wanted.
func (p *page) nextSide(a pairOf) template.HTML {
	b := a.Decision.Buy
	beyond := a.Uses[min(b.Owned, len(a.Uses)):]
	if len(beyond) == 0 {
		return ""
	}
	uses := slices.Clone(beyond)
	slices.SortStableFunc(uses, func(x, y float64) int {
		switch {
		case x > y:
			return -1
		case x < y:
			return 1
		}
		return 0
	})
	kind := draw.KindOf(p.kindOf(a.tray()))
	text := say("Uses a season of each further %s, %s.", name(a.tray()), seasonsWords(b.Seasons))
	switch { // told by number, as not every kind has a colour, nor does every reader see one
	case b.N == 1:
		text = join(text, "The first pays.")
	case b.N > 1 && b.N >= len(beyond):
		text = join(text, "All of them pay.")
	case b.N > 1:
		text = join(text, say("The first %s pay.", words.Whole(b.N)))
	}
	return caption(draw.Next(b.Owned, uses, b.N, kind, 0), text)
}

// kindOf is the kind of a tray code.
func (p *page) kindOf(code string) string {
	if c := p.r.Batches.Codes[code]; c != nil {
		return c.Kind
	}
	return ""
}

// seasonsWords is the seasons gone through: 2023 to 2025.
func seasonsWords(seasons []int) string {
	switch len(seasons) {
	case 0:
		return ""
	case 1:
		return words.Year(seasons[0])
	}
	return fmt.Sprintf("%d to %d", seasons[0], seasons[len(seasons)-1])
}

// pairsNamed is how many pairs of trays the front page names.
const pairsNamed = 12

// traysFinding is the front page's answer: the first pair's number, and a sentence of
// every other. Only the first pair has its number here: its answer is the one to act on.
// The others are named with a link each, and past so many only counted.
func (p *page) traysFinding() finding {
	all := p.pairs()
	if len(all) == 0 {
		return finding{Title: "Whether dearer trays pay cannot be told", Big: "?", What: "more trays to buy",
			Say:  []template.HTML{"There are no two tray codes of the same cells, of different kind and both with a price, that were both sown with one variety."},
			Note: "Write kind, cells and price of each code into trays.csv."}
	}
	f := p.pairFinding(all[0])
	f.ID = ""
	f.Say = f.Say[:1]
	for i, a := range all[1:min(len(all), pairsNamed)] {
		f.Say[0] = join(f.Say[0], say("%s.", p.to(pairPath(i+1)+"#"+a.id, a.buyTitle())))
	}
	if more := len(all) - pairsNamed; more > 0 {
		f.Say[0] = join(f.Say[0], say("And %s.", words.Plural(more, "more pair of trays", "more pairs of trays")))
	}
	f.Say = append(f.Say, p.shortFlip(all[0]))
	f.Note = say("%s on %s. %s", words.Plural(all[0].Matches, "matched sowing", "matched sowings"), words.Plural(all[0].Dates, "date", "dates"), p.moreOn("trays.html", "Trays and what would change it"))
	return f
}
