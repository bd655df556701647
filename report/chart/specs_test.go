package chart

import (
	"os"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
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
	r := reportOf()
	r.Seasons = []int{2024, 2025}
	for _, year := range r.Seasons {
		r.Emergence = append(r.Emergence, report.Emergence{Group: report.Group{Season: year, Crop: "kale"}, Rate: share(0.9, 4)})
		r.Losses = append(r.Losses, report.Loss{Season: year, Crop: "kale", Cells: 3, ByMonth: [13]int{4: 3}})
		r.Quality = append(r.Quality, report.Quality{Group: report.Group{Season: year, Crop: "kale"}, Rate: share(0.9, 3), S: [5]report.Num{known(1)}})
	}
	drawn := func() (names []string) {
		for _, s := range figures(r) {
			names = append(names, s.Name)
		}
		return names
	}
	same(t, "charts", drawn(), "emergence-2024", "emergence-2025", "losses-2025", "quality-2025")
	r.Book.Notes = []records.Note{{Year: 2024, Text: "```figure losses\n```\n"}}
	same(t, "charts with a note", drawn(), "emergence-2024", "losses-2024", "emergence-2025", "losses-2025", "quality-2025")
}

// Names from the logs are text in every chart of figures.
func TestHostileNamesInFigures(t *testing.T) {
	const evil = `</script><img src=x onerror=alert(1)>`
	r := reportOf()
	g := group(evil, evil, evil)
	r.Emergence = []report.Emergence{{Group: g, Rate: share(0.9, 4)}}
	r.Losses = []report.Loss{{Season: 2025, Crop: evil, Cause: evil, Cells: 3, ByMonth: [13]int{4: 3}}}
	r.Quality = []report.Quality{{Group: g, Rate: share(0.9, 3), S: [5]report.Num{known(1)}}}
	r.Leeway = []report.Leeway{{Kind: evil, Rate: share(0.9, 4)}}
	r.Lots = []report.LotFigure{{Lot: records.Lot{Code: evil, Crop: evil, Variety: evil}, SeedRate: known(0.8), Label: known(0.9)}}
	r.Payback = []report.Payback{{Tray: evil, Other: "", Cells: 50}}
	r.Matches = []report.Match{{Tray: evil, Difference: 0.1}}
	r.Room = []report.Room{{Season: 2025, Place: evil, Kind: report.TrayPlace, Peak: 2}}
	specs := Specs(r)
	if len(specs) != 2*7 || sameNames(specs) != nil {
		t.Fatalf("%d charts, %v", len(specs), sameNames(specs))
	}
	for _, d := range drawAll(t, DrawerOptions{Bundle: bundle(t)}, specs) {
		wellFormed(t, d.SVG)
		if strings.Contains(d.SVG, "<img") || !strings.Contains(d.SVG, "&lt;img") {
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
