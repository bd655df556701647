package folder

import (
	"errors"
	"io/fs"
	"path/filepath"
)

// swapIn asks last and swaps, as one step that nobody's Abandon comes between.
func (h *Held) swapIn(last, swap func() error) error {
	return h.step(func() error {
		if err := errors.Join(h.disk.sync(h.aside), last()); err != nil {
			return err
		}
		if err := swap(); err != nil {
			return err
		}
		h.placed = true
		// The swap is on the disk before the old one is cleared.
		return errors.Join(h.disk.sync(filepath.Dir(h.name)), h.disk.sync(h.aside))
	})
}

// swap moves the new folder to the place.
func (h *Held) swap() error {
	if h.disk.exchange(h.fresh, h.name) == nil {
		return nil
	}
	// Nothing stands there yet, or one step will not do; whatever else is in the
	// way is in the way of two steps as well.
	return h.swapInTwo()
}

// swapInTwo moves what stands at the place to old, and the new one in. If only the
// second fails, the end of the hold moves old back, as after a kill.
func (h *Held) swapInTwo() error {
	if err := h.disk.rename(h.name, h.old); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	return h.disk.rename(h.fresh, h.name)
}

// moveOver moves a file to the place, over one that stands there; every system
// does that in one step.
func (h *Held) moveOver() error { return h.disk.rename(h.fresh, h.name) }
