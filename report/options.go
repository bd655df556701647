package report

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"traybook/records"
	"traybook/report/batch"
)

// Options are what a build may ask for beside the book itself.
type Options struct {
	Today  records.Date // replaces the last date in the book where known (rule "Today")
	Season int          // the season reviewed on the front page; 0: the last
	Public bool         // of a book as it may be published: pages of the farm's own work are left out
	Grow   float64      // every batch's trays times this, on the "if" of the room; 0 or 1: as it is
	Switch []Switch     // tray codes to swap, on the "if" of the room; case and spaces do not matter
}

// Switch is one tray code sown in place of another; under this name the command asks
// for it without knowing the rooms.
type Switch = batch.Switch

// MostGrowth is the largest Options.Grow that is taken for meant.
const MostGrowth = 100

// today is the day on which the book is read (rule "Today").
func (o Options) today(book *records.Book) records.Date {
	if o.Today.Known() {
		return o.Today
	}
	return batch.LastDate(book)
}

// season is the one reviewed: as asked for, else the last of the seasons with
// sowings, which are ascending; 0 where there is none.
func (o Options) season(seasons []int) int {
	if o.Season == 0 && len(seasons) > 0 {
		return seasons[len(seasons)-1]
	}
	return o.Season
}

// fitted returns the options in the book's spelling, or says all that does not fit.
func (o Options) fitted(sown []batch.Sowing, trays []records.Purchase) (Options, error) {
	swap, err := spelt(o.Switch, sown, trays)
	err = errors.Join(o.checkSeason(sown), o.checkToday(sown), o.checkGrow(), err)
	o.Switch = swap
	return o, err
}

// checkSeason refuses a season without a sowing.
func (o Options) checkSeason(sown []batch.Sowing) error {
	if o.Season == 0 || slices.ContainsFunc(sown, func(s batch.Sowing) bool { return s.Season == o.Season }) {
		return nil
	}
	var seasons []int
	for _, s := range sown {
		seasons = append(seasons, s.Season)
	}
	slices.Sort(seasons)
	return fmt.Errorf("season %d has no sowing in this book; its seasons are %s", o.Season, strings.Trim(fmt.Sprint(slices.Compact(seasons)), "[]"))
}

// checkToday refuses a day on which nothing had been sown yet.
func (o Options) checkToday(sown []batch.Sowing) error {
	var first records.Date
	for _, s := range sown {
		if first == 0 || s.Sown < first {
			first = s.Sown
		}
	}
	if o.Today.Known() && o.Today < first {
		return fmt.Errorf("today, %s, lies before the first sowing of this book; give %s or later", o.Today, first)
	}
	return nil
}

// checkGrow refuses what cannot be meant; NaN too.
func (o Options) checkGrow() error {
	if g := o.Grow; !(g >= 0 && g <= MostGrowth) {
		return fmt.Errorf("growing to %g times the trays cannot be meant; give a factor such as 1.2, at most %d", g, MostGrowth)
	}
	return nil
}

// spelt puts the codes to swap into the book's spelling: from a code that was sown,
// to one that was sown or stands in trays.csv.
func spelt(swap []Switch, sown []batch.Sowing, trays []records.Purchase) ([]Switch, error) {
	if len(swap) == 0 {
		return swap, nil
	}
	var from, to []string
	for _, s := range sown {
		from = append(from, s.Tray)
	}
	for _, row := range trays {
		to = append(to, row.Tray)
	}
	to = append(to, from...)
	swap = slices.Clone(swap)
	var errs []error
	for i := range swap {
		errs = append(errs, spell(&swap[i].From, from, "no batch was sown in"), spell(&swap[i].To, to, "there is no"))
	}
	return swap, errors.Join(errs...)
}

// spell finds a tray code among those of the book.
func spell(code *string, codes []string, fault string) error {
	plain := func(s string) string { return strings.Join(strings.Fields(s), " ") }
	for _, c := range codes {
		if strings.EqualFold(plain(c), plain(*code)) {
			*code = c
			return nil
		}
	}
	codes = slices.Clone(codes)
	slices.Sort(codes)
	return fmt.Errorf("%s tray %q; give one of %s", fault, *code, strings.Join(slices.Compact(codes), ", "))
}
