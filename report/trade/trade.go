// Package trade holds facts of the transplant trade, each with its source: what a crop usually takes in chamber and
// house, how fast it comes up at a temperature, and what the law asks of a packet of seed. They are defaults and
// yardsticks for a farm that has not written its own figures yet; the farm's own counts outrank them.
//
// SOURCES.md says where every column comes from and which have no source. names.go looks a crop up as a grower writes it,
// crop.go says what is usual for it, emergence.go holds days and share of normal seedlings by soil temperature, minimum.go
// the seed regulations, table.go reads the tables. The package knows no record and no figure of a farm.
package trade
