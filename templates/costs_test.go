package templates

import (
	"slices"
	"strings"
	"testing"
	"time"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/money"
)

// Costs: the season's figure with what all batches bear, what would lower it, the crops
// dearest first, those of few batches below a line, and the ledger with its cautions. A
// row of one crop: 288 plants of 576 cells of Ragamuffin.
func TestCostsPage(t *testing.T) {
	expect(t, textOf(t, buildOf(t, houseReport(t), nil), "2025/costs.html"),
		"What a transplant cost, 2025", "a transplant cost", "in 2024", "Of all the money,", "In all USD", "fell on the season’s 32 batches", "for each cell sown",
		"What a plant cost, USD; grey tick: 2024", "labour", "heat",
		"Fewer minutes a tray would save most", "went into cells that gave no usable plant, most of it with lettuce (USD", "batches) and", "Labour was the largest part with lettuce",
		"was the dearest plant,", "grey tick: 2024", "Too few batches to judge: fewer than 3 batches", "beet",
		"By variety and tray", "lettuce Ragamuffin", "288", "4",
		"Other crops stand in other trays", "matched sowings", "Without a price and a count in trays.csv: OLD and P18.",
		"Season by season", "2024", "2025", "The ledger of 2025, USD.", "Labour", "In all", "not tax advice", "Propane", "carbon monoxide alarm")
}

// A book without a bill for heat is not told of propane.
func TestPropaneWhereHeatIsPaid(t *testing.T) {
	cold := changedHouse(t, func(b *records.Book) {
		b.Costs = batch.Filter(b.Costs, func(c records.Cost) bool { return c.Category != records.Heat })
	})
	if strings.Contains(textOf(t, buildOf(t, cold, nil), "2025/costs.html"), "Propane") {
		t.Error("a caution about propane where nothing was heated")
	}
}

// costOf is a crop of so many batches whose plant cost each, of which failed cells took
// a share.
func costOf(crop string, rests int, each, failed float64) money.Cost {
	c := money.Cost{Group: batch.Group{Season: 2025, Crop: crop}, Batches: rests, Rests: rests, Usable: num(100), PerTransplant: num(each), Total: num(100 * each), FailedShare: num(failed)}
	c.Behind.By[2] = 60 * each // labour
	c.Behind.By[3] = 40 * each // heat
	c.Parts = c.Behind
	return c
}

