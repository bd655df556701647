package records

import (
	"strings"
	"testing"
	"testing/fstest"
)

// loadBeside reads a book of the given files beside a batch A, a kale of 72 cells.
func loadBeside(files map[string]string) (*Book, []Problem) {
	folder := fstest.MapFS{"sowings.csv": {Data: []byte("batch,sown,crop,variety,tray,trays,cells\nA,2025-03-01,kale,X,Q,1,72\n")}}
	for name, text := range files {
		folder[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return Load(folder)
}

// What spreadsheets write beside the plain value is read as meant.
func TestSpreadsheetsWays(t *testing.T) {
	b, problems := loadBeside(map[string]string{
		"counts.csv": "batch,date,emerged\nA,2025-03-10 00:00:00,60.0\n",
		"costs.csv":  "date,category,amount\n2025-03-01,mix,USD 12.50\n2025-03-02,mix,13 USD\n",
	})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	if c := b.Counts[0]; c.Date.String() != "2025-03-10" || c.Emerged.Value != 60 {
		t.Errorf("count %v", c)
	}
	if b.Costs[0].Amount.Value != 12.5 || b.Costs[1].Amount.Value != 13 {
		t.Errorf("costs %v", b.Costs)
	}
}

// A temperature of the other scale is never taken for one of the book's own.
func TestTemperaturesOfAnotherScale(t *testing.T) {
	for cell, want := range map[string]string{"72F": "degrees C are expected", "720": "from -40 to 60 C", "21 °C": ""} {
		_, problems := loadBeside(map[string]string{"chamber.csv": "time,chamber,temp\n2025-03-02 07:00,box," + cell + "\n"})
		switch {
		case want == "" && len(problems) > 0:
			t.Errorf("%s: %v", cell, problems)
		case want != "" && (len(problems) != 1 || !strings.Contains(problems[0].String(), want)):
			t.Errorf("%s: %v, want %q", cell, problems, want)
		}
	}
}

// Trays broken beyond those bought: a warning, and no fault.
func TestMoreBrokenThanBought(t *testing.T) {
	_, problems := loadBeside(map[string]string{"trays.csv": "tray,kind,cells,count\nQ,air-pruning,72,-2\n"})
	if len(problems) != 1 || problems[0].Check != "trays-in-use" || problems[0].Severity != Warning {
		t.Error(problems)
	}
}

// Settings without a column of values are not quietly the defaults.
func TestSettingsWithoutValues(t *testing.T) {
	_, problems := loadBeside(map[string]string{"book.csv": "setting,note\nwage,12\n"})
	if len(problems) != 1 || problems[0].Severity != Fatal {
		t.Error(problems)
	}
}

// A first line that names the tab as separator is honoured.
func TestSeparatorLineWithTab(t *testing.T) {
	b, problems := loadBeside(map[string]string{"sowings.csv": "sep=\t\nbatch\tsown\tcrop\tvariety\ttray\ttrays\nA\t2025-03-01\tkale\tX\tQ\t1\n"})
	if len(problems) > 0 || len(b.Sowings) != 1 {
		t.Error(problems)
	}
}
