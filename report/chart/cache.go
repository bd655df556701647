package chart

import (
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"traybook/report/chart/runtime"
)

// cache keeps finished drawings in a folder, each in a file named for all that
// it depends on. Nothing about it is ever an error: what cannot be read is drawn
// anew, what cannot be written is not kept.
type cache struct {
	dir  string
	base string // hash of everything that is the same for all charts
}

// cacheLimit is the number of drawings kept, of about 10 kB each: those of twenty seasons
// of forty crops, twice.
const cacheLimit = 4000

// newCache returns a cache in a folder; an empty name keeps nothing.
func newCache(dir string, bundle []byte) cache {
	if dir == "" {
		return cache{}
	}
	return cache{dir, hash(string(bundle), runtime.Prelude(), runtime.Bridge(), cleanerVersion)}
}

// hash sums parts, each with its length before it: two lists of parts never run together.
func hash(parts ...string) string {
	h := sha256.New()
	for _, p := range parts {
		fmt.Fprintf(h, "%d:%s", len(p), p)
	}
	return hex.EncodeToString(h.Sum(nil))
}

// key names a drawing for all that it depends on, words for a screen reader included.
func (c cache) key(s Spec, option string) string {
	if c.dir == "" {
		return ""
	}
	return hash(c.base, s.Name, s.Title, s.Label, fmt.Sprint(s.Width, "x", s.Height), option)
}

func (c cache) file(key string) string { return filepath.Join(c.dir, key+".svg") }

// get returns a kept drawing. A file holds the hash of its text and the text,
// so that a damaged one is seen.
func (c cache) get(key string) (string, bool) {
	if c.dir == "" {
		return "", false
	}
	b, err := os.ReadFile(c.file(key))
	if err != nil {
		return "", false
	}
	sum, svg, _ := strings.Cut(string(b), "\n")
	if sum != hash(svg) {
		return "", false
	}
	now := time.Now()
	_ = os.Chtimes(c.file(key), now, now) // used: prune it last
	return svg, true
}

// put keeps a drawing: written aside, then moved into place.
func (c cache) put(key, svg string) {
	if c.dir == "" || os.MkdirAll(c.dir, 0o755) != nil {
		return
	}
	f, err := os.CreateTemp(c.dir, "new-*")
	if err != nil {
		return
	}
	_, err = f.WriteString(hash(svg) + "\n" + svg)
	if f.Close() != nil || err != nil || os.Rename(f.Name(), c.file(key)) != nil {
		_ = os.Remove(f.Name())
	}
}

// prune removes the drawings that were used longest ago, beyond cacheLimit.
func (c cache) prune() {
	entries, err := os.ReadDir(c.dir)
	if c.dir == "" || err != nil || len(entries) <= cacheLimit {
		return
	}
	used := map[string]time.Time{}
	var files []string
	for _, e := range entries {
		if info, err := e.Info(); err == nil && strings.HasSuffix(e.Name(), ".svg") {
			files = append(files, e.Name())
			used[e.Name()] = info.ModTime()
		}
	}
	slices.SortFunc(files, func(a, b string) int { return cmp.Or(used[b].Compare(used[a]), cmp.Compare(a, b)) })
	for _, f := range files[min(cacheLimit, len(files)):] {
		_ = os.Remove(filepath.Join(c.dir, f))
	}
}
