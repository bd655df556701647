package report_test

import (
	"math"
	"os"
	"testing"

	"traybook/records"
	"traybook/report"
)

// The trade's worked checks C15, C16 and C17 (own arithmetic) as books, from the
// logs to the figure: 0.0995 a plant used; 12 uses and, at 3 a year, 4.0 years;
// 12.63 uses.
func TestWorkedChecksAsBooks(t *testing.T) {
	perPlant := func(r *report.Report) report.Num { return r.Money.Cost[0].PerTransplant }
	uses := func(r *report.Report) report.Num { return r.Trays.Payback[0].PaybackUses }
	for _, tt := range []struct {
		book   string
		figure func(*report.Report) report.Num
		want   float64
		within float64
	}{
		{"c15", perPlant, 0.0995, 0.0005},
		{"c16", uses, 12, 1e-9},
		{"c16", func(r *report.Report) report.Num { return r.Trays.Payback[0].PaybackSeasons }, 4, 1e-9},
		{"c17", uses, 12 / 0.95, 1e-9},
	} {
		book, problems := records.Load(os.DirFS("../examples/checks/" + tt.book))
		r, err := report.New(book, problems, report.Options{})
		if err != nil || len(problems) > 0 {
			t.Fatal(tt.book, err, problems)
		}
		if got := tt.figure(r); !got.Known || math.Abs(got.Value-tt.want) > tt.within {
			t.Errorf("%s: got %v, want %v", tt.book, got, tt.want)
		}
	}
}
