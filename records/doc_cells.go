// # How cells are read
//
// Files are UTF-8, with or without a byte-order mark, or UTF-16 with one. Bytes that are
// not UTF-8 are read as Windows-1252, with a warning; all else is refused by its name.
// Cells are parted by comma, semicolon or tab, told from the header or from a first line
// such as sep=; and quoted where they hold one, a quotation mark or a line break. Blank
// rows, rows of separators and trailing empty cells are skipped. A log is read up to
// 64 MB and 2,000,000 lines, a cell up to 10 kB, a row up to 200 cells, notes up to 1 MB a season
// with 1000 headings, 100 figures, 50,000 cells of tables, 50 lists or quotations within each other, and 1000
// brackets, stars and the like in a paragraph. A book of more than 120,000 batches, 50,000
// lots, 5,000 tray codes, 10,000 crops counted anew in each season or 500,000 different
// names in all is not built.
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
// # What is plausible
//
// What is well formed and cannot be is an error, what is well formed and odd a warning
// that the row is used as it stands.
//
// Errors: emerged, empty, looked at or lost (all counts of a batch together) above the
// cells sown; plants looked at above them; cells above those of the whole trays; a lowest
// temperature above the highest, or one outside -40 to 60 C; a date before 1980, or a
// purchase more than a year after every other date of the book; more than 20 places a
// tray, 10,000 trays a batch, 10 million of money or of anything counted.
//
// Warnings, numbers: rows twice, cell for cell (of counts, labour and readings without a
// time three or more on end, a block once); a tray's price 5 times, or a fifth of, the code's others; a price a
// seed 10 times, or a tenth of, three other lots of the crop; an amount, or hours, 10
// times the largest other of five of its category or task; seeds in a cell above 30, or
// 10 times those of three other sowings of the crop; 5 times the plants of four other
// looks; a purchase above 5,000 trays, a tray above 1,000 cells, 4 places, 30 minutes or
// 40 years; plants wanted 5 times the cells sown for them, or two trays and more with 10
// times the cells that are wanted; more plants out, or dead, than cells.
//
// Warnings, dates: what belongs to a batch (a count, a look, plants out, out of the
// chamber, set out) more than 60 days, or a sowing more than 300, after every other day on
// which anything happened. Planned days, wishes and the days that a bill covers do not
// count; the batch's own planned day does, for what leaves or is looked at. Dates of one
// day in two logs, or of two batches but in counts, bear each other out. A date 300 days
// or more from those of the rows above and below, where these are within 100 days of each
// other and four in five rows of the log are so near the one before; of five rows or more
// also the last if it falls back, and the first if it is ahead. A lot bought more than 60
// days after the first sowing from it, or 200 before it and tested since. Anything of a batch
// after its end; planned or set out more than 200 days after sown; a cost of more than a
// year; a season without sowings, unless the book goes on into it without a break of more
// than 120 days.
//
// Warnings, cells: a quoted cell whose line breaks are followed by what looks like rows of
// the log; a cell that seems to have slipped to the right: a number among words, a name of
// the blank column on its left, a batch's last count (14 days and more ago) by empty
// cells, most of them, where others are by emerged, surplus without plants_out, a mark
// beside s1 to s5.
//
// Warnings, files: a name that is nearly a log's or a copy's, a workbook beside the logs,
// notes of a season without sowings.
//
// The rules of what a log says follow; code and tests refer to them by name.
package records
