package records

import (
	"errors"
	"io/fs"
	"strconv"
	"time"
)

func timeMonth(m int) time.Month { return time.Month(max(m, 1)) }

var errEnd = errors.New("end of file")

// loader holds what is known while a book is read.
type loader struct {
	folder     fs.FS
	problems   []Problem
	names      *names
	settings   Settings
	order      dateOrder // the setting dates
	decimal    decimal
	fahrenheit bool
	files      []File

	sowings []entry[Sowing]
	outs    []entry[Out]
	counts  []entry[Count]
	scores  []entry[Score]
	trays   []entry[Purchase]
	lots    []entry[Lot]
	costs   []entry[Cost]
	chamber []entry[ChamberReading]
	house   []entry[HouseReading]
}

// entry is a row as read, with the row it was read from.
type entry[T any] struct {
	is T
	*row
}

// Load reads a record book. The book holds every row without an error; the
// problems, sorted, are all that was found. A problem of severity Fatal means
// that nothing should be built.
func Load(folder fs.FS) (*Book, []Problem) {
	l := &loader{folder: folder, names: newNames(), decimal: point}
	l.readSettings()
	l.trays = readLog(l, "trays.csv", (*row).purchase)
	l.lots = readLog(l, "lots.csv", (*row).lot)
	l.sowings = readLog(l, "sowings.csv", (*row).sowing)
	l.outs = readLog(l, "out.csv", (*row).outRow)
	l.counts = readLog(l, "counts.csv", (*row).count)
	l.scores = readLog(l, "scores.csv", (*row).look)
	l.costs = readLog(l, "costs.csv", (*row).cost)
	l.chamber = readLog(l, "chamber.csv", (*row).chamberReading)
	l.house = readLog(l, "house.csv", (*row).houseReading)
	b := &Book{Settings: l.settings, Notes: l.readNotes()}
	b.Trays, b.Lots, b.Sowings, b.Outs = kept(l.trays), kept(l.lots), kept(l.sowings), kept(l.outs)
	b.Counts, b.Scores, b.Costs = kept(l.counts), kept(l.scores), kept(l.costs)
	b.Chamber, b.House = kept(l.chamber), kept(l.house)
	b.Files = l.files
	SortProblems(l.problems)
	return b, l.problems
}

// readLog reads every row of a log, if the folder has it.
func readLog[T any](l *loader, name string, read func(*row) T) []entry[T] {
	raw, err := fs.ReadFile(l.folder, name)
	if err != nil {
		return nil
	}
	log := &log{Log: logOf(name), loader: l, file: name, dates: l.order, stats: File{Name: name}}
	if !log.open(raw) {
		return nil
	}
	rows := log.rows()
	entries := make([]entry[T], 0, len(rows))
	for i := range rows {
		r := &rows[i]
		r.blanks()
		entries = append(entries, entry[T]{read(r), r})
	}
	log.stats.Columns = log.columns()
	for _, e := range entries {
		if e.out {
			log.stats.LeftOut++
		}
	}
	l.files = append(l.files, log.stats)
	return entries
}

// blanks reports required cells with nothing in them.
func (r *row) blanks() {
	for _, c := range r.Columns {
		if c.Required && r.text(c.Name) == "" {
			r.problem("blank", c.Name, c.Name+" is blank", c.What+" is expected", "")
		}
	}
}

func kept[T any](entries []entry[T]) []T {
	var all []T
	for _, e := range entries {
		if !e.out {
			all = append(all, e.is)
		}
	}
	return all
}

// report adds a problem and returns its severity.
func (l *loader) report(check string, at Pos, found, expected, remedy string) Severity {
	s := severityOf(check)
	l.problems = append(l.problems, Problem{at, s, check, found, expected, remedy})
	return s
}

// quote shows a cell as read, on one line and not too long.
func quote(s string) string {
	if r := []rune(s); len(r) > 60 {
		s = string(r[:59]) + "…"
	}
	return strconv.Quote(s)
}

// canonical gives a name its one spelling.
func (l *loader) canonical(kind, owner, written string, at func() Pos) string {
	key := l.names.key(written)
	if key == "" {
		return ""
	}
	id := kind + "\x00" + owner + "\x00" + key
	first, ok := l.names.shown[id]
	if !ok {
		first = spelling{spelt(written), at()}
		l.names.shown[id] = first
	}
	return first.name
}
