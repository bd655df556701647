package report

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/rate"
	"traybook/report/sowing"
)

// noise is what figures may miss each other by and be equal (rule "Missing").
const noise = 1e-9

// slimChance is the chance of enough plants below which a sowing is called too small; a
// choice of ours, by the backtest of rule "Short".
const slimChance = 0.1

// slack keeps a chance that equals the slim one from falling a rounding error below it.
const slack = 1e-12

// basis is a rate and the batches that it rests on. These are named, and put in words, once
// a line rests on them: of thousands of bases a few.
type basis struct {
	rate    float64
	batches []*Record
	rests   Rests
	said    string
}

// told returns the batches, by code and in words.
func (b *basis) told() (Rests, string) {
	if b.said == "" {
		b.rests.Batches = codesOf(b.batches, codeOf)
		b.said = "rests on " + listed(b.rests.Batches)
	}
	return b.rests, b.said
}

// likeness is what batches have in common whose rate stands for another's: kind "*" any.
type likeness struct {
	crop, variety string
	cells         records.Maybe[int]
	kind          string
	of            string
}

// likenesses are those of a batch from the nearest to the widest (rule "Short").
var likenesses = []func(*Record) likeness{
	func(b *Record) likeness {
		return likeness{b.Crop, b.Variety, b.TrayCells, b.Kind, "crop, variety, cells and kind"}
	},
	func(b *Record) likeness { return likeness{crop: b.Crop, cells: b.TrayCells, of: "crop and cells"} },
	func(b *Record) likeness { return likeness{crop: b.Crop, of: "crop"} },
}

// shortage is what the batches before say of those that stand: how much of what came up
// was kept, by crop and over the book ("", of: book), and how much of what was sown.
type shortage struct {
	kept    map[string]*basis
	sown    map[likeness]*basis
	scatter rate.Scatter
}

// shortageOf gathers the rates; those of fewer than 3 batches are none.
func shortageOf(all []*Record, s *sowing.Figures) shortage {
	of := shortage{kept: map[string]*basis{}, sown: map[likeness]*basis{}, scatter: s.Scatter}
	kept := batch.Filter(all, keeps)
	for _, crop := range batch.SplitBy(kept, (*Record).CropRank).Groups {
		addBasis(of.kept, crop[0].Crop, "crop", crop, keptCount)
	}
	addBasis(of.kept, "", "book", kept, keptCount)
	seeded := batch.Filter(all, func(b *Record) bool { return b.FromSeed && b.EntersUsable() })
	for _, likeOf := range likenesses {
		likes, alike := batch.SplitByKey(seeded, (*Record).GroupRank, likeOf)
		for i, like := range likes {
			addBasis(of.sown, like, like.of, alike[i], sownCount)
		}
	}
	return of
}

// addBasis adds the rate of batches, if they are enough; never above 1.
func addBasis[K comparable](to map[K]*basis, key K, of string, batches []*Record, count func(*Record) estimate.Count) {
	pooled := rate.Pool(rate.Counts(batches, count))
	if pooled.Few() {
		return
	}
	to[key] = &basis{rate: min(1, pooled.Share.Value), batches: batches, rests: Rests{Of: of}}
}

// keeps reports whether a batch tells how much of what came up was kept.
func keeps(b *Record) bool {
	return b.EndHow == batch.Written && b.Measured() && b.CellsSown.Known && b.Emergence().Or(0) > 0
}

// keptCount is the usable plants of a batch, of those that came up in its cells.
func keptCount(b *Record) estimate.Count {
	return estimate.Count{X: b.Usable.Value, N: float64(b.CellsSown.Value) * b.Emergence().Value}
}

func sownCount(b *Record) estimate.Count {
	return estimate.Count{X: b.Usable.Value, N: float64(b.CellsSown.Value)}
}

// keptOf is how much of what came up a crop keeps, else the book.
func (s shortage) keptOf(crop string) (*basis, bool) {
	if own, ok := s.kept[crop]; ok && crop != "" {
		return own, true
	}
	book, ok := s.kept[""]
	return book, ok
}

// sownOf is the usable rate of the nearest batches that are enough.
func (s shortage) sownOf(b *Record) (*basis, bool) {
	for _, likeOf := range likenesses {
		if of, ok := s.sown[likeOf(b)]; ok {
			return of, true
		}
	}
	return nil, false
}

// counted reports whether a batch has a count to forecast from.
func counted(b *Record) bool { return b.Emergence().Known && !b.Early }

// likelyShort: what came up, less what is usually lost after, gives fewer than wanted.
func (l lookout) likelyShort(b *Record) (WeekLine, bool) {
	kept, ok := l.short.keptOf(b.Crop)
	if !ok || !b.Wanted.Known || !b.CellsSown.Known || !counted(b) {
		return WeekLine{}, false
	}
	forecast := float64(b.CellsSown.Value) * b.Emergence().Value * kept.rate
	if forecast >= float64(b.Wanted.Value)-noise {
		return WeekLine{}, false
	}
	return l.shortLine(b, forecast, kept), true
}

// sownTooFew: not counted yet, and by what like sowings gave it will hardly be enough.
func (l lookout) sownTooFew(b *Record) (WeekLine, bool) {
	of, ok := l.short.sownOf(b)
	if !ok || !b.FromSeed || !b.Wanted.Known || !b.CellsSown.Known || counted(b) {
		return WeekLine{}, false
	}
	chance := l.short.chance(b, of.rate)
	if !chance.Known || chance.Value >= slimChance-slack {
		return WeekLine{}, false
	}
	line := l.shortLine(b, float64(b.CellsSown.Value)*of.rate, of)
	line.TooFewSown, line.Chance, line.Note = true, chance, "sown too few; "+line.Note
	return line, true
}

// chance is how likely a batch gives as many as wanted; 0 where it has fewer cells,
// missing where it cannot be told how batches differ.
func (s shortage) chance(b *Record, rate float64) Num {
	if b.Wanted.Value > b.CellsSown.Value {
		return records.Known(0.0)
	}
	spread, ok := s.scatter.Of(b.Crop)
	if !ok {
		return Num{}
	}
	return records.Known(estimate.BetaBinomialAtLeast(b.Wanted.Value, b.CellsSown.Value, rate, spread.Rho))
}

// shortLine is a batch of which so many plants are to be expected. A re-sowing needs the
// crop's median stay.
func (l lookout) shortLine(b *Record, expected float64, on *basis) WeekLine {
	stay := records.Date(l.batches.Stays.Of(b.Crop).Median)
	due := b.Planned
	if !due.Known() {
		due = b.Sown + stay
	}
	rests, said := on.told()
	return WeekLine{What: Short, Date: due - stay, ResowPossible: due-stay >= l.today, Expected: records.Known(expected),
		Value: records.Known(float64(b.Wanted.Value) - expected), Rests: rests, Note: said}
}
