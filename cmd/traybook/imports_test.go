package main

import (
	"os/exec"
	"slices"
	"strings"
	"testing"
)

// rooms are the subjects of report in the order in which figures rest on each other.
var rooms = []string{"report/batch", "report/rate", "report/germination", "report/plants", "report/money", "report/trays", "report/room",
	"report/years", "report/sowing"}

// shown is what any package may read that shows figures: the book, the report, its
// rooms and how numbers are written.
var shown = append([]string{"records", "report", "report/words"}, rooms...)

// mayImport is the whole of who may import whom; DEVELOPERS.md shows it. A room
// stands after all that it may import. No code but tests imports booktest.
var mayImport = map[string][]string{
	"records/workbook":         {},
	"records":                  {"records/workbook"},
	"report/estimate":          {},
	"report/trade":             {"records"},
	"report/internal/booktest": {"records"},
	"report/batch":             {"records", "report/estimate", "report/trade"},
	"report/rate":              {"records", "report/batch", "report/estimate"},
	"report/words":             {"records", "report/rate"},
	"report/germination":       {"records", "report/batch", "report/estimate", "report/rate", "report/trade"},
	"report/plants":            {"records", "report/batch", "report/estimate", "report/germination", "report/rate"},
	"report/money":             {"records", "report/batch", "report/estimate", "report/germination", "report/plants", "report/rate"},
	"report/trays":             {"records", "report/batch", "report/estimate", "report/money", "report/plants", "report/rate"},
	"report/room":              {"records", "report/batch", "report/estimate"},
	"report/years":             {"records", "report/batch", "report/estimate", "report/germination", "report/money", "report/plants", "report/rate"},
	"report/sowing":            {"records", "report/batch", "report/estimate", "report/germination", "report/plants", "report/rate", "report/room"},
	"report":                   append([]string{"records", "report/estimate"}, rooms...),
	"report/data":              shown,
	"report/chart/runtime":     {},
	"report/chart":             append([]string{"report/chart/runtime"}, shown...),
	"templates/draw":           {"records", "report/rate", "report/words"},
	"templates":                append([]string{"report/chart", "report/estimate", "report/trade", "templates/draw"}, shown...),
	"cmd/traybook":             {"cmd/traybook/internal/folder", "records", "records/workbook", "report", "report/chart", "report/data", "report/words", "templates"},
	"examples/make":            {},

	"cmd/traybook/internal/folder": {},
}

// Rooms import those before them alone, so that figures rest on each other one way.
func TestRoomsImportOnlyThoseBefore(t *testing.T) {
	for i, room := range rooms {
		for _, to := range mayImport[room] {
			if slices.Contains(rooms[i:], to) || to == "report" {
				t.Errorf("%s may import %s, which stands after it", room, to)
			}
		}
	}
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
