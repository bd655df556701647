package templates

import (
	"traybook/records"
	"traybook/report"
	"traybook/templates/draw"
)

// teller writes the stories of a page's batches: a pen on a page.
type teller struct {
	*page
	*pen
	life draw.Life
}

// telling writes a sentence about a batch, or nothing where there is nothing to say.
type telling = func(*teller, *report.Record)

// fact is a line of a batch's story; one whose sentences are all empty is left out.
type fact struct {
	label     string
	sentences []telling
}

// facts tell a batch from sowing to its cost; what is not known is not told, unless the
// reader would look for it.
var facts = []fact{
	{"Sown", []telling{(*teller).sownWords, (*teller).lotWords, (*teller).fromWords, (*teller).replacedWords,
		(*teller).chamberWords, (*teller).forField}},
	{"Counts", []telling{(*teller).countWords, (*teller).countRemark}},
	{"Looks", []telling{(*teller).lookWords}},
	{"Out", []telling{(*teller).outWords, (*teller).endWords}},
	{"Plants", []telling{(*teller).usableHow}},
	{"Cost", []telling{(*teller).batchCost}},
	{"Note", []telling{func(t *teller, b *report.Record) { t.note(b.Note) }}},
}

// writeStories tells batches one after the other: code and variety, life, figures, facts.
func (p *page) writeStories(w *pen, batches []*report.Record, axis draw.Axis) {
	t := &teller{page: p, pen: w}
	for _, b := range batches {
		t.writeStory(b, axis)
	}
}

func (t *teller) writeStory(b *report.Record, axis draw.Axis) {
	_, id := t.anchors.of(b)
	t.put("\n<article class=\"rec\" id=\"", id, `"><h3>`)
	t.code(b.Code)
	t.put(" <span>")
	t.name(b.Variety)
	t.put("</span></h3>\n")
	t.out = t.lifeOf(b).Append(t.out, axis)
	t.put("\n<p class=\"fig\">")
	t.writeFigures(b)
	t.put("</p>\n<dl>")
	for _, f := range facts {
		t.writeFact(f, b)
	}
	t.put("</dl></article>")
}

// writeFact takes back what stands around sentences that write nothing.
func (t *teller) writeFact(f fact, b *report.Record) {
	start := len(t.out)
	t.put("<dt>", f.label, "</dt><dd>")
	first := len(t.out)
	for _, write := range f.sentences {
		before := len(t.out)
		t.space(first)
		from := len(t.out)
		if write(t, b); len(t.out) == from {
			t.out = t.out[:before]
		}
	}
	if len(t.out) == first {
		t.out = t.out[:start]
		return
	}
	t.put("</dd>")
}

// sownWords tells what was sown into what.
func (t *teller) sownWords(b *report.Record) {
	t.date(b.Sown)
	t.put(", ")
	t.plural(b.Trays, "tray", "trays")
	t.put(" of ")
	t.name(b.Tray)
	if b.Kind != "" {
		t.put(" (")
		t.name(b.Kind)
		t.put(")")
	}
	if b.CellsSown.Known {
		t.put(", ")
		t.plural(float64(b.CellsSown.Value), "cell", "cells")
	}
	if b.SeedsPerCell > 1 {
		t.put(", ")
		t.whole(b.SeedsPerCell)
		t.put(" seeds a cell")
	}
	if b.Start != "" && b.Start != records.FromSeed {
		t.put(", from ")
		t.text(string(b.Start))
	}
	t.put(".")
}

// lotWords names the seed lot.
func (t *teller) lotWords(b *report.Record) {
	switch {
	case b.Lot != "":
		t.put("Seed lot ")
		t.writeLot(t.pen, b.Season, b.Lot)
		t.put(".")
	case b.FromSeed:
		t.put("No seed lot written.")
	}
}

// fromWords names the batch that it was moved on from.
func (t *teller) fromWords(b *report.Record) {
	if b.From != "" {
		t.put("Moved on from ")
		t.writeCode(t.pen, b.From)
		t.put(".")
	}
}

// replacedWords names the batch that it was sown for again.
func (t *teller) replacedWords(b *report.Record) {
	if b.Replaces != "" {
		t.put("Sown again for ")
		t.writeCode(t.pen, b.Replaces)
		t.put(".")
	}
}

// chamberWords tells the stay in a chamber, where anything is written of it.
func (t *teller) chamberWords(b *report.Record) {
	if b.Chamber == "" && !b.ChamberOut.Known() {
		return
	}
	t.put("In ")
	if b.Chamber == "" {
		t.put("the chamber")
	} else {
		t.name(b.Chamber)
	}
	if !b.ChamberOut.Known() {
		t.put("; the day it came out is not written.")
		return
	}
	t.put(" for ")
	t.days(float64(b.ChamberOut - b.Sown))
	t.put(".")
}

// forField tells the day and the plants that were planned.
func (t *teller) forField(b *report.Record) {
	switch {
	case b.Planned.Known():
		t.put("For ")
		t.date(b.Planned)
		if b.Wanted.Known {
			t.put(", ")
		}
	case !b.Wanted.Known:
		return
	}
	if b.Wanted.Known {
		t.plural(float64(b.Wanted.Value), "plant", "plants")
		t.put(" wanted")
	}
	t.put(".")
}
