package main

import (
	"errors"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
)

// strays are files that a desktop leaves in folders; losing them harms nobody.
var strays = []string{".DS_Store", "Thumbs.db", "desktop.ini"}

// mayReplace refuses a folder that holds anything traybook did not write. A build puts a
// folder in place of the one before, so what somebody else put there would be gone. What
// is in doubt is refused, with what to do.
func mayReplace(dir string) error {
	info, err := os.Lstat(dir)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return failure("name another folder", "--out %s: %v", dir, reason(err))
	case info.Mode()&fs.ModeSymlink != 0:
		return failure("name the folder that it points to", "--out %s: a link, which a build would replace", dir)
	case !info.IsDir():
		return failure("name a folder", "--out %s: a file stands there", dir)
	}
	ours, err := marked(dir)
	if err != nil {
		return err
	}
	foreign, err := stranger(dir, ours)
	switch {
	case err != nil:
		return cannotRead(dir, err)
	case foreign != "":
		return failure("name a new folder, or move what you need out of this one and remove it",
			"--out %s: traybook did not make %s in it, and a build replaces the folder whole", dir, foreign)
	case standIn(info):
		return failure("go to another folder, or name another", "--out %s: the folder you stand in, which a build would replace", dir)
	}
	return nil
}

// standIn reports whether a folder is the one the program was started in. Moved
// aside, it would go on being the one the user stands in.
func standIn(folder fs.FileInfo) bool {
	here, err := os.Stat(".") // by what it is, however it is called
	return err == nil && os.SameFile(here, folder)
}

// stranger is a file in dir that is not ours or, failing that, a folder, with a
// slash at its end; empty: there is none.
func stranger(dir string, ours map[string]bool) (file string, err error) {
	folder := ""
	err = filepath.WalkDir(dir, func(name string, d fs.DirEntry, err error) error {
		if err != nil || name == dir {
			return err
		}
		rel, err := filepath.Rel(dir, name)
		rel = filepath.ToSlash(rel)
		switch {
		case err != nil:
			return err
		case d.IsDir():
			if rel += "/"; !ours[rel] && folder == "" {
				folder = rel
			}
		case !ours[rel] && !slices.Contains(strays, path.Base(rel)):
			file = rel
			return fs.SkipAll
		}
		return nil
	})
	if file == "" {
		file = folder
	}
	return file, err
}

// marked are the files that the marker in dir names, and their folders, each with
// a slash at its end; none without a marker.
func marked(dir string) (map[string]bool, error) {
	ours := map[string]bool{}
	b, err := os.ReadFile(filepath.Join(dir, marker))
	if errors.Is(err, fs.ErrNotExist) {
		return ours, nil
	}
	if err != nil {
		return nil, cannotRead(filepath.Join(dir, marker), err)
	}
	text := strings.ReplaceAll(string(b), "\r\n", "\n") // a site kept under version control on Windows
	list, ok := strings.CutPrefix(text, markerHeader)
	if !ok {
		return ours, nil
	}
	ours[marker] = true
	for name := range strings.Lines(list) {
		name = strings.TrimSuffix(name, "\n")
		ours[name] = true
		for above := path.Dir(name); len(above) > 1; above = path.Dir(above) { // not . or /
			ours[above+"/"] = true
		}
	}
	return ours, nil
}
