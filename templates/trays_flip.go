package templates

import (
	"html/template"
	"strings"

	"traybook/report/trays"
	"traybook/report/words"
)

// flipOf is one thing that would change the answer: what it is now, where the answer
// becomes none, and where it becomes fewer. first is where the first tray would no longer
// pay or, with none to buy, would begin to; last is where the last of those to buy would
// not.
type flipOf struct {
	what             template.HTML // a tray cost
	now, first, last trays.Num
	more, less       string // or more, or less
	write            func(float64) string
}

// flipsOf are the four, each alone, all else as it is.
func (p *page) flipsOf(a pairOf) []flipOf {
	b := a.Decision.Buy
	uses := func(v float64) string { return words.Tenths(v, "use", "uses") }
	return []flipOf{
		{"a tray cost", a.Price, b.First.Price, b.Last.Price, "or more", "or less", p.money.Sum},
		{"a plant were worth", a.Value, b.First.Value, b.Last.Value, "or more", "or less", p.money.Each},
		{"it lasted", a.Payback.Life.Uses, b.First.Life, b.Last.Life, "or more", "or fewer", uses},
		{say("%s lasted", name(a.other())), a.OtherLife.Uses, b.First.OtherLife, b.Last.OtherLife, "or more", "or fewer", uses},
	}
}

// condition says at what value the answer changes, and to what; empty where none would.
// Where the value that makes it fewer and the one that makes it none are written alike,
// one is said.
func (f flipOf) condition(n int) template.HTML {
	side := f.less
	if f.first.Value > f.now.Value {
		side = f.more
	}
	switch {
	case !f.first.Known:
		return ""
	case n == 0:
		return say("if %s %s than %s", f.what, strings.TrimPrefix(side, "or "), f.write(f.first.Value))
	case !f.last.Known || f.write(f.last.Value) == f.write(f.first.Value):
		return say("none if %s %s %s", f.what, f.write(f.first.Value), side)
	}
	return say("fewer if %s %s %s, none from %s", f.what, f.write(f.last.Value), side, f.write(f.first.Value))
}

// flipSentence says what would change the answer, each alone; where none is bought, what
// would make the first pay.
func (p *page) flipSentence(a pairOf) template.HTML {
	n := a.Decision.Buy.N
	var parts []template.HTML
	for _, f := range p.flipsOf(a) {
		if part := f.condition(n); part != "" {
			parts = append(parts, part)
		}
	}
	switch {
	case len(parts) == 0:
		return ""
	case n == 0:
		return say("<b>What would change it.</b> The first would pay %s.", orList(parts))
	}
	return say("<b>What would change it.</b> %s.", semicolons(parts))
}

// orList joins conditions: a, b, or c.
func orList(parts []template.HTML) template.HTML {
	out := parts[0]
	for i, part := range parts[1:] {
		if i == len(parts)-2 {
			out = say("%s, or %s", out, part)
		} else {
			out = say("%s, %s", out, part)
		}
	}
	return out
}

// semicolons puts parts after one another, the first with a capital.
func semicolons(parts []template.HTML) template.HTML {
	out := upper(parts[0])
	for _, part := range parts[1:] {
		out = say("%s; %s", out, part)
	}
	return out
}

// shortFlip is the price at which the first pair's answer changes. The price is what a
// grower can see in a catalogue; the other three stand on the page of trays.
func (p *page) shortFlip(a pairOf) template.HTML {
	b := a.Decision.Buy
	if b == nil {
		return ""
	}
	part := p.flipsOf(a)[0].condition(b.N)
	switch {
	case part == "":
		return ""
	case b.N == 0:
		return say("The first would pay %s.", part)
	}
	return say("%s.", upper(part))
}
