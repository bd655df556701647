package templates

import (
	"strings"
	"testing"

	"traybook/records"
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
		{"below its packet", func(l *germination.Lot) { l.Below, l.Label, l.Minimum = yes, num(0.99), num(0.9) }},
		{"below its packet and the legal minimum", func(l *germination.Lot) { l.Below, l.Label, l.Minimum = yes, num(0.99), num(0.91) }},
		{"too few batches to tell", func(l *germination.Lot) { l.Below, l.Label = germination.BelowUnsure, num(0.99) }},
		{"too few batches to tell", func(l *germination.Lot) { l.Below, l.Label, l.Days = germination.BelowUnsure, num(0.99), 1 }},
		{"sown on one day only: cannot tell", func(l *germination.Lot) {
			l.Below, l.Label, l.Days, l.Counted, l.Batches = germination.BelowUnsure, num(0.99), 1, 3, 3
		}},
		{"within what a mix allows", func(l *germination.Lot) { l.Below, l.Label = no, num(0.9) }},
		{"not compared: balls of several seeds", func(l *germination.Lot) { l.Cluster, l.Label = true, num(0.9) }},
		{"no figure on the packet", func(l *germination.Lot) {}},
		{"not sown", func(l *germination.Lot) { l.Sown, l.Counted = nil, 0 }},
		{"not counted", func(l *germination.Lot) { l.Counted = 0 }},
		{"not compared: several seeds a cell", func(l *germination.Lot) { l.Label, l.SeedRate = num(0.9), rate.Num{} }},
		{"too few batches", func(l *germination.Lot) { l.Label = num(0.9) }},
	}
	for _, tt := range tests {
		l := counted
		tt.change(&l)
		if got := bare(lotVerdict(l)); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
}

// The finding for every verdict: lots below, lots in doubt, none, nothing to judge.
func TestLotsTitle(t *testing.T) {
	lot := func(codes ...string) (out []germination.Lot) {
		for _, c := range codes {
			out = append(out, germination.Lot{Lot: records.Lot{Code: c}})
		}
		return out
	}
	tests := []struct {
		want          string
		below, unsure []germination.Lot
		judged        int
	}{
		{"No lot can be set against its packet yet", nil, nil, 0},
		{"A came up below its packet", lot("A"), lot("B"), 4},
		{"A and B came up below their packets", lot("A", "B"), nil, 4},
		{"A, B and 2 more came up below their packets", lot("A", "B", "C", "D"), nil, 4},
		{"No lot is sure to lie below its packet", nil, lot("B"), 4},
		{"The one lot that can be judged came up within what a mix allows", nil, nil, 1},
		{"Both lots that can be judged came up within what a mix allows", nil, nil, 2},
		{"All 3 lots that can be judged came up within what a mix allows", nil, nil, 3},
	}
	for _, tt := range tests {
		if got := bare(lotsTitle(tt.below, tt.unsure, tt.judged)); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
}

// Lots: the flagged ones as sentences, the trail, batches without a lot, and what the
// marks say together. Of RAG-25 346 seedlings were counted, and 3 lost again, of 576
// seeds sown and 500 bought: 349 of 576 are 61 in 100.
func TestLotsPage(t *testing.T) {
	b := buildOf(t, houseReport(t), nil)
	expect(t, textOf(t, b, "2025/lots.html"), "Seed lots, 2025", "RAG-25 came up below its packet", "of 3 lots came up below their packets",
		"RAG-25, lettuce Ragamuffin: of 100 seeds 61 came up (50 to 70), 4 batches. Its packet says 93, of which a mix takes up to", "It lies below the legal minimum of 80 % too",
		"5 lots sown in 2025; 3 have a packet’s figure and counts enough.", "Emergence in a mix is not a laboratory test.",
		"RAG-25", "below its packet and the legal minimum", "FEN-25", "within what a mix allows", "not compared: several seeds a cell", "not compared: balls of several seeds", "7 CFR 201.31",
		"2 batches of 2025 from seed without a lot: LP25-1 and LT25-1.",
		"of about 705", "Tuppenny Seed Loft, T25007, bought 2025-01-06", "264 more sown than bought", "76 more sown than bought", "Bought and not sown yet", "400 of 400",
		"five years", "7 CFR 205.103",
		"Marked as treated: EMB-25.", "Marked as both organic and treated", "RAG-25", "Of 1 lot it is not written whether it is treated.", "Treated seed carries a pesticide.")
	if strings.Contains(textOf(t, b, "2024/lots.html"), "SPA-25") {
		t.Error("a lot bought in 2025 and never sown stands on the page of 2024")
	}
}

// Each lot has an anchor of its own, also where two codes differ in signs alone or hold
// no letter that an address may; a code that lots.csv lacks has no link.
func TestLotAnchors(t *testing.T) {
	var lots []germination.Lot
	for _, code := range []string{"A-1", "A/1", "тест", "проба"} {
		lots = append(lots, germination.Lot{Lot: records.Lot{Code: code}})
	}
	at := lotAnchors(lots)
	seen := map[string]bool{}
	for code, id := range at {
		if seen[id] {
			t.Errorf("%s shares the anchor %s", code, id)
		}
		seen[id] = true
	}
	p := pageOf(t, houseReport(t))
	lot := func(code string) string {
		var w pen
		p.writeLot(&w, 2025, code)
		return string(w.out)
	}
	if got := lot("RAG-25"); !strings.Contains(got, `href="2025/lots.html#lot-rag-25"`) {
		t.Errorf("link %q", got)
	}
	if got := lot("gone"); strings.Contains(got, "href") {
		t.Errorf("a lot that is none has the link %q", got)
	}
}
