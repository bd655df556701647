package chart

import (
	"errors"
	"fmt"
	"sync"

	"traybook/report/chart/runtime"

	"github.com/dop251/goja"
)

// source is the bundle, read once for all engines and only when first needed.
type source struct {
	bundle   []byte
	once     sync.Once
	programs []*goja.Program
	err      error
}

// builtIn is the bundle that traybook was built with, read once for all Drawers: reading
// takes 0.1 s, and watch has a Drawer for each round.
var builtIn = sync.OnceValue(func() *source { return &source{bundle: Bundle()} })

// compile reads the three scripts: what ECharts expects of a browser, ECharts, and what
// makes a drawing of an option. Compiled once, they run in every engine.
func (s *source) compile() {
	scripts := []struct{ name, text string }{
		{"prelude.js", runtime.Prelude()},
		{"echarts.js", string(s.bundle)},
		{"bridge.js", runtime.Bridge()},
	}
	for _, script := range scripts {
		p, err := goja.Compile(script.name, script.text, false)
		if err != nil {
			s.err = fmt.Errorf("the ECharts file cannot be read as a script: %w", err)
			return
		}
		s.programs = append(s.programs, p)
	}
}

// engine is one script engine with ECharts loaded. It is not safe for use by
// several goroutines.
type engine struct {
	vm  *goja.Runtime
	fun goja.Callable
}

// start returns a new engine: about 20 to 50 ms, 10 MB. What ECharts keeps between
// drawings stays in its engine, so an engine that failed is not used again.
func (s *source) start() (*engine, error) {
	vm := goja.New()
	vm.SetMaxCallStackSize(mostCalls)
	return safely(func() (*engine, error) { return s.load(vm) })
}

// load runs the scripts in an engine.
func (s *source) load(vm *goja.Runtime) (*engine, error) {
	s.once.Do(s.compile)
	if s.err != nil {
		return nil, s.err
	}
	if err := vm.Set("measureWidth", measureFont); err != nil {
		return nil, err
	}
	for _, p := range s.programs {
		if _, err := vm.RunProgram(p); err != nil {
			return nil, fmt.Errorf("the ECharts file does not run: %w", err)
		}
	}
	fun, ok := goja.AssertFunction(vm.Get("draw"))
	if !ok {
		return nil, errors.New("the ECharts file does not run: there is nothing to draw with")
	}
	return &engine{vm, fun}, nil
}

// draw draws one chart as a page may hold it.
func (e *engine) draw(s Spec, option string) (string, error) {
	raw, err := safely(func() (string, error) { return e.run(option, s.Width, s.Height) })
	if err != nil {
		return "", err
	}
	return clean(raw, s)
}

// run returns the SVG as ECharts writes it. The size of what comes back is bounded, as it
// is held in memory and cleaned as a whole.
func (e *engine) run(option string, width, height int) (string, error) {
	v, err := e.fun(goja.Undefined(), e.vm.ToValue(option), e.vm.ToValue(width), e.vm.ToValue(height))
	if err != nil {
		return "", fmt.Errorf("ECharts refused it: %w", err)
	}
	svg := v.String()
	if len(svg) > mostDrawn {
		return "", fmt.Errorf("ECharts drew more than %d MB", mostDrawn>>20)
	}
	return svg, nil
}

// end has nothing to let go.
func (e *engine) end() {}

// safely turns a panic of the script engine into an error.
func safely[T any](do func() (T, error)) (value T, err error) {
	defer recovered(&err)
	value, err = do()
	if deep := (*goja.StackOverflowError)(nil); errors.As(err, &deep) {
		err = errors.New("the ECharts file was stopped: it calls itself without end")
	}
	return value, err
}

// recovered puts a panic in the place of an error.
func recovered(err *error) {
	if r := recover(); r != nil {
		*err = fmt.Errorf("the script engine failed: %v", r)
	}
}
