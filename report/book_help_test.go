package report

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"traybook/records"
)

// book is a record book written in Go: each method adds a row and returns the
// row's place so that a test can change it.
type book struct {
	testing.TB
	records.Book
}

// newBook holds two tray codes of 100 cells, AIR and WALL, and the default settings.
func newBook(t testing.TB) *book {
	b := &book{TB: t}
	b.Settings = records.Settings{SeasonStarts: 1, UsableFrom: 3, Confidence: 0.95, SureOfTarget: 0.9, HeatingFrom: 10, HeatingUntil: 4, TrayTurnaround: 3}
	b.tray("AIR", "air-pruning", 100)
	b.tray("WALL", "solid-wall", 100)
	return b
}

func (b *book) tray(code, kind string, cells int) *records.Purchase {
	b.Trays = append(b.Trays, records.Purchase{Tray: code, Kind: kind, Cells: cells})
	return &b.Trays[len(b.Trays)-1]
}

func (b *book) sow(code, sown, crop, variety, tray string, trays float64) *records.Sowing {
	b.Sowings = append(b.Sowings, records.Sowing{Code: code, Sown: day(b, sown), Crop: crop, Variety: variety, Tray: tray, Trays: trays,
		SeedsPerCell: 1, Start: records.FromSeed})
	return &b.Sowings[len(b.Sowings)-1]
}

// leave sets out a batch just added, with plants out and surplus.
func (b *book) leave(s *records.Sowing, date string, out, surplus int) {
	s.SetOut, s.PlantsOut, s.Surplus = day(b, date), records.Known(out), records.Known(surplus)
}

func (b *book) count(batch, date string, emerged int) *records.Count {
	b.Counts = append(b.Counts, records.Count{Batch: batch, Date: day(b, date), Emerged: records.Known(emerged)})
	return &b.Counts[len(b.Counts)-1]
}

func (b *book) countTray(batch, date string, tray, emerged int) *records.Count {
	c := b.count(batch, date, emerged)
	c.Tray = records.Known(tray)
	return c
}

func (b *book) look(batch, date string, looked, usable int) *records.Score {
	b.Scores = append(b.Scores, records.Score{Batch: batch, Date: day(b, date), Looked: records.Known(looked), Usable: records.Known(usable)})
	return &b.Scores[len(b.Scores)-1]
}

func (b *book) out(batch, date string, plants int, to records.Destination, last bool) {
	b.Outs = append(b.Outs, records.Out{Batch: batch, Date: day(b, date), Plants: plants, To: to, Last: last})
}

func (b *book) lot(code, crop string, label float64) *records.Lot {
	b.Lots = append(b.Lots, records.Lot{Code: code, Crop: crop, GermLabel: records.Known(label)})
	return &b.Lots[len(b.Lots)-1]
}

// report computes the figures as of the last date, or of a day given.
func (b *book) report(today ...string) *Report {
	b.Helper()
	o := Options{}
	for _, d := range today {
		o.Today = day(b, d)
	}
	r, err := New(&b.Book, nil, o)
	if err != nil {
		b.Fatal(err)
	}
	return r
}

// missing fails where a figure is known that must not be.
func missing(t *testing.T, what string, got Num) {
	t.Helper()
	if got.Known {
		t.Errorf("%s: got %v, want none", what, got.Value)
	}
}

// find returns the one row that is asked for.
func find[T any](t *testing.T, what string, rows []T, is func(T) bool) T {
	t.Helper()
	var found []T
	for _, row := range rows {
		if is(row) {
			found = append(found, row)
		}
	}
	if len(found) != 1 {
		t.Fatalf("%s: %d rows, want 1", what, len(found))
	}
	return found[0]
}

