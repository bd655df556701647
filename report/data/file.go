package data

import (
	"bytes"
	"encoding/csv"
	"iter"
	"slices"
)

// File is one data file: Name without folder or ending, column names, rows of
// as many cells. The first Keys columns tell the rows apart and order them.
type File struct {
	Name    string
	Keys    int
	Columns []string
	Len     int // rows

	row func(i int, cells []Cell) // fills in row number i, from 0
}

// Rows gives the rows in order. Cells are made row by row, in a slice that the next row
// takes over: a table of 100,000 rows would be larger than all that it is made of.
func (f File) Rows() iter.Seq[[]Cell] {
	return func(yield func([]Cell) bool) {
		cells := make([]Cell, len(f.Columns))
		for i := range f.Len {
			if f.row(i, cells); !yield(cells) {
				return
			}
		}
	}
}

// CSV writes the file: UTF-8, RFC 4180, comma, point, CRLF. Figures are written in full,
// with a point, whatever the book's own sign is: a file is read by programs, and what a
// page rounds is found again here. Text is guarded against being read as a formula.
func (f File) CSV() ([]byte, error) {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.UseCRLF = true
	if err := w.Write(f.Columns); err != nil {
		return nil, err
	}
	line, done := newLine(len(f.Columns)), 0
	for row := range f.Rows() {
		if err := w.Write(line.of(row)); err != nil {
			return nil, err
		}
		if done++; done == tellingRows {
			w.Flush()
			b.Grow(b.Len() / tellingRows * (f.Len - done) * 17 / 16)
		}
	}
	w.Flush()
	return b.Bytes(), w.Error()
}

// tellingRows is how many rows tell how long a file will be: memory for the rest, and a
// sixteenth more, is then taken at once and not again and again as the file grows.
const tellingRows = 64

// line is the cells of a row as they are written. All numbers of a row share one string.
type line struct {
	cells   []string
	numbers []byte
	ends    []int // of the numbers, by cell
}

func newLine(columns int) *line {
	return &line{cells: make([]string, columns), ends: make([]int, columns)}
}

// of is the row as text, in a slice that the next row takes over.
func (l *line) of(row []Cell) []string {
	l.numbers = l.numbers[:0]
	for i, c := range row {
		l.numbers = c.appendNumber(l.numbers)
		l.ends[i] = len(l.numbers)
	}
	numbers, from := string(l.numbers), 0
	for i, c := range row {
		if c.kind == number {
			l.cells[i] = numbers[from:l.ends[i]]
		} else {
			l.cells[i] = c.guarded()
		}
		from = l.ends[i]
	}
	return l.cells
}

// column is a name and what stands under it.
type column[T any] struct {
	name string
	cell func(T) Cell
}

// table sets rows out under columns, in the order of the key columns.
func table[T any](name string, keys int, rows []T, columns ...column[T]) File {
	f := File{Name: name, Keys: keys, Len: len(rows)}
	for _, c := range columns {
		f.Columns = append(f.Columns, c.name)
	}
	order := inOrder(rows, columns[:keys])
	f.row = func(i int, cells []Cell) {
		for j, c := range columns {
			cells[j] = c.cell(rows[order[i]])
		}
	}
	return f
}

// inOrder is the numbers of the rows, sorted by what stands under the key columns; rows
// with equal keys keep their order.
func inOrder[T any](rows []T, keys []column[T]) []int {
	order, cells := make([]int, len(rows)), make([]Cell, len(rows)*len(keys))
	of := func(i int) []Cell { return cells[i*len(keys) : (i+1)*len(keys)] }
	for i, r := range rows {
		order[i] = i
		for j, c := range keys {
			of(i)[j] = c.cell(r)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int { return slices.CompareFunc(of(a), of(b), compare) })
	return order
}

// join puts columns of several makers into one list. Tables by group share their first
// columns, and rates their last.
func join[T any](lists ...[]column[T]) []column[T] { return slices.Concat(lists...) }

// withBatches keeps the rows that rest on any batch at all. A group may exist in a room
// for the sake of another of its figures; here a row of nothing would only look like a 0.
func withBatches[T any](rows []T, batches func(T) int) []T {
	return slices.DeleteFunc(slices.Clone(rows), func(r T) bool { return batches(r) == 0 })
}
