package folder

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"syscall"
)

// disk is every way in which this package changes a disk, so that tests can let
// each of them fail, or the process die at it.
type disk struct {
	mkdir    func(name string, mode fs.FileMode) error
	write    func(name string, body []byte) error // a new file, down to the disk
	link     func(old, name string) error         // another name of a file
	sync     func(folder string) error            // what a folder lists, down to the disk
	rename   func(from, to string) error
	exchange func(a, b string) error // in one step; an error where that cannot be done
	remove   func(name string) error // a file or an empty folder
	clear    func(name string) error // a folder with all it holds; none is no error
}

// system is the disk of the system at hand.
var system = disk{os.Mkdir, writeFile, os.Link, syncFolder, os.Rename, exchange, os.Remove, removeTree}

func writeFile(name string, body []byte) error {
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	_, err = f.Write(body)
	if err == nil {
		err = f.Sync() // some disks say only here that they are full
	}
	return errors.Join(err, f.Close())
}

// syncFolder passes over systems and file systems that cannot sync a folder.
func syncFolder(name string) error {
	if runtime.GOOS == "windows" {
		return nil
	}
	f, err := os.Open(name)
	if err != nil {
		return err
	}
	defer f.Close()
	if err := f.Sync(); !errors.Is(err, errors.ErrUnsupported) && !errors.Is(err, syscall.EINVAL) {
		return err
	}
	return nil
}

// removeTree removes a folder even where somebody made parts of it read-only.
func removeTree(name string) error {
	if os.RemoveAll(name) == nil {
		return nil
	}
	_ = filepath.WalkDir(name, func(name string, d fs.DirEntry, err error) error {
		if d != nil && d.IsDir() {
			_ = os.Chmod(name, 0o700) // before its entries are read
		}
		return nil
	})
	return os.RemoveAll(name)
}
