package main

import (
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"time"

	"github.com/fsnotify/fsnotify"

	"traybook/cmd/traybook/internal/folder"
	"traybook/records"
	"traybook/report"
	"traybook/report/words"
)

type watchCommand struct {
	buildCommand `embed:""`
}

// quiet is how long the files must lie still after a save before they are read, as
// programs write a file in several steps; a file that never lies still is read after
// longest.
const (
	quiet   = 300 * time.Millisecond
	longest = 700 * time.Millisecond
)

// vigil is what a watch knows from one build to the next.
type vigil struct {
	*watchCommand
	out   *voice
	at    place
	files map[string]stamp // as they were read last
	last  *report.Report   // that was built; nil before the first
	said  map[string]bool  // problems said already
}

// Run builds the review, then again after every save, until it is interrupted. It serves
// nothing: one loads the page anew.
func (c *watchCommand) Run(out *voice) error {
	w := &vigil{watchCommand: c, out: out, at: placeOf(c.Book)}
	if err := w.at.find(); err != nil {
		return err
	}
	if _, err := c.options(); err != nil {
		return err
	}
	events, err := fsnotify.NewWatcher()
	if err != nil {
		return failure("build it by hand after a save", "cannot watch %s: %v", c.Book, err)
	}
	defer events.Close()
	stop := make(chan os.Signal, 1)
	signal.Notify(stop, signals()...) // from here: the first build may end in spite of it
	defer signal.Stop(stop)
	w.listen(events)
	w.round()
	out.result("watching %s; Ctrl-C ends", c.Book)
	return w.wait(events, stop)
}

// wait builds again when the files have changed and lie still. An interrupt ends it; a
// build under way is stopped as any other. A spreadsheet saves in many small steps, and a
// sync may never rest: so it waits for a lull, but not for ever.
func (w *vigil) wait(events *fsnotify.Watcher, stop <-chan os.Signal) error {
	still := time.NewTimer(quiet) // and what was saved during the first build
	var due time.Time             // when the first save not yet read must be
	again := func() {
		if due.IsZero() {
			due = time.Now().Add(longest)
		}
		still.Reset(min(quiet, time.Until(due)))
	}
	for {
		select {
		case <-stop:
			return nil
		case e, ok := <-events.Events:
			if ok && w.concerns(e) {
				again()
			}
		case err, ok := <-events.Errors: // some changes were missed: look at all files
			if ok && err != nil {
				again()
			}
		case <-still.C:
			due = time.Time{}
			w.listen(events)
			if w.changed() {
				w.round()
			}
		}
	}
}

// listen watches the folders of the book that are there: one of notes may come later.
// Folders, not files: a save often puts a new file in the old one's place.
func (w *vigil) listen(events *fsnotify.Watcher) {
	for _, dir := range []string{filepath.Dir(w.at.path), w.at.home, notesOf(w.at.home)} {
		if dir != filepath.Dir(w.at.path) || w.at.workbook {
			_ = events.Add(dir) // none is there yet
		}
	}
}

// concerns reports whether an event may be of a file of the book. The site itself lies in
// the same folder and must not wake it.
func (w *vigil) concerns(e fsnotify.Event) bool {
	return e.Op != fsnotify.Chmod && (w.belongs(e.Name) || strings.EqualFold(filepath.Base(e.Name), "notes") || e.Name == w.at.home)
}

// belongs reports whether a file is one of the book's. Names that begin with a dot or a
// tilde are what editors and spreadsheets leave beside an open file.
func (w *vigil) belongs(name string) bool {
	base := filepath.Base(name)
	if strings.HasPrefix(base, ".") || strings.HasPrefix(base, "~") {
		return false
	}
	if strings.EqualFold(filepath.Base(filepath.Dir(name)), "notes") {
		return filepath.Ext(base) == ".md"
	}
	if w.at.workbook {
		return base == filepath.Base(w.at.path)
	}
	return strings.EqualFold(filepath.Ext(base), ".csv")
}

// stamp tells a file from what it was before.
type stamp struct {
	size  int64
	saved time.Time
}

// changed looks at the files of the book; false where they are as they were read last.
// Size and time are enough: a save that changes neither changes nothing that a grower
// would look for.
func (w *vigil) changed() bool {
	now := map[string]stamp{}
	for _, name := range append(within(w.at.home), w.at.path) {
		if info, err := os.Stat(name); err == nil && !info.IsDir() && w.belongs(name) {
			now[name] = stamp{info.Size(), info.ModTime()}
		}
	}
	same := len(now) == len(w.files)
	for name, s := range now {
		same = same && w.files[name] == s
	}
	w.files = now
	return !same
}

// within lists what a book's folder and its notes hold.
func within(home string) (names []string) {
	for _, dir := range []string{home, notesOf(home)} {
		entries, _ := os.ReadDir(dir) // none is there yet
		for _, e := range entries {
			names = append(names, filepath.Join(dir, e.Name()))
		}
	}
	return names
}

// notesOf is the folder of notes as the book's reader finds it.
func notesOf(home string) string { return filepath.Join(home, records.NotesFolder(os.DirFS(home))) }

// round builds the review once, whatever the files hold, and says in one line what is
// new. What fails is said, and the review stays as it was.
func (w *vigil) round() {
	w.changed()
	guarded(w.out, func() int {
		if err := w.build(); err != nil {
			return exitStatus(w.out, err)
		}
		return done
	})
}

// build reads, computes, draws and writes the review, holding its place meanwhile.
func (w *vigil) build() error {
	options, err := w.options()
	if err != nil {
		return err
	}
	return whileHeld(w.out, w.folder(), mayReplace, func(place *folder.Held) error { return w.buildAt(place, options) })
}

// buildAt builds the review into a place that is held. The problems are said before the
// review is written, as in a build, and only those that are new.
func (w *vigil) buildAt(place *folder.Held, options report.Options) error {
	l, err := load(w.out, w.Book)
	if err != nil {
		return err
	}
	if l.fatal() || w.Strict && l.errors() > 0 {
		w.say(l)
		w.out.remark("the review stays as it was: %s to mend", words.Count(l.errors(), "error", "errors"))
		return status(nothing)
	}
	keepWithin(placeOf(w.Book), toWatch, leastToBuild)
	r, err := w.compute(&l, options)
	if err != nil {
		w.say(l)
		return err
	}
	w.say(l)
	return w.show(place, l, r)
}

// show writes the review and says what is new in it.
func (w *vigil) show(place *folder.Held, l loaded, r *report.Report) error {
	drawings, _, err := w.draw(w.out, r)
	if err != nil {
		return err
	}
	if _, err := putSite(place, w.folder(), w.site(r, drawings)); err != nil {
		return err
	}
	said := news(w.last, r)
	if _, left, _ := l.rows(); left > 0 {
		said += "; " + words.Count(left, "row", "rows") + " left out"
	}
	w.out.result("%s; open %s", said, filepath.Join(w.folder(), "index.html"))
	w.last = r
	return nil
}

// say says the problems that the save before did not have. After a save a grower looks for
// what that save brought; a problem mended and made again is said again.
func (w *vigil) say(l loaded) {
	now, fresh := map[string]bool{}, l.problems[:0:0]
	for _, p := range l.problems {
		if now[p.String()] = true; !w.said[p.String()] {
			fresh = append(fresh, p)
		}
	}
	w.said = now
	if err := w.out.problems(fresh, w.telling); err != nil {
		w.out.fail(err)
	}
}
