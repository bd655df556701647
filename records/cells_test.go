package records

import (
	"fmt"
	"testing"
)

// Products that are a half in the grower's numbers and lie beside it as float64
// (0.29 x 50 is 14.499999999999998), sums that are whole, and plain cases.
func TestCellsSown(t *testing.T) {
	for _, c := range []struct {
		trays     float64
		trayCells int
		written   Maybe[int]
		want      Maybe[int]
	}{
		{2, 50, Maybe[int]{}, Known(100)},
		{0.29, 50, Maybe[int]{}, Known(15)},
		{0.35, 50, Maybe[int]{}, Known(18)},
		{0.5, 25, Maybe[int]{}, Known(13)},
		{0.29, 72, Maybe[int]{}, Known(21)}, // 20.88
		{0.01, 20, Maybe[int]{}, Known(0)},
		{2, 72, Known(150), Known(150)},
		{2, 0, Known(150), Known(150)}, // as written, whatever the code
		{2, 0, Maybe[int]{}, Maybe[int]{}},
	} {
		if got := CellsSown(Sowing{Trays: c.trays, Cells: c.written}, c.trayCells); got != c.want {
			t.Errorf("%v trays of %d, %v written: got %v, want %v", c.trays, c.trayCells, c.written, got, c.want)
		}
	}
}

// sumOf adds at run time: the compiler would add constants exactly.
func sumOf(parts ...float64) float64 {
	sum := 0.0
	for _, p := range parts {
		sum += p
	}
	return sum
}

// A part of a tray takes a tray; what a sum of parts is off by takes none.
func TestWholeTrays(t *testing.T) {
	for _, c := range []struct {
		trays float64
		want  int
	}{
		{1, 1}, {1.01, 2}, {0.25, 1}, {2.5, 3},
		{sumOf(1.1, 2.2, -0.3), 3}, // 3.0000000000000004
		{sumOf(0.1, 0.2, 0.7), 1},  // 1.0000000000000002
	} {
		if got := WholeTrays(c.trays); got != c.want {
			t.Errorf("%v trays take %d, want %d", c.trays, got, c.want)
		}
	}
}

// Every cell sown is in one tray, none is in two, and the last tray holds what is
// left, be it more or less than a tray has.
func TestCellsOfTray(t *testing.T) {
	for _, c := range []struct {
		trays     float64
		trayCells int
		written   Maybe[int]
		want      []int // of tray 0, 1, 2, ...
	}{
		{2, 50, Maybe[int]{}, []int{0, 50, 50, 0}},
		{2.5, 50, Maybe[int]{}, []int{0, 50, 50, 25, 0}},
		{0.29, 50, Maybe[int]{}, []int{0, 15, 0}},
		{2, 72, Known(150), []int{0, 72, 78, 0}},
		{3, 72, Known(100), []int{0, 72, 28, 0, 0}},
		{sumOf(1.1, 2.2, -0.3), 72, Known(220), []int{0, 72, 72, 76, 0}},
		{2, 0, Known(150), []int{0, 0, 0, 0}}, // of an unknown code
		{1e-10, 50, Known(5), []int{0, 5, 0}}, // of however little a tray there is one
	} {
		for k, want := range c.want {
			if got := CellsOfTray(Sowing{Trays: c.trays, Cells: c.written}, c.trayCells, k); got != want {
				t.Errorf("%v trays of %d, %v written: tray %d holds %d, want %d", c.trays, c.trayCells, c.written, k, got, want)
			}
		}
	}
}

// A batch is done with on the day it was set out, whatever out.csv says.
func TestWrittenEnd(t *testing.T) {
	out, cleared := NewDate(2025, 4, 12), NewDate(2025, 4, 20)
	for _, c := range []struct{ setOut, cleared, want Date }{
		{out, cleared, out}, {out, 0, out}, {0, cleared, cleared}, {0, 0, 0},
	} {
		if got := WrittenEnd(Sowing{SetOut: c.setOut}, c.cleared); got != c.want {
			t.Errorf("set out %v, cleared %v: got %v, want %v", c.setOut, c.cleared, got, c.want)
		}
	}
}

