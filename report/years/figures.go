package years

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/money"
	"traybook/report/plants"
	"traybook/report/rate"
)

// Num is a figure that may be missing (rule "Missing").
type Num = batch.Num

// Measure is what seasons are compared in.
type Measure string

// The measures: emerged of cells looked at, usable plants of cells sown, money a usable
// plant.
const (
	Emergence Measure = "emergence"
	Usable    Measure = "usable"
	Cost      Measure = "cost"
)

// Measures is all measures in the order in which they are shown.
var Measures = []Measure{Emergence, Usable, Cost}

// Figures is how seasons compare; each table sorted by its key columns.
type Figures struct {
	Years   []Change // by measure, crop (empty: the farm), from, to
	Seasons []Season // by measure, season
	Heating []Heating
}

// Side is one season of a comparison: its pooled figure, and what that rests on.
type Side struct {
	Figure  Num     // share of 1, or money a plant; missing of a part that the season lacks
	Batches int     // in the figure
	N       float64 // cells looked at, cells sown or usable plants
	Weight  float64 // 1: a season is the whole of itself
	LeftOut int     // batches of the season, and crop, without a figure of the measure
	// Later are batches whose figure did not stand yet by the day and month of today (rule
	// "A running season"); NoPlant, of cost, those of groups without a usable plant. Codes,
	// by bytes.
	Later, NoPlant []string
}

// Change is a season against the last one before it that has a figure (rule "Year over
// year"): of the farm or, Crop written, of a crop. The three parts add up to Change.
type Change struct {
	Measure  Measure
	Crop     string // empty: the farm
	From, To int
	Before   Side
	After    Side
	Change   float64
	// Same is what like sowings did, OtherKinds what other varieties and trays did,
	// OtherCrops, of the farm alone, what growing other crops did.
	Same, OtherKinds float64
	OtherCrops       Num
	Share            float64 // of the weight, in sowings that both seasons have
	Low, High        Num     // of Same (rule "Interval of a change")
	Usual            Num     // how much Same / Share usually is, up or down
	Verdict          rate.Verdict
	Groups           []Part // of the farm: its crops
	// Of a running season (rule "A running season") the day up to which each side counts,
	// that day too; else unknown.
	FromDay, ToDay records.Date

	variance float64 // of Same
}

// Part is what a crop has to do with a change of the farm, or a group of like sowings
// with a change of its crop. Over the parts of a change each column adds up to its own.
type Part struct {
	Crop         string
	Variety      string // this and the next three: of a group of a crop
	Cells        records.Maybe[int]
	Kind         string
	SeedsPerCell int

	Before, After Pooled
	Same          float64
	OtherKinds    float64
	OtherCrops    float64 // of a crop
}

// Pooled is one season of a part: its figure, and what that rests on, as in Side.
type Pooled struct {
	Figure  Num
	Batches int
	N       float64
	Weight  float64 // N as a share of all of the season's
}

// Piece is one of the three parts of a change.
type Piece string

// The parts.
const (
	LikeSowings Piece = "same"
	OtherKinds  Piece = "other_kinds"
	OtherCrops  Piece = "other_crops"
)

// Driver is a crop's share in one part of a change of the farm.
type Driver struct {
	Crop  string
	Piece Piece
	Value float64 // in the measure's unit; above 0 where the figure rose
}

// Season is the figure of a measure over a whole season, all crops together; its interval
// rests on the scatter of the book (rule "Interval of a share"), cost has none.
type Season struct {
	Measure   Measure
	Season    int
	Low, High Num
	Side
}

// Heating is a season's heat beside its cold (rule "Heating and the weather").
type Heating struct {
	Season             int
	DegreeDays         float64 // Celsius x days below 15 C
	Heat, PerDegreeDay Num     // money
	Fuel               Num     // in Unit
	Unit               string  // empty: no fuel is told
	FuelPerDegreeDay   Num
	Days, Read         int // heated days up to today; of them with both outdoor readings
}

// New compares the seasons of a book. g, p and m are of the batches of b; house and costs
// are the logs of that name.
func New(b *batch.Batches, g *germination.Figures, p *plants.Figures, m *money.Figures, house []records.HouseReading, costs []records.Cost) *Figures {
	return compared(b, g, p, m, house, costs, false)
}

// compared is New; all keeps the groups of like sowings of every crop beside its changes.
func compared(b *batch.Batches, g *germination.Figures, p *plants.Figures, m *money.Figures, house []records.HouseReading, costs []records.Cost, all bool) *Figures {
	f := &Figures{Heating: heatingOf(b, m.Ledger, house, costs)}
	for _, of := range measures(g, p) {
		c := comparisonOf(of, b, m.Borne)
		c.all = all
		f.Seasons = append(f.Seasons, c.seasons()...)
		f.Years = append(f.Years, c.changes()...)
	}
	slices.SortStableFunc(f.Years, func(a, b Change) int {
		return cmp.Or(cmp.Compare(a.Measure, b.Measure), cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.From, b.From), cmp.Compare(a.To, b.To))
	})
	slices.SortStableFunc(f.Seasons, func(a, b Season) int {
		return cmp.Or(cmp.Compare(a.Measure, b.Measure), cmp.Compare(a.Season, b.Season))
	})
	return f
}
