package main

import (
	"iter"
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

// putSite swaps a whole site in, or leaves what stands at dir as it was, and counts the
// pages. Whether it may is asked again last: somebody may have put a file there meanwhile.
func putSite(place *folder.Held, dir string, files iter.Seq2[folder.File, error]) (pages int, err error) {
	var refused, unmade error
	err = place.Put(withMarker(files, &pages, &unmade), func() error {
		refused = mayReplace(dir)
		return refused
	})
	switch {
	case unmade != nil:
		return 0, unmade
	case refused != nil:
		return 0, refused
	case err != nil:
		return 0, cannotWrite(dir, err)
	}
	return pages, nil
}

// withMarker ends files with the one that lists them, counts the pages among them, and
// keeps the error of a file that could not be made.
func withMarker(files iter.Seq2[folder.File, error], pages *int, unmade *error) iter.Seq2[folder.File, error] {
	return func(yield func(folder.File, error) bool) {
		var names []string
		for f, err := range files {
			if err != nil {
				*unmade = err
			}
			if strings.HasSuffix(f.Path, ".html") {
				*pages++
			}
			names = append(names, f.Path)
			if !yield(f, err) {
				return
			}
		}
		yield(markerOf(names), nil)
	}
}

// markerOf lists the files of a site, in order, so that a later build knows them.
func markerOf(names []string) folder.File {
	slices.Sort(names)
	return folder.File{Path: marker, Body: []byte(markerHeader + strings.Join(names, "\n") + "\n")}
}
