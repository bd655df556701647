package years

import (
	"cmp"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
)

// like is what the batches of a pool have in common: of a season nothing else, of a crop
// its name, of sowings that are alike all of it.
type like struct {
	season        int
	crop, variety string
	cells         records.Maybe[int]
	kind          string
	seeds         int
}

// level is how finely batches are pooled: by which of their ranks, and what those of one
// rank have in common.
type level struct {
	rank func(entry) int32
	like func(entry) like
}

// The levels, each within the one before.
var (
	ofSeason = level{entry.SeasonRank, func(e entry) like { return like{season: e.Season} }}
	ofCrop   = level{entry.SeasonCropRank, func(e entry) like { return like{season: e.Season, crop: e.Crop} }}
	ofLike   = level{entry.LikeRank, func(e entry) like {
		return like{e.Season, e.Crop, e.Variety, e.TrayCells, e.Kind, e.SeedsPerCell}
	}}
)

// compare sets likes of any seasons side by side: it is 0 for those that differ in season
// alone.
func (l like) compare(o like) int {
	return cmp.Or(cmp.Compare(l.crop, o.crop), cmp.Compare(l.variety, o.variety), cmp.Compare(l.cells.Or(-1), o.cells.Or(-1)),
		cmp.Compare(l.kind, o.kind), cmp.Compare(l.seeds, o.seeds))
}

// pool is batches of one season that have something in common, in their order, and what
// they add up to. The parts that it falls into are looked for once, however many seasons
// it is set beside.
type pool struct {
	like
	entries []entry
	sum     estimate.Count
	parts   []*pool // by like: of a season its crops, of a crop its like sowings
	varies  Num     // the variance of its rate, once asked for
}

// poolsBy splits batches, in the order of likes, which is that of ranks.
func poolsBy(entries []entry, by level) []*pool {
	groups := batch.SplitBy(entries, by.rank).Groups
	pools, of := make([]*pool, len(groups)), make([]pool, len(groups))
	for i, group := range groups {
		of[i] = pool{like: by.like(group[0]), entries: group, sum: sumOf(group)}
		pools[i] = &of[i]
	}
	return pools
}

// crops are the crops of a season.
func (p *pool) crops() []*pool { return p.split(ofCrop) }

// kinds are the like sowings of a crop.
func (p *pool) kinds() []*pool { return p.split(ofLike) }

func (p *pool) split(by level) []*pool {
	if p.parts == nil {
		p.parts = poolsBy(p.entries, by)
	}
	return p.parts
}

// ratio is the pooled figure of batches that rest on something.
func (p *pool) ratio() float64 { return p.sum.X / p.sum.N }

// variance is that of its rate (rule "Variance of a rate"); rho is its crop's.
func (p *pool) variance(rho float64) float64 {
	if !p.varies.Known {
		p.varies = records.Known(varianceOf(p.entries, rho))
	}
	return p.varies.Value
}

// pooled is its figure and what that rests on; without any batch there is no figure.
func (p *pool) pooled() Pooled {
	s := Pooled{Batches: len(p.entries), N: p.sum.N}
	if len(p.entries) > 0 {
		s.Figure = records.Known(p.ratio())
	}
	return s
}
