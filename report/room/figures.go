package room

import (
	"traybook/records"
	"traybook/report/batch"
)

// Num is a figure that may be missing.
type Num = batch.Num

// Figures is the load of benches, chambers and tray codes; each table sorted by its
// key columns.
type Figures struct {
	Load  []Load  // by season; benches, chambers, then codes by bytes
	InUse []InUse // by day, then place
}

// The names of the places that are no tray code.
const (
	BenchName   = "bench"
	ChamberName = "chamber"
)

// PlaceKind tells benches, chambers and tray codes apart.
type PlaceKind int

// The kinds of place.
const (
	BenchPlace PlaceKind = iota
	ChamberPlace
	TrayPlace
)

// Load is the load of a place over a season (rule "Room"): of benches in places, of
// chambers and codes in trays.
type Load struct {
	Season     int
	Place      string // bench, chamber or a tray code
	Kind       PlaceKind
	Capacity   Num
	Peak       float64
	PeakDate   records.Date
	DaysOver   records.Maybe[int]
	GrowthLeft Num  // capacity/peak - 1
	BindsFirst bool // of the season's places, the one with the least growth left
	Uncounted  bool // a tray code of which a count is blank: how many are owned is unknown
}

// InUse is the load of a place from a day until its next row.
type InUse struct {
	Date     records.Date
	Place    string
	Trays    float64
	Capacity Num
}

// Left is what is left of a place on one day, in its unit; below 0 where it is too
// full.
type Left struct {
	Place string
	Left  float64
}
