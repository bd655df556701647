package report

import (
	"testing"

	"traybook/report/internal/booktest"
	"traybook/report/money"
	"traybook/report/room"
	"traybook/report/trays"
)

// Every figure of a book of 5,000 batches in four seasons.
func BenchmarkReport(b *testing.B) {
	farm := booktest.Farm(b, 1, 4, 1250)
	for b.Loop() {
		reportOf(farm)
	}
}

// Every figure of a book of 20 seasons with 1,500 batches each.
func BenchmarkLargeReport(b *testing.B) {
	farm := booktest.Farm(b, 1, 20, 1500)
	for b.Loop() {
		reportOf(farm)
	}
}

// 20 seasons of 1,500 batches: all money shared out.
func BenchmarkAllocate(b *testing.B) {
	r := reportOf(booktest.Farm(b, 1, 20, 1500))
	for b.Loop() {
		money.New(r.Batches, r.Plants, r.Book)
	}
}

// One season of 5,000 batches: the trays' replay.
func BenchmarkReplay(b *testing.B) {
	farm := booktest.Farm(b, 1, 1, 5000)
	r := reportOf(farm)
	standings := r.Batches.Standings(1, nil)
	for b.Loop() {
		trays.Next(r.Trays, r.Batches, standings)
	}
}

// 20 seasons of 1,500 batches: the load of benches and codes.
func BenchmarkRoom(b *testing.B) {
	r := reportOf(booktest.Farm(b, 1, 20, 1500))
	standings := r.Batches.Standings(1, nil)
	for b.Loop() {
		room.New(r.Batches, standings)
	}
}
