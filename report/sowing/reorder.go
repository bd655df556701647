package sowing

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
)

// Hand is what is left of a seed lot: seeds bought less seeds sown, not below 0.
type Hand struct {
	Lot          string
	Bought, Sown Num
	Left         Num
	Guessed      bool // bought by weight, at the trade table's seeds a gram
	Oversown     bool // more were sown than bought: a row is missing or a number wrong
}

// Order is the seed of a variety: in hand by lot, needed by the wishes, to buy. Variety
// is empty for wishes that name none; they draw on what the named ones leave of any
// variety, and have no lots of their own.
type Order struct {
	Crop, Variety string
	Wishes        int
	Needed        Num // seeds; 0 without a wish
	Lots          []Hand
	Left          Num // seeds in hand of all its lots; missing where any lot's is or none is written
	Buy           Num
	NoLot         bool // none is written: counted as no seed in hand
}

// supply is seed that wishes draw on: what is known to be there, and whether there may
// be more.
type supply struct {
	known float64
	more  bool
	lots  int
}

// Reorder sets the seed that the wishes need beside the seed in hand (rule "Wishes"); by
// crop, then variety, every one with a lot or a wish.
func Reorder(wishes []Wish, lots []germination.Lot) []Order {
	crops := map[string]*supply{} // what named wishes leave, by crop
	var named, blank []Order
	for _, o := range ordersOf(wishes, lots) {
		if o.Variety == "" {
			blank = append(blank, o)
			continue
		}
		if crops[o.Crop] == nil {
			crops[o.Crop] = &supply{}
		}
		named = append(named, o.drawing(supplyOf(o.Lots), crops[o.Crop]))
	}
	for _, o := range blank {
		from := supplyOf(o.Lots)
		if of := crops[o.Crop]; of != nil {
			from = supply{from.known + of.known, from.more || of.more, from.lots + of.lots}
		}
		named = append(named, o.drawing(from, &supply{}))
	}
	slices.SortFunc(named, func(a, b Order) int {
		return cmp.Or(cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.Variety, b.Variety))
	})
	return named
}

// seed is a crop's variety.
type seed struct{ crop, variety string }

// ordersOf gathers wishes and lots by crop and variety.
func ordersOf(wishes []Wish, lots []germination.Lot) []Order {
	wished, byWish := batch.GroupBy(wishes, func(w Wish) seed { return seed{w.Crop, w.Variety} })
	bought, byLot := batch.GroupBy(lots, func(l germination.Lot) seed { return seed{l.Crop, l.Variety} })
	var orders []Order
	for _, s := range append(wished, batch.Filter(bought, func(s seed) bool { return byWish[s] == nil })...) {
		o := Order{Crop: s.crop, Variety: s.variety, Wishes: len(byWish[s]), Needed: records.Known(0.0)}
		for _, w := range byWish[s] {
			o.Needed = Num{Value: o.Needed.Value + w.Seeds.Value, Known: o.Needed.Known && w.Seeds.Known}
		}
		for _, l := range byLot[s] {
			o.Lots = append(o.Lots, handOf(l))
		}
		orders = append(orders, o)
	}
	return orders
}

// handOf is what is left of a lot.
func handOf(l germination.Lot) Hand {
	h := Hand{Lot: l.Code, Bought: l.SeedsBought, Sown: l.SeedsSown, Guessed: l.SeedsGuessed}
	if h.Bought.Known && h.Sown.Known {
		h.Left = records.Known(max(h.Bought.Value-h.Sown.Value, 0))
		h.Oversown = h.Sown.Value > h.Bought.Value+noise
	}
	return h
}

// supplyOf is the seed of some lots.
func supplyOf(lots []Hand) supply {
	s := supply{lots: len(lots)}
	for _, h := range lots {
		s.known += h.Left.Value
		s.more = s.more || !h.Left.Known
	}
	return s
}

// drawing takes what is needed of a supply, leaves the rest to another and buys what is
// missing.
func (o Order) drawing(from supply, rest *supply) Order {
	o.NoLot = from.lots == 0
	o.Left = Num{Value: from.known, Known: !o.NoLot && !from.more}
	if !o.Left.Known {
		o.Left.Value = 0
	}
	short := max(o.Needed.Value-from.known, 0)
	if o.Needed.Known && (short == 0 || !from.more) {
		o.Buy = records.Known(short)
	}
	rest.lots += from.lots
	// Of a need that nobody knows there may be nothing left over.
	rest.more = rest.more || from.more || !o.Needed.Known && from.known > 0
	if o.Needed.Known {
		rest.known += max(from.known-o.Needed.Value, 0)
	}
	return o
}
