package report

import (
	"testing"

	"traybook/records"
)

// A book with nothing in it has no figure and no fault.
func TestEmptyBook(t *testing.T) {
	r, err := New(&records.Book{}, nil, Options{})
	if err != nil || len(r.Batches)+len(r.Emergence)+len(r.Week) > 0 {
		t.Fatalf("got %+v, %v", r, err)
	}
	if _, err := New(&records.Book{}, nil, Options{Season: 2031}); err == nil {
		t.Error("a season without sowings was reviewed")
	}
}
