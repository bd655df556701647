package main

import (
	"fmt"
	"path/filepath"
	"strings"
	"sync"
	"testing"
)

// built is a review that was built, and what the build said.
type built struct{ site, said string }

// example builds the review of the example, with its charts, once for all tests that
// read it.
var example = sync.OnceValues(func() (built, error) {
	var said strings.Builder
	site := filepath.Join(scratch, "example")
	code := run([]string{"build", "../../examples/ottermoss", "--today", "2026-05-17", "--out", site}, &said, &said)
	if code != done {
		return built{}, fmt.Errorf("status %d: %s", code, said.String())
	}
	return built{site, said.String()}, nil
})

// exampleSite is the folder of the example's review; no test writes into it.
func exampleSite(t *testing.T) built {
	t.Helper()
	b, err := example()
	if err != nil {
		t.Fatal(err)
	}
	return b
}
