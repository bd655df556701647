package germination

import (
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/internal/booktest"
)

// Rule "Counts": numbered rows alone count; of one tray and day the last row of the
// file. Ever came up: 60, then 40 living and 15 lost (55, never less than before), then
// 45 and 10 more: 70.
func TestCounts(t *testing.T) {
	b := booktest.New(t)
	b.Sow("n", "2025-03-01", "orache", "x", "AIR", 2)
	b.Count("n", "2025-03-20", 1)
	b.CountTray("n", "2025-03-08", 1, 50)
	b.CountTray("n", "2025-03-10", 1, 90)
	b.CountTray("n", "2025-03-08", 2, 70)
	b.CountTray("n", "2025-03-08", 2, 80)
	b.Sow("lost", "2025-03-01", "orache", "x", "AIR", 1)
	b.Count("lost", "2025-03-06", 60)
	b.Count("lost", "2025-03-10", 40).Lost = records.Known[int32](15)
	b.Count("lost", "2025-03-14", 45).Lost = records.Known[int32](10)
	f := figures(b, "2025-04-30")
	n, lost := f.of(t, "n"), f.of(t, "lost")
	known(t, "numbered, looked at", n.Looked, 200, 0)
	known(t, "numbered, emerged", n.Emerged, 170, 0)
	known(t, "numbered, emergence", n.Emergence(), 0.85, 1e-15)
	if !n.Unnumbered || lost.Unnumbered || len(n.Rows) != 3 || n.Last != b.Day("2025-03-20") {
		t.Errorf("rows used: %+v, last %v", n.Rows, n.Last)
	}
	known(t, "living", lost.Emerged, 45, 0)
	known(t, "ever up", lost.EverUp, 70, 0)
	if up := new(splitter).series(&lost.Sowing, lost.Rows)[0].everUp; up[1] != 60 {
		t.Errorf("ever up fell to %v", up[1])
	}
}

// Cells looked at are as written, else those sown in the tray or the batch; a row of
// which they are unknown says nothing, and empty cells outrank seedlings written.
func TestCellsLookedAt(t *testing.T) {
	b := booktest.New(t)
	b.Sow("part", "2025-03-01", "orache", "x", "AIR", 1.5)
	b.CountTray("part", "2025-03-20", 1, 80)
	b.CountTray("part", "2025-03-20", 2, 45) // half a tray
	b.CountTray("part", "2025-03-20", 3, 9)  // there is none
	b.Sow("sample", "2025-03-01", "orache", "x", "AIR", 3)
	b.Count("sample", "2025-03-20", 55).Cells = records.Known[int32](60)
	b.Count("sample", "2025-03-25", 0).Cells = records.Known[int32](0) // nothing looked at
	b.Sow("strange", "2025-03-01", "orache", "x", "NOWHERE", 1)
	b.Count("strange", "2025-03-20", 55)
	b.Sow("empty", "2025-03-01", "orache", "x", "AIR", 1)
	b.Count("empty", "2025-03-20", 99).Empty = records.Known[int32](8)
	f := figures(b, "2025-04-30")
	for code, want := range map[string][2]float64{"part": {125, 150}, "sample": {55, 60}, "empty": {92, 100}} {
		known(t, code+" emerged", f.of(t, code).Emerged, want[0], 0)
		known(t, code+" looked at", f.of(t, code).Looked, want[1], 0)
	}
	s := f.of(t, "strange")
	missing(t, "emergence of unknown cells", s.Emergence())
	if !s.Written || s.EntersEmergence() || len(f.Emergence) != 1 || f.Emergence[0].Batches != 3 {
		t.Errorf("strange: %+v; emergence: %+v", s.Counts, f.Emergence)
	}
}

// More seedlings or empty cells than cells, a slip, are cut at the cells; so is what
// ever came up where losses are written twice over.
func TestCountsStayWithinTheCells(t *testing.T) {
	b := booktest.New(t)
	alike(b, "up", "orache", "x", 140)
	b.Sow("empty", "2025-03-01", "orache", "x", "AIR", 1)
	b.Count("empty", "2025-03-20", 0).Empty = records.Known[int32](140)
	b.Sow("lost", "2025-03-01", "orache", "x", "AIR", 1)
	b.Count("lost", "2025-03-20", 70).Lost = records.Known[int32](20)
	b.Count("lost", "2025-03-25", 70).Lost = records.Known[int32](20)
	f := figures(b, "2025-04-30")
	known(t, "140 of 100", f.of(t, "upa").Emerged, 100, 0)
	known(t, "140 empty of 100", f.of(t, "empty").Emerged, 0, 0)
	known(t, "70 living, 40 lost", f.of(t, "lost").EverUp, 100, 0)
}

// Counts stand in the order of the sowings; rows of an unknown batch are in none.
func TestCountStandsInTheOrderOfSowings(t *testing.T) {
	b := booktest.New(t)
	alike(b, "z", "orache", "x", 10, 20)
	b.Count("nobody", "2025-03-20", 4)
	b.Sow("a", "2025-03-01", "orache", "x", "AIR", 1)
	counts := Count(batch.Sowings(b.Book()), b.Book())
	if len(counts) != 3 || counts[0].Written || counts[1].Emerged.Value != 10 || counts[2].Emerged.Value != 20 {
		t.Errorf("got %+v", counts)
	}
	if counts[0].lastUsed().Known() || counts[0].Last.Known() {
		t.Error("a date of no count")
	}
}

// Rule "Counted early": an open batch last counted before twice the crop's median T50 is
// left out; an ended one stays in, marked.
func TestCountedTooEarly(t *testing.T) {
	b := booktest.New(t)
	b.Leave(b.Sow("old", "2025-01-01", "orache", "x", "AIR", 1), "2025-02-10", 80, 0)
	b.Count("old", "2025-01-04", 25)
	b.Count("old", "2025-01-06", 76)
	b.Sow("open7", "2025-03-01", "orache", "x", "AIR", 1)
	b.Count("open7", "2025-03-08", 50)
	b.Sow("open8", "2025-03-01", "orache", "x", "AIR", 1)
	b.Count("open8", "2025-03-09", 50)
	b.Sow("young", "2025-03-10", "mibuna", "x", "AIR", 1)
	b.Count("young", "2025-03-23", 50) // 13 days, no T50 of its crop
	b.Sow("grown", "2025-03-09", "mibuna", "x", "AIR", 1)
	b.Count("grown", "2025-03-23", 50)                                 // 14
	b.Sow("moved", "2025-03-09", "orache", "x", "AIR", 1).From = "old" // not from seed: not left out
	f := figures(b, "2025-03-25")
	// 25 on day 3, 76 on day 5, half of 77 at 3 + 2 x 13.5/51 = 3.53: a count before day 7.06 is early.
	known(t, "T50", f.MedianT50["orache"], 3+27.0/51, 1e-12)
	missing(t, "T50 of mibuna", f.MedianT50["mibuna"])
	for code, early := range map[string]bool{"old": false, "open7": true, "open8": false, "young": true, "grown": false} {
		if c := f.of(t, code); c.Early != early || c.EntersEmergence() == early {
			t.Errorf("%s: early %v", code, !early)
		}
	}
	if !f.of(t, "old").CountedEarly || f.of(t, "young").CountedEarly {
		t.Error("counted before day 7.06 is not marked, or marked without a T50")
	}
	e := booktest.Find(t, "orache", f.Emergence, func(e Emergence) bool { return e.Crop == "orache" })
	if e.Batches != 2 || e.LeftOut != 1 {
		t.Errorf("emergence: %+v", e)
	}
}
