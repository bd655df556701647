package records

import (
	"bytes"
	"io/fs"
	"strings"
)

// readNotes reads notes/YEAR.md.
func (l *loader) readNotes() []Note {
	info, err := fs.Stat(l.folder, "notes")
	if err != nil {
		return nil
	}
	files, err := fs.ReadDir(l.folder, "notes")
	if err != nil || !info.IsDir() {
		l.report("notes", Pos{File: "notes"}, "the folder of notes cannot be listed", "a folder of Markdown files is expected", "")
		return nil
	}
	var notes []Note
	for _, f := range files {
		if note, ok := l.readNote(f.Name()); ok {
			notes = append(notes, note)
		}
	}
	return notes
}

// readNote reads one file of the folder of notes; false where it is no note. Hidden
// files, which programs leave behind, are passed over without a word.
func (l *loader) readNote(name string) (Note, bool) {
	file := "notes/" + name
	year, ok := strings.CutSuffix(name, ".md")
	if !ok || len(year) != 4 || !digits(year) {
		if !strings.HasPrefix(name, ".") {
			l.report("notes", Pos{File: file}, "the file is not read", "a name such as notes/2025.md is expected", "")
		}
		return Note{}, false
	}
	raw, ok := l.readWhole("notes", file)
	if !ok {
		return Note{}, false
	}
	if why, line := unreadable(raw); why != "" {
		l.report("notes", Pos{File: file, Line: line}, why, "UTF-8 text is expected", "the note is not read: save it again as UTF-8")
		return Note{}, false
	}
	text := string(unixLines(bytes.TrimPrefix(raw, byteOrderMark)))
	return Note{file, atoi(year), text}, true
}
