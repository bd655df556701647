package main

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"traybook/records"
)

// hostileBooks are the worst that a book may hold, as far as it is built in passing; each
// with what must be said of it, if anything.
func hostileBooks() map[string]struct {
	files map[string]string
	said  string
} {
	const sowings, trays = "batch,sown,crop,variety,tray,trays\nA,2025-03-03,lettuce,Fenwimple,A50,2\n", "tray,kind,cells\nA50,air-pruning,50\n"
	rows := func(head string, n int, row func(i int) string) string {
		var s strings.Builder
		s.WriteString(head)
		for i := range n {
			s.WriteString(row(i) + "\n")
		}
		return s.String()
	}
	day := func(i int) string { return (records.NewDate(2025, 1, 1) + records.Date(i)).String() }
	most := "999999999999999"
	return map[string]struct {
		files map[string]string
		said  string
	}{
		"the largest numbers": {map[string]string{
			"sowings.csv": rows("batch,sown,crop,variety,tray,trays,cells,seeds_per_cell,wanted,plants_out,set_out\n", 12, func(i int) string {
				return fmt.Sprintf("B%d,2025-03-03,kale,F%d,A50,10000,10000000,10000000,10000000,10000000,2025-04-03", i, i%3)
			}),
			"trays.csv":  "tray,kind,cells,bought,count,price,lasts,uses,minutes,places\nA50,air,10000000,2025-01-01,10000000,10000000," + most + "," + most + "," + most + ",20\n",
			"wishes.csv": "crop,plants,planned\nkale,10000000,2026-01-01\n",
			"book.csv":   "setting,value\nwage," + most + "\nbench_places,0.000000000000001\nconfidence,99.9\n",
			"costs.csv":  "date,category,hours,quantity\n2025-03-03,labour," + most + "," + most + "\n",
		}, "no more than 30 is expected"},
		"years 1 and 9999": {map[string]string{
			"sowings.csv": sowings + "B,0001-01-01,lettuce,Fen,A50,1\nC,9999-12-31,lettuce,Fen,A50,1\nD,1980-01-01,lettuce,Fen,A50,1\n", "trays.csv": trays,
			"costs.csv": "date,from,until,category,amount\n2025-12-31,1980-01-01,2025-12-31,heat,1000\n", "house.csv": "date,low,high\n9999-12-31,1,2\n1980-01-01,1,2\n",
		}, `read "0001-01-01"`},
		"thirty seasons by one slip": {map[string]string{"sowings.csv": sowings + "B,1995-03-03,lettuce,Fen,A50,1\n", "trays.csv": trays,
			"costs.csv": rows("date,from,until,category,amount\n", 50, func(int) string { return "2025-12-31,1995-01-01,2025-12-31,heat,1000" })}, "a period of 11323 days"},
		"a batch of many counts": {map[string]string{"sowings.csv": sowings, "trays.csv": trays,
			"counts.csv": rows("batch,date,emerged\n", 20_000, func(i int) string { return fmt.Sprintf("A,%s,%d", day(62+i%90), i%100) })}, "cell for cell"},
		"a day of many sowings": {map[string]string{"trays.csv": trays,
			"sowings.csv": rows("batch,sown,crop,variety,tray,trays\n", 3000, func(i int) string { return fmt.Sprintf("B%d,2025-03-03,lettuce,Fen,A50,1", i) })}, ""},
		"a long line of batches": {map[string]string{"trays.csv": trays, "sowings.csv": rows("batch,sown,crop,variety,tray,trays,from\n", 2000, func(i int) string {
			return fmt.Sprintf("B%d,%s,lettuce,Fen,A50,1,%s", i, day(i), strings.TrimSuffix(fmt.Sprintf("B%d", i-1), "B-1"))
		})}, ""},
		"a ring of batches": {map[string]string{"trays.csv": trays, "sowings.csv": "batch,sown,crop,variety,tray,trays,from\nA,2025-03-03,l,F,A50,1,B\nB,2025-03-03,l,F,A50,1,A\nC,2025-03-03,l,F,A50,1,C\nD,2025-03-03,l,F,A50,1,\n"},
			"a batch sown before this one is expected"},
		"a code for each batch": {map[string]string{
			"sowings.csv": rows("batch,sown,crop,variety,tray,trays\n", 300, func(i int) string { return fmt.Sprintf("B%d,2025-03-03,lettuce,Fen,T%d,1", i, i) }),
			"trays.csv":   rows("tray,kind,cells,bought,count,price\n", 300, func(i int) string { return fmt.Sprintf("T%d,k%d,50,2025-01-01,5,3", i, i) })}, ""},
	}
}

// The worst of books are built, without a fault and without a number that is none, and what
// is odd in them is said.
func TestHardWearOfHostileBooks(t *testing.T) {
	for name, c := range hostileBooks() {
		book := fstest.MapFS{}
		for file, text := range c.files {
			book[file] = &fstest.MapFile{Data: []byte(text)}
		}
		_, problems := records.Load(book)
		said := c.said == ""
		for _, p := range problems {
			said = said || strings.Contains(p.String(), c.said)
		}
		if !said || c.said == "" && len(problems) > 0 {
			t.Errorf("%s: %v, want %q", name, problems[:min(len(problems), 5)], c.said)
		}
		buildMutated(t, book, name, 0)
	}
}
