package templates

import (
	"strconv"
	"strings"

	"traybook/records"
	"traybook/report"
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

func methodView(p *place) any {
	s := p.r.Book.Settings
	return methodPage{
		Title: p.spec.title, Confidence: percent(s.Confidence), Coverage: fixed(report.SimulatedCoverage, 1) + nbsp + "%",
		SureOf: percent(s.SureOfTarget), Discount: number(100*s.DiscountRate) + nbsp + "%", UsableFrom: s.UsableFrom,
		Turnaround: days(float64(s.TrayTurnaround)), Inputs: p.inputsTable(p.r.Inputs), Figures: namedFigures, Money: p.money.code,
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

func (p *place) inputsTable(inputs []records.Input) *table {
	t := p.table("inputs", "Settings and values this review was made with", "inputs", plain("Name", "Value", "From"))
	for _, in := range inputs {
		t.add(in.Name, prose(name(orDash(shortened(in.Value)))), in.Source)
	}
	return t
}
