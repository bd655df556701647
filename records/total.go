package records

import (
	"slices"
	"strings"
)

// totals are the words by which a row that adds others up calls itself.
var totals = []string{"total", "totals", "sum", "sums", "subtotal", "grand total", "average", "averages", "mean",
	"summe", "gesamt", "totale", "somme", "suma", "totaal"}

// isTotal reports a row that adds up those above it, and leaves it out unread: its
// first cell says so, and a required cell is blank. A batch may be called Sum.
func (r row) isTotal() bool {
	first := slices.IndexFunc(r.rec.fields, func(s string) bool { return strings.TrimSpace(s) != "" })
	if first < 0 || r.Name == "book.csv" || !isTotal(r.rec.fields[first]) {
		return false
	}
	if !slices.ContainsFunc(r.required, func(col string) bool { return r.text(col) == "" }) {
		return false
	}
	r.leaveOut()
	r.report("total-row", r.place(first), "read "+quote(strings.TrimSpace(r.rec.fields[first]))+": a row that adds up others",
		"rows of what happened alone are expected", "delete the row")
	return true
}

// isTotal reports whether a cell says that its row adds up others.
func isTotal(cell string) bool {
	for i := range len(cell) {
		if '0' <= cell[i] && cell[i] <= '9' { // as most codes have
			return false
		}
	}
	return slices.Contains(totals, strings.ToLower(strings.Trim(strings.Join(strings.Fields(cell), " "), " :.=")))
}
