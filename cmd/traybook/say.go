package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"strings"
)

// voice is how traybook speaks. House rules: results go to standard output,
// problems to standard error; one line each; no capital, no full stop; a failure
// says what to do about it.
type voice struct {
	stdout, stderr io.Writer
	terminal       *os.File // where progress shows; nil: nowhere
	lineOpen       bool     // a progress line stands unfinished on the terminal
}

// hint is an error with what to do about it.
type hint struct {
	err    error
	remedy string
}

// Error is the failure and what to do about it, on one line.
func (h hint) Error() string { return h.err.Error() + "; " + h.remedy }

// Unwrap lets errors.As find what the system said.
func (h hint) Unwrap() error { return h.err }

// failure makes a hint: remedy is what to do about it.
func failure(remedy, format string, a ...any) error {
	return hint{fmt.Errorf(format, a...), remedy}
}

// result says a line of result.
func (v *voice) result(format string, a ...any) {
	v.clear()
	fmt.Fprintf(v.stdout, format+"\n", a...)
}

// remark says a line that is neither result nor failure.
func (v *voice) remark(format string, a ...any) {
	v.clear()
	fmt.Fprintf(v.stderr, "traybook: "+format+"\n", a...)
}

// fail says why nothing was done and returns the exit status for it.
func (v *voice) fail(err error) int {
	v.clear()
	var path *os.PathError
	if errors.As(err, &path) { // without the system call's name
		err = fmt.Errorf("%s: %w", path.Path, path.Err)
	}
	for line := range strings.Lines(err.Error()) {
		fmt.Fprintf(v.stderr, "traybook: %s\n", strings.TrimSuffix(line, "\n"))
	}
	return nothing
}

// reason is why the system refused, without the name of a call or of a
// temporary file.
func reason(err error) error {
	var path *os.PathError
	var link *os.LinkError
	switch {
	case errors.As(err, &path):
		return path.Err
	case errors.As(err, &link):
		return link.Err
	}
	return err
}

// cannotWrite says that a place to write to is refused by the system.
func cannotWrite(place string, err error) error {
	return failure("name a place where you may write, with room on the disk", "cannot write %s: %v", place, reason(err))
}

// cannotRead says that a place to read is refused by the system.
func cannotRead(place string, err error) error {
	return failure("see that you may read it", "cannot read %s: %v", place, reason(err))
}

// progress rewrites one line on a terminal; elsewhere it is silent.
func (v *voice) progress(done, total int) {
	if v.terminal == nil || total == 0 {
		return
	}
	fmt.Fprintf(v.terminal, "\rdrawing charts: %d of %d", done, total)
	v.lineOpen = true
}

// clear wipes an unfinished progress line.
func (v *voice) clear() {
	if v.lineOpen {
		fmt.Fprintf(v.stderr, "\r%40s\r", "") // spaces: not every window knows a code for it
		v.lineOpen = false
	}
}
