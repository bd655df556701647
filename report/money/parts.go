package money

import "slices"

// Parts is money by category, in the order of Categories, and the cost carried from
// batch to batch beside it: taken over above 0, handed on below.
type Parts struct {
	By      [10]float64
	Carried float64
}

// Of returns the money of a category; 0 for one that is none.
func (p Parts) Of(c Category) float64 {
	if i := placeOf(c); i >= 0 {
		return p.By[i]
	}
	return 0
}

// placeOf is the place of a category in Categories, below 0 of one that is none.
func placeOf(c Category) int { return slices.Index(Categories, c) }

// Total is the sum of all columns, in their order, and of the carried cost: exactly 0
// where all was handed on.
func (p Parts) Total() float64 {
	var all tally
	for _, amount := range p.By {
		all.add(amount)
	}
	all.add(p.Carried)
	return all.value()
}

// partsTally is parts while they are added up.
type partsTally struct {
	by      [10]tally
	carried tally
}

// bear adds money of the category at a place; below 0 is none.
func (t *partsTally) bear(place int, amount tally) {
	if place >= 0 {
		t.by[place].join(amount, 1)
	}
}

// add adds parts to parts. Most batches bear nothing of some categories.
func (t *partsTally) add(p *Parts) {
	for i, amount := range p.By {
		if amount != 0 {
			t.by[i].add(amount)
		}
	}
	if p.Carried != 0 {
		t.carried.add(p.Carried)
	}
}

// parts is what was added up.
func (t *partsTally) parts() Parts {
	p := Parts{Carried: t.carried.value()}
	for i, amount := range t.by {
		p.By[i] = amount.value()
	}
	return p
}
