package records

import (
	"maps"
	"strings"
	"testing"
)

// What stands in a log is told apart word by word, a note and the cause of a loss too; a log
// that nobody touched is the same, whatever new names the others have brought.
func TestSame(t *testing.T) {
	logs := map[string]string{
		"book.csv":    "setting,value\nwage,15\n",
		"trays.csv":   "tray,kind,cells\nT72,air-pruning,72\n",
		"lots.csv":    "lot,crop,variety\nL1,kale,Orl\n",
		"sowings.csv": "batch,sown,crop,variety,lot,tray,trays,note\nA,2025-03-01,kale,Orl,L1,T72,1,old\nB,2025-03-01,kale,Orl,L1,T72,1,\n",
		"out.csv":     "batch,date,plants,to,note\nA,2025-04-20,50,field,old\n",
		"counts.csv":  "batch,date,emerged,lost,cause,note\nA,2025-03-12,60,2,mice,old\nB,2025-03-12,61,,,\n",
		"scores.csv":  "batch,date,looked,usable,note\nA,2025-04-12,10,9,old\n",
		"costs.csv":   "date,category,amount,note\n2025-03-02,heat,40,old\n",
		"chamber.csv": "time,temp\n2025-03-02 08:00,21\n",
		"house.csv":   "date,low,high,note\n2025-03-02,8,20,old\n",
		"wishes.csv":  "crop,variety,plants,planned,note\nkale,Orl,50,2026-04-20,old\n",
		"changes.csv": "date,what,note\n2025-03-02,fans,old\n",
	}
	before, none := load(logs)
	if len(none) > 0 {
		t.Fatal(none)
	}
	for name, tt := range map[string]struct {
		log, from, to string
	}{
		"a setting":                {"book.csv", "15", "16"},
		"cells":                    {"trays.csv", ",72", ",70"},
		"a new tray":               {"trays.csv", "T72,", "S1,solid-wall,9\nT72,"},
		"a new lot":                {"lots.csv", "L1,", "L0,leek,Bandit\nL1,"},
		"a batch between":          {"sowings.csv", "B,", "AA,2025-03-01,leek,Bandit,,T72,1,\nB,"},
		"a note of a sowing":       {"sowings.csv", "old", "new"},
		"a note of out":            {"out.csv", "old", "new"},
		"a note of a count":        {"counts.csv", "old", "new"},
		"a cause":                  {"counts.csv", "mice", "slugs"},
		"a count of another batch": {"counts.csv", "A,", "B,"},
		"a count":                  {"counts.csv", "60", "59"},
		"a note of a look":         {"scores.csv", "old", "new"},
		"a note of a bill":         {"costs.csv", "old", "new"},
		"a reading":                {"chamber.csv", "21", "22"},
		"a note of the house":      {"house.csv", "old", "new"},
		"a note of a wish":         {"wishes.csv", "old", "new"},
		"a note of a change":       {"changes.csv", "old", "new"},
	} {
		changed := maps.Clone(logs)
		changed[tt.log] = strings.Replace(logs[tt.log], tt.from, tt.to, 1)
		now, problems := load(changed)
		for _, log := range Logs {
			if same := now.Same(before, log.Name); same == (log.Name == tt.log) {
				t.Errorf("%s: %s is the same: %v\n%v", name, log.Name, same, problems)
			}
		}
	}
}
