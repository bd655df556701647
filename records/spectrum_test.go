package records

import (
	"slices"
	"strings"
	"testing"
)

// spectrum are the features that the public set csv-spectrum lists as those on which
// readers of CSV differ, each with rows of ours: what was changed, and a note. The last
// row of each has no date, to see where a problem stands behind all that.
var spectrum = map[string]struct {
	rows string
	want [][2]string // what, note
	bad  string      // the place of the date that is none
}{
	"simple":          {"2025-03-01,shade on,first\nsoon,,\n", [][2]string{{"shade on", "first"}}, "3:1: A3"},
	"comma in quotes": {"2025-03-01,\"shade, west side\",\"a, b,\"\nsoon,,\n", [][2]string{{"shade, west side", "a, b,"}}, "3:1: A3"},
	"empty":           {"2025-03-01,mix,\n2025-03-02,\"mix\",\"\"\n,,\n\"\",\"\",\"\"\n\nsoon,,\n", [][2]string{{"mix", ""}, {"mix", ""}}, "7:1: A7"},
	"escaped quotes": {"2025-03-01,\"the \"\"small\"\" house\",\"\"\"\"\n2025-03-02,\"\"\"x\"\"\",\"a \"\"\"\"b\"\nsoon,,\n",
		[][2]string{{`the "small" house`, `"`}, {`"x"`, `a ""b`}}, "4:1: A4"},
	"json": {"2025-03-01,valve,\"{\"\"type\"\": \"\"drip\"\", \"\"at\"\": [10.5, 20.25], \"\"on\"\": null}\"\nsoon,,\n",
		[][2]string{{"valve", `{"type": "drip", "at": [10.5, 20.25], "on": null}`}}, "3:1: A3"},
	"location coordinates": {"2025-03-01,new house,\"N 47° 3' 21.4\"\", E 8° 18' 5.0\"\"\"\n2025-03-02,-8.25,47.05\nsoon,,\n",
		[][2]string{{"new house", `N 47° 3' 21.4", E 8° 18' 5.0"`}, {"-8.25", "47.05"}}, "4:1: A4"},
	"newlines": {"2025-03-01,\"two\nlines\",\"\n\nthree\n\"\n2025-03-02,one,\"a\nb\"\nsoon,,\n",
		[][2]string{{"two\nlines", "three"}, {"one", "a\nb"}}, "9:1: A4"},
	"quotes and newlines": {"2025-03-01,\"she said\n\"\"more\nair\"\"\",\"\"\"\n\"\"\"\nsoon,,\n",
		[][2]string{{"she said\n\"more\nair\"", "\"\n\""}}, "6:1: A3"},
	"utf-8": {"2025-03-01,Schattentuch über Süd,ʤ 日よけ 🌱\n2025-03-02,e\u0301,\u05ea\u05e8\u05d3\n\"soon\",,\n",
		[][2]string{{"Schattentuch über Süd", "ʤ 日よけ 🌱"}, {"e\u0301", "\u05ea\u05e8\u05d3"}}, "4:1: A4"},
	"a problem behind letters of many bytes": {"2025-03-01,mix,🌱\n2025-03-02,日よけ,x,beyond\n", [][2]string{{"mix", "🌱"}}, "3:18: D3"},
	"a problem behind lines in its own row":  {"2025-03-01,mix,\n2025-03-02,\"a\nb\nc\",x,beyond\n", [][2]string{{"mix", ""}}, "5:6: D3"},
	"no line end at the end":                 {"2025-03-01,mix,x\nsoon,,", [][2]string{{"mix", "x"}}, "3:1: A3"},
	"separators in quotes":                   {"2025-03-01,\"a;b\tc|d\",x\nsoon,,\n", [][2]string{{"a;b\tc|d", "x"}}, "3:1: A3"},
}

// Every feature is read cell for cell with each end of line, with and without a mark of
// the byte order, and the row behind it stands where an editor and a spreadsheet show it.
func TestSpectrum(t *testing.T) {
	for name, c := range spectrum {
		for end, newline := range map[string]string{"LF": "\n", "CRLF": "\r\n", "CR": "\r"} {
			for _, mark := range []string{"", "\ufeff"} {
				text := mark + strings.ReplaceAll("date,what,note\n"+c.rows, "\n", newline)
				b, problems := load(map[string]string{"sowings.csv": oneSowing, "changes.csv": text})
				var got [][2]string
				for _, r := range b.Changes {
					got = append(got, [2]string{r.What, r.Note})
				}
				if !slices.Equal(got, c.want) {
					t.Errorf("%s, %s: got %q, want %q", name, end, got, c.want)
				}
				if at := leftOutAt(problems); !slices.Equal(at, []string{"changes.csv:" + c.bad}) {
					t.Errorf("%s, %s: problems at %q, want %q", name, end, at, c.bad)
				}
				addUp(t, b)
			}
		}
	}
}

// leftOutAt lists where rows are left out, each row once.
func leftOutAt(problems []Problem) (places []string) {
	last := 0
	for _, p := range problems {
		if p.Severity == Error && p.Line != last {
			places = append(places, p.Place())
			last = p.Line
		}
	}
	return places
}

// What is no CSV leaves out its own row, wherever the mark stands, and no row beside it.
func TestSpectrumOfMarks(t *testing.T) {
	for row, at := range map[string]string{
		`2025-03-02,a "b" c,x`: "3:14", `2025-03-02,"a" b,x`: "3:14", `2025-03-02,"a,x`: "3:1", `"2025-03-02,a,x`: "3:1", `2025-03-02,a,x"`: "3:15", `2025-03-02,"a"",x`: "3:1",
	} {
		b, problems := load(map[string]string{"sowings.csv": oneSowing, "changes.csv": "date,what,note\n2025-03-01,first,\n" + row + "\n2025-03-03,third,\n2025-03-04,fourth,\n"})
		if len(b.Changes) != 3 || len(problems) != 1 || problems[0].Place() != "changes.csv:"+at+": A3" || problems[0].Check != "csv" {
			t.Errorf("%s: %d rows, %v", row, len(b.Changes), problems)
		}
		addUp(t, b)
	}
}
