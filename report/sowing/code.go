package sowing

import (
	"maps"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/plants"
)

// CodeHow says where the tray code of a wish comes from; empty: there is none.
type CodeHow string

// The ways in which a wish has its tray code.
const (
	CodeWritten  CodeHow = "written"
	CodeOfSeason CodeHow = "most trays in the last finished season"
	CodeOfBook   CodeHow = "most trays in the book"
)

// codes is the tray codes in which a crop was sown most; empty where it was not.
type codes struct{ season, book string }

// codesOf looks for the codes with most trays, over the batches from seed of a crop:
// those of the last finished season, none where there is no season, and all.
func codesOf(seeded []*plants.Plants, last []int) codes {
	inLast := batch.Filter(seeded, func(p *plants.Plants) bool { return slices.Contains(last, p.Season) })
	return codes{season: mostTrays(inLast), book: mostTrays(seeded)}
}

// mostTrays is the code with most trays; of equal ones the first by bytes.
func mostTrays(of []*plants.Plants) string {
	trays := map[string]float64{}
	for _, p := range of {
		trays[p.Tray] += p.Trays
	}
	most := ""
	for _, code := range slices.Sorted(maps.Keys(trays)) {
		if most == "" || trays[code] > trays[most]+noise {
			most = code
		}
	}
	return most
}

// of is the code that a wish is sown in.
func (c codes) of(w records.Wish) (code string, how CodeHow) {
	switch {
	case w.Tray != "":
		return w.Tray, CodeWritten
	case c.season != "":
		return c.season, CodeOfSeason
	case c.book != "":
		return c.book, CodeOfBook
	}
	return "", ""
}
