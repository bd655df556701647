package germination

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
)

// On every day asked for, ascending, stand those batches that a look through all of them
// finds, listed in their order.
func TestStaysOfADay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		all := rapid.SliceOf(rapid.Custom(func(t *rapid.T) *Counted {
			b := &batch.Batch{EndHow: rapid.SampledFrom([]batch.EndHow{batch.Open, batch.Written, batch.Assumed}).Draw(t, "how")}
			b.Sowing.Sowing = &records.Sowing{Sown: records.Date(rapid.IntRange(1, 20).Draw(t, "sown"))}
			b.End = b.Sown + records.Date(rapid.IntRange(-3, 20).Draw(t, "stood"))
			b.ChamberUntil = b.Sown + records.Date(rapid.IntRange(-3, 9).Draw(t, "in the chamber"))
			return &Counted{Batch: b}
		})).Draw(t, "batches")
		for i, c := range all {
			c.Nth, c.Code = i, fmt.Sprint(i)
		}
		chamber, house := staysOf(all, (*Counted).inChamberDays), staysOf(all, (*Counted).inHouseDays)
		every := func(*Counted) bool { return true }
		days := rapid.SliceOfDistinct(rapid.IntRange(0, 45), rapid.ID[int]).Draw(t, "days")
		slices.Sort(days)
		for _, day := range days {
			d := records.Date(day)
			var in, out []string
			for _, c := range all {
				switch stands := c.Sown <= d && (c.EndHow == batch.Open || d < c.End); {
				case stands && c.InChamber(d):
					in = append(in, c.Code)
				case stands:
					out = append(out, c.Code)
				}
			}
			if got := codesOf(chamber.on(d), every); !slices.Equal(got, in) {
				t.Fatalf("in the chamber on day %d: %v, want %v", d, got, in)
			}
			if got := codesOf(house.on(d), every); !slices.Equal(got, out) {
				t.Fatalf("in the house on day %d: %v, want %v", d, got, out)
			}
		}
	})
}

// Rule "Lots": the median of the gaps of a crop's other lots is that of all without its own.
func TestGapsOfOtherLots(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		table := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) Lot {
			l := Lot{Label: records.Known(0.9), SeedRate: records.Known(float64(rapid.IntRange(0, 9).Draw(t, "rate")) / 10)}
			l.Label.Known = rapid.IntRange(0, 4).Draw(t, "label") > 0
			return l
		}), 1, 9).Draw(t, "lots")
		gaps := gapsOf(table)[""]
		for i := range table {
			var others []float64
			for j, o := range table {
				if gap := o.Gap(); gap.Known && j != i {
					others = append(others, gap.Value)
				}
			}
			if n, median := table[i].others(gaps); n != len(others) || median != rate.Median(others).Value {
				t.Fatalf("lot %d: %d others, median %v; want %d, %v", i, n, median, len(others), rate.Median(others).Value)
			}
		}
	})
}
