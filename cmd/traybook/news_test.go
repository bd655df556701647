package main

import (
	"slices"
	"testing"
	"testing/fstest"

	"traybook/records"
)

// After a save the log that was typed in is named and no other, be it a word beside a count
// or a name that the other logs come to hold after it.
func TestRowNews(t *testing.T) {
	book := func(lots, counts string) *records.Book {
		b, _ := records.Load(fstest.MapFS{
			"lots.csv":    {Data: []byte("lot,crop,variety\n" + lots + "L1,kale,Orl\n")},
			"sowings.csv": {Data: []byte("batch,sown,crop,variety,lot,tray,trays\nA,2025-03-01,kale,Orl,L1,T72,1\n")},
			"counts.csv":  {Data: []byte("batch,date,emerged,note\n" + counts)},
			"scores.csv":  {Data: []byte("batch,date,looked,usable\nA,2025-04-12,10,9\n")},
		})
		return b
	}
	before := book("", "A,2025-03-12,60,wet\n")
	for name, tt := range map[string]struct {
		now  *records.Book
		want []string
	}{
		"nothing":   {book("", "A,2025-03-12,60,wet\n"), nil},
		"a note":    {book("", "A,2025-03-12,60,dry\n"), []string{"counts changed"}},
		"a row":     {book("", "A,2025-03-12,60,wet\nA,2025-03-14,61,\n"), []string{"counts: 1 row more"}},
		"a new lot": {book("L0,leek,Ban\n", "A,2025-03-12,60,wet\n"), []string{"lots: 1 row more"}},
	} {
		if got := rowNews(before, tt.now); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", name, got, tt.want)
		}
	}
}
