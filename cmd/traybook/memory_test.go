package main

import (
	"math"
	"os"
	"path/filepath"
	"runtime/debug"
	"testing"
)

// The bound grows with the logs of a folder, whatever their case, and leaves alone what
// somebody set, and workbooks.
func TestKeepWithin(t *testing.T) {
	defer debug.SetMemoryLimit(debug.SetMemoryLimit(-1))
	dir := t.TempDir()
	for name, size := range map[string]int64{"counts.csv": 80 << 20, "Sowings.CSV": 20 << 20, "photo.jpg": 900 << 20} {
		f, err := os.Create(filepath.Join(dir, name))
		if err != nil {
			t.Fatal(err)
		}
		if err := f.Truncate(size); err != nil { // no byte of it is written
			t.Fatal(err)
		}
		f.Close()
	}
	for name, c := range map[string]struct {
		at   place
		env  string
		want int64
	}{
		"large":     {place{home: dir}, "", 600 << 20},
		"small":     {place{home: t.TempDir()}, "", leastToRead},
		"workbook":  {place{home: dir, workbook: true}, "", math.MaxInt64},
		"by itself": {place{home: dir}, "100", math.MaxInt64},
	} {
		t.Setenv("GOMEMLIMIT", "")
		t.Setenv("GOGC", c.env)
		debug.SetMemoryLimit(math.MaxInt64)
		keepWithin(c.at, toRead, leastToRead)
		if got := debug.SetMemoryLimit(-1); got != c.want {
			t.Errorf("%s: %d bytes, want %d", name, got, c.want)
		}
	}
}
