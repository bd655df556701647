// Package records reads a record book: a folder of CSV logs or a workbook, and notes,
// about a farm's own transplants. Files go in; a checked Book and the Problems found
// come out. It knows nothing of figures, charts or pages.
//
// # Reading order
//
// load.go holds Load. source.go says what a book is read from: a source of rows for each
// log. A folder (folder.go, misnamed.go) opens a file as text (decode.go, text.go), and
// text becomes records (reader.go, oversize.go); a workbook (package
// workbook, sheets.go) hands out the rows of its sheets (sheet_rows.go) as the same
// records, their typed cells beside them (typed.go). The header is matched
// with the columns (log.go, header.go, heads.go), a record becomes a row of text cells
// through package gocsv, cells become values (cell.go, number.go, dates.go, order.go,
// clock.go, words.go, names.go), a row becomes a Sowing, a Count and so on (logs.go,
// total.go, setting.go, notes.go). checks.go is the table of every check; check_*.go are
// those across logs, happened.go the dates they compare. book.go and settings.go are the
// result; ref.go how its rows name codes and words, counts_order.go the order of its counts,
// same.go whether a log tells the same in two books; cells.go says what a row of sowings.csv comes to, for the checks and the
// figures alike. columns.go is the table of every column.
//
// A book may have a million rows. Of each are kept its values, by column, and where it
// stands (At); a row of package records is the number of one in its log. Its cells as
// text are there while it is read, and found again from the file where a problem needs
// one: checks must not ask for the text of rows with which nothing is wrong.
//
// # The format
//
// A book is a folder, or one workbook with a sheet for each log. Only sowings.csv is
// needed; every further log and column adds an answer. Columns may come in any order.
// Further ones are not read: File.Unread lists them, and those whose name holds, means or nearly is one of the format's are
// warned of. Names of columns are compared without case, spaces, underscores, hyphens
// and a unit in brackets; a unit that is not the book's own is fatal.
// An asterisk marks a required column: without it the log cannot be read, and a
// row with a blank in it is left out. A blank anywhere else is unknown, never 0.
//
// book.csv: settings, a row each; all are optional.
//
//	setting*  the setting's name
//	value     its value; blank stands for the default
//	note      anything
//
// The settings, and what stands for one that is not written:
//
//	farm              name shown on the review; the folder's name
//	currency          code of ISO 4217; USD
//	season_starts     month in which a season begins, 1 to 12; 1
//	dates             order in slashed and dotted dates: ymd, dmy or mdy; told from each file
//	decimal           point or comma; point
//	temperature       C or F; C
//	wage              money an hour; none, hours are shown and not priced
//	discount_rate     percent a year, real; 5
//	usable_from       lowest score of a plant fit to set out, 1 to 5; 3
//	score_1           the farm's own word; discard
//	score_2           the farm's own word; weak
//	score_3           the farm's own word; fit
//	score_4           the farm's own word; good
//	score_5           the farm's own word; ideal
//	confidence        level of every interval, percent; 95
//	sure_of_target    wanted chance of enough plants, percent; 90
//	transplant_value  money for one more usable transplant; by crop
//	plug_price        money for a bought-in transplant; none
//	legal_minimum     yes or no: show the legal minimum germination of the United States (7 CFR 201.31) beside lots; yes where the currency is USD
//	heating_months    first and last month of heating; 10-4
//	bench_places      trays the benches hold; not judged
//	chamber_places    trays the chambers hold; not judged
//	tray_turnaround   days from emptying a tray until it is free; 3
//
// sowings.csv: a row per batch: one variety sown on one day into one tray code.
//
//	batch*          the code on the label; no two batches share one
//	sown*           date of sowing
//	crop*           the crop
//	variety*        the variety
//	lot             the seed lot's code in lots.csv
//	tray*           the tray's code in trays.csv
//	trays*          trays sown; a part is fine, such as 0.25 of a mixed tray
//	cells           cells sown, where not trays x cells of the tray
//	seeds_per_cell  seeds in a cell; blank stands for 1
//	start           seed, plug or cutting; blank stands for seed
//	from            the batch it was pricked out or potted on from
//	chamber         name of the germination chamber
//	chamber_out     date it left the chamber
//	planned         date the field was planned for
//	wanted          plants the field needs
//	replaces        the batch it re-sows
//	set_out         date it was set out
//	plants_out      plants set out
//	surplus         usable plants left over; 0 is an answer, blank is not
//	note            anything
//
// out.csv: what left the house, a row per event, in place of a batch's set_out, plants_out and surplus.
//
//	batch*   the batch
//	date*    the day
//	plants*  plants that left
//	to*      field, sold, given, surplus, potted-on or dead
//	last     yes: the batch is cleared
//	money    money received
//	note     anything
//
// counts.csv: germination counts, a row per look.
//
//	batch*   the batch
//	date*    the day
//	tray     number of the tray within the batch, from 1, where trays are counted apart
//	cells    cells looked at; blank stands for those sown
//	emerged  cells with a living seedling that day; either this or empty
//	empty    cells without one; either this or emerged
//	lost     cells lost since the last count
//	cause    what of
//	note     anything
//
// scores.csv: quality, a row per look at some plants.
//
//	batch*  the batch
//	date*   the day
//	looked  plants looked at, with usable
//	usable  plants of those fit to set out
//	s1      plants at score 1
//	s2      plants at score 2
//	s3      plants at score 3
//	s4      plants at score 4
//	s5      plants at score 5
//	score   one overall mark, 1 to 5
//	note    anything
//
// trays.csv: trays bought, a row per purchase.
//
//	tray*    the code written in sowings
//	kind*    air-pruning, solid-wall or any word; the same in all rows of a code
//	cells*   cells of one tray; the same in all rows of a code
//	cell_ml  volume of a cell, millilitres; the same in all rows of a code
//	bought   date of the purchase; blank stands for always there
//	count    trays bought; negative for broken or sold; blank is unknown
//	price    money for one tray
//	lasts    years the tray is in use
//	uses     uses it survives; whichever comes first ends its life
//	minutes  labour a use that differs by tray, minutes: filling, washing, popping out
//	places   bench places one tray takes; blank stands for 1
//	note     anything
//
// lots.csv: seed lots, a row each.
//
//	lot*            the code written in sowings
//	crop*           the crop
//	variety*        the variety
//	supplier        who sold it
//	lot_number      the supplier's number of the lot
//	bought          date of the purchase
//	germ_label      germination on the packet, percent
//	tested          date of the packet's germination test
//	seeds           seeds bought
//	grams           grams bought, where seeds are not counted
//	seeds_per_gram  seeds in a gram; blank stands for the trade table's figure, marked
//	price           money for the whole lot
//	organic         yes or no
//	treated         yes or no
//	note            anything
//
// costs.csv: money and labour, a row per bill or stretch of work; not trays, not seed lots.
//
//	date*      the day of the bill or of the work
//	from       first day it covers
//	until      last day it covers
//	category*  seed, mix, labour, heat, power, water, feed, equipment or other
//	task       of labour: sowing, care or out; blank stands for care
//	amount     money; negative is a credit; either this or hours
//	hours      hours of labour; either this or amount
//	quantity   how much was bought
//	unit       of the quantity
//	batch      the batch it was for
//	crop       the crop it was for
//	tray       the tray code it was for; batch, crop and tray all blank: shared
//	note       anything
//
// chamber.csv: readings in the germination chambers.
//
//	time*     the day, or the day and the time
//	chamber   the chamber's name
//	temp*     temperature
//	humidity  relative humidity, percent
//
// house.csv: a day's temperatures.
//
//	date*     the day
//	low       lowest inside
//	high      highest inside
//	out_low   lowest outdoors
//	out_high  highest outdoors
//	note      anything
//
// wishes.csv: what the fields want of the next season.
//
//	crop*    the crop
//	variety  the variety
//	plants*  plants wanted
//	planned  date they are to be set out
//	tray     the tray code to sow into
//	note     anything
//
// changes.csv: what the farm did differently.
//
//	date*  the day, or the first
//	until  the last day; blank stands for from then on
//	what*  what was done, such as shade cloth on
//	note   anything
//
// notes/YEAR.md holds that season in words, as Markdown.
//
// # Workbooks
//
// A workbook, .xlsx or .ods, has each log as a sheet of its name without the ending:
// sowings, counts. Names of sheets are compared without case and spaces; other sheets
// are not read, and Book.OtherSheets lists them. A sheet with its header alone is no log
// yet. Cells count by what is stored, never by
// how they are shown: days, numbers, percents, yes and no are taken as such whatever the
// settings dates and decimal say, 85 % is 85, a formula is its stored result. Texts are
// read as the cells of a file. An error such as #N/A is an error at its cell, and so is a
// formula without a result. Hidden rows are read. A row with merged cells is left out, an
// error. Places are those of the sheet: counts!E14. Notes stand in a folder beside the
// workbook.
//
// # Cells sown
//
// The cells sown of a batch are those written in cells, else trays x cells of its
// tray code, rounded to a whole number, half up: 0.29 trays of 50 cells are 14.5
// and so 15. What misses a half by less than 1e-9 is that half, as no tenth of a
// tray has an exact floating-point number. A batch of a code that trays.csv lacks
// has no cells unless cells is written; figures that need cells leave it out and
// say so.
//
// Trays are numbered from 1 within a batch, a part of a tray being a tray. Tray k
// holds the cells of its code, the last one what is left (100 cells in 2 trays of 72: 72
// and 28). More cells than the whole trays hold are an error, as are counts of more
// cells than their tray, or their batch, holds.
//
// # Repeats
//
// A cost that stands in lots.csv or trays.csv already is a warning, and left out of
// every figure. It is one with the day on which the purchase was bought and its
// amount, to the cent: a row of seed, crop blank or the lot's and batch blank or
// sown from the lot, with the lot's price; or a row of equipment or other, tray
// blank or the code, with count x price of a purchase of trays. Without a date,
// price or count of the purchase nothing repeats it.
//
// The same row twice in one log, cell for cell, is a warning too: both are taken, but of
// counts of one day the last.
//
// # Settings
//
// Nothing is built on a setting in doubt: a name that is no setting's, a setting written
// twice, and a value that is none of the setting's are fatal, as is any other error in
// book.csv. A setting that is not written, or blank, takes its default; all are listed
// with where their value comes from (Settings.Inputs).
package records
