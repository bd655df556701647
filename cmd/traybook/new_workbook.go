package main

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"traybook/records"
	"traybook/records/workbook"
	"traybook/report/words"
)

// starterBook writes the starter workbook, if no file of that name is there.
func starterBook(out *voice, name string) error {
	if strings.ToLower(filepath.Ext(name)) != ".xlsx" {
		return failure("name a new file such as FARM.xlsx", "--workbook %s: not the name of a workbook", name)
	}
	files, err := starterFiles(true)
	if err != nil {
		return err
	}
	logs := map[string][]byte{}
	for _, f := range files {
		logs[f.Path] = []byte(records.AsSheets(string(f.Body)))
	}
	sheets, err := tables(logs)
	if err != nil {
		return err
	}
	body, err := workbook.Write(sheets, "sowings")
	if err != nil {
		return err
	}
	if err := writeNew(name, body); err != nil {
		return err
	}
	out.result("%s in %s; put your own rows in place of the invented ones, then: traybook build %s",
		words.Count(len(sheets), "sheet", "sheets"), name, name)
	return nil
}

// writeNew writes a file that is not there yet.
func writeNew(name string, body []byte) error {
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if errors.Is(err, fs.ErrExist) {
		return failure("name a new file; nothing was written", "%s: a file stands there", name)
	}
	if err != nil {
		return cannotWrite(name, err)
	}
	_, err = f.Write(body)
	if err = errors.Join(err, f.Close()); err != nil {
		return cannotWrite(name, errors.Join(err, os.Remove(name)))
	}
	return nil
}
