package room

import (
	"math"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
)

// capacity is how much a bench holds.
type capacity struct {
	on     func(records.Date) Num              // on a day
	most   func(first, after records.Date) Num // the most on any day of a season
	levels func() []estimate.Span              // over time, as spans below 0, so that what stands over it adds up to above 0
}

// always holds as much at all times; unknown, it holds nobody knows how much.
func always(places Num) capacity {
	return capacity{
		on:   func(records.Date) Num { return places },
		most: func(_, _ records.Date) Num { return places },
		levels: func() []estimate.Span {
			return []estimate.Span{{Start: 0, End: math.MaxInt, Amount: -places.Value}}
		},
	}
}

// owned holds the trays owned of a code of which every count is written.
func owned(c *batch.TrayCode) capacity {
	return capacity{
		on:     func(d records.Date) Num { return asNum(c.OwnedOn(d)) },
		most:   func(first, after records.Date) Num { return asNum(c.OwnedIn(first, after)) },
		levels: func() []estimate.Span { return ownedSpans(c) },
	}
}

// asNum is a whole number as a figure.
func asNum(n records.Maybe[int]) Num { return Num{Value: float64(n.Value), Known: n.Known} }

// ownedSpans is the trays owned as spans below 0, from each purchase to the next.
func ownedSpans(c *batch.TrayCode) []estimate.Span {
	days := []records.Date{0}
	for _, row := range c.Rows {
		days = append(days, row.Bought)
	}
	days = slices.Compact(days)
	var spans []estimate.Span
	for i, d := range days {
		end := math.MaxInt
		if i+1 < len(days) {
			end = int(days[i+1])
		}
		spans = append(spans, estimate.Span{Start: int(d), End: end, Amount: -asNum(c.OwnedOn(d)).Value})
	}
	return spans
}
