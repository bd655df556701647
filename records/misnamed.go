package records

import (
	"regexp"
	"strings"
)

// adornments are what programs and people add to the name of a copy, in the order in
// which they are taken away: endings, the marks of a copy, numbers and years.
var adornments = []*regexp.Regexp{
	regexp.MustCompile(`(\.(csv|txt|tsv|tab|text|bak|old|orig|tmp|xlsx?|ods)|~)$`),
	regexp.MustCompile(`^(copy|kopie|copie|copia|backup) (of|von|de) `),
	regexp.MustCompile(`[ _.-]*\((copy|kopie|copie|copia)?[ _.-]*\d*\)$`),
	regexp.MustCompile(`[ _.-]+(copy|kopie|copie|copia|backup|bak|old|new|final|edited|export|sheet)$`),
	regexp.MustCompile(`[ _.-]*v?\d+([ _.-]\d+)*$`),
	regexp.MustCompile(`^\d+([ _.-]\d+)*[ _.-]*`),
}

// plainEnd are the endings that a log's copy may have: text, whatever it is called.
var plainEnd = regexp.MustCompile(`(\.(csv|txt|tsv|tab|text|bak|old|orig|tmp)|~)$`)

// takenFor is the log that a file's name stands for, were it written as the format
// says: "counts (1).csv", "counts_2025.csv", "Copy of counts.csv.txt", "count.csv".
// Empty for any other.
func takenFor(name string) string {
	bare := strings.ToLower(strings.TrimSpace(name))
	if !plainEnd.MatchString(bare) {
		return ""
	}
	csv := strings.Contains(bare, ".csv")
	bare = unadorned(bare)
	var stems []string
	for _, log := range Logs {
		stem := strings.TrimSuffix(log.Name, ".csv")
		if bare == stem {
			return log.Name
		}
		stems = append(stems, stem)
	}
	if !csv { // a letter called count.txt is no log
		return ""
	}
	if near := nearest(bare, stems, func(s string) string { return s }); near != "" {
		return near + ".csv"
	}
	return ""
}

// unadorned takes away what makes a name that of a copy, as often as there is any.
func unadorned(name string) string {
	for before := ""; before != name; {
		before = name
		for _, a := range adornments {
			if rest := strings.TrimSpace(a.ReplaceAllString(name, "")); rest != "" {
				name = rest
			}
		}
	}
	return name
}
