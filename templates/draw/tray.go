package draw

import (
	"fmt"
	"html/template"
	"math"
	"strings"
)

// Tray draws a tray of cells of which some hold a seedling, column by column; title
// says so in words. cells is at least 1.
func Tray(id, title string, cells, filled int) template.HTML {
	rows := trayRows(cells)
	columns := (cells + rows - 1) / rows
	const side = 15
	width, height := columns*side, rows*side
	var b strings.Builder
	fmt.Fprintf(&b, `<svg class="tray" viewBox="-3 -3 %d %d" role="img" aria-labelledby="%s"><title id="%s">%s</title>`,
		width+6, height+6, id, id, template.HTMLEscapeString(title))
	b.WriteString(`<defs><pattern id="cu" width="15" height="15" patternUnits="userSpaceOnUse"><rect class="cu" x="1.5" y="1.5" width="12" height="12" rx="2.5"/></pattern>` +
		`<pattern id="ce" width="15" height="15" patternUnits="userSpaceOnUse"><rect class="ce" x="2" y="2" width="11" height="11" rx="2"/></pattern></defs>`)
	block := func(first, n int, pattern string) {
		for n > 0 {
			column, row := first/rows, first%rows
			take, wide := min(n, rows-row), 1
			if row == 0 && n >= rows {
				wide = n / rows
				take = rows
			}
			fmt.Fprintf(&b, `<rect x="%d" y="%d" width="%d" height="%d" fill="url(#%s)"/>`, column*side, row*side, wide*side, take*side, pattern)
			first, n = first+wide*take, n-wide*take
		}
	}
	filled = min(max(filled, 0), cells)
	block(0, filled, "cu")
	block(filled, cells-filled, "ce")
	b.WriteString(`</svg>`)
	return template.HTML(b.String())
}

// trayRows lays cells out about twice as wide as high, in whole columns where that
// can be had: 128 cells are 16 columns of 8, 72 are 12 of 6.
func trayRows(cells int) int {
	best := int(math.Max(1, math.Round(math.Sqrt(float64(cells)/2))))
	for r := best; r >= max(best-2, 1); r-- {
		if cells%r == 0 {
			return r
		}
	}
	return best
}
