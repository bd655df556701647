package report

import (
	"os"
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/plants"
	"traybook/report/sowing"
)

// asOf is what a book held at the end of a day: nothing of the days after it.
func asOf(book *records.Book, day records.Date) *records.Book {
	copied := *book // with the codes that counts name
	then := &copied
	then.Sowings, then.Costs, then.Chamber, then.House, then.Wishes, then.Changes, then.Notes, then.Files = nil, nil, nil, nil, nil, nil, nil, nil
	for _, s := range book.Sowings {
		if s.Sown > day {
			continue
		}
		if s.ChamberOut > day {
			s.ChamberOut = 0
		}
		if s.SetOut > day {
			s.SetOut, s.PlantsOut, s.Surplus = 0, records.Maybe[int]{}, records.Maybe[int]{}
		}
		then.Sowings = append(then.Sowings, s)
	}
	then.Counts = batch.Filter(book.Counts, func(c records.Count) bool { return c.Date <= day })
	then.Scores = batch.Filter(book.Scores, func(s records.Score) bool { return s.Date <= day })
	then.Outs = batch.Filter(book.Outs, func(o records.Out) bool { return o.Date <= day })
	return then
}

// weekAsOf is the week as it would have been told on a day; it needs no money.
func weekAsOf(book *records.Book, day records.Date) *Report {
	then := asOf(book, day)
	sown := batch.Sowings(then)
	counts, seen := germination.Count(sown, then), plants.Read(sown, then)
	b := batch.New(then, sown, plants.Traces(sown, counts, seen), day)
	g := germination.New(b, counts, then)
	p := plants.New(b, g, seen)
	var all []*Record
	for _, one := range p.Plants {
		all = append(all, &Record{Plants: one})
	}
	return &Report{Week: weekOf(b, all, g, p, sowing.New(b, p, nil))}
}

// told is what the week said of batches, each the first time, and how it turned out.
type told struct{ said, right int }

func (t told) precision() float64 { return float64(t.right) / float64(t.said) }

// tally asks, of every batch that was told for the first time, whether it was rightly.
func (t *told) tally(lines []WeekLine, before map[string]bool, right func(code string, l WeekLine) (yes, known bool)) {
	for _, l := range lines {
		if before[l.Subject] {
			continue
		}
		before[l.Subject] = true
		if yes, known := right(l.Subject, l); known {
			t.said++
			if yes {
				t.right++
			}
		}
	}
}

// The example's seasons before the last, Monday by Monday, each as the book stood on that
// day: of the batches called short, by their count or as sown too few, more than seven in
// ten gave fewer than wanted; of those called late as many had indeed not left. And more
// than half of those that fell short had been named.
func TestShortInEarlierSeasons(t *testing.T) {
	if testing.Short() {
		t.Skip("every week of three seasons")
	}
	book, _ := records.Load(os.DirFS("../examples/ottermoss"))
	end, err := New(book, nil, Options{})
	if err != nil {
		t.Fatal(err)
	}
	seasons := end.Batches.Seasons
	first, _ := book.Settings.SeasonDays(seasons[0])
	last, _ := book.Settings.SeasonDays(seasons[len(seasons)-1])
	outcome := func(code string) (short, known bool) {
		b := end.Record(code)
		return b.Usable.Value < float64(b.Wanted.Value), b.Measured() && b.Wanted.Known
	}
	var short, few, late told
	named, lateNamed := map[string]bool{}, map[string]bool{}
	for day := nextMonday(first); day < last; day += 7 {
		r := weekAsOf(book, day)
		is := func(tooFew bool) []WeekLine {
			return batch.Filter(r.Lines(Short), func(l WeekLine) bool { return l.TooFewSown == tooFew })
		}
		right := func(code string, _ WeekLine) (bool, bool) { return outcome(code) }
		few.tally(is(true), named, right)
		short.tally(is(false), named, right)
		late.tally(r.Lines(Late), lateNamed, func(code string, _ WeekLine) (bool, bool) {
			return end.Record(code).EndHow == batch.Written && end.Record(code).End > day, true
		})
	}
	fell, missed := 0, []string{}
	for _, b := range end.Records {
		if is, known := outcome(b.Code); is && known && b.Season < seasons[len(seasons)-1] && b.FromSeed {
			if fell++; !named[b.Code] {
				missed = append(missed, b.Code)
			}
		}
	}
	t.Logf("by count %+v (%.2f), sown too few %+v (%.2f), late %+v (%.2f); %d fell short, %d of them unnamed", short, short.precision(), few, few.precision(), late, late.precision(), fell, len(missed))
	slices.Sort(missed)
	both := told{short.said + few.said, short.right + few.right}
	if both.said < 10 || both.precision() <= 0.7 || late.precision() <= 0.7 || 2*len(missed) > fell {
		t.Errorf("precision %.2f of %d; late %.2f of %d; missed %v", both.precision(), both.said, late.precision(), late.said, missed)
	}
}
