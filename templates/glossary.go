package templates

import "html/template"

// term is a word with its meaning and its anchor.
type term struct{ ID, Word, Meaning string }

// glossaryPage explains the words of the pages.
type glossaryPage struct{ Terms []term }

// head is the page's heading.
func (v glossaryPage) head() (heading, lead template.HTML) {
	return "Words", "The words of these pages, as the trade uses them."
}

// glossaryView gives each word its anchor.
func glossaryView(p *page) any {
	v := glossaryPage{}
	for _, t := range terms {
		v.Terms = append(v.Terms, term{p.id("term-" + slug(t[0])), t[0], t[1]})
	}
	return v
}

// terms are the trade's words as the pages use them, by the alphabet.
var terms = [][2]string{
	{"Air pruning", "A root tip that meets open air dries and stops, and side roots form behind it. Trays with open cell walls or bottoms do this; they cost more than solid-walled ones."},
	{"Alarm", "A day on which it was too warm or too cold for what stood there."},
	{"Assumed end", "The day on which a batch is taken to have ended because no one wrote it: after the crop’s usual stay."},
	{"Batch", "One variety sown on one day into one tray code, under one code on the label."},
	{"Bench", "Where trays stand after the chamber; its room is counted in places."},
	{"Blank", "A cell sown and empty. In the logs a blank cell of the sheet is something else: unknown."},
	{"Capital recovery", "The even yearly sum that pays back a price with interest over a life."},
	{"Cells", "The holes of a tray, one plug each. The number says nothing about their volume."},
	{"Chamber", "A closed, warm, damp box in which sown trays wait for the first shoots."},
	{"Check", "A halt in growth from cold, drought, hunger or tight roots."},
	{"Clearly better, clearly worse", "The whole range of a difference lies on one side of no difference."},
	{"Cull", "A plant thrown out at grading."},
	{"Damping off", "Seedlings collapsing at the soil line from fungi or water moulds."},
	{"Degree-day", "One day whose mean outdoors lay one degree below 15 °C. Added up, they say how cold a heating season was."},
	{"Emergence", "The shoot shows above the mix. Here: cells with a living seedling at the last count, of the cells looked at. On the pages: “came up”."},
	{"Estimated", "Taken from like batches because the batch’s own records do not tell."},
	{"Failed cells", "Cells sown that gave no usable plant. “Failed” beside a cost is the part that went into them."},
	{"Flat", "A tray, with or without cells."},
	{"Forecast", "What a counted batch will give: what came up, times what other batches kept of theirs."},
	{"Hardening", "Making plants tougher with less water and cooler air before they are set out."},
	{"Kind of tray", "What sort a tray code is: air-pruning, solid-wall, or the farm’s own word."},
	{"Label", "The germination written on a packet."},
	{"Ledger", "All money of a season by category: what batches bear and what none bears."},
	{"Leeway", "How long past the planned day plants stay fit to set out: while four in five still are."},
	{"Leggy", "Tall, thin and pale from heat, crowding or late light."},
	{"Like sowings", "The same variety, cells, kind of tray and seeds a cell, sown in both seasons that are compared."},
	{"Look", "A judgement of some plugs of a batch on one day: how many of those looked at are fit."},
	{"Lot", "Seed of one variety and one source number; the thing a germination figure belongs to."},
	{"Matched sowing", "The same crop, variety and lot sown in two kinds of tray within a week."},
	{"Median", "The middle one when all are put in order."},
	{"Mix", "What cells are filled with."},
	{"Multi-seeded cell", "Several seeds on purpose, planted as a clump. One cell is one plug and one plant here."},
	{"Open batch", "A batch that still stands in the house on the last date in the book."},
	{"Payback", "Uses, or seasons, until a dearer tray has repaid its price."},
	{"Plug", "A seedling with its own little root ball."},
	{"Points", "The difference of two percentages: from 80 % to 85 % is 5 points."},
	{"Potting on", "Moving plants to larger cells or pots."},
	{"Pricking out", "Moving tiny seedlings from an open flat to cells."},
	{"Range", "Where the true figure lies, 95 times in 100 unless the book sets another. The two numbers behind a figure, and the line through its dot."},
	{"Root-bound", "Held so long that roots fill the cell and mat."},
	{"Scatter", "How far batches that should do alike differ, beyond chance."},
	{"Season", "The book’s year; it carries the year in which it ends."},
	{"Short", "Fewer usable plants than the field wants of a batch."},
	{"Solid-wall", "A tray whose cells have closed walls."},
	{"Sow more, sow less", "Advice for a crop whose batches were often short of what was wanted, or gave far more than being sure costs."},
	{"Too few batches", "Fewer than 3, or too few sown alike in the whole book to say how sure the figure is. Their dots are hollow."},
	{"Transplant", "A plant raised in a cell and set out in the field."},
	{"Tray-day", "One tray standing for one day; shared bills are divided by them."},
	{"Treated seed", "Seed carrying a pesticide, often dyed; handled and recorded apart."},
	{"Turnaround", "The days from emptying a tray until it is washed and free."},
	{"Usable", "Fit to be set out today."},
	{"Usable rate", "Usable plants of cells sown."},
	{"Use", "One filling of a tray, from sowing to emptying."},
	{"Worth today", "What later gains are worth now, at the book’s rate of interest, less the price."},
}
