package trays

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// anyAnswer draws a book with an answer: six dates, more trays sown on some than on
// others, and whatever price, wage, life, value and interest one may write.
func anyAnswer(rt *rapid.T) pairBook {
	one := func(name string, of ...float64) Num { return records.Known(rapid.SampledFrom(of).Draw(rt, name)) }
	pb := newPairBook()
	for range 6 {
		pb.gains = append(pb.gains, float64(rapid.IntRange(-4, 12).Draw(rt, "gain")))
	}
	pb.value, pb.wage = one("value", 0.05, 0.1, 0.4), one("wage", 0, 15, 40)
	pb.plug = one("plug", 0.2, 0.6)
	pb.discount = one("interest", 0, 0.05, 0.5)
	pb.heavy.Price, pb.thin.Price = one("price", 4, 9, 12.5, 20, 40), one("other's price", 0.5, 1, 3)
	pb.heavy.Uses, pb.thin.Uses = one("uses", 8, 30, 70), one("other's uses", 1, 2, 3.5)
	pb.heavy.Lasts, pb.thin.Lasts = one("lasts", 3, 10, 90), one("other's lasts", 1, 8)
	pb.heavy.Minutes, pb.thin.Minutes = one("minutes", 1, 2, 4), one("other's minutes", 1, 1.5)
	pb.heavy.Count, pb.thin.Count = records.Known(rapid.IntRange(0, 3).Draw(rt, "owned")), records.Known(rapid.IntRange(6, 40).Draw(rt, "other's count"))
	return pb
}

// withMore makes the further trays be used less and less: HEAVY stands in more trays on
// some dates, of a crop of its own.
func (pb pairBook) withMore(t testing.TB, more []int) *booktest.Book {
	b := pb.book(t)
	for i, trays := range more {
		if trays > 0 {
			sow(b, "more"+string(rune('a'+i)), records.NewDate(2025, 1, 1+10*i).String(), "HEAVY", float64(trays), 40*float64(trays)).Crop = "mibuna"
		}
	}
	return b
}

// answer is the decision and the "if" of the one pair.
func answer(t testing.TB, pb pairBook, more []int) (*Buy, told) {
	f := tell(pb.withMore(t, more).Book())
	return f.Decisions[0].Buy, f
}

// Under whatever is written into the book the number to buy, the table of "if", the
// marks of the next trays and the prices at which it turns agree with each other.
func TestAnswersAgree(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		pb := anyAnswer(rt)
		more := rapid.SliceOfN(rapid.IntRange(0, 4), 6, 6).Draw(rt, "more")
		buy, f := answer(t, pb, more)
		booktest.Finite(t, f.Figures, "trays")
		row, ok := f.If("HEAVY", "THIN", 1, Figured)
		if !ok || row.N != buy.N || row.Low < buy.Low || row.High > buy.High {
			rt.Fatalf("if %+v, decision %+v", row, buy)
		}
		price, other := pb.heavy.Price.Value, pb.thin.Price.Value
		if turns := buy.First.Price.Or(other); len(f.NextTray) > 0 && (buy.N > 0) != (price < turns-1e-9) {
			rt.Fatalf("at %v buy %d, none from %v", price, buy.N, turns)
		}
		if turns := buy.Last.Price.Or(buy.First.Price.Value); buy.N > 0 && !(price < turns && turns <= buy.First.Price.Value) {
			rt.Fatalf("at %v buy %d, fewer from %v", price, buy.N, turns)
		}
		marked := 0
		for _, n := range f.NextTray {
			if n.Pays.Value {
				marked++
			}
			if n.Pays.Value != (n.WorthToday.Value > 0) {
				rt.Fatalf("%+v is worth its price, or not", n)
			}
		}
		if marked != buy.N || buy.Outlay != float64(buy.N)*price || buy.N > 0 && !(buy.Worth > 0 && buy.WorthLow <= buy.Worth && buy.Worth <= buy.WorthHigh) {
			rt.Fatalf("%d marked of %+v", marked, buy)
		}
	})
}

// At each flip the book, written so, turns: 2 % on one side of it some are bought, 2 % on
// the other none, or of the last counted fewer; and at the flip itself the tray is worth
// just its price.
func TestFlipsTurnTheBook(t *testing.T) {
	turned := map[string]int{}
	rapid.Check(t, func(rt *rapid.T) {
		pb := anyAnswer(rt)
		pb.heavy.Lasts, pb.thin.Lasts = records.Known(1e6), records.Known(1e6) // uses alone end a life
		more := rapid.SliceOfN(rapid.IntRange(0, 4), 6, 6).Draw(rt, "more")
		buy, f := answer(t, pb, more)
		if len(f.NextTray) == 0 {
			rt.Skip("no further tray was ever used")
		}
		stood := eachBought(f.Payback[0].OtherLife.Shown).Value
		for _, flip := range flipsOf(buy, stood) {
			write := func(x float64) (*Buy, told) {
				then := pb
				flip.write(&then, x)
				return answer(t, then, more)
			}
			low, _ := write(flip.at * 0.98)
			high, _ := write(flip.at * 1.02)
			if (low.N >= flip.n) == (high.N >= flip.n) {
				rt.Fatalf("%s %v: %d of %d bought below, %d above", flip.name, flip.at, low.N, flip.n, high.N)
			}
			_, at := write(flip.at)
			if worth := at.NextTray[flip.n-1].WorthToday; math.Abs(worth.Value) > 1e-8 {
				rt.Fatalf("%s %v: worth %v", flip.name, flip.at, worth.Value)
			}
			turned[flip.name]++
		}
	})
	enough := 10 // of 100 books drawn
	if testing.Short() {
		enough = 1
	}
	for _, name := range []string{"price", "value", "life", "other's life"} {
		if turned[name] < enough {
			t.Errorf("%s turned %d books", name, turned[name])
		}
	}
}

// flip is one thing that can be written into the book, the value at which it turns, and
// the further tray that is then worth just its price.
type flip struct {
	name  string
	at    float64
	n     int
	write func(*pairBook, float64)
}

// flipsOf lists what turns, of the first and the last tray. Lives below those that a
// book may show are left out: there the law of lives holds them.
func flipsOf(buy *Buy, stood float64) []flip {
	var list []flip
	for n, f := range map[int]Flips{1: buy.First, max(buy.N, 2): buy.Last} {
		add := func(name string, at Num, least float64, write func(*pairBook, float64)) {
			if at.Known && at.Value*0.98 > least {
				list = append(list, flip{name, at.Value, n, write})
			}
		}
		add("price", f.Price, 3, func(pb *pairBook, x float64) { pb.heavy.Price = records.Known(x) })
		add("value", f.Value, 0, func(pb *pairBook, x float64) { pb.value = records.Known(x) })
		add("life", f.Life, 1, func(pb *pairBook, x float64) { pb.heavy.Uses = records.Known(x) })
		add("other's life", f.OtherLife, max(1, stood), func(pb *pairBook, x float64) { pb.thin.Uses = records.Known(x) })
	}
	return list
}
