package templates

import (
	"strconv"
	"strings"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/words"
)

// methodPage says how the figures are made.
type methodPage struct {
	Title      string
	Confidence string
	Coverage   string
	SureOf     string
	Discount   string
	UsableFrom int
	Turnaround string
	Inputs     *table
	Figures    []namedFigure
	Money      string
}

// methodView fills the settings of the book into the words about method.
func methodView(p *page) any {
	s := p.r.Book.Settings
	return methodPage{
		Title: p.spec.title, Confidence: words.Percent(s.Confidence), Coverage: words.Fixed(estimate.SimulatedCoverage, 1) + words.NBSP + "%",
		SureOf: words.Percent(s.SureOfTarget), Discount: words.Number(100*s.DiscountRate) + words.NBSP + "%", UsableFrom: s.UsableFrom,
		Turnaround: words.Days(float64(s.TrayTurnaround)), Inputs: p.inputsTable(p.r.Inputs), Figures: namedFigures, Money: p.money.Code(),
	}
}

// shortened writes a long decimal to four figures; its data file has them all.
func shortened(value string) string {
	v, err := strconv.ParseFloat(value, 64)
	if _, part, _ := strings.Cut(value, "."); err != nil || len(part) <= 4 {
		return value
	}
	return strconv.FormatFloat(v, 'g', 4, 64)
}

// inputsTable lists what the figures were made with, as it was written or computed.
func (p *page) inputsTable(inputs []records.Input) *table {
	t := p.table("inputs", "Settings and values this review was made with", "inputs", plain("Name", "Value", "From"))
	for _, in := range inputs {
		t.add(in.Name, prose(name(orDash(shortened(in.Value)))), in.Source)
	}
	return t
}
