package report

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/money"
	"traybook/report/plants"
	"traybook/report/room"
	"traybook/report/sowing"
	"traybook/report/trays"
	"traybook/report/years"
)

// Num is a figure that may be missing (rule "Missing").
type Num = batch.Num

// Record is a batch with everything known of it.
type Record = money.Borne

// Report is every figure of a book, by room. Slices are sorted by their key columns.
type Report struct {
	Book     *records.Book     // its rows are pointed to: nobody changes it while the report is in use
	Problems []records.Problem // all that a build says, in their order
	Options  Options           // tray codes in the book's spelling
	Batches  *batch.Batches    // their ends, today, the seasons, the tray codes
	Records  []*Record         // of the batches, by code
	Season   int               // the season reviewed on the front page; 0 where nothing was sown
	Inputs   []records.Input   // settings, then computed values

	Germination *germination.Figures
	Plants      *plants.Figures
	Money       *money.Figures
	Trays       *trays.Figures
	Room        *room.Figures
	Years       *years.Figures
	Sowing      *sowing.Figures

	Week    []WeekLine
	If      *If // the "if" of Options.Grow and Options.Switch, else nil
	Missing []Missing
}

// Record returns what is known of the batch with a code, or nil.
func (r *Report) Record(code string) *Record {
	if b := r.Batches.Of(code); b != nil {
		return r.Records[b.Nth]
	}
	return nil
}

// With returns the report with further problems beside its own, as of a note that asks
// for a figure of which the book holds nothing: the one kind that rests on figures.
func (r *Report) With(more []records.Problem) *Report {
	all := *r
	all.Problems = slices.Concat(r.Problems, more)
	records.SortProblems(all.Problems)
	return &all
}

// New computes the report of a book. problems are those of its logs and notes,
// sorted; pages and data files show them as they are. The order of the book's rows changes no figure, but
// that of several counts of one day the last row stands (rule "Counts"). New fails
// where an option does not fit the book.
func New(book *records.Book, problems []records.Problem, o Options) (*Report, error) {
	sown := batch.Sowings(book)
	o, err := o.fitted(sown, book.Trays)
	if err != nil {
		return nil, err
	}
	counts := germination.Count(sown, book)
	seen := plants.Read(sown, book)
	b := batch.New(book, sown, plants.Traces(sown, counts, seen), o.today(book))
	g := germination.New(b, counts, book)
	p := plants.New(b, g, seen)
	m := money.New(b, p, book)
	t := trays.New(b, p, m)
	season, sow := o.season(b.Seasons), sowing.New(b, p, book.Wishes)
	return &Report{
		Book: book, Problems: problems, Options: o, Batches: b, Records: m.Borne, Season: season,
		Germination: g, Plants: p, Money: m, Trays: t, Sowing: sow,
		Room:    room.New(b, b.Standings(1, nil)),
		Years:   years.New(b, g, p, m, book.House, book.Costs),
		Inputs:  inputsOf(book, b, season, g, p, m, t, sow),
		Week:    weekOf(b, m.Borne, g, p, sow),
		If:      ifOf(o, b, t),
		Missing: missingOf(book, b, m, g, t),
	}, nil
}
