package main

import (
	"cmp"
	"encoding/csv"
	"html"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"traybook/report/words"
)

// line is a row of a CSV file by its columns.
type line map[string]string

// number is a cell as a number; 0 where it is empty.
func (l line) number(column string) float64 {
	v, _ := strconv.ParseFloat(l[column], 64)
	return v
}

// linesOf reads the rows of a CSV file for which keep holds.
func linesOf(t *testing.T, file string, keep func(line) bool) []line {
	t.Helper()
	f, err := os.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil || len(rows) < 2 {
		t.Fatalf("%s: %d rows, %v", file, len(rows), err)
	}
	var out []line
	for _, row := range rows[1:] {
		l := line{}
		for i, cell := range row {
			l[rows[0][i]] = cell
		}
		if keep(l) {
			out = append(out, l)
		}
	}
	return out
}

var (
	drawings = regexp.MustCompile(`(?s)<svg.*?</svg>`)
	markupOf = regexp.MustCompile(`<[^>]*>`)
	linksOf  = regexp.MustCompile(`href="([^"#]+)`)
)

// answers is the front page of the example with what it says, and what the pages one link
// from it say.
type answers struct {
	site, season string
	front        string
	links        []string
}

func exampleAnswers(t *testing.T) answers {
	t.Helper()
	a := answers{site: exampleSite(t).site, season: "2026"}
	body, err := os.ReadFile(filepath.Join(a.site, "index.html"))
	if err != nil {
		t.Fatal(err)
	}
	for _, link := range linksOf.FindAllStringSubmatch(string(body), -1) {
		a.links = append(a.links, link[1])
	}
	a.front = textIn(string(body))
	return a
}

// textIn is the text of a page without its drawings, spaces made plain.
func textIn(body string) string {
	text := html.UnescapeString(markupOf.ReplaceAllString(drawings.ReplaceAllString(body, ""), " "))
	return strings.Join(strings.Fields(text), " ")
}

// oneLink is the text of a page to which the front page links.
func (a answers) oneLink(t *testing.T, page string) string {
	t.Helper()
	if !slices.Contains(a.links, page) {
		t.Fatalf("the front page does not link to %s", page)
	}
	body, err := os.ReadFile(filepath.Join(a.site, page))
	if err != nil {
		t.Fatal(err)
	}
	return textIn(string(body))
}

// data is the rows of a data file of the example for which keep holds.
func (a answers) data(t *testing.T, name string, keep func(line) bool) []line {
	t.Helper()
	return linesOf(t, filepath.Join(a.site, "data", name+".csv"), keep)
}

func (a answers) ofSeason(l line) bool { return l["season"] == a.season }

// says asks for words in a text.
func says(t *testing.T, what, text string, want ...string) {
	t.Helper()
	for _, w := range want {
		if w = strings.Join(strings.Fields(w), " "); !strings.Contains(text, w) {
			t.Errorf("%s: %q is not in\n%.1500s", what, w, text)
		}
	}
}

// Which varieties came up best and worst? Those that stand clearly apart, with by how much.
func TestBestAndWorstVariety(t *testing.T) {
	a := exampleAnswers(t)
	for verdict, how := range map[string]string{"clearly lower": "fewer", "clearly higher": "more"} {
		of := a.data(t, "differences", func(l line) bool { return a.ofSeason(l) && l["verdict"] == verdict })
		if len(of) == 0 {
			t.Errorf("the example has no variety that is %s", verdict)
		}
		slices.SortStableFunc(of, func(x, y line) int {
			return cmp.Compare(math.Abs(y.number("difference")), math.Abs(x.number("difference")))
		})
		for _, l := range of[:min(len(of), 3)] {
			says(t, verdict, a.front, l["crop"]+" "+l["variety"]+" ("+words.Fixed(100*math.Abs(l.number("difference")), 0)+" "+how+" in 100 cells)")
		}
	}
}

// What did a lettuce plug cost, and what was its largest part?
func TestLettucePlug(t *testing.T) {
	a := exampleAnswers(t)
	plants, money := 0.0, 0.0
	parts := map[string]float64{}
	for _, l := range a.data(t, "cost", func(l line) bool { return a.ofSeason(l) && l["crop"] == "lettuce" }) {
		plants, money = plants+l.number("usable"), money+l.number("usable")*l.number("per_transplant")
		for _, part := range []string{"seed", "mix", "labour", "heat", "power", "water", "feed", "equipment", "other", "tray_charge"} {
			parts[part] += l.number(part)
		}
	}
	largest := "seed"
	for part, sum := range parts {
		if sum > parts[largest] {
			largest = part
		}
	}
	each := words.NewMoney("USD").EachNumber(money / plants)
	says(t, "a lettuce plug", a.oneLink(t, a.season+"/records/lettuce.html"), "at USD "+each+" each")
	costs := a.oneLink(t, a.season+"/costs.html")
	if named := regexp.MustCompile(`(\w+) was the largest part with ([^:]*)`).FindAllStringSubmatch(costs, -1); !slices.ContainsFunc(named, func(m []string) bool {
		return strings.ToLower(m[1]) == largest && strings.Contains(m[2], "lettuce")
	}) {
		t.Errorf("the largest part of a lettuce plug is %s; the page of costs says %q", largest, named)
	}
}

