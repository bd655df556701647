package records

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
)

// raw is a cell as written; empty where the file has no such column.
func (r row) raw(col string) string {
	i := r.index(col)
	if i < 0 {
		return ""
	}
	return r.asWritten(col, r.field(i))
}

// text is a cell without surrounding space.
func (r row) text(col string) string { return strings.TrimSpace(r.raw(col)) }

// pos is where the row's first cell stands.
func (r row) pos() Pos { return r.place(0) }

// inWords says in which line the row stands.
func (r row) inWords() string { return r.line().pos().inWords() }

// line is where the row begins.
func (r row) line() inLog { return inLog{r.log, r.spot().Line} }

// cell is where a column of the row stands; the row's first cell where the file has no
// such column.
func (r row) cell(col string) Pos {
	if i := r.index(col); i >= 0 {
		return r.place(i)
	}
	return r.pos()
}

// problem reports a finding at a cell. Unless its check only warns, the row is
// left out.
func (r row) problem(check, col, found, expected, remedy string) {
	if r.enough(check) {
		if r.severities[check] > Warning {
			r.leaveOut()
		}
		return
	}
	if r.report(check, r.cell(col), found, expected, remedy) > Warning {
		r.leaveOut()
	}
}

// cellOf is a cell by its column's place, -1 for the row's first where there is none.
type cellOf struct {
	row
	column int
}

// doubt warns of a cell that may be mistyped, once: several checks may find the same.
func (r row) doubt(check, col, found, expected, remedy string) {
	at := cellOf{r, r.index(col)}
	if !r.doubted[at] {
		r.doubted[at] = true
		r.problem(check, col, found, expected, remedy)
	}
}

// misread reports a cell that is not what its column holds.
func (r row) misread(check, col, expected, remedy string) {
	r.problem(check, col, "read "+quote(r.text(col)), expected, remedy)
}

// The most that a cell can mean: more is a slip of the keys.
const (
	mostCount  = 10_000_000 // of plants, cells, seeds
	mostMoney  = 10_000_000
	mostTrays  = 10_000 // of one batch
	mostPlaces = 20     // of one tray
)

// whole reads a whole number of at least so much.
func (r row) whole(col string, least int) Maybe[int] {
	s := r.text(col)
	if s == "" {
		return Maybe[int]{}
	}
	n, ok := parseWhole(s, r.decimal)
	if !ok {
		r.misread("whole-number", col, "a whole number such as 60 is expected", wholeRemedy(s))
		return Maybe[int]{}
	}
	if n < least {
		r.misread("out-of-range", col, "a whole number of "+strconv.Itoa(least)+" or more is expected", "")
		return Maybe[int]{}
	}
	if n > mostCount {
		r.misread("out-of-range", col, "a whole number of at most "+plain(mostCount)+" is expected", "")
		return Maybe[int]{}
	}
	return Known(n)
}

// short is whole for a log of very many rows.
func (r row) short(col string, least int) Maybe[int32] {
	n := r.whole(col, least)
	return Maybe[int32]{int32(n.Value), n.Known} // mostCount is far below what it holds
}

// number reads a number of at least so much.
func (r row) number(col string, least float64) Maybe[float64] {
	return r.measure(col, numberCell, func(x float64) string {
		if x < least {
			return "a number of " + plain(least) + " or more is expected"
		}
		return ""
	})
}

// above reads a number above 0.
func (r row) above(col string) Maybe[float64] {
	return r.measure(col, numberCell, func(x float64) string {
		if x <= 0 {
			return "a number above 0 is expected"
		}
		return ""
	})
}

// upTo reads a number above 0 that only a slip of the keys can put above most.
func (r row) upTo(col string, most float64) Maybe[float64] {
	return r.measure(col, numberCell, func(x float64) string {
		if x <= 0 || x > most {
			return "a number above 0, at most " + plain(most) + ", is expected"
		}
		return ""
	})
}

// places reads the bench places of one tray.
func (r row) places() Maybe[float64] {
	return r.measure("places", numberCell, func(x float64) string {
		if x < 0 || x > mostPlaces {
			return "a number from 0 to " + plain(mostPlaces) + " is expected"
		}
		return ""
	})
}

// money reads an amount of at least 0; credit reads one of either sign.
func (r row) money(col string) Maybe[float64] {
	return r.measure(col, moneyCell, func(x float64) string {
		if x < 0 {
			return "an amount of 0 or more is expected"
		}
		return tooMuch(x)
	})
}

// credit reads an amount of either sign: a bill that was paid back is negative.
func (r row) credit(col string) Maybe[float64] { return r.measure(col, moneyCell, tooMuch) }

