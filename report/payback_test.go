package report

import (
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"traybook/records"
)

// trial is a book with a pair: HEAVY at 12 for years, THIN at 2 that lasts 2
// uses, 100 cells each, sown side by side on days of one season. HEAVY gives
// gain[i] more usable plants of 100 on date i.
type pairBook struct {
	gains                       []float64
	value, plug, wage, discount Num
	heavy, thin                 records.Purchase
}

func newPairBook(gains ...float64) pairBook {
	return pairBook{
		gains: gains, value: records.Known(0.10),
		heavy: records.Purchase{Tray: "HEAVY", Kind: "air-pruning", Cells: 100, Count: records.Known(2), Price: records.Known(12.0), Uses: records.Known(30.0)},
		thin:  records.Purchase{Tray: "THIN", Kind: "solid-wall", Cells: 100, Count: records.Known(2), Price: records.Known(2.0), Uses: records.Known(2.0)},
	}
}

func (pb pairBook) report(t testing.TB) *Report {
	t.Helper()
	book := &records.Book{Trays: []records.Purchase{pb.heavy, pb.thin}}
	book.Settings.TransplantValue, book.Settings.PlugPrice, book.Settings.Wage = pb.value, pb.plug, pb.wage
	book.Settings.DiscountRate = pb.discount.Or(0)
	var batches []*Batch
	for i, gain := range pb.gains {
		sown := records.NewDate(2025, 1, 1+10*i)
		for _, tray := range []string{"HEAVY", "THIN"} {
			b := newBatch(t, fmt.Sprint(tray, i), sown.String(), (sown + 9).String(), tray, 1, 100, 80)
			if tray == "HEAVY" {
				b.Usable = records.Known(80 + gain)
			}
			batches = append(batches, b)
		}
	}
	r := moneyOf(book, batches...)
	r.room()
	finite(t, reflect.ValueOf(r.Payback), "payback")
	finite(t, reflect.ValueOf([]any{r.Cost, r.Ledger, r.NextTray, r.Trial, r.Room, r.InUse, r.Matches}), "figures")
	return r
}

// finite fails on a number that is none, wherever it stands.
func finite(t testing.TB, v reflect.Value, path string) {
	t.Helper()
	switch v.Kind() {
	case reflect.Float64:
		if math.IsNaN(v.Float()) || math.IsInf(v.Float(), 0) {
			t.Errorf("%s is %v", path, v.Float())
		}
	case reflect.Struct:
		for i := range v.NumField() {
			finite(t, v.Field(i), path+"."+v.Type().Field(i).Name)
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			finite(t, v.Index(i), fmt.Sprintf("%s[%d]", path, i))
		}
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() {
			finite(t, v.Elem(), path)
		}
	}
}

// Checks C16 and C17 of the trade: spread evenly, a heavy tray of 12.00 against a
// thin one of 2.00 that lasts 2 uses is paid back in 12 uses, in 4 years at 3
// uses a year; 6 or 18 where the thin tray lasts 1 or 3. With 2 more usable plants a
// tray at 0.10 and 0.25 more of washing, a use gains 0.95: 12.63 uses.
func TestPaybackByHand(t *testing.T) {
	for thinUses, want := range map[float64]float64{2: 12, 1: 6, 3: 18} {
		pb := newPairBook(0, 0, 0, 0, 0, 0)
		pb.thin.Uses = records.Known(thinUses)
		known(t, "uses", pb.report(t).Payback[0].PaybackUses, want, 1e-9)
	}
	back := newPairBook(0, 0, 0, 0, 0, 0).report(t).Payback[0] // 6 sown in 2 trays: 3 uses a year
	known(t, "uses a season", back.UsesPerSeason, 3, 0)
	known(t, "seasons", back.PaybackSeasons, 4, 1e-9)

	pb := newPairBook(1, 2, 3, 2, 1, 3)
	pb.wage, pb.heavy.Minutes, pb.thin.Minutes = records.Known(15.0), records.Known(2.0), records.Known(1.0)
	back = pb.report(t).Payback[0]
	known(t, "gain: 1.00 + 0.20 - 0.25", back.Gain, 0.95, 1e-12)
	known(t, "uses", back.PaybackUses, 12/0.95, 1e-9)
	known(t, "the two parts", Num{Value: back.GainTray.Value + back.GainPlants.Value + back.GainMinutes.Value, Known: true}, back.Gain.Value, 1e-12)
	if back.MinutesLeftOut || back.Why != "" {
		t.Errorf("left out: %+v", back)
	}
}

