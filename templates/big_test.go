package templates

import (
	"fmt"
	"path"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"traybook/records"
	"traybook/report"
	"traybook/report/chart"
)

// mostOfPage is what a telephone opens at once: no page is larger, bytes.
const mostOfPage = 400_000

// bigBook is how much of everything an invented book has.
type bigBook struct {
	seasons, batches              int // batches of a season
	crops, varieties, trays, lots int
	days                          int    // from the first sowing of a season to the last
	blank                         int    // every so many batches are written up in part only; 0: none
	open                          bool   // none is set out, and all are past their day
	long                          string // what follows each name of a lot, variety and supplier
}

// files are the logs of the book. Batches take crops, varieties, trays and lots in turn.
func (b bigBook) files() fstest.MapFS {
	logs := map[string]*strings.Builder{}
	row := func(log, format string, args ...any) {
		if logs[log] == nil {
			logs[log] = &strings.Builder{}
		}
		fmt.Fprintf(logs[log], format+"\n", args...)
	}
	row("trays.csv", "tray,kind,cells,bought,count,price,lasts,uses,minutes")
	for i := range b.trays {
		row("trays.csv", "C%04d,%s,100,2020-01-01,400,%d,%d,%d,5", i, []string{"solid-wall", "air-pruning"}[i%2], []int{2, 13}[i%2]+i%7, []int{4, 15}[i%2], []int{10, 60}[i%2])
	}
	row("lots.csv", "lot,crop,variety,supplier,bought,seeds,price,germ_label")
	for i := range b.lots {
		row("lots.csv", "L%04d%s,%s,V%d%s,Seedhouse %d%s,2020-12-01,50000,20,92", i, b.long, b.crop(i), b.variety(i), b.long, i%3, b.long)
	}
	row("sowings.csv", "batch,sown,crop,variety,lot,tray,trays,planned,wanted,set_out,plants_out,surplus")
	row("counts.csv", "batch,date,emerged")
	row("scores.csv", "batch,date,looked,usable")
	row("costs.csv", "date,category,amount,note")
	for s := range b.seasons {
		row("costs.csv", "%d-03-01,heat,900,", 2023+s)
		for i := range b.batches {
			b.batch(row, s, i)
		}
	}
	row("book.csv", "setting,value\nfarm,Big\nwage,19\nplug_price,0.3\nbench_places,900")
	out := fstest.MapFS{}
	for name, text := range logs {
		out[name] = &fstest.MapFile{Data: []byte(text.String())}
	}
	return out
}

func (b bigBook) crop(i int) string {
	return fmt.Sprintf("crop %c%c", 'a'+i%b.crops/26, 'a'+i%b.crops%26)
}
func (b bigBook) variety(i int) int { return i / b.crops % b.varieties }

// batch is a batch's rows in every log.
func (b bigBook) batch(row func(log, format string, args ...any), s, i int) {
	sown := records.NewDate(2023+s, 2, 1) + records.Date(i*b.days/b.batches)
	code, planned := fmt.Sprintf("B%d-%04d", 2023+s, i), sown+40
	out := fmt.Sprintf("%s,%d,%d", planned+records.Date(i%5), 70+i%25, i%4)
	if b.open {
		out = ",,"
	}
	if b.blank > 0 && i%b.blank == 0 {
		out = ",,"
	} else {
		row("counts.csv", "%s,%s,%d", code, sown+6, 40+i%17)
		row("counts.csv", "%s,%s,%d", code, sown+14, 75+i%17)
		row("scores.csv", "%s,%s,20,%d", code, planned-2, 14+i%6)
	}
	row("sowings.csv", "%s,%s,%s,V%d%s,L%04d%s,C%04d,1,%s,80,%s", code, sown, b.crop(i), b.variety(i), b.long, i%b.lots, b.long, i/(b.crops*b.varieties)%b.trays, planned, out)
}

// bigBooks are each too large for a page in ways of its own.
var bigBooks = map[string]bigBook{
	"many groups":     {seasons: 2, batches: 1500, crops: 6, varieties: 20, trays: 12, lots: 480, days: 140},
	"one crop":        {seasons: 1, batches: 1200, crops: 1, varieties: 300, trays: 4, lots: 300, days: 20, blank: 2},
	"many codes":      {seasons: 1, batches: 2000, crops: 1, varieties: 1, trays: 1000, lots: 1, days: 130, blank: 4},
	"many crops":      {seasons: 1, batches: 900, crops: chart.MostWeeks + 5, varieties: 2, trays: 4, lots: 90, days: 130},
	"much missing":    {seasons: 6, batches: 600, crops: 2, varieties: 1, trays: 2, lots: 10, days: 130, blank: 1},
	"all at once due": {seasons: 1, batches: 1000, crops: 2, varieties: 2, trays: 4, lots: 10, days: 10, open: true},
	"long names":      {seasons: 1, batches: 960, crops: 2, varieties: 4, trays: 3, lots: 380, days: 130, long: " & Daughters of the field behind the old orchard & brook"},
	"all at a time":   {seasons: 1, batches: 1100, crops: 3, varieties: 2, trays: 3, lots: 1100, days: 1},
}

