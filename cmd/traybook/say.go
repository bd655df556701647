package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"

	"traybook/records"
)

// voice is how traybook speaks. House rules: results go to standard output,
// problems to standard error; one line each; no capital, no full stop; a failure
// says what to do about it.
type voice struct {
	stdout, stderr io.Writer
	lineOpen       bool // a progress line stands unfinished on the terminal
}

// hint is an error with what to do about it.
type hint struct {
	err    error
	remedy string
}

func (h hint) Error() string { return h.err.Error() + "; " + h.remedy }
func (h hint) Unwrap() error { return h.err }

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
	fmt.Fprintf(v.stderr, "traybook: %v\n", err)
	return nothing
}

// problems says all problems, a line each.
func (v *voice) problems(ps []records.Problem, asJSON bool) error {
	v.clear()
	for _, p := range ps {
		line := p.String()
		if p.Severity == records.Warning {
			line += " (warning)"
		}
		if asJSON {
			b, err := json.Marshal(problemJSON(p))
			if err != nil {
				return err
			}
			line = string(b)
		}
		fmt.Fprintln(v.stderr, line)
	}
	return nil
}

type jsonProblem struct {
	File     string `json:"file"`
	Line     int    `json:"line,omitempty"`
	Column   int    `json:"column,omitempty"`
	Cell     string `json:"cell,omitempty"`
	Severity string `json:"severity"`
	Check    string `json:"check,omitempty"`
	Found    string `json:"found"`
	Expected string `json:"expected,omitempty"`
	Remedy   string `json:"remedy,omitempty"`
}

func problemJSON(p records.Problem) jsonProblem {
	return jsonProblem{p.File, p.Line, p.Column, p.Cell, p.Severity.String(), p.Check, p.Found, p.Expected, p.Remedy}
}

// progress rewrites one line on a terminal; elsewhere it is silent.
func (v *voice) progress(done, total int) {
	f, ok := v.stderr.(*os.File)
	if !ok || total == 0 {
		return
	}
	info, err := f.Stat()
	if err != nil || info.Mode()&os.ModeCharDevice == 0 {
		return
	}
	fmt.Fprintf(f, "\rdrawing charts: %d of %d", done, total)
	v.lineOpen = true
}

// clear wipes an unfinished progress line.
func (v *voice) clear() {
	if v.lineOpen {
		fmt.Fprint(v.stderr, "\r\x1b[K")
		v.lineOpen = false
	}
}

// counted writes a number with its noun: 1 row, 2 rows.
func counted(n int, noun string) string {
	if n == 1 {
		return "1 " + noun
	}
	return fmt.Sprintf("%d %ss", n, noun)
}
