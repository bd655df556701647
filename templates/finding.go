package templates

import (
	"html/template"

	"traybook/report/rate"
	"traybook/report/words"
)

// finding is an answer with its number set large: the number in the left margin with
// its range beneath, the finding and a sentence or two, a small figure in the right
// margin.
type finding struct {
	ID    string
	Title template.HTML // the finding
	Big   string        // the number; ? where the records cannot tell
	Unit  string        // set small behind it
	What  template.HTML // what the number counts
	Range template.HTML // its range, or what it is compared with
	Say   []template.HTML
	Note  template.HTML // the sample, and where more stands
	Side  template.HTML // the figure
	Class string
}

// Long reports whether the number is too long for its place at full size.
func (f finding) Long() bool { return len([]rune(f.Big)) > 5 }

// rangeText is an interval under a large number: 82 to 85; or that too few batches
// stand behind it.
func rangeText(low, high rate.Num, write func(float64) string) template.HTML {
	if !low.Known || !high.Known {
		return words.TooFew
	}
	return say("%s to %s", write(low.Value), write(high.Value))
}

// seasonRange is the interval of a season's share under its large number, or why there is
// none: too few batches, or enough of them and too few alike.
func seasonRange(total rate.Rate) template.HTML {
	if fewAlike(total) {
		return "no range: too few sown alike"
	}
	return rangeText(total.Low, total.High, words.PercentNumber)
}

// fewAlike reports whether a season has batches enough and no range all the same. How far
// batches scatter shows only between those of one season, crop, variety, cells and kind of
// tray; where nearly every batch is the only one of its sort, a hundred of them do not
// tell it (rule "Scatter").
func fewAlike(total rate.Rate) bool { return !total.Low.Known && !total.Few() }

// noneAlike is the finding of such a season.
const noneAlike = "Too few batches were sown alike to set any crop apart"

// caption is a small figure with its words beneath, for the right margin.
func caption(drawing, words template.HTML) template.HTML {
	return "<figure>" + drawing + "<figcaption>" + words + "</figcaption></figure>"
}
