package main

import (
	"os"
	"path/filepath"
	"testing"
)

// What stood at the place comes back where the new folder cannot be moved in.
func TestSwapPutsBackWhatStood(t *testing.T) {
	dir := t.TempDir()
	site, old := filepath.Join(dir, "site"), filepath.Join(dir, "old")
	if err := writeAll(site, []siteFile{{"index.html", []byte("before")}}); err != nil {
		t.Fatal(err)
	}
	if err := swap(site, filepath.Join(dir, "nowhere"), old); err == nil {
		t.Error("no error")
	}
	if body, err := os.ReadFile(filepath.Join(site, "index.html")); err != nil || string(body) != "before" {
		t.Errorf("%q, %v", body, err)
	}
}

// A build that cannot write all leaves nothing beside the place either.
func TestFailedWriteLeavesNothing(t *testing.T) {
	dir := t.TempDir()
	site := filepath.Join(dir, "site")
	err := writeSite(site, []siteFile{{"a", nil}, {"a/b", nil}}) // a is a file and a folder
	if err == nil {
		t.Error("no error")
	}
	if entries, _ := os.ReadDir(dir); len(entries) != 0 {
		t.Errorf("left: %v", entries)
	}
}
