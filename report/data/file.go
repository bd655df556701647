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
	line := make([]string, len(f.Columns))
	for row := range f.Rows() {
		for i, c := range row {
			line[i] = c.csv()
		}
		if err := w.Write(line); err != nil {
			return nil, err
		}
	}
	w.Flush()
	return b.Bytes(), w.Error()
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
