package main

import (
	"maps"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// What the two front documents point to in the tree is there.
func TestDocumentsPointToWhatIsThere(t *testing.T) {
	links := regexp.MustCompile(`\]\(([^)]+)\)`)
	code := regexp.MustCompile("`[^`]*`") // holds what a grower writes, no links
	found := 0
	for _, name := range []string{"README.md", "DEVELOPERS.md"} {
		text, err := os.ReadFile("../../" + name)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range links.FindAllStringSubmatch(code.ReplaceAllString(string(text), ""), -1) {
			if strings.Contains(m[1], "://") {
				continue
			}
			found++
			if _, err := os.Stat("../../" + m[1]); err != nil {
				t.Errorf("%s: %v", name, err)
			}
		}
	}
	if found == 0 {
		t.Error("no link found")
	}
}

// The table of who may import whom in DEVELOPERS.md is the one that is tested.
func TestDocumentedImports(t *testing.T) {
	text, err := os.ReadFile("../../DEVELOPERS.md")
	if err != nil {
		t.Fatal(err)
	}
	_, table, _ := strings.Cut(string(text), "| package | imports of ours |\n|---|---|\n")
	table, _, _ = strings.Cut(table, "\n\n")
	told := map[string]string{"examples/make": ""} // a program on its own
	for line := range strings.Lines(table) {
		cells := strings.Split(strings.Trim(line, "| \n"), " | ")
		to := strings.Split(strings.TrimSuffix(cells[1], "none"), ", ")
		slices.Sort(to)
		for _, from := range strings.Split(cells[0], ", ") {
			told[from] = strings.Join(to, ", ")
		}
	}
	tested := map[string]string{}
	for from, to := range mayImport {
		tested[from] = strings.Join(slices.Sorted(slices.Values(to)), ", ")
	}
	if !maps.Equal(told, tested) {
		t.Errorf("DEVELOPERS.md says %v, the test %v", told, tested)
	}
}
