package report

import (
	"fmt"
	"testing"

	"traybook/records"
)

// bigFarm is so many seasons of so many batches in two codes, with bills every
// fortnight, house readings and a purchase a season.
func bigFarm(b *testing.B, seasons, batches int) *Report {
	b.Helper()
	pb := newPairBook()
	book := &records.Book{}
	book.Settings.SeasonStarts, book.Settings.Confidence, book.Settings.TrayTurnaround = 1, 0.95, 3
	book.Settings.HeatingFrom, book.Settings.HeatingUntil = 10, 4
	r := &Report{Book: book, byCode: map[string]*Batch{}}
	for s := range seasons {
		first := records.NewDate(2005+s, 1, 1)
		r.Seasons = append(r.Seasons, 2005+s)
		heavy := pb.heavy
		heavy.Bought, heavy.Count = first, records.Known(50)
		book.Trays = append(book.Trays, heavy, pb.thin)
		for d := range records.Date(365) {
			book.House = append(book.House, records.HouseReading{Date: first + d, OutLow: records.Known(2.0), OutHigh: records.Known(8.0)})
			if d%14 == 0 {
				for _, c := range records.Categories {
					book.Costs = append(book.Costs, row(b, (first+d).String(), c, 40))
				}
			}
		}
		for i := range batches {
			sown := first + records.Date(i*300/batches)
			batch := newBatch(b, fmt.Sprintf("%d-%04d", s, i), sown.String(), (sown + 35).String(), []string{"HEAVY", "THIN"}[i%2], 1.5, 100, 120)
			batch.Crop = fmt.Sprint("crop", i%20)
			batch.Season, batch.TrayDays, batch.SeedsSown = 2005+s, 52.5, records.Known(150.0)
			r.Batches, r.byCode[batch.Code] = append(r.Batches, batch), batch
			r.LastDate = max(r.LastDate, batch.End)
		}
	}
	return r
}

// 20 seasons of 1,500 batches: all money, balanced.
func BenchmarkAllocate(b *testing.B) {
	r := bigFarm(b, 20, 1500)
	for b.Loop() {
		r.Missing = nil
		r.money()
	}
}

// One season of 5,000 batches: the trays' replay.
func BenchmarkReplay(b *testing.B) {
	r := bigFarm(b, 1, 5000)
	p := newPurse(r)
	pr := pairsOf(p.codes)[0]
	stays := r.stays(1, nil)
	for b.Loop() {
		p.replay(pr, stays)
	}
}

// 20 seasons of 1,500 batches: the load of benches and codes.
func BenchmarkRoom(b *testing.B) {
	r := bigFarm(b, 20, 1500)
	for b.Loop() {
		r.room()
	}
}
