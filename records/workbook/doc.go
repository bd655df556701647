// Package workbook reads a workbook, .xlsx or .ods, into named sheets of typed cells,
// and writes the starter workbook. Bytes go in, sheets come out; it knows nothing of
// logs, columns and figures.
//
// # What a cell is
//
// A cell counts by what is stored, never by how it is shown: a number with its 15
// digits, a day as a day whatever the order in which the spreadsheet shows it, 85 % as
// 0.85, a formula by its stored result. Cell.Text is then the one way to write it that
// stands for nothing else:
//
//	Text     as typed
//	Number   digits, a point before the fraction: 1234.5
//	Percent  the same with a percent sign: 85%
//	Moment   2025-03-31, 2025-03-31 07:00, or a time alone: 07:00
//	Bool     yes or no
//	Fault    the spreadsheet's own word: #N/A, #REF!
//	Unsolved nothing: a formula that was never worked out
//
// Hidden rows, columns and sheets are read like all others. What a merge covers is
// listed (Sheet.Merged), not guessed.
//
// # Damaged and hostile files
//
// A file is read in one pass with limits on what it unpacks to and on its cells
// (limits.go). Whatever is wrong with it is an Unread, which says what to do about it.
//
// In reading order: book.go (what comes out), read.go (Read), parts.go (the files
// inside a workbook), value.go (numbers and days as text); of .xlsx: xlsx.go,
// xlsx_style.go, xlsx_sheet.go; of .ods: ods.go, ods_cell.go; starter.go (Write),
// starter_lists.go.
package workbook
