package records

import (
	"errors"
	"io/fs"
	"path"
	"strings"
)

// find lists the folder and matches its files with the logs, without regard to
// case where the exact name is not there.
func (l *loader) find() {
	l.found = map[string]string{}
	files, err := fs.ReadDir(l.folder, ".")
	if err != nil {
		l.report("folder", Pos{File: "."}, "the folder cannot be listed: "+cause(err), "a folder of CSV files is expected", "")
		return
	}
	for _, f := range files {
		for _, log := range Logs {
			if f.Name() == log.Name || strings.EqualFold(f.Name(), log.Name) && l.found[log.Name] != log.Name {
				l.found[log.Name] = f.Name()
			}
		}
	}
	l.nearFiles(files)
	if l.found["sowings.csv"] == "" {
		l.report("no-sowings", Pos{File: "sowings.csv"}, "the folder has no such file", "sowings.csv, a row per batch, is expected",
			"save the sowings under this name; see the book's format")
	}
}

// nearFiles warns of files that are nearly called as a log that is missing.
func (l *loader) nearFiles(files []fs.DirEntry) {
	var free []string
	for _, log := range Logs {
		if l.found[log.Name] == "" {
			free = append(free, log.Name)
		}
	}
	for _, f := range files {
		if f.IsDir() {
			continue
		}
		name := strings.ToLower(f.Name())
		stem := strings.TrimSuffix(name, path.Ext(name))
		if near := nearLog(name, stem, free); near != "" {
			l.report("near-file", Pos{File: f.Name()}, "the file is not read", "a log's name is expected", didYouMean(near))
		}
	}
}

// nearLog is the missing log that a file's name is nearly; empty for none. stem is the
// name without its ending.
func nearLog(name, stem string, free []string) string {
	for _, log := range free {
		if name != log && stem == strings.TrimSuffix(log, ".csv") {
			return log // another ending, such as sowings.txt
		}
	}
	if path.Ext(name) != ".csv" {
		return ""
	}
	return nearest(stem, free, func(log string) string { return strings.TrimSuffix(log, ".csv") })
}

// readFile reads a log, if the folder has it and it is a file that can be read.
func (l *loader) readFile(name string) ([]byte, bool) {
	file := l.found[name]
	if file == "" {
		return nil, false
	}
	return l.readWhole("file", file)
}

// readWhole reads a plain file, and says why where it cannot be: a folder, a pipe or a
// device of that name must not hold up the reading.
func (l *loader) readWhole(check, file string) ([]byte, bool) {
	info, err := fs.Stat(l.folder, file)
	if err == nil && info.IsDir() {
		l.report(check, Pos{File: file}, "this is a folder", "a file is expected", "rename the folder, or move it out of the book")
		return nil, false
	}
	if err == nil && !info.Mode().IsRegular() {
		l.report(check, Pos{File: file}, "this is no plain file", "a file is expected", "put a copy of the file itself here")
		return nil, false
	}
	raw, err := fs.ReadFile(l.folder, file)
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
