package templates

import (
	"html/template"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"traybook/report"
	"traybook/report/words"
)

var aNumber = regexp.MustCompile(`[−-]?[0-9][0-9,]*(?:\.[0-9]+)?`)

// firstNumber is the first number that a cell tells; 0 where it tells none.
func firstNumber(h template.HTML) float64 {
	found := strings.NewReplacer(",", "", "−", "-").Replace(aNumber.FindString(bare(h)))
	v, _ := strconv.ParseFloat(found, 64)
	return v
}

// sumOf adds column i of the rows up, those of a group with the class left out.
func sumOf(t *rows, i int, without string) (sum float64, n int) {
	for _, g := range t.Groups {
		for _, r := range g.Rows {
			if g.Class != without {
				sum, n = sum+firstNumber(r.Cells[i]), n+1
			}
		}
	}
	return sum, n
}

// What a page adds up is what the report holds, on the house and on the example's four
// seasons: each number may be rounded by half of its last digit.
func TestSumsOnPages(t *testing.T) {
	for name, r := range map[string]*report.Report{"house": houseReport(t), "example": reportOf(t, example("ottermoss"), report.Options{})} {
		for _, season := range r.Batches.Seasons {
			p := newPage(newSite(r, nil), spec{path: "x.html", season: season})
			spent, borne := 0.0, 0.0
			for _, l := range r.Money.Ledger {
				if l.Season == season {
					spent, borne = spent+l.Ledger, borne+l.Borne
				}
			}
			ledger := p.ledgerRows(season)
			for i, want := range map[int]float64{1: spent, 2: borne} {
				if got, n := sumOf(ledger, i, "sum"); math.Abs(got-want) > 0.005*float64(n)+1e-6 {
					t.Errorf("%s, %d: the ledger's column %d adds up to %g, not %g", name, season, i, got, want)
				}
			}
			if got := firstNumber(ledger.Groups[len(ledger.Groups)-1].Rows[0].Cells[1]); math.Abs(got-spent) > 0.005+1e-6 {
				t.Errorf("%s, %d: in all %g, not %g", name, season, got, spent)
			}
			batches := 0
			for _, b := range r.Records {
				if b.Season == season {
					batches++
				}
			}
			if got := bare(p.seasonState(season)); !strings.HasPrefix(got, bare(words.Batches(batches))) {
				t.Errorf("%s, %d: %q, of %d batches", name, season, got, batches)
			}
			lost := 0
			for _, l := range r.Germination.Losses {
				if l.Season == season {
					lost += l.Cells
				}
			}
			if got := lossSum(p.lossTable(season)); got != float64(lost) {
				t.Errorf("%s, %d: %g cells lost, not %d", name, season, got, lost)
			}
		}
	}
}

// lossSum adds the cells lost by cause up; the months of each cause add up to it.
func lossSum(t *table) (sum float64) {
	for _, b := range t.Bodies {
		for _, r := range b.Rows {
			sum += firstNumber(r.Cells[1].Value)
		}
	}
	return sum
}

// On the page of years the three parts add up to the change, as they are written: each is
// rounded to a tenth.
func TestPartsOfAChangeAddUp(t *testing.T) {
	r := reportOf(t, example("ottermoss"), report.Options{})
	p := pageOf(t, r)
	for _, f := range p.yearsFigures(r.Season) {
		for _, g := range f.Rows.Groups {
			last := len(g.Rows) - 1
			sum := 0.0
			for _, row := range g.Rows[:last] {
				sum += firstNumber(row.Cells[1])
			}
			tolerance := 0.05*float64(last+1) + 1e-9
			if strings.Contains(f.Title, "cost") {
				tolerance = 0.0005*float64(last+1) + 1e-9
			}
			if got := firstNumber(g.Rows[last].Cells[1]); last != 3 || math.Abs(got-sum) > tolerance {
				t.Errorf("%s, %s: %d parts add up to %g, the change is %g", f.Title, bare(g.Sub), last, sum, got)
			}
		}
	}
}
