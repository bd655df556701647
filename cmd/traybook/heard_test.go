package main

import (
	"errors"
	"os"
	"os/exec"
	"strings"
	"testing"
)

// full is a disk with no room, or a pipe that nobody reads.
type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("no space left on device") }

// What cannot be said is no success: status 2, and the other way to speak tells.
func TestWordsLost(t *testing.T) {
	book := "../../examples/tiny"
	for _, args := range [][]string{
		{"--help"}, {"version"}, {"check", book}, {"new", t.TempDir()},
		{"build", book, "--out", t.TempDir() + "/site"}, {"sheets", book, "--out", t.TempDir() + "/sheets.html"},
	} {
		var said strings.Builder
		if code := run(args, full{}, &said); code != nothing {
			t.Errorf("%s: status %d", args, code)
		}
		if !strings.HasSuffix(said.String(), "traybook: cannot write standard output: no space left on device; send it elsewhere and run it again\n") {
			t.Errorf("%s says %s", args, said.String())
		}
	}
	var said strings.Builder
	if code := run([]string{"check", "../../examples/ottermoss-broken"}, &said, full{}); code != nothing {
		t.Errorf("problems lost: status %d, %s", code, said.String())
	}
}

// The program itself, with its standard output on a full device or a pipe that
// nobody reads any more, where the system would end it without a word.
func TestOutputClosed(t *testing.T) {
	outputs := map[string]*os.File{}
	if f, err := os.OpenFile("/dev/full", os.O_WRONLY, 0); err == nil { // Linux has one
		outputs["full"] = f
	}
	reader, writer, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	reader.Close()
	outputs["closed"] = writer
	for name, f := range outputs {
		check := exec.Command("traybook", "check", "../../examples/tiny")
		var said strings.Builder
		check.Stdout, check.Stderr = f, &said
		_ = check.Run()
		if code := check.ProcessState.ExitCode(); code != nothing || !strings.HasPrefix(said.String(), "traybook: cannot write standard output: ") {
			t.Errorf("%s: status %d, %s", name, code, said.String())
		}
		f.Close()
	}
}
