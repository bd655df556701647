package report

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Inputs end with what the book gave rise to.
func TestComputedInputs(t *testing.T) {
	b := booktest.New(t)
	b.Settings.Inputs = []records.Input{{Name: "farm", Value: "Tiny", Source: "written"}}
	alike(b, 4, 80)
	b.Trays[0].Count = records.Known(12)
	b.Count("a0", "2025-03-21", 60)
	r := reportOf(b, "2025-04-20")
	if r.Inputs[0].Name != "farm" {
		t.Errorf("got %+v", r.Inputs)
	}
	for name, value := range map[string]string{"last_date": "2025-04-20", "seasons": "2025", "batches": "4", "scatter_emergence_df": "3",
		"median_stay_days orache": "56", "trays_owned AIR": "12"} {
		in := booktest.Find(t, name, r.Inputs, func(i records.Input) bool { return i.Name == name })
		if in.Value != value || in.Source != "computed" {
			t.Errorf("got %+v, want %s", in, value)
		}
	}
}
