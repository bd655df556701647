package records

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"path"
	"strings"
)

// folderOf is a book in a folder of CSV files.
type folderOf struct{ fs.FS }

// beside holds the folder notes: the book's own.
func (f folderOf) beside() fs.FS { return f.FS }

// words are those of files already.
func (f folderOf) words(s string) string { return s }

// find lists the folder and matches its files with the logs, without regard to
// case where the exact name is not there.
func (f folderOf) find(l *loader) {
	files, err := fs.ReadDir(f, ".")
	if err != nil {
		l.report("folder", Pos{File: "."}, "the folder cannot be listed: "+cause(err), "a folder of CSV files is expected", "")
		return
	}
	for _, file := range files {
		for _, log := range Logs {
			if file.Name() == log.Name || strings.EqualFold(file.Name(), log.Name) && l.found[log.Name] != log.Name {
				l.found[log.Name] = file.Name()
			}
		}
	}
	for _, file := range files {
		if !file.IsDir() {
			l.passedOver(file.Name())
		}
	}
	if l.found["sowings.csv"] == "" {
		l.report("no-sowings", Pos{File: "sowings.csv"}, "the folder has no such file", "sowings.csv, a row per batch, is expected",
			"save the sowings under this name; see the book's format")
	}
}

// passedOver warns of a file that is not read and is likely meant to be.
func (l *loader) passedOver(name string) {
	for _, log := range Logs {
		if l.found[log.Name] == name {
			return
		}
	}
	if strings.HasPrefix(name, ".") || strings.HasPrefix(name, "~$") { // what an open spreadsheet leaves beside its file
		return
	}
	switch log := takenFor(name); {
	case log != "" && l.found[log] != "":
		l.report("near-file", Pos{File: name}, "the file is not read; it is taken for a copy of "+l.found[log],
			"one file for each log is expected", "name the right one "+quote(log)+", and take the other out of the folder")
	case log != "":
		l.report("near-file", Pos{File: name}, "the file is not read; it is taken for "+log, "a log's name is expected", "name it "+quote(log)+" if it is that log")
	case workbooks[strings.ToLower(path.Ext(name))]:
		l.report("workbook", Pos{File: name}, "a workbook beside the logs is not read", "a book in CSV files or in a workbook is expected, not in both",
			"save its sheets as CSV under the logs' names, and move it out of the folder")
	}
}

// workbooks are the endings of spreadsheets' own files.
var workbooks = map[string]bool{".xlsx": true, ".xlsm": true, ".xls": true, ".ods": true}

// open reads a log's file as CSV.
func (f folderOf) open(l *loader, log Log) (source, bool) {
	file := l.found[log.Name]
	if file == "" {
		return nil, false
	}
	if l.tooLarge("file", file, mostOfLog, "a log of up to 64 MB is expected", "is this the right file?") {
		return nil, false
	}
	raw, ok := l.readWhole("file", file)
	if !ok {
		return nil, false
	}
	d := decode(raw)
	if d.bad != "" {
		l.report("encoding", Pos{File: file, Line: d.line}, d.bad, "a CSV file in UTF-8 is expected", "save it again as CSV UTF-8")
		return nil, false
	}
	if bytes.Count(d.body, []byte("\n")) > mostLines {
		l.report("file", Pos{File: file}, "the file has more than 2,000,000 lines", "a log of up to that many is expected", "is this the right file?")
		return nil, false
	}
	if d.legacy > 0 {
		l.legacy("windows-1252", file, d, "CSV in UTF-8 is expected", "see that the letters are right, and save it again as CSV UTF-8")
	}
	recall := func() text {
		raw, _ := fs.ReadFile(f, file)
		return newText(decode(raw).body, log)
	}
	return newScanner(file, newText(d.body, log), recall), true
}

// legacy warns of bytes read as Windows-1252.
func (l *loader) legacy(check, file string, d decoded, expected, remedy string) {
	l.report(check, Pos{File: file, Line: d.legacy}, fmt.Sprintf("bytes that are not UTF-8 are read as Windows-1252: here as %s", quote(d.sample)), expected, remedy)
}

// tooLarge reports a file of more than so many bytes.
func (l *loader) tooLarge(check, file string, most int64, expected, remedy string) bool {
	info, err := fs.Stat(l.from.beside(), file)
	if err != nil || !info.Mode().IsRegular() || info.Size() <= most {
		return false
	}
	l.report(check, Pos{File: file}, "the file is of "+plain(roundTo(float64(info.Size())/1e6))+" MB", expected, remedy)
	return true
}

// readWhole reads a plain file, and says why where it cannot be: a folder, a pipe or a
// device of that name must not hold up the reading.
func (l *loader) readWhole(check, file string) ([]byte, bool) {
	folder := l.from.beside()
	info, err := fs.Stat(folder, file)
	if err == nil && info.IsDir() {
		l.report(check, Pos{File: file}, "this is a folder", "a file is expected", "rename the folder, or move it out of the book")
		return nil, false
	}
	if err == nil && !info.Mode().IsRegular() {
		l.report(check, Pos{File: file}, "this is no plain file", "a file is expected", "put a copy of the file itself here")
		return nil, false
	}
	raw, err := fs.ReadFile(folder, file)
	if err != nil {
		l.report(check, Pos{File: file}, "the file cannot be read: "+cause(err), "a file that can be read is expected", "close the program that holds it, or mend its permissions")
		return nil, false
	}
	return raw, true
}

// cause is an error without the path, which is this machine's own.
func cause(err error) string {
	var at *fs.PathError
	if errors.As(err, &at) {
		return at.Err.Error()
	}
	return err.Error()
}
