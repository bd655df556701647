package templates

import (
	"html/template"
	"strconv"
	"strings"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/germination"
	"traybook/report/plants"
	"traybook/report/rate"
	"traybook/report/sowing"
	"traybook/report/trays"
	"traybook/report/words"
	"traybook/report/years"
)

// methodPage says how the figures are made.
type methodPage struct {
	Confidence string
	SureOf     string
	Discount   string
	UsableFrom int
	Turnaround string
	Money      string
	Method     simulated
	Least      bounds
	Inputs     *table
	Figures    *table
	Pages      string // names that links of a note may use
}

// simulated is how often the method errs, of 100, in seasons of which the truth is known.
type simulated struct {
	Held, HeldWild             string // ranges that hold the true share
	False, FalseWild, Bystands string // crops with a false verdict on a variety
	TwinMiddle, TwinLow        string // trays no better that are said to pay
	TwinLowOneCrop             string
	SownLeast, SownMost        string // sowings, sure 90 times in 100, that gave the plants wanted
	SownWild                   string
	FalseChange                string // fewer farms that did not change are told a change
}

// bounds are how many batches, matches and days a figure takes, as the code has them.
type bounds struct {
	Few     string // batches below which a group is not judged
	Lent    string // batches that the book lends each crop's scatter
	Matches string // matched sowings to compare two trays
	Dates   string // on so many days
	Fit     string // of 100 plants that must be fit for all to count as fit
}

// leastNeeded writes them.
func leastNeeded() bounds {
	return bounds{Few: words.Whole(rate.FewBatches), Lent: words.Whole(estimate.Prior), Matches: words.Whole(trays.EnoughMatches), Dates: words.Whole(trays.EnoughDates),
		Fit: words.Fixed(100*plants.StillFit, 0)}
}

// head is the page's heading.
func (v methodPage) head() (heading, lead template.HTML) {
	return "How figures are made", "Every figure is worked out once, from the logs alone, and shown wherever it is needed. Here are the rules in plain words, how often they err, and where they come from."
}

// howOftenWrong writes the shares of 100 that simulations gave.
func howOftenWrong() simulated {
	whole := func(share float64) string { return words.Fixed(share, 0) }
	return simulated{
		Held: whole(germination.SimulatedCoverage), HeldWild: whole(germination.SimulatedWildCoverage),
		False: whole(germination.SimulatedFalseVerdicts), FalseWild: whole(germination.SimulatedWildVerdicts), Bystands: whole(germination.SimulatedBystanders),
		TwinMiddle: whole(100 * trays.TwinPaysMiddle), TwinLow: whole(100 * trays.TwinPaysLow), TwinLowOneCrop: whole(100 * trays.TwinPaysLowOneCrop),
		SownLeast: whole(100 * sowing.SimulatedLeast), SownMost: whole(100 * sowing.SimulatedMost), SownWild: whole(100 * sowing.SimulatedWild), FalseChange: whole(100 * years.SimulatedFalse),
	}
}

// methodView fills the settings of the book into the words about method.
func methodView(p *page) any {
	s := p.r.Book.Settings
	return methodPage{
		Confidence: words.Fixed(100*s.Confidence, 0), SureOf: words.Fixed(100*s.SureOfTarget, 0), Discount: words.Number(100*s.DiscountRate) + words.NBSP + "%",
		UsableFrom: s.UsableFrom, Turnaround: words.Days(float64(s.TrayTurnaround)), Money: p.money.Code(), Method: howOftenWrong(), Least: leastNeeded(),
		Inputs: p.inputsTable(p.r.Inputs), Figures: p.namesTable(), Pages: strings.Join(pageNames(), ", "),
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
		value := in.Value
		if in.Source == "default" && p.r.Book.Workbook() { // ours: the order of dates is told from the file
			value = strings.ReplaceAll(value, "the file", "the sheet")
		}
		t.add(in.Name, prose(name(orDash(shortened(value)))), in.Source)
	}
	return t
}

// namesTable lists the figures that a note may place.
func (p *page) namesTable() *table {
	t := &table{ID: p.id("table-names"), Caption: "What a note may place", Columns: plain("Name", "Shows"), page: &p.out}
	for _, f := range namedFigures {
		t.add(say("<code>%s</code>", f.Name), f.Shows)
	}
	return t
}
