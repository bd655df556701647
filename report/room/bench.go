package room

import (
	"maps"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
)

// bench is whatever trays take up: the benches, the chambers or the trays of one
// code; what stood on it, and how much it holds.
type bench struct {
	name      string
	kind      PlaceKind
	uncounted bool
	places    float64 // that a tray of a code takes on a bench
	spans     []estimate.Span
	load      []estimate.Step // once all stands there: what stood on each day, and
	over      []estimate.Step // by how much that was more than it holds, where that is known
	capacity
}

// benchesOf returns the benches, the chambers and every tray code sown, with what
// stood there.
func benchesOf(b *batch.Batches, standings []batch.Standing) []*bench {
	benches := &bench{name: BenchName, kind: BenchPlace, capacity: always(b.Settings.BenchPlaces), spans: make([]estimate.Span, 0, len(standings)+1)}
	chambers := &bench{name: ChamberName, kind: ChamberPlace, capacity: always(b.Settings.ChamberPlaces)}
	washing := records.Date(b.Settings.TrayTurnaround)
	codes := codesOf(b, standings)
	for i := range standings {
		s := &standings[i]
		start := s.Sown
		if s.ChamberOut.Known() {
			start = s.ChamberOut
			chambers.add(s.Sown, s.ChamberOut, s.Trays)
		}
		code := codes[s.Code]
		benches.add(start, s.End, s.Trays*code.places)
		code.add(s.Sown, s.End+washing, s.Trays)
	}
	all := []*bench{benches, chambers}
	for _, code := range slices.Sorted(maps.Keys(codes)) {
		all = append(all, codes[code])
	}
	return all
}

// codesOf is every tray code in which anything stood, with room for that.
func codesOf(b *batch.Batches, standings []batch.Standing) map[string]*bench {
	many := map[string]int{}
	for i := range standings {
		many[standings[i].Code]++
	}
	codes := make(map[string]*bench, len(many))
	for code, n := range many {
		codes[code] = traysOf(code, b.Codes[code])
		codes[code].places, codes[code].spans = b.Codes.Places(code), make([]estimate.Span, 0, n)
	}
	return codes
}

// traysOf is the trays of a code; c is nil where trays.csv lacks it.
func traysOf(code string, c *batch.TrayCode) *bench {
	at := &bench{name: code, kind: TrayPlace, capacity: always(Num{})}
	if c == nil {
		return at
	}
	if _, counted := c.Bought(); counted {
		at.capacity = owned(c)
	} else {
		at.uncounted = true
	}
	return at
}

// addUp adds up what stood there.
func (at *bench) addUp() {
	at.load = estimate.Occupancy(at.spans)
	if at.on(0).Known {
		at.over = estimate.Occupancy(append(at.spans, at.levels()...))
	}
	at.spans = nil
}

// add puts an amount on a bench; what ends no later than it begins takes no room.
func (at *bench) add(from, to records.Date, amount float64) {
	if to > from {
		at.spans = append(at.spans, estimate.Span{Start: int(from), End: int(to), Amount: amount})
	}
}
