package trays

import (
	"cmp"
	"maps"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
)

// lastSeasons is the number of seasons that are replayed (rule "The next tray").
const lastSeasons = 3

// replayed is the uses of trays 1, 2, ... of a pair, a season.
type replayed struct {
	seasons []int
	uses    []float64
}

// replay hands trays of a pair's two codes, numbered on one row and anew each
// season, to the needs of the last seasons in which either was sown.
func (pr *pair) replay(standings []batch.Standing) replayed {
	_, needs := batch.GroupBy(pr.dayNeeds(standings), func(n dayNeed) int { return n.season })
	seasons := slices.Sorted(maps.Keys(needs))
	r := replayed{seasons: seasons[max(0, len(seasons)-lastSeasons):]}
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

// dayNeed is the trays of one code sown on one day.
type dayNeed struct {
	season    int
	sown, end records.Date
	code      string
	trays     float64
}

// dayNeeds adds up what was sown on one day in one code, held until the latest
// of them is out and its tray washed, by day and code.
func (pr *pair) dayNeeds(standings []batch.Standing) []dayNeed {
	type trayDay struct {
		sown records.Date
		code string
	}
	of := batch.Filter(standings, func(s batch.Standing) bool { return s.Code == pr.tray.Code || s.Code == pr.other.Code })
	_, together := batch.GroupBy(of, func(s batch.Standing) trayDay { return trayDay{s.Sown, s.Code} })
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
