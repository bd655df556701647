package trays

import (
	"cmp"
	"maps"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
)

// lastSeasons is the number of finished seasons that are gone through again (rule "The
// next tray").
const lastSeasons = 3

// replayed is the uses of trays 1, 2, ... of a pair, a season, over the seasons gone
// through, and what was left out of them.
type replayed struct {
	seasons     []int
	uses        []float64
	notCompared []NotCompared
}

// replay hands trays of a pair's two codes, numbered on one row and anew each season,
// to the needs of the last finished seasons.
func (pr *pair) replay(stood standings) replayed {
	r := replayed{seasons: stood.seasons}
	draws, unlike := pr.parted(stood)
	r.notCompared = notCompared(unlike)
	_, needs := batch.GroupBy(pr.dayNeeds(draws), func(n dayNeed) int { return n.season })
	for _, season := range r.seasons {
		for i, held := range estimate.Replay(eachTray(needs[season])) {
			if i == len(r.uses) {
				r.uses = append(r.uses, 0)
			}
			r.uses[i] += float64(held) / float64(len(r.seasons))
		}
	}
	return r
}

// standings is where the batches of the seasons gone through stood, by tray code.
type standings struct {
	seasons []int
	in      map[string][]batch.Standing
}

func standingsOf(b *batch.Batches, all []batch.Standing) standings {
	seasons := b.FinishedSeasons(lastSeasons)
	within := batch.Filter(all, func(s batch.Standing) bool { return slices.Contains(seasons, s.Season) })
	_, in := batch.GroupBy(within, func(s batch.Standing) string { return s.Code })
	return standings{seasons, in}
}

// parted are the sowings that draw on the pair's row of trays, any in the
// tray and those in the other of crops that have a match; and those in the other that do
// not, of crops that were never compared.
func (pr *pair) parted(stood standings) (draws, unlike []batch.Standing) {
	compared := map[string]bool{}
	for _, m := range pr.matches {
		compared[m.Crop] = true
	}
	draws = slices.Clone(stood.in[pr.tray.Code])
	for _, s := range stood.in[pr.other.Code] {
		if compared[s.Crop] {
			draws = append(draws, s)
		} else {
			unlike = append(unlike, s)
		}
	}
	return draws, unlike
}

// notCompared adds up the trays of sowings by crop.
func notCompared(sowings []batch.Standing) []NotCompared {
	trays := map[string]float64{}
	for _, s := range sowings {
		trays[s.Crop] += s.Trays
	}
	var crops []NotCompared
	for _, crop := range slices.Sorted(maps.Keys(trays)) {
		crops = append(crops, NotCompared{crop, trays[crop]})
	}
	return crops
}

// dayNeed is the trays of one code sown on one day.
type dayNeed struct {
	season    int
	sown, end records.Date
	code      string
	trays     float64
}

// dayNeeds adds up what was sown on one day in one code, held until the latest
// of them is out and its tray washed, by day and code.
func (pr *pair) dayNeeds(sowings []batch.Standing) []dayNeed {
	type trayDay struct {
		sown records.Date
		code string
	}
	_, together := batch.GroupBy(sowings, func(s batch.Standing) trayDay { return trayDay{s.Sown, s.Code} })
	needs := make([]dayNeed, 0, len(together))
	for day, stood := range together {
		n := dayNeed{season: stood[0].Season, sown: day.sown, code: day.code}
		for _, s := range stood {
			n.trays += s.Trays
			n.end = max(n.end, s.End+records.Date(pr.settings.TrayTurnaround))
		}
		needs = append(needs, n)
	}
	slices.SortFunc(needs, func(a, b dayNeed) int { return cmp.Or(cmp.Compare(a.sown, b.sown), cmp.Compare(a.code, b.code)) })
	return needs
}

// eachTray counts every day's trays out, parts rounded up to whole ones.
func eachTray(days []dayNeed) []estimate.Need {
	var needs []estimate.Need
	for _, n := range days {
		for range records.WholeTrays(n.trays) {
			needs = append(needs, estimate.Need{Start: int(n.sown), End: int(n.end)})
		}
	}
	return needs
}
