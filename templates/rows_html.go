package templates

import (
	"html/template"
	"strings"
)

// A table of thousands of rows is written here, in one string, not cell by cell through
// html/template, which takes ten times as long. All that it holds is HTML made by say,
// or a class or an id of ours.

// Body is the groups of rows as HTML.
func (t *rows) Body() template.HTML {
	var b strings.Builder
	b.Grow(t.size())
	for _, g := range t.Groups {
		b.WriteString("\n<tbody")
		attribute(&b, "class", g.Class)
		b.WriteString(">")
		if g.Sub != "" {
			put(&b, `<tr class="sub"><th scope="rowgroup" colspan="`, len(t.Cols), `">`, g.Sub, `</th></tr>`)
		}
		for _, r := range g.Rows {
			t.writeRow(&b, r)
		}
		b.WriteString("\n</tbody>")
	}
	return template.HTML(b.String())
}

// writeRow writes one row; its first cell names it.
func (t *rows) writeRow(b *strings.Builder, r rowOf) {
	b.WriteString("\n<tr")
	attribute(b, "id", r.ID)
	attribute(b, "class", r.Class)
	b.WriteString(">")
	for i, c := range r.Cells {
		if i == 0 {
			b.WriteString(`<th scope="row">`)
			b.WriteString(string(c))
			b.WriteString(`</th>`)
			continue
		}
		b.WriteString("<td")
		attribute(b, "class", t.ClassOf(i))
		b.WriteByte('>')
		b.WriteString(string(c))
		b.WriteString("</td>")
	}
	b.WriteString("</tr>")
}

// Body is the bodies of rows as HTML, every column in step: where one cell of a column
// has something smaller beside its value, each has the room for it.
func (t *table) Body() template.HTML {
	t.inStep()
	var b strings.Builder
	b.Grow(t.size())
	for _, body := range t.Bodies {
		b.WriteString("\n<tbody>")
		for _, r := range body.Rows {
			b.WriteString("\n<tr")
			attribute(&b, "id", r.ID)
			b.WriteString(">")
			for i, c := range r.Cells {
				c.write(&b, i == 0)
			}
			b.WriteString("</tr>")
		}
		b.WriteString("\n</tbody>")
	}
	return template.HTML(b.String())
}

// write writes a cell; the first of a row names it.
func (c cell) write(b *strings.Builder, first bool) {
	end := "</td>"
	if first {
		b.WriteString(`<th scope="row"`)
		end = "</th>"
	} else {
		b.WriteString("<td")
	}
	attribute(b, "class", c.Classes())
	put(b, ">", c.Value)
	if c.Room != "" || c.Sub != "" {
		put(b, ` <span class="sub2">`, c.Sub, `</span>`)
	}
	b.WriteString(end)
}

// attribute writes an attribute that has a value.
func attribute(b *strings.Builder, name, value string) {
	if value != "" {
		b.WriteByte(' ')
		b.WriteString(name)
		b.WriteString(`="`)
		escape(b, value)
		b.WriteByte('"')
	}
}

// put writes markup of ours and HTML one after the other.
func put(b *strings.Builder, parts ...any) {
	for _, p := range parts {
		if s, ok := p.(string); ok {
			b.WriteString(s)
			continue
		}
		writeMarkup(b, p)
	}
}
