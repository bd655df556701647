package folder

import (
	"bytes"
	"errors"
	"io"
	"io/fs"
	"iter"
	"os"
	"path/filepath"
	"slices"
)

// writeTree writes files under the folder root, down to the disk: each file as it comes,
// after the folders above it; last what each folder lists.
func (h *Held) writeTree(root string, files iter.Seq2[File, error]) error {
	made, has := []string{root}, map[string]bool{root: true}
	if err := h.makeFolder(root); err != nil {
		return err
	}
	folders := func(f File) error {
		for _, name := range foldersOf(root, []File{f}) {
			if has[name] {
				continue
			}
			if err := h.makeFolder(name); err != nil {
				return err
			}
			made, has[name] = append(made, name), true
		}
		return nil
	}
	err := eachFile(files, folders, func(f File) error {
		err := h.writeIn(root, f)
		if err == nil && f.Written != nil {
			f.Written()
		}
		return err
	})
	if err != nil {
		return err
	}
	return each(len(made), func(i int) error {
		return h.step(func() error { return h.disk.sync(made[i]) })
	})
}

// writeIn writes a file into the folder root. One that stands in the place already, to the
// byte, is on the disk: it gets a second name. No file is ever written to again, so the old
// folder and the new may share it; where the system cannot do that, it is written anew.
func (h *Held) writeIn(root string, f File) error {
	name := filepath.Join(root, filepath.FromSlash(f.Path))
	if old := filepath.Join(h.name, filepath.FromSlash(f.Path)); h.name != "" && holds(old, f.Body) {
		if h.step(func() error { return h.disk.link(old, name) }) == nil {
			return nil
		}
	}
	return h.step(func() error { return h.disk.write(name, f.Body) })
}

// plainMode is that of a file as it is written anew. One that somebody closed to others, or
// that has no such mode on this system, is not kept.
const plainMode fs.FileMode = 0o644

// holds reports whether a plain file, open to all, holds just that.
func holds(name string, body []byte) bool {
	info, err := os.Lstat(name) // never through a link
	if err != nil || info.Mode() != plainMode || info.Size() != int64(len(body)) {
		return false
	}
	f, err := os.Open(name)
	if err != nil {
		return false
	}
	defer f.Close()
	return reads(f, body)
}

// reads reports whether what is read is body, piece by piece: of a large site all files are
// compared.
func reads(r io.Reader, body []byte) bool {
	piece := make([]byte, 16<<10)
	for {
		n, err := r.Read(piece)
		if !bytes.HasPrefix(body, piece[:n]) {
			return false
		}
		if body = body[n:]; err != nil {
			return errors.Is(err, io.EOF) && len(body) == 0
		}
	}
}

// makeFolder makes a folder, unless it is there.
func (h *Held) makeFolder(name string) error {
	err := h.step(func() error { return h.disk.mkdir(name, 0o755) })
	if errors.Is(err, fs.ErrExist) {
		return nil
	}
	return err
}

// foldersOf lists root and every folder below it that the files need, parents
// first.
func foldersOf(root string, files []File) []string {
	folders := []string{root}
	for _, f := range files {
		name := filepath.Dir(filepath.Join(root, filepath.FromSlash(f.Path)))
		for ; len(name) > len(root); name = filepath.Dir(name) {
			folders = append(folders, name)
		}
	}
	slices.Sort(folders) // a parent's name begins its children's
	return slices.Compact(folders)
}

// mkdirs makes the folder name and those missing above it, and returns what it
// made, the topmost first.
func mkdirs(d disk, name string) (made []string, err error) {
	for _, name := range slices.Backward(upTo(name, missing, filepath.Dir)) {
		switch err := d.mkdir(name, 0o755); {
		case err == nil:
			made = append(made, name)
		case !errors.Is(err, fs.ErrExist): // somebody else was faster
			return made, err
		}
	}
	return made, nil
}

// upTo lists name and the folders above it that are missing, name first. The topmost is
// above itself, and a drive may be missing as a whole.
func upTo(name string, missing func(string) bool, above func(string) string) (all []string) {
	for missing(name) {
		all = append(all, name)
		if above(name) == name {
			break
		}
		name = above(name)
	}
	return all
}

// unmake removes folders that mkdirs made, where they are empty again.
func unmake(d disk, made []string) {
	for _, name := range slices.Backward(made) {
		_ = d.remove(name)
	}
}