// The title of the crops for every case.
func TestDearTitle(t *testing.T) {
	guessedCost := costOf("guessed", 5, 9, 0)
	guessedCost.EstimatedShare = num(0.6)
	tests := []struct {
		want  string
		crops []money.Cost
	}{
		{"No crop had batches enough to be called dear or cheap", []money.Cost{costOf("leek", 2, 0.2, 0), guessedCost}},
		{"Only leek had batches enough: USD 0.200 a plant", []money.Cost{costOf("leek", 3, 0.2, 0), costOf("kale", 1, 0.5, 0)}},
		{"Kale was the dearest plant, leek the cheapest", []money.Cost{costOf("leek", 3, 0.2, 0), costOf("beet", 4, 0.3, 0), costOf("kale", 3, 0.5, 0)}},
		{"A plant cost USD 0.200 with every crop of batches enough", []money.Cost{costOf("leek", 3, 0.2, 0), costOf("kale", 3, 0.2001, 0)}},
	}
	for _, tt := range tests {
		r := houseReport(t)
		r.Money.Crops = tt.crops
		if got := bare(pageOf(t, r).dearTitle(2025)); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
}

// What would lower a cost: the largest part, or failed cells where they took as much.
func TestLevers(t *testing.T) {
	p := pageOf(t, houseReport(t))
	open := costOf("open", 3, 0.2, 0)
	open.PerTransplant = money.Num{}
	for _, tt := range []struct {
		cost  money.Cost
		lever money.Category
		title string
	}{
		{costOf("kale", 3, 0.2, 0.59), records.Labour, "Fewer minutes a tray would save most"},
		{costOf("kale", 3, 0.2, 0.60), failedCells, "Fewer failed cells would save most"},
		{open, "", "What would lower it"},
	} {
		if got := p.leverOf(tt.cost); got != tt.lever || string(leverTitle(got)) != tt.title {
			t.Errorf("got %q, %q, want %q, %q", got, leverTitle(got), tt.lever, tt.title)
		}
	}
	if got := leverTitle(records.Water); got != "What would lower it" {
		t.Errorf("water: %q", got)
	}
}

// The sentences name each lever's crops, those of too few batches left out.
func TestLeverWords(t *testing.T) {
	r := houseReport(t)
	r.Money.Crops = []money.Cost{costOf("kale", 3, 0.2, 0.1), costOf("leek", 4, 0.3, 0.2), costOf("beet", 5, 0.1, 0.7), costOf("few", 2, 0.9, 0.9)}
	r.Money.Seasons = []money.Cost{costOf("", 14, 0.25, 0.3)}
	r.Money.Seasons[0].Season = 2025
	part := pageOf(t, r).lowerPart(2025)
	var says []string
	for _, s := range part.Says {
		says = append(says, bare(s))
	}
	expect(t, strings.Join(says, " "), "In 2025 USD 7.50 went into cells that gave no usable plant, most of it with few (USD 81.00, 2 batches), beet (USD 7.00, 5 batches) and leek (USD 6.00, 4 batches).",
		"Labour was the largest part with leek and kale: fewer minutes a tray would save most.", "Failed cells took more of the money than any other part with beet (70 %, 5 batches).")
}

// The months to set out in: the dearest and the cheapest of those with batches enough.
func TestMonthTitle(t *testing.T) {
	month := func(m time.Month, rests int, each float64) money.Month {
		return money.Month{First: records.NewDate(2025, m, 1), Cost: costOf("", rests, each, 0)}
	}
	for want, months := range map[string][]money.Month{
		"By month set out": {month(4, 3, 0.2), month(5, 2, 0.5)},
		"Plants set out in May were the dearest, in April the cheapest": {month(4, 3, 0.2), month(5, 3, 0.5), month(6, 2, 0.9)},
		"A plant cost the same in every month set out":                  {month(4, 3, 0.2), month(5, 3, 0.2)},
	} {
		r := houseReport(t)
		r.Money.Months = months
		if got := bare(pageOf(t, r).monthTitle(2025)); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

// What no batch bears is told with why, the largest sum first, and what was spent in
// years without a page beside it.
func TestUnborne(t *testing.T) {
	r := houseReport(t)
	r.Money.Ledger = []money.LedgerLine{{Season: 2019, Category: records.Equipment, Ledger: 50, Unborne: 50},
		{Season: 2025, Category: records.Heat, Ledger: 100, Borne: 60, Unborne: 40}, {Season: 2025, Category: money.TrayCharge, Ledger: 30, Borne: 10, Unborne: 20}}
	r.Money.Unborne = []money.UnborneSum{{Season: 2025, Category: money.TrayCharge, Why: money.IdleTrays, Amount: 20}, {Season: 2025, Category: records.Heat, Why: money.EmptyHouse, Amount: 40},
		{Season: 2024, Category: records.Mix, Why: money.NoSuchBatch, Amount: 9}}
	part := pageOf(t, r).ledgerPart(2025)
	if got := bare(part.Title); got != "Of USD 130.00 spent, USD 60.00 fell on no batch" {
		t.Errorf("title %q", got)
	}
	var why []string
	for _, w := range part.Why {
		why = append(why, bare(w))
	}
	expect(t, strings.Join(why, " "), "Heat, USD 40.00: the house stood empty", "Trays, USD 20.00: trays in which nothing was sown", "Spent in seasons without a sowing, and borne by none: USD 50.00 in 2019.")
	if len(why) != 3 {
		t.Errorf("%d reasons, want 3: %q", len(why), why)
	}
	r.Money.Ledger = r.Money.Ledger[:0]
	if pageOf(t, r).ledgerPart(2025) != nil {
		t.Error("a ledger of a season without money")
	}
	for _, why := range []money.Why{money.EmptyHouse, money.NoSuchBatch, money.NothingSown, money.IdleTrays} {
		if unborneWhy[why] == "" {
			t.Errorf("%s has no words", why)
		}
	}
}

// Round amounts on an axis have as many decimals as they need.
func TestPlainAmount(t *testing.T) {
	for v, want := range map[float64]string{0: "0", 0.05: "0.05", 0.30000000000000004: "0.3", 500: "500", 1500: "1,500", 0.002: "0.002", 200000: "200,000"} {
		if got := plainAmount(v); got != want {
			t.Errorf("%v: got %q, want %q", v, got, want)
		}
	}
}

// One crop far dearer than the rest goes beyond the scale; somewhat dearer ones stand on
// it.
func TestCostAxis(t *testing.T) {
	var near, far []money.Cost
	for i := range 10 {
		near = append(near, costOf("c", 3, 0.10+0.005*float64(i), 0))
	}
	far = append(append(far, near...), costOf("dear", 3, 1, 0))
	p := pageOf(t, houseReport(t))
	all := func(*money.Cost) bool { return true }
	if a, b := p.costAxis("a", picked(near, all)), p.costAxis("b", picked(far, all)); a.Max < 0.145 || b.Max >= 1 || b.Max < 0.14 {
		t.Errorf("axes to %v and %v", a.Max, b.Max)
	}
}

// What is in no figure of a season's cost stands beside the number, on the front page and
// on the page of costs: a cost without labour is surely too low, without heat perhaps.
func TestWhatIsNotInACost(t *testing.T) {
	without := func(of ...records.Category) *report.Report {
		return changedHouse(t, func(b *records.Book) {
			b.Costs = slices.DeleteFunc(b.Costs, func(c records.Cost) bool { return slices.Contains(of, c.Category) })
		})
	}
	unpriced := changedHouse(t, func(b *records.Book) { b.Settings.Wage = records.Maybe[float64]{} })
	for _, tt := range []struct {
		r    *report.Report
		want string
	}{
		{houseReport(t), ""},
		{without(records.Heat), "No heat is in the cost of 2025: if there was any, a plant cost more than this."},
		{without(records.Labour), "No labour is in the cost of 2025: a plant cost more than this."},
		{without(records.Mix, records.Labour, records.Heat), "No mix, no labour and no heat is in the cost of 2025: a plant cost more than this."},
		{unpriced, "No labour is in the cost of 2025: a plant cost more than this, as hours are written and no wage (book.csv) prices them."},
	} {
		p := pageOf(t, tt.r)
		if got := bare(p.notInCost(2025)); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
	broken := buildOf(t, reportOf(t, example("ottermoss-broken"), report.Options{}), nil)
	for _, page := range []string{"index.html", "2024/costs.html"} {
		expect(t, textOf(t, broken, page), "No mix, no labour and no heat is in the cost of 2024: a plant cost more than this.")
	}
}
