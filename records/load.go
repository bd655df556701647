package records

import (
	"io/fs"
	"time"
)

func timeMonth(m int) time.Month { return time.Month(max(m, 1)) }

// Load reads a record book. The book holds every row without an error; the
// problems, sorted, are all that was found. A problem of severity Fatal means
// that nothing should be built.
func Load(folder fs.FS) (*Book, []Problem) {
	return &Book{}, nil
}
