package main

import (
	"errors"
	"io/fs"
	"os"
	"os/signal"
	"path/filepath"
	"slices"
	"strings"
	"syscall"
)

// marker is the file by which traybook knows a folder it made: a heading, then
// the files it wrote, a line each.
const (
	marker       = "made-by-traybook.txt"
	markerHeader = "This folder was made by traybook; the next build replaces it whole.\n"
)

// siteFile is one file of a site, its path with slashes.
type siteFile struct {
	path string
	body []byte
}

// writeSite puts a whole site at dir, or leaves what stands there as it was. It
// writes beside the place and moves the folder in when it is complete.
func writeSite(dir string, files []siteFile) error {
	if err := mayReplace(dir); err != nil {
		return err
	}
	if err := writeAside(dir, files); err != nil {
		return cannotWrite(dir, err)
	}
	return nil
}

// writeAside writes the site into a folder beside dir, so that moving it in is one
// rename on one file system.
func writeAside(dir string, files []siteFile) error {
	parent := filepath.Dir(dir)
	if err := os.MkdirAll(parent, 0o755); err != nil {
		return err
	}
	signal.Ignore(os.Interrupt, syscall.SIGTERM) // what takes a moment must not stop half way
	defer signal.Reset(os.Interrupt, syscall.SIGTERM)
	aside, err := os.MkdirTemp(parent, ".traybook-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(aside)
	fresh := filepath.Join(aside, "new")
	if err := writeAll(fresh, append(files, markerOf(files))); err != nil {
		return err
	}
	return swap(dir, fresh, filepath.Join(aside, "old"))
}

// markerOf lists the files of a site, so that the next build knows what it may replace.
func markerOf(files []siteFile) siteFile {
	names := []string{}
	for _, f := range files {
		names = append(names, f.path)
	}
	slices.Sort(names)
	return siteFile{marker, []byte(markerHeader + strings.Join(names, "\n") + "\n")}
}

// writeAll writes files below dir, with the folders that they need.
func writeAll(dir string, files []siteFile) error {
	for _, f := range files {
		name := filepath.Join(dir, filepath.FromSlash(f.path))
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			return err
		}
		if err := os.WriteFile(name, f.body, 0o644); err != nil {
			return err
		}
	}
	return nil
}

// swap moves fresh to dir; what stood there goes to old first and comes back if
// the move fails.
func swap(dir, fresh, old string) error {
	err := os.Rename(dir, old)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	had := err == nil
	if err := os.Rename(fresh, dir); err != nil {
		if had {
			err = errors.Join(err, os.Rename(old, dir))
		}
		return err
	}
	return nil
}
