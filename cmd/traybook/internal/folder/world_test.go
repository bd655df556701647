package folder

import (
	"context"
	"errors"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// world is a folder with a site in it, or none, and the disk to work on it with.
type world struct {
	parent, site string
	had          bool // a site stands before
}

var (
	before = []File{{Path: "index.html", Body: []byte("before")}, {Path: "data/a.csv", Body: []byte("a,before")}, {Path: "old/only.txt", Body: []byte("1")}, {Path: "same.css", Body: []byte("same")}}
	after  = []File{{Path: "index.html", Body: []byte("after")}, {Path: "data/a.csv", Body: []byte("a,after")}, {Path: "data/deep/b.csv", Body: []byte("b,after")}, {Path: "same.css", Body: []byte("same")}}
)

func newWorld(t *testing.T, had bool) world {
	t.Helper()
	parent := t.TempDir()
	w := world{parent, filepath.Join(parent, "site"), had}
	if had {
		if err := Fill(w.site, before); err != nil {
			t.Fatal(err)
		}
	}
	return w
}

// stepwise are the two kinds of system: one that swaps in one step, if the one at
// hand does, and one that takes two.
func stepwise() map[string]disk {
	two := system
	two.exchange = func(a, b string) error { return errors.ErrUnsupported }
	kinds := map[string]disk{"two steps": two}
	if OneStep {
		kinds["one step"] = system
	}
	return kinds
}

// build does what a build does with a place.
func build(d disk, site string) error {
	h, err := hold(context.Background(), d, site, 0, func() {})
	if err != nil {
		return err
	}
	defer h.Release()
	return h.Put(List(after...), func() error { return nil })
}

// stateOf says which site stands: before, after, none, or else what there is.
func stateOf(site string) string {
	found := map[string]string{}
	err := filepath.WalkDir(site, func(name string, d fs.DirEntry, err error) error {
		if err == nil && !d.IsDir() {
			body, _ := os.ReadFile(name)
			rel, _ := filepath.Rel(site, name)
			found[filepath.ToSlash(rel)] = string(body)
		}
		return err
	})
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return "none"
	case maps.Equal(found, contents(before)):
		return "before"
	case maps.Equal(found, contents(after)):
		return "after"
	}
	return strings.Join(slices.Sorted(maps.Keys(found)), " ")
}

func contents(files []File) map[string]string {
	all := map[string]string{}
	for _, f := range files {
		all[f.Path] = string(f.Body)
	}
	return all
}

// untouched is the state of a world before anything is done to it.
func (w world) untouched() string {
	if w.had {
		return "before"
	}
	return "none"
}

// litter is what stands beside the site.
func (w world) litter(t *testing.T) (names []string) {
	t.Helper()
	entries, err := os.ReadDir(w.parent)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if e.Name() != "site" {
			names = append(names, e.Name())
		}
	}
	return names
}
