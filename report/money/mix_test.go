package money

import (
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/internal/booktest"
	"traybook/report/plants"
)

// The price of a millilitre of mix (rule "Gain a use") rests on the last three finished
// seasons, 2023 to 2025, and there on batches that bear mix and have a volume: 6 for 100
// cells of 20 ml and 12 for 50 cells of 40 ml make 18 of 4000. Batches of an earlier and
// a later season, one without mix, one without a volume and one without cells are out.
func TestMixPerML(t *testing.T) {
	sown := func(code, date string, cells int, ml Num) *plants.Plants {
		p := newBatch(t, code, date, date, "S", float64(cells)/100, 100, 0)
		p.CellML = ml
		return p
	}
	ml := func(v float64) Num { return records.Known(v) }
	list := func() []*plants.Plants {
		all := []*plants.Plants{sown("early", "2022-03-01", 100, ml(20)), sown("a", "2023-03-01", 100, ml(20)), sown("b", "2025-03-01", 50, ml(40)),
			sown("bare", "2024-03-01", 100, ml(20)), sown("unknown", "2024-03-01", 100, Num{}), sown("cells", "2024-03-01", 100, ml(20)), sown("open", "2026-03-01", 100, ml(20))}
		all[5].CellsSown, all[6].EndHow = records.Maybe[int]{}, batch.Open
		return all
	}
	book := func(amounts map[string]float64) *records.Book {
		var costs []records.Cost
		for code, amount := range amounts {
			costs = append(costs, booktest.Row(t, "2025-03-01", records.Mix, amount, forBatch(code)))
		}
		return &records.Book{Costs: costs}
	}
	m := moneyOf(book(map[string]float64{"early": 100, "a": 6, "b": 12, "unknown": 50, "cells": 50, "open": 100}), list()...)
	booktest.Known(t, "a ml", m.MixPerML, 18.0/4000, 1e-15)
	booktest.Missing(t, "without a volume", moneyOf(book(map[string]float64{"unknown": 50, "early": 9}), list()...).MixPerML)
	booktest.Missing(t, "without mix", moneyOf(&records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-01", records.Feed, 9)}}, list()...).MixPerML)
	booktest.Missing(t, "without a batch", moneyOf(book(map[string]float64{"a": 6})).MixPerML)
	running := sown("only", "2026-03-01", 100, ml(20))
	running.EndHow = batch.Open
	booktest.Known(t, "no season finished: the one at hand", moneyOf(book(map[string]float64{"only": 5}), running).MixPerML, 5.0/2000, 1e-15)
}
