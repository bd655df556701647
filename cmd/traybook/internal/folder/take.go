package folder

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// take makes what the lock needs, locks, mends and clears. After an error it
// leaves nothing of its own.
func take(p place, d disk) (*Held, error) {
	h := &Held{place: p, disk: d}
	err := h.makeAside()
	if err == nil {
		err = h.shut()
	}
	if err == nil {
		h.Mended, err = h.tidy(d)
	}
	if err != nil {
		h.letGo()
		return nil, err
	}
	return h, nil
}

// makeAside makes the hidden folder and what is missing above it.
func (h *Held) makeAside() (err error) {
	if h.made, err = mkdirs(h.disk, filepath.Dir(h.aside)); err != nil {
		return err
	}
	if err := h.disk.mkdir(h.aside, 0o700); err != nil && !errors.Is(err, fs.ErrExist) {
		return err
	}
	if info, err := os.Lstat(h.aside); err == nil && !info.IsDir() { // never through a link
		return &fs.PathError{Op: "mkdir", Path: h.aside, Err: fs.ErrExist}
	}
	return nil
}

// shut locks the place, or returns errBusy or errGone. Between the opening of the
// lock and the taking of it, the one that held it may have removed it and a third
// made it anew; so the file that is locked must be the one that has the name.
func (h *Held) shut() error {
	f, err := os.OpenFile(h.lock, os.O_RDWR|os.O_CREATE, 0o600)
	if errors.Is(err, fs.ErrNotExist) {
		return errGone // with its folder
	}
	if err != nil {
		return err
	}
	if err := lock(f); err != nil {
		return errors.Join(err, f.Close())
	}
	ours, err := f.Stat()
	named, gone := os.Lstat(h.lock)
	if err != nil || gone != nil || !os.SameFile(ours, named) {
		f.Close() // a lock that nobody else finds keeps nobody out
		return errGone
	}
	h.locked = f
	return nil
}
