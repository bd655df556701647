package chart

import (
	"errors"
	"fmt"
	"runtime"
	"runtime/metrics"
	"sync/atomic"
	"time"

	"github.com/dop251/goja"
)

// limit is how long each run of a script may take, and how much more memory than at the
// start of the drawing there may be in use. ECharts takes 20 to 500 ms and 10 MB; a script
// that takes so much more will not end. The bundle that traybook was built with is trusted
// and has no limit, however slow the machine.
type limit struct {
	time   time.Duration // 0: no limit of any kind
	memory uint64        // bytes of objects
	stack  uint64        // bytes; Go itself gives up at 1 GB
	start  held          // what was in use at the start
	over   *atomic.Bool  // a script was stopped: no further one is begun
}

// Limits of a script that is given by a file.
const (
	mostTime   = 20 * time.Second
	mostMemory = 384 << 20 // twice as much may be in use before it is seen
	mostStack  = 1 << 28
	mostCalls  = 4000     // calls within calls; ECharts needs some hundred
	mostDrawn  = 16 << 20 // bytes of one drawing
	lookEvery  = 20 * time.Millisecond
)

// errOver stands for the charts that are not begun after a script was stopped.
var errOver = errors.New("the ECharts file was stopped at another chart")

// newLimit is the limit of a script that is given by a file, as of now.
func newLimit() limit {
	return limit{mostTime, mostMemory, mostStack, inUse(), &atomic.Bool{}}
}

// outcome is what a run of a script came to.
type outcome[T any] struct {
	value T
	err   error
}

// within runs a script's doings, and stops them at the limit: by a flag that the engine
// looks at, or, where it stays inside one call of its own, by leaving it behind. What was
// stopped must not be used again.
func within[T any](l limit, vm *goja.Runtime, do func() (T, error)) (T, error) {
	if l.time == 0 {
		return safely(do)
	}
	var none T
	if l.over.Load() {
		return none, errOver
	}
	done := make(chan outcome[T], 1) // whoever is left behind can still end
	go func() {
		value, err := safely(do)
		done <- outcome[T]{value, err}
	}()
	look, late := time.NewTicker(lookEvery), time.NewTimer(l.time)
	defer look.Stop()
	defer late.Stop()
	for {
		select {
		case o := <-done:
			return o.value, o.err
		case <-late.C:
			return none, l.stop(vm, fmt.Errorf("the ECharts file was stopped: it ran for more than %v", l.time))
		case <-look.C:
			if l.tooMuch() {
				return none, l.stop(vm, fmt.Errorf("the ECharts file was stopped: it took more than %d MB of memory", l.memory>>20))
			}
		}
	}
}

// safely turns a panic of the script engine into an error.
func safely[T any](do func() (T, error)) (value T, err error) {
	defer recovered(&err)
	value, err = do()
	if deep := (*goja.StackOverflowError)(nil); errors.As(err, &deep) {
		err = errors.New("the ECharts file was stopped: it calls itself without end")
	}
	return value, err
}

// stop interrupts the script, and keeps others from beginning.
func (l limit) stop(vm *goja.Runtime, why error) error {
	l.over.Store(true)
	vm.Interrupt(why)
	return why
}

// tooMuch reports whether memory in use is beyond the limit, garbage taken away.
func (l limit) tooMuch() bool {
	now := inUse()
	if !l.passed(now) || now.objects > l.start.objects+2*l.memory {
		return l.passed(now)
	}
	runtime.GC() // which takes long enough to take much more
	return l.passed(inUse())
}

func (l limit) passed(now held) bool {
	return now.objects > l.start.objects+l.memory || now.stacks > l.start.stacks+l.stack
}

// held is memory in use, bytes.
type held struct{ objects, stacks uint64 }

// inUse reads the memory in use, garbage not yet taken away included.
func inUse() held {
	s := []metrics.Sample{{Name: "/memory/classes/heap/objects:bytes"}, {Name: "/memory/classes/heap/stacks:bytes"}}
	metrics.Read(s)
	return held{s[0].Value.Uint64(), s[1].Value.Uint64()}
}
