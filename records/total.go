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
func (r *row) isTotal() bool {
	first := slices.IndexFunc(r.rec.fields, func(s string) bool { return strings.TrimSpace(s) != "" })
	if first < 0 || r.Name == "book.csv" {
		return false
	}
	word := strings.ToLower(strings.Trim(strings.Join(strings.Fields(r.rec.fields[first]), " "), " :.="))
	whole := !slices.ContainsFunc(requiredOf(r.Log), func(col string) bool { return r.text(col) == "" })
	if whole || !slices.Contains(totals, word) {
		return false
	}
	r.out = true
	r.report("total-row", r.place(r.rec, first), "read "+quote(strings.TrimSpace(r.rec.fields[first]))+": a row that adds up others",
		"rows of what happened alone are expected", "delete the row")
	return true
}
