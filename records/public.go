package records

import "slices"

// Shown is what a public edition of a book shows although most farms keep it to
// themselves: money, and where seed came from.
type Shown struct{ Costs, Lots bool }

// privateSettings are the settings that tell of money.
var privateSettings = []string{"wage", "transplant_value", "plug_price", "discount_rate"}

// Public returns the book as it may be published: without raw notes and, unless shown
// says so, without wages, bills, prices and money received, and without suppliers, their
// lot numbers and what seed cost. What is not in it can stand on no page and in no
// figure made of it. The book itself is left as it is.
func (b *Book) Public(show Shown) *Book {
	out := *b
	out.Sowings = each(b.Sowings, func(s *Sowing) { s.Note = "" })
	out.Outs = each(b.Outs, func(o *Out) {
		o.Note = ""
		if !show.Costs {
			o.Money = Maybe[float64]{}
		}
	})
	if b.told != nil {
		out.told = &told{codes: b.codes, said: each(b.said, func(s *Said) { s.Note = "" })}
	}
	out.Scores = each(b.Scores, func(s *Score) { s.Note = "" })
	out.House = each(b.House, func(h *HouseReading) { h.Note = "" })
	out.Wishes = each(b.Wishes, func(w *Wish) { w.Note = "" })
	out.Changes = each(b.Changes, func(c *Change) { c.Note = "" })
	out.Costs = each(b.Costs, func(c *Cost) { c.Note = "" })
	out.Trays = each(b.Trays, func(p *Purchase) {
		p.Note = ""
		if !show.Costs {
			p.Price = Maybe[float64]{}
		}
	})
	out.Lots = each(b.Lots, func(l *Lot) {
		l.Note = ""
		if !show.Lots {
			l.Supplier, l.LotNumber = "", ""
		}
		if !show.Lots || !show.Costs {
			l.Price = Maybe[float64]{}
		}
	})
	if !show.Costs {
		out.Costs, out.Settings = nil, b.Settings.withoutMoney()
	}
	return &out
}

// each returns a copy of a log with every row changed.
func each[T any](rows []T, change func(*T)) []T {
	out := slices.Clone(rows)
	for i := range out {
		change(&out[i])
	}
	return out
}

// withoutMoney returns the settings without what they tell of money.
func (s Settings) withoutMoney() Settings {
	s.Wage, s.TransplantValue, s.PlugPrice = Maybe[float64]{}, Maybe[float64]{}, Maybe[float64]{}
	s.Inputs = slices.DeleteFunc(slices.Clone(s.Inputs), func(in Input) bool { return slices.Contains(privateSettings, in.Name) })
	return s
}
