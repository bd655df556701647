package templates

import (
	"html/template"
	"slices"
	"strconv"
	"strings"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/words"
)

// gapsOf are the gaps in some logs, of a season or of all.
type gapsOf struct {
	season int
	logs   string
}

// mostGaps is how many gaps the line at a page's foot names.
const mostGaps = 2

// gapLine ends a page: how much the logs that feed it could not tell of its season, or of
// all, and what of it costs most; empty where nothing is missing. The first page that asks
// works it out for all others like it.
func (s *site) gapLine(p *page) template.HTML {
	of := gapsOf{p.spec.season, strings.Join(p.spec.logs, " ")}
	line, known := s.gapLines[of]
	if !known {
		line = s.gapsIn(p)
		s.gapLines[of] = line
	}
	return line
}

// gapsIn makes that line.
func (s *site) gapsIn(p *page) template.HTML {
	gaps := s.r.Missing
	of := template.HTML("in the records")
	if p.spec.season != 0 {
		gaps, of = s.r.MissingIn(p.spec.season), say("in the records of %s", words.Year(p.spec.season))
	}
	gaps = batch.Filter(gaps, func(m report.Missing) bool { return touches(m, p.spec.logs) })
	if len(gaps) == 0 {
		return ""
	}
	var named []template.HTML
	for _, m := range gaps {
		if len(m.Batches) > 0 && len(named) < mostGaps {
			named = append(named, say("%s%s %s", words.Batches(len(m.Batches)), gapSeason(m, p.spec.season), gapWords(m)))
		}
	}
	if len(named) == 0 {
		return say("%s %s.", words.Plural(len(gaps), "gap", "gaps"), of)
	}
	return say("%s %s; the costliest: %s.", words.Plural(len(gaps), "gap", "gaps"), of, list(named))
}

// gapPhrases go on from "12 batches", by the name of a gap: the names serve as headings
// and would stumble in a sentence. %s is the tray codes or seed lots that the gap is of. A
// gap that is not here is told as "without" and its name, so a new one reads badly and not
// wrongly.
var gapPhrases = map[string]string{
	"date set out":              "without a date set out",
	"usable plants left over":   "without a number of usable plants left over",
	"row that clears the batch": "not cleared in out.csv",
	"plants out":                "without a number of plants out",
	"cells sown, or plants out": "with more plants than cells",
	"count":                     "without a count",
	"cells looked at":           "without a number of cells looked at",
	"tray numbers":              "with tray numbers on some counts only",
	"later count":               "counted too soon after sowing",
	"late enough last count":    "last counted so early that more may have come up since",
	"early enough first count":  "first counted when more than half had come up",
	"seed lot":                  "without a seed lot",
	"row of the seed lot":       "from lots without a row in lots.csv",
	"tray code":                 "in trays without a row in trays.csv",
	"look at quality":           "without a look at quality",
	"planned date":              "without a planned date",
	"planned date or plants wanted of an open batch": "still open without a planned date or plants wanted",
	"day out of the chamber":                         "without a day out of the chamber",
	"chamber readings":                               "without chamber readings",
	"price of a tray":                                "in %s without a price",
	"life of a tray":                                 "in %s without a length of life",
	"years a tray lasts":                             "in %s without a number of years in use",
	"number of trays bought":                         "in %s without a number bought",
	"trays bought":                                   "in %s with more broken or sold than bought",
	"minutes a use":                                  "in trays to compare, without the minutes that a use takes",
	"mix a use":                                      "in trays to compare, without the mix that a use takes",
	"price of a seed lot":                            "from %s without a price",
	"seeds in a lot":                                 "from %s without a number of seeds",
	"seeds per gram of a lot":                        "from %s without seeds per gram",
	"germination on the packet":                      "from %s without a figure of the packet",
	"tray codes":                                     "in trays of which nothing is written",
	"germination counts":                             "without a count",
	"looks at quality":                               "without a look at quality",
	"costs":                                          "without a cost",
	"seed lots":                                      "without a seed lot",
	"house readings":                                 "without house readings",
}

// settingPhrases are for the gaps that are of no batch, but of a setting or a column.
var settingPhrases = map[string]string{
	"wage":                   "hours of work without a wage",
	"places on the benches":  "benches without a number of places",
	"places in the chambers": "chambers without a number of places",
	"plants wanted":          "sowings without a number of plants wanted",
}

// gapTitle says what a gap is in a heading: 12 batches of 2025 without a count. A tray
// code or a lot that nothing was sown in, or of, stands for itself: lot L-1 without a price.
func gapTitle(m report.Missing) template.HTML {
	if phrase, known := settingPhrases[m.What]; known {
		return say(phrase)
	}
	if m.Touched > 0 {
		return say("%s%s %s", words.Batches(m.Touched), gapSeason(m, 0), gapWords(m))
	}
	bare := strings.TrimPrefix(strings.TrimPrefix(string(gapWords(m)), "in "), "from ")
	return template.HTML(bare)
}

// mostGapCodes is how many tray codes or lots the line names.
const mostGapCodes = 2

// gapWords says what the batches of a gap lack: without a count; in tray FLAT without a
// price; in trays A72, FLAT and 3 more without a length of life.
func gapWords(m report.Missing) template.HTML {
	what, codes, _ := strings.Cut(m.What, ": ")
	phrase, known := gapPhrases[what]
	switch {
	case !known:
		return say("without %s", name(m.What))
	case !strings.Contains(phrase, "%s"):
		return say(phrase)
	}
	one, many := "tray", "trays"
	if strings.HasPrefix(phrase, "from ") {
		one, many = "lot", "lots"
	}
	return say(phrase, namedGapCodes(strings.Split(codes, ", "), one, many))
}

// namedGapCodes names the first codes of a gap after the word for what they are.
func namedGapCodes(codes []string, one, many string) template.HTML {
	names := make([]template.HTML, len(codes))
	for i, code := range codes {
		names[i] = batchCode(code)
	}
	word := many
	if len(codes) == 1 {
		word = one
	}
	return say("%s %s", word, listSome(names, mostGapCodes))
}

// gapSeason names the season of a gap where the page speaks of several.
func gapSeason(m report.Missing, season int) string {
	if m.Season == 0 || m.Season == season {
		return ""
	}
	return " of " + words.Year(m.Season)
}

// touches reports whether a gap is in one of the logs: its remedy names it. A gap
// that names no log is everyone's.
func touches(m report.Missing, logs []string) bool {
	named := batch.Filter(allLogs, func(log string) bool { return strings.Contains(m.Remedy, log) })
	return len(named) == 0 || slices.ContainsFunc(named, func(log string) bool { return contains(logs, log) })
}

// gapID is the anchor of the gap with number i, from 0, of the list of all that is
// missing.
func gapID(i int) string { return "gap-" + strconv.Itoa(i+1) }
