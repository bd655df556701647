package report

import "testing"

// Every figure of a book of 5,000 batches in four seasons.
func BenchmarkReport(b *testing.B) {
	farm := randomFarm(b, 1, 4, 1250)
	for b.Loop() {
		farm.report()
	}
}

// Every figure of a book of 20 seasons with 1,500 batches each.
func BenchmarkLargeReport(b *testing.B) {
	farm := randomFarm(b, 1, 20, 1500)
	for b.Loop() {
		farm.report()
	}
}
