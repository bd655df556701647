package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/chart"
	"traybook/report/room"
	"traybook/report/trays"
	"traybook/report/words"
)

// roomPart is how full benches, chambers and trays were.
type roomPart struct {
	Words   template.HTML
	Table   *table
	Charts  []*figure
	Rest    more
	Seasons more
	Data    dataFile
}

// roomNow is the room of the season reviewed as the records show it. Benches, chambers and
// what binds first have their charts open; other tray codes wait behind a line, since a
// large farm has many. Earlier seasons have their tables alone.
func (p *page) roomNow() roomPart {
	season := p.season
	loads := loadsOf(p.r.Room.Load, season)
	part := roomPart{Words: join(p.bindsWords(loads), p.stillOpenWords(season)), Table: p.roomTable("room", season, loads, "room"), Data: p.dataFile("in_use")}
	for _, l := range loads {
		f := p.figure(chart.Name("room", fmt.Sprint(season), l.Place), roomTitle(l), "", nil)
		if l.Kind != room.TrayPlace || l.BindsFirst {
			part.Charts = append(part.Charts, f)
		} else {
			part.Rest.Figures = append(part.Rest.Figures, f)
		}
	}
	part.Rest.Summary = "The other tray codes through the season"
	if len(loads) > chart.MostRooms {
		part.Rest.Summary = say("Other tray codes through the season, of the %s places that were fullest", words.Whole(chart.MostRooms))
	}
	part.Seasons.Summary = "Earlier seasons"
	for _, other := range p.earlierSeasons() {
		part.Seasons.Tables = append(part.Seasons.Tables, p.roomTable("room", other, loadsOf(p.r.Room.Load, other), "room"))
	}
	return part
}

// stillOpenWords warns that a season is not over.
func (p *page) stillOpenWords(season int) template.HTML {
	if season == 0 || p.r.Batches.Finished(season) {
		return ""
	}
	return say("The season is still under way: this is what stood up to %s.", words.LongDate(p.r.Batches.Today))
}

// loadsOf are a season's loads: benches, chambers, then tray codes.
func loadsOf(all []room.Load, season int) []room.Load {
	out := batch.Filter(all, func(l room.Load) bool { return l.Season == season })
	slices.SortStableFunc(out, func(a, b room.Load) int { return int(a.Kind) - int(b.Kind) })
	return out
}

// roomTitle names a place in plain text.
func roomTitle(l room.Load) string {
	switch l.Kind {
	case room.BenchPlace:
		return "The benches"
	case room.ChamberPlace:
		return "The chambers"
	}
	return l.Place + " trays"
}

// roomName is roomTitle as HTML, with the grower's own code set apart.
func roomName(l room.Load) template.HTML {
	if l.Kind == room.TrayPlace {
		return say("%s trays", name(l.Place))
	}
	return markup(roomTitle(l))
}

// bindsWords names what binds first and how far all could grow. Growth is of all batches
// alike: twice the trays of each, sown on the same days. A place whose capacity is not
// written cannot bind, so the sentence asks for it.
func (p *page) bindsWords(loads []room.Load) template.HTML {
	for _, l := range loads {
		if !l.BindsFirst {
			continue
		}
		full := say("<strong>%s bind first.</strong> On %s (%s) %s of %s were taken", capitalHTML(l), words.LongDate(l.PeakDate), isoWeekOf(l.PeakDate), words.Number(l.Peak), words.Number(l.Capacity.Value))
		return say("%s: %s%s.", full, growthWords(l), p.overWords(l))
	}
	return "What binds first cannot be told: write bench_places and chamber_places into book.csv, and count into trays.csv."
}

// capitalHTML is roomName at the head of a sentence.
func capitalHTML(l room.Load) template.HTML {
	if l.Kind == room.TrayPlace {
		return say("The %s", roomName(l))
	}
	return roomName(l)
}

