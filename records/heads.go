package records

import (
	"regexp"
	"slices"
	"strings"
	"unicode"

	"golang.org/x/text/currency"
)

var headerMarks = strings.NewReplacer(" ", "", "_", "", "-", "", "\n", "", "\u00a0", "")

// foldHeader brings a column's name into the form in which it is compared:
// without case, spaces, underscores and hyphens.
func foldHeader(s string) string {
	return headerMarks.Replace(strings.ToLower(strings.TrimSpace(s)))
}

// canonicalHeader returns the contract's spelling of a column, empty if the
// log has no such column. A unit in brackets that is the column's own is passed over.
func canonicalHeader(s string, log Log) string {
	bare, unit := unbracketed(s)
	folded := foldHeader(s)
	for _, c := range log.Columns {
		if foldHeader(c.Name) == folded {
			return c.Name
		}
		if unit != "" && foldHeader(c.Name) == foldHeader(bare) && unitFits(c.Name, unit) {
			return c.Name
		}
	}
	return ""
}

var bracket = regexp.MustCompile(`^([^(\[]+)[(\[]([^)\]]+)[)\]]\s*$`)

// unbracketed parts a column's name from a unit in brackets behind it.
func unbracketed(s string) (name, unit string) {
	if m := bracket.FindStringSubmatch(s); m != nil {
		return m[1], strings.ToLower(strings.TrimSpace(m[2]))
	}
	return s, ""
}

// units are the units that a column's numbers are in, as heads write them. A head with
// another unit is not the column: 38 in "minutes (s)" are no 38 minutes.
var units = map[string][]string{
	"cell_ml": {"ml", "cm3", "cm³", "cc"}, "lasts": {"years", "year", "yr", "y", "a"}, "minutes": {"min", "minutes"},
	"hours": {"h", "hr", "hrs", "hours"}, "grams": {"g", "grams"}, "seeds_per_gram": {"1/g", "/g"},
	"germ_label": {"%", "percent"}, "humidity": {"%", "percent", "% rh"},
	"temp": scales, "low": scales, "high": scales, "out_low": scales, "out_high": scales,
}

var scales = []string{"°c", "c", "°f", "f", "celsius", "fahrenheit"}

// unitFits reports whether a unit is one of a column's: of money a sign or a code of
// three letters, of a count a number's sign, of a date its form.
func unitFits(column, unit string) bool {
	switch column {
	case "amount", "price", "money":
		return unicode.Is(unicode.Sc, []rune(unit)[0]) || currencyCode(unit) != ""
	case "time", "date", "sown", "chamber_out", "planned", "set_out", "bought", "tested", "from", "until":
		return strings.Trim(unit, "ymdhs-/.: ") == "" || unit == "date"
	}
	return slices.Contains(units[column], unit) || unit == "#" || unit == "no." || unit == "number"
}

// sameUnit reports a head whose scale of temperature or whose currency is not the
// book's: every number below it would be taken for another. True where nothing is to
// be said.
func (l *log) sameUnit(i int, written string) bool {
	_, unit := unbracketed(written)
	name := canonicalHeader(written, l.Log)
	if name == "" || unit == "" {
		return true
	}
	expected, remedy := "", ""
	switch code := currencyCode(unit); {
	case slices.Contains(scales, unit) && strings.HasPrefix(strings.TrimPrefix(unit, "°"), "f") != l.settings.Fahrenheit:
		expected, remedy = "temperatures in "+l.settings.DegreeSign()+" are expected, as book.csv says", "mend the head, or the setting temperature"
	case slices.Contains([]string{"amount", "price", "money"}, name) && code != "" && code != l.settings.Currency:
		expected, remedy = "money in "+l.settings.Currency+" is expected, as book.csv says", "mend the head, or the setting currency"
	default:
		return true
	}
	l.report("other-unit", l.headCell(i), "column "+quote(written), expected, remedy)
	return false
}

// currencyCode is the code of ISO 4217 that a text is, in whatever case, or that a sign
// stands for which no other currency has; empty for none.
func currencyCode(s string) string {
	if s == "€" {
		return "EUR"
	}
	unit, err := currency.ParseISO(s)
	if err != nil {
		return ""
	}
	return unit.String()
}

