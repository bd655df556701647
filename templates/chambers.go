package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/room"
	"traybook/report/trade"
	"traybook/report/words"
)

// chamberPart is the germination chambers of a season.
type chamberPart struct {
	Words template.HTML
	Table *table
	Crops []*table
	Usual *table
}

// chamberPart is nil where nothing is written of a chamber. What is written of a chamber
// is a reading, or a batch that stood in it by name.
func (p *page) chamberPart(season int) *chamberPart {
	rows := batch.Filter(p.r.Germination.Chambers, func(c germination.Chamber) bool { return c.Season == season })
	if len(rows) == 0 {
		return nil
	}
	part := &chamberPart{Words: p.chamberLoad(season)}
	part.Table = p.chamberTable(season, rows)
	for _, c := range rows {
		part.Crops = append(part.Crops, p.chamberCrops(c))
	}
	part.Usual = p.usualDays(rows)
	return part
}

// chamberLoad says how full the chambers were, on the fullest day and beyond what fits.
// All chambers together have one capacity, so they are told together; without a day out of
// the chamber nobody knows how long a tray stood there.
func (p *page) chamberLoad(season int) template.HTML {
	for _, l := range p.r.Room.Load {
		if l.Season != season || l.Kind != room.ChamberPlace {
			continue
		}
		most := say("Most trays stood in the chambers on %s: %s", words.LongDate(l.PeakDate), words.Plural(l.Peak, "tray", "trays"))
		switch {
		case !l.Capacity.Known:
			return say("%s. How many they hold is not written: chamber_places in book.csv.", most)
		case l.DaysOver.Or(0) > 0:
			return say("%s, where %s fit: too full on %s.", most, words.Number(l.Capacity.Value), words.Plural(l.DaysOver.Value, "day", "days"))
		case l.Peak == l.Capacity.Value:
			return say("%s, which is all they hold.", most)
		}
		return say("%s of the %s that they hold.", most, words.Number(l.Capacity.Value))
	}
	return "How full they were cannot be told: the day out of the chamber (chamber_out in sowings.csv) is not written."
}

// chamberName is a chamber in a sentence; a farm with one need not name it.
func chamberName(c string) template.HTML {
	if c == "" {
		return "the chamber"
	}
	return markup(name(c))
}

// chamberTable sets the chambers beside one another.
func (p *page) chamberTable(season int, rows []germination.Chamber) *table {
	t := p.table("chambers", say("Chambers, season %s", fmt.Sprint(season)), "chambers", plain("Chamber"),
		nums("Emergence", "Batches counted", "Days in", "Readings", "Mean", "Lowest to highest"))
	for _, c := range rows {
		t.add(chamberName(c.Chamber), words.Of(c.Share, words.Percent), words.Whole(c.Batches), words.Of(c.DaysIn, words.DaysNumber), words.Whole(c.Readings), words.Of(c.MeanTemp, p.temp), p.tempRange(c.LowTemp, c.HighTemp))
	}
	t.note("Different crops stand in different chambers, so the emergence of one beside another does not blame the chamber. Days in: the middle batch.")
	return t
}

// mostlyOutside is the share of readings outside a crop's usual range from which the
// figure is marked; common practice, no source.
const mostlyOutside = 0.5

// chamberCrops sets the readings beside what each crop usually likes. Readings are those
// of the days on which a batch of the crop stood there, not of the whole season.
func (p *page) chamberCrops(c germination.Chamber) *table {
	t := p.table("chamber-crops-"+slug(c.Chamber), say("Crops in %s beside their usual range", chamberName(c.Chamber)), "", plain("Crop"),
		nums("Batches", "Usual", "Mean while there", "Readings outside"))
	for _, crop := range c.Crops {
		outside := cell{Value: words.None}
		if crop.Outside.Known {
			outside = cell{Value: markup(words.Percent(crop.Outside.Value))}
			if crop.Outside.Value >= mostlyOutside {
				outside.Class = "bad"
			}
		}
		t.add(name(crop.Crop), words.Whole(crop.Batches), p.tempRange(crop.UsualLow, crop.UsualHigh), words.Of(crop.MeanTemp, p.temp), outside)
	}
	t.note("Usual: what handbooks give for the crop. A dash: the crop is not in the table, or there is no reading while it stood there.")
	return t
}

// usualTemps are the temperatures of the trade table that a chamber may have, in
// degrees Celsius.
var usualTemps = []float64{10, 15, 20, 25, 30, 35}

// usualDays is how long the crops that stood in the chambers take at what temperature, in
// the trade's own table. They come from trials under even warmth and are shown so that a
// grower can see whether a chamber was slow for its temperature.
func (p *page) usualDays(rows []germination.Chamber) *table {
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

// emergenceDayCell is the days at one temperature, above the share of sound seedlings. A
// temperature at which none came up has a dash too: the source tells no days for it.
func emergenceDayCell(tested []trade.EmergenceDay, celsius float64) cell {
	for _, d := range tested {
		if d.TempC == celsius && d.Days.Known {
			return with(words.DaysNumber(d.Days.Value), words.Of(d.Normal, words.Percent))
		}
	}
	return cell{Value: words.None}
}
