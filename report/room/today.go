package room

import (
	"traybook/records"
	"traybook/report/batch"
)

// Today returns what is left today of the benches and of the chambers (rule "Room"),
// of those whose places the book gives. A batch in a chamber today counts there, however
// long it is yet taken to stay (rule "Chamber stays").
func Today(b *batch.Batches) []Left {
	var benches, chambers float64
	for _, of := range b.List {
		switch {
		case !standsOn(of, b.Today):
		case of.ChamberUntil > b.Today:
			chambers += of.Trays
		default:
			benches += of.Trays * b.Codes.Places(of.Tray)
		}
	}
	var left []Left
	if places := b.Settings.BenchPlaces; places.Known {
		left = append(left, Left{BenchName, places.Value - benches})
	}
	if places := b.Settings.ChamberPlaces; places.Known {
		left = append(left, Left{ChamberName, places.Value - chambers})
	}
	return left
}

// standsOn reports whether a batch stands on a day that is today: an open one has no
// end yet.
func standsOn(b *batch.Batch, today records.Date) bool {
	return b.Sown <= today && (!b.Ended() || b.End > today)
}