// Pages that a book is large enough to have, below an address.
var partsOfBig = map[string][]string{
	"many groups":     {"2023/germination/crop-aa.html", "2024/quality/crop-aa.html", "2023/lots/crop-aa.html", "2023/records/crop-aa/2023-02.html", "records/2023.html"},
	"one crop":        {"2023/quality/quality-2.html", "2023/lots/crop-aa/2.html"},
	"many codes":      {"trays/pairs-2.html", "week/left-2.html", "sowing/free-2.html"},
	"much missing":    {"missing/2023.html"},
	"all at once due": {"sheets/2.html", "week/work-2.html"},
	"all at a time":   {"2023/records/crop-aa/2023-02-2.html"},
}

// A page of a large book is no larger than another: what is too long stands on pages of its
// own, every batch and every lot once, and every link leads to what is there.
func TestBigBooks(t *testing.T) {
	for name, book := range bigBooks {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			r := reportOf(t, book.files(), report.Options{})
			b := buildOf(t, r, nil)
			ids := idsOf(t, b)
			for page, body := range b.pages {
				if len(body) > mostOfPage {
					t.Errorf("%s takes %d bytes", page, len(body))
				}
				if strings.Count(page, "-2/") > 0 {
					t.Errorf("%s: a part has parts", page)
				}
				if strings.Contains(body, badFormat) {
					t.Errorf("%s: a sentence lacks a word", page)
				}
				leadsSomewhere(t, page, body, ids)
			}
			for _, page := range partsOfBig[name] {
				if b.pages[page] == "" {
					t.Errorf("there is no %s", page)
				}
			}
			if len(r.Records) != book.seasons*book.batches {
				t.Fatalf("%d batches", len(r.Records))
			}
			for _, of := range r.Records {
				if n := count(ids, "batch-"+slug(of.Code)); n != 1 {
					t.Errorf("%s is told %d times", of.Code, n)
				}
			}
			for _, l := range r.Germination.Lots {
				if n := count(ids, "trail-lot-"+slug(l.Code)); n < 1 || n > book.seasons {
					t.Errorf("the trail of lot %s stands %d times in %d seasons", l.Code, n, book.seasons)
				}
			}
		})
	}
}

// Of more crops than have a chart, the others say so in its place.
func TestCropsWithoutChart(t *testing.T) {
	r := reportOf(t, bigBooks["many crops"].files(), report.Options{})
	charts := Charts{}
	for _, d := range chart.LeftOut(r) {
		charts[d.Name] = d
	}
	left, many := 0, 0
	for _, body := range buildOf(t, r, charts).pages {
		left, many = left+strings.Count(body, chart.MissingLeftOut), many+strings.Count(body, chart.MissingMany)
	}
	if left < chart.MostWeeks || many != 5 {
		t.Errorf("%d charts are left out, %d crops say that they have none; want %d or more, and 5", left, many, chart.MostWeeks)
	}
}

var (
	anID   = regexp.MustCompile(` id="([^"]*)"`)
	aLink  = regexp.MustCompile(`<a [^>]*?href="([^"]*)"`)
	useOf  = regexp.MustCompile(`<use href="#([^"]*)"`)
	scheme = regexp.MustCompile(`^(https?|mailto):`)
)

// idsOf are the ids of each page, none of them twice.
func idsOf(t *testing.T, b build) map[string]map[string]bool {
	t.Helper()
	all := map[string]map[string]bool{}
	for _, page := range b.html() {
		ids := map[string]bool{}
		for _, m := range anID.FindAllStringSubmatch(b.pages[page], -1) {
			if ids[m[1]] {
				t.Errorf("%s: id %q twice", page, m[1])
			}
			ids[m[1]] = true
		}
		all[page] = ids
	}
	return all
}

// count is on how many pages an id stands.
func count(ids map[string]map[string]bool, id string) (n int) {
	for _, of := range ids {
		if of[id] {
			n++
		}
	}
	return n
}

// leadsSomewhere follows every link of a page but those to its data files and style sheets.
func leadsSomewhere(t *testing.T, page, body string, ids map[string]map[string]bool) {
	t.Helper()
	for _, m := range useOf.FindAllStringSubmatch(body, -1) {
		if !ids[page][m[1]] {
			t.Errorf("%s draws on %q, which is not there", page, m[1])
			return
		}
	}
	for _, m := range aLink.FindAllStringSubmatch(body, -1) {
		file, id, _ := strings.Cut(m[1], "#")
		to := page
		if file != "" {
			to = path.Join(path.Dir(page), file)
		}
		switch of, there := ids[to]; {
		case scheme.MatchString(file) || strings.HasPrefix(to, "data/"):
		case !there, id != "" && !of[id]:
			t.Errorf("%s: %q leads nowhere", page, m[1])
			return // one tells enough of a page
		}
	}
}
