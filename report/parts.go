package report

import "traybook/records"

// partsOf finds a category's place in Parts.
var partsOf = map[records.Category]func(*Parts) *float64{
	records.Seed:      func(p *Parts) *float64 { return &p.Seed },
	records.Mix:       func(p *Parts) *float64 { return &p.Mix },
	records.Labour:    func(p *Parts) *float64 { return &p.Labour },
	records.Heat:      func(p *Parts) *float64 { return &p.Heat },
	records.Power:     func(p *Parts) *float64 { return &p.Power },
	records.Water:     func(p *Parts) *float64 { return &p.Water },
	records.Feed:      func(p *Parts) *float64 { return &p.Feed },
	records.Equipment: func(p *Parts) *float64 { return &p.Equipment },
	records.Other:     func(p *Parts) *float64 { return &p.Other },
	TrayCharge:        func(p *Parts) *float64 { return &p.TrayCharge },
}

// bear adds money of a category.
func (p *Parts) bear(c records.Category, amount float64) {
	if part := partsOf[c]; part != nil {
		*part(p) += amount
	}
}

// first is what was first borne: all columns without what potting on carried.
func (p Parts) first() float64 {
	return p.Seed + p.Mix + p.Labour + p.Heat + p.Power + p.Water + p.Feed + p.Equipment + p.Other + p.TrayCharge
}

// Total is the sum of all parts, carried cost included (rule 52).
func (p Parts) Total() float64 { return p.first() + p.Carried }

// plus adds parts to parts.
func (p Parts) plus(q Parts) Parts {
	return Parts{
		Seed: p.Seed + q.Seed, Mix: p.Mix + q.Mix, Labour: p.Labour + q.Labour, Heat: p.Heat + q.Heat,
		Power: p.Power + q.Power, Water: p.Water + q.Water, Feed: p.Feed + q.Feed, Equipment: p.Equipment + q.Equipment,
		Other: p.Other + q.Other, TrayCharge: p.TrayCharge + q.TrayCharge, Carried: p.Carried + q.Carried,
	}
}
