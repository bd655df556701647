package chart

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"math"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"traybook/report/chart/runtime"
)

// bundle returns ECharts as built, or skips the test.
func bundle(t testing.TB) []byte {
	t.Helper()
	b, ok := runtime.Bundle()
	if !ok {
		skipOrFail(t, "ECharts is not built: run `go generate ./...` (it needs npm) to test the drawing of charts")
	}
	return b
}

// skipOrFail skips a test that needs what is not here, and fails it where
// TRAYBOOK_NO_SKIP is set, as .ci/run does.
func skipOrFail(t testing.TB, why string) {
	t.Helper()
	if os.Getenv("TRAYBOOK_NO_SKIP") != "" {
		t.Fatal(why)
	}
	t.Skip(why)
}

func drawer(t testing.TB, o DrawerOptions) *Drawer {
	t.Helper()
	d, err := NewDrawer(o)
	if err != nil {
		t.Fatal(err)
	}
	if own, ok := runtime.Bundle(); ok && bytes.Equal(own, o.Bundle) {
		d.source = shared() // read the bundle once for all tests
	}
	return d
}

var shared = sync.OnceValue(func() *source {
	b, _ := runtime.Bundle()
	return &source{bundle: b}
})

// plain is a chart of two bars that rests on no builder.
func plain(name string) Spec {
	return Spec{Name: name, Title: "Two bars", Label: "Two bars, 3 and 4.", Width: 300, Height: 200, Option: map[string]any{
		"animation": false,
		"xAxis":     map[string]any{"type": "category", "data": []string{"a", name}},
		"yAxis":     map[string]any{"type": "value"},
		"series":    []any{map[string]any{"type": "bar", "data": []any{3, 4}, "itemStyle": map[string]any{"color": "var(--c1)"}}},
	}}
}

// wellFormed parses a drawing as XML and fails on anything that the strictest
// page policy forbids or that would reach outside the drawing.
func wellFormed(t *testing.T, svg string) {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(svg))
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return
		}
		if err != nil {
			t.Fatalf("not well formed: %v", err)
		}
		start, ok := token.(xml.StartElement)
		if !ok {
			continue
		}
		if n := start.Name.Local; n == "style" || n == "script" || n == "image" || n == "foreignObject" || n == "a" {
			t.Errorf("element %s in a drawing", n)
		}
		for _, a := range start.Attr {
			if n := a.Name.Local; strings.HasPrefix(n, "on") || n == "style" || n == "class" || strings.HasPrefix(n, "ecmeta") {
				t.Errorf("attribute %s in a drawing", n)
			}
		}
	}
}

func TestDrawPlain(t *testing.T) {
	got, err := drawer(t, DrawerOptions{Bundle: bundle(t)}).Draw([]Spec{plain("two-bars")})
	if err != nil {
		t.Fatal(err)
	}
	svg := got[0].SVG
	wellFormed(t, svg)
	for _, want := range []string{
		`viewBox="0 0 300 200"`, `role="img"`, `aria-labelledby="two-bars-title"`,
		`<title id="two-bars-title">Two bars, 3 and 4.</title>`, "Two bars, 3 and 4.", `fill="var(--c1)"`, ">two-bars</text>",
	} {
		if !strings.Contains(svg, want) {
			t.Errorf("%s is not in\n%s", want, svg)
		}
	}
}

func TestDrawWithoutRuntimeSaysSo(t *testing.T) {
	got, err := drawer(t, DrawerOptions{}).Draw([]Spec{plain("a"), plain("b")})
	if err != nil {
		t.Fatal(err)
	}
	for _, g := range got {
		if g.SVG != "" || g.Missing != MissingRuntime {
			t.Errorf("%+v", g)
		}
	}
}

func TestDrawNamesWhatFails(t *testing.T) {
	broken := plain("broken")
	broken.Option["series"] = []any{map[string]any{"type": "custom", "renderItem": "@nothing", "data": []any{1}}}
	endless := plain("endless")
	endless.Option["xAxis"] = map[string]any{"min": math.Inf(1)}
	unnamed := plain("No Such Name")
	got, err := drawer(t, DrawerOptions{Bundle: bundle(t)}).Draw([]Spec{broken, endless, unnamed, plain("good"), plain("good")})
	for _, want := range []string{`chart "broken"`, `chart "endless"`, `chart "No Such Name"`, `chart "good": the name is used twice`} {
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s is not in %v", want, err)
		}
	}
	if got[0].Missing != MissingFailed || got[3].SVG == "" {
		t.Errorf("got %+v", got)
	}
}

