package templates

import (
	"html/template"
	"strings"

	"traybook/records"
	"traybook/report/words"
)

// pen writes HTML into one buffer. Say is easier to read; a pen is for what a large book has
// a hundred thousand of, where a string for every part of a sentence would cost more time
// than its words. What is untrusted goes through text, escaped, name, code, note or
// amount.
type pen struct{ out []byte }

// Write makes a pen what html/template writes into. It never fails.
func (w *pen) Write(html []byte) (int, error) {
	w.out = append(w.out, html...)
	return len(html), nil
}

// put writes HTML of ours as it is.
func (w *pen) put(parts ...string) {
	for _, s := range parts {
		w.out = append(w.out, s...)
	}
}

// html writes HTML made elsewhere.
func (w *pen) html(h template.HTML) { w.out = append(w.out, h...) }

// text writes any text, escaped.
func (w *pen) text(s string) {
	if safe(s) {
		w.out = append(w.out, s...)
	} else {
		w.out = append(w.out, template.HTMLEscapeString(s)...)
	}
}

// escaped writes text as html/template does: it escapes a plus too.
func (w *pen) escaped(s string) {
	for {
		before, after, plus := strings.Cut(s, "+")
		w.text(before)
		if !plus {
			return
		}
		w.put("&#43;")
		s = after
	}
}

// attribute writes an attribute that has a value.
func (w *pen) attribute(name, value string) {
	if value != "" {
		w.put(" ", name, `="`)
		w.text(value)
		w.put(`"`)
	}
}

// name writes a name set apart from the sentence around it, as say writes one.
func (w *pen) name(s string) {
	w.put("<bdi>")
	w.text(s)
	w.put("</bdi>")
}

// code writes the code of a batch, which no line's end breaks.
func (w *pen) code(s string) {
	w.put(`<bdi class="code">`)
	w.text(s)
	w.put("</bdi>")
}

// note writes a note of the grower's, in quotes; an empty one is none.
func (w *pen) note(s string) {
	if s != "" {
		w.put("“")
		w.name(s)
		w.put("”")
	}
}

// Numbers and days, as package words writes them.
func (w *pen) whole(n int)         { w.out = words.AppendWhole(w.out, n) }
func (w *pen) rounded(v float64)   { w.out = words.AppendFixed(w.out, v, 0) }
func (w *pen) number(v float64)    { w.out = words.AppendNumber(w.out, v) }
func (w *pen) percent(v float64)   { w.out = words.AppendPercent(w.out, v) }
func (w *pen) days(v float64)      { w.out = words.AppendDays(w.out, v) }
func (w *pen) date(d records.Date) { w.out = words.AppendLongDate(w.out, d) }
func (w *pen) plural(v float64, one, many string) {
	w.out = words.AppendPlural(w.out, v, one, many)
}

// amount writes money in a way of its writer, escaped: the currency is the book's word.
func (w *pen) amount(write func([]byte, float64) []byte, v float64) {
	from := len(w.out)
	w.out = write(w.out, v)
	if !safe(w.out[from:]) {
		written := string(w.out[from:])
		w.out = w.out[:from]
		w.text(written)
	}
}

// space sets what comes next apart from what was written since a place in the buffer;
// nothing where that is nothing.
func (w *pen) space(since int) {
	if len(w.out) > since {
		w.out = append(w.out, ' ')
	}
}

// safe reports whether text holds nothing to escape, as most of it does.
func safe[T string | []byte](s T) bool {
	for i := range len(s) {
		switch s[i] {
		case '<', '>', '&', '\'', '"', 0:
			return false
		}
	}
	return true
}

// inPieces is a pen whose text is cut into pieces, which share one string.
type inPieces struct {
	pen
	ends []int
}

// cut ends a piece.
func (w *inPieces) cut() { w.ends = append(w.ends, len(w.out)) }

// pieces are those since the last call.
func (w *inPieces) pieces() []template.HTML {
	all, from := template.HTML(w.out), 0
	pieces := make([]template.HTML, len(w.ends))
	for i, end := range w.ends {
		pieces[i], from = all[from:end], end
	}
	w.out, w.ends = w.out[:0], w.ends[:0]
	return pieces
}
