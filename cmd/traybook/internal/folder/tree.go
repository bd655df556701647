package folder

import (
	"errors"
	"io/fs"
	"path/filepath"
	"slices"
)

// writeTree writes files under the folder root, down to the disk: folders from
// the top, files, then what each folder lists.
func (h *Held) writeTree(root string, files []File) error {
	folders := foldersOf(root, files)
	for _, name := range folders {
		err := h.step(func() error { return h.disk.mkdir(name, 0o755) })
		if err != nil && !errors.Is(err, fs.ErrExist) {
			return err
		}
	}
	err := each(len(files), func(i int) error {
		name := filepath.Join(root, filepath.FromSlash(files[i].Path))
		return h.step(func() error { return h.disk.write(name, files[i].Body) })
	})
	if err != nil {
		return err
	}
	return each(len(folders), func(i int) error {
		return h.step(func() error { return h.disk.sync(folders[i]) })
	})
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