func TestDrawWithAForeignFile(t *testing.T) {
	for _, text := range []string{"var x = ", "<html></html>", "var other = 1", "throw 1"} {
		_, err := drawer(t, DrawerOptions{Bundle: []byte(text)}).Draw([]Spec{plain("a")})
		if err == nil || !strings.Contains(err.Error(), "ECharts file") {
			t.Errorf("%q: %v", text, err)
		}
	}
	if _, err := NewDrawer(DrawerOptions{Bundle: []byte(" ")}); err == nil {
		t.Error("an empty file was taken")
	}
}

func TestDrawSameBytes(t *testing.T) {
	var specs []Spec
	for _, n := range []string{"a", "b", "c", "d", "e"} {
		specs = append(specs, plain(n))
	}
	dir := t.TempDir()
	one := drawAll(t, DrawerOptions{Bundle: bundle(t), CacheDir: dir}, specs)
	kept := drawAll(t, DrawerOptions{Bundle: bundle(t), CacheDir: dir}, specs)
	two := drawAll(t, DrawerOptions{Bundle: bundle(t), Workers: 2}, specs)
	last := drawAll(t, DrawerOptions{Bundle: bundle(t)}, specs[4:])
	for i := range specs {
		if one[i] != kept[i] || one[i] != two[i] {
			t.Errorf("%s differs between one worker, two and the cache", specs[i].Name)
		}
	}
	if one[4] != last[0] {
		t.Error("a chart drawn first differs from the same drawn last")
	}
}

func drawAll(t testing.TB, o DrawerOptions, specs []Spec) []Drawing {
	t.Helper()
	got, err := drawer(t, o).Draw(specs)
	if err != nil {
		t.Fatal(err)
	}
	return got
}

func TestDrawReportsProgress(t *testing.T) {
	var calls []int
	drawAll(t, DrawerOptions{Progress: func(done, total int) { calls = append(calls, done*10+total) }}, []Spec{plain("a"), plain("b")})
	if len(calls) != 2 || calls[0] != 12 || calls[1] != 22 {
		t.Errorf("calls %v", calls)
	}
}

func TestCachedBuildStartsNoEngine(t *testing.T) {
	dir := t.TempDir()
	drawAll(t, DrawerOptions{Bundle: bundle(t), CacheDir: dir}, []Spec{plain("a")})
	d, err := NewDrawer(DrawerOptions{Bundle: bundle(t), CacheDir: dir})
	if err != nil {
		t.Fatal(err)
	}
	if _, err := d.Draw([]Spec{plain("a")}); err != nil {
		t.Fatal(err)
	}
	if d.source.programs != nil {
		t.Error("the bundle was read though every chart was kept")
	}
}

func TestBrokenCacheIsNoError(t *testing.T) {
	dir := t.TempDir()
	o := DrawerOptions{Bundle: bundle(t), CacheDir: dir}
	want := drawAll(t, o, []Spec{plain("a")})[0]
	files, _ := filepath.Glob(filepath.Join(dir, "*.svg"))
	if len(files) != 1 {
		t.Fatalf("files %v", files)
	}
	whole, _ := os.ReadFile(files[0])
	damages := map[string]func() error{
		"cut short": func() error { return os.WriteFile(files[0], whole[:len(whole)/2], 0o644) },
		"empty":     func() error { return os.WriteFile(files[0], nil, 0o644) },
		"other":     func() error { return os.WriteFile(files[0], []byte("<svg></svg>"), 0o644) },
		"a folder":  func() error { return os.Mkdir(files[0], 0o755) },
	}
	for name, damage := range damages {
		_ = os.RemoveAll(files[0])
		if err := damage(); err != nil {
			t.Fatal(err)
		}
		if got := drawAll(t, o, []Spec{plain("a")})[0]; got != want {
			t.Errorf("%s: drawn otherwise", name)
		}
	}
	file := filepath.Join(t.TempDir(), "file")
	if err := os.WriteFile(file, nil, 0o644); err != nil {
		t.Fatal(err)
	}
	_ = os.RemoveAll(files[0])
	if got := drawAll(t, DrawerOptions{Bundle: bundle(t), CacheDir: filepath.Join(file, "cache")}, []Spec{plain("a")})[0]; got != want {
		t.Error("a folder that cannot be made: drawn otherwise")
	}
}

func BenchmarkDrawCold(b *testing.B) {
	o := DrawerOptions{Bundle: bundle(b)}
	for b.Loop() {
		d, err := NewDrawer(o)
		if err != nil {
			b.Fatal(err)
		}
		if _, err := d.Draw([]Spec{plain("a")}); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkDrawWarm(b *testing.B) {
	d := drawer(b, DrawerOptions{Bundle: bundle(b)})
	p := pen{drawer: d}
	for b.Loop() {
		if _, err := p.draw(plain("a")); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkDrawFromCache(b *testing.B) {
	o := DrawerOptions{Bundle: bundle(b), CacheDir: b.TempDir()}
	drawAll(b, o, []Spec{plain("a")})
	for b.Loop() {
		drawAll(b, o, []Spec{plain("a")})
	}
}
