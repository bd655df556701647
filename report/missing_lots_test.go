package report

import (
	"fmt"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// What lots lack is told of those that it matters to: an unpriced one that was sown, the
// seeds of a priced one, the packet of one that was counted and can be compared.
func TestGapsOfLots(t *testing.T) {
	b := booktest.New(t)
	lot := func(code, crop string, with func(*records.Lot)) {
		l := b.Lot(code, crop, 0.9)
		l.Price, l.Seeds = records.Known(5.0), records.Known(1000.0)
		with(l)
	}
	lot("whole", "orache", func(*records.Lot) {})
	lot("unpriced", "orache", func(l *records.Lot) { l.Price = records.Maybe[float64]{} })
	lot("unpriced, unsown", "orache", func(l *records.Lot) { l.Price = records.Maybe[float64]{} })
	lot("uncounted seeds", "orache", func(l *records.Lot) { l.Seeds = records.Maybe[float64]{} })
	lot("no packet", "orache", func(l *records.Lot) { l.GermLabel = records.Maybe[float64]{} })
	lot("no packet, unsown", "orache", func(l *records.Lot) { l.GermLabel = records.Maybe[float64]{} })
	lot("no packet, a ball", "beet", func(l *records.Lot) { l.GermLabel = records.Maybe[float64]{} })
	for _, code := range []string{"whole", "unpriced", "uncounted seeds", "no packet", "no packet, a ball"} {
		crop := map[bool]string{true: "beet", false: "orache"}[strings.Contains(code, "ball")]
		b.Sow(code, "2025-03-01", crop, "x", "AIR", 1).Lot = code
		b.Count(code, "2025-03-20", 90)
	}
	b.Sow("again", "2026-03-01", "orache", "x", "AIR", 1).Lot = "no packet"
	var got []string
	for _, m := range lotsMissing(b.Book(), reportOf(b, over).Batches, reportOf(b, over).Germination) {
		got = append(got, fmt.Sprint(m.What, " ", m.Season, " ", m.Batches))
	}
	want := "price of a seed lot: unpriced 2025 [unpriced]; seeds in a lot: uncounted seeds 2025 [uncounted seeds]; " +
		"germination on the packet: no packet 0 [again no packet]"
	if strings.Join(got, "; ") != want {
		t.Errorf("%s", strings.Join(got, ";\n"))
	}
}

// Of a book without a sowing nothing is told to be missing, be there lots.
func TestNothingSownNothingMissing(t *testing.T) {
	b := booktest.New(t)
	b.Trays = nil
	b.Lot("L", "orache", 0.9)
	if m := reportOf(b).Missing; len(m) != 0 {
		t.Errorf("of a book without a sowing: %+v", m)
	}
}
