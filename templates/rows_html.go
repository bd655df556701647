package templates

import "html/template"

// A table of thousands of rows is written here, straight into its page, not cell by cell
// through html/template, which takes ten times as long and copies all of it three times.
// What it holds is HTML made by say or a pen, or a class or an id of ours.

// Body writes the groups of rows into the page behind what html/template has written of it,
// so that nothing is left for that to write.
func (t *rows) Body() template.HTML {
	for _, g := range t.Groups {
		t.page.put("\n<tbody")
		t.page.attribute("class", g.Class)
		t.page.put(">")
		if g.Sub != "" {
			t.page.put(`<tr class="sub"><th scope="rowgroup" colspan="`)
			t.page.whole(len(t.Cols))
			t.page.put(`">`, string(g.Sub), `</th></tr>`)
		}
		for _, r := range g.Rows {
			t.writeRow(t.page, r)
		}
		t.page.put("\n</tbody>")
	}
	return ""
}

// writeRow writes one row; its first cell names it.
func (t *rows) writeRow(w *pen, r rowOf) {
	w.put("\n<tr")
	w.attribute("id", r.ID)
	w.attribute("class", r.Class)
	w.put(">")
	for i, c := range r.Cells {
		if i == 0 {
			w.put(`<th scope="row">`, string(c), `</th>`)
			continue
		}
		w.put("<td")
		w.attribute("class", t.ClassOf(i))
		w.put(">", string(c), "</td>")
	}
	w.put("</tr>")
}

// Body writes the bodies of rows into the page, as that of rows does, every column in step:
// where one cell of a column has something smaller beside its value, each has the room for
// it.
func (t *table) Body() template.HTML {
	t.inStep()
	for _, body := range t.Bodies {
		t.page.put("\n<tbody>")
		for _, r := range body.Rows {
			t.page.put("\n<tr")
			t.page.attribute("id", r.ID)
			t.page.put(">")
			for i, c := range r.Cells {
				c.write(t.page, i == 0)
			}
			t.page.put("</tr>")
		}
		t.page.put("\n</tbody>")
	}
	return ""
}

// write writes a cell; the first of a row names it.
func (c cell) write(w *pen, first bool) {
	end := "</td>"
	if first {
		w.put(`<th scope="row"`)
		end = "</th>"
	} else {
		w.put("<td")
	}
	w.attribute("class", c.Classes())
	w.put(">", string(c.Value))
	if c.Room != "" || c.Sub != "" {
		w.put(` <span class="sub2">`, string(c.Sub), `</span>`)
	}
	w.put(end)
}
