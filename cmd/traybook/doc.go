// Traybook compiles plain logs about raising vegetable transplants, a folder of CSV
// files or a workbook, into a static HTML review.
//
// # Commands
//
//	traybook new DIR               a starter book to fill in (--all: every log)
//	traybook check BOOK            every problem of every log in one run
//	traybook build BOOK            the review, in BOOK/site
//	traybook watch BOOK            the review, and again after every save, until Ctrl-C
//	traybook sheets BOOK           forms to print and write on, in one file
//	traybook version               which traybook this is
//	traybook help [COMMAND]        what a command takes
//
// A book is a folder of CSV files, or a workbook, .xlsx or .ods, with a sheet for each
// log; traybook new --workbook FARM.xlsx makes one. The notes and the review of FARM.xlsx
// stand in the folder FARM beside it.
//
// A folder whose name begins with a dash is written as it is, -mybook, or ./-mybook
// where it is not there yet.
//
// # Building
//
//	--out DIR        where the review goes; a folder that traybook did not make is never touched
//	--season YEAR    the season reviewed on the front page; the last otherwise
//	--today DATE     stands for today instead of the last date in the book
//	--strict         build nothing while any row has an error
//	--grow FACTOR    the room and the trays if every batch had this many times its trays
//	--switch A=B     the same if batches of tray code A stood in code B
//	--public         leave out what a farm keeps to itself: money, suppliers, notes in the logs
//	--show THINGS    with --public: show costs, lots or both all the same
//	--single         the season's review as one file, review.html, to send by mail
//	--since DATE     of sheets: labels for what was sown since that day, not in the last 7
//	--no-cache       draw every chart anew
//	--no-charts      leave the charts out: tables and figures alone
//	--echarts FILE   draw charts with this copy of ECharts
//	--all            every problem, not the first three of a kind in each file; of check too
//	--json           every problem, as one JSON object a line; of check too
//
// # Example
//
//	$ traybook new mybook
//	7 files in mybook; put your own rows in place of the invented ones, then: traybook build mybook
//	$ traybook check mybook
//	40 rows in 6 files, 0 errors, 0 warnings
//	$ traybook build mybook --strict
//	... 0 rows left out; open mybook/site/index.html
//	$ traybook build mybook --grow 1.2 --switch SW72=AP72 --out bigger
//	... open bigger/index.html
//	$ traybook sheets mybook --out sheets.html
//	forms for ... open and print sheets.html
//	$ traybook new --workbook FARM.xlsx
//	12 sheets in FARM.xlsx; put your own rows in place of the invented ones, then: traybook build FARM.xlsx
//	$ traybook check FARM.xlsx
//	... rows in 12 sheets, 0 errors, 0 warnings
//	$ traybook build mybook --today soon
//	traybook: --today soon: not a date; write it as 2026-05-17
//	$ traybook build mybook --season
//	traybook: --season: nothing stands behind it; give a year such as 2026
//
// # Whatever ends a build
//
// A review goes in place when all of it is on the disk, in one step. Until then the
// older one stands. Ctrl-C, a closed terminal or a polite kill leave nothing beside
// it. A build killed outright, or cut off from power, leaves a hidden folder there,
// which the next build clears; where the system takes two steps to swap folders, the
// next command of any kind moves the older review back if need be, and says so. Of
// two builds of one site the second says that it waits, for two minutes at most.
//
// # Exit status
//
// 0: done, warnings allowed. 1: rows were left out (the review is built and says
// so; with --strict nothing is built) or check found errors. 2: misused, stopped,
// nothing could be built, or what was said could not be written. Problems go to
// standard error, results to standard output.
//
// In reading order: main.go (run), misuse.go (what is wrong with arguments), say.go and
// told.go (all words to the user), new.go, tables.go and new_workbook.go, check.go,
// place.go, book.go and memory.go (read and compute, within how much memory), build.go, draw.go, sheets.go, watch.go and
// news.go, version.go, held.go (one build at a time), replace.go (what a build may
// replace), site.go, window.go (started by a mouse), internal/folder (write aside, then swap).
// No figure is computed here.
package main
