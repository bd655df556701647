// Package batch is one sowing and how long it stood, and the seasons, days and tray
// codes that all figures stand in. It knows no seedling, plant or money: what those
// tell of a batch's end comes in as a Trace. Its rules follow; those of the logs
// themselves (cells sown, repeats, settings) are stated by package records.
//
// # Seasons
//
// A season is a year's work and carries the year in which it ends: that of the date,
// plus 1 where season_starts is not January and the month is season_starts or later. A
// batch belongs to the season of its sowing, whenever it leaves. A season is finished
// once today lies after its last day, or in its last 90 days, the last day one of them,
// where none of its batches is open: an empty house in spring is no end of the year. (The
// 90 days are a choice of ours.) A season without a sowing is none. Where no season is
// finished, the season at hand stands in for those that are: today's, where anything was
// sown in it, else the last one sown in.
//
// # Today
//
// The book has no clock, so that it gives the same figures whenever it is built. Today
// is the latest sown, chamber_out, set_out, out, count or score date in the book, or
// the day asked for in its place. Rows later than a day asked for stay in.
//
// # From seed
//
// A batch is from seed where its start is seed and `from`, the batch that it was potted
// on from, is blank. Seeds sown = cells sown x seeds_per_cell, unknown where the cells
// are; 0 where the batch is not from seed: its seeds were sown in another batch.
//
// # End of a batch
//
// The end is the first day on which a batch no longer stands.
//
//	written   set_out, else the date of its row of out.csv with last = yes
//	assumed   without either: where the batch is strictly older, today, than its
//	          crop's longest written stay, sown + the crop's median written stay,
//	          not before its latest written date
//	open      else; it stands up to today
//
// A written stay is end - sown, not below 0, of the batches with a written end, but not
// of those known by out or count to have given no usable plant: a failed batch is
// cleared early and says nothing of how long a crop needs. The median is rounded to
// days. A crop without a written stay has the most weeks of the trade table x 7, else 8
// weeks (common practice, no source) as its longest and its median. Days in the house =
// end - sown; a batch stands on day d where sown <= d < end; tray-days = trays x those
// days. An assumed end is listed under what is missing.
//
// # Tray codes
//
// A tray code may be bought several times. Kind, cells and cell_ml are the same in all
// its rows, else the book is refused. Price, lasts, uses, minutes and places are those
// of the latest purchase that has the value written. Rows without a date come first. Of
// two on one day the dearer counts as the later, then the one with the larger lasts,
// uses, minutes, places and count, in that order: the order of rows moves no figure. A
// life of 0 or less is none. Places not written: 1.
//
// Trays owned on a day are the counts of the rows bought by then, added up, those
// without a date always; a negative count is trays broken or sold. Never below 0. A
// blank count in any row of a code leaves unknown how many were ever owned of it, and
// that is said: a blank is not nothing. Owned in a season = the most on any day of it.
// Bought = the positive counts, gone = the negative ones, added up. A code of which more
// are gone than were bought is listed under what is missing.
//
// # Chamber stays
//
// A batch stands in a chamber on the days from sown until the day before chamber_out,
// where that is written, with or without a chamber's name; after that, or without it from
// the day sown, on a bench until its end. Where a chamber is named and chamber_out is not
// written, the batch is taken to leave after
//
//	the median written stay of its crop, in whatever chamber,
//	else that of its chamber, whatever the crop,
//	else 3 days (common practice, no source)
//
// over all seasons, rounded to days (rule "Medians"), not past its end; such a stay is
// marked as assumed. A written stay is chamber_out - sown, not below 0. An open batch
// stands today and may still stand in its chamber tomorrow, so that its assumed stay is
// not cut at today; the room that it takes is counted up to today, and that of any batch
// up to its end (rule "Room"). Readings of the chamber count for it on those days.
//
// # Medians
//
// Of an even number the mean of the two middle values. Stays alone are then rounded to
// whole days, half up.
//
// # Ties
//
// Batches stand in the order of their codes, by bytes, and every sum runs in it, so that
// the order of a log's rows changes no digit. What is sorted by date falls back on batch
// or code by bytes.
//
// # Missing
//
// A figure that rests on a figure that is missing is missing too, never 0: a blank is
// not nothing. What a figure had to leave out is said beside it. A sum that is 0 but for
// the noise of binary fractions, below 1e-9 of its largest term, is 0, and two figures
// nearer than 1e-9 count as equal where they are compared.
//
// Sources: none but the farm's own records and the trade table (package trade says where
// each of its columns comes from).
//
// In reading order: sowing.go (Sowings: what a sowing and its code tell), code.go (a tray
// code over its purchases), end.go (Batch, and how long each stood), batches.go (New: all
// of them, seasons, today), chamber.go (how long each stood in a chamber), stay.go (where
// their trays stood), rows.go (a log by batch), group.go (the key of most
// tables; how lists are split), rank.go (the same by numbers made once).
package batch
