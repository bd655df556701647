package folder

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
)

var errFault = errors.New("no space left on device")

// faulty is d where operation number n fails, counted from 1, and with forever
// every later one. A write that fails leaves half a file, as a full disk does.
// The count tells how many operations were begun.
func faulty(d disk, n int64, forever bool) (_ disk, count *atomic.Int64) {
	count = new(atomic.Int64)
	bad := func() bool {
		i := count.Add(1)
		return i == n || forever && i > n
	}
	return watched(d, func(do func() error, half func()) error {
		if bad() {
			half()
			return errFault
		}
		return do()
	}), count
}

// watched is d with every operation passed through do; half does part of one.
func watched(d disk, do func(operation func() error, half func()) error) disk {
	none := func() {}
	one := func(f func(string) error) func(string) error {
		return func(a string) error { return do(func() error { return f(a) }, none) }
	}
	two := func(f func(a, b string) error) func(a, b string) error {
		return func(a, b string) error { return do(func() error { return f(a, b) }, none) }
	}
	return disk{
		mkdir: func(name string, mode os.FileMode) error {
			return do(func() error { return d.mkdir(name, mode) }, none)
		},
		write: func(name string, body []byte) error {
			return do(func() error { return d.write(name, body) }, func() { _ = d.write(name, body[:len(body)/2]) })
		},
		sync: one(d.sync), link: two(d.link), rename: two(d.rename), exchange: two(d.exchange), remove: one(d.remove), clear: one(d.clear),
	}
}

// Whichever operation fails, once or from then on, the place holds the whole old
// one or the whole new one, the new one where no error is returned; and what is
// left beside it is gone after the next hold.
func TestEveryFault(t *testing.T) {
	for kind, d := range stepwise() {
		for _, had := range []bool{true, false} {
			for _, forever := range []bool{false, true} {
				t.Run(fmt.Sprintf("%s, site before %v, forever %v", kind, had, forever), func(t *testing.T) {
					everyFault(t, d, had, forever)
				})
			}
		}
	}
}

func everyFault(t *testing.T, d disk, had, forever bool) {
	for n := int64(1); ; n++ {
		w := newWorld(t, had)
		bad, count := faulty(d, n, forever)
		err := build(bad, w.site)
		if count.Load() < n {
			if n < 15 {
				t.Errorf("a build is only %d operations", n-1)
			}
			return
		}
		// A disk that is dead between the two steps leaves no site until mended.
		if state := stateOf(w.site); !forever && state != "after" && (err == nil || state != w.untouched()) {
			t.Errorf("fault %d (%v) leaves %s", n, err, state)
		}
		next(t, w, n)
	}
}

// next looks as the next command does.
func next(t *testing.T, w world, n int64) {
	t.Helper()
	if _, err := Mend(w.parent); err != nil {
		t.Errorf("fault %d: %v", n, err)
	}
	if state := stateOf(w.site); state != "after" && state != w.untouched() {
		t.Errorf("fault %d leaves %s for good", n, state)
	}
	if litter := w.litter(t); litter != nil {
		t.Errorf("fault %d leaves %s", n, litter)
	}
}

// Every file and every folder's list is on the disk before the swap, and the swap
// is before anything of the old one goes.
func TestOrderOnDisk(t *testing.T) {
	for kind, d := range stepwise() {
		w := newWorld(t, true)
		var order []string
		note := func(what string, f func(string) error) func(string) error {
			return func(name string) error {
				rel, _ := filepath.Rel(w.parent, name)
				order = append(order, what+" "+filepath.ToSlash(rel))
				return f(name)
			}
		}
		d.sync, d.clear = inTurn(note("sync", d.sync)), note("clear", d.clear)
		rename, exchange := d.rename, d.exchange
		d.rename = func(a, b string) error { order = append(order, "move"); return rename(a, b) }
		d.exchange = func(a, b string) error { order = append(order, "move"); return exchange(a, b) }
		if err := build(d, w.site); err != nil {
			t.Error(err)
		}
		order = slices.Compact(order)
		slices.Sort(order[2:5]) // which were synced at once
		want := "clear .site.traybook/new, clear .site.traybook/old, " +
			"sync .site.traybook/new, sync .site.traybook/new/data, sync .site.traybook/new/data/deep, sync .site.traybook, " +
			"move, sync ., sync .site.traybook, clear .site.traybook/new, clear .site.traybook/old"
		if got := strings.Join(order, ", "); got != want {
			t.Errorf("%s: %s", kind, got)
		}
	}
}

// inTurn lets one at a time through.
func inTurn(f func(string) error) func(string) error {
	var one sync.Mutex
	return func(name string) error {
		one.Lock()
		defer one.Unlock()
		return f(name)
	}
}

// A disk that fills up while a site is written, or cannot swap, leaves nothing
// beside the old site, at once.
func TestFullDiskLeavesNothing(t *testing.T) {
	for kind, d := range stepwise() {
		for name, full := range map[string]func(*disk){
			"write": func(d *disk) {
				d.write = func(n string, b []byte) error { _ = system.write(n, b[:1]); return errFault }
			},
			"mkdir":  func(d *disk) { d.mkdir = butFor(d.mkdir, "deep") },
			"sync":   func(d *disk) { d.sync = func(string) error { return errFault } },
			"rename": func(d *disk) { d.exchange, d.rename = noMove, noMove },
		} {
			w := newWorld(t, true)
			bad := d
			full(&bad)
			if err := build(bad, w.site); !errors.Is(err, errFault) {
				t.Errorf("%s, %s: %v", kind, name, err)
			}
			if state := stateOf(w.site); state != "before" || w.litter(t) != nil {
				t.Errorf("%s, %s: leaves %s, and %v", kind, name, state, w.litter(t))
			}
		}
	}
}

func noMove(a, b string) error { return errFault }

// butFor is a mkdir that fails for one folder.
func butFor(mkdir func(string, os.FileMode) error, name string) func(string, os.FileMode) error {
	return func(n string, mode os.FileMode) error {
		if filepath.Base(n) == name {
			return errFault
		}
		return mkdir(n, mode)
	}
}
