package templates

import (
	"cmp"
	"fmt"
	"html/template"
	"slices"
	"time"

	"traybook/report/words"
)

// causeLoss is what a cause took in a season, over all crops. months are by number from 1;
// place 0 stays empty. worstCrop lost most of it, the first by name of equal ones.
type causeLoss struct {
	cause          string
	cells, batches int
	months         [13]int
	worstCrop      string
	worstCells     int
}

// lossesBy adds a season's losses up by cause, the largest first. A batch that lost cells
// to a cause at two counts is counted as the figures count it, once for each crop and
// cause.
func (p *page) lossesBy(season int) []causeLoss {
	var out []causeLoss
	for _, l := range p.r.Germination.Losses {
		if l.Season != season {
			continue
		}
		i := slices.IndexFunc(out, func(c causeLoss) bool { return c.cause == l.Cause })
		if i < 0 {
			i = len(out)
			out = append(out, causeLoss{cause: l.Cause})
		}
		c := &out[i]
		c.cells, c.batches = c.cells+l.Cells, c.batches+l.Batches
		for m, n := range l.ByMonth {
			c.months[m] += n
		}
		if l.Cells > c.worstCells {
			c.worstCrop, c.worstCells = l.Crop, l.Cells
		}
	}
	slices.SortStableFunc(out, func(a, b causeLoss) int { return cmp.Compare(b.cells, a.cells) })
	return out
}

// causeWords is a cause in a sentence or a table; it may not be written.
func causeWords(cause string) template.HTML {
	if cause == "" {
		return "no cause written"
	}
	return markup(name(cause))
}

// lostWords names what took most. Losses without a cause are named like any other, since
// they are often the largest.
func (p *page) lostWords(season int) template.HTML {
	causes := p.lossesBy(season)
	if len(causes) == 0 {
		return ""
	}
	total := 0
	for _, c := range causes {
		total += c.cells
	}
	var largest []template.HTML
	for _, c := range causes[:min(3, len(causes))] {
		largest = append(largest, say("%s (%s in %s, most of it %s)", causeWords(c.cause), words.Plural(c.cells, "cell", "cells"), words.Batches(c.batches), name(c.worstCrop)))
	}
	head := "Causes"
	if len(causes) > len(largest) {
		head = "The largest causes"
	}
	return say("%s that had come up were lost again. %s: %s.", words.Plural(total, "cell", "cells"), head, list(largest))
}

// lossFigure is a season's losses by cause and month.
func (p *page) lossFigure(season int) *figure {
	return p.figure(seasonChart("losses", season), "Losses by cause and month", "Cells that had a seedling and lost it, in the month in which that was counted.", p.lossTable(season))
}

// lossTable has a column for each month in which something was lost. Months stand in the
// order of the season, which may begin in the autumn.
func (p *page) lossTable(season int) *table {
	causes := p.lossesBy(season)
	var months []int
	first, _ := p.r.Book.Settings.SeasonDays(season)
	for i := range 12 {
		m := (int(first.Month())-1+i)%12 + 1
		if slices.ContainsFunc(causes, func(c causeLoss) bool { return c.months[m] > 0 }) {
			months = append(months, m)
		}
	}
	heads := []string{"Cells", "Batches"}
	for _, m := range months {
		heads = append(heads, time.Month(m).String()[:3])
	}
	t := p.table("losses", say("Cells lost by cause and month, season %s", fmt.Sprint(season)), "losses", plain("Cause"), nums(heads...))
	t.Summed = true
	for _, c := range causes {
		cells := []any{causeWords(c.cause), words.Whole(c.cells), words.Whole(c.batches)}
		for _, m := range months {
			cells = append(cells, monthCell(c.months[m]))
		}
		t.add(cells...)
	}
	return t
}

// monthCell leaves a month without loss empty: a 0 in every row hides the others.
func monthCell(n int) string {
	if n == 0 {
		return ""
	}
	return words.Whole(n)
}
