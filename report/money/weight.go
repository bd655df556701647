package money

import "traybook/records"

// A weight is a batch's claim on a row; one of 0 or less is none.
type weight func(*Borne) float64

func byTrays(b *Borne) float64    { return b.Trays }
func bySeeds(b *Borne) float64    { return b.SeedsSown.Or(0) }
func byUsable(b *Borne) float64   { return b.Usable.Or(0) }
func byTrayDays(b *Borne) float64 { return max(b.TrayDays, 0) }

// weightOf is the weight of a row that is not spread over a period (rules
// "Direct rows", "Seed", "Mix", "Other shared rows").
func weightOf(row *costRow, batches []*Borne) weight {
	switch {
	case row.Category == records.Seed:
		return bySeeds
	case row.Category == records.Mix:
		return mixWeight(batches)
	case row.task() == records.SowingTask:
		return byTrays
	case row.task() == records.OutTask:
		return byUsable
	}
	return byTrayDays
}

// mixWeight is cell_ml x cells, or cells where any volume is unknown (rule "Mix"). A
// batch of unknown cells takes none.
func mixWeight(batches []*Borne) weight {
	for _, b := range batches {
		if !b.CellML.Known {
			return func(b *Borne) float64 { return float64(b.CellsSown.Value) }
		}
	}
	return func(b *Borne) float64 { return b.CellML.Value * float64(b.CellsSown.Value) }
}
