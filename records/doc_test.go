package records

import (
	"os"
	"slices"
	"strings"
	"testing"
)

// The format's reference names every log, column and setting, with what the
// table of columns says of it.
func TestReferenceIsComplete(t *testing.T) {
	raw, err := os.ReadFile("doc.go")
	if err != nil {
		t.Fatal(err)
	}
	doc := string(raw)
	for _, l := range Logs {
		_, section, ok := strings.Cut(doc, "\n// "+l.Name+": "+l.What+".\n//\n")
		if !ok {
			t.Errorf("%s is not in doc.go, or otherwise described", l.Name)
			continue
		}
		section, _, _ = strings.Cut(section, "\n//\n")
		lines := strings.Split(section, "\n")
		if len(lines) != len(l.Columns) {
			t.Errorf("%s: %d lines for %d columns", l.Name, len(lines), len(l.Columns))
		}
		for _, c := range l.Columns {
			if !slices.Contains(lines, docLine(section, c)) {
				t.Errorf("%s: no line %q", l.Name, docLine(section, c))
			}
		}
	}
	for _, s := range settingTable {
		if !strings.Contains(doc, "\n//\t"+s.name+" ") {
			t.Errorf("setting %s is not in doc.go", s.name)
		}
	}
}

// docLine is the line of a column, as wide as its section's other lines.
func docLine(section string, c Column) string {
	name := c.Name
	if c.Required {
		name += "*"
	}
	first, _, _ := strings.Cut(section, "\n")
	body := strings.TrimPrefix(first, "//\t")
	word := strings.Fields(body)[0]
	width := len(body) - len(strings.TrimLeft(body[len(word):], " "))
	return "//\t" + name + strings.Repeat(" ", max(0, width-len(name))) + c.What
}
