package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/report"
	"traybook/report/trade"
)

// chamberPart is the germination chambers of a season.
type chamberPart struct {
	Words  template.HTML
	Figure *figure
	Crops  []*table
	Usual  *table
}

// chamberPart is nil where nothing is written of a chamber.
func (p *place) chamberPart(season int) *chamberPart {
	rows := slices.DeleteFunc(slices.Clone(p.r.Chambers), func(c report.ChamberFigure) bool { return c.Season != season })
	if len(rows) == 0 {
		return nil
	}
	part := &chamberPart{Words: p.chamberLoad(season)}
	part.Figure = p.figure(seasonChart("chamber", season), "The chambers", "Batches by the chamber they stood in, and what the thermometer said.", p.chamberTable(season, rows))
	for _, c := range rows {
		part.Crops = append(part.Crops, p.chamberCrops(c))
	}
	part.Usual = p.usualDays(rows)
	return part
}

// chamberLoad says how full the chambers were.
func (p *place) chamberLoad(season int) template.HTML {
	for _, m := range p.r.Room {
		if m.Season != season || m.Kind != report.ChamberPlace {
			continue
		}
		most := say("Most trays stood in the chambers on %s: %s", longDate(m.PeakDate), plural(m.Peak, "tray", "trays"))
		switch {
		case !m.Capacity.Known:
			return say("%s. How many they hold is not written: chamber_places in book.csv.", most)
		case m.DaysOver.Or(0) > 0:
			return say("%s, where %s fit: too full on %s.", most, number(m.Capacity.Value), plural(m.DaysOver.Value, "day", "days"))
		case m.Peak == m.Capacity.Value:
			return say("%s, which is all they hold.", most)
		}
		return say("%s of the %s that they hold.", most, number(m.Capacity.Value))
	}
	return "How full they were cannot be told: the day out of the chamber (chamber_out in sowings.csv) is not written."
}

func chamberName(c string) template.HTML {
	if c == "" {
		return "the chamber"
	}
	return markup(name(c))
}

func (p *place) chamberTable(season int, rows []report.ChamberFigure) *table {
	t := p.table("chambers", say("Chambers, season %s", fmt.Sprint(season)), "chambers", plain("Chamber"),
		nums("Emergence", "Batches counted", "Days in", "Readings", "Mean", "Lowest to highest"))
	for _, c := range rows {
		t.add(chamberName(c.Chamber), of(c.Share, percent), whole(c.Batches), of(c.DaysIn, daysNumber), whole(c.Readings), of(c.MeanTemp, p.temp), p.tempRange(c.LowTemp, c.HighTemp))
	}
	t.note("Different crops stand in different chambers, so the emergence of one beside another does not blame the chamber. Days in: the middle batch.")
	return t
}

// chamberCrops sets the readings beside what each crop usually likes.
func (p *place) chamberCrops(c report.ChamberFigure) *table {
	t := p.table("chamber-crops-"+slug(c.Chamber), say("Crops in %s beside their usual range", chamberName(c.Chamber)), "", plain("Crop"),
		nums("Batches", "Usual", "Mean while there", "Readings outside"))
	for _, crop := range c.Crops {
		outside := cell{Value: noneYet}
		if crop.Outside.Known {
			outside = cell{Value: markup(percent(crop.Outside.Value))}
			if crop.Outside.Value >= 0.5 {
				outside.Class = "bad"
			}
		}
		t.add(name(crop.Crop), whole(crop.Batches), p.tempRange(crop.UsualLow, crop.UsualHigh), of(crop.MeanTemp, p.temp), outside)
	}
	t.note("Usual: what handbooks give for the crop. A dash: the crop is not in the table, or there is no reading while it stood there.")
	return t
}

// usualTemps are the temperatures of the trade table that a chamber may have, in
// degrees Celsius.
var usualTemps = []float64{10, 15, 20, 25, 30, 35}

// usualDays is how long the crops that stood in the chambers take at what
// temperature, in the trade's own table.
func (p *place) usualDays(rows []report.ChamberFigure) *table {
	var heads []string
	for _, c := range usualTemps {
		heads = append(heads, p.temp(c))
	}
	t := p.table("usual-days", "Days from sowing to emergence by soil temperature; beside them the share of seeds that made a sound seedling", "", plain("Crop"), nums(heads...))
	var crops []string
	for _, c := range rows {
		for _, crop := range c.Crops {
			if !slices.Contains(crops, crop.Crop) {
				crops = append(crops, crop.Crop)
			}
		}
	}
	slices.Sort(crops)
	for _, crop := range crops {
		if tested := trade.EmergenceDays(crop); tested != nil {
			cells := []any{name(crop)}
			for _, c := range usualTemps {
				cells = append(cells, emergenceDayCell(tested, c))
			}
			t.add(cells...)
		}
	}
	t.note("Source: Harrington and Minges (1954), seed half an inch deep. These are not this farm’s figures. The warmest is not the best: seed may come up fast and unsound. A dash: not tested, or none came up.")
	return t
}

func emergenceDayCell(tested []trade.EmergenceDay, celsius float64) cell {
	for _, d := range tested {
		if d.TempC == celsius && d.Days.Known {
			return with(daysNumber(d.Days.Value), of(d.Normal, percent))
		}
	}
	return cell{Value: noneYet}
}
