package batch

import (
	"math"
	"slices"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/trade"
)

// EndHow says how the end of a batch is known (rule "End of a batch").
type EndHow string

// The ways in which a batch ended.
const (
	Written EndHow = "written"
	Assumed EndHow = "assumed"
	Open    EndHow = "open"
)

// Trace is what the logs say of a batch's end: the day it was cleared, its latest
// written date, and whether it is known to have given no usable plant.
type Trace struct {
	Cleared, Last records.Date
	Nothing       bool
}

// Batch is one sowing and how long it stood.
type Batch struct {
	Sowing
	End      records.Date // first day on which it no longer stands
	EndHow   EndHow
	TrayDays float64 // trays x days in the house
	// ChamberUntil is the first day on which it no longer stands in a chamber; unknown:
	// it stood in none. ChamberAssumed: no one wrote that day (rule "Chamber stays").
	ChamberUntil   records.Date
	ChamberAssumed bool
}

// Ended reports whether the batch has a written or assumed end.
func (b *Batch) Ended() bool { return b.EndHow != Open }

// Stay is how long batches of a crop stand, in whole days.
type Stay struct{ Median, Longest int }

// Stays is the written stays by crop.
type Stays map[string]Stay

// usualWeeks stands in for a crop that neither the book nor the trade table knows.
const usualWeeks = 8

// Of returns the stay of a crop: of its batches with a written end, else as is usual
// (rule "End of a batch").
func (s Stays) Of(crop string) Stay {
	if stay, written := s[crop]; written {
		return stay
	}
	weeks := float64(usualWeeks)
	if facts, known := trade.Crop(crop); known {
		weeks = facts.WeeksHigh
	}
	days := int(math.Round(weeks * 7))
	return Stay{days, days}
}

// settle gives every batch its end. traces stand in the order of sown.
func settle(sown []Sowing, traces []Trace, today records.Date) ([]*Batch, Stays) {
	batches, all := make([]*Batch, len(sown)), make([]Batch, len(sown))
	for i, s := range sown {
		b := &all[i]
		b.Sowing, b.End = s, records.WrittenEnd(*s.Sowing, traces[i].Cleared)
		if b.End.Known() {
			b.EndHow = Written
		}
		batches[i] = b
	}
	stays, inChamber := writtenStays(batches, traces), chamberStaysOf(batches)
	for i, b := range batches {
		if b.EndHow == "" {
			b.assumeEnd(stays.Of(b.Crop), traces[i].Last, today)
		}
		b.leaveChamber(inChamber)
		b.TrayDays = b.Trays * float64(max(b.End-b.Sown, 0))
	}
	return batches, stays
}

// assumeEnd lets a batch older than the longest stay have stood the median one,
// not less than up to its latest written date; any other is open.
func (b *Batch) assumeEnd(stay Stay, last, today records.Date) {
	if int(today-b.Sown) > stay.Longest {
		b.EndHow, b.End = Assumed, max(b.Sown+records.Date(stay.Median), last)
		return
	}
	b.EndHow, b.End = Open, max(today, b.Sown)
}

// writtenStays gathers the stays of batches with a written end that gave a usable
// plant, as far as known.
func writtenStays(batches []*Batch, traces []Trace) Stays {
	written := Filter(batches, func(b *Batch) bool { return b.EndHow == Written && !traces[b.Nth].Nothing })
	stays := Stays{}
	for _, of := range SplitBy(written, (*Batch).CropRank).Groups {
		days := daysOf(of, func(b *Batch) records.Date { return b.End })
		stays[of[0].Crop] = Stay{int(records.RoundHalfUp(estimate.Median(days))), int(slices.Max(days))}
	}
	return stays
}

// daysOf is how long each batch stood up to a day, not below 0.
func daysOf(batches []*Batch, until func(*Batch) records.Date) []float64 {
	days := make([]float64, len(batches))
	for i, b := range batches {
		days[i] = float64(max(until(b)-b.Sown, 0))
	}
	return days
}