// The mean of matched differences and its interval against R 4.2.2:
// t.test(c(.81, .82, .84, .80, .83, .82), rep(.8, 6), paired = TRUE)$conf.int is
// 0.00515873885221 to 0.03484126114779.
func TestMatchedDifference(t *testing.T) {
	r := newPairBook(1, 2, 4, 0, 3, 2).report(t)
	back := r.Payback[0]
	known(t, "difference", back.Difference, 0.02, 1e-12)
	known(t, "low", back.DifferenceLow, 0.00515873885221, 1e-12)
	known(t, "high", back.DifferenceHigh, 0.03484126114779, 1e-12)
	if back.Matches != 6 || back.Dates != 6 || len(r.Matches) != 6 || r.Matches[2].Number != 3 {
		t.Errorf("%+v", r.Matches)
	}
}

// What flips the answer, each alone, brings the price to gain x life (rule 32); at
// no discount the tray is then worth 0 today.
func TestFlipsBreakEven(t *testing.T) {
	base := newPairBook(1, 2, 4, 0, 3, 2)
	base.wage, base.heavy.Minutes, base.thin.Minutes = records.Known(15.0), records.Known(4.0), records.Known(1.0)
	base.thin.Uses = records.Known(8.0)
	back := base.report(t).Payback[0]
	flips := map[string]func(*pairBook){
		"value": func(pb *pairBook) { pb.value = back.FlipValue },
		"price": func(pb *pairBook) { pb.heavy.Price = back.FlipPrice },
		"life":  func(pb *pairBook) { pb.heavy.Uses = back.PaybackUses },
	}
	base.value = records.Known(1.0)
	back = base.report(t).Payback[0]
	for name, flip := range flips {
		pb := base
		flip(&pb)
		at := pb.report(t).Payback[0]
		near(t, name, at.Gain.Value*at.Life.Uses.Value, at.Price.Value, 1e-9)
		known(t, name+": worth today", at.WorthToday, 0, 1e-9)
	}
	// On one scale with the difference x cells (rule 32).
	even := base
	even.value = back.FlipValue
	known(t, "break-even plants", even.report(t).Payback[0].BreakEvenPlants, back.Difference.Value*100, 1e-9)
}

// Worth today at 5 %: gains of 1.2 x 3 uses a season over 12 seasons are worth what
// OpenFormula's PV(0.05;12;-3.6) gives, 3.6 x 8.863252 (ODF 1.2 part 2, 6.12.41).
func TestWorthToday(t *testing.T) {
	pb := newPairBook(2, 2, 2, 2, 2, 2)
	pb.discount, pb.heavy.Uses = records.Known(0.05), records.Known(36.0)
	known(t, "worth", pb.report(t).Payback[0].WorthToday, -12+3.6*8.863251636, 1e-6)
}

// The verdict by price <= gain x life at the low end, the middle and the high end.
func TestVerdicts(t *testing.T) {
	gains := []float64{1, 2, 4, 0, 3, 2} // gain a use 1.2, from 1.05 to 1.35
	for price, want := range map[float64]PaysVerdict{17: PaysLow, 19: PaysLow, 31: PaysLow, 35: PaysMiddle, 37: PaysHigh, 50: PaysNever} {
		pb := newPairBook(gains...)
		pb.heavy.Price = records.Known(price)
		back := pb.report(t).Payback[0]
		if back.Verdict != want {
			t.Errorf("price %v: %q, want %q", price, back.Verdict, want)
		}
		if half := back.HalfLifePays; !half.Known || half.Value != (price <= 18) {
			t.Errorf("price %v, half life: %v", price, half)
		}
	}
}

