package chart

import (
	"fmt"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report/germination"
	"traybook/report/rate"
)

// A drawing that no page has a use for is not made, and that is no error.
func TestTooBigIsNotDrawn(t *testing.T) {
	d, err := NewDrawer(DrawerOptions{Bundle: []byte("not run"), Workers: 1})
	if err != nil {
		t.Fatal(err)
	}
	got, err := d.Draw([]Spec{{Name: "tall", Width: 620, Height: maxSide + 1}})
	if err != nil || got[0].SVG != "" || got[0].Missing != MissingTooBig {
		t.Errorf("%+v, %v", got[0], err)
	}
	if s := (Spec{Width: 620, Height: maxSide}); tooBig(s, strings.Repeat("x", maxBytes)) || !tooBig(s, strings.Repeat("x", maxBytes+1)) {
		t.Error("the limits are not where they are said to be")
	}
}

// Of a season with many crops those of most batches have a chart, in order of their names;
// crops sown in few weeks have none.
func TestChartsOfManyCrops(t *testing.T) {
	weeks := map[string][]germination.Week{}
	for i := range MostWeeks + 10 {
		crop := fmt.Sprintf("crop %02d", i)
		for range oftenSown {
			weeks[crop] = append(weeks[crop], germination.Week{Rate: rate.Rate{Batches: i, Share: records.Known(0.9)}})
		}
	}
	weeks["seldom"] = []germination.Week{{Rate: rate.Rate{Batches: 900}}}
	got := mostSown(weeks)
	if len(got) != MostWeeks || got[0] != "crop 10" || got[MostWeeks-1] != fmt.Sprintf("crop %02d", MostWeeks+9) {
		t.Errorf("%d charts, %s to %s", len(got), got[0], got[len(got)-1])
	}
}
