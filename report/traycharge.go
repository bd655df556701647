package report

import (
	"math"

	"traybook/records"
	"traybook/report/estimate"
)

// trayCharges spreads what the trays cost a season over the batches sown in them,
// for the seasons from the first to the last sowing's (rules 24, 46, 59). Trays
// that nothing was sown in stay unborne.
func (p *accounts) trayCharges() {
	seasons := p.r.Seasons
	if len(seasons) == 0 || !p.chargesTrays() {
		return
	}
	p.has[TrayCharge] = true
	for season := range p.r.seasonsThrough() {
		p.enter(season, TrayCharge, 0, true)
	}
	for _, code := range sortedKeys(p.codes) {
		p.trayChargesOf(p.codes[code], seasons[0], seasons[len(seasons)-1])
	}
}

// chargesTrays reports whether any purchase has a price and a count.
func (p *accounts) chargesTrays() bool {
	for _, row := range p.r.Book.Trays {
		if row.Price.Known && row.Count.Or(0) > 0 {
			return true
		}
	}
	return false
}

func (p *accounts) trayChargesOf(c *trayCode, first, last int) {
	left := newRemaining(c, p.r.Book.Settings)
	for season := first; season <= last; season++ {
		trays := left.after(season)
		charge := 0.0
		for i, row := range c.rows {
			charge += row.Price.Or(0) * float64(trays[i]) * p.partOf(c, row, season)
		}
		if charge == 0 {
			continue
		}
		row := &costRow{Cost: records.Cost{Category: TrayCharge}}
		row.amount = charge
		p.enter(season, TrayCharge, charge, p.split(row, p.sownIn(c.code, season), byTrays))
	}
}

// partOf is the part of a purchase's price that a season bears: capital recovery
// for the whole seasons of its life, then for the part of a season left; each
// season where no date is written (rules 24, 46). 0 where the life is unknown.
func (p *accounts) partOf(c *trayCode, row records.Purchase, season int) float64 {
	if !c.life.Seasons.Known {
		return 0
	}
	n := c.life.Seasons.Value
	yearly := estimate.CapitalRecovery(p.r.Book.Settings.DiscountRate, n)
	if !row.Bought.Known() {
		return yearly
	}
	age := float64(season - p.r.Book.Settings.Season(row.Bought))
	switch whole := math.Floor(n); {
	case age < 0 || age > whole:
		return 0
	case age == whole:
		return yearly * (n - whole)
	}
	return yearly
}

func (p *accounts) sownIn(code string, season int) []*Batch {
	var sown []*Batch
	for _, b := range p.bySeason[season] {
		if b.Tray == code {
			sown = append(sown, b)
		}
	}
	return sown
}

// remaining is what is remaining of each purchase of a code as seasons pass.
type remaining struct {
	code     *trayCode
	settings records.Settings
	trays    []int
	next     int // first row not yet looked at for trays broken or sold
}

func newRemaining(c *trayCode, s records.Settings) *remaining {
	l := &remaining{code: c, settings: s, trays: make([]int, len(c.rows))}
	for i, row := range c.rows {
		l.trays[i] = max(row.Count.Or(0), 0)
	}
	return l
}

// after returns what is left in a season: rows with a negative count take from
// the oldest purchase, from the season of their date on (rules 24, 46); more than
// was bought by then takes from what was bought later, as it does from the trays
// owned (rule 5). Seasons are asked for in ascending order.
func (l *remaining) after(season int) []int {
	for ; l.next < len(l.code.rows); l.next++ {
		row := l.code.rows[l.next]
		if row.Bought.Known() && l.settings.Season(row.Bought) > season {
			break
		}
		l.take(row)
	}
	return l.trays
}

func (l *remaining) take(gone records.Purchase) {
	broken := -min(gone.Count.Or(0), 0)
	for i := range l.trays {
		taken := min(broken, l.trays[i])
		l.trays[i] -= taken
		broken -= taken
	}
}
