package report_test

import (
	"io/fs"
	"maps"
	"os"
	"path"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// laws is where each rule is stated: a heading in the package comment, in doc.go.
var laws = map[string][]string{
	"records":      {"Cells sown", "Repeats", "Settings"},
	"report/batch": {"Seasons", "Today", "From seed", "End of a batch", "Tray codes", "Chamber stays", "Medians", "Ties", "Missing"},
	"report/rate":  {"The batch is the replicate", "Scatter", "Interval of a share", "Variance of a rate"},
	"report/germination": {"Counts", "Counted early", "Emergence", "Per seed", "Named crops", "Varieties", "Lots",
		"Losses, weeks, chambers", "Timing", "Climate", "Alarms"},
	"report/plants": {"Looks", "Leeway", "Usable plants"},
	"report/money": {"Direct rows", "Seed", "Mix", "Other shared rows", "Bills over a period", "Heat", "Life of a tray", "Tray charge",
		"Potting on", "Ledger", "Cost of a transplant"},
	"report/trays": {"Pair", "Matched sowings", "Value of a plant", "Life in a pair", "Gain a use", "The average tray", "Break-even",
		"The next tray", "How many to buy", "What would flip it", "If", "Trial"},
	"report/room": {"Room"},
	"report":      {"Work due", "Short"},
}

var (
	heading    = regexp.MustCompile(`(?m)^// # (.+)$`)
	newComment = regexp.MustCompile(`\n[ \t]*//[ \t]*`)
	reference  = regexp.MustCompile(`\b[Rr]ules?\s+(\\?"[^"]+"(?:(?:,|,? and|,? or)\s+\\?"[^"]+")*)`)
	quoted     = regexp.MustCompile(`"([^"\\]+)\\?"`)
	numbered   = regexp.MustCompile(`\b[Rr]ules?\s+\d[^.;)]*`)
)

// sources returns the text of every Go file of the tree by its path; a comment of
// several lines stands on one, so that a name is found where a line breaks in it.
func sources(t *testing.T) map[string]string {
	t.Helper()
	tree, files := os.DirFS(".."), map[string]string{}
	err := fs.WalkDir(tree, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || path.Ext(name) != ".go" {
			return err
		}
		text, err := fs.ReadFile(tree, name)
		files[name] = newComment.ReplaceAllString(string(text), " ")
		return err
	})
	if err != nil || len(files) == 0 {
		t.Fatalf("%d files: %v", len(files), err)
	}
	return files
}

// stated returns the packages that state each heading of their comments.
func stated(t *testing.T) map[string][]string {
	t.Helper()
	docs, by := os.DirFS(".."), map[string][]string{}
	err := fs.WalkDir(docs, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.Name() != "doc.go" {
			return err
		}
		text, err := fs.ReadFile(docs, name)
		for _, found := range heading.FindAllStringSubmatch(string(text), -1) {
			by[found[1]] = append(by[found[1]], path.Dir(name))
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return by
}

// Every rule is stated in one package comment, that of its own room.
func TestEveryRuleIsStatedOnce(t *testing.T) {
	by := stated(t)
	for _, room := range slices.Sorted(maps.Keys(laws)) {
		for _, rule := range laws[room] {
			if got := by[rule]; !slices.Equal(got, []string{room}) {
				t.Errorf("rule %q is stated in %q; want the doc.go of %s alone", rule, got, room)
			}
		}
	}
}

// Code, tests and comments refer to a rule by a name that one package comment states.
func TestEveryRuleReferredToIsStated(t *testing.T) {
	by, referred := stated(t), 0
	for file, text := range sources(t) {
		for _, found := range reference.FindAllStringSubmatch(text, -1) {
			for _, name := range quoted.FindAllStringSubmatch(found[1], -1) {
				referred++
				if got := by[name[1]]; len(got) != 1 {
					t.Errorf("%s: rule %q is stated in %q; want one doc.go", file, name[1], got)
				}
			}
		}
	}
	if referred < 100 {
		t.Errorf("%d references to rules found; are they looked for where they stand?", referred)
	}
}

// No rule goes by a number: numbers say nothing and move.
func TestNoRuleGoesByNumber(t *testing.T) {
	for file, text := range sources(t) {
		for _, found := range numbered.FindAllString(text, -1) {
			t.Errorf("%s: %s", file, strings.TrimSpace(found))
		}
	}
}

// What the tests of the law look for, found in a line made for it.
func TestReferencesAreFound(t *testing.T) {
	line := "(ru" + "les \"A b\", \"C\" and \"D\"), (ru" + "le\n// \"E,\n\t// f\"), \"the ru" + "le \\\"G\\\"\", \"H\""
	var names []string
	for _, found := range reference.FindAllStringSubmatch(newComment.ReplaceAllString(line, " "), -1) {
		for _, name := range quoted.FindAllStringSubmatch(found[1], -1) {
			names = append(names, name[1])
		}
	}
	if got := strings.Join(names, "; "); got != "A b; C; D; E, f; G" {
		t.Errorf("found %s", got)
	}
	if !numbered.MatchString("(ru" + "les 13, 57)") {
		t.Error("a number was not found")
	}
}
