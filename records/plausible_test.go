package records

import (
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// exampleFiles are the CSV files of an example by name.
func exampleFiles(t *testing.T, name string) map[string]string {
	t.Helper()
	paths, _ := filepath.Glob("../examples/" + name + "/*.csv")
	files := map[string]string{}
	for _, path := range paths {
		b, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		files[filepath.Base(path)] = string(b)
	}
	if len(files) == 0 {
		t.Fatal("no such example: " + name)
	}
	return files
}

// swap puts one text in place of another that stands there once.
func swap(old, new string) func(t *testing.T, text string) string {
	return func(t *testing.T, text string) string {
		if strings.Count(text, old) != 1 {
			t.Fatalf("%q stands there %d times", old, strings.Count(text, old))
		}
		return strings.Replace(text, old, new, 1)
	}
}

// pasted puts some lines of a text, counted from 1, once more behind its last.
func pasted(from, to int) func(t *testing.T, text string) string {
	return func(t *testing.T, text string) string {
		lines := slices.Collect(strings.Lines(text))
		return text + strings.Join(lines[from-1:to], "")
	}
}

// again is how the message about such lines begins.
func again(log string, lines, from, to int) string {
	of := fmt.Sprintf("the row stands in line %d too", from)
	if to > from {
		of = fmt.Sprintf("lines %d to %d are lines %d to %d once more", lines+1, lines+1+to-from, from, to)
	}
	return fmt.Sprintf("%s:%d:1: A%d: %s", log, lines+1, lines+1, of)
}

// retyped types the cell of a line, counted from 1, and a column anew.
func retyped(line int, col string, how func(cell string) string) func(t *testing.T, text string) string {
	return func(t *testing.T, text string) string {
		lines := strings.Split(text, "\n")
		at := slices.Index(strings.Split(lines[0], ","), col)
		cells := strings.Split(lines[line-1], ",")
		if at < 0 || how(cells[at]) == cells[at] {
			t.Fatalf("no %s to retype in %q", col, lines[line-1])
		}
		cells[at] = how(cells[at])
		lines[line-1] = strings.Join(cells, ",")
		return strings.Join(lines, "\n")
	}
}

// yearsOff is a day of so many years later.
func yearsOff(n int) func(string) string {
	return func(cell string) string {
		d, _ := ParseISO(cell)
		return NewDate(d.Year()+n, d.Month(), d.Time().Day()).String()
	}
}

// tenTimes is ten times a number.
func tenTimes(cell string) string {
	x, _ := parseNumber(cell, point)
	return plain(10 * x)
}

// What a spreadsheet and its user do to a file in passing never changes a figure
// without a message at its cell: each is done to an example, and told there.
func TestNothingChangesUnseen(t *testing.T) {
	asItIs := map[string]*Book{}
	for _, c := range []struct {
		book, what, log string
		do              func(*testing.T, string) string
		want            string // how one of the problems begins; again: that about pasted lines
	}{
		{"ottermoss", "rows pasted twice", "scores.csv", pasted(100, 104), "again 100 104"},
		{"ottermoss", "rows pasted twice", "costs.csv", pasted(30, 34), "again 30 34"},
		{"ottermoss", "rows pasted twice", "house.csv", pasted(500, 500), "again 500 500"},
		{"ottermoss", "rows pasted twice", "out.csv", pasted(200, 220), "again 200 220"},
		{"ottermoss", "rows pasted twice", "counts.csv", pasted(700, 702), "again 700 702"},
		{"ottermoss", "rows pasted twice", "chamber.csv", pasted(2, 3), "again 2 3"},
		{"ottermoss", "rows pasted twice", "trays.csv", pasted(3, 3), "again 3 3"},

		{"tiny", "a quote left open", "counts.csv", swap(`,30,dried out`, `,30,"dried out`), "counts.csv:12:1: A12: a quotation mark is opened and not closed"},
		{"tiny", "a quote left open", "sowings.csv", swap("B,2025-03-03,lettuce", `"B,2025-03-03,lettuce`), "sowings.csv:3:1: A3: a quotation mark is opened and not closed"},
		{"tiny", "a quote closed late", "counts.csv", func(t *testing.T, s string) string {
			return swap("A,2025-03-06,,,28,,,", `A,2025-03-06,,,28,,,"slugs`)(t, swap("B,2025-03-10,,,90,,,", `B,2025-03-10,,,90,,,"`)(t, s))
		}, "counts.csv:2:21: H2: a quotation mark may have swallowed rows 3 to 5"},
		{"tiny", "a quote closed late", "costs.csv", func(t *testing.T, s string) string {
			return swap(",for seed without a lot", `,"for seed`)(t, swap("crate returned", `crate returned"`)(t, s))
		}, "costs.csv:3:31: M3: a quotation mark may have swallowed rows 4 to 13"},

		{"tiny", "a column renamed", "sowings.csv", swap("surplus", "Left over"), `sowings.csv:1:74: L1: column "Left over" is not read`},
		{"tiny", "a column renamed", "trays.csv", swap("price", "Price each"), `trays.csv:1:38: G1: column "Price each" is not read`},
		{"tiny", "a column renamed", "sowings.csv", swap("sown,", "date sown,"), `sowings.csv:1: no column "sown"`},
		{"tiny", "a column renamed", "counts.csv", swap("lost", "dead"), `counts.csv:1:37: G1: column "dead" is not read`},
		{"tiny", "a column renamed", "book.csv", swap("wage", "wage per hour"), `book.csv:3:1: A3: read "wage per hour"; a setting is expected`},

		{"tiny", "a cell shifted right", "counts.csv", swap("A,2025-03-11,,,95,,,", "A,2025-03-11,,,,95,,"), "counts.csv:4:17: F4: 95 of 100 cells empty"},
		{"tiny", "a cell shifted right", "counts.csv", swap("10,,30,dried out", "10,,,30"), `counts.csv:12:21: H12: cause reads "30"`},
		{"tiny", "a cell shifted right", "sowings.csv", swap("2025-04-12,85,5,", "2025-04-12,,85,5"), "sowings.csv:2:67: L2: surplus 85 without plants_out"},
		{"tiny", "a cell shifted right", "scores.csv", swap("20,19,,", "20,,19,"), "scores.csv:2:14: C2: both looked or usable and s1 to s5"},
		{"tiny", "a cell shifted right", "costs.csv", swap("15.00,,60,litres", "15.00,,,60"), `costs.csv:2:27: I2: unit reads "60"`},
		{"tiny", "a cell shifted right", "out.csv", swap("150,field", ",150"), "out.csv:2:14: C2: plants is blank"},

		{"ottermoss", "a date a year off", "sowings.csv", retyped(3, "sown", yearsOff(1)), "sowings.csv:3:9: B3: sown 20"},
		{"ottermoss", "a date a year off", "sowings.csv", retyped(3, "sown", yearsOff(-1)), "sowings.csv:3:9: B3: sown 20"},
		{"ottermoss", "a date a year off", "sowings.csv", retyped(200, "planned", yearsOff(1)), "sowings.csv:200:"},
		{"ottermoss", "a date a year off", "house.csv", retyped(500, "date", yearsOff(-1)), "house.csv:500:1: A500: date 20"},
		{"ottermoss", "a date a year off", "counts.csv", retyped(300, "date", yearsOff(1)), "counts.csv:300:9: B300: date 20"},
		{"ottermoss", "a date a year off", "scores.csv", retyped(100, "date", yearsOff(-1)), "scores.csv:100:9: B100: 20"},
		{"ottermoss", "a date a year off", "costs.csv", retyped(3, "date", yearsOff(1)), "costs.csv:3:1: A3: date 20"},
		{"tiny", "a date a year off", "counts.csv", swap("E,2025-03-24", "E,2026-03-24"), "counts.csv:12:3: B12: date 2026-03-24 is "},
		{"tiny", "a date a year off", "sowings.csv", swap("S50,2,2025-04-12", "S50,2,2026-04-12"), "sowings.csv:3:41: H3: planned 2026-04-12 is 405 days after sown"},
		{"tiny", "a date a year off", "lots.csv", swap("W501,2025-01-15", "W501,2024-01-15"), "lots.csv:2:49: F2: bought 2024-01-15, tested 2024-11-01 and first sown 2025-03-03"},
		{"tiny", "a date a year off", "trays.csv", swap("100,2025-01-10,6", "100,2026-01-10,6"), "sowings.csv:"}, // in use before it was bought

		{"tiny", "a count ten times too large", "counts.csv", swap("B,2025-03-10,,,90", "B,2025-03-10,,,900"), "counts.csv:5:16: E5: 900 cells emerged of 100 looked at"},
		{"tiny", "a count ten times too large", "counts.csv", swap(",10,,30,", ",10,,300,"), "counts.csv:12:20: G12: 300 cells lost so far, 50 sown"},
		{"tiny", "a count ten times too large", "out.csv", swap("150,field", "1500,field"), `out.csv:3:14: C3: batch "C": 1540 plants out of 200 cells sown`},
		{"tiny", "a count ten times too large", "scores.csv", swap("20,19", "200,19"), "scores.csv:2:14: C2: 200 plants looked at of 100 cells sown"},
		{"tiny", "a count ten times too large", "sowings.csv", swap("2025-04-12,85,5", "2025-04-12,850,5"), "sowings.csv:2:66: K2: 855 plants out of 100 cells sown"},
		{"tiny", "a count ten times too large", "sowings.csv", swap("S50,2,2025-04-12,80", "S50,20,2025-04-12,80"), "sowings.csv:3:53: I3: 80 plants wanted of 1000 cells sown"},
		{"ottermoss", "a count ten times too large", "sowings.csv", retyped(4, "trays", tenTimes), "sowings.csv:4:"},
		{"ottermoss", "a count ten times too large", "counts.csv", retyped(300, "emerged", tenTimes), "counts.csv:300:"},
	} {
		files := exampleFiles(t, c.book)
		var from, to int
		if n, _ := fmt.Sscanf(c.want, "again %d %d", &from, &to); n == 2 {
			c.want = again(c.log, strings.Count(files[c.log], "\n"), from, to)
		}
		if asItIs[c.book] == nil {
			asItIs[c.book], _ = load(files)
		}
		before := asItIs[c.book]
		files[c.log] = c.do(t, files[c.log])
		after, problems := load(files)
		if !slices.ContainsFunc(problems, func(p Problem) bool { return strings.HasPrefix(p.String(), c.want) }) {
			t.Errorf("%s, %s in %s: no %q among %v", c.book, c.what, c.log, c.want, problems)
		}
		if maps.Equal(written(before), written(after)) && before.Settings.Wage == after.Settings.Wage {
			t.Errorf("%s, %s in %s: nothing changed, and so nothing is tested", c.book, c.what, c.log)
		}
	}
}

// A file saved under a copy's name, in place of the log or beside it.
func TestCopiesAreTold(t *testing.T) {
	for _, name := range []string{"counts (1).csv", "counts - Copy.csv", "counts.csv.csv", "counts_2025.csv", "Copy of counts.csv"} {
		for _, beside := range []bool{true, false} {
			files := exampleFiles(t, "tiny")
			files[name] = files["counts.csv"]
			if !beside {
				delete(files, "counts.csv")
			}
			b, problems := load(files)
			if len(problems) != 1 || problems[0].Check != "near-file" || problems[0].File != name || b.Has("counts.csv") != beside {
				t.Errorf("%s, beside %v: %v", name, beside, problems)
			}
		}
	}
}

// takenFor knows a copy by its name, and leaves other files alone.
func TestTakenFor(t *testing.T) {
	for name, want := range map[string]string{
		"counts.csv.csv": "counts.csv", "counts.csv.txt": "counts.csv", "counts (1).csv": "counts.csv", "counts (12).CSV": "counts.csv",
		"counts - Copy.csv": "counts.csv", "counts - Copy (2).csv": "counts.csv", "counts copy 2.csv": "counts.csv", "counts_2025.csv": "counts.csv",
		"Copy of counts.csv": "counts.csv", "counts-final.csv": "counts.csv", "2025 counts.csv": "counts.csv", "counts.2025-03-01.csv": "counts.csv",
		"counts v2.csv": "counts.csv", "counts.csv~": "counts.csv", "counts.csv.bak": "counts.csv", "counts.tsv": "counts.csv", "count.csv": "counts.csv",
		"tray.csv": "trays.csv", "Sowing.CSV": "sowings.csv", "house.txt": "house.csv",
		"counts.xlsx": "", "counts": "", "account.csv": "", "discounts.csv": "", "weather.csv": "", "2025.csv": "", "readme.txt": "", "lost.txt": "", "photo.jpg": "",
	} {
		if got := takenFor(name); got != want {
			t.Errorf("%s is taken for %q, want %q", name, got, want)
		}
	}
}

// A quiet winter is no cause for a warning: the first sowing of February, or of
// August, after a last date in October; a batch set out in spring as it was planned;
// bills and readings between; trays of long ago and seed of the year to come.
func TestQuietWinter(t *testing.T) {
	const head = "batch,sown,crop,variety,tray,trays,planned,set_out\n" +
		"A,2025-09-01,spinach,Slatemere,A50,2,2025-10-10,2025-10-12\n"
	for name, files := range map[string]map[string]string{
		"February": {"sowings.csv": head + "B,2026-02-03,onion,Barnloft,A50,2,2026-04-10,\n"},
		"August":   {"sowings.csv": head + "B,2026-08-03,spinach,Slatemere,A50,2,2026-09-10,\n"},
		"several":  {"sowings.csv": head + "B,2026-02-03,onion,Barnloft,A50,2,2026-04-10,\nC,2026-02-03,leek,Ditchblade,A50,2,2026-05-10,\n"},
		"overwintered": {"sowings.csv": head + "B,2025-10-01,onion,Barnloft,A50,2,2026-03-10,2026-03-20\n" +
			"C,2025-10-01,onion,Cinderskin,A50,2,,2026-03-20\n"},
		"bills": {"sowings.csv": head, "costs.csv": "date,category,amount\n2025-12-31,power,12\n2026-01-20,seed,40\n",
			"house.csv": "date,low\n2025-12-20,1\n2026-01-15,2\n", "lots.csv": "lot,crop,variety,bought\nL1,onion,Barnloft,2026-01-20\n"},
		"first":  {"sowings.csv": "batch,sown,crop,variety,tray,trays\nA,2026-03-01,kale,Broadleaf,A50,1\n", "trays.csv": "tray,kind,cells,bought,count\nA50,air-pruning,50,2022-01-10,9\n"},
		"wishes": {"sowings.csv": head, "wishes.csv": "crop,plants,planned\nonion,900,2026-04-10\nleek,400,2026-05-20\n"},
	} {
		if _, problems := load(files); len(problems) > 0 {
			t.Errorf("%s: %v", name, problems)
		}
	}
}
