package report

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"traybook/records"
)

// Options are what a build may ask for beside the book itself.
type Options struct {
	Today  records.Date // replaces the last date in the book where known
	Season int          // the season reviewed on the front page; 0: the last
	Grow   float64      // every batch's trays times this, on the "if" of the room; 0 or 1: as it is
	Switch []Switch     // tray codes to swap, on the "if" of the room
}

// Switch is one tray code sown in place of another. Case and spaces do not matter.
type Switch struct{ From, To string }

// MostGrowth is the largest Options.Grow that is taken for meant.
const MostGrowth = 100

// takeOptions lists the seasons and checks what was asked for against the book.
func (r *Report) takeOptions() error {
	for _, b := range r.Batches {
		r.Seasons = append(r.Seasons, b.Season)
	}
	slices.Sort(r.Seasons)
	r.Seasons = slices.Compact(r.Seasons)
	return errors.Join(r.chooseSeason(), r.checkToday(), r.checkGrow(), r.spellSwitches())
}

// chooseSeason picks the season reviewed.
func (r *Report) chooseSeason() error {
	r.Season = r.Options.Season
	if r.Season == 0 && len(r.Seasons) > 0 {
		r.Season = r.Seasons[len(r.Seasons)-1]
	}
	if r.Options.Season != 0 && !slices.Contains(r.Seasons, r.Options.Season) {
		return fmt.Errorf("season %d has no sowing in this book; its seasons are %s", r.Options.Season, strings.Trim(fmt.Sprint(r.Seasons), "[]"))
	}
	return nil
}

// checkToday refuses a day on which nothing had been sown yet.
func (r *Report) checkToday() error {
	var first records.Date
	for _, b := range r.Batches {
		if first == 0 || b.Sown < first {
			first = b.Sown
		}
	}
	if today := r.Options.Today; today.Known() && today < first {
		return fmt.Errorf("today, %s, lies before the first sowing of this book; give %s or later", today, first)
	}
	return nil
}

func (r *Report) checkGrow() error {
	if g := r.Options.Grow; !(g >= 0 && g <= MostGrowth) {
		return fmt.Errorf("growing to %g times the trays cannot be meant; give a factor such as 1.2, at most %d", g, MostGrowth)
	}
	return nil
}

// spellSwitches puts the codes to swap into the book's spelling.
func (r *Report) spellSwitches() error {
	var sown, known []string
	for _, b := range r.Batches {
		sown = append(sown, b.Tray)
	}
	for _, row := range r.Book.Trays {
		known = append(known, row.Tray)
	}
	spelt := slices.Clone(r.Options.Switch)
	var errs []error
	for i := range spelt {
		errs = append(errs, spell(&spelt[i].From, sown, "no batch was sown in"), spell(&spelt[i].To, append(known, sown...), "there is no"))
	}
	r.Options.Switch = spelt
	return errors.Join(errs...)
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