// growthWords says how far everything could grow, to whole percent. Less than half a
// percent either way is as full as it can be.
func growthWords(l room.Load) string {
	switch g := l.GrowthLeft.Value; {
	case g >= 0.005:
		return "everything could grow by " + words.Percent(g) + " before they are full"
	case g > -0.005:
		return "there is no room to grow"
	default:
		return "everything would have to shrink by " + words.Percent(-g) + " to fit"
	}
}

// overWords says on how many days there was too little room.
func (p *page) overWords(l room.Load) string {
	if l.DaysOver.Known && l.DaysOver.Value > 0 {
		return ", and on " + words.Plural(l.DaysOver.Value, "day", "days") + " more stood than there is room for"
	}
	return ""
}

// roomTable is a season's load against capacity.
func (p *page) roomTable(id string, season int, loads []room.Load, data string) *table {
	t := p.table(fmt.Sprint(id, "-", season), say("How full it was, season %s, in trays (benches in places)", fmt.Sprint(season)), data,
		plain("Place"), nums("Holds", "Most at once"), plain("On"), nums("Days over", "Room to grow"))
	for _, l := range loads {
		first := cell{Value: roomName(l)}
		if l.BindsFirst {
			first.Sub = template.HTML(map[bool]string{true: "binds first", false: "bind first"}[l.Kind == room.TrayPlace])
		}
		t.add(first, holdsText(l), words.Number(l.Peak), words.ISODate(l.PeakDate), daysOverCell(l), growthCell(l))
	}
	return t
}

// holdsText is the capacity of a place. A code of which one purchase has no count is told
// apart from one of which nothing is known: the first is a blank to fill.
func holdsText(l room.Load) string {
	switch {
	case l.Uncounted:
		return "count not written"
	case !l.Capacity.Known:
		return words.None
	}
	return words.Number(l.Capacity.Value)
}

// daysOverCell is the days on which more stood than fits. Days are those of the season, up
// to today where it is still under way.
func daysOverCell(l room.Load) cell {
	if !l.DaysOver.Known || l.Uncounted {
		return cell{Value: words.None}
	}
	c := cell{Value: markup(words.Whole(l.DaysOver.Value))}
	if l.DaysOver.Value > 0 {
		c.Class = "bad"
	}
	return c
}

// growthCell is the room to grow, signed, in percent. Below 0 it is how far everything
// would have to shrink to fit.
func growthCell(l room.Load) cell {
	if !l.GrowthLeft.Known || l.Uncounted {
		return cell{Value: words.None}
	}
	return cell{Value: markup(words.Signed(100*l.GrowthLeft.Value, 0) + words.NBSP + "%")}
}

// roomThen is the room "if" the farm grew or switched codes; nil where that was
// not asked for.
func (p *page) roomThen() *roomPart {
	then := p.r.If
	if then == nil {
		return nil
	}
	loads := loadsOf(then.Room, p.season)
	part := &roomPart{Words: join(p.ifWords(then), p.bindsWords(loads)), Table: p.roomTable("room-if", p.season, loads, "")}
	for _, b := range then.Buys {
		if b.Buy != nil {
			part.Words = join(part.Words, say("%s.", pairOf{Decision: trays.Decision{Tray: b.Tray, Other: b.Other, Buy: b.Buy}, Payback: trays.Payback{Tray: b.Tray, Other: b.Other}}.buyTitle()))
		}
	}
	if len(then.Buys) > 0 {
		part.Words = join(part.Words, "What a use gains is taken as the records show it.")
	}
	return part
}

// ifWords says what is supposed.
func (p *page) ifWords(then *report.If) template.HTML {
	var parts []template.HTML
	if then.Grow != 1 {
		parts = append(parts, say("every batch had %s times its trays", words.Number(then.Grow)))
	}
	for _, s := range then.Switch {
		parts = append(parts, say("what stood in %s stood in %s", name(s.From), name(s.To)))
	}
	return say("If %s:", list(parts))
}
