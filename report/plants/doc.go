// Package plants is what became of the seedlings: looks at their quality, how long
// they stayed fit to set out, and how many usable plants a batch gave. Read takes the
// logs (looks.go, outs.go), Traces says of each batch what bears on its end, New makes
// the figures (quality.go, leeway.go, usable.go). Its rules follow; those of scatter
// and intervals are stated by package rate, those of counts by package germination.
//
// # Looks
//
// A look is a row of scores.csv. Its usable share = usable / looked where both are
// written; else plants at or above the setting usable_from / plants scored, a blank
// score beside written ones holding no plant. Both forms in one row are an error (package
// records). Looks of a batch on one day are added. A row with only score, an overall
// mark, is no look: it is shown and counted, and enters no share.
//
// The quality of a batch is that of its latest look. Quality stands by season, crop,
// variety, cells and kind, for batches from seed, with an interval by the crop's
// scatter of quality between those batches; a group without a look has no row. The
// plants at each score are added up over the latest looks that were scored so. A crop of
// a season, and a season as a whole, are pooled likewise, the season by the scatter of the
// book.
//
// Sources: none. What is fit to set out is the farm's own judgement, and the words for
// the scores are its own.
//
// # Leeway
//
// How late may plants be set out? Looks of batches with a planned date stand by days
// past it: up to 0, 1-3, 4-7, 8-14, 15 and more, named by their first day (0, 1, 4, 8,
// 15). All days of looks count, not the latest alone; those of a batch in one band are
// added. By crop and kind, and by kind for all crops together (crop empty), over all
// batches, from seed or not, and all seasons: usable share with its interval by the
// scatter of quality of the crop (all crops: of the book). A band of fewer than 3
// batches has no share and is not known; its batches and plants looked at are told all
// the same.
//
// In words, of the known bands of a crop and kind in their order:
//
//	until   the last one still at 0.80 or above before the first one below
//	every   none is below: fit in every band looked at
//	never   the first is below: fewer than four in five were fit at any time
//
// What comes after the first band below says nothing more. No band known: the records
// cannot tell. (What misses 0.80 by less than 1e-9 is 0.80: rule "Missing".)
//
// Sources: none for the bands and the 0.80; common practice.
//
// # Usable plants
//
// Plants fit to set out that a batch gave, by the first of these that can be had:
//
//	out        plants_out + surplus, both written, or, where out.csv has rows of the
//	           batch, those that are not dead, once a row with last = yes clears it
//	counted    cells sown x its own emergence x its own usable share (rule "Looks"),
//	           not below what is written so far; 0 where its emergence is 0, looks or
//	           not; not where it is open and counted early
//	at least   of an ended batch of which plants gone are written (plants_out, or a row
//	           of out.csv that is not dead): the plants written so far. Surplus alone
//	           is no figure of plants gone, and dead ones were not usable
//	estimated  cells sown x the usable rate of its group, else of its crop over all
//	           seasons, not below what is written so far
//
// and none where neither group nor crop has a rate. A batch of unknown cells can have
// out and at least alone. Written so far = plants_out and surplus, or the rows of
// out.csv that are not dead. Never more than the cells sown: more is cut to those, and
// said. Only out and counted are measured: what enters rates, comparisons of trays and
// years, and how much to sow; each says how many batches it left out.
//
// Usable rate = usable plants / cells sown, over measured batches of known cells,
// above 0; by season, crop, variety, cells and kind, from seed or not, with an
// interval by the crop's scatter of usable plants. The book's usable rate is that over
// all such batches.
//
// Sources: none; own arithmetic, each figure from the farm's own records.
//
// In reading order: read.go (Read, Traces), looks.go and outs.go (the logs), plants.go
// (New), quality.go, leeway.go and fit.go (its words), usable.go.
package plants
