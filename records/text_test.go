package records

import (
	"strings"
	"testing"
)

// The same rows in every shape in which spreadsheets save them.
func TestShapes(t *testing.T) {
	for name, shape := range map[string]func(string) string{
		"CRLF":             func(s string) string { return strings.ReplaceAll(s, "\n", "\r\n") },
		"CR":               func(s string) string { return strings.ReplaceAll(s, "\n", "\r") },
		"mark":             func(s string) string { return "\ufeff" + s },
		"semicolons":       func(s string) string { return strings.ReplaceAll(s, ",", ";") },
		"tabs":             func(s string) string { return strings.ReplaceAll(s, ",", "\t") },
		"sep line":         func(s string) string { return "sep=;\r\n" + strings.ReplaceAll(s, ",", ";") },
		"marked sep line":  func(s string) string { return "\ufeff\"sep=|\"\n" + strings.ReplaceAll(s, ",", "|") },
		"no last line end": func(s string) string { return strings.TrimSuffix(s, "\n") },
		"blank rows":       func(s string) string { return "\n" + strings.ReplaceAll(s, "\n", "\n,,,,,\n\n  \n") },
		"trailing commas":  func(s string) string { return strings.ReplaceAll(s, "\n", ",,\n") },
		"quoted header":    func(s string) string { return strings.Replace(s, "batch", `"batch"`, 1) },
		"loud header":      func(s string) string { return strings.Replace(s, "batch,sown", " BATCH ,S_own", 1) },
	} {
		b, problems := load(map[string]string{"sowings.csv": shape(oneSowing)})
		if len(problems) > 0 || len(b.Sowings) != 1 || b.Sowings[0].Code != "A" || b.Sowings[0].Trays != 2 {
			t.Errorf("%s: %v %+v", name, problems, b.Sowings)
		}
	}
}

// Line and column are an editor's, the cell a spreadsheet's: blank rows and
// rows of commas are rows there, a line sep=; is none, a line break in a cell
// makes no row; columns are characters, not bytes.
func TestPositions(t *testing.T) {
	header := "note,batch,sown,crop,variety,tray,trays\n"
	for _, c := range []struct {
		name, before, row string
		want              string
	}{
		{"plain", header, "x,A,2025-03-03,lettuce,F,A50,two\n", "sowings.csv:2:30: G2: "},
		{"characters", header, "äöü€,A,2025-03-03,lettuce,F,A50,two\n", "sowings.csv:2:33: G2: "},
		{"quoted", header, "\"a, \"\"b\"\"\",A,2025-03-03,lettuce,F,A50,two\n", "sowings.csv:2:40: G2: "},
		{"quoted cell", header, "x,A,2025-03-03,lettuce,F,A50,\"two\"\n", "sowings.csv:2:30: G2: "},
		{"blank rows", header + "\n,,,\n\n", "x,A,2025-03-03,lettuce,F,A50,two\n", "sowings.csv:5:30: G5: "},
		{"line break", header + "\"a\nb\",A,2025-03-03,lettuce,F,A50,2\n", "x,B,2025-03-03,lettuce,F,A50,two\n", "sowings.csv:4:30: G3: "},
		{"own line break", header, "\"a\nb\",B,2025-03-03,lettuce,F,A50,two\n", "sowings.csv:3:31: G2: "},
		{"blank line first", "\n" + header, "x,A,2025-03-03,lettuce,F,A50,two\n", "sowings.csv:3:30: G3: "},
		{"sep line", "sep=,\n" + header, "x,A,2025-03-03,lettuce,F,A50,two\n", "sowings.csv:3:30: G2: "},
		{"after a fault", header + "5\" pot,B,2025-03-03,lettuce,F,A50,2\n\n", "x,A,2025-03-03,lettuce,F,A50,two\n", "sowings.csv:4:30: G4: "},
		{"after a fault behind blank lines", header + "\n\n5\" pot,B,2025-03-03,lettuce,F,A50,2\n", "x,A,2025-03-03,lettuce,F,A50,two\n", "sowings.csv:5:30: G5: "},
		{"short row", header, "x,A,2025-03-03,lettuce,F,A50\n", "sowings.csv:2:29: G2: "},
	} {
		_, problems := load(map[string]string{"sowings.csv": c.before + c.row})
		last := Problem{}
		if len(problems) > 0 {
			last = problems[len(problems)-1]
		}
		want := c.want
		if c.name == "quoted" || c.name == "quoted cell" {
			want = quotedWant(c.row)
		}
		if !strings.HasPrefix(last.String(), want) {
			t.Errorf("%s: got %v, want %s", c.name, problems, want)
		}
	}
}

// quotedWant places the last cell of a row of one line by hand: after the last
// comma.
func quotedWant(row string) string {
	return "sowings.csv:2:" + itoa(strings.LastIndex(row, ",")+2) + ": G2: "
}

func TestCellName(t *testing.T) {
	for col, want := range map[int]string{0: "A7", 25: "Z7", 26: "AA7", 51: "AZ7", 52: "BA7", 701: "ZZ7", 702: "AAA7"} {
		if got := cellName(col, 7); got != want {
			t.Errorf("cellName(%d, 7) = %s, want %s", col, got, want)
		}
	}
}

// Hostile cells come out as text on one line.
func TestHostileCells(t *testing.T) {
	for _, s := range []string{"</script><script>alert(1)</script>", "=cmd|' /C calc'!A0", "\u202egnp.exe", "a\tb", strings.Repeat("x", 500)} {
		b, problems := load(map[string]string{"sowings.csv": "batch,sown,crop,variety,tray,trays,wanted\nA,2025-03-03,lettuce,\"" + s + "\",A50,2,\"" + s + "\"\n" +
			"B,2025-03-03,lettuce,\"" + s + "\",A50,2,\n"})
		if len(problems) != 1 || strings.ContainsAny(problems[0].String(), "\n\t\u202e") || len(problems[0].String()) > 300 {
			t.Error(problems)
		}
		if want := spelt(s); len(b.Sowings) != 1 || b.Sowings[0].Variety != want {
			t.Errorf("got %+v", b.Sowings)
		}
	}
}
