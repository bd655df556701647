package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/report"
	"traybook/report/chart"
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

// roomNow is the room of the season reviewed as the records show it.
func (p *place) roomNow() roomPart {
	season := p.r.Season
	rooms := roomsOf(p.r.Room, season)
	part := roomPart{Words: join(p.bindsWords(rooms), p.stillOpenWords(season)), Table: p.roomTable("room", season, rooms, "room"), Data: p.dataFile("in_use")}
	for _, m := range rooms {
		f := p.figure(chart.Name("room", fmt.Sprint(season), m.Place), string(roomTitle(m)), "", nil)
		if m.Kind != report.TrayPlace || m.BindsFirst {
			part.Charts = append(part.Charts, f)
		} else {
			part.Rest.Figures = append(part.Rest.Figures, f)
		}
	}
	part.Rest.Summary = "The other tray codes through the season"
	part.Seasons.Summary = "Earlier seasons"
	for _, other := range p.otherSeasonsBack() {
		part.Seasons.Tables = append(part.Seasons.Tables, p.roomTable("room", other, roomsOf(p.r.Room, other), "room"))
	}
	return part
}

// stillOpenWords warns that a season is not over.
func (p *place) stillOpenWords(season int) template.HTML {
	if season == 0 || p.r.Finished(season) {
		return ""
	}
	return say("The season is still under way: this is what stood up to %s.", longDate(p.r.LastDate))
}

func roomsOf(all []report.Room, season int) []report.Room {
	out := slices.DeleteFunc(slices.Clone(all), func(m report.Room) bool { return m.Season != season })
	slices.SortStableFunc(out, func(a, b report.Room) int { return int(a.Kind) - int(b.Kind) })
	return out
}

// roomTitle names a place in plain text.
func roomTitle(m report.Room) string {
	switch m.Kind {
	case report.BenchPlace:
		return "The benches"
	case report.ChamberPlace:
		return "The chambers"
	}
	return m.Place + " trays"
}

func roomName(m report.Room) template.HTML {
	if m.Kind == report.TrayPlace {
		return say("%s trays", name(m.Place))
	}
	return markup(roomTitle(m))
}

// bindsWords names what binds first and how far all could grow.
func (p *place) bindsWords(rooms []report.Room) template.HTML {
	for _, m := range rooms {
		if !m.BindsFirst {
			continue
		}
		full := say("<strong>%s bind first.</strong> On %s (%s) %s of %s were taken", capitalHTML(m), longDate(m.PeakDate), isoWeekOf(m.PeakDate), number(m.Peak), number(m.Capacity.Value))
		return say("%s: %s%s.", full, growthWords(m), p.overWords(m))
	}
	return "What binds first cannot be told: write bench_places and chamber_places into book.csv, and count into trays.csv."
}

func capitalHTML(m report.Room) template.HTML {
	if m.Kind == report.TrayPlace {
		return say("The %s", roomName(m))
	}
	return roomName(m)
}

func growthWords(m report.Room) string {
	switch g := m.GrowthLeft.Value; {
	case g >= 0.005:
		return "everything could grow by " + percent(g) + " before they are full"
	case g > -0.005:
		return "there is no room to grow"
	default:
		return "everything would have to shrink by " + percent(-g) + " to fit"
	}
}

func (p *place) overWords(m report.Room) string {
	if m.DaysOver.Known && m.DaysOver.Value > 0 {
		return ", and on " + plural(m.DaysOver.Value, "day", "days") + " more stood than there is room for"
	}
	return ""
}

// roomTable is a season's load against capacity.
func (p *place) roomTable(id string, season int, rooms []report.Room, data string) *table {
	t := p.table(fmt.Sprint(id, "-", season), say("How full it was, season %s, in trays (benches in places)", fmt.Sprint(season)), data,
		plain("Place"), nums("Holds", "Most at once"), plain("On"), nums("Days over", "Room to grow"))
	for _, m := range rooms {
		place := cell{Value: roomName(m)}
		if m.BindsFirst {
			place.Sub = template.HTML(map[bool]string{true: "binds first", false: "bind first"}[m.Kind == report.TrayPlace])
		}
		t.add(place, holdsText(m), number(m.Peak), isoDate(m.PeakDate), daysOverCell(m), growthCell(m))
	}
	return t
}

func holdsText(m report.Room) string {
	switch {
	case m.Uncounted:
		return "count not written"
	case !m.Capacity.Known:
		return noneYet
	}
	return number(m.Capacity.Value)
}

func daysOverCell(m report.Room) cell {
	if !m.DaysOver.Known || m.Uncounted {
		return cell{Value: noneYet}
	}
	c := cell{Value: markup(whole(m.DaysOver.Value))}
	if m.DaysOver.Value > 0 {
		c.Class = "bad"
	}
	return c
}

func growthCell(m report.Room) cell {
	if !m.GrowthLeft.Known || m.Uncounted {
		return cell{Value: noneYet}
	}
	return cell{Value: markup(signed(100*m.GrowthLeft.Value, 0) + nbsp + "%")}
}

// roomThen is the room "if" the farm grew or switched codes; nil where that was
// not asked for.
func (p *place) roomThen() *roomPart {
	then := p.r.If
	if then == nil {
		return nil
	}
	rooms := roomsOf(then.Room, p.r.Season)
	part := &roomPart{Words: join(p.ifWords(then), p.bindsWords(rooms)), Table: p.roomTable("room-if", p.r.Season, rooms, "")}
	for _, b := range then.Buys {
		if b.Buy != nil {
			part.Words = join(part.Words, p.buyCount(b.Tray, *b.Buy))
		}
	}
	if len(then.Buys) > 0 {
		part.Words = join(part.Words, "What a use gains is taken as the records show it.")
	}
	return part
}

// ifWords says what is supposed.
func (p *place) ifWords(then *report.If) template.HTML {
	var parts []template.HTML
	if then.Grow != 1 {
		parts = append(parts, say("every batch had %s times its trays", number(then.Grow)))
	}
	for _, s := range then.Switch {
		parts = append(parts, say("what stood in %s stood in %s", name(s.From), name(s.To)))
	}
	return say("If %s:", list(parts))
}
