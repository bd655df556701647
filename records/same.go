package records

import (
	"reflect"
	"slices"
)

// Same reports whether a log, of the name that it has in Logs, tells the same in another
// book, row by row and in the same places. The places of codes and of words, which rows hold
// instead of them, are a book's own: a name that is new in trays.csv moves those of all
// batches.
func (b *Book) Same(other *Book, log string) bool { return sameLog[log](b, other) }

var sameLog = map[string]func(a, b *Book) bool{
	"book.csv":    func(a, b *Book) bool { return reflect.DeepEqual(a.Settings, b.Settings) },
	"trays.csv":   func(a, b *Book) bool { return slices.Equal(a.Trays, b.Trays) },
	"lots.csv":    func(a, b *Book) bool { return slices.Equal(a.Lots, b.Lots) },
	"sowings.csv": func(a, b *Book) bool { return slices.EqualFunc(a.Sowings, b.Sowings, sowingSame) },
	"out.csv":     func(a, b *Book) bool { return slices.EqualFunc(a.Outs, b.Outs, outSame) },
	"counts.csv":  countsSame,
	"scores.csv":  func(a, b *Book) bool { return slices.EqualFunc(a.Scores, b.Scores, scoreSame) },
	"costs.csv":   func(a, b *Book) bool { return slices.Equal(a.Costs, b.Costs) },
	"chamber.csv": func(a, b *Book) bool { return slices.Equal(a.Chamber, b.Chamber) },
	"house.csv":   func(a, b *Book) bool { return slices.Equal(a.House, b.House) },
	"wishes.csv":  func(a, b *Book) bool { return slices.Equal(a.Wishes, b.Wishes) },
	"changes.csv": func(a, b *Book) bool { return slices.Equal(a.Changes, b.Changes) },
}

func sowingSame(x, y Sowing) bool {
	x.ref, y.ref = 0, 0
	return x == y
}

func outSame(x, y Out) bool {
	x.ref, y.ref = 0, 0
	return x == y
}

func scoreSame(x, y Score) bool {
	x.ref, y.ref = 0, 0
	return x == y
}

// countsSame compares what counts name and say, as these are told apart by their books.
func countsSame(a, b *Book) bool {
	return slices.EqualFunc(a.Counts, b.Counts, func(x, y Count) bool {
		if a.Code(x.Batch) != b.Code(y.Batch) || a.Said(&x) != b.Said(&y) {
			return false
		}
		x.Batch, y.Batch, x.said, y.said = 0, 0, 0, 0
		return x == y
	})
}
