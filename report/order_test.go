package report

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"traybook/records"
	"traybook/report/internal/booktest"
	"traybook/report/money"
)

// balanced checks that the money balances to the cent (rule "Ledger"): borne +
// unborne = ledger line by line, and borne over the book = the cost table, category
// by category; what potting on carries adds up to nothing.
func balanced(t testing.TB, r *Report) {
	t.Helper()
	borne := map[money.Category]float64{}
	for _, l := range r.Money.Ledger {
		booktest.Near(t, string(l.Category)+" balance", l.Borne+l.Unborne, l.Ledger, 0.005)
		borne[l.Category] += l.Borne
	}
	carried := 0.0
	for _, category := range money.Categories {
		table := 0.0
		for _, c := range r.Money.Cost {
			table += c.Parts.Of(category)
		}
		booktest.Near(t, string(category)+" in the cost table", table, borne[category], 0.005)
	}
	for _, c := range r.Money.Cost {
		carried += c.Parts.Carried
	}
	booktest.Near(t, "carried over the book", carried, 0, 0.005)
}

// anyCosts draws bills of every category, with and without a period, a task or a
// tray, credits among them.
func anyCosts(t *rapid.T) []records.Cost {
	var costs []records.Cost
	for range rapid.IntRange(1, 15).Draw(t, "costs") {
		c := records.Cost{Date: records.NewDate(2024, 10, 1) + records.Date(rapid.IntRange(0, 200).Draw(t, "date")),
			Category: rapid.SampledFrom(records.Categories).Draw(t, "category"), Amount: records.Known(rapid.Float64Range(-10, 100).Draw(t, "amount"))}
		if rapid.Bool().Draw(t, "until") {
			c.Until = c.Date + records.Date(rapid.IntRange(-40, 40).Draw(t, "days"))
		}
		if c.Category == records.Labour {
			c.Task = rapid.SampledFrom([]records.Task{"", records.SowingTask, records.CareTask, records.OutTask}).Draw(t, "task")
		}
		c.Tray = rapid.SampledFrom([]string{"", "", "", "HEAVY"}).Draw(t, "tray")
		costs = append(costs, c)
	}
	return costs
}

// anySowings draws a few batches of two codes over two seasons, all of them cleared.
func anySowings(t *rapid.T, b *booktest.Book) {
	for i := range rapid.IntRange(0, 12).Draw(t, "batches") {
		sown := records.NewDate(2024, 11, 1) + records.Date(rapid.IntRange(0, 90).Draw(t, "sown"))
		tray := rapid.SampledFrom([]string{"HEAVY", "THIN"}).Draw(t, "tray")
		s := b.Sow(fmt.Sprint("b", i), sown.String(), "leek", "Arvo", tray, float64(rapid.IntRange(1, 12).Draw(t, "quarters"))/4)
		if rapid.Bool().Draw(t, "chamber") {
			s.ChamberOut = sown + records.Date(rapid.IntRange(0, 5).Draw(t, "in"))
		}
		end := sown + records.Date(rapid.IntRange(0, 40).Draw(t, "days"))
		b.Leave(s, end.String(), rapid.IntRange(0, 20).Draw(t, "usable"), 0)
	}
}

// The order of rows, bills too, changes no digit of money, trays and room, and the
// money balances.
func TestOrderOfRowsChangesNothing(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		b := pair(t)
		anySowings(rt, b)
		b.Costs = anyCosts(rt)
		show := func() string {
			r := reportOf(b)
			balanced(t, r)
			return fmt.Sprintf("%+v %+v %+v %+v %+v", r.Money.Cost, r.Money.Ledger, r.Trays.Matches, r.Trays.NextTray, r.Room.Load)
		}
		before := show()
		slices.Reverse(b.Costs)
		slices.Reverse(b.Sowings)
		if after := show(); after != before {
			rt.Fatalf("before %s\nafter %s", before, after)
		}
	})
}