// tooMuch says what is expected in place of more money than a farm has.
func tooMuch(x float64) string {
	if math.Abs(x) > mostMoney {
		return "an amount of at most " + plain(mostMoney) + " is expected"
	}
	return ""
}

// share reads percent and returns a share of 1.
func (r row) share(col string) Maybe[float64] {
	p := r.measure(col, percentCell, func(x float64) string {
		if x < 0 || x > 100 {
			return "a percentage from 0 to 100 is expected"
		}
		if x > 0 && x < 1 { // 0.95 is not nearly nothing, it is 95 % written as a share
			return "a percentage such as 95 is expected, not a share such as 0.95"
		}
		return ""
	})
	p.Value /= 100
	return p
}

// degrees reads a temperature and returns degrees Celsius.
func (r row) degrees(col string) Maybe[float64] {
	scale, other, low, high := "C", "f", -40.0, 60.0
	if r.settings.Fahrenheit {
		scale, other, low, high = "F", "c", -40, 140
	}
	if strings.HasSuffix(strings.ToLower(r.text(col)), other) {
		r.misread("out-of-range", col, "degrees "+scale+" are expected, as book.csv says", "convert it, or mend the setting temperature")
		return Maybe[float64]{}
	}
	t := r.measure(col, degreesCell, func(x float64) string {
		if x < low || x > high {
			return fmt.Sprintf("a temperature from %g to %g %s is expected", low, high, scale)
		}
		return ""
	})
	if t.Known && r.settings.Fahrenheit {
		t.Value = (t.Value - 32) * 5 / 9
	}
	return t
}

// measure reads a number with the sign or unit its column may carry; wrong says
// what would be right instead of a number out of range.
func (r row) measure(col string, kind numberKind, wrong func(float64) string) Maybe[float64] {
	s := r.text(col)
	if s == "" {
		return Maybe[float64]{}
	}
	x, ok := parseNumber(kind.strip(r.withoutCode(kind, s)), r.decimal)
	if !ok {
		r.misread("number", col, kind.expected(r.decimal), r.settings.remedy(kind, s, r.decimal))
		return Maybe[float64]{}
	}
	if expected := wrong(x); expected != "" {
		r.misread("out-of-range", col, expected, "")
		return Maybe[float64]{}
	}
	return Known(x)
}

// withoutCode takes the book's own currency code from either end of an amount.
func (r row) withoutCode(kind numberKind, s string) string {
	if code := r.settings.Currency; kind.example == moneyCell.example && code != "" {
		return strings.TrimSpace(strings.TrimSuffix(strings.TrimPrefix(s, code), code))
	}
	return s
}

var yesNo = map[string]bool{"yes": true, "y": true, "true": true, "x": true, "1": true,
	"no": false, "n": false, "false": false, "0": false}

// yes reads yes or no.
func (r row) yes(col string) Maybe[bool] {
	s := r.text(col)
	if s == "" {
		return Maybe[bool]{}
	}
	v, ok := yesNo[strings.ToLower(s)]
	if !ok {
		r.misread("yes-no", col, "yes or no is expected", "")
		return Maybe[bool]{}
	}
	return Known(v)
}

// oneOf reads a word of a list, empty for a blank.
func (r row) oneOf(col string, words ...string) string {
	s := strings.ToLower(r.text(col))
	if s == "" || slices.Contains(words, s) {
		return s
	}
	if joined := strings.ReplaceAll(s, " ", "-"); slices.Contains(words, joined) {
		return joined
	}
	r.misread("word", col, "one of "+strings.Join(words, ", ")+" is expected", wordRemedy(r.Name, col, s, words))
	return ""
}

// name reads a name of a kind in the one spelling in which it is shown.
func (r row) name(kind, col string) string { return r.nameIn(kind, "", col) }

// nameIn reads a name that is compared only with others of the same owner, as
// varieties are within a crop.
func (r row) nameIn(kind, owner, col string) string {
	return r.names.shownAt(r.spelt(kind, owner, col))
}

// batchCode reads the code of the batch, and its place in the book.
func (r row) batchCode() (string, Ref) {
	i := r.spelt("batch", "", "batch")
	return r.names.shownAt(i), Ref(i + 1)
}

// spelt is the place of a name's spelling, -1 for a blank.
func (r row) spelt(kind, owner, col string) int32 {
	written := r.raw(col)
	if written == "" {
		return -1
	}
	w := r.names.asWritten(kind, owner, written)
	if i, ok := r.names.place(w); ok {
		return i
	}
	return r.canonical(w, kind, r.line(), func() Pos { return r.cell(col) })
}
