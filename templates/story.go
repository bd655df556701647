package templates

import (
	"html/template"
	"strings"

	"traybook/records"
	"traybook/report"
	"traybook/report/words"
	"traybook/templates/draw"
)

// fact is a line of a batch's story.
type fact struct {
	Name string
	Text template.HTML
}

// storySize is about how many bytes of a page the story of a batch takes, its row in the
// table on top with it.
func storySize(b *report.Record) int {
	return 2200 + 70*(len(b.Counts.Rows)+len(b.Looks)) + len(b.Note)
}

// stories tells batches one after the other: code and variety, life, figures, facts.
func (p *page) stories(batches []*report.Record, axis draw.Axis) template.HTML {
	var b strings.Builder
	n := 0
	for _, r := range batches {
		n += storySize(r)
	}
	b.Grow(n)
	for _, r := range batches {
		p.writeStory(&b, r, axis)
	}
	return template.HTML(b.String())
}

func (p *page) writeStory(b *strings.Builder, r *report.Record, axis draw.Axis) {
	put(b, "\n<article class=\"rec\" id=\"", anchor(p.anchors[r.Code]), `"><h3>`, batchCode(r.Code), ` <span>`, name(r.Variety), "</span></h3>\n",
		lifeOf(r).Draw(axis), "\n<p class=\"fig\">")
	for _, f := range p.batchFigures(r) {
		put(b, "<span>", f, "</span> ")
	}
	b.WriteString("</p>\n<dl>")
	for _, f := range p.story(r) {
		put(b, "<dt>", f.Name, "</dt><dd>", f.Text, "</dd>")
	}
	b.WriteString("</dl></article>")
}

// story tells a batch from sowing to its cost; what is not known is not told,
// unless the reader would look for it.
func (p *page) story(b *report.Record) []fact {
	var facts []fact
	tell := func(label string, parts ...template.HTML) {
		if text := join(parts...); text != "" {
			facts = append(facts, fact{label, text})
		}
	}
	tell("Sown", p.sownWords(b), p.chamberWords(b), forField(b))
	tell("Counts", p.countWords(b), countRemark(b))
	tell("Looks", lookWords(b))
	tell("Out", p.outWords(b), endWords(b))
	tell("Plants", usableHow(b))
	tell("Cost", p.batchCost(b))
	tell("Note", noteWords(b.Note))
	return facts
}

// countRemark says why a batch's counts tell nothing of what came up.
func countRemark(b *report.Record) template.HTML {
	switch {
	case b.Early:
		return "Its last count came too early to stand for the batch."
	case b.FromSeed && !b.Looked.Known:
		return "No count."
	}
	return ""
}

// sownWords tells what was sown into what, and where it came from.
func (p *page) sownWords(b *report.Record) template.HTML {
	out := say("%s, %s of %s", words.LongDate(b.Sown), words.Plural(b.Trays, "tray", "trays"), name(b.Tray))
	if b.Kind != "" {
		out = say("%s (%s)", out, name(b.Kind))
	}
	if b.CellsSown.Known {
		out = say("%s, %s", out, words.Plural(b.CellsSown.Value, "cell", "cells"))
	}
	if b.SeedsPerCell > 1 {
		out = say("%s, %s seeds a cell", out, words.Whole(b.SeedsPerCell))
	}
	if b.Start != "" && b.Start != records.FromSeed {
		out = say("%s, from %s", out, b.Start)
	}
	return join(say("%s.", out), p.originWords(b))
}

// originWords says where a batch comes from: its lot, the batch it was moved
// from, the batch it replaces.
func (p *page) originWords(b *report.Record) template.HTML {
	var out []template.HTML
	switch {
	case b.Lot != "":
		out = append(out, say("Seed lot %s.", p.lot(b.Season, b.Lot)))
	case b.FromSeed:
		out = append(out, "No seed lot written.")
	}
	if b.From != "" {
		out = append(out, say("Moved on from %s.", p.batch(b.From)))
	}
	if b.Replaces != "" {
		out = append(out, say("Sown again for %s.", p.batch(b.Replaces)))
	}
	return join(out...)
}

// chamberWords tells the stay in a chamber, where anything is written of it.
func (p *page) chamberWords(b *report.Record) template.HTML {
	switch {
	case b.Chamber == "" && !b.ChamberOut.Known():
		return ""
	case !b.ChamberOut.Known():
		return say("In %s; the day it came out is not written.", name(b.Chamber))
	}
	stay := words.Days(float64(b.ChamberOut - b.Sown))
	if b.Chamber == "" {
		return say("In the chamber for %s.", stay)
	}
	return say("In %s for %s.", name(b.Chamber), stay)
}

// forField tells the day and the plants that were planned.
func forField(b *report.Record) template.HTML {
	var parts []string
	if b.Planned.Known() {
		parts = append(parts, "for "+words.LongDate(b.Planned))
	}
	if b.Wanted.Known {
		parts = append(parts, words.Plural(b.Wanted.Value, "plant", "plants")+" wanted")
	}
	if len(parts) == 0 {
		return ""
	}
	return say("%s.", capital(strings.Join(parts, ", ")))
}

// countWords tells the counts that are used.
func (p *page) countWords(b *report.Record) template.HTML {
	var lines []template.HTML
	for _, c := range b.Counts.Rows {
		lines = append(lines, countLine(b, c))
	}
	return lineList(lines)
}

// countLine is one count: day, tray, what was up or empty, what was lost.
func countLine(b *report.Record, c *records.Count) template.HTML {
	var s strings.Builder
	s.WriteString("day " + words.Whole(int(c.Date-b.Sown)))
	if c.Tray.Known {
		s.WriteString(", tray " + words.Whole(c.Tray.Value))
	}
	switch {
	case c.Emerged.Known:
		s.WriteString(": " + words.Whole(c.Emerged.Value) + " up")
	case c.Empty.Known:
		s.WriteString(": " + words.Whole(c.Empty.Value) + " empty")
	}
	if c.Cells.Known && (c.Emerged.Known || c.Empty.Known) {
		s.WriteString(" of " + words.Plural(c.Cells.Value, "cell", "cells"))
	}
	if c.Lost.Known && c.Lost.Value > 0 {
		s.WriteString("; " + words.Whole(c.Lost.Value) + " lost since")
	}
	if cause := c.Cause(); cause != "" {
		put(&s, " (", name(cause), ")")
	}
	return join(template.HTML(s.String()), noteWords(c.Note()))
}

// mostLines is how many rows of a log a batch's story tells: more are no story.
const mostLines = 200

// lineList sets lines after one another, the first mostLines; nothing of no lines.
func lineList(lines []template.HTML) template.HTML {
	if len(lines) == 0 {
		return ""
	}
	var b strings.Builder
	put(&b, upper(lines[0]))
	for _, l := range lines[1:min(len(lines), mostLines)] {
		put(&b, "; ", l)
	}
	if more := len(lines) - mostLines; more > 0 {
		b.WriteString("; and " + words.Whole(more) + " more; all are in the log")
	}
	b.WriteByte('.')
	return template.HTML(b.String())
}

// noteWords is a note of the grower's, in quotes.
func noteWords(s string) template.HTML {
	if s == "" {
		return ""
	}
	return say("“%s”", name(s))
}
