package templates

import (
	"html/template"
	"strings"

	"traybook/report"
	"traybook/templates/draw"
)

// fact is a line of a batch's story.
type fact struct {
	Name string
	Text template.HTML
}

// storyBytes is about how many bytes of a page the story of a batch takes, its row in the
// table on top with it.
const storyBytes = 2600

// stories tells batches one after the other: code and variety, life, figures, facts.
func (p *page) stories(batches []*report.Record, axis draw.Axis) template.HTML {
	var b strings.Builder
	b.Grow(storyBytes * len(batches))
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
