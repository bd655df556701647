package main

import (
	"strings"
	"testing"
)

// A window of the program's own stays until a key is pressed, and no other one does.
func TestOnlyItsOwnWindowStays(t *testing.T) {
	for alone, want := range map[bool]string{true: "\npress Enter to close this window", false: ""} {
		keys, screen := strings.NewReader("\nmore"), &strings.Builder{}
		stay(alone, keys, screen)
		if screen.String() != want || alone != (keys.Len() == 0) {
			t.Errorf("alone %v: says %q, %d keys left", alone, screen, keys.Len())
		}
	}
	stay(true, strings.NewReader(""), &strings.Builder{}) // no keys: does not hang
}
