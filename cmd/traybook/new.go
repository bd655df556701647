package main

import (
	"embed"
	"errors"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"

	"traybook/cmd/traybook/internal/folder"
	"traybook/report/words"
)

//go:embed starter
var starter embed.FS

type newCommand struct {
	Dir      string `arg:"" help:"The folder to make, or the workbook."`
	All      bool   `help:"Every log, not only the first ones."`
	Workbook bool   `help:"A workbook with a sheet for each log, such as FARM.xlsx."`
}

// firstLogs are the files of a starter book without --all.
var firstLogs = []string{"book.csv", "sowings.csv", "trays.csv", "out.csv", "counts.csv", "costs.csv", "notes/2026.md"}

// Run writes the starter book into a new or an empty folder, or as a new workbook.
func (c *newCommand) Run(out *voice) error {
	if c.Workbook {
		return starterBook(out, c.Dir)
	}
	if err := mustBeEmpty(c.Dir); err != nil {
		return err
	}
	files, err := starterFiles(c.All)
	if err != nil {
		return err
	}
	if err := folder.Fill(c.Dir, files); err != nil {
		return cannotWrite(c.Dir, err)
	}
	out.result("%s in %s; put your own rows in place of the invented ones, then: traybook build %s",
		words.Count(len(files), "file", "files"), c.Dir, c.Dir)
	return nil
}

// mustBeEmpty refuses a folder with anything in it: a starter book never mixes with
// rows of a grower's own.
func mustBeEmpty(dir string) error {
	entries, err := os.ReadDir(dir)
	switch {
	case dir == "":
		return failure("name a new folder", "no folder is named")
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		if info, e := os.Stat(dir); e == nil && !info.IsDir() {
			return failure("name a new folder", "%s: a file stands there", dir)
		}
		return cannotRead(dir, err)
	case len(entries) > 0:
		return failure("name a new folder; nothing was written", "%s: the folder is not empty (it holds %s)", dir, entries[0].Name())
	}
	return nil
}

// starterFiles are the embedded files, paths relative to the book. Names of logs and
// columns are the format's, rows are invented.
func starterFiles(all bool) ([]folder.File, error) {
	var files []folder.File
	err := fs.WalkDir(starter, "starter", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		rel, err := filepath.Rel("starter", filepath.FromSlash(name))
		if err != nil {
			return err
		}
		rel = path.Clean(filepath.ToSlash(rel))
		if !all && !slices.Contains(firstLogs, rel) {
			return nil
		}
		body, err := starter.ReadFile(name)
		files = append(files, folder.File{Path: rel, Body: body})
		return err
	})
	return files, err
}
