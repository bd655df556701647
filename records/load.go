package records

import (
	"errors"
	"io/fs"
	"slices"
	"strconv"
	"strings"
	"time"
	"unicode"
)

// timeMonth is a month of book.csv, January where there is none yet.
func timeMonth(m int) time.Month { return time.Month(max(m, 1)) }

var errEnd = errors.New("end of file")

// loader holds what is known while a book is read.
type loader struct {
	from       origin
	found      map[string]string // log -> its name as found
	present    map[string]bool   // logs that were read
	others     []string          // sheets of a workbook that are no logs
	problems   []Problem
	severities map[string]Severity
	names      *names
	settings   Settings
	order      dateOrder // the setting dates
	orderBad   bool      // the setting dates is not one of its words
	decimal    decimal
	logs       []*log

	sowings entries[Sowing]
	outs    entries[Out]
	counts  entries[Count]
	scores  entries[Score]
	trays   entries[Purchase]
	lots    entries[Lot]
	costs   entries[Cost]
	chamber entries[ChamberReading]
	house   entries[HouseReading]
	wishes  entries[Wish]
	changes entries[Change]
	notes   []Note

	sayings []Said // of counts

	batches  map[string]*entry[Sowing]
	byRef    []*entry[Sowing]
	holdings []hold          // of all batches
	ordered  []int32         // the counts by batch, tray and day
	codes    []string        // of all batches
	lost     map[string]bool // batches whose row is no CSV
	cellsOf  map[string]int
	asked    int             // names looked up for what was meant
	doubted  map[cellOf]bool // cells that a warning asks about
	told     map[finding]int // findings so far
	full     bool            // there are more names than any book has
}

// entries are the rows of one log as read, one for each row.
type entries[T any] struct {
	*log // nil where the book has no such log
	is   []T
}

// entry is a row as read, with the row it was read from.
type entry[T any] struct {
	is *T
	row
}

// entry is the i-th row.
func (all entries[T]) entry(i int) entry[T] { return entry[T]{&all.is[i], row{all.log, int32(i)}} }

// Load reads a record book of a folder. The book holds every row without an error;
// the problems, sorted, are all that was found. A problem of severity Fatal means
// that nothing should be built.
func Load(folder fs.FS) (*Book, []Problem) { return readBook(folderOf{folder}) }

// readBook reads a record book from wherever it stands.
func readBook(from origin) (*Book, []Problem) {
	l := &loader{from: from, found: map[string]string{}, names: newNames(), decimal: point, present: map[string]bool{}, doubted: map[cellOf]bool{}, told: map[finding]int{}, severities: severities()}
	from.find(l)
	l.readSettings()
	l.readLogs()
	l.notes = l.readNotes()
	if !l.full {
		l.check()
	}
	l.reportMore()
	SortProblems(l.problems)
	return l.book(), l.problems
}

// check runs every check that looks at what was read.
func (l *loader) check() {
	for _, c := range Checks {
		if c.run != nil {
			c.run(l)
		}
	}
	l.checkMost()
}

// readLogs reads every log but book.csv. The order decides how names are shown:
// as first written, in trays and lots before sowings.
func (l *loader) readLogs() {
	l.trays = readLog(l, "trays.csv", row.purchase)
	l.lots = readLog(l, "lots.csv", row.lot)
	l.sowings = readLog(l, "sowings.csv", row.sowing)
	l.lostBatches()
	l.outs = readLog(l, "out.csv", row.outRow)
	l.counts = readLog(l, "counts.csv", row.count)
	l.scores = readLog(l, "scores.csv", row.look)
	l.costs = readLog(l, "costs.csv", row.cost)
	l.chamber = readLog(l, "chamber.csv", row.chamberReading)
	l.house = readLog(l, "house.csv", row.houseReading)
	l.wishes = readLog(l, "wishes.csv", row.wish)
	l.changes = readLog(l, "changes.csv", row.change)
}

