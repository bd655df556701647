// Package records reads a record book: a folder of CSV logs, and notes, about a
// farm's own transplants. CSV files go in; a checked Book and the Problems found
// come out. It knows nothing of figures, charts or pages.
//
// # Reading order
//
// load.go holds Load. A file becomes text (text.go), text becomes records with
// positions (reader.go, log.go, header.go), a record becomes a row of text cells
// through package gocsv, cells become values (cell.go, number.go, dates.go,
// order.go, clock.go, names.go), a row becomes a Sowing, a Count and so on
// (logs.go, setting.go, notes.go). checks.go is the table of every check;
// check_*.go are those across logs. book.go and settings.go are the result; cells.go
// says what a row of sowings.csv comes to, for the checks and the figures alike.
// columns.go is the table of every column.
//
// # The format
//
// A book is a folder. Only sowings.csv is needed; every further log and column
// adds an answer. Columns may come in any order, and further ones are ignored.
// Names of columns are compared without case, spaces, underscores and hyphens.
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
// notes/YEAR.md holds that season in words, as Markdown.
//
// # How cells are read
//
// Files are UTF-8, with or without a byte-order mark. Cells are parted by comma,
// semicolon or tab, told from the header or from a first line such as sep=; and
// quoted where they hold one, a quotation mark or a line break. Blank rows, rows
// of separators and trailing empty cells are skipped.
//
// Numbers may have separators of thousands (a comma or, with decimal commas, a
// point; a space; an apostrophe); money may have a currency sign, a percentage a
// percent sign, a temperature its degree sign. Counts are whole.
//
// Dates are written 2025-03-31, or with slashes or dots in the order of the
// setting dates. Without it the order is told from the file: the one in which
// all its dates are days. Years of two digits are of this century.
//
// Names are compared in Unicode's normal form C, without case and surrounding or
// repeated spaces, and shown as first written: in trays.csv, lots.csv,
// sowings.csv, then the other logs. Varieties are compared within their crop.
//
// Every problem of every file comes in one run. Checks lists what is checked and
// how grave a finding is. A row with an error is left out of the book, and so is
// what belongs to a batch left out, and a cost that repeats a purchase.
//
// The rules of what a log says follow; code and tests refer to them by name.
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
// holds the cells of its code, the last one what is left: less than a tray has, or
// more where cells says so (150 cells in 2 trays of 72: 72 and 78). A count looks at
// no more cells than its tray, or its batch, holds; more are an error.
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
// # Settings
//
// Nothing is built on a setting in doubt: a name that is a slip of the keys away
// from a setting's, a setting written twice, and a value that is none of the
// setting's are fatal, as is any other error in book.csv. A name like no setting's is
// a warning, and its row is not used. A setting that is not written, or blank, takes
// its default; all are listed with where their value comes from (Settings.Inputs).
package records
