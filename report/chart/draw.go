package chart

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"os/exec"
	"regexp"
	"sync"
	"sync/atomic"
)

// Spec is a chart still to be drawn. Builders make it.
type Spec struct {
	// Name is the figure's name on the page and the start of every id inside
	// the SVG: lower-case letters, digits and hyphens, a letter first.
	Name string
	// Title is the short name that a reader sees on pointing at the chart.
	Title string
	// Label is what a screen reader says: what is shown, the range, the best
	// and the worst.
	Label string
	// Width and Height in pixels; the page scales the drawing.
	Width, Height int
	// Option is what ECharts is told. It holds no functions, only their names.
	Option map[string]any

	narrow *Spec // the same chart drawn for a narrow screen
	err    error // what a builder found wrong; told by Draw
}

// Drawing is a chart as text to be put into a page as it stands.
type Drawing struct {
	Name string
	// SVG is one svg element, or empty.
	SVG string
	// Missing says in a plain line why there is no SVG; empty if there is one.
	Missing string
}

// What stands in place of a chart.
const (
	MissingRuntime = "No chart here: traybook was built without its drawing library. The table holds the same numbers."
	MissingMany    = "No chart here: of this season only the crops of most batches have one. The table holds the same numbers."
	MissingTooBig  = "No chart here: it would be too large for a page. The table holds the same numbers."
	MissingLeftOut = "No chart here: this review was built without charts. The table holds the same numbers."
	MissingFailed  = "No chart here: it could not be drawn. The table holds the same numbers."
)

// DrawerOptions says with what a Drawer works.
type DrawerOptions struct {
	// Bundle is ECharts: runtime.Bundle, or the stock dist/echarts.min.js. Nil:
	// nothing is drawn, and every Drawing is Missing.
	Bundle []byte
	// CacheDir is a folder for finished drawings; empty: none are kept.
	CacheDir string
	// Workers is the number of charts drawn at a time; below 1 counts as 1.
	Workers int
	// Apart starts this program so that it does nothing but Apart with its standard
	// input and output. A bundle that is not traybook's own is drawn with in two such
	// processes at most, and stopped after 20 s or 256 MB. Nil: it is drawn with in
	// this process, without any bound.
	Apart func() *exec.Cmd
	// Progress, if not nil, is called after each chart, one call at a time.
	Progress func(done, total int)
}

// Drawer draws charts. It may be used from one goroutine at a time.
type Drawer struct {
	options  DrawerOptions
	cache    cache
	source   *source
	patience *patience // with a script that is not our own
}

// NewDrawer returns a Drawer. It reads nothing and starts no engine yet; a
// bundle that does not run is found at the first chart not in the cache.
func NewDrawer(o DrawerOptions) (*Drawer, error) {
	o.Workers = max(1, o.Workers)
	if o.Bundle != nil && len(bytes.TrimSpace(o.Bundle)) == 0 {
		return nil, errors.New("the ECharts file is empty")
	}
	s := builtIn()
	if bytes.Equal(o.Bundle, s.bundle) {
		o.Apart = nil
	} else {
		s = &source{bundle: o.Bundle}
	}
	if o.Apart != nil {
		o.Workers = min(o.Workers, mostHands)
	}
	return &Drawer{o, newCache(o.CacheDir, o.Bundle), s, &patience{most: mostTime}}, nil
}

// Draw draws every spec, in the order given. A chart that cannot be drawn comes
// back as Missing and in the error, by name; the others are drawn all the same.
func (d *Drawer) Draw(specs []Spec) ([]Drawing, error) {
	drawings, errs := make([]Drawing, len(specs)), make([]error, len(specs))
	var next atomic.Int64
	var workers sync.WaitGroup
	report := d.reporter(len(specs))
	for range min(d.options.Workers, len(specs)) {
		workers.Go(func() {
			pen := pen{drawer: d}
			defer pen.drop()
			for i := next.Add(1) - 1; i < int64(len(specs)); i = next.Add(1) - 1 {
				drawings[i], errs[i] = pen.draw(specs[i])
				report()
			}
		})
	}
	workers.Wait()
	d.cache.prune()
	return drawings, errors.Join(append(errs, sameNames(specs))...)
}

