package records

import (
	"io/fs"
	"strings"
)

// readNotes reads notes/YEAR.md.
func (l *loader) readNotes() []Note {
	files, err := fs.ReadDir(l.folder, "notes")
	if err != nil {
		return nil
	}
	var notes []Note
	for _, f := range files {
		year, ok := strings.CutSuffix(f.Name(), ".md")
		if !ok || len(year) != 4 || !digits(year) {
			continue
		}
		raw, err := fs.ReadFile(l.folder, "notes/"+f.Name())
		if err != nil {
			continue
		}
		notes = append(notes, Note{"notes/" + f.Name(), atoi(year), string(raw)})
	}
	return notes
}
