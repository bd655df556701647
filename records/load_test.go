package records

import (
	"os"
	"path/filepath"
	"testing"
)

// The example books are clean, but for what they show on purpose.
func TestExamples(t *testing.T) {
	books, _ := filepath.Glob("../examples/*/sowings.csv")
	more, _ := filepath.Glob("../examples/*/*/sowings.csv")
	for _, path := range append(books, more...) {
		folder := filepath.Dir(path)
		b, problems := Load(os.DirFS(folder))
		for _, p := range problems {
			t.Log(folder, p.Severity, p)
		}
		t.Log(folder, len(b.Sowings), len(b.Outs), len(b.Counts), len(b.Scores), len(b.Trays), len(b.Lots), len(b.Costs), len(b.Chamber), len(b.House))
	}
}