// book gathers what is not left out.
func (l *loader) book() *Book {
	b := &Book{Settings: l.settings, Notes: l.notes, OtherSheets: l.others, told: &told{codes: l.names.all(), said: l.sayings}}
	b.Trays, b.Lots, b.Sowings, b.Outs = kept(l.trays), kept(l.lots), kept(l.sowings), kept(l.outs)
	b.Counts, b.Scores, b.Costs = l.keptCounts(), kept(l.scores), kept(l.costs)
	b.Chamber, b.House, b.Wishes, b.Changes = kept(l.chamber), kept(l.house), kept(l.wishes), kept(l.changes)
	for _, of := range Logs {
		if i := slices.IndexFunc(l.logs, func(read *log) bool { return read.Name == of.Name }); i >= 0 {
			b.Files = append(b.Files, l.logs[i].count())
		}
	}
	return b
}

// count says how many rows the log has and how many no figure uses.
func (l *log) count() File {
	lost := len(l.src.faults())
	f := File{Name: l.Name, As: printable(l.file), Rows: len(l.flags) + lost, LeftOut: lost, Columns: l.columns(), Unread: l.unread, heads: l.header, sheet: l.sheet}
	for _, found := range l.flags {
		f.LeftOut += int(found & out)
	}
	return f
}

// readLog reads every row of a log, if the book has it.
func readLog[T any](l *loader, name string, read func(row) T) entries[T] {
	src, ok := l.from.open(l, logOf(name))
	if !ok {
		return entries[T]{}
	}
	log := &log{Log: logOf(name), loader: l, file: l.found[name], src: src, dates: l.order, required: requiredOf(logOf(name))}
	_, log.sheet = src.(*sheetRows)
	if !log.open() {
		return entries[T]{}
	}
	l.logs = append(l.logs, log)
	l.present[name] = true
	if log.dates == untold {
		log.dates = log.toldOrder()
	}
	all := entries[T]{log, make([]T, 0, src.most())}
	log.readRows(func(r row) {
		var is T
		if !r.isTotal() {
			r.formulas()
			r.blanks()
			r.tooWide()
			is = read(r)
		}
		all.is = append(all.is, is)
	})
	log.reportUntold()
	return all
}

// blanks reports required cells with nothing in them.
func (r row) blanks() {
	for _, name := range r.required {
		if r.Name != "book.csv" && r.text(name) == "" && !r.unknown(name) {
			what, _, _ := strings.Cut(r.Columns[r.column(name)].What, ";")
			r.problem("blank", name, name+" is blank", what+" is expected", "")
		}
	}
}

// kept lists the rows that are not left out, in the order of the file. It is the end of
// the entries, whose room it takes.
func kept[T any](all entries[T]) []T {
	n := 0
	for e := range alive(all) {
		all.is[n] = *e.is
		n++
	}
	if n == 0 {
		return nil
	}
	return all.is[:n:n]
}

// report adds a problem and returns its severity.
func (l *loader) report(check string, at Pos, found, expected, remedy string) Severity {
	s := l.severities[check]
	if s == Error && at.File == l.found["book.csv"] {
		s = Fatal // a setting in doubt puts every figure in doubt
	}
	at.File = printable(at.File)
	if l.untold(finding{at.File, check}) {
		return s
	}
	found, expected, remedy = l.from.words(found), l.from.words(expected), l.from.words(remedy)
	l.problems = append(l.problems, Problem{Pos: at, Severity: s, Check: check, Found: found, Expected: expected, Remedy: remedy})
	return s
}

// printable keeps what would break a line, or turn it around, out of a file's
// name.
func printable(name string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsGraphic(r) {
			return r
		}
		return '\uFFFD'
	}, name)
}

// quote shows a cell as read, on one line and not too long.
func quote(s string) string {
	if r := []rune(s); len(r) > 60 {
		s = string(r[:59]) + "…"
	}
	return strconv.Quote(s)
}
