package main

import (
	"slices"
	"strings"

	"traybook/cmd/traybook/internal/folder"
)

// marker is the file by which traybook knows a folder it made: a heading, then
// the files it wrote, a line each.
const (
	marker       = "made-by-traybook.txt"
	markerHeader = "This folder was made by traybook; the next build replaces it whole.\n"
)

// putSite swaps a whole site in, or leaves what stands at dir as it was. Whether
// it may is asked again last: somebody may have put a file there meanwhile.
func putSite(place *folder.Held, dir string, files []folder.File) error {
	var refused error
	err := place.Put(append(files, markerOf(files)), func() error {
		refused = mayReplace(dir)
		return refused
	})
	switch {
	case refused != nil:
		return refused
	case err != nil:
		return cannotWrite(dir, err)
	}
	return nil
}

// markerOf lists the files of a site, in order, so that a later build knows them.
func markerOf(files []folder.File) folder.File {
	names := []string{}
	for _, f := range files {
		names = append(names, f.Path)
	}
	slices.Sort(names)
	return folder.File{Path: marker, Body: []byte(markerHeader + strings.Join(names, "\n") + "\n")}
}
