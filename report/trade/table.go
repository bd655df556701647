package trade

import (
	"embed"
	"encoding/csv"
	"fmt"
	"strconv"

	"traybook/records"
)

//go:embed *.csv
var tables embed.FS

// row is a row of an embedded table, by column.
type row map[string]string

// read returns an embedded table. The tables are part of the program and checked by its tests: one that cannot be
// read is a fault of the program.
func read(name string) []row {
	file, err := tables.Open(name)
	if err != nil {
		panic(fmt.Sprintf("trade: %v", err))
	}
	defer file.Close()
	lines, err := csv.NewReader(file).ReadAll()
	if err != nil {
		panic(fmt.Sprintf("trade: %s: %v", name, err))
	}
	rows := make([]row, 0, len(lines)-1)
	for _, line := range lines[1:] {
		r := row{}
		for i, column := range lines[0] {
			r[column] = line[i]
		}
		rows = append(rows, r)
	}
	return rows
}

// number reads a cell; a blank is unknown.
func (r row) number(column string) records.Maybe[float64] {
	cell := r[column]
	if cell == "" {
		return records.Maybe[float64]{}
	}
	value, err := strconv.ParseFloat(cell, 64)
	if err != nil {
		panic(fmt.Sprintf("trade: column %s: %v", column, err))
	}
	return records.Known(value)
}
