package templates

import (
	"html/template"
	"math"
	"slices"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/room"
	"traybook/report/words"
	"traybook/templates/draw"
)

// yearPart is the year in the house: what stood, day by day.
type yearPart struct {
	Title   template.HTML
	Drawing template.HTML
	Caption template.HTML
}

// yearPart draws a season in the house; nil where nothing stood. Benches stand tall,
// chambers low, as there is more to see on the first. A band whose log is not kept is left
// out, and the drawing with it where none is left.
func (p *page) yearPart(season int) *yearPart {
	first, last := p.daysOf(season)
	if last <= first {
		return nil
	}
	year := draw.Year{ID: p.id("year"), First: first, Last: last}
	for _, place := range []struct {
		of          room.PlaceKind
		name, class string
		height      float64
		unit        string
	}{{room.BenchPlace, "Trays on the benches", "bench", 130, "places"}, {room.ChamberPlace, "In the chambers", "chamb", 36, "places"}} {
		if load, ok := p.load(season, place.of); ok {
			year.Bands = append(year.Bands, p.stoodBand(load, place.name, place.class, place.height, first, last))
		}
	}
	if band, ok := p.houseBand(first, last); ok {
		year.Bands = append(year.Bands, band)
	}
	if len(year.Bands) == 0 {
		return nil
	}
	changes := p.changesOf(season)
	for _, c := range changes {
		if c.Date >= first && c.Date <= last {
			year.Marks = append(year.Marks, c.Date)
		}
	}
	part := &yearPart{Title: p.yearTitle(season), Caption: p.yearCaption(season)}
	year.Title = "Each day of " + words.Year(season) + ": what stood in the house"
	part.Drawing = year.Draw()
	return part
}

// daysOf is from the first sowing of a season to the last of its batches' ends. An open
// batch counts up to where it is taken to stand.
func (p *page) daysOf(season int) (first, last records.Date) {
	for _, b := range p.seasons[season] {
		if first == 0 || b.Sown < first {
			first = b.Sown
		}
		last = max(last, b.End)
	}
	return first, last
}

// load is the load of the benches or the chambers in a season.
func (p *page) load(season int, of room.PlaceKind) (room.Load, bool) {
	i := slices.IndexFunc(p.r.Room.Load, func(l room.Load) bool { return l.Season == season && l.Kind == of })
	if i < 0 {
		return room.Load{}, false
	}
	return p.r.Room.Load[i], true
}

// stoodBand is what stood in a place, with its places as a line and its peak. The band
// reaches to whichever is higher, the peak or what there is room for, and a little more,
// so that neither line lies on its edge. Steps before the first day count as of it.
func (p *page) stoodBand(l room.Load, title, class string, height float64, first, last records.Date) draw.Band {
	most := l.Peak
	if l.Capacity.Known {
		most = max(most, l.Capacity.Value)
	}
	band := draw.Band{Name: title, Class: class, Height: height, Most: most * 1.02, Limit: l.Capacity}
	if l.Capacity.Known {
		band.Says = words.Number(l.Capacity.Value) + " places"
	}
	if l.Kind == room.BenchPlace {
		band.Peak, band.PeakAt, band.PeakIs = l.PeakDate, l.Peak, words.Number(l.Peak)+" on "+words.DayMonth(l.PeakDate)
	}
	for _, u := range p.r.Room.InUse {
		if u.Place != l.Place || u.Date > last {
			continue
		}
		step := draw.Step{Day: max(u.Date, first), Is: u.Trays}
		if n := len(band.Steps); n > 0 && band.Steps[n-1].Day == step.Day {
			band.Steps[n-1] = step
			continue
		}
		band.Steps = append(band.Steps, step)
	}
	return band
}

