package germination

import (
	"math"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/rate"
)

// differences compares every variety with the other varieties of its crop, with
// each season in turn as the one reviewed: over all seasons up to it (rule "Varieties").
// in holds the batches that enter emergence.
func differences(in []*Counted, seasons []int, scatter rate.Scatter) []Difference {
	crops, of := batch.GroupBy(in, cropOf)
	slices.Sort(crops)
	layers := map[string][]layer{}
	for _, crop := range crops {
		layers[crop] = layersOf(of[crop])
	}
	var table []Difference
	for _, season := range seasons {
		for _, crop := range crops {
			upTo := batch.Filter(layers[crop], func(l layer) bool { return l.season <= season })
			table = append(table, courtOf(season, crop, upTo, scatter).verdicts()...)
		}
	}
	return table
}

// court judges the varieties of a crop at one season.
type court struct {
	season  int
	crop    string
	layers  []layer
	scatter rate.Spread
	known   bool // there is a scatter: without it no verdict
	level   float64
	all     []string         // varieties, sorted
	rounds  map[string]round // of those judged, the last each was in
}

// round is a variety's contrast in the round that it was last judged in, and the sums of
// the varieties that were left in it, by layer.
type round struct {
	contrast
	totals []sums
}

func courtOf(season int, crop string, layers []layer, scatter rate.Scatter) *court {
	c := &court{season: season, crop: crop, layers: layers, level: scatter.Level(), rounds: map[string]round{}}
	c.scatter, c.known = scatter.Of(crop)
	for _, l := range layers {
		for v := range l.all {
			c.all = append(c.all, v)
		}
	}
	slices.Sort(c.all)
	c.all = slices.Compact(c.all)
	return c
}

// against sets a variety against those that are left, itself among them, whose sums these
// are.
func (c *court) against(variety string, totals []sums) contrast {
	return contrastOf(c.layers, variety, totals, c.scatter.Rho, records.Maybe[string]{})
}

// verdicts returns a row for each variety that ever stood beside another.
func (c *court) verdicts() []Difference {
	t, totals := c.hold(), totalsOf(c.layers, c.all)
	var table []Difference
	for _, v := range c.all {
		last, judged := c.rounds[v]
		if !judged {
			last.contrast = c.against(v, totals)
		}
		if last.weight == 0 {
			continue
		}
		d := Difference{Season: c.season, Crop: c.crop, Variety: v, Batches: last.batches, OtherBatches: last.others,
			Difference: records.Known(last.difference()), Verdict: rate.TooFew}
		if judged {
			low, high := last.ends(t)
			d.Low, d.High = records.Known(low), records.Known(high)
			d.Verdict, d.Lot = c.tried(v, last, t)
		}
		table = append(table, d)
	}
	return table
}

// hold judges the varieties round by round: the one that stands apart most is set aside
// with its verdict, and the others are judged anew without it, so that one bad variety
// makes no good ones. It returns how many standard errors the intervals reach.
func (c *court) hold() (t float64) {
	if !c.known {
		return 0
	}
	for left := c.all; ; {
		judged := c.judge(left)
		if len(left) == len(c.all) {
			t = c.quantile(len(judged))
		}
		apart := ""
		for _, v := range judged {
			if now := c.rounds[v].contrast; now.clear(t) != rate.NoDifference && (apart == "" || now.errors() > c.rounds[apart].errors()*(1+rate.Equal)) {
				apart = v
			}
		}
		if apart == "" || len(left) == 2 { // of two each is the other's mirror
			return t
		}
		left = batch.Filter(left, func(v string) bool { return v != apart })
	}
}

// judge sets every variety that is left and has batches enough against the others; any
// other keeps its last round.
func (c *court) judge(left []string) (judged []string) {
	totals := totalsOf(c.layers, left)
	for _, v := range left {
		if now := c.against(v, totals); now.enough() {
			c.rounds[v] = round{now, totals}
			judged = append(judged, v)
		}
	}
	return judged
}

// quantile is Student's t at the level 1 - (1 - confidence)/m: at it m comparisons
// together keep the book's confidence (Bonferroni's inequality).
func (c *court) quantile(m int) float64 {
	return estimate.T(1-(1-c.level)/float64(max(m, 1)), c.scatter.DF)
}

// errors is how many standard errors the difference lies from 0.
func (c contrast) errors() float64 { return math.Abs(c.weighted) / math.Sqrt(c.weightedVariance) }

// ends are those of the interval of the difference, t standard errors off.
func (c contrast) ends(t float64) (low, high float64) {
	half := t * math.Sqrt(c.weightedVariance) / c.weight
	return c.difference() - half, c.difference() + half
}

// clear is the verdict on the difference alone.
func (c contrast) clear(t float64) rate.Verdict { return rate.VerdictOf(c.ends(t)) }

// byLot are the verdicts that rest on one lot.
var byLot = map[rate.Verdict]rate.Verdict{rate.ClearlyHigher: rate.HigherByLot, rate.ClearlyLower: rate.LowerByLot}

// tried is the verdict of a variety in the round that settled it, after each of its own
// lots was left out in turn: where it is no longer clear without one, it rests on that
// lot; of several, on the one that moves the difference most, then the first by bytes. A
// variety without any lot written is not tried.
func (c *court) tried(variety string, last round, t float64) (verdict rate.Verdict, lot string) {
	verdict = last.clear(t)
	lots := lotsOf(c.layers, variety)
	if verdict == rate.NoDifference || len(lots) == 1 && lots[0] == "" {
		return verdict, ""
	}
	tried, most := verdict, -1.0
	for _, one := range lots {
		without := contrastOf(c.layers, variety, last.totals, c.scatter.Rho, records.Known(one))
		moved := math.Abs(without.difference() - last.difference())
		if (!without.enough() || without.clear(t) != verdict) && moved > most+rate.Equal {
			tried, lot, most = byLot[verdict], one, moved
		}
	}
	return tried, lot
}
