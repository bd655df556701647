package germination

import (
	"testing"

	"traybook/report/internal/booktest"
	"traybook/report/rate"
)

// against sows eight batches a lot of variety P, beside twelve of Q at 70 of 100, and
// returns P's row. An empty lot is none written.
func against(t *testing.T, lots []string, up ...int) Difference {
	t.Helper()
	b := booktest.New(t)
	alike(b, "q", "orache", "Q", 70, 70, 70, 70, 70, 70, 70, 70, 70, 70, 70, 70)
	for i, lot := range lots {
		n := up[i]
		alike(b, "p"+string(rune('a'+i)), "orache", "P", n, n, n, n, n, n, n, n)
		for j := range 8 {
			b.Sowings[len(b.Sowings)-1-j].Lot = lot
		}
	}
	return figures(b, "2025-04-01").verdictOn(t, 2025, "P")
}

// Rule "Varieties": a clear verdict that is gone without one of the variety's own lots
// rests on that lot, and says so. Without lot one at 92, two alone at 70 is no better than
// Q; where both are good, neither carries the verdict.
func TestVerdictByOneLot(t *testing.T) {
	for name, c := range map[string]struct {
		lots  []string
		up    []int
		words string
	}{
		"one good lot of two":         {[]string{"one", "two"}, []int{92, 70}, "higher, by one lot: one"},
		"one bad lot of two":          {[]string{"one", "two"}, []int{70, 45}, "lower, by one lot: two"},
		"both good":                   {[]string{"one", "two"}, []int{92, 92}, "clearly higher"},
		"both bad":                    {[]string{"one", "two"}, []int{45, 45}, "clearly lower"},
		"all of one lot":              {[]string{"one", "one"}, []int{92, 92}, "higher, by one lot: one"},
		"no lot written":              {[]string{"", ""}, []int{92, 92}, "clearly higher"},
		"those without a lot are one": {[]string{"", "two"}, []int{92, 70}, "higher, by one lot: none written"},
		"and try the other":           {[]string{"", "two"}, []int{70, 92}, "higher, by one lot: two"},
		"no difference":               {[]string{"one", "two"}, []int{71, 70}, "no clear difference"},
	} {
		d := against(t, c.lots, c.up...)
		if d.Words() != c.words {
			t.Errorf("%s: %q, want %q: %v to %v", name, d.Words(), c.words, d.Low, d.High)
		}
	}
}

// A variety is tried by its lots where any batch of it has one written, be it in a tray of
// which there was no other: those compared, without a lot, are one.
func TestALotWrittenElsewhere(t *testing.T) {
	b := booktest.New(t)
	alike(b, "q", "orache", "Q", 60, 60, 60, 60)
	alike(b, "p", "orache", "P", 95, 95, 95, 95)
	if d := figures(b, "2025-04-01").verdictOn(t, 2025, "P"); d.Words() != "clearly higher" {
		t.Errorf("no lot written: %q", d.Words())
	}
	b.Sow("z", "2025-03-01", "orache", "P", "WALL", 1).Lot = "L"
	b.Count("z", "2025-03-20", 95)
	if d := figures(b, "2025-04-01").verdictOn(t, 2025, "P"); d.Words() != "higher, by one lot: none written" || d.Batches != 4 {
		t.Errorf("one written: %q of %d", d.Words(), d.Batches)
	}
}

// A lot left out may leave too few batches: that undoes a verdict as well. Of the lots that
// so undo it the one that moves the difference most is named, that of the larger batches
// here; two that move it alike stand by bytes.
func TestTheLotThatMovesMost(t *testing.T) {
	for name, c := range map[string]struct {
		trays [2]float64
		want  string
	}{
		"y the larger": {[2]float64{1, 3}, "y"},
		"x the larger": {[2]float64{3, 1}, "x"},
		"both alike":   {[2]float64{1, 1}, "x"},
	} {
		b := booktest.New(t)
		alike(b, "q", "orache", "Q", 60, 60, 60, 60)
		for i, lot := range []string{"x", "x", "y", "y"} {
			code, trays := string(rune('a'+i)), c.trays[i/2]
			b.Sow(code, "2025-03-01", "orache", "P", "AIR", trays).Lot = lot
			b.Count(code, "2025-03-20", int(trays)*[]int{93, 97}[i/2])
		}
		if d := figures(b, "2025-04-01").verdictOn(t, 2025, "P"); d.Verdict != rate.HigherByLot || d.Lot != c.want {
			t.Errorf("%s: %+v", name, d)
		}
	}
}

// A lot is left out of the round that settled the verdict, and only the variety's own: Q's
// lot of four bad batches is no reason to doubt P.
func TestOnlyOwnLotsAreTried(t *testing.T) {
	b := booktest.New(t)
	alike(b, "q", "orache", "Q", 60, 60, 60, 60)
	alike(b, "p", "orache", "P", 95, 95, 95, 95, 95, 95)
	for i := range b.Sowings {
		switch {
		case i < 4:
			b.Sowings[i].Lot = "bad"
		case i < 7:
			b.Sowings[i].Lot = "one"
		default:
			b.Sowings[i].Lot = "two"
		}
	}
	f := figures(b, "2025-04-01")
	if d := f.verdictOn(t, 2025, "P"); d.Verdict != rate.ClearlyHigher {
		t.Errorf("P: %+v", d)
	}
	if d := f.verdictOn(t, 2025, "Q"); d.Words() != "lower, by one lot: bad" {
		t.Errorf("Q: %+v", d)
	}
}
