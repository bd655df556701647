package batch

import (
	"fmt"
	"slices"
	"testing"

	"traybook/records"
)

// The rows of a batch come in the order of the file and are those of the log itself; rows
// of a batch that was never sown are in none, whatever stands beside them.
func TestRowsOfKeepsTheOrderOfTheFile(t *testing.T) {
	log := []records.Out{{Batch: "b", Plants: 1}, {Batch: "nobody", Plants: 2}, {Batch: "nobody", Plants: 3}, {Batch: "a", Plants: 4},
		{Batch: "a", Plants: 5}, {Batch: "b", Plants: 6}, {Batch: "zz", Plants: 7}, {Batch: "b", Plants: 8}}
	rows := RowsOf([]string{"a", "aa", "b"}, log, func(o *records.Out) string { return o.Batch })
	for nth, want := range []string{"[4 5]", "[]", "[1 6 8]"} {
		got := []int{}
		for _, row := range rows.Of(nth) {
			got = append(got, row.Plants)
		}
		if fmt.Sprint(got) != want {
			t.Errorf("batch %d: got %v, want %s", nth, got, want)
		}
	}
	if rows.Of(2)[1] != &log[5] {
		t.Error("a row was copied")
	}
	changed := append(rows.Of(0), nil) // past its end
	if changed[2] != nil || rows.Of(2)[0] != &log[0] {
		t.Error("the lists of two batches overlap")
	}
}

// A log without rows has none of any batch, and a book without batches none at all.
func TestRowsOfNothing(t *testing.T) {
	code := func(o *records.Out) string { return o.Batch }
	if rows := RowsOf([]string{"a"}, nil, code); len(rows.Of(0)) != 0 {
		t.Errorf("got %v", rows)
	}
	if rows := RowsOf(nil, []records.Out{{Batch: "a"}}, code); len(rows.rows) != 0 {
		t.Errorf("got %v", rows)
	}
}

// A group may be added to without a change to the next.
func TestGroupsStandApart(t *testing.T) {
	_, groups := GroupBy([]int{31, 12, 33, 11}, func(x int) int { return x / 10 })
	if grown := append(groups[3], 99); len(grown) != 3 || !slices.Equal(groups[1], []int{12, 11}) {
		t.Errorf("got %v, %v", grown, groups)
	}
	if keys, groups := GroupBy(nil, func(x int) int { return x }); len(keys) != 0 || len(groups) != 0 {
		t.Errorf("got %v, %v", keys, groups)
	}
}

// Rows that stand together by batch are parts of the log; else they are copied, each
// batch's in the order of the file.
func TestPartsOf(t *testing.T) {
	code := func(o *records.Out) string { return o.Batch }
	for name, log := range map[string][]records.Out{
		"together": {{Batch: "b", Plants: 1}, {Batch: "b", Plants: 2}, {Batch: "nobody", Plants: 3}, {Batch: "a", Plants: 4}, {Batch: "nobody", Plants: 5}},
		"apart":    {{Batch: "b", Plants: 1}, {Batch: "a", Plants: 4}, {Batch: "nobody", Plants: 3}, {Batch: "b", Plants: 2}},
	} {
		parts := PartsOf([]string{"a", "aa", "b"}, log, code)
		if len(parts) != 3 || len(parts[0]) != 1 || parts[0][0].Plants != 4 || parts[1] != nil || len(parts[2]) != 2 || parts[2][0].Plants != 1 || parts[2][1].Plants != 2 {
			t.Errorf("%s: %+v", name, parts)
		}
		if same := &parts[2][0] == &log[0]; same != (name == "together") {
			t.Errorf("%s: part of the log: %v", name, same)
		}
	}
}
