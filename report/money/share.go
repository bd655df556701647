package money

import "iter"

// mostPlain is the work, rows times days or rows times batches, up to which rows are shared
// out one by one. Beyond it, far beyond any book kept by hand, they are added up first,
// which changes the last digits of sums alone.
const mostPlain = 5_000_000

// mostFailed is how many batches are looked at, one by one, for labour of setting out of
// days on which only batches without a plant ended.
const mostFailed = 100_000_000

// by is what the rows of a share go by, day by day.
type by int

const (
	byStood      by = iota // trays standing
	bySown                 // trays sown
	byPlants               // usable plants of batches that ended
	byEnded                // trays of batches that ended
	byCold                 // trays standing, each weighted by the cold
	byHeated               // trays standing on heated days
	byHeatedCold           // the same, weighted
)

// shareKey is a kind of rows that are spread alike.
type shareKey struct {
	category Category
	by       by
}

// share spreads rows over days: one tray (or plant) of a day bears of a row
//
//	amount x factor of the day / sum of weight over the row's days
//
// Where there are many rows they wait, each on the few spans of a tree of halved spans that
// make up its days, and come down to the days at last: work of log(days) a row, and a day
// that no row covers stays exactly empty.
type share struct {
	per            []tally // where it goes, by day
	weight, factor []float64
	sums           []float64 // of weight, by span of the tree; of few rows empty
	waiting        []tally   // of rows, by span, for a factor of 1; of few rows empty
}

// share returns the share of a kind of rows, begun where it is the first.
func (h *dayRates) share(key shareKey) *share {
	if s := h.shares[key]; s != nil {
		return s
	}
	s := &share{per: h.target(key), factor: h.ones}
	switch key.by {
	case bySown:
		s.weight = h.sown
	case byPlants:
		s.weight = h.usable
	case byEnded:
		s.weight = h.ended
	case byStood:
		s.weight = h.stood
	default:
		s.factor = h.factors(key.by, h.first, len(h.stood))
		s.weight = make([]float64, len(h.stood))
		for d, trays := range h.stood {
			s.weight[d] = trays * s.factor[d]
		}
	}
	if h.many {
		s.wait()
	}
	h.shares[key], h.opened = s, append(h.opened, s)
	return s
}

// target is where the money of a kind of rows goes: a tray sown, a plant gone out, a tray
// of a batch that ended, or a tray and day of a category.
func (h *dayRates) target(key shareKey) []tally {
	switch {
	case key.by == bySown:
		return h.perSown
	case key.by == byPlants:
		return h.perPlant
	case key.by == byEnded:
		return h.perEnded
	case h.perTray[key.category] == nil:
		h.perTray[key.category] = make([]tally, len(h.stood))
	}
	return h.perTray[key.category]
}

// spread adds a row; false where its days have no weight.
func (s *share) spread(days span, amount float64) bool {
	all := s.over(days)
	if !(all > 0) {
		return false
	}
	for n := range s.halves(days) {
		s.waiting[n].add(amount / all)
	}
	if s.waiting == nil {
		for d := days.from; d < days.to; d++ {
			s.per[d].add(amount * s.factor[d] / all)
		}
	}
	return true
}

// over is the weight of days.
func (s *share) over(days span) float64 {
	if s.sums == nil {
		return sum(s.weight[days.from:days.to])
	}
	all := 0.0
	for n := range s.halves(days) {
		all += s.sums[n]
	}
	return all
}

// wait lets rows wait from now on. Span n of the tree is spans 2n and 2n+1, and from the
// number of days on a day each.
func (s *share) wait() {
	days := len(s.weight)
	s.waiting, s.sums = make([]tally, 2*days), make([]float64, 2*days)
	copy(s.sums[days:], s.weight)
	for n := days - 1; n > 0; n-- {
		s.sums[n] = s.sums[2*n] + s.sums[2*n+1]
	}
}

// halves yields the spans of the tree that make up days; none where rows do not wait.
func (s *share) halves(days span) iter.Seq[int] {
	return func(yield func(int) bool) {
		n := len(s.waiting) / 2
		for from, to := days.from+n, days.to+n; n > 0 && from < to; from, to = from/2, to/2 {
			if from%2 == 1 {
				yield(from)
				from++
			}
			if to%2 == 1 {
				to--
				yield(to)
			}
		}
	}
}

// close brings what waits down to the days.
func (s *share) close() {
	for d := range len(s.waiting) / 2 {
		for n := d + len(s.waiting)/2; n > 0; n /= 2 {
			s.per[d].join(s.waiting[n], s.factor[d])
		}
	}
}
