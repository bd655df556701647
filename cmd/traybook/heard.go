package main

import (
	"io"
	"os"
)

// heard passes words on and remembers why the first that were lost were.
type heard struct {
	to   io.Writer
	lost error
}

// Write passes words on, as io.Writer has it.
func (h *heard) Write(words []byte) (int, error) {
	n, err := h.to.Write(words)
	if err != nil && h.lost == nil {
		h.lost = err
	}
	return n, err
}

// terminal is w if it is a terminal.
func terminal(w io.Writer) *os.File {
	f, ok := w.(*os.File)
	if !ok {
		return nil
	}
	if info, err := f.Stat(); err != nil || info.Mode()&os.ModeCharDevice == 0 {
		return nil
	}
	return f
}
