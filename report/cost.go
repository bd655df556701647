package report

import "traybook/records"

// Parts is money by category; the tray charge and cost carried from batch to
// batch stand beside the categories of costs.csv.
type Parts struct {
	Seed, Mix, Labour, Heat, Power, Water, Feed, Equipment, Other float64
	TrayCharge                                                    float64
	Carried                                                       float64
}

// Cost is what a group's batches bear and what a transplant cost (rules 19-27,
// 52, 59, 60). Has tells which categories the book has; the others are missing.
type Cost struct {
	Group
	Batches        int // ended batches it rests on
	Open           int // open batches left out
	Usable         Num
	Parts          Parts
	Total          Num
	FailedShare    Num
	PerTransplant  Num
	EstimatedShare Num
}

// LedgerLine is a season's money of a category (rule 26).
type LedgerLine struct {
	Season                 int
	Category               string // of costs.csv, or tray_charge
	Ledger, Borne, Unborne float64
}

// TrayCharge is the ledger's category of the trays' yearly charge.
const TrayCharge = "tray_charge"

// HasCategory tells whether the book has any money of a category (rule 59).
func (r *Report) HasCategory(c records.Category) bool { return r.hasCategory[c] }