// randomFarm is a book by chance, the same for a seed: so many seasons of so many
// batches in crops that no trade table knows, with everything a log can hold.
func randomFarm(t testing.TB, seed uint64, seasons, batches int) *book {
	rng := rand.New(rand.NewPCG(seed, 1))
	b := newBook(t)
	b.Settings.Wage, b.Settings.BenchPlaces, b.Settings.ChamberPlaces = records.Known(20.0), records.Known(60.0), records.Known(16.0)
	b.Trays[0].Price, b.Trays[0].Count, b.Trays[0].Lasts = records.Known(12.0), records.Known(40), records.Known(10.0)
	b.Trays[1].Price, b.Trays[1].Count, b.Trays[1].Lasts = records.Known(1.5), records.Known(40), records.Known(2.0)
	crops := []string{"agretti", "mibuna", "orache"}
	for i := range 2 * len(crops) {
		l := b.lot(fmt.Sprint("L", i), crops[i%3], 0.85+0.02*float64(i))
		l.Price, l.Seeds = records.Known(10.0), records.Known(5000.0)
	}
	for s := range seasons {
		first := records.NewDate(2020+s, 2, 1)
		for i := range batches {
			b.randomBatch(rng, fmt.Sprintf("%d-%05d", s, i), crops[rng.IntN(3)], first+records.Date(i*200/batches))
		}
		for d := range records.Date(240) {
			b.House = append(b.House, records.HouseReading{Date: first + d, Low: records.Known(8.0), High: records.Known(8 + 20*rng.Float64())})
			b.Chamber = append(b.Chamber, records.ChamberReading{Date: first + d, Chamber: "box", Temp: 18 + 8*rng.Float64()})
			if d%20 == 0 {
				for _, c := range records.Categories {
					b.Costs = append(b.Costs, row(t, (first+d).String(), c, 20+10*rng.Float64()))
				}
			}
		}
	}
	return b
}

// randomBatch sows, counts, looks and sets out, now and then leaving something out.
func (b *book) randomBatch(rng *rand.Rand, code, crop string, sown records.Date) {
	variety := fmt.Sprint(crop, " ", rng.IntN(4))
	s := b.sow(code, sown.String(), crop, variety, []string{"AIR", "WALL"}[rng.IntN(2)], float64(1+rng.IntN(3)))
	s.Chamber, s.ChamberOut, s.Planned = "box", sown+records.Date(1+rng.IntN(3)), sown+35
	s.SeedsPerCell = 1 + rng.IntN(5)/4
	s.Wanted = records.Known(80)
	if rng.IntN(4) > 0 {
		lot := rng.IntN(2)*3 + map[string]int{"agretti": 0, "mibuna": 1, "orache": 2}[crop]
		s.Lot = fmt.Sprint("L", lot)
	}
	cells := int(s.Trays) * 100
	up := int(float64(cells) * (0.6 + 0.4*rng.Float64()))
	out, left := rng.IntN(up), rng.IntN(5)
	switch rng.IntN(10) {
	case 0:
	case 1, 2:
		b.out(code, (sown + 30).String(), out/2, records.ToField, false)
		b.out(code, (sown + 36).String(), out/3, records.Sold, rng.IntN(3) > 0)
	default:
		s.SetOut = sown + records.Date(25+rng.IntN(25))
		if s.PlantsOut = records.Known(out); rng.IntN(5) > 0 {
			s.Surplus = records.Known(left)
		}
	}
	switch rng.IntN(8) {
	case 0:
	case 1:
		for k := range int(s.Trays) {
			b.countTray(code, (sown + 5).String(), k+1, up/int(s.Trays)/2)
			b.countTray(code, (sown + 13).String(), k+1, up/int(s.Trays))
		}
	default:
		b.count(code, (sown + 4).String(), up/3)
		c := b.count(code, (sown + 12).String(), up)
		c.Lost, c.Cause = records.Known(rng.IntN(3)), []string{"", "mice", "damping off"}[rng.IntN(3)]
	}
	if looked := 20; rng.IntN(2) > 0 {
		b.look(code, (sown + records.Date(20+rng.IntN(40))).String(), looked, rng.IntN(looked+1))
	}
}
