package main

import (
	"os/exec"
	"slices"
	"strings"
	"testing"
)

// mayImport is the whole of who may import whom; DEVELOPERS.md shows it.
var mayImport = map[string][]string{
	"cmd/traybook":         {"records", "report", "report/chart", "report/data", "templates"},
	"templates":            {"records", "report", "report/chart", "report/estimate", "report/trade"},
	"report/chart":         {"records", "report", "report/chart/runtime"},
	"report/data":          {"records", "report"},
	"report":               {"records", "report/estimate", "report/trade"},
	"records":              {},
	"report/estimate":      {},
	"report/trade":         {"records"},
	"report/chart/runtime": {},
	"examples/make":        {},
}

// Data flow one way: an import that is not in the table is a fault.
func TestImports(t *testing.T) {
	out, err := exec.Command("go", "list", "-f", `{{.ImportPath}}{{range .Imports}} {{.}}{{end}}`, "traybook/...").Output()
	if err != nil {
		t.Skipf("no go command: %v", err)
	}
	for line := range strings.Lines(string(out)) {
		words := strings.Fields(line)
		from := strings.TrimPrefix(words[0], "traybook/")
		allowed, known := mayImport[from]
		if !known {
			t.Errorf("package %s is not in the table", from)
		}
		for _, to := range words[1:] {
			if to, ours := strings.CutPrefix(to, "traybook/"); ours && !slices.Contains(allowed, to) {
				t.Errorf("%s imports %s", from, to)
			}
		}
	}
}
