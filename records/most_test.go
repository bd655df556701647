package records

import (
	"fmt"
	"strings"
	"testing"
)

// Up to the limits a book is taken, beyond them one line says of what there is too much, and
// nothing is built. Rows that repeat a code or a crop count once.
func TestMostOfABook(t *testing.T) {
	const trays = "tray,kind,cells\nA50,air-pruning,50\n"
	rows := func(head string, n int, row string) string {
		var s strings.Builder
		s.WriteString(head)
		for i := range n {
			fmt.Fprintf(&s, row+"\n", i)
		}
		return s.String()
	}
	sown := func(n int, row string) map[string]string {
		return map[string]string{"trays.csv": trays, "sowings.csv": rows("batch,sown,crop,variety,tray,trays\n", n, row)}
	}
	with := func(name, text string) map[string]string {
		return map[string]string{"sowings.csv": oneSowing, name: text}
	}
	const crop, code, lot = "B%[1]d,2025-03-03,%[1]d,Fen,A50,1", "T%d,air,50", "L%d,lettuce,Fen"
	for name, c := range map[string]struct {
		files map[string]string
		want  string // how the fatal problem begins; empty: none
	}{
		"crops":            {sown(mostSeasonCrops, crop), ""},
		"too many crops":   {sown(mostSeasonCrops+1, crop), "sowings.csv: 10,001 crops, counted once for each season; no more than 10,000 are expected"},
		"codes":            {with("trays.csv", rows("tray,kind,cells\n", mostCodes, code)), ""},
		"codes twice":      {with("trays.csv", rows("tray,kind,cells\n", mostCodes, code)+rows("", mostCodes, code)), ""},
		"too many codes":   {with("trays.csv", rows("tray,kind,cells\n", mostCodes+1, code)), "trays.csv: 5,001 tray codes; no more than 5,000 are expected"},
		"lots":             {with("lots.csv", rows("lot,crop,variety\n", mostLots, lot)), ""},
		"too many lots":    {with("lots.csv", rows("lot,crop,variety\n", mostLots+1, lot)), "lots.csv: 50,001 lots; no more than 50,000 are expected"},
		"too many batches": {sown(mostBatches+1, "B%d,2025-03-03,lettuce,Fen,A50,1"), "sowings.csv: 120,001 batches; no more than 120,000 are expected"},
	} {
		_, problems := load(c.files)
		var fatal []string
		for _, p := range problems {
			if p.Severity == Fatal {
				fatal = append(fatal, p.String())
			}
		}
		if c.want == "" && len(fatal) > 0 || c.want != "" && (len(fatal) != 1 || !strings.HasPrefix(fatal[0], c.want)) {
			t.Errorf("%s: %v", name, fatal)
		}
	}
}
