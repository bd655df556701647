package report

import "traybook/records"

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
}

// InUse is the load of a place from a day until its next row.
type InUse struct {
	Date     records.Date
	Place    string
	Trays    float64
	Capacity Num
}

// If is the room and trays "if" the farm grew or switched codes.
type If struct {
	Grow     float64
	Switch   []Switch
	Room     []Room
	InUse    []InUse
	NextTray []NextTray
	Buy      map[string]*Buy // by tray code of the pair
}
