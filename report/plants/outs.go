package plants

import (
	"traybook/records"
	"traybook/report/batch"
)

// readOuts takes what left the house: the batch's rows of out.csv or else what its
// sowing says (rule "Usable plants").
func (s *Seen) readOuts(sown *batch.Sowing, rows []*records.Out) {
	s.lastWritten = max(s.lastWritten, sown.ChamberOut, sown.SetOut)
	if len(rows) == 0 {
		s.readSetOut(sown)
		return
	}
	for _, o := range rows {
		s.addOut(o)
	}
	s.HasOuts, s.allOut = true, s.Cleared.Known()
}

// readSetOut takes plants_out and surplus of the sowing: all that became of the batch
// where both are written. Surplus alone says nothing of the plants gone.
func (s *Seen) readSetOut(sown *batch.Sowing) {
	s.OutWritten = sown.PlantsOut.Known
	s.WrittenOut = float64(sown.PlantsOut.Or(0) + sown.Surplus.Or(0))
	s.FieldOut = Num{Value: float64(sown.PlantsOut.Value), Known: sown.PlantsOut.Known}
	s.allOut = sown.PlantsOut.Known && sown.Surplus.Known
}

// addOut takes a row of out.csv. Dead plants are not usable; a batch with no other
// row has no plants gone written yet, unless it is cleared.
func (s *Seen) addOut(o *records.Out) {
	s.lastWritten = max(s.lastWritten, o.Date)
	if o.Last {
		s.Cleared = max(s.Cleared, o.Date)
	}
	if o.To == records.Dead {
		return
	}
	s.OutWritten = true
	s.WrittenOut += float64(o.Plants)
	s.FieldOut.Known = true
	if o.To == records.ToField {
		s.FieldOut.Value += float64(o.Plants)
	}
}
