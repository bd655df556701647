package report

import "traybook/records"

// stay is where a batch's trays stood: in a code, in a chamber until chamberOut
// where that is written, then on a bench until end.
type stay struct {
	season                int
	code                  string
	trays                 float64
	sown, chamberOut, end records.Date
}

// stays returns the batches' stays, each with its trays times grow and in the
// code it is switched to.
func (r *Report) stays(grow float64, swap []Switch) []stay {
	to := map[string]string{}
	for _, s := range swap {
		to[s.From] = s.To
	}
	stays := make([]stay, 0, len(r.Batches))
	for _, b := range r.Batches {
		s := stay{season: b.Season, code: b.Tray, trays: b.Trays * grow, sown: b.Sown, chamberOut: b.ChamberOut, end: max(b.End, b.Sown)}
		if code, switched := to[b.Tray]; switched {
			s.code = code
		}
		stays = append(stays, s)
	}
	return stays
}