// meanings are other words for columns, log by log, folded as heads are. What is said
// of them is a question: such a column is not read.
var meanings = map[string]map[string]string{
	"sowings.csv": {"leftover": "surplus", "extra": "surplus", "spare": "surplus", "transplanted": "set_out",
		"plantedout": "set_out", "outdate": "set_out", "dateout": "set_out", "out": "plants_out", "needed": "wanted",
		"target": "wanted", "due": "planned", "plandate": "planned",
		"parent": "from", "resows": "replaces", "sowingdate": "sown", "datesown": "sown", "sowdate": "sown", "seeded": "sown", "date": "sown",
		"cultivar": "variety", "flat": "tray", "flats": "trays", "code": "batch", "label": "batch"},
	"out.csv": {"quantity": "plants", "qty": "plants", "number": "plants", "where": "to", "destination": "to", "income": "money",
		"revenue": "money", "price": "money", "paid": "money", "final": "last", "cleared": "last"},
	"counts.csv": {"germinated": "emerged", "up": "emerged", "cameup": "emerged", "sprouted": "emerged", "alive": "emerged",
		"standing": "emerged", "misses": "empty", "blanks": "empty", "dead": "lost", "died": "lost", "reason": "cause", "looked": "cells"},
	"scores.csv": {"sample": "looked", "checked": "looked", "fit": "usable", "good": "usable", "mark": "score", "quality": "score"},
	"trays.csv": {"cost": "price", "quantity": "count", "qty": "count", "number": "count", "trays": "count", "volume": "cell_ml",
		"cellvolume": "cell_ml", "ml": "cell_ml", "life": "lasts", "years": "lasts", "cycles": "uses", "labour": "minutes", "labor": "minutes",
		"time": "minutes", "type": "kind", "material": "kind", "space": "places", "date": "bought", "code": "tray"},
	"lots.csv": {"vendor": "supplier", "seller": "supplier", "company": "supplier", "source": "supplier", "germination": "germ_label",
		"germ": "germ_label", "label": "germ_label", "testdate": "tested", "date": "bought", "weight": "grams", "cost": "price", "count": "seeds",
		"cultivar": "variety", "code": "lot"},
	"costs.csv": {"cost": "amount", "price": "amount", "total": "amount", "money": "amount", "value": "amount", "time": "hours", "hrs": "hours",
		"qty": "quantity", "kind": "category", "type": "category", "to": "until", "start": "from", "end": "until", "job": "task"},
	"chamber.csv": {"date": "time", "temperature": "temp", "rh": "humidity", "box": "chamber"},
	"house.csv": {"min": "low", "minimum": "low", "max": "high", "maximum": "high", "outsidelow": "out_low", "outsidehigh": "out_high",
		"outmin": "out_low", "outmax": "out_high", "outdoorlow": "out_low", "outdoorhigh": "out_high"},
	"wishes.csv":  {"wanted": "plants", "number": "plants", "quantity": "plants", "date": "planned", "when": "planned", "cultivar": "variety"},
	"changes.csv": {"change": "what", "from": "date", "to": "until", "end": "until"},
}

// meant is the one of some columns that a head likely stands for: by a slip of the
// keys, by its meaning, or because it holds the column's name. Empty for none.
func (l Log) meant(written string, of []string) string {
	folded := foldHeader(written)
	if name := nearest(folded, of, foldHeader); name != "" {
		return name
	}
	words := headWords(written)
	if name := meanings[l.Name][strings.Join(words, "")]; slices.Contains(of, name) {
		return name
	}
	return longestHeld(words, of)
}

// longestHeld is the column of the most letters whose words stand in a head in their
// order: "Price each" holds price, "set out on" set_out and not out.
func longestHeld(words, of []string) string {
	best := ""
	for _, name := range of {
		held := strings.Join(headWords(name), " ")
		if len(name) > len(best) && strings.Contains(" "+strings.Join(words, " ")+" ", " "+held+" ") {
			best = name
		}
	}
	return best
}

// headWords parts a head into its words, letters and digits alone.
func headWords(s string) []string {
	return strings.FieldsFunc(strings.ToLower(s), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
}
