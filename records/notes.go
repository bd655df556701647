package records

import (
	"io/fs"
	"strings"
)

// readNotes reads notes/YEAR.md.
func (l *loader) readNotes() []Note {
	folder := l.from.beside()
	dir := NotesFolder(folder)
	info, err := fs.Stat(folder, dir)
	if err != nil {
		return nil
	}
	files, err := fs.ReadDir(folder, dir)
	if err != nil || !info.IsDir() {
		l.report("notes", Pos{File: dir}, "the folder of notes cannot be listed", "a folder of Markdown files is expected", "")
		return nil
	}
	var notes []Note
	for _, f := range files {
		if note, ok := l.readNote(dir, f.Name()); ok {
			notes = append(notes, note)
		}
	}
	return notes
}

// NotesFolder is the name of a book's folder of notes: notes or, where there is none of
// just this name, one that differs from it in case, as many systems would find it.
func NotesFolder(book fs.FS) string {
	found := "notes"
	entries, _ := fs.ReadDir(book, ".")
	for _, e := range entries {
		switch {
		case e.Name() == "notes":
			return "notes"
		case found == "notes" && strings.EqualFold(e.Name(), "notes"):
			found = e.Name()
		}
	}
	return found
}

// readNote reads one file of the folder of notes; false where it is no note. Hidden
// files, which programs leave behind, are passed over without a word.
func (l *loader) readNote(dir, name string) (Note, bool) {
	file := dir + "/" + name
	year, ok := strings.CutSuffix(name, ".md")
	if !ok || len(year) != 4 || !digits(year) {
		if !strings.HasPrefix(name, ".") {
			l.report("notes", Pos{File: file}, "the file is not read", "a name such as notes/2025.md is expected", "")
		}
		return Note{}, false
	}
	if l.tooLarge("note-size", file, mostOfNotes, "notes of up to 1 MB a season are expected", "the note is not read: shorten it") {
		return Note{}, false
	}
	raw, ok := l.readWhole("notes", file)
	if !ok {
		return Note{}, false
	}
	d := decode(raw)
	if d.bad != "" {
		l.report("notes", Pos{File: file, Line: d.line}, d.bad, "UTF-8 text is expected", "the note is not read: save it again as UTF-8")
		return Note{}, false
	}
	if d.legacy > 0 {
		l.legacy("notes", file, d, "UTF-8 text is expected", "see that the letters are right, and save it again as UTF-8")
	}
	if line, found, expected := crowded(string(d.body)); line > 0 {
		l.report("note-size", Pos{File: file, Line: line}, found, expected, "the note is not read: make it simpler")
		return Note{}, false
	}
	return Note{file, atoi(year), string(d.body)}, true
}

// checkNotes warns of notes of a season in which nothing was sown: no page shows them.
func (l *loader) checkNotes() {
	sown := map[int]bool{}
	for e := range alive(l.sowings) {
		sown[l.settings.Season(e.is.Sown)] = true
	}
	for _, n := range l.notes {
		if len(sown) > 0 && !sown[n.Year] {
			l.report("notes", Pos{File: n.File}, "season "+itoa(n.Year)+" has no sowings", "notes of a season with sowings are expected",
				"no page shows them: is the year right?")
		}
	}
}
