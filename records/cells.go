package records

import "math"

// nearly is what products and sums of parts of trays may miss a whole number by:
// no tenth of a tray has an exact float64.
const nearly = 1e-9

// RoundHalfUp rounds to a whole number, a half up. 0.35 x 50 is 17.5 and gives 18,
// though its float64 lies a hair below.
func RoundHalfUp(x float64) float64 { return math.Floor(x + 0.5 + nearly) }

// WholeTrays is how many trays a number of trays takes, parts rounded up.
func WholeTrays(trays float64) int { return int(math.Ceil(trays - nearly)) }

// CellsSown returns the cells sown of a batch whose tray code has trayCells cells,
// 0 where the code is unknown: as written, else trays x cells of the tray
// (rule "Cells sown").
func CellsSown(s Sowing, trayCells int) Maybe[int] {
	switch {
	case s.Cells.Known:
		return s.Cells
	case trayCells > 0:
		return Known(int(RoundHalfUp(s.Trays * float64(trayCells))))
	}
	return Maybe[int]{}
}

// CellsOfTray returns what tray k of a batch holds, counted from 1, 0 where that is
// unknown: the tray's cells as long as there are any left, the last one all that is
// left (rule "Cells sown").
func CellsOfTray(s Sowing, trayCells, k int) int {
	sown := CellsSown(s, trayCells)
	last := max(WholeTrays(s.Trays), 1)
	if trayCells <= 0 || !sown.Known || k < 1 || k > last {
		return 0
	}
	rest := sown.Value - (k-1)*trayCells
	if k < last {
		rest = min(rest, trayCells)
	}
	return max(rest, 0)
}

// WrittenEnd returns the day on which a batch was done with, where one is written:
// set out, else cleared, the date of its row of out.csv with last = yes
// (rule "End of a batch").
func WrittenEnd(s Sowing, cleared Date) Date {
	if s.SetOut.Known() {
		return s.SetOut
	}
	return cleared
}
