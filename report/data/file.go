package data

import (
	"bytes"
	"encoding/csv"
	"slices"
)

// File is one data file: Name without folder or ending, column names, rows of
// as many cells. The first Keys columns tell the rows apart and order them.
type File struct {
	Name    string
	Keys    int
	Columns []string
	Rows    [][]Cell
}

// CSV writes the file: UTF-8, RFC 4180, comma, point, CRLF.
func (f File) CSV() ([]byte, error) {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.UseCRLF = true
	if err := w.Write(f.Columns); err != nil {
		return nil, err
	}
	line := make([]string, len(f.Columns))
	for _, row := range f.Rows {
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

// table sets rows out under columns and sorts them by the key columns.
func table[T any](name string, keys int, rows []T, columns ...column[T]) File {
	f := File{Name: name, Keys: keys}
	for _, c := range columns {
		f.Columns = append(f.Columns, c.name)
	}
	for _, r := range rows {
		line := make([]Cell, len(columns))
		for i, c := range columns {
			line[i] = c.cell(r)
		}
		f.Rows = append(f.Rows, line)
	}
	slices.SortStableFunc(f.Rows, func(a, b []Cell) int {
		return slices.CompareFunc(a[:keys], b[:keys], compare)
	})
	return f
}

// join puts columns of several makers into one list.
func join[T any](lists ...[]column[T]) []column[T] { return slices.Concat(lists...) }

// withBatches keeps the rows that rest on any batch at all.
func withBatches[T any](rows []T, batches func(T) int) []T {
	return slices.DeleteFunc(slices.Clone(rows), func(r T) bool { return batches(r) == 0 })
}
