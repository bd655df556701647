package folder

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"sync"
	"sync/atomic"
	"testing"
	"time"
)

// The second of two waits, says so once, and goes on when the first is done.
func TestSecondWaits(t *testing.T) {
	w := newWorld(t, true)
	first, err := Hold(t.Context(), w.site, 0, func() { t.Error("the first waits") })
	if err != nil {
		t.Fatal(err)
	}
	said := make(chan bool, 9)
	done := make(chan error)
	go func() {
		second, err := Hold(t.Context(), w.site, time.Minute, func() { said <- true })
		if err == nil {
			err = second.Release()
		}
		done <- err
	}()
	select {
	case <-said:
		time.Sleep(5 * pause)
	case err := <-done:
		t.Fatalf("the second did not wait: %v", err)
	}
	if err := errors.Join(first.Release(), <-done); err != nil || len(said) > 0 {
		t.Errorf("%v; said %d times more", err, len(said))
	}
	if litter := w.litter(t); litter != nil {
		t.Errorf("left: %s", litter)
	}
}

// Waiting ends by patience or by whoever asked; what the first makes is never
// cleared or mended by others.
func TestWaitingEnds(t *testing.T) {
	w := newWorld(t, true)
	first, err := Hold(t.Context(), w.site, 0, func() {})
	if err != nil {
		t.Fatal(err)
	}
	defer first.Release()
	made := filepath.Join(first.fresh, "half")
	if err := errors.Join(os.MkdirAll(made, 0o755), os.Rename(w.site, first.old)); err != nil {
		t.Fatal(err)
	}
	if _, err := Hold(t.Context(), w.site, pause, func() {}); !errors.Is(err, ErrBusy) {
		t.Errorf("impatient: %v", err)
	}
	cancelled, cancel := context.WithCancel(t.Context())
	cancel()
	if _, err := Hold(cancelled, w.site, time.Minute, func() {}); !errors.Is(err, context.Canceled) {
		t.Errorf("cancelled: %v", err)
	}
	if mended, err := Mend(w.parent); mended != nil || err != nil {
		t.Errorf("mended %v, %v", mended, err)
	}
	if !stands(made) || !missing(w.site) {
		t.Error("what a live process does was touched")
	}
}

// Many at once: each finds the place free in its turn, and one of theirs stands.
func TestManyAtOnce(t *testing.T) {
	w := newWorld(t, false)
	var all sync.WaitGroup
	for range 8 {
		all.Go(func() {
			h, err := Hold(t.Context(), w.site, time.Minute, func() {})
			if err == nil {
				err = errors.Join(h.Put(List(after...), func() error { return nil }), h.Release())
			}
			if err != nil {
				t.Error(err)
			}
		})
	}
	all.Wait()
	if state := stateOf(w.site); state != "after" || w.litter(t) != nil {
		t.Errorf("%s stands, beside %v", state, w.litter(t))
	}
}

// However often a lock is removed and made anew, one at a time holds it.
func TestOneAtATime(t *testing.T) {
	p, err := at(filepath.Join(t.TempDir(), "site"))
	if err != nil {
		t.Fatal(err)
	}
	var inside, held atomic.Int64
	var all sync.WaitGroup
	for range 4 {
		all.Go(func() {
			for held.Load() < 200 && !t.Failed() {
				h, err := take(p, system)
				if errors.Is(err, errBusy) || errors.Is(err, errGone) {
					continue
				}
				if err != nil || inside.Add(1) != 1 {
					t.Errorf("two at a time, or %v", err)
					return
				}
				held.Add(1)
				runtime.Gosched()
				inside.Add(-1)
				if err := h.Release(); err != nil {
					t.Error(err)
				}
			}
		})
	}
	all.Wait()
}

// A refusal at the last moment leaves everything as it was, and so does one that
// gives up while work goes on.
func TestLastRefusalAndAbandon(t *testing.T) {
	w := newWorld(t, true)
	h, err := Hold(t.Context(), w.site, 0, func() {})
	if err != nil {
		t.Fatal(err)
	}
	if err := h.Put(List(after...), func() error { return errFault }); !errors.Is(err, errFault) {
		t.Errorf("not refused: %v", err)
	}
	if !h.Abandon() || stateOf(w.site) != "before" || w.litter(t) != nil {
		t.Errorf("%s stands, beside %v", stateOf(w.site), w.litter(t))
	}
}

// Once the new one stands, it is too late to abandon.
func TestAbandonTooLate(t *testing.T) {
	w := newWorld(t, true)
	h, err := Hold(t.Context(), w.site, 0, func() {})
	if err != nil {
		t.Fatal(err)
	}
	if err := h.Put(List(after...), func() error { return nil }); err != nil {
		t.Fatal(err)
	}
	if h.Abandon() || h.Release() != nil || stateOf(w.site) != "after" {
		t.Errorf("%s stands", stateOf(w.site))
	}
}

// Folders made on the way go again when nothing was put there, and stay otherwise.
func TestParents(t *testing.T) {
	top := t.TempDir()
	deep := filepath.Join(top, "a", "b", "site")
	h, err := Hold(t.Context(), deep, 0, func() {})
	if err != nil {
		t.Fatal(err)
	}
	if err := h.Release(); err != nil || stands(filepath.Join(top, "a")) {
		t.Errorf("left: a, %v", err)
	}
	if err := build(system, deep); err != nil || stateOf(deep) != "after" {
		t.Errorf("%s stands, %v", stateOf(deep), err)
	}
}