// The answer at plug_price values every match at it.
func TestPlugPrice(t *testing.T) {
	pb := newPairBook(2, 2, 2, 2)
	pb.plug = records.Known(0.5)
	at := pb.report(t).Payback[0].AtPlugPrice
	known(t, "gain 1 + 2 x 0.5", at.Gain, 2, 1e-12)
	known(t, "uses", at.PaybackUses, 6, 1e-12)
	if at.Verdict != PaysLow {
		t.Errorf("%q", at.Verdict)
	}
}

// Without transplant_value a plant is worth what a cell fewer to sow saves: seed,
// mix and sowing labour over usable plants (rule 30): (16 + 32 + 16) / 640.
func TestValueOfAPlant(t *testing.T) {
	pb := newPairBook(0, 0, 0, 0)
	pb.value = Num{}
	if back := pb.report(t).Payback[0]; back.Why != NoValue || back.Gain.Known || !back.Difference.Known {
		t.Errorf("no value: %+v", back)
	}
	a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 640)
	r := moneyOf(&records.Book{Costs: []records.Cost{row(t, "2025-03-01", records.Seed, 16), row(t, "2025-03-01", records.Mix, 32),
		row(t, "2025-03-01", records.Labour, 16, task(records.SowingTask)), row(t, "2025-03-01", records.Labour, 99),
		row(t, "2025-03-01", records.Labour, 5, task(records.SowingTask), forBatch("a")), row(t, "2025-03-01", records.Labour, -5, task(records.SowingTask), forCrop("leek"))}}, a)
	p := newPurse(r)
	p.costRows()
	known(t, "value", p.plantValues()["leek"], 0.1, 1e-12)
}

// Bad input of every kind: no figure where there can be none, the reason said, and
// never a number that is none.
func TestWhatCannotBeTold(t *testing.T) {
	six := []float64{1, 2, 3, 1, 2, 3}
	tests := []struct {
		name   string
		change func(*pairBook)
		why    Reason
	}{
		{"three matches", func(pb *pairBook) { pb.gains = six[:3] }, FewMatches},
		{"other's life unknown: never used enough to tell", func(pb *pairBook) {
			pb.thin.Uses, pb.thin.Lasts, pb.thin.Count = Num{}, records.Known(3.0), records.Maybe[int]{}
		}, NoOtherLife},
		{"life 0 stands for not written", func(pb *pairBook) { pb.thin.Uses = records.Known(0.0) }, ""},
		{"price 0", func(pb *pairBook) { pb.thin.Price = records.Known(0.0) }, ""},
		{"both at 0", func(pb *pairBook) { pb.thin.Price, pb.heavy.Price = records.Known(0.0), records.Known(0.0) }, ""},
		{"no life at all", func(pb *pairBook) { pb.heavy.Uses, pb.thin.Uses = Num{}, Num{} }, ""},
		{"no wage", func(pb *pairBook) { pb.heavy.Minutes, pb.thin.Minutes = records.Known(9.0), records.Known(1.0) }, ""},
		{"broken beyond those bought", func(pb *pairBook) { pb.heavy.Count = records.Known(-3) }, ""},
		{"more in use than owned", func(pb *pairBook) { pb.heavy.Count = records.Known(1) }, ""},
	}
	for _, tt := range tests {
		pb := newPairBook(six...)
		tt.change(&pb)
		back := pb.report(t).Payback[0]
		if back.Why != tt.why {
			t.Errorf("%s: why %q, want %q", tt.name, back.Why, tt.why)
		}
		if !back.MinutesLeftOut {
			t.Errorf("%s: minutes", tt.name)
		}
	}
	for name, change := range map[string]func(*pairBook){
		"one kind":     func(pb *pairBook) { pb.thin.Kind = pb.heavy.Kind },
		"blank price":  func(pb *pairBook) { pb.thin.Price = Num{} },
		"unlike cells": func(pb *pairBook) { pb.thin.Cells = 72 },
	} {
		pb := newPairBook(six...)
		change(&pb)
		if r := pb.report(t); len(r.Payback) != 0 {
			t.Errorf("%s: %+v", name, r.Payback)
		}
	}
	if r := newPairBook().report(t); r.Payback[0].Why != NoMatches || len(r.NextTray) != 0 {
		t.Errorf("nothing sown: %+v", r.Payback[0])
	}
}

