package folder

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// ending marks the hidden folder beside a place. The name is always the same for a
// place, so that whatever a killed process left is found without a search.
const ending = ".traybook"

// place is where a folder, or a file, is to stand.
type place struct {
	name  string // absolute
	aside string // the hidden folder beside it
	fresh string // in aside: what is being made
	old   string // in aside: what stood at name, while a swap in two steps lasts
	lock  string // in aside
}

func at(name string) (place, error) {
	abs, err := filepath.Abs(name)
	if err != nil {
		return place{}, err
	}
	if filepath.Dir(abs) == abs { // nothing is beside the top
		return place{}, &fs.PathError{Op: "replace", Path: abs, Err: fs.ErrInvalid}
	}
	return beside(filepath.Join(filepath.Dir(abs), "."+filepath.Base(abs)+ending), abs), nil
}

func beside(aside, name string) place {
	return place{
		name: name, aside: aside,
		fresh: filepath.Join(aside, "new"), old: filepath.Join(aside, "old"), lock: filepath.Join(aside, "lock"),
	}
}

// ofAside is the place that a hidden folder stands beside, if it is such a folder.
func ofAside(parent string, d fs.DirEntry) (place, bool) {
	name, hidden := strings.CutPrefix(d.Name(), ".")
	name, marked := strings.CutSuffix(name, ending)
	if !hidden || !marked || !d.IsDir() || name == "." || !filepath.IsLocal(name) {
		return place{}, false
	}
	return beside(filepath.Join(parent, d.Name()), filepath.Join(parent, name)), true
}

// The two below differ where the system will not say: then neither is true, and
// nothing is moved or cleared.

// missing tells for certain that nothing stands at name.
func missing(name string) bool {
	_, err := os.Lstat(name)
	return errors.Is(err, fs.ErrNotExist)
}

// stands tells for certain that something stands at name.
func stands(name string) bool {
	_, err := os.Lstat(name)
	return err == nil
}
