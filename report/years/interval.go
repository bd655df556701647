package years

import (
	"math"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/rate"
)

// judge gives every row of a measure that can have one its interval and its verdict (rule
// "Interval of a change"). The more crops are judged of a season, the stricter each is.
func (c *comparison) judge(rows []Change) {
	if c.scatter == nil {
		return
	}
	crops := map[int]int{} // with an interval, by season
	for _, r := range rows {
		if _, ok := c.spread(r.Crop); ok && r.like() && r.Crop != "" {
			crops[r.To]++
		}
	}
	for i := range rows {
		r := &rows[i]
		r.Verdict = rate.TooFew
		if used, ok := c.spread(r.Crop); ok && r.like() {
			r.bound(used.DF, c.level(r.Crop, crops[r.To]))
		}
	}
}

// like reports whether the seasons have any sowings that are alike.
func (r Change) like() bool { return r.Share > 0 }

// level is that of an interval, a share of 1: of the farm the book's, of one of several
// crops stricter, so that all of them together keep it.
func (c *comparison) level(crop string, crops int) float64 {
	confidence := c.batches.Settings.Confidence
	if crop == "" {
		return confidence
	}
	return 1 - (1-confidence)/float64(crops)
}

// bound sets the interval of Same at so many degrees of freedom.
func (r *Change) bound(df, level float64) {
	half := estimate.T(level, df) * math.Sqrt(r.variance)
	r.Low, r.High = records.Known(r.Same-half), records.Known(r.Same+half)
	r.Verdict = rate.VerdictOf(r.Low.Value, r.High.Value)
}

// Of the changes before one at least so many tell how much seasons usually differ, at
// such a level.
const (
	fewChanges = 2
	usualLevel = 0.95
)

// usual says of each row how much the changes of its measure and crop before it were, as
// a rule (rule "Interval of a change"). The rows of a crop stand by season.
func usual(rows []Change) {
	squares := map[string][]float64{}
	for i := range rows {
		r := &rows[i]
		if before := squares[r.Crop]; len(before) >= fewChanges {
			sum := 0.0
			for _, s := range before {
				sum += s
			}
			n := float64(len(before))
			r.Usual = records.Known(estimate.T(usualLevel, n) * math.Sqrt(sum/n))
		}
		if like := r.LikeForLike(); like.Known {
			squares[r.Crop] = append(squares[r.Crop], like.Value*like.Value)
		}
	}
}

// LikeForLike is what like sowings did on their own: Same as a part of the share of the
// season that they are; missing where the seasons have none.
func (r Change) LikeForLike() Num {
	if !r.like() {
		return Num{}
	}
	return records.Known(r.Same / r.Share)
}

// Habit sets a clear change beside what this farm's seasons usually differ by; empty where
// the change is not clear or too few seasons went before.
type Habit string

// The habits.
const (
	Within Habit = "no more than this farm's seasons differ"
	Beyond Habit = "more than they usually differ"
)

// Habit returns how a clear change lies to the usual ones.
func (r Change) Habit() Habit {
	switch {
	case !r.Usual.Known || r.Verdict != rate.ClearlyHigher && r.Verdict != rate.ClearlyLower:
		return ""
	case math.Abs(r.LikeForLike().Value) <= r.Usual.Value+noise:
		return Within
	}
	return Beyond
}
