package batch

import "traybook/records"

// Standing is where a batch's trays stood: in a code, in a chamber until ChamberOut
// (unknown: in none), then on a bench until End.
type Standing struct {
	Season                int
	Code                  string
	Crop                  string
	Trays                 float64
	Sown, ChamberOut, End records.Date
}

// Switch is one tray code sown in place of another. Case and spaces do not matter.
type Switch struct{ From, To string }

// Standings returns where the batches stood, each with its trays times grow and in
// the code that it is switched to. A stay in a chamber that no one wrote down counts
// up to today, for an open batch, and up to its end, for any other.
func (a *Batches) Standings(grow float64, swap []Switch) []Standing {
	to := map[string]string{}
	for _, s := range swap {
		to[s.From] = s.To
	}
	all := make([]Standing, 0, len(a.List))
	for _, b := range a.List {
		s := Standing{Season: b.Season, Code: b.Tray, Crop: b.Crop, Trays: b.Trays * grow, Sown: b.Sown, ChamberOut: b.ChamberUntil, End: max(b.End, b.Sown)}
		if s.ChamberOut.Known() {
			s.ChamberOut = min(s.ChamberOut, s.End)
		}
		if code, switched := to[b.Tray]; switched {
			s.Code = code
		}
		all = append(all, s)
	}
	return all
}