// Matches of one day are one date (rules 29, 70): four on one date tell nothing.
func TestFewDates(t *testing.T) {
	var batches []*Batch
	for i, variety := range []string{"a", "b", "c", "d"} {
		for _, tray := range []string{"HEAVY", "THIN"} {
			b := newBatch(t, fmt.Sprint(tray, i), "2025-03-01", "2025-04-01", tray, 1, 100, 80)
			b.Variety = variety
			batches = append(batches, b)
		}
	}
	pb := newPairBook()
	r := moneyOf(&records.Book{Trays: []records.Purchase{pb.heavy, pb.thin}}, batches...)
	if back := r.Payback[0]; back.Why != FewDates || back.Matches != 4 || back.Dates != 1 || back.Difference.Known {
		t.Errorf("%+v", back)
	}
}

// A match takes what is sown up to seven days after its first sowing, of one crop,
// variety, lot and number of seeds a cell; batches whose usable is a guess are not in it.
func TestMatchesTakeSevenDays(t *testing.T) {
	pb := newPairBook()
	heavy := newBatch(t, "h1", "2025-03-01", "2025-04-01", "HEAVY", 1, 100, 80)
	thin := newBatch(t, "t1", "2025-03-08", "2025-04-01", "THIN", 1, 100, 70)
	late := newBatch(t, "h2", "2025-03-09", "2025-04-01", "HEAVY", 1, 100, 10)
	guess := newBatch(t, "t2", "2025-03-09", "2025-04-01", "THIN", 1, 100, 10)
	seeds := newBatch(t, "t3", "2025-03-01", "2025-04-01", "THIN", 1, 100, 10)
	lot := newBatch(t, "t4", "2025-03-01", "2025-04-01", "THIN", 1, 100, 10)
	guess.UsableHow, seeds.SeedsPerCell, lot.Lot = Estimated, 2, "L9"
	r := moneyOf(&records.Book{Trays: []records.Purchase{pb.heavy, pb.thin}}, heavy, thin, late, guess, seeds, lot)
	if len(r.Matches) != 1 || fmt.Sprint(r.Matches[0].Batches) != "[h1 t1]" {
		t.Fatalf("%+v", r.Matches)
	}
	near(t, "difference", r.Matches[0].Difference, 0.1, 1e-12)
}

// Equal prices: the later code by bytes is the tray.
func TestDearerOfEqualPrices(t *testing.T) {
	pb := newPairBook()
	pb.heavy.Price = pb.thin.Price
	if back := pb.report(t).Payback[0]; back.Tray != "THIN" || back.Other != "HEAVY" {
		t.Errorf("%s against %s", back.Tray, back.Other)
	}
}

