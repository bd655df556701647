package folder

import (
	"errors"
	"io/fs"
	"sync"
)

// Fill writes files into the folder root, which it makes where it is missing.
// After an error nothing that it wrote is left. It is for a folder that the user may
// be standing in, which therefore cannot be swapped.
func Fill(root string, files []File) error { return fill(system, root, files) }

func fill(d disk, root string, files []File) error {
	wrote, undo := d.remembering()
	made, err := mkdirs(d, root)
	if err == nil {
		err = (&Held{disk: wrote}).writeTree(root, List(files...))
	}
	if err != nil {
		undo()
		unmake(d, foldersOf(root, files)[1:])
		unmake(d, made)
	}
	return err
}

// remembering is a disk that can remove every file that was written to it, whole
// or in part.
func (d disk) remembering() (_ disk, undo func()) {
	var one sync.Mutex
	var names []string
	write, remove := d.write, d.remove
	d.write = func(name string, body []byte) error {
		err := write(name, body)
		if !errors.Is(err, fs.ErrExist) { // what was there before is not ours
			one.Lock()
			defer one.Unlock()
			names = append(names, name)
		}
		return err
	}
	return d, func() {
		for _, name := range names {
			_ = remove(name)
		}
	}
}
