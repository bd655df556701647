package templates

import "html/template"

// A table of thousands of rows is written here, straight into its page, not cell by cell
// through html/template, which takes ten times as long and copies all of it three times.
// What it holds is HTML made by say or a pen, or a class, an id or an address of ours.

// Write writes the table into the page behind what html/template has written of it, so that
// nothing is left for that to write.
func (t *rows) Write() template.HTML {
	w := t.page
	w.put("\n<table class=\"rows ", t.Class, ` stk" id="`, t.ID, `"><caption>`, string(t.Caption), "</caption>\n")
	t.writeHead(w)
	for _, g := range t.Groups {
		t.writeGroup(w, g)
	}
	w.put("\n</table>")
	if len(t.Notes) == 0 && t.Data == "" {
		return ""
	}
	w.put("\n", `<div class="under">`)
	for _, n := range t.Notes {
		w.put(`<p class="nt">`, string(n), "</p>")
	}
	if t.Data != "" {
		w.put(`<p class="nt">As data: <a href="`, t.Data, `">`, t.File, "</a></p>")
	}
	w.put("</div>")
	return ""
}

// writeHead writes the columns: their widths, then their heads.
func (t *rows) writeHead(w *pen) {
	w.put("<colgroup>")
	for _, c := range t.Cols {
		w.put("<col")
		w.attribute("class", c.Width)
		w.put(">")
	}
	w.put("</colgroup>\n<thead><tr>")
	for _, c := range t.Cols {
		w.put(`<th scope="col"`)
		w.attribute("class", c.Class)
		w.put("><span")
		if c.Quiet {
			w.put(` class="vh"`)
		}
		w.put(">", string(c.Head), "</span>", string(c.Axis), "</th>")
	}
	w.put("</tr></thead>")
}

// writeGroup writes a group of rows, under its line where it has one.
func (t *rows) writeGroup(w *pen, g rowGroup) {
	w.put("\n<tbody")
	w.attribute("class", g.Class)
	w.put(">")
	if g.Sub != "" {
		w.put(`<tr class="sub"><th scope="rowgroup" colspan="`)
		w.whole(len(t.Cols))
		w.put(`">`, string(g.Sub), `</th></tr>`)
	}
	for _, r := range g.Rows {
		t.writeRow(w, r)
	}
	w.put("\n</tbody>")
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
