package report

import (
	"slices"
	"strconv"
	"strings"

	"traybook/records"
)

// computed is the source of an input that the book gave rise to.
const computed = "computed"

// inputs lists the settings and what was computed from the book before any figure:
// what two people must agree on to get the same digits.
func (r *Report) inputs() {
	r.Inputs = slices.Clone(r.Book.Settings.Inputs)
	if r.LastDate.Known() {
		r.input("last_date", r.LastDate.String())
	}
	var seasons []string
	for _, s := range r.Seasons {
		seasons = append(seasons, strconv.Itoa(s))
	}
	r.input("seasons", strings.Join(seasons, " "))
	r.input("season_reviewed", strconv.Itoa(r.Season))
	r.input("batches", strconv.Itoa(len(r.Batches)))
	for m, name := range []string{"emergence", "usable", "quality"} {
		if s, ok := r.spreadOf(measure(m), ""); ok {
			r.input("scatter_"+name, decimal(s.rho))
			r.input("scatter_"+name+"_df", decimal(s.df))
		}
	}
	crops := map[string]bool{}
	for _, b := range r.Batches {
		crops[b.Crop] = true
	}
	for _, crop := range sortedKeys(crops) {
		if t := r.medianT50[crop]; t.Known {
			r.input("median_t50_days "+crop, decimal(t.Value))
		}
		r.input("median_stay_days "+crop, strconv.Itoa(r.stay(crop).median))
		if v := r.plantValue[crop]; v.Known {
			r.input("value_of_a_plant "+crop, decimal(v.Value))
		}
	}
	r.ownedInputs()
}

// ownedInputs lists the trays owned on the last date, by code.
func (r *Report) ownedInputs() {
	codes := trayCodes(r)
	for _, code := range sortedKeys(codes) {
		if codes[code].counted() {
			r.input("trays_owned "+code, strconv.Itoa(codes[code].ownedOn(r.LastDate)))
		}
	}
}

func (r *Report) input(name, value string) {
	r.Inputs = append(r.Inputs, records.Input{Name: name, Value: value, Source: computed})
}

func decimal(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
