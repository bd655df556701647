package chart

import (
	"errors"
	"os"
	"os/exec"
	"strings"
	"testing"
	"time"
)

// again, in the environment, makes this test a process that draws for another.
const again = "CHART_DRAWS_APART"

func TestMain(m *testing.M) {
	if os.Getenv(again) != "" {
		Apart(os.Stdin, os.Stdout)
	}
	os.Exit(m.Run())
}

// self is this test as a process that draws for another.
func self() *exec.Cmd {
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), again+"=1")
	return cmd
}

// host stands for ECharts, with what it does at its loading and at each chart.
func host(loading, drawing string) []byte {
	return []byte(`var echarts = { setPlatformAPI: function () {}, init: function () { return {
		setOption: function () {` + drawing + `}, renderToSVGString: function () { return "<svg/>"; }, dispose: function () {} }; } };` + loading)
}

// A script that loops, recurses or takes memory without end is stopped, at its loading or
// at a chart, in calls of its own or inside one of the engine's, and says why; no further
// chart waits as long again.
func TestScriptsWithoutEndAreStopped(t *testing.T) {
	const (
		loop      = `for (;;) {}`
		backtrack = `/^(a+)\1*(a+)+$(?!x)/.test("a".repeat(60) + "!");`
		recurse   = `(function f() { return f() + 1; })();`
		through   = `(function f() { return [1].map(f); })();`
		nested    = `var a = []; for (var i = 0; i < 1e5; i++) { a = [a]; } for (;;) { String(a); }`
		take      = `var all = []; for (;;) { all.push(new Array(1000).fill(1)); }`
		once      = `"x".repeat(2000000000);`
		double    = `var s = "\u4e2d"; for (;;) { s += s; }`
		bytes     = `var all = []; for (;;) { all.push(new Uint8Array(1 << 28).fill(7)); }`

		late = "it ran for more than 1s"
		much = "it took more than 256 MB of memory"
	)
	for name, tt := range map[string]struct {
		loading, drawing string
		time             time.Duration
		want             string
	}{
		"loops at loading":       {loop, "", time.Second, late},
		"loops at a chart":       {"", loop, time.Second, late},
		"loops in one call":      {"", backtrack, time.Second, late},
		"recurses":               {"", recurse, time.Minute, "it calls itself without end"},
		"recurses by map":        {through, "", time.Minute, "it calls itself without end"},
		"recurses by nesting":    {"", nested, time.Minute, much},
		"takes memory":           {"", take, time.Minute, much},
		"takes it at loading":    {take, "", time.Minute, much},
		"takes it in one call":   {"", once, time.Minute, much},
		"takes it by doubling":   {"", double, time.Minute, much},
		"takes it beside itself": {"", bytes, time.Minute, much},
	} {
		t.Run(name, func(t *testing.T) {
			d := drawer(t, DrawerOptions{Bundle: host(tt.loading, tt.drawing), Workers: 2, Apart: self})
			d.patience.most = tt.time
			got, err := d.Draw([]Spec{plain("a"), plain("b"), plain("c")})
			if err == nil || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("says %v", err)
			}
			for _, g := range got {
				if g.Missing != MissingFailed {
					t.Errorf("%+v", g)
				}
			}
		})
	}
}

// What is drawn apart is what is drawn here, whatever comes before it.
func TestDrawnApartIsTheSame(t *testing.T) {
	specs := []Spec{plain("a"), plain("b"), plain("c")}
	want := drawAll(t, DrawerOptions{Bundle: bundle(t)}, specs)
	got := drawAll(t, DrawerOptions{Bundle: append([]byte(" "), bundle(t)...), Workers: 3, Apart: self}, specs)
	for i := range want {
		if got[i] != want[i] || got[i].SVG == "" {
			t.Errorf("%s differs", want[i].Name)
		}
	}
}

// A script that is slow at every chart has one patience for all of them.
func TestSlowScriptsAreStopped(t *testing.T) {
	p := &patience{most: 20 * time.Second}
	for _, took := range []time.Duration{freeTime, 4 * freeTime, 18 * freeTime} { // 0 + 3 + 17 s
		if p.left() < freeTime {
			t.Fatalf("only %v left", p.left())
		}
		p.spend(took)
	}
	if p.left() != freeTime {
		t.Errorf("%v left of 20 s less 20 s", p.left())
	}
	p.end()
	if p.left() != 0 {
		t.Error("another chart is begun after one was stopped")
	}
}

// A process that cannot be started, or ends at once, is said, and nothing hangs.
func TestNoProcessToDrawWith(t *testing.T) {
	missing := func() *exec.Cmd { return exec.Command(t.TempDir() + "/none") }
	ends := func() *exec.Cmd { return exec.Command(os.Args[0], "-no-such-flag") }
	for want, start := range map[string]func() *exec.Cmd{"no process can be started": missing, "what draws with it ended": ends} {
		_, err := drawer(t, DrawerOptions{Bundle: host("", ""), Apart: start}).Draw([]Spec{plain("a"), plain("b")})
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v, want %q", err, want)
		}
	}
}

// A process ends with the one that asked it, in the midst of a script too.
func TestAProcessEndsWithItsInput(t *testing.T) {
	p, err := apart(self(), host("for (;;) {}", ""), &patience{most: time.Minute})
	if err != nil {
		t.Fatal(err)
	}
	if err := p.to.Encode(request{Bundle: p.bundle}); err != nil {
		t.Fatal(err)
	}
	time.Sleep(200 * time.Millisecond)
	ended := make(chan bool)
	go func() { p.end(); close(ended) }()
	select {
	case <-ended:
	case <-time.After(time.Minute):
		t.Error("it goes on")
		_ = p.cmd.Process.Kill()
	}
}

// The bundle of the build draws on the slowest machine: it has no bounds. Another one has.
func TestOnlyTheOwnBundleIsTrusted(t *testing.T) {
	own := bundle(t)
	d, err := NewDrawer(DrawerOptions{Bundle: own, Apart: self, Workers: 9})
	if err != nil || d.options.Apart != nil || d.options.Workers != 9 {
		t.Errorf("its own: %+v, %v", d.options.Workers, err)
	}
	if d = drawer(t, DrawerOptions{Bundle: append([]byte(" "), own...), Apart: self, Workers: 9}); d.options.Apart == nil || d.options.Workers != mostHands {
		t.Errorf("another: %d", d.options.Workers)
	}
	if _, err := (&pen{drawer: d}).drawAnew(plain("a"), "{"); err == nil || errors.Is(err, errOver) {
		t.Errorf("options that are none: %v", err)
	}
}
