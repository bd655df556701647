package templates

import (
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
	"traybook/report/trays"
	"traybook/report/words"
	"traybook/templates/draw"
)

// matchRows shows each matched sowing of a pair as a dot, a crop a row. Crops with most
// sowings stand first. The last row has all of them with the range of their mean, and only
// where there are matches enough to tell one.
func (p *page) matchRows(a pairOf) *rows {
	matches := picked(p.r.Trays.Matches, func(m *trays.Match) bool { return m.Tray == a.tray() && m.Other == a.other() })
	cells := float64(a.Cells)
	lowest, highest := 0.0, 0.0
	for _, m := range matches {
		lowest, highest = min(lowest, m.Difference*cells), max(highest, m.Difference*cells)
	}
	axis := draw.From(p.id("gm"), lowest, highest, 1)
	t := p.rows("matches-"+slug(a.tray()+" "+a.other()), "match tall", p.matchCaption(a), "matches",
		col{Width: "c-name", Head: "Crop"}, col{Class: "st g2", Head: "Plants", Axis: axis.Head()}, col{Width: "c-n2", Class: "n", Head: "Sowings"})
	kind := draw.KindOf(p.kindOf(a.tray()))
	crops, of := batch.GroupBy(matches, func(m *trays.Match) string { return m.Crop })
	slices.SortStableFunc(crops, func(x, y string) int { return len(of[y]) - len(of[x]) })
	for _, crop := range crops {
		values, sum := make([]float64, len(of[crop])), 0.0
		for i, m := range of[crop] {
			values[i] = m.Difference * cells
			sum += values[i]
		}
		mean := sum / float64(len(values))
		t.add("", "", name(crop), told(words.Signed(mean, 1), "", axis.Row(draw.Points(kind, values), draw.Mean(mean))), words.Whole(len(values)))
	}
	if a.Difference.Known {
		in := func(n rate.Num) rate.Num { return rate.Num{Value: n.Value * cells, Known: n.Known} }
		t.add("", "sum", say("all %s", rangeText(a.DifferenceLow, a.DifferenceHigh, func(v float64) string { return words.Signed(v*cells, 1) })),
			told(words.Signed(a.Difference.Value*cells, 1), "", axis.Row(draw.Range(in(a.DifferenceLow), in(a.DifferenceHigh)), draw.Dot(kind, in(a.Difference), false))), words.Whole(a.Matches))
	}
	return t
}

// matchCaption says what a dot is and from how many plants the average tray pays.
func (p *page) matchCaption(a pairOf) template.HTML {
	out := say("More usable plants a tray in %s than in %s. A dot for each time the same seed was sown in both within a week; the upright line is the crop’s mean.", name(a.tray()), name(a.other()))
	if a.BreakEvenPlants.Known {
		out = join(out, say("The average tray pays from %s.", words.Tenths(a.BreakEvenPlants.Value, "more plant", "more plants")))
	}
	return out
}

// matchTitle says in how many of the matched sowings the dearer tray gave more. It counts
// sowings alike whatever their size, as the figures do.
func (p *page) matchTitle(a pairOf) template.HTML {
	more, all := 0, 0
	for _, m := range p.r.Trays.Matches {
		if m.Tray == a.tray() && m.Other == a.other() {
			all++
			if m.Difference > 0 {
				more++
			}
		}
	}
	return say("%s of %s gave more plants in %s", words.Whole(more), words.Plural(all, "matched sowing", "matched sowings"), name(a.tray()))
}

