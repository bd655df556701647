package data

import (
	"fmt"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/plants"
	"traybook/report/rate"
)

// quality is the latest looks of a group (rule "Looks"). s1 to s5 are plants; looks that
// write only how many are fit have none of them. usable is a share of the plants looked
// at; a look that gave one overall mark is in none of these numbers and stands in the
// records alone.
func quality(r *report.Report) File {
	type row = plants.Quality
	columns := join(groupColumns(func(q row) batch.Group { return q.Group }),
		[]column[row]{
			{"batches", func(q row) Cell { return num(q.Batches) }},
			{"looked", func(q row) Cell { return num(q.N) }},
		})
	for i := range 5 {
		columns = append(columns, column[row]{fmt.Sprintf("s%d", i+1), func(q row) Cell { return maybe(q.S[i]) }})
	}
	return table("quality", 5, withBatches(r.Plants.Quality, func(q row) int { return q.Batches }), append(columns, shareColumns("usable", func(q row) rate.Rate { return q.Rate })...)...)
}

// leeway is how many plants were still fit, by days past the planned date (rule "Leeway").
// An empty crop stands for all crops. days_late is the first day of its band, 0 for all
// looks up to the planned day. All seasons are taken together, as few batches ever wait.
func leeway(r *report.Report) File {
	type row = plants.Leeway
	return table("leeway", 3, r.Plants.Leeway, join(
		[]column[row]{
			{"crop", func(l row) Cell { return str(l.Crop) }},
			{"kind", func(l row) Cell { return str(l.Kind) }},
			{"days_late", func(l row) Cell { return num(l.DaysLate) }},
			{"batches", func(l row) Cell { return num(l.Batches) }},
			{"looked", func(l row) Cell { return num(l.N) }},
		},
		shareColumns("usable", func(l row) rate.Rate { return l.Rate }))...)
}

// usable is usable plants of cells sown (rule "Usable plants"). A group of which no batch
// was measured has no cells and no plants here, not 0. left_out are batches of the group
// of which no full number is known; they are told so that a rate of few batches is seen to
// rest on few.
func usable(r *report.Report) File {
	type row = plants.Usable
	share := func(u row) rate.Rate { return u.Rate }
	return table("usable", 5, r.Plants.Usable, join(
		groupColumns(func(u row) batch.Group { return u.Group }),
		[]column[row]{
			{"batches", func(u row) Cell { return num(u.Batches) }},
			{"left_out", func(u row) Cell { return num(u.LeftOut) }},
			{"cells_sown", func(u row) Cell { return maybe(only(u.Batches > 0, u.N)) }},
			{"usable", func(u row) Cell { return maybe(only(u.Batches > 0, u.X)) }},
		},
		shareColumns("rate", share),
		[]column[row]{
			{"rho", func(u row) Cell { return maybe(u.Rho) }},
			{"df", func(u row) Cell { return maybe(u.DF) }},
		})...)
}

// shareColumns are a rate with its interval. Both ends are empty where there is no
// interval, never 0 and 1: a share of unknown width is not one of full width.
func shareColumns[T any](name string, of func(T) rate.Rate) []column[T] {
	return []column[T]{
		{name, func(t T) Cell { return maybe(of(t).Share) }},
		{"low", func(t T) Cell { return maybe(of(t).Low) }},
		{"high", func(t T) Cell { return maybe(of(t).High) }},
	}
}