// houseBand is the lowest and highest temperature of each day in the house; a line marks
// what is too hot for any crop (rule "Alarms"). Days without both readings are left out;
// fewer than two such days are no picture. 0 degrees is always in it, so a mild spring
// does not look like frost.
func (p *page) houseBand(first, last records.Date) (draw.Band, bool) {
	s := p.r.Book.Settings
	band := draw.Band{Name: "In the house", Class: "temp", Height: 46, Least: math.Inf(1), Most: math.Inf(-1)}
	var hottest records.Date
	high := math.Inf(-1)
	for _, h := range p.r.Book.House {
		if h.Date < first || h.Date > last || !h.Low.Known || !h.High.Known {
			continue
		}
		band.Spans = append(band.Spans, draw.Span{Day: h.Date, Low: h.Low.Value, High: h.High.Value})
		band.Least, band.Most = min(band.Least, h.Low.Value), max(band.Most, h.High.Value)
		if h.High.Value > high || h.High.Value == high && h.Date < hottest { // of equals the first day
			hottest, high = h.Date, h.High.Value
		}
	}
	if len(band.Spans) < 2 {
		return draw.Band{}, false
	}
	slices.SortStableFunc(band.Spans, func(a, b draw.Span) int { return int(a.Day - b.Day) })
	band.Least = min(band.Least, 0)
	if band.Most > tooHot {
		band.Limit, band.Says = records.Known(float64(tooHot)), words.Degrees(s)(tooHot)
	}
	band.Peak, band.PeakAt, band.PeakIs = hottest, band.Most, words.Degrees(s)(high)+" on "+words.DayMonth(hottest)
	return band, true
}

// tooHot is the temperature in the house, Celsius, above which it is an alarm (rule
// "Alarms").
const tooHot = 40

// yearTitle says when the house was fullest. Where the capacity is not written the peak is
// told in trays and nothing is said about how full that was.
func (p *page) yearTitle(season int) template.HTML {
	bench, ok := p.load(season, room.BenchPlace)
	switch {
	case !ok:
		return say("The year %s in the house", words.Year(season))
	case !bench.Capacity.Known:
		return say("The house was fullest on %s, with %s", words.DayMonth(bench.PeakDate), words.Plural(bench.Peak, "tray", "trays"))
	case bench.DaysOver.Or(0) > 0:
		return say("The benches were too full on %s", words.Plural(bench.DaysOver.Value, "day", "days"))
	}
	return say("The house was fullest on %s, with %s of %s places taken", words.DayMonth(bench.PeakDate), words.Number(bench.Peak), words.Number(bench.Capacity.Value))
}

// readIn reports whether the temperature in the house is drawn.
func (p *page) readIn(first, last records.Date) bool {
	_, ok := p.houseBand(first, last)
	return ok
}

// yearCaption says what is drawn and tells of the chambers and the assumed stays.
func (p *page) yearCaption(season int) template.HTML {
	out := say("Each day of %s.", words.Year(season))
	if first, last := p.daysOf(season); p.readIn(first, last) {
		out = say("Each day of %s; in the house from its lowest to its highest temperature.", words.Year(season))
	}
	if chamber, ok := p.load(season, room.ChamberPlace); ok {
		of := template.HTML("")
		if chamber.Capacity.Known {
			of = say(" of %s places", words.Number(chamber.Capacity.Value))
		}
		out = join(out, say("The chambers were fullest on %s: %s%s.", words.DayMonth(chamber.PeakDate), words.Number(chamber.Peak), of))
	}
	assumed := batch.Filter(p.seasons[season], func(b *report.Record) bool { return b.EndHow == batch.Assumed })
	if n := len(assumed); n > 0 {
		out = join(out, say("%s without a date out are drawn as long as their crop usually stands.", words.Batches(n)))
	}
	return join(out, p.markedWords(season), p.dataLink("in_use"))
}

// markedWords names the changes that are marked on the drawing by their numbers. The
// numbers are those on the drawing, in order of day; a change outside of its days has
// none.
func (p *page) markedWords(season int) template.HTML {
	first, last := p.daysOf(season)
	var marked []template.HTML
	for _, c := range p.changesOf(season) {
		if c.Date >= first && c.Date <= last {
			marked = append(marked, say("%s %s", words.Whole(len(marked)+1), name(c.What)))
		}
	}
	if len(marked) == 0 {
		return ""
	}
	return say("Marked, what was done differently: %s.", list(marked))
}
