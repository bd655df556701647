package estimate_test

import (
	"fmt"

	"traybook/report/estimate"
)

// Two groups of one crop: their scatter gives rho and df, and these the interval of each. R gives the same figures, from
// the formulas of rules "Scatter" and "Interval of a share" and its qt: 0.6928 to 0.9500, 0.5025 to
// 0.8798.
func ExampleShareInterval() {
	early := []estimate.Count{{X: 115, N: 128}, {X: 98, N: 128}, {X: 230, N: 256}}
	late := []estimate.Count{{X: 100, N: 128}, {X: 180, N: 256}}
	s := estimate.ScatterOf([][]estimate.Count{early, late})
	for _, group := range [][]estimate.Count{early, late} {
		p, ci := estimate.ShareInterval(group, s.Rho(), float64(s.DF), 0.95)
		fmt.Printf("%.0f %%, %.0f to %.0f %%\n", 100*p, 100*ci.Low, 100*ci.High)
	}
	// Output:
	// 87 %, 69 to 95 %
	// 73 %, 50 to 88 %
}

// Ten trays on the bench, then six more before the first are gone.
func ExamplePeak() {
	steps := estimate.Occupancy([]estimate.Span{{Start: 10, End: 40, Amount: 10}, {Start: 30, End: 60, Amount: 6}})
	amount, day, _ := estimate.Peak(steps)
	fmt.Println(amount, "on day", day, "and", estimate.DaysOver(steps, 12, 60), "days over 12")
	// Output: 16 on day 30 and 10 days over 12
}
