package records

import (
	"bytes"
	"fmt"
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"
)

// largeBook is a book whose counts are more than is kept in memory while it is checked:
// the batch of the last count is not there, and its row stands behind one of two lines.
func largeBook(t *testing.T) fstest.MapFS {
	t.Helper()
	var counts bytes.Buffer
	counts.WriteString("note,batch,date,emerged\n" + strings.Repeat("é,A,2025-03-10,20\n", 3) + "\"two\nlines\",A,2025-03-11,21\n")
	for n := 0; counts.Len() < largeLog; n++ {
		fmt.Fprintf(&counts, "%d é,A,2025-03-12,40\n", n)
	}
	counts.WriteString("été,B,2025-03-12,40\n")
	return fstest.MapFS{
		"sowings.csv": {Data: []byte("batch,sown,crop,variety,tray,trays\nA,2025-03-01,kale,X,T,1\n")},
		"counts.csv":  {Data: counts.Bytes()},
	}
}

// Where a cell of a large log stands is told as of a small one, though its text is not
// kept: line and column in the file, row and column in a spreadsheet.
func TestPlacesInLargeLog(t *testing.T) {
	book := largeBook(t)
	lines := strings.Count(string(book["counts.csv"].Data), "\n")
	_, problems := Load(book)
	want := fmt.Sprintf(`counts.csv:%d:5: B%d: batch "B" is not in sowings.csv`, lines, lines-1)
	if len(problems) != 1 || !strings.HasPrefix(problems[0].String(), want) {
		t.Errorf("got %v, want %s", problems, want)
	}
}

// changing is a folder in which a file is another one each time it is read.
type changing struct {
	fstest.MapFS
	then []byte
	read *int
}

func (c changing) Open(name string) (fs.File, error) {
	if name == "counts.csv" {
		if *c.read++; *c.read > 2 { // its size is asked for before
			return fstest.MapFS{name: {Data: c.then}}.Open(name)
		}
	}
	return c.MapFS.Open(name)
}

// A log that is saved anew while it is checked is told by its lines alone.
func TestLargeLogChangesWhileRead(t *testing.T) {
	book := largeBook(t)
	size := len(book["counts.csv"].Data)
	for name, then := range map[string][]byte{"gone": nil, "shorter": []byte("batch\n"), "unlike": []byte(strings.Repeat("\"", size))} {
		_, problems := Load(changing{book, then, new(int)})
		if len(problems) != 1 || !strings.HasPrefix(problems[0].String(), "counts.csv:") || !strings.Contains(problems[0].Found, "is not in sowings.csv") {
			t.Errorf("%s: %v", name, problems)
		}
	}
}
