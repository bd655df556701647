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
	if i := slices.Index(Categories, c); i >= 0 {
		return p.By[i]
	}
	return 0
}

// bear adds money of a category.
func (p *Parts) bear(c Category, amount float64) {
	if i := slices.Index(Categories, c); i >= 0 {
		p.By[i] += amount
	}
}

// first is what was first borne: all columns, in their order, without what potting on
// carried.
func (p Parts) first() float64 {
	total := 0.0
	for _, amount := range p.By {
		total += amount
	}
	return total
}

// Total is the sum of all parts, carried cost included.
func (p Parts) Total() float64 { return p.first() + p.Carried }

// plus adds parts to parts.
func (p Parts) plus(q Parts) Parts {
	for i, amount := range q.By {
		p.By[i] += amount
	}
	p.Carried += q.Carried
	return p
}
