package money

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/plants"
)

// Num is a figure that may be missing.
type Num = batch.Num

// Category is a category of money: one of costs.csv, or the trays' yearly charge.
type Category = records.Category

// TrayCharge is the ledger's category of the trays' yearly charge.
const TrayCharge Category = "tray_charge"

// Categories is all categories in the order in which they are shown.
var Categories = append(append([]Category{}, records.Categories...), TrayCharge)

// Borne is a batch, its plants and the money that it bears.
type Borne struct {
	*plants.Plants
	Parts         Parts   // what it bears, by category; Carried is cost taken over or handed on
	Sowing        float64 // sowing labour borne, a part of Parts' labour
	Cost          Num     // total; missing where the book has no cost at all
	PlantsMoved   float64 // plants of it that were potted on (taken off usable in cost figures)
	PerTransplant Num
}

// Figures is what transplants cost, in all tables; each sorted by its key columns.
type Figures struct {
	Borne   []*Borne // in the order of the batches
	Cost    []Cost   // by group
	Crops   []Cost   // by season and crop
	Seasons []Cost   // by season
	Sizes   []Cost   // by season, cells and kind
	Months  []Month  // ended batches by season and month of their end
	Ledger  []LedgerLine
	Unborne []UnborneSum      // what stands in Ledger as unborne, and why
	Has     map[Category]bool // categories of which the book has any money
	HasSow  bool              // it has a row of sowing labour
	Lives   map[string]Life   // by tray code
	// MixPerML is the price of a millilitre of mix (rule "Gain a use"); missing where no
	// batch of the last three finished seasons bears mix and has a volume.
	MixPerML Num
}

// Life is the life of a tray code (rule "Life of a tray").
type Life struct {
	Uses, Seasons Num // Seasons is never missing
	UsesPerSeason Num
	Assumed       bool  // neither lasts nor uses written: 1 season
	YearsAssumed  bool  // uses written and lasts not: 15 years
	Shown         Shown // beside it, in words; empty where LifeAt alone made the life
}

// Shown is what the book itself shows of a tray code's life: Gone of Bought trays are
// broken or sold, after Uses tray-uses, the trays ever sown of the code.
type Shown struct {
	Gone   int
	Bought records.Maybe[int] // missing where any count of the code is blank
	Uses   float64
}

// Cost is what a group's batches bear and what a transplant cost.
type Cost struct {
	batch.Group
	Batches        int // all of the group: what Parts and Total rest on
	Open           int // of them open
	Rests          int // ended with a figure of usable plants: what the other figures rest on
	Usable         Num
	Parts          Parts
	Behind         Parts // of Parts, what the batches bear that PerTransplant rests on: it adds up to PerTransplant times Usable
	Total          Num
	FailedShare    Num
	PerTransplant  Num
	EstimatedShare Num
	PerCell        Num // over the batches whose cells are known, open ones too
}

// Month is what a season's batches that ended in a month cost. First is its first day.
type Month struct {
	First records.Date
	Cost
}

// LedgerLine is a season's money of a category.
type LedgerLine struct {
	Season                 int
	Category               Category
	Ledger, Borne, Unborne float64
}
