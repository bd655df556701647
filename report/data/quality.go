package data

import (
	"fmt"

	"traybook/report"
)

func quality(r *report.Report) File {
	type row = report.Quality
	columns := join(groupColumns(func(q row) report.Group { return q.Group }),
		[]column[row]{
			{"batches", func(q row) Cell { return num(q.Batches) }},
			{"looked", func(q row) Cell { return num(q.N) }},
		})
	for i := range 5 {
		columns = append(columns, column[row]{fmt.Sprintf("s%d", i+1), func(q row) Cell { return maybe(q.S[i]) }})
	}
	return table("quality", 5, withBatches(r.Quality, func(q row) int { return q.Batches }), append(columns, shareColumns("usable", func(q row) report.Rate { return q.Rate })...)...)
}

func leeway(r *report.Report) File {
	type row = report.Leeway
	return table("leeway", 3, r.Leeway, join(
		[]column[row]{
			{"crop", func(l row) Cell { return str(l.Crop) }},
			{"kind", func(l row) Cell { return str(l.Kind) }},
			{"days_late", func(l row) Cell { return num(l.DaysLate) }},
			{"batches", func(l row) Cell { return num(l.Batches) }},
			{"looked", func(l row) Cell { return num(l.N) }},
		},
		shareColumns("usable", func(l row) report.Rate { return l.Rate }))...)
}

func usable(r *report.Report) File {
	type row = report.Usable
	share := func(u row) report.Rate { return u.Rate }
	return table("usable", 5, r.Usable, join(
		groupColumns(func(u row) report.Group { return u.Group }),
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

// shareColumns are a rate with its interval.
func shareColumns[T any](name string, of func(T) report.Rate) []column[T] {
	return []column[T]{
		{name, func(t T) Cell { return maybe(of(t).Share) }},
		{"low", func(t T) Cell { return maybe(of(t).Low) }},
		{"high", func(t T) Cell { return maybe(of(t).High) }},
	}
}
