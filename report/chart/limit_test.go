package chart

import (
	"errors"
	"strings"
	"testing"
	"time"
)

// host stands for ECharts, with what it does at its loading and at each chart.
func host(loading, drawing string) []byte {
	return []byte(`var echarts = { setPlatformAPI: function () {}, init: function () { return {
		setOption: function () {` + drawing + `}, renderToSVGString: function () { return "<svg/>"; }, dispose: function () {} }; } };` + loading)
}

// A script that loops, recurses or takes memory without end is stopped, at its loading or
// at a chart, and says why; no further chart waits as long again.
func TestScriptsWithoutEndAreStopped(t *testing.T) {
	const (
		loop    = `for (;;) {}`
		recurse = `(function f() { return f() + 1; })();`
		through = `(function f() { return [1].map(f); })();`
		nested  = `var a = []; for (var i = 0; i < 1e5; i++) { a = [a]; } for (;;) { String(a); }`
		take    = `var all = []; for (;;) { all.push(new Array(1000).fill(1)); }`
		long    = `var s = "x"; for (;;) { s += s; }`
	)
	for name, tt := range map[string]struct{ loading, drawing, want string }{
		"loops at loading":     {loop, "", "it ran for more than 300ms"},
		"loops at a chart":     {"", loop, "it ran for more than 300ms"},
		"recurses":             {"", recurse, "it calls itself without end"},
		"recurses by map":      {through, "", "it calls itself without end"},
		"recurses by nesting":  {"", nested, "it took more than 48 MB of memory"},
		"takes memory":         {"", take, "it took more than 48 MB of memory"},
		"takes it by doubling": {long, "", ""},
	} {
		d := drawer(t, DrawerOptions{Bundle: host(tt.loading, tt.drawing), Workers: 2})
		d.source.limit.time, d.source.limit.memory, d.source.limit.stack = 300*time.Millisecond, 48<<20, 48<<20
		if strings.HasPrefix(name, "takes") || strings.HasPrefix(name, "recurses") {
			d.source.limit.time = time.Minute // a slow machine takes its time, too
		}
		got, err := d.Draw([]Spec{plain("a"), plain("b")})
		if err == nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("%s: %v", name, err)
		}
		for _, g := range got {
			if g.Missing != MissingFailed {
				t.Errorf("%s: %+v", name, g)
			}
		}
	}
}

// What stays inside one call of the engine's own, where no interruption reaches it, is
// left behind; what is left behind holds nothing up, and no other is begun.
func TestWhatCannotBeInterruptedIsLeftBehind(t *testing.T) {
	s := &source{bundle: host("", ""), limit: newLimit()}
	e, err := s.start()
	if err != nil {
		t.Fatal(err)
	}
	s.limit.time = 50 * time.Millisecond
	release := make(chan bool)
	defer close(release)
	_, err = within(s.limit, e.vm, func() (bool, error) { return <-release, nil })
	if err == nil || !strings.Contains(err.Error(), "it ran for more than 50ms") {
		t.Errorf("%v", err)
	}
	if _, err := s.start(); !errors.Is(err, errOver) {
		t.Errorf("another one: %v", err)
	}
}

// The bundle of the build draws on the slowest machine: it has no limit of time. Another
// one has.
func TestOnlyTheOwnBundleIsTrusted(t *testing.T) {
	own := bundle(t)
	d, err := NewDrawer(DrawerOptions{Bundle: own})
	if err != nil || d.source.limit.time != 0 {
		t.Errorf("%v, %v", d.source.limit.time, err)
	}
	if d = drawer(t, DrawerOptions{Bundle: append([]byte(" "), own...)}); d.source.limit.time != mostTime {
		t.Errorf("%v", d.source.limit.time)
	}
}
