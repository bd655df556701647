package money

import (
	"slices"

	"traybook/records"
	"traybook/report/rate"
)

// mixPerML is the price of a millilitre of mix, for rule "Gain a use": what the batches
// of the last three finished seasons bear as mix, over the volume of their cells. A
// batch that bears none, or without a volume, is left out; missing where all are.
func (a *accounts) mixPerML() Num {
	seasons, mix, volume := a.all.FinishedSeasons(lastSeasons), tally{}, tally{}
	for _, b := range a.borne {
		bears := b.Parts.Of(records.Mix)
		if bears == 0 || !b.CellML.Known || !b.CellsSown.Known || !slices.Contains(seasons, b.Season) {
			continue
		}
		mix.add(bears)
		volume.add(b.CellML.Value * float64(b.CellsSown.Value))
	}
	return rate.Ratio(records.Known(mix.value()), records.Known(volume.value()))
}
