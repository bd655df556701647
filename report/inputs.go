package report

import (
	"slices"
	"strconv"
	"strings"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/money"
	"traybook/report/plants"
	"traybook/report/rate"
	"traybook/report/sowing"
	"traybook/report/trays"
)

// computed is the source of an input that the book gave rise to.
const computed = "computed"

// inputsOf lists the settings and what was computed from the book before any
// figure: what two people must agree on to get the same digits.
func inputsOf(book *records.Book, b *batch.Batches, season int, g *germination.Figures, p *plants.Figures, m *money.Figures, t *trays.Figures, s *sowing.Figures) []records.Input {
	return slices.Concat(book.Settings.Inputs, bookInputs(b, season),
		scatterInputs("emergence", g.Scatter), scatterInputs("usable", p.UsableScatter), scatterInputs("quality", p.QualityScatter),
		scatterInputs("sowing", s.Scatter), cropInputs(b, g.MedianT50, t.PlantValue), mixInputs(m.MixPerML), ownedInputs(b))
}

// mixInputs is the price of a millilitre of mix, where known (rule "Gain a use").
func mixInputs(perML Num) []records.Input {
	if !perML.Known {
		return nil
	}
	return []records.Input{input("mix_per_ml", decimal(perML.Value))}
}

// bookInputs are today, the seasons and how much there is of the book.
func bookInputs(b *batch.Batches, season int) []records.Input {
	var list []records.Input
	if b.Today.Known() {
		list = append(list, input("last_date", b.Today.String()))
	}
	var seasons []string
	for _, s := range b.Seasons {
		seasons = append(seasons, strconv.Itoa(s))
	}
	return append(list, input("seasons", strings.Join(seasons, " ")), input("season_reviewed", strconv.Itoa(season)),
		input("batches", strconv.Itoa(len(b.List))))
}

// scatterInputs are the book's scatter of a measure; none where it has too few
// batches (rule "Scatter").
func scatterInputs(measure string, s rate.Scatter) []records.Input {
	used, ok := s.Of("")
	if !ok {
		return nil
	}
	return []records.Input{input("scatter_"+measure, decimal(used.Rho)), input("scatter_"+measure+"_df", decimal(used.DF))}
}

// cropInputs are what stands for every batch of a crop, by crop: median T50 and
// stay in days, the value of a plant in money.
func cropInputs(b *batch.Batches, t50, value map[string]Num) []records.Input {
	var list []records.Input
	crops, _ := batch.GroupBy(b.List, func(b *batch.Batch) string { return b.Crop })
	slices.Sort(crops)
	for _, crop := range crops {
		if days := t50[crop]; days.Known {
			list = append(list, input("median_t50_days "+crop, decimal(days.Value)))
		}
		list = append(list, input("median_stay_days "+crop, strconv.Itoa(b.Stays.Of(crop).Median)))
		if v := value[crop]; v.Known {
			list = append(list, input("value_of_a_plant "+crop, decimal(v.Value)))
		}
	}
	return list
}

// ownedInputs are the trays owned today, by code; none where no count is written.
func ownedInputs(b *batch.Batches) []records.Input {
	var list []records.Input
	for _, code := range b.Codes.Sorted() {
		if c := b.Codes[code]; c.Counted() {
			list = append(list, input("trays_owned "+code, strconv.Itoa(c.OwnedOn(b.Today).Value)))
		}
	}
	return list
}

func input(name, value string) records.Input {
	return records.Input{Name: name, Value: value, Source: computed}
}

// decimal writes a number with as many digits as it takes to read it back.
func decimal(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
