package report

import "traybook/records"

// readOuts takes what left the house: the batch's rows of out.csv or else what
// its sowing says (rule 18). Dead plants are not usable; a batch with no other
// row has nothing written yet, unless it is cleared.
func (b *Batch) readOuts(rows []records.Out) {
	b.lastWritten = max(b.lastWritten, b.ChamberOut, b.SetOut)
	if len(rows) == 0 {
		b.OutWritten = b.PlantsOut.Known || b.Surplus.Known
		b.WrittenOut = float64(b.PlantsOut.Or(0) + b.Surplus.Or(0))
		b.FieldOut = Num{Value: float64(b.PlantsOut.Value), Known: b.PlantsOut.Known}
		return
	}
	for _, o := range rows {
		b.lastWritten = max(b.lastWritten, o.Date)
		if o.Last {
			b.cleared = max(b.cleared, o.Date)
		}
		if o.To == records.Dead {
			continue
		}
		b.OutWritten = true
		b.WrittenOut += float64(o.Plants)
		b.FieldOut.Known = true
		if o.To == records.ToField {
			b.FieldOut.Value += float64(o.Plants)
		}
	}
	b.hasOuts = true
}

// allOut reports whether all that became of the batch is written: every plant out
// and what was left over.
func (b *Batch) allOut() bool {
	if b.hasOuts {
		return b.cleared.Known()
	}
	return b.PlantsOut.Known && b.Surplus.Known
}
