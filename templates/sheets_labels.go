package templates

import (
	"html/template"

	"traybook/records"
	"traybook/report"
	"traybook/report/words"
)

// label is what is cut out and stuck into a tray: the batch's code large, then what it
// is, line by line.
type label struct {
	Code  template.HTML
	Lines []template.HTML
}

// labelsOf are a label for each tray of a batch that was begun. A part of a tray has a
// label too. The day it is wanted for stands beside the day sown, as that is asked most
// often at the bench.
func labelsOf(b *report.Record) []label {
	lines := []template.HTML{say("%s %s", name(b.Crop), name(b.Variety)), say("sown %s", words.ISODate(b.Sown))}
	if b.Planned.Known() {
		lines[1] = say("sown %s · for %s", words.ISODate(b.Sown), words.ISODate(b.Planned))
	}
	lines = append(lines, seedLine(b))
	n := max(1, records.WholeTrays(b.Trays))
	var out []label
	for i := range n {
		tray := say("%s · tray %s of %s", name(b.Tray), words.Whole(i+1), words.Whole(n))
		out = append(out, label{markup(name(b.Code)), append(lines[:len(lines):len(lines)], tray)})
	}
	return out
}

// seedLine is how many seeds stand in a cell and of which lot; for a batch that was not
// sown, what it was started from. A batch from plugs names the batch it was potted on
// from, or just that it came as plugs.
func seedLine(b *report.Record) template.HTML {
	out := say("%s a cell", words.Plural(b.SeedsPerCell, "seed", "seeds"))
	if !b.FromSeed {
		out = say("from %s", name(b.From))
		if b.From == "" {
			out = say("from %s", string(b.Start))
		}
	}
	if b.Lot == "" {
		return out
	}
	return say("%s · lot %s", out, name(b.Lot))
}