// The checks know the cells of a batch and of each of its trays as the figures do: a
// count of every cell that was sown is taken, one more is refused.
func TestCountsUpToCellsSown(t *testing.T) {
	for _, c := range []struct {
		trays, cells string
		trayCells    int
		tray         string
		most         int
	}{
		{"0.29", "", 50, "", 15}, // 14.5 in the grower's numbers, below it as float64
		{"0.5", "", 25, "", 13},
		{"0.29", "", 72, "", 21},
		{"3", "150", 72, "3", 6}, // the last tray holds what is left
		{"3", "150", 72, "1", 72},
		{"3", "100", 72, "2", 28},
		{"2.5", "", 50, "3", 25},
		{"3", "150", 72, "", 150},
	} {
		for _, emerged := range []int{c.most, c.most + 1} {
			_, problems := load(map[string]string{
				"sowings.csv": fmt.Sprintf("batch,sown,crop,variety,tray,trays,cells\nA,2025-03-03,lettuce,Fenwimple,T,%s,%s\n", c.trays, c.cells),
				"trays.csv":   fmt.Sprintf("tray,kind,cells\nT,air-pruning,%d\n", c.trayCells),
				"counts.csv":  fmt.Sprintf("batch,date,tray,emerged\nA,2025-03-12,%s,%d\n", c.tray, emerged),
			})
			if refused := counted(problems)["error emerged-above-cells"] == 1; refused != (emerged > c.most) || len(problems) > 1 {
				t.Errorf("%s trays of %d, cells %q, tray %q, %d emerged: %v", c.trays, c.trayCells, c.cells, c.tray, emerged, problems)
			}
		}
	}
}

// A part of a tray is a tray: 2.5 trays have a third and no fourth.
func TestTrayNumbersOfPartTrays(t *testing.T) {
	for tray, refused := range map[int]int{3: 0, 4: 1} {
		_, problems := load(map[string]string{
			"sowings.csv": "batch,sown,crop,variety,tray,trays\nA,2025-03-03,lettuce,Fenwimple,A50,2.5\n",
			"counts.csv":  fmt.Sprintf("batch,date,tray,emerged\nA,2025-03-12,%d,20\n", tray),
		})
		if got := counted(problems)["error tray-number"]; got != refused {
			t.Errorf("tray %d: %v", tray, problems)
		}
	}
}

// A batch holds its trays until it is done with: until set_out, else until the
// latest row that clears it, wherever that row stands, and for the turnaround.
func TestTraysInUseUntilWrittenEnd(t *testing.T) {
	const outs = "batch,date,plants,to,last\nA,2025-04-20,10,field,yes\nA,2025-04-10,10,field,yes\n"
	for _, c := range []struct {
		setOut, out, sown string
		warned            int
	}{
		{"2025-04-10", "", "2025-04-12", 1},
		{"2025-04-10", "", "2025-04-13", 0}, // three days of turnaround
		{"", outs, "2025-04-22", 1},
		{"", outs, "2025-04-23", 0},
		{"2025-04-10", outs, "2025-04-13", 0},
		{"", "", "2025-03-04", 0}, // without an end a batch counts on its first day alone
	} {
		files := map[string]string{
			"sowings.csv": "batch,sown,crop,variety,tray,trays,set_out\nA,2025-03-03,lettuce,Fenwimple,A50,2," + c.setOut +
				"\nB," + c.sown + ",lettuce,Fenwimple,A50,2,\n",
			"trays.csv": "tray,kind,cells,count\nA50,air-pruning,50,3\n",
		}
		if c.out != "" {
			files["out.csv"] = c.out
		}
		_, problems := load(files)
		if got := counted(problems)["warning trays-in-use"]; got != c.warned {
			t.Errorf("set out %q, cleared %t, next sown %s: %v", c.setOut, c.out != "", c.sown, problems)
		}
	}
}
