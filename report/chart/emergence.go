package chart

import (
	"cmp"
	"fmt"
	"slices"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/germination"
)

// emergence shows the groups sown often enough to be judged, the lowest first.
func emergence(r *report.Report, year int) []Spec {
	rows := batch.Filter(r.Germination.Emergence, func(e germination.Emergence) bool {
		return e.Season == year && !e.Few() && e.Share.Known
	})
	if len(rows) == 0 {
		return nil
	}
	slices.SortStableFunc(rows, func(a, b germination.Emergence) int { return cmp.Compare(a.Share.Value, b.Share.Value) })
	kinds := kindsOf(rows, func(e germination.Emergence) string { return e.Kind })
	var dots []DotRow
	for _, e := range rows[:min(len(rows), mostRows)] {
		dots = append(dots, DotRow{Name: groupName(e.Group), Value: pointer(e.Share), Low: pointer(e.Low), High: pointer(e.High),
			Series: slices.Index(kinds, e.Kind), Note: batches(e.Batches)})
	}
	h := Head{Name: season("emergence", year), Title: shown(fmt.Sprintf("Emergence in %d, lowest first", year), len(rows), "lowest")}
	return []Spec{DotWhisker(h, dots, orWords(kinds, "kind unknown"), Axis{Name: "cells with a seedling, of cells looked at", Percent: true})}
}

// groupName names a group within a season and kind: tomato, Ember, 72.
func groupName(g batch.Group) string {
	name := g.Crop + ", " + g.Variety
	if g.Cells.Known {
		name += fmt.Sprintf(", %d", g.Cells.Value)
	}
	return name
}

// kindsOf lists the kinds of rows, sorted.
func kindsOf[T any](rows []T, kind func(T) string) []string {
	var kinds []string
	for _, row := range rows {
		if !slices.Contains(kinds, kind(row)) {
			kinds = append(kinds, kind(row))
		}
	}
	slices.Sort(kinds)
	return kinds
}

// orWords puts words in the place of an empty name.
func orWords(names []string, empty string) []string {
	out := slices.Clone(names)
	for i, n := range out {
		if n == "" {
			out[i] = empty
		}
	}
	return out
}

// sortedKeys lists the keys of a map in order of bytes, so that a book gives the same
// bytes each time.
func sortedKeys[V any](m map[string]V) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}
