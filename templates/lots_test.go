package templates

import (
	"testing"

	"traybook/report/germination"
	"traybook/report/rate"
)

// Lots: the verdict of each in words.
func TestLotVerdicts(t *testing.T) {
	yes, no := germination.BelowYes, germination.BelowNo
	counted := germination.Lot{Sown: []string{"B"}, Counted: 1, Rate: rateOf(80, 100, 1, 0.7, 0.9), SeedRate: num(0.8), SeedLow: num(0.7), SeedHigh: num(0.9)}
	tests := []struct {
		want   string
		change func(*germination.Lot)
	}{
		{"below its packet", func(l *germination.Lot) { l.Below, l.Label = yes, num(0.99) }},
		{"lower, too few batches to tell", func(l *germination.Lot) { l.Below, l.Label = germination.BelowUnsure, num(0.99) }},
		{"within what a mix allows", func(l *germination.Lot) { l.Below, l.Label = no, num(0.9) }},
		{"not compared: a sown seed is a ball of several", func(l *germination.Lot) { l.Cluster, l.Label = true, num(0.9) }},
		{"no figure on the packet", func(l *germination.Lot) {}},
		{"not sown", func(l *germination.Lot) { l.Sown, l.Counted = nil, 0 }},
		{"not counted", func(l *germination.Lot) { l.Counted = 0 }},
		{"different seeds a cell: no rate of one seed", func(l *germination.Lot) { l.Label, l.SeedRate = num(0.9), rate.Num{} }},
		{"too few batches", func(l *germination.Lot) { l.Label = num(0.9) }},
	}
	for _, tt := range tests {
		l := counted
		tt.change(&l)
		if got := string(lotVerdict(l).Value); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
}

// Lots: the flagged ones as sentences, the trail, batches without a lot, and what
// the marks say together. Of RAG-25 346 seedlings were counted, and 3 lost again, of
// 576 seeds sown and 500 bought.
func TestLotsPage(t *testing.T) {
	expect(t, textOf(t, buildOf(t, houseReport(t), nil), "lots.html"),
		"5 lots sown in season 2025. Of 4 with a packet’s figure and counts enough, 2 came up worse than a mix allows.",
		"RAG-25, lettuce Ragamuffin: 61 of 100 seeds came up (51 to 70), 4 batches. The packet says 93, and up to 5 points lower is usual in a mix",
		"It lies below the legal minimum of 80 % too", "GRE-25, bunching onion Greenquill: 58 of 100 seeds came up",
		"Emergence in a mix is not a laboratory test.", "below its packet", "not compared: a sown seed is a ball of several", "7 CFR 201.31", "not sown",
		"five years", "7 CFR 205.103", "2 batches from seed without a lot: LP25-1 and LT25-1.",
		"of about 705", "Tuppenny Seed Loft", "1,420", "of 2,500", "264 more sown than bought", "76 more sown than bought",
		"Marked as treated: EMB-25.", "Marked as both organic and treated", "RAG-25", "Of 2 lots it is not written whether they are treated.", "Treated seed carries a pesticide.")
}
