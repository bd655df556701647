package folder

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync/atomic"
	"testing"
	"testing/iotest"
)

// A file is moved over a file, and nothing is left beside it.
func TestPutFile(t *testing.T) {
	for n := range 2 {
		w := newWorld(t, false)
		for i := range n + 1 {
			h, err := Hold(t.Context(), w.site, 0, func() {})
			if err == nil {
				err = errors.Join(h.PutFile(fmt.Append(nil, i)), h.Release())
			}
			if err != nil {
				t.Fatal(err)
			}
		}
		if body, err := os.ReadFile(w.site); string(body) != fmt.Sprint(n) || w.litter(t) != nil {
			t.Errorf("%q, %v, %v", body, err, w.litter(t))
		}
	}
}

// What Fill cannot write whole it takes away again, but nothing that was there.
func TestFillUndoes(t *testing.T) {
	root := filepath.Join(t.TempDir(), "a", "book")
	for n := int64(1); n <= 8; n++ { // a, book, two folders, four files
		bad, _ := faulty(system, n, false)
		if err := fill(bad, root, after); !errors.Is(err, errFault) || stands(filepath.Dir(root)) {
			t.Errorf("fault %d: %v, left: %v", n, err, stands(filepath.Dir(root)))
		}
	}
	mine := filepath.Join(root, "index.html")
	if err := errors.Join(os.MkdirAll(root, 0o755), os.WriteFile(mine, []byte("mine"), 0o644)); err != nil {
		t.Fatal(err)
	}
	if err := fill(system, root, after); !errors.Is(err, os.ErrExist) || !stands(mine) || stands(filepath.Join(root, "data")) {
		t.Errorf("%v, mine %v", err, stands(mine))
	}
}

// A folder that somebody made read-only is cleared all the same.
func TestReadOnlyIsCleared(t *testing.T) {
	w := newWorld(t, true)
	data := filepath.Join(w.site, "data")
	if err := os.Chmod(data, 0o500); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { os.Chmod(data, 0o700) })
	if err := build(system, w.site); err != nil || stateOf(w.site) != "after" || w.litter(t) != nil {
		t.Errorf("%s stands, %v, beside %v", stateOf(w.site), err, w.litter(t))
	}
}

// An error among the files ends the work: what stood there stands, and nothing beside it.
func TestPutOfFilesThatFail(t *testing.T) {
	w := newWorld(t, true)
	h, err := Hold(t.Context(), w.site, 0, func() {})
	if err != nil {
		t.Fatal(err)
	}
	err = h.Put(func(yield func(File, error) bool) {
		_ = yield(after[0], nil) && yield(File{}, errFault)
	}, func() error { t.Error("asked last of files that fail"); return nil })
	if err := h.Release(); err != nil {
		t.Error(err)
	}
	if !errors.Is(err, errFault) || stateOf(w.site) != "before" || w.litter(t) != nil {
		t.Errorf("%v, %s stands, beside it %v", err, stateOf(w.site), w.litter(t))
	}
}

// What has not changed is not written again, and what has stands in the new folder alone,
// also where a file cannot have two names.
func TestUnchangedFilesAreShared(t *testing.T) {
	for _, can := range []bool{true, false} {
		w := newWorld(t, true)
		d, same := system, filepath.Join(w.site, "same.css")
		if !can {
			d.link = noMove
		}
		old, err := os.Stat(same)
		if err == nil {
			err = build(d, w.site)
		}
		if err != nil || stateOf(w.site) != "after" || w.litter(t) != nil {
			t.Fatalf("%v, %s stands, beside it %v", err, stateOf(w.site), w.litter(t))
		}
		if now, err := os.Stat(same); err != nil || os.SameFile(old, now) != can {
			t.Errorf("the same file: %v, want %v (%v)", os.SameFile(old, now), can, err)
		}
	}
}

// Only a plain file of just these bytes is taken for one that is there.
func TestHolds(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "a")
	if err := errors.Join(os.WriteFile(name, []byte("same"), 0o644), os.Symlink(name, filepath.Join(dir, "link"))); err != nil {
		t.Skip(err)
	}
	for file, body := range map[string]string{"a": "same", "a.": "same", "link": "same", ".": "same"} {
		if want := file == "a"; holds(filepath.Join(dir, file), []byte(body)) != want {
			t.Errorf("%s: %v", file, !want)
		}
	}
	if holds(name, []byte("sane")) || holds(name, []byte("same.")) {
		t.Error("another text is taken for the same")
	}
}

// However a file is read, in one piece or byte by byte, it is just the text or it is not.
func TestReads(t *testing.T) {
	long := strings.Repeat("tray after tray, ", 5000)
	for name, of := range map[string]struct {
		file, text string
		same       bool
	}{
		"the same": {long, long, true}, "nothing": {"", "", true}, "shorter": {long[1:], long[:len(long)-1], false},
		"cut off": {long[:len(long)-1], long, false}, "longer": {long + ".", long, false}, "last byte": {long[:len(long)-1] + ".", long, false},
	} {
		for how, r := range map[string]io.Reader{"whole": strings.NewReader(of.file), "by bytes": iotest.OneByteReader(strings.NewReader(of.file)),
			"end with the data": iotest.DataErrReader(strings.NewReader(of.file))} {
			if got := reads(r, []byte(of.text)); got != of.same {
				t.Errorf("%s, %s: %v", name, how, got)
			}
		}
	}
	if broken := io.MultiReader(strings.NewReader(long), iotest.ErrReader(errors.ErrUnsupported)); reads(broken, []byte(long)) {
		t.Error("a file that cannot be read to its end is taken for the same")
	}
}

// Each file that asks for it is told of once, when its body is written or found to stand
// there already.
func TestFilesAreToldWhenWritten(t *testing.T) {
	var told atomic.Int64
	files := slices.Clone(after)
	for i := range files {
		files[i].Written = func() { told.Add(1) }
	}
	for n, had := range []bool{false, true} {
		w := newWorld(t, had)
		h, err := Hold(t.Context(), w.site, 0, func() {})
		if err == nil {
			err = errors.Join(h.Put(List(files...), func() error { return nil }), h.Release())
		}
		if err != nil {
			t.Fatal(err)
		}
		if want := int64((n + 1) * len(files)); told.Load() != want {
			t.Errorf("told of %d files, want %d", told.Load(), want)
		}
	}
}
