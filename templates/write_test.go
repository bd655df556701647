package templates

import (
	"flag"
	"os"
	"path/filepath"
	"testing"
)

var writeTo = flag.String("write", "", "also write the sample's pages into this folder, to be looked at")

// TestPagesOfTheSample makes every page of the report made by hand.
func TestPagesOfTheSample(t *testing.T) {
	got, _, err := Pages(sample(t, false), sampleCharts())
	if err != nil {
		t.Fatal(err)
	}
	if *writeTo == "" {
		return
	}
	for _, page := range got {
		file := filepath.Join(*writeTo, filepath.FromSlash(page.Path))
		if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(file, page.Body, 0o644); err != nil {
			t.Fatal(err)
		}
	}
}