// A tray against its twin: no true difference, a price equal to gain x life when
// plants gained are 0. By symmetry it pays in the middle or better in half of the books,
// and even at the low end in one of forty (half of 1 - confidence).
func TestTwinPaysAtTheRightRate(t *testing.T) {
	random := rand.New(rand.NewPCG(7, 28))
	const books = 1000
	middle, low := 0, 0
	for range books {
		pb := newPairBook()
		pb.heavy.Price, pb.heavy.Uses = records.Known(3.0), records.Known(3.0)
		for range 8 {
			pb.gains = append(pb.gains, math.Round(random.NormFloat64()*4-random.NormFloat64()*4))
		}
		switch pb.report(t).Payback[0].Verdict {
		case PaysLow:
			low++
			middle++
		case PaysMiddle:
			middle++
		}
	}
	t.Logf("a twin pays in the middle in %.3f of books, even at the low end in %.3f", float64(middle)/books, float64(low)/books)
	near(t, "in the middle", float64(middle)/books, TwinPaysMiddle, 0.04)
	near(t, "even at the low end", float64(low)/books, TwinPaysLow, 0.012)
}

// Whatever is written in trays.csv and book.csv, no figure is NaN or infinite, ends are in
// order, and the money balances.
func TestAnyPairIsFinite(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		num := func(name string) Num {
			if rapid.Bool().Draw(rt, name+" blank") {
				return Num{}
			}
			return records.Known(rapid.SampledFrom([]float64{0, 0.25, 1, 2.5, 7, 1000}).Draw(rt, name))
		}
		count := func(name string) records.Maybe[int] {
			return records.Maybe[int]{Value: rapid.IntRange(-3, 9).Draw(rt, name), Known: rapid.Bool().Draw(rt, name+" known")}
		}
		pb := newPairBook()
		for range rapid.IntRange(0, 7).Draw(rt, "dates") {
			pb.gains = append(pb.gains, float64(rapid.IntRange(-20, 20).Draw(rt, "gain")))
		}
		pb.value, pb.plug, pb.wage, pb.discount = num("value"), num("plug"), num("wage"), Num{Value: rapid.SampledFrom([]float64{0, 0.05, 10}).Draw(rt, "i")}
		for _, p := range []*records.Purchase{&pb.heavy, &pb.thin} {
			p.Price, p.Lasts, p.Uses, p.Minutes, p.Count = num("price"), num("lasts"), num("uses"), num("minutes"), count("count")
		}
		r := pb.report(t)
		balanced(t, r)
		for _, back := range r.Payback {
			if back.GainLow.Known && !(back.GainLow.Value <= back.Gain.Value && back.Gain.Value <= back.GainHigh.Value) {
				rt.Fatalf("gain out of order: %+v", back)
			}
			if (back.Why == "") != (back.Verdict != "") {
				rt.Fatalf("a verdict and why there is none: %+v", back)
			}
			if buy := back.Buy; buy != nil && !(0 <= buy.Low && buy.Low <= buy.N && buy.N <= buy.High) {
				rt.Fatalf("buy out of order: %+v", buy)
			}
		}
	})
}

// One match with a value: a middle without a range, so no verdict. A tray whose own life
// cannot be told has a gain and no verdict (rules 48, 65).
func TestGainWithoutAVerdict(t *testing.T) {
	pb := newPairBook(1, 2, 3, 1)
	pb.value = Num{}
	r := pb.report(t)
	r.Book.Costs = []records.Cost{row(t, "2025-01-02", records.Mix, 8, forBatch("HEAVY0"))}
	for _, b := range r.Batches {
		if b.Code[len(b.Code)-1] != '0' {
			b.Crop, b.FromSeed = "chard", false
		}
	}
	back := moneyOf(r.Book, r.Batches...).Payback[0]
	if back.Why != FewValues || back.Valued != 1 || !back.Gain.Known || back.GainLow.Known || back.Verdict != "" || back.Buy != nil {
		t.Errorf("one value: %+v", back)
	}
	pb = newPairBook(1, 2, 3, 1)
	pb.heavy.Uses, pb.heavy.Lasts, pb.heavy.Count = Num{}, records.Known(3.0), records.Maybe[int]{}
	if back := pb.report(t).Payback[0]; back.Why != NoLife || !back.Gain.Known || back.Verdict != "" || back.WorthToday.Known {
		t.Errorf("no life: %+v", back)
	}
}