// How many more trays to buy, of each pair?
func TestTraysToBuy(t *testing.T) {
	a := exampleAnswers(t)
	trays := a.oneLink(t, "trays.html")
	asked := a.data(t, "decision", func(line) bool { return true })
	said := false
	for _, l := range asked {
		number := cmp.Or(l["buy"], "?")
		says(t, "trays to buy", trays, number+" more "+l["tray"]+" to buy")
		said = said || strings.Contains(a.front, number+" more "+l["tray"]+" to buy")
	}
	if !said {
		t.Error("the front page tells none of them")
	}
}

// Did the season improve, the same crops for the same crops?
func TestSeasonImproved(t *testing.T) {
	a := exampleAnswers(t)
	of := a.data(t, "years", func(l line) bool { return l["measure"] == "emergence" && l["crop"] == "" && l["to"] == a.season })
	if len(of) != 1 {
		t.Fatalf("%d rows of the season's emergence", len(of))
	}
	l := of[0]
	like := words.Signed(100*l.number("same")/l.number("share"), 1)
	verdict := map[string]string{"clearly higher": "Like sowings came up better than in ", "clearly lower": "Like sowings came up worse than in ",
		"no clear difference": "Like sowings: no clear difference from ", "too few batches": "Too few batches to set like sowings beside those of "}[l["verdict"]]
	says(t, "year over year", a.front, verdict+l["from"], like+" in 100 cells, like sowings, against "+l["from"])
}

// What should be sown more of? What lacked most plants, and by how many.
func TestSowMore(t *testing.T) {
	a := exampleAnswers(t)
	of := a.data(t, "balance", func(l line) bool { return a.ofSeason(l) && l.number("short") > 0 })
	if len(of) == 0 {
		t.Fatal("the example was short of nothing")
	}
	slices.SortStableFunc(of, func(x, y line) int { return cmp.Compare(y.number("short"), x.number("short")) })
	short := 0
	for i, l := range of {
		short += int(l.number("short_batches"))
		if i < 3 {
			says(t, "short", a.front, l["crop"]+" ("+words.Whole(words.RoundPlants(l.number("short")))+")")
		}
	}
	if !regexp.MustCompile(`Sow (more|less) |No crop was short or over often enough`).MatchString(a.front) {
		t.Error("no advice on the front page")
	}
	says(t, "short", a.front, words.Whole(short)+" of ")
}

// Which lot to complain about? Those sown in the season that lie below their packets.
func TestLotToComplainAbout(t *testing.T) {
	a := exampleAnswers(t)
	sown := map[string]bool{}
	for _, l := range linesOf(t, "../../examples/ottermoss/sowings.csv", func(l line) bool { return l["lot"] != "" && strings.Contains(l["sown"], a.season) }) {
		sown[l["lot"]] = true
	}
	below := a.data(t, "lots", func(l line) bool { return l["below"] == "yes" && sown[l["lot"]] })
	if len(below) == 0 {
		t.Fatal("no lot of the season lies below its packet")
	}
	page := a.oneLink(t, a.season+"/lots.html")
	for _, l := range below {
		says(t, "lots", page, l["lot"]+" , "+l["crop"]+" "+l["variety"], "below its packet")
		says(t, "lots", page, "of 100 seeds "+words.Fixed(100*l.number("came_up")/l.number("cells_looked_at"), 0)+" came up")
	}
}

// Which bill fell on no batch?
func TestBillOnNoBatch(t *testing.T) {
	a := exampleAnswers(t)
	money, spent, none := words.NewMoney("USD"), 0.0, 0.0
	for _, l := range a.data(t, "ledger", a.ofSeason) {
		spent, none = spent+l.number("ledger"), none+l.number("unborne")
	}
	page := a.oneLink(t, a.season+"/costs.html")
	if none < 0.005 {
		says(t, "the ledger", page, "All "+money.Sum(spent)+" that was spent fell on batches")
		return
	}
	says(t, "the ledger", page, "Of "+money.Sum(spent)+" spent, "+money.Sum(none)+" fell on no batch")
}

// What is missing? The days out that nobody wrote, season by season, among the rest.
func TestWhatIsMissing(t *testing.T) {
	a := exampleAnswers(t)
	_, rest, ok := strings.Cut(a.oneLink(t, "missing.html"), "Date set out ")
	if !ok {
		t.Fatal("the page of what is missing does not tell of days out")
	}
	assumed := map[string]int{}
	for _, l := range a.data(t, "batches", func(l line) bool { return l["end_how"] == "assumed" }) {
		assumed[l["season"]]++
	}
	if len(assumed) == 0 {
		t.Fatal("the example writes every day out")
	}
	for season, n := range assumed {
		says(t, "missing", rest, season+" "+words.Batches(n))
	}
	if !regexp.MustCompile(`\d+ gaps? in the records`).MatchString(a.front) {
		t.Error("the front page does not say how much is missing")
	}
}