// gainRows shows the gain of one use in its parts, each bar beginning where the last
// ended. A part that is not known or is 0 has no bar; what had to be left out is said in
// the sentences of the pair.
func (p *page) gainRows(a pairOf) *rows {
	parts := p.gainParts(a)
	at, lowest, highest := 0.0, 0.0, 0.0
	for _, part := range parts {
		at += part.value.Value
		lowest, highest = min(lowest, at), max(highest, at)
	}
	lowest, highest = min(lowest, a.GainLow.Or(0)), max(highest, a.GainHigh.Or(0))
	axis := draw.From(p.id("gg"), lowest, highest, 1)
	t := p.rows("gain-"+slug(a.tray()+" "+a.other()), "gain", say("What one use of %s gains over %s, %s. Each bar begins where the last ended.", name(a.tray()), name(a.other()), p.money.Code()), "payback",
		col{Width: "c-half", Head: "Part"}, col{Class: "st g2", Head: "A use", Axis: axis.Head()})
	at = 0
	for _, part := range parts {
		class := ""
		if part.value.Value < 0 {
			class = "neg"
		}
		t.add("", "", say(`%s <span class="soft">%s</span>`, part.what, part.how),
			told(p.money.SignedNumber(part.value.Value), "", axis.Row(draw.Bar(at, at+part.value.Value, class))))
		at += part.value.Value
	}
	t.add("", "sum", say("Gain a use <span class=\"soft\">%s</span>", rangeText(a.GainLow, a.GainHigh, p.money.SumNumber)),
		told(words.Of(a.Gain, p.money.SignedNumber), "", axis.Row(draw.Range(a.GainLow, a.GainHigh), draw.Dot(draw.Crop, a.Gain, false))))
	return t
}

// gainPart is a part of the gain of one use.
type gainPart struct {
	what, how template.HTML
	value     rate.Num
}

// gainParts are the parts that are counted.
func (p *page) gainParts(a pairOf) []gainPart {
	all := []gainPart{
		{say("A use of %s not spent", name(a.other())), say("%s over %s", words.Of(a.OtherPrice, p.money.Sum), usesOf(a.OtherLife)), a.GainTray},
		{say("%s more plants", words.Signed(a.Difference.Value*float64(a.Cells), 1)), say("at %s each%s", words.Of(a.Value, p.money.Each), p.valueSource()), a.GainPlants},
		{"Extra minutes", p.minutesHow(a.Payback), a.GainMinutes},
		{"Extra mix", "what larger or smaller cells take", a.GainMix},
	}
	return batch.Filter(all, func(part gainPart) bool { return part.value.Known && part.value.Value != 0 })
}

// nextRows shows what each further tray would be worth, those alike together. Worth is
// money of today beyond the price, over the tray's whole life; below 0 the bar goes to the
// left.
func (p *page) nextRows(a pairOf) *rows {
	lowest, highest := 0.0, 0.0
	for run := range runsOfTrays(p.r.Trays.NextTray, a.Payback) {
		lowest, highest = min(lowest, run[0].WorthToday.Or(0)), max(highest, run[0].WorthToday.Or(0))
	}
	axis := draw.From(p.id("gn"), lowest, highest, 1)
	b := a.Decision.Buy
	t := p.rows("next-"+slug(a.tray()+" "+a.other()), "next", say("Each further %s after the %s owned: uses a season in %s, and what it is worth today beyond its price, %s.", name(a.tray()), words.Whole(b.Owned), seasonsWords(b.Seasons), p.money.Code()),
		"next_tray", col{Width: "c-n3", Head: "Tray"}, col{Width: "c-n2", Class: "n", Head: "Uses"}, col{Class: "st g2", Head: "Worth today", Axis: axis.Head()}, col{Width: "c-vd", Class: "vd", Head: "Verdict"})
	for run := range runsOfTrays(p.r.Trays.NextTray, a.Payback) {
		first, last := run[0], run[len(run)-1]
		class := "lo"
		if first.Pays.Or(false) {
			class = ""
		}
		t.add("", "", nthWords(first.Nth, last.Nth), words.TenthsNumber(first.Uses),
			told(words.Of(first.WorthToday, p.money.SignedNumber), "", axis.Row(draw.Bar(0, first.WorthToday.Or(0), class))), paysWord(first))
	}
	return t
}

// paysWord is whether a further tray pays, and how surely. The word follows the gain at
// its low end, its middle and its high end, in that order; unknown where the life of the
// tray is.
func paysWord(n trays.NextTray) template.HTML {
	switch {
	case !n.Pays.Known:
		return "cannot be told"
	case n.PaysLow.Or(false):
		return `<span class="good">pays, even at the low end</span>`
	case n.Pays.Value:
		return `<span class="good">pays in the middle</span>`
	case n.PaysHigh.Or(false):
		return "only at the high end"
	}
	return `<span class="bad">does not pay</span>`
}

