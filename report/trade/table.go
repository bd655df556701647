package trade

import (
	"embed"
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"

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

// key is a crop's name as it is compared: without case and outer spaces.
func key(name string) string { return strings.ToLower(strings.TrimSpace(name)) }

// beforeParenthesis is the part of a name before a parenthesis: melon of "melon (muskmelon)".
func beforeParenthesis(name string) string {
	before, _, _ := strings.Cut(name, "(")
	return before
}

// byName keeps the rows by key, and by the part of the name before a parenthesis where no other row has it whole.
func byName[T any](name func(T) string, all []T) map[string]T {
	found := map[string]T{}
	for _, one := range all {
		found[key(beforeParenthesis(name(one)))] = one
	}
	for _, one := range all {
		found[key(name(one))] = one
	}
	return found
}
