package templates

import "html/template"

// Write writes the table into the page, as that of rows does, every column in step: where
// one cell of a column has something smaller beside its value, each has the room for it.
func (t *table) Write() template.HTML {
	t.inStep()
	w := t.page
	w.put("\n", `<div class="scroll" tabindex="0" role="region" aria-labelledby="`, t.ID, `-caption">`, "\n",
		`<table class="tab" id="`, t.ID, `">`, "\n", `<caption id="`, t.ID, `-caption"><span>`, string(t.Caption), "</span></caption>\n<thead>\n<tr>")
	for _, c := range t.Columns {
		w.put(`<th scope="col"`)
		w.attribute("class", c.Classes())
		w.put(">")
		w.escaped(c.Head)
		w.put("</th>")
	}
	w.put("</tr>\n</thead>")
	for _, body := range t.Bodies {
		w.put("\n<tbody>")
		for _, r := range body.Rows {
			r.write(w)
		}
		w.put("\n</tbody>")
	}
	w.put("\n</table>\n</div>")
	t.writeUnder(w)
	return ""
}

// writeUnder writes what stands under a table: remarks, and where it is as data.
func (t *table) writeUnder(w *pen) {
	if len(t.Notes) == 0 && t.Data == "" {
		return
	}
	w.put("\n", `<div class="under">`)
	for _, n := range t.Notes {
		w.put("\n<p>", string(n), "</p>")
	}
	if t.Data != "" {
		what := "this table as data"
		if t.Summed {
			what = "the rows that these numbers add up"
		}
		w.put("\n", `<p class="data"><a href="`, t.Data, `">`, t.File, "</a>: ", what, "</p>")
	}
	w.put("\n</div>")
}

// write writes a row.
func (r row) write(w *pen) {
	w.put("\n<tr")
	w.attribute("id", r.ID)
	w.put(">")
	for i, c := range r.Cells {
		c.write(w, i == 0)
	}
	w.put("</tr>")
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
