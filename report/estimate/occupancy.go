package estimate

import (
	"cmp"
	"math"
	"math/big"
	"slices"
)

// Span is an amount (trays, places) that stands from day Start up to, but not on, day End. An amount may be negative: what
// takes away, or a capacity that changes, so that the level is what stands over it.
type Span struct {
	Start, End int
	Amount     float64
}

// Step is the level, Amount, from Day until the next step's day; before the first step the level is 0.
type Step struct {
	Day    int
	Amount float64
}

// exactBits is the width that holds any sum of float64 numbers without rounding: from 2^-1074 to 2^1024, and 64 bits for the
// number of terms.
const exactBits = 1074 + 1024 + 64

// Occupancy returns the level after each day on which it changes, by day. Spans that touch do not overlap: what ends on a day
// is gone before what starts on it. Spans that end no later than they start, or whose amount is no finite number, hold
// nothing. The running sum is kept exact and rounded only as it is written, so that levels do not hang on the order
// of the spans and an emptied place is exactly 0, whatever fractions went in.
// The sweep over the ends of intervals is common practice, no source.
func Occupancy(spans []Span) []Step {
	steps, exact := plainLevels(spans)
	if !exact {
		steps = exactLevels(changesOf(spans))
	}
	return steps
}

// plainLevels adds up in float64 as long as no sum is rounded, as none of whole or half trays is; ok is false at the first
// that is. Changes are added up by day first, so that they need not be sorted.
func plainLevels(spans []Span) (steps []Step, ok bool) {
	changes, ok := dayChanges(spans)
	if !ok {
		return nil, false
	}
	sum, was := 0.0, 0.0
	for i, c := range changes {
		next := sum + c.Amount
		if rounded(sum, c.Amount, next) {
			return nil, false
		}
		sum = next
		if i+1 < len(changes) && changes[i+1].Day == c.Day {
			continue
		}
		if sum != was {
			steps = append(steps, Step{Day: c.Day, Amount: sum})
			was = sum
		}
	}
	return steps, true
}

// dayChanges is changesOf with those of a day added up; ok is false where a sum is rounded. Days within reach of the first span
// are counted through, some for each span; the few beyond, as of a capacity that ends never, are sorted.
func dayChanges(spans []Span) (changes []Step, ok bool) {
	days, first := reached(spans)
	var beyond []Step
	ok = true
	add := func(day int, amount float64) {
		at := uint(day) - uint(first)
		if at >= uint(len(days)) {
			beyond = append(beyond, Step{day, amount})
			return
		}
		sum := days[at] + amount
		ok = ok && !rounded(days[at], amount, sum)
		days[at] = sum
	}
	for _, s := range spans {
		if s.holds() {
			add(s.Start, s.Amount)
			add(s.End, -s.Amount)
		}
	}
	sortByDay(beyond)
	before, _ := slices.BinarySearchFunc(beyond, first, func(s Step, day int) int { return cmp.Compare(s.Day, day) })
	changes = append(slices.Grow(changes, len(beyond)+len(days)), beyond[:before]...)
	for i, amount := range days {
		if amount != 0 {
			changes = append(changes, Step{first + i, amount})
		}
	}
	return append(changes, beyond[before:]...), ok
}

// reached makes room for a number of each day on which spans start or end that is near the first span, and tells the first.
func reached(spans []Span) (days []float64, first int) {
	const perSpan, least = 2, 1 << 9
	reach, last := perSpan*len(spans)+least, math.MinInt
	first = math.MaxInt
	for _, s := range spans {
		for _, day := range []int{s.Start, s.End} {
			if s.holds() && spans[0].Start-reach <= day && day <= spans[0].Start+reach {
				first, last = min(first, day), max(last, day)
			}
		}
	}
	if last < first {
		return nil, first
	}
	return make([]float64, last-first+1), first
}

// holds reports whether a span holds anything.
func (s Span) holds() bool {
	return s.End > s.Start && !math.IsNaN(s.Amount) && !math.IsInf(s.Amount, 0)
}

// rounded reports whether sum is not exactly a + b, or no finite number.
// Source: the error of a sum by Knuth, The Art of Computer Programming 2, 4.2.2, theorem B.
func rounded(a, b, sum float64) bool {
	of := sum - a
	return (a-(sum-of))+(b-of) != 0
}

// exactLevels adds up without rounding, whatever the amounts.
func exactLevels(changes []Step) []Step {
	var steps []Step
	sum, term := new(big.Float).SetPrec(exactBits), new(big.Float)
	was := 0.0
	for i, c := range changes {
		sum.Add(sum, term.SetFloat64(c.Amount))
		if i+1 < len(changes) && changes[i+1].Day == c.Day {
			continue
		}
		if now, _ := sum.Float64(); now != was {
			steps = append(steps, Step{Day: c.Day, Amount: now})
			was = now
		}
	}
	return steps
}

// changesOf returns what comes and what goes, sorted by day.
func changesOf(spans []Span) []Step {
	changes := make([]Step, 0, 2*len(spans))
	for _, s := range spans {
		if s.holds() {
			changes = append(changes, Step{s.Start, s.Amount}, Step{s.End, -s.Amount})
		}
	}
	sortByDay(changes)
	return changes
}

func sortByDay(changes []Step) {
	slices.SortFunc(changes, func(a, b Step) int { return cmp.Compare(a.Day, b.Day) })
}

// noise is by how much sums of parts of trays may miss each other and still be equal: no tenth of a tray has an exact float64.
const noise = 1e-9

// Peak returns the greatest level among the steps and the first day on which it stood, noise apart; ok is false without steps.
func Peak(steps []Step) (amount float64, day int, ok bool) {
	for i, s := range steps {
		if i == 0 || s.Amount > amount+noise {
			amount, day = s.Amount, s.Day
		}
	}
	return amount, day, len(steps) > 0
}

// DaysOver returns the number of days before day until on which the level lies above capacity. The last step's level holds
// up to until; days before the first step, with nothing standing, are not counted.
func DaysOver(steps []Step, capacity float64, until int) int {
	days := 0
	for i, s := range steps {
		end := until
		if i+1 < len(steps) {
			end = min(end, steps[i+1].Day)
		}
		if s.Amount > capacity && end > s.Day {
			days += end - s.Day
		}
	}
	return days
}
