package report

import (
	"math"
	"slices"

	"traybook/records"
	"traybook/report/estimate"
)

// The names of the places that are no tray code.
const (
	BenchName   = "bench"
	ChamberName = "chamber"
)

// places returns the benches, the chambers and every tray code sown, with what
// stood there (rules 34, 67).
func (r *Report) places(stays []stay) []*place {
	codes := trayCodes(r)
	bench := fixedPlace(BenchName, BenchPlace, r.Book.Settings.BenchPlaces)
	chamber := fixedPlace(ChamberName, ChamberPlace, r.Book.Settings.ChamberPlaces)
	of := map[string]*place{}
	for _, s := range stays {
		start := s.sown
		if s.chamberOut.Known() {
			start = s.chamberOut
			chamber.add(s.sown, s.chamberOut, s.trays)
		}
		bench.add(start, s.end, s.trays*placesOf(codes, s.code))
		if of[s.code] == nil {
			of[s.code] = codePlace(s.code, codes[s.code])
		}
		of[s.code].add(s.sown, s.end+records.Date(r.Book.Settings.TrayTurnaround), s.trays)
	}
	places := []*place{bench, chamber}
	for _, code := range sortedKeys(of) {
		places = append(places, of[code])
	}
	return places
}

func placesOf(codes map[string]*trayCode, code string) float64 {
	if c := codes[code]; c != nil {
		return c.places
	}
	return 1
}

// add puts an amount on a place; a span ends no earlier than it begins (rule 67).
func (p *place) add(from, to records.Date, amount float64) {
	if to > from {
		p.spans = append(p.spans, estimate.Span{Start: int(from), End: int(to), Amount: amount})
	}
}

// fixedPlace holds as much at all times.
func fixedPlace(name string, kind PlaceKind, capacity Num) *place {
	return &place{name: name, kind: kind,
		capacity: func(records.Date) Num { return capacity },
		most:     func(_, _ records.Date) Num { return capacity },
		levels: func() []estimate.Span {
			return []estimate.Span{{Start: 0, End: math.MaxInt, Amount: -capacity.Value}}
		},
	}
}

// codePlace holds the trays owned: on a day, or the most on any day of a season.
// How many is unknown of a code without a purchase.
func codePlace(name string, c *trayCode) *place {
	unknown := c == nil
	known := func(owned int) Num { return records.Known(float64(owned)) }
	return &place{name: name, kind: TrayPlace, uncounted: c != nil && !c.counted(),
		capacity: func(d records.Date) Num {
			if unknown {
				return Num{}
			}
			return known(c.ownedOn(d))
		},
		most: func(first, after records.Date) Num {
			if unknown {
				return Num{}
			}
			return known(c.ownedIn(first, after))
		},
		levels: func() []estimate.Span { return c.owned() },
	}
}

// owned is the trays owned as spans below 0, from each purchase to the next.
func (c *trayCode) owned() []estimate.Span {
	days := []records.Date{0}
	for _, row := range c.rows {
		days = append(days, row.Bought)
	}
	days = slices.Compact(days)
	var spans []estimate.Span
	for i, d := range days {
		end := math.MaxInt
		if i+1 < len(days) {
			end = int(days[i+1])
		}
		spans = append(spans, estimate.Span{Start: int(d), End: end, Amount: -float64(c.ownedOn(d))})
	}
	return spans
}
