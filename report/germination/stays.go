package germination

import (
	"cmp"
	"math"
	"slices"

	"traybook/records"
)

// stay is the days on which a batch stood somewhere, until not counted.
type stay struct {
	*Counted
	from, until records.Date
}

// stays is batches as they come and go. Days are asked for in ascending order, so that
// each batch is looked at on its own days alone.
type stays struct {
	all   []stay // by their first day
	next  int    // the first of all that has not come yet
	stand []stay
}

// staysOf takes the stays of batches; days gives one's first and the day after its last,
// which may be no later.
func staysOf(batches []*Counted, days func(*Counted) (from, until records.Date)) *stays {
	s := &stays{}
	for _, c := range batches {
		if from, until := days(c); from < until {
			s.all = append(s.all, stay{c, from, until})
		}
	}
	slices.SortFunc(s.all, func(a, b stay) int { return cmp.Or(cmp.Compare(a.from, b.from), cmp.Compare(a.Nth, b.Nth)) })
	return s
}

// on returns the stays of a day, which is not before the one asked for last; the list
// stands until the next is.
func (s *stays) on(d records.Date) []stay {
	for ; s.next < len(s.all) && s.all[s.next].from <= d; s.next++ {
		s.stand = append(s.stand, s.all[s.next])
	}
	s.stand = slices.DeleteFunc(s.stand, func(one stay) bool { return one.until <= d })
	return s.stand
}

// first is the day on which the first one comes, last the day after the last one left.
func (s *stays) first() records.Date {
	if len(s.all) == 0 {
		return 0
	}
	return s.all[0].from
}
func (s *stays) last() records.Date {
	last := records.Date(0)
	for _, one := range s.all {
		last = max(last, one.until)
	}
	return last
}

// never is the end of an open batch, which has none yet.
const never = records.Date(math.MaxInt32)

// gone is the first day on which the batch no longer stands.
func (c *Counted) gone() records.Date {
	if !c.Ended() {
		return never
	}
	return c.End
}

// inChamberDays are its days in a chamber; a chamber_out after its end is a mistype.
func (c *Counted) inChamberDays() (from, until records.Date) {
	return c.Sown, min(c.ChamberUntil, c.gone())
}

// inHouseDays are its days in the house outside a chamber.
func (c *Counted) inHouseDays() (from, until records.Date) {
	return max(c.Sown, c.ChamberUntil), c.gone()
}

// codesOf lists the codes, in the order of the batches, of those that a thing is true of.
func codesOf(stand []stay, is func(*Counted) bool) []string {
	var some []*Counted
	for _, one := range stand {
		if is(one.Counted) {
			some = append(some, one.Counted)
		}
	}
	slices.SortFunc(some, func(a, b *Counted) int { return cmp.Compare(a.Nth, b.Nth) })
	var codes []string
	for _, c := range some {
		codes = append(codes, c.Code)
	}
	return codes
}
