// Package chart draws figures: numbers and names go in, SVG text comes out.
// Specs makes the charts that the pages of a report show.
//
// A builder (Lines, StepLines, StackedBars) turns plain numbers into a Spec: the
// chart's options with a size and words for a screen reader. A Drawer turns
// Specs into Drawings: it runs ECharts inside the program, cleans the SVG until
// it can stand inside a page under the strictest policy, and keeps what it drew
// in a cache. Equal Specs give equal bytes, whatever the order, the number of
// workers or the state of the cache.
//
// The files, in reading order: draw.go (Spec, Drawer), engine.go (the script
// engine), apart.go and process.go (a script of somebody else's, in a process of its own),
// clean.go (the SVG), cache.go, measure.go (widths of text), sheet.go,
// axis.go and rows.go (what all charts share), one file for each shape
// (stacked.go, lines.go) with said.go (its words), slim.go (fewer bytes), then specs.go
// (which charts a report has) and one file for each figure.
//
// Nothing outside this package and its runtime knows of ECharts or of scripts;
// nothing here knows of files of records, pages or the clock (the cache only
// compares file times with one another, and a script of somebody else's is timed).
package chart
