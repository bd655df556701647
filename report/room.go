package report

import (
	"cmp"
	"iter"
	"slices"

	"traybook/records"
	"traybook/report/estimate"
)

// PlaceKind tells benches, chambers and tray codes apart.
type PlaceKind int

// The kinds of place.
const (
	BenchPlace PlaceKind = iota
	ChamberPlace
	TrayPlace
)

// Room is the load of a place over a season (rules 34, 67).
type Room struct {
	Season     int
	Place      string // bench, chamber or a tray code
	Kind       PlaceKind
	Capacity   Num
	Peak       float64
	PeakDate   records.Date
	DaysOver   records.Maybe[int]
	GrowthLeft Num  // capacity/peak - 1
	BindsFirst bool // of the season's places, the one with the least growth left
	Uncounted  bool // a tray code of which no count is written: 0 owned (rule 54), binds nothing
}

// InUse is the load of a place from a day until its next row.
type InUse struct {
	Date     records.Date
	Place    string
	Trays    float64
	Capacity Num
}

// PairBuy is how many more trays of a pair to buy "if"; nil where the records
// cannot tell.
type PairBuy struct {
	Tray, Other string
	*Buy
}

// If is the room and trays "if" the farm grew or switched codes.
type If struct {
	Grow     float64
	Switch   []Switch
	Room     []Room
	InUse    []InUse
	NextTray []NextTray
	Buys     []PairBuy
}

// place is where trays stand: what stood there, and how much it holds from when on.
type place struct {
	name      string
	kind      PlaceKind
	spans     []estimate.Span
	capacity  func(records.Date) Num // on a day
	levels    func() []estimate.Span // capacity as spans below 0
	uncounted bool
	most      func(first, after records.Date) Num // capacity over a season
}

// room computes the load of benches, chambers and tray codes, and both "if" the
// farm grew or switched codes (rules 34, 67).
func (r *Report) room() {
	r.Room, r.InUse = r.roomOf(r.stays(1, nil))
	r.If = r.grown()
}

func (r *Report) roomOf(stays []stay) ([]Room, []InUse) {
	places := r.places(stays)
	var room []Room
	var use []InUse
	for season := range r.seasonsThrough() {
		room = append(room, roomIn(season, places, r.Book.Settings)...)
	}
	for _, p := range places {
		for _, step := range estimate.Occupancy(p.spans) {
			day := records.Date(step.Day)
			use = append(use, InUse{Date: day, Place: p.name, Trays: step.Amount, Capacity: p.capacity(day)})
		}
	}
	slices.SortStableFunc(use, func(a, b InUse) int { return cmp.Or(cmp.Compare(a.Date, b.Date), cmp.Compare(a.Place, b.Place)) })
	return room, use
}

// seasonsThrough are the seasons from the first to the last sowing's.
func (r *Report) seasonsThrough() iter.Seq[int] {
	return func(yield func(int) bool) {
		for i := 0; len(r.Seasons) > 0 && i <= r.Seasons[len(r.Seasons)-1]-r.Seasons[0]; i++ {
			if !yield(r.Seasons[0] + i) {
				return
			}
		}
	}
}

// roomIn is a season's load of every place on which anything stood, by place.
func roomIn(season int, places []*place, s records.Settings) []Room {
	first, after := s.SeasonDays(season)
	var room []Room
	tightest := -1
	for _, p := range places {
		load := p.loadIn(season, first, after)
		if load.Peak == 0 {
			continue
		}
		room = append(room, load)
		if g := load.GrowthLeft; g.Known && !p.uncounted && (tightest < 0 || g.Value < room[tightest].GrowthLeft.Value) {
			tightest = len(room) - 1
		}
	}
	if tightest >= 0 {
		room[tightest].BindsFirst = true
	}
	return room
}

// loadIn is the load of a place over the days of a season.
func (p *place) loadIn(season int, first, after records.Date) Room {
	load := Room{Season: season, Place: p.name, Kind: p.kind, Uncounted: p.uncounted, Capacity: p.most(first, after)}
	spans := within(p.spans, first, after)
	peak, day, some := estimate.Peak(estimate.Occupancy(spans))
	if !some || peak <= 0 {
		return load
	}
	load.Peak, load.PeakDate = peak, records.Date(day)
	if !load.Capacity.Known {
		return load
	}
	over := estimate.Occupancy(append(spans, within(p.levels(), first, after)...))
	load.DaysOver = records.Known(estimate.DaysOver(over, roundingError, int(after)))
	load.GrowthLeft = records.Known(load.Capacity.Value/peak - 1)
	return load
}

// within cuts spans to the days from first until the day before after.
func within(spans []estimate.Span, first, after records.Date) []estimate.Span {
	var cut []estimate.Span
	for _, s := range spans {
		s.Start, s.End = max(s.Start, int(first)), min(s.End, int(after))
		if s.End > s.Start {
			cut = append(cut, s)
		}
	}
	return cut
}
