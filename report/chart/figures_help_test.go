package chart

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
	"traybook/report/internal/booktest"
)

// book is a record book with words for what charts show.
type book struct{ *booktest.Book }

func newBook(t testing.TB) book {
	b := book{booktest.New(t)}
	b.Settings.Currency, b.Settings.ScoreWords = "EUR", [5]string{"waste", "poor", "fit", "good", "best"}
	return b
}

// sow adds a batch of one tray of 100 cells on a day and names it for its place.
func (b book) sow(sown, crop, variety, tray string) *records.Sowing {
	b.Helper()
	return b.Sow(fmt.Sprintf("b%03d", len(b.Sowings)), sown, crop, variety, tray, 1)
}

// up sows n batches and counts them a month later, emerged of 100 cells each.
func (b book) up(n int, sown, crop, variety, tray string, emerged int) {
	b.Helper()
	for range n {
		code := b.sow(sown, crop, variety, tray).Code
		c := b.Count(code, (b.Day(sown) + 30).String(), emerged)
		c.Cells = records.Known[int32](100)
	}
}

// lost writes cells lost at a count of the batch sown last.
func (b book) lost(date string, cells int, cause string) {
	b.Helper()
	c := b.Count(b.Sowings[len(b.Sowings)-1].Code, date, 60)
	c.Lost = records.Known(int32(cells))
	b.Say(c, records.Said{Cause: cause})
}

// scored looks at the batch sown last, plant by plant.
func (b book) scored(date string, plants ...int) {
	b.Helper()
	s := records.Score{Batch: b.Sowings[len(b.Sowings)-1].Code, Date: b.Day(date)}
	for i, n := range plants {
		s.S[i] = records.Known(int32(n))
	}
	b.Scores = append(b.Scores, s)
}

// late sows n batches planned for 10 April and looks at them some days later, 100
// plants each.
func (b book) late(n int, crop, tray string, fit map[int]int) {
	b.Helper()
	for range n {
		s := b.sow("2025-03-01", crop, "", tray)
		s.Planned = b.Day("2025-04-10")
		for days, usable := range fit {
			b.Look(s.Code, (b.Day("2025-04-10") + records.Date(days)).String(), 100, usable)
		}
	}
}

// report computes the figures, as of a day where one is given.
func (b book) report(today ...string) *report.Report {
	b.Helper()
	var o report.Options
	for _, d := range today {
		o.Today = b.Day(d)
	}
	r, err := report.New(b.Book.Book(), nil, o)
	if err != nil {
		b.Fatal(err)
	}
	return r
}

// namesOf returns the names of a report's charts but those of rooms, which all books have.
func namesOf(r *report.Report) (names []string) {
	for _, f := range figures(r) {
		if !strings.HasPrefix(f.name, "room-") {
			names = append(names, f.name)
		}
	}
	return names
}

// only makes the one chart of a list.
func only(t *testing.T, charts []figure) Spec {
	t.Helper()
	if len(charts) != 1 {
		t.Fatalf("%d charts, want 1", len(charts))
	}
	s := charts[0].spec()
	if _, err := s.check(); err != nil {
		t.Fatal(err)
	}
	return s
}

// rowsOf returns the names and the notes of a chart of rows, broken lines joined.
func rowsOf(s Spec) (names, notes []string) {
	column := func(i int) []string {
		var out []string
		for _, n := range s.Option["yAxis"].([]any)[i].(map[string]any)["data"].([]string) {
			out = append(out, strings.ReplaceAll(n, "\n", " "))
		}
		return out
	}
	return column(0), column(1)
}

// same fails unless the rows of a chart are those wanted, in order.
func same(t *testing.T, what string, got []string, want ...string) {
	t.Helper()
	if !slices.Equal(got, want) {
		t.Errorf("%s: %q, want %q", what, got, want)
	}
}

// ends fails unless a chart's description ends as wanted.
func ends(t *testing.T, s Spec, want string) {
	t.Helper()
	if !strings.HasSuffix(s.Label, want) {
		t.Errorf("label %q, want its end %q", s.Label, want)
	}
}

// items returns the items of a series of own shapes, by its name.
func items(t *testing.T, s Spec, name string) [][]any {
	t.Helper()
	var out [][]any
	for _, each := range s.Option["series"].([]any) {
		if one := each.(map[string]any); one["name"] == name {
			for _, item := range one["data"].([]any) {
				v, _ := item.(map[string]any)["value"].([]any)
				out = append(out, v)
			}
			return out
		}
	}
	t.Fatalf("no series %q", name)
	return nil
}

// legend returns the names that a chart's legend has.
func legend(s Spec) []string {
	o, _ := s.Option["legend"].(map[string]any)
	var out []string
	for _, k := range asList(o["data"]) {
		if name := k.(map[string]any)["name"].(string); name != "\n" { // a break between two lines of the legend
			out = append(out, name)
		}
	}
	return out
}
