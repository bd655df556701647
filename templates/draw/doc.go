// Package draw makes the small drawings that stand in a table's rows: a dot with its
// range, bars, a batch's life, the year in the house. Plain SVG of a few hundred bytes,
// without a chart engine: positions across are percents of the cell, so that a drawing
// stretches with its cell while marks and text keep their size on every screen and on
// paper; positions down are pixels.
//
// A drawing in a row says nothing that its row does not say in figures too, so it is
// hidden from screen readers. Colours are classes of the style sheet; shape tells the
// kinds of tray apart as well.
//
// In reading order: axis.go (what all rows of a table share, drawn in its head),
// scale.go (round numbers for an axis), mark.go (what a row draws), tray.go, bars.go,
// life.go and year.go (drawings that stand alone).
package draw