// nextTitle says where buying stops.
func (p *page) nextTitle(a pairOf) template.HTML {
	b := a.Decision.Buy
	switch {
	case b.PeakInUse <= b.Owned:
		return say("No further %s would have been used", name(a.tray()))
	case b.N == 0:
		return say("Already the %s %s would not pay", draw.Ordinal(b.Owned+1), name(a.tray()))
	}
	return say("The %s %s still pays, the %s does not", draw.Ordinal(b.Owned+b.N), name(a.tray()), draw.Ordinal(b.Owned+b.N+1))
}

// ifRow is a life of the other, and the number to buy at each value of a plant.
type ifRow struct {
	Life  template.HTML
	Cells []template.HTML
}

// ifTable is how many to buy for the other's life by the value of a plant (rule "If").
type ifTable struct {
	Title, Caption template.HTML
	Heads          []template.HTML
	Axes           []template.HTML
	Rows           []ifRow
	Data           string
}

// ifLives are the lives of the other that are tried, with their words.
var ifLives = []struct {
	factor float64
	words  string
}{{0.5, "half as long"}, {1, "as written"}, {1.5, "half as long again"}, {2, "twice as long"}}

// ifTable is nil where there is no number to buy. It stands in for the two things that the
// records tell least of: how long the cheap tray lasts, and what a plant is worth. A cell
// that cannot be worked out has a dash.
func (p *page) ifTable(a pairOf) *ifTable {
	if a.Decision.Buy == nil {
		return nil
	}
	worths := []trays.Worth{trays.Figured, trays.Half}
	heads := []template.HTML{say(`a plant as figured <span class="soft">%s</span>`, words.Of(a.Value, p.money.Each)), say(`half of it <span class="soft">%s</span>`, p.money.Each(a.Value.Value/2))}
	if a.AtPlugPrice != nil {
		worths, heads = append(worths, trays.BoughtIn), append(heads, say(`bought in <span class="soft">%s</span>`, words.Of(a.AtPlugPrice.Value, p.money.Each)))
	}
	most := 1.0
	for _, row := range p.r.Trays.BuyIf {
		if row.Tray == a.tray() && row.Other == a.other() {
			most = max(most, float64(row.High))
		}
	}
	t := &ifTable{Title: p.ifTitle(a), Heads: heads, Data: p.href("data/buy_if.csv"),
		Caption: say("How many more %s to buy, and the range, if %s lasts so long and a plant is worth so much. Hollow: none.", name(a.tray()), name(a.other()))}
	if len(a.Decision.Buy.OtherLives) > 1 {
		t.Caption = join(t.Caption, say("The answer’s own range is wider where it also runs over how long %s may last.", name(a.other())))
	}
	axis := make([]draw.Axis, len(worths))
	for i := range worths {
		axis[i] = draw.Amounts(p.id("gi"), most, words.Number)
		t.Axes = append(t.Axes, axis[i].Head())
	}
	kind := draw.KindOf(p.kindOf(a.tray()))
	for _, life := range ifLives {
		r := ifRow{Life: say(`%s <span class="soft">%s</span>`, life.words, words.Tenths(max(a.OtherLife.Uses.Value*life.factor, 1), "use", "uses"))}
		for i, worth := range worths {
			row, ok := p.r.Trays.If(a.tray(), a.other(), life.factor, worth)
			if !ok {
				r.Cells = append(r.Cells, markup(words.None))
				continue
			}
			num := func(n int) rate.Num { return records.Known(float64(n)) }
			r.Cells = append(r.Cells, told(words.Whole(row.N), say("%s to %s", words.Whole(row.Low), words.Whole(row.High)),
				axis[i].Row(draw.Range(num(row.Low), num(row.High)), draw.Dot(kind, num(row.N), row.N == 0))))
		}
		t.Rows = append(t.Rows, r)
	}
	return t
}

// ifTitle says what the table shows of the other's life. Only the lives are spoken of,
// with a plant at its figured worth: the other columns show the rest.
func (p *page) ifTitle(a pairOf) template.HTML {
	half, ok := p.r.Trays.If(a.tray(), a.other(), 0.5, trays.Figured)
	double, also := p.r.Trays.If(a.tray(), a.other(), 2, trays.Figured)
	switch {
	case ok && also && half.N > double.N:
		return say("If %s lasted longer, fewer would pay", name(a.other()))
	case ok && also && half.N == double.N && half.N == 0:
		return "None would pay, however long the cheap tray lasts"
	}
	return say("The answer stays the same, however long %s lasts", name(a.other()))
}
