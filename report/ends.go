package report

import (
	"math"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/trade"
)

// cropStay is how long batches of a crop stand, in days: written stays, or else
// the usual (rules 4, 61).
type cropStay struct{ median, longest int }

// usualWeeks stands in for a crop that neither the book nor the trade table knows
// (rule 4).
const usualWeeks = 8

// stay returns the stay of a crop, of batches written or as is usual.
func (r *Report) stay(crop string) cropStay {
	if s, written := r.stayOf[crop]; written {
		return s
	}
	weeks := float64(usualWeeks)
	if facts, known := trade.Crop(crop); known {
		weeks = facts.WeeksHigh
	}
	days := int(math.Round(weeks * 7))
	return cropStay{days, days}
}

// ends gives every batch its end (rules 4, 60, 61).
func (r *Report) ends() {
	for _, b := range r.Batches {
		b.writtenEnd()
	}
	r.writtenStays()
	for _, b := range r.Batches {
		if b.EndHow == "" {
			b.assumeEnd(r.stay(b.Crop), r.LastDate)
		}
		b.TrayDays = b.Trays * float64(max(b.End-b.Sown, 0))
	}
}

// writtenEnd is the date set out, else that of the row which cleared the batch.
func (b *Batch) writtenEnd() {
	b.End = b.SetOut
	if !b.End.Known() {
		b.End = b.cleared
	}
	if b.End.Known() {
		b.EndHow = Written
	}
}

// assumeEnd lets a batch older than the longest stay have stood the median one,
// not less than up to its latest written date; any other is open.
func (b *Batch) assumeEnd(stay cropStay, today records.Date) {
	if int(today-b.Sown) > stay.longest {
		b.EndHow, b.End = Assumed, max(b.Sown+records.Date(stay.median), b.lastWritten)
		return
	}
	b.EndHow, b.End = Open, max(today, b.Sown)
}

// writtenStays gathers the stays of batches with a written end that gave a usable
// plant, as far as known.
func (r *Report) writtenStays() {
	days := map[string][]float64{}
	for _, b := range r.Batches {
		if b.EndHow != Written {
			continue
		}
		if usable, _ := b.measuredUsable(); usable.Known && usable.Value == 0 {
			continue
		}
		days[b.Crop] = append(days[b.Crop], float64(max(b.End-b.Sown, 0)))
	}
	r.stayOf = map[string]cropStay{}
	for crop, stays := range days {
		longest := 0.0
		for _, d := range stays {
			longest = max(longest, d)
		}
		r.stayOf[crop] = cropStay{int(roundHalfUp(estimate.Median(stays))), int(longest)}
	}
}
