package chart

import (
	"cmp"
	"fmt"
	"slices"

	"traybook/report"
)

// emergence shows the groups sown often enough to be judged, the lowest first.
func emergence(r *report.Report, year int) []Spec {
	var rows []report.Emergence
	for _, e := range r.Emergence {
		if e.Season == year && !e.Few() && e.Share.Known {
			rows = append(rows, e)
		}
	}
	if len(rows) == 0 {
		return nil
	}
	slices.SortStableFunc(rows, func(a, b report.Emergence) int { return cmp.Compare(a.Share.Value, b.Share.Value) })
	kinds := kindsOf(rows, func(e report.Emergence) string { return e.Kind })
	var dots []DotRow
	for _, e := range rows[:min(len(rows), mostRows)] {
		dots = append(dots, DotRow{Name: groupName(e.Group), Value: pointer(e.Share), Low: pointer(e.Low), High: pointer(e.High),
			Series: slices.Index(kinds, e.Kind), Note: batches(e.Batches)})
	}
	h := Head{Name: season("emergence", year), Title: shown(fmt.Sprintf("Emergence in %d, lowest first", year), len(rows), "lowest")}
	return []Spec{DotWhisker(h, dots, orWords(kinds, "kind unknown"), Axis{Name: "cells with a seedling, of cells looked at", Percent: true})}
}

// groupName names a group within a season and kind: tomato, Ember, 72.
func groupName(g report.Group) string {
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

func sortedKeys[V any](m map[string]V) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}
