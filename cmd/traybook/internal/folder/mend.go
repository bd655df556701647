package folder

import (
	"errors"
	"os"
	"path/filepath"
)

// Mend puts right what killed processes left in the folder parent: a folder that
// was taken away and not yet replaced stands there again, half-made ones are gone.
// It touches no place that a process holds. It returns the names that were mended;
// the error is of names that could not be.
func Mend(parent string) (mended []string, err error) { return mend(system, parent) }

func mend(d disk, parent string) (mended []string, err error) {
	entries, _ := os.ReadDir(parent) // who reads it next says why it cannot be read
	for _, entry := range entries {
		p, ok := ofAside(parent, entry)
		if !ok {
			continue
		}
		again, e := p.mend(d)
		if again {
			mended = append(mended, p.name)
		}
		err = errors.Join(err, e)
	}
	return mended, err
}

// mend tells nothing of litter that cannot be cleared: it harms nobody.
func (p place) mend(d disk) (again bool, err error) {
	h := &Held{place: p, disk: d}
	if err = h.shut(); err == nil {
		again, err = h.tidy(d)
		h.letGo()
	}
	if errors.Is(err, errBusy) || errors.Is(err, errGone) || !p.taken() {
		return again, nil
	}
	return again, err
}

// taken reports whether a swap in two steps took away what stood here, and has
// not put the new one there: whatever is in old is then all there is.
func (p place) taken() bool { return missing(p.name) && !missing(p.old) }

// tidy moves back what was taken away and clears the rest. It reports whether it
// moved something back.
func (p place) tidy(d disk) (again bool, err error) {
	if p.taken() {
		if err := d.rename(p.old, p.name); err != nil {
			return false, err
		}
		again = true
		_ = d.sync(filepath.Dir(p.name)) // if it is lost, the next one mends again
	}
	err = d.clear(p.fresh)
	if stands(p.name) { // never the last that there is
		err = errors.Join(err, d.clear(p.old))
	}
	return again, err
}
