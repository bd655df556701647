package main

import (
	"math"
	"os"
	"path/filepath"
	"runtime/debug"
	"strings"
)

// How much memory may be in use before garbage is collected more often than
// is usual: so many bytes for each of the book's logs, and no less than a small book could
// ask for. A book takes some four times its logs when it is read, and seven with its
// figures; nearer to that, collecting would take all the time.
const (
	toRead  = 6
	toBuild = 10
	toWatch = 2 * toBuild // the review before is kept, to tell what is new

	leastToRead  = 200 << 20
	leastToBuild = 400 << 20

	// Below the bound garbage may grow to twice what is in use, as most of what a
	// build makes is dropped at once.
	garbagePercent = 200
)

// keepWithin sets that bound for a book. Whoever set one by the environment knows better.
// A workbook, whose size says little of what is in it, has none.
func keepWithin(at place, times, least int64) {
	if os.Getenv("GOMEMLIMIT") != "" || os.Getenv("GOGC") != "" || at.workbook {
		return
	}
	bound := max(times*at.logBytes(), least)
	if now := debug.SetMemoryLimit(-1); now == math.MaxInt64 || now < bound { // watch has a review of before
		debug.SetMemoryLimit(bound)
		debug.SetGCPercent(garbagePercent)
	}
}

// logBytes is how large the logs of a folder are together.
func (p place) logBytes() (n int64) {
	files, _ := os.ReadDir(p.home) // what cannot be read is told when the book is
	for _, f := range files {
		if info, err := f.Info(); err == nil && strings.EqualFold(filepath.Ext(f.Name()), ".csv") {
			n += info.Size()
		}
	}
	return n
}
