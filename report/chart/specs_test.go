package chart

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
	"traybook/report/room"
)

// example is the report of a book of the examples.
func example(t testing.TB, book string) *report.Report {
	t.Helper()
	b, problems := records.Load(os.DirFS("../../examples/" + book))
	today, _ := records.ParseISO("2026-05-17")
	r, err := report.New(b, problems, report.Options{Today: today})
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// Every chart of the examples can be drawn, under a name of its own, holds
// nothing that is not a number, and comes out in the same bytes from any engine.
func TestChartsOfTheExamples(t *testing.T) {
	for _, book := range []string{"ottermoss", "tiny", "poor/sowings-only", "poor/third-blank", "poor/yearly-bill"} {
		specs := Specs(example(t, book))
		if len(specs) == 0 || sameNames(specs) != nil {
			t.Errorf("%s: %d charts, %v", book, len(specs), sameNames(specs))
		}
		for _, s := range specs {
			option, err := s.check()
			if err != nil || strings.Contains(option, "NaN") || s.Title == "" || !strings.HasPrefix(s.Label, s.Title) {
				t.Errorf("%s: %s: %v, label %q", book, s.Name, err, s.Label)
			}
		}
	}
}

func TestChartsOfTheExampleAreDrawn(t *testing.T) {
	o := DrawerOptions{Bundle: bundle(t), Workers: 2}
	specs := Specs(example(t, "ottermoss"))
	all := drawAll(t, o, specs)
	for i, d := range all {
		wellFormed(t, d.SVG)
		for _, bad := range []string{"NaN", "undefined", "Infinity"} {
			if strings.Contains(d.SVG, bad) {
				t.Errorf("%s holds %s", specs[i].Name, bad)
			}
		}
	}
	last := len(specs) - 1
	if again := drawAll(t, DrawerOptions{Bundle: o.Bundle}, []Spec{specs[last], specs[0]}); again[0] != all[last] || again[1] != all[0] {
		t.Error("drawn again, a chart differs")
	}
}

// An earlier season has what its review shows, and what its note asks for.
func TestChartsOfEarlierSeasons(t *testing.T) {
	b := newBook(t)
	for _, year := range []string{"2024", "2025"} {
		b.up(3, year+"-03-03", "kale", "Ruff", "AIR", 90)
		b.lost(year+"-04-10", 3, "")
		b.scored(year+"-04-20", 0, 0, 1)
	}
	same(t, "charts", namesOf(b.report()))
	b.Notes = []records.Note{{Year: 2024, Text: "```figure losses\n```\n"}}
	same(t, "charts with a note", namesOf(b.report()), "losses-2024")
}

// hostileBook has text that a page must not take for markup in every place that a
// chart shows.
func hostileBook(t *testing.T, evil string) book {
	b := newBook(t)
	b.Trays[0].Tray, b.Trays[0].Kind = evil, evil
	b.Lot(evil, evil, 0.9).Variety = evil
	for range 3 {
		s := b.sow("2025-03-03", evil, evil, evil)
		s.Lot, s.Planned = evil, b.Day("2025-04-15")
		code := s.Code
		b.Leave(s, "2025-04-20", 60, 0)
		b.Count(code, "2025-03-20", 80)
		b.scored("2025-04-15", 0, 0, 10)
		b.lost("2025-04-10", 3, evil)
		other := b.sow("2025-03-03", evil, evil, "WALL")
		other.Lot = evil
		b.Leave(other, "2025-04-20", 50, 0)
	}
	b.Cost("2025-03-10", records.Seed, 10)
	b.Notes = []records.Note{{Year: 2025, Text: "```figure losses\n```\n"}}
	return b
}

// Names from the logs are text in every chart of figures.
func TestHostileNamesInFigures(t *testing.T) {
	specs := Specs(hostileBook(t, `</script><img src=x onerror=alert(1)>`).report())
	kinds := map[string]bool{}
	for _, s := range specs {
		kind, _, _ := strings.Cut(s.Name, "-")
		kinds[kind] = true
	}
	if want := "losses room"; strings.Join(sortedKeys(kinds), " ") != want || sameNames(specs) != nil {
		t.Fatalf("charts %q, want %q; %v", sortedKeys(kinds), want, sameNames(specs))
	}
	for _, d := range drawAll(t, DrawerOptions{Bundle: bundle(t)}, specs) {
		wellFormed(t, d.SVG)
		if strings.Contains(d.SVG, "<img") || !strings.Contains(d.SVG, "&lt;img") && !strings.Contains(d.Name, "room") {
			t.Errorf("%s: the name is not there as text", d.Name)
		}
	}
}

func TestNamesOfFiguresDiffer(t *testing.T) {
	seen := map[string]string{}
	for _, part := range []string{"kale", "Kale", "KALE", "ka-le", "ka le", "kälе", "", "-", "50", "A50", "a50"} {
		n := Name("room", part)
		if !nameForm.MatchString(n) {
			t.Errorf("%q makes the name %q", part, n)
		}
		if other, ok := seen[n]; ok {
			t.Errorf("%q and %q make one name, %q", part, other, n)
		}
		seen[n] = part
	}
}

func BenchmarkSpecs(b *testing.B) {
	r := example(b, "ottermoss")
	for b.Loop() {
		Specs(r)
	}
}

func BenchmarkDrawSpecs(b *testing.B) {
	specs := Specs(example(b, "ottermoss"))
	for b.Loop() {
		drawAll(b, DrawerOptions{Bundle: bundle(b), Workers: 2}, specs)
	}
}

// Of many places those that were fullest have a chart, benches and chambers first.
func TestFullestPlacesHaveCharts(t *testing.T) {
	loads := []room.Load{{Season: 2025, Place: "bench", Kind: room.BenchPlace, Peak: 1}, {Season: 2024, Place: "old", Kind: room.TrayPlace, Peak: 999}}
	for i := range 100 {
		loads = append(loads, room.Load{Season: 2025, Place: fmt.Sprint("T", i), Kind: room.TrayPlace, Peak: float64(i)})
	}
	got := fullest(loads, 2025)
	if len(got) != MostRooms || got[0] != "bench" || got[1] != "T99" || got[MostRooms-1] != "T61" {
		t.Errorf("%v", got)
	}
	if few := fullest(loads[:5], 2025); len(few) != 4 {
		t.Errorf("%v", few)
	}
}

// A review built without charts says so in the place of each that is drawn otherwise, and
// of no other.
func TestLeftOutNamesTheChartsThatAreDrawn(t *testing.T) {
	r := example(t, "ottermoss")
	drawn := Specs(r)
	left := LeftOut(r)
	if len(drawn) != 2*len(left) {
		t.Fatalf("%d charts left out, %d drawn in two widths", len(left), len(drawn))
	}
	for i, d := range left {
		if wide, narrow := drawn[2*i].Name, drawn[2*i+1].Name; d.Name != wide || narrow != NarrowName(d.Name) || d.Missing != MissingLeftOut {
			t.Errorf("%q left out (%s), %q and %q drawn", d.Name, d.Missing, wide, narrow)
		}
	}
}
