package booktest

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"traybook/records"
)

// crops of a farm by chance: none stands in the trade table, so that no usual
// figure fills a gap.
var crops = []string{"agretti", "mibuna", "orache"}

// Farm is a book by chance, the same for a seed: so many seasons of so many
// batches, with everything that a log can hold.
func Farm(t testing.TB, seed uint64, seasons, batches int) *Book {
	t.Helper()
	rng := rand.New(rand.NewPCG(seed, 1))
	b := New(t)
	b.Settings.Wage, b.Settings.BenchPlaces, b.Settings.ChamberPlaces = records.Known(20.0), records.Known(60.0), records.Known(16.0)
	b.Trays[0].Price, b.Trays[0].Count, b.Trays[0].Lasts = records.Known(12.0), records.Known(40), records.Known(10.0)
	b.Trays[1].Price, b.Trays[1].Count, b.Trays[1].Lasts = records.Known(1.5), records.Known(40), records.Known(2.0)
	for i := range 2 * len(crops) {
		l := b.Lot(fmt.Sprint("L", i), crops[i%3], 0.85+0.02*float64(i))
		l.Price, l.Seeds = records.Known(10.0), records.Known(5000.0)
	}
	for s := range seasons {
		first := records.NewDate(2020+s, 2, 1)
		for i := range batches {
			b.randomBatch(rng, fmt.Sprintf("%d-%05d", s, i), rng.IntN(3), first+records.Date(i*200/batches))
		}
		b.randomReadings(rng, first)
	}
	return b
}

// randomReadings writes 240 days of house and chamber, and every bill each 20 days.
func (b *Book) randomReadings(rng *rand.Rand, first records.Date) {
	for d := range records.Date(240) {
		b.House = append(b.House, records.HouseReading{Date: first + d, Low: records.Known(8.0), High: records.Known(8 + 20*rng.Float64())})
		b.Reading("box", (first + d).String(), 18+8*rng.Float64())
		if d%20 == 0 {
			for _, c := range records.Categories {
				b.Cost((first + d).String(), c, 20+10*rng.Float64())
			}
		}
	}
}

// randomBatch sows, counts, looks and sets out, now and then leaving something out.
func (b *Book) randomBatch(rng *rand.Rand, code string, crop int, sown records.Date) {
	variety := fmt.Sprint(crops[crop], " ", rng.IntN(4))
	s := b.Sow(code, sown.String(), crops[crop], variety, []string{"AIR", "WALL"}[rng.IntN(2)], float64(1+rng.IntN(3)))
	s.Chamber, s.ChamberOut, s.Planned = "box", sown+records.Date(1+rng.IntN(3)), sown+35
	s.SeedsPerCell = 1 + rng.IntN(5)/4
	s.Wanted = records.Known(80)
	if rng.IntN(4) > 0 {
		s.Lot = fmt.Sprint("L", rng.IntN(2)*3+crop)
	}
	up := int(s.Trays * 100 * (0.6 + 0.4*rng.Float64()))
	b.randomEnd(rng, s, up)
	b.randomCounts(rng, code, sown, int(s.Trays), up)
	if rng.IntN(2) > 0 {
		b.Look(code, (sown + records.Date(20+rng.IntN(40))).String(), 20, rng.IntN(21))
	}
}

// randomEnd leaves one batch of ten open and clears two by rows of out.csv.
func (b *Book) randomEnd(rng *rand.Rand, s *records.Sowing, up int) {
	out, left := rng.IntN(up), rng.IntN(5)
	switch rng.IntN(10) {
	case 0:
	case 1, 2:
		b.Out(s.Code, (s.Sown + 30).String(), out/2, records.ToField, false)
		b.Out(s.Code, (s.Sown + 36).String(), out/3, records.Sold, rng.IntN(3) > 0)
	default:
		s.SetOut = s.Sown + records.Date(25+rng.IntN(25))
		if s.PlantsOut = records.Known(out); rng.IntN(5) > 0 {
			s.Surplus = records.Known(left)
		}
	}
}

// randomCounts leaves one batch of eight uncounted and counts one tray by tray.
func (b *Book) randomCounts(rng *rand.Rand, code string, sown records.Date, trays, up int) {
	switch rng.IntN(8) {
	case 0:
	case 1:
		for k := range trays {
			b.CountTray(code, (sown + 5).String(), k+1, up/trays/2)
			b.CountTray(code, (sown + 13).String(), k+1, up/trays)
		}
	default:
		b.Count(code, (sown + 4).String(), up/3)
		c := b.Count(code, (sown + 12).String(), up)
		c.Lost = records.Known(int32(rng.IntN(3)))
		b.Say(c, records.Said{Cause: []string{"", "mice", "damping off"}[rng.IntN(3)]})
	}
}

// Shuffle puts the rows of every log but the costs in another order, the same for a
// seed.
func (b *Book) Shuffle(seed uint64) {
	rng := rand.New(rand.NewPCG(seed, 9))
	shuffle(rng, b.Sowings)
	shuffle(rng, b.Outs)
	shuffle(rng, b.Counts)
	shuffle(rng, b.Scores)
	shuffle(rng, b.Trays)
	shuffle(rng, b.Lots)
	shuffle(rng, b.Chamber)
	shuffle(rng, b.House)
}

func shuffle[T any](rng *rand.Rand, rows []T) {
	rng.Shuffle(len(rows), func(i, j int) { rows[i], rows[j] = rows[j], rows[i] })
}
