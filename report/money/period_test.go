package money

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// A written period reaches over the turn of the season and falls on whatever
// stood there, while the ledger's line is the season of its date (rules
// "Bills over a period", "Ledger").
func TestPeriodReachesOverSeasons(t *testing.T) {
	book := &records.Book{Costs: []records.Cost{
		booktest.Row(t, "2026-01-10", records.Heat, 40, from(t, "2025-12-22"), until(t, "2026-01-10")),
	}}
	old := newBatch(t, "old", "2025-12-01", "2026-01-01", "S", 1, 100, 50) // 10 days of the period
	young := newBatch(t, "new", "2026-01-01", "2026-02-01", "S", 1, 100, 50)
	m := moneyOf(book, old, young)
	bears(t, "10 days", m, "old", 20)
	bears(t, "10 days", m, "new", 20)
	booktest.Near(t, "ledger", ledgerLine(t, m, 2026, records.Heat).Ledger, 40, 0)
	balanced(t, m)
}

// Bills without dates follow one another: the first from the season's first day,
// those of one date from the same day, none after its own end.
func TestMissingStarts(t *testing.T) {
	rows := []records.Cost{
		booktest.Row(t, "2025-02-10", records.Power, 1),
		booktest.Row(t, "2025-03-10", records.Power, 1, until(t, "2025-03-31")),
		booktest.Row(t, "2025-04-10", records.Power, 1),
		booktest.Row(t, "2025-04-10", records.Power, 1, until(t, "2025-04-20")),
		booktest.Row(t, "2025-04-11", records.Power, 1),
		booktest.Row(t, "2025-05-01", records.Water, 1),
		booktest.Row(t, "2025-05-02", records.Heat, 1, until(t, "2024-12-15")), // for days of the season before
		booktest.Row(t, "2025-05-03", records.Heat, 1),
		booktest.Row(t, "2025-06-10", records.Labour, 1, until(t, "2025-07-31")),
		booktest.Row(t, "2025-06-11", records.Labour, 1, until(t, "2025-06-30")), // within the one before
		booktest.Row(t, "2025-08-10", records.Labour, 1),
	}
	want := []string{"2025-01-01 2025-02-10", "2025-02-11 2025-03-31", "2025-04-01 2025-04-10", "2025-04-01 2025-04-20",
		"2025-04-11 2025-04-11", "2025-01-01 2025-12-31", "2024-12-15 2024-12-15", "2024-12-16 2025-05-03",
		"2025-01-01 2025-07-31", "2025-06-30 2025-06-30", "2025-08-01 2025-08-10"}
	a := accountsOf(&records.Book{Costs: rows})
	priced := a.pricedRows()
	setPeriods(priced, a.all.Settings)
	for i, row := range priced {
		if got := row.start.String() + " " + row.end.String(); got != want[i] {
			t.Errorf("row %d of %s: %s, want %s", i, row.Date, got, want[i])
		}
	}
}

// Tasks of labour have bills of their own: one only care row and one only sowing row
// cover the season each; a batch's own row is none of them.
func TestPeriodsByTask(t *testing.T) {
	a := accountsOf(&records.Book{Costs: []records.Cost{
		booktest.Row(t, "2025-02-10", records.Labour, 1),
		booktest.Row(t, "2025-03-10", records.Labour, 1, task(records.SowingTask)),
		booktest.Row(t, "2025-04-10", records.Labour, 1, forCrop("leek")),
	}})
	priced := a.pricedRows()
	setPeriods(priced, a.all.Settings)
	for i, want := range []string{"2025-12-31", "2025-12-31", ""} {
		if got := priced[i].end.String(); got != want {
			t.Errorf("row %d ends %q, want %q", i, got, want)
		}
	}
}
