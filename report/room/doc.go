// Package room says how full benches, chambers and trays stood, and how far the farm
// could grow before something is full. New reads where the batches stood and writes
// nothing of theirs; Today is what is left on the day at hand.
//
// # Room
//
// A batch's trays stand in a chamber from sown until they leave it (rule "Chamber stays")
// and on a bench from then, else from sown, to their end; those of an open batch up to
// today, wherever it is taken to stand after. They keep trays of their code from sown to
// their end and tray_turnaround days more. What stands from one day to another stands on
// the first and no longer on the last; what ends no later than it begins takes no room.
// The load of the chambers and of a code is in trays, that of the benches in places: trays
// x places of their code (rule "Tray codes"; a code that trays.csv lacks takes 1).
//
// Benches hold bench_places, chambers hold chamber_places; a code holds the trays owned,
// on a day those owned that day, in a season the most owned on any day of it. What is not
// written is unknown: so is what a code holds that trays.csv lacks, or of which a count is
// blank, which is marked.
//
// Of every season from the first sowing's to the last one's, and of everything that
// anything stood on in it, are told the peak and its first day; where capacity is known
// also the days on which the load lay above the capacity of that day, and how far all
// could grow:
//
//	growth left = capacity / peak - 1
//
// An excess below 1e-9 is the noise of added parts of trays: it counts for no day over,
// makes no later day the peak's, and leaves neither room to grow nor a lack of it. A
// season in which nothing stood has no row. Of the season's benches, chambers and codes
// the one with the least growth left binds first; of equal ones benches come first, then
// chambers, then codes by bytes.
//
// Left today are, of benches and chambers whose places are written, the places less the
// load of today, taken over the batches sown by then whose end is not yet past; an open
// batch still stands today.
//
// Source of the running level over days: the sweep over ends of intervals, common
// practice.
package room
