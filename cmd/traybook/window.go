package main

import (
	"bufio"
	"fmt"
	"io"
)

// stay keeps a window open that the system made for this program alone, as when a book
// is dropped on it: it would close, and take with it all that was said.
func stay(alone bool, keys io.Reader, screen io.Writer) {
	if !alone {
		return
	}
	fmt.Fprint(screen, "\npress Enter to close this window")
	_, _ = bufio.NewReader(keys).ReadString('\n') // closed keys end it, too
}