// reporter returns a function that counts a finished chart.
func (d *Drawer) reporter(total int) func() {
	var mu sync.Mutex
	done := 0
	return func() {
		mu.Lock()
		defer mu.Unlock()
		done++
		if d.options.Progress != nil {
			d.options.Progress(done, total)
		}
	}
}

// pen is one worker: its hand starts when the cache first fails it, because an engine
// must stay on one goroutine.
type pen struct {
	drawer *Drawer
	hand   hand
}

// hand draws what a page may hold: an engine here, or in a process apart.
type hand interface {
	draw(s Spec, option string) (svg string, err error)
	end()
}

// draw takes a drawing from the cache or draws it anew and keeps it. A chart that cannot
// be drawn is said to be missing, with the reason.
func (p *pen) draw(s Spec) (Drawing, error) {
	option, err := s.check()
	if err != nil {
		return Drawing{Name: s.Name, Missing: MissingFailed}, fmt.Errorf("chart %q: %w", s.Name, err)
	}
	if p.drawer.options.Bundle == nil {
		return Drawing{Name: s.Name, Missing: MissingRuntime}, nil
	}
	key := p.drawer.cache.key(s, option)
	if svg, ok := p.drawer.cache.get(key); ok {
		return Drawing{Name: s.Name, SVG: svg}, nil
	}
	if tooBig(s, "") {
		return Drawing{Name: s.Name, Missing: MissingTooBig}, nil
	}
	svg, err := p.drawAnew(s, option)
	switch {
	case err != nil:
		return Drawing{Name: s.Name, Missing: MissingFailed}, fmt.Errorf("chart %q: %w", s.Name, err)
	case tooBig(s, svg):
		return Drawing{Name: s.Name, Missing: MissingTooBig}, nil
	}
	p.drawer.cache.put(key, svg)
	return Drawing{Name: s.Name, SVG: svg}, nil
}

// drawAnew draws. After a failure the next chart starts anew: the state is unknown.
func (p *pen) drawAnew(s Spec, option string) (svg string, err error) {
	if p.hand == nil {
		if p.hand, err = p.drawer.start(); err != nil {
			p.hand = nil
			return "", err
		}
	}
	if svg, err = p.hand.draw(s, option); err != nil {
		p.drop()
	}
	return svg, err
}

// start starts an engine, here or apart.
func (d *Drawer) start() (hand, error) {
	if d.options.Apart == nil {
		return d.source.start()
	}
	if d.patience.left() == 0 {
		return nil, errOver
	}
	return apart(d.options.Apart(), d.options.Bundle, d.patience)
}

// drop lets the hand go, if there is one.
func (p *pen) drop() {
	if p.hand != nil {
		p.hand.end()
	}
	p.hand = nil
}

// nameForm is that of a name that can be an id in a page and a file of the cache.
var nameForm = regexp.MustCompile(`^[a-z][a-z0-9-]*$`)

// A drawing larger than this is none that a page can show: pixels of a side, bytes.
const (
	maxSide  = 2500
	maxBytes = 300_000
)

// tooBig reports whether a page has no use for a drawing.
func tooBig(s Spec, svg string) bool { return max(s.Width, s.Height) > maxSide || len(svg) > maxBytes }

// check returns the options as JSON, or what is wrong with the spec.
func (s Spec) check() (string, error) {
	if s.err != nil {
		return "", s.err
	}
	if !nameForm.MatchString(s.Name) {
		return "", errors.New("the name must be lower-case letters, digits and hyphens, a letter first")
	}
	if s.Width < 1 || s.Height < 1 {
		return "", fmt.Errorf("a size of %d x %d cannot be drawn", s.Width, s.Height)
	}
	b, err := json.Marshal(s.Option)
	return string(b), err
}

// sameNames tells of a name used twice: ids in a page would collide.
func sameNames(specs []Spec) error {
	var errs []error
	seen := map[string]bool{}
	for _, s := range specs {
		if seen[s.Name] {
			errs = append(errs, fmt.Errorf("chart %q: the name is used twice", s.Name))
		}
		seen[s.Name] = true
	}
	return errors.Join(errs...)
}
