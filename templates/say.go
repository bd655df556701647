package templates

import (
	"fmt"
	"html/template"
	"strings"
	"unicode"
	"unicode/utf8"

	"traybook/report/words"
)

// name is untrusted text that may run in another direction than the sentence
// around it: a crop, a variety, a batch code. say sets it apart with bdi.
type name string

// say fills a sentence of ours: each %s with the next argument, %% with a percent sign.
// Every argument is escaped, names are isolated, and only HTML made here passes as it
// is. The format is ours, never the book's. Pages are made of little else, so it goes
// over the format once and knows no other verb.
func say(format string, args ...any) template.HTML {
	if len(args) == 0 && !strings.Contains(format, "%") {
		return template.HTML(format)
	}
	var b strings.Builder
	b.Grow(len(format) + sizeOfAll(args))
	for {
		i := strings.IndexByte(format, '%')
		if i < 0 || i+1 == len(format) {
			break
		}
		b.WriteString(format[:i])
		switch verb := format[i+1]; {
		case verb == '%':
			b.WriteByte('%')
		case verb != 's' || len(args) == 0:
			b.WriteString(badFormat)
		default:
			writeMarkup(&b, args[0])
			args = args[1:]
		}
		format = format[i+2:]
	}
	b.WriteString(format)
	if len(args) > 0 {
		b.WriteString(badFormat)
	}
	return template.HTML(b.String())
}

// sizeOfAll is about how many bytes values take as HTML: exactly, where they are HTML and
// hence may be long.
func sizeOfAll(values []any) (n int) {
	for _, v := range values {
		switch v := v.(type) {
		case template.HTML:
			n += len(v)
		case name:
			n += len("<bdi></bdi>") + len(v)
		case string:
			n += len(v)
		default:
			n += 16
		}
	}
	return n
}

// badFormat stands where a sentence and its arguments do not fit; no page may hold it.
const badFormat = "%!(NOARG)"

// markup is any value as HTML.
func markup(a any) template.HTML {
	if h, ok := a.(template.HTML); ok {
		return h
	}
	var b strings.Builder
	writeMarkup(&b, a)
	return template.HTML(b.String())
}

// writeMarkup writes any value as HTML.
func writeMarkup(b *strings.Builder, a any) {
	switch a := a.(type) {
	case template.HTML:
		b.WriteString(string(a))
	case name:
		b.WriteString("<bdi>")
		escape(b, string(a))
		b.WriteString("</bdi>")
	case string:
		escape(b, a)
	default:
		escape(b, fmt.Sprint(a))
	}
}

// escape writes text as HTML; most of it holds nothing to escape.
func escape(b *strings.Builder, s string) {
	if !safe(s) {
		s = template.HTMLEscapeString(s)
	}
	b.WriteString(s)
}

// batchCode is the code of a batch, which no line's end breaks.
func batchCode(code string) template.HTML {
	return template.HTML(`<bdi class="code">` + template.HTMLEscapeString(code) + "</bdi>")
}

// list joins parts as a sentence does: a, b and c.
func list[T any](parts []T) template.HTML {
	var b strings.Builder
	for i, p := range parts {
		b.WriteString(between(i, len(parts)))
		writeMarkup(&b, p)
	}
	return template.HTML(b.String())
}

// between is what stands before the part at i of n in a sentence.
func between(i, n int) string {
	switch i {
	case 0:
		return ""
	case n - 1:
		return " and "
	}
	return ", "
}

// listSome is list of the first, and how many more there are.
func listSome[T any](parts []T, most int) template.HTML {
	if len(parts) <= most {
		return list(parts)
	}
	some := make([]template.HTML, most, most+1)
	for i, p := range parts[:most] {
		some[i] = markup(p)
	}
	return list(append(some, say("%s more", words.Whole(len(parts)-most))))
}

// mostInList is how many things a sentence names.
const mostInList = 150

// join puts sentences after one another, leaving out empty ones.
func join(parts ...template.HTML) template.HTML {
	var b strings.Builder
	for _, p := range parts {
		if p != "" && b.Len() > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(string(p))
	}
	return template.HTML(b.String())
}

// sentence makes a sentence of words: a capital first, a full stop last.
func sentence(s string) string { return capital(stopped(s)) }

// stopped ends words of ours with a full stop.
func stopped(s string) string {
	if s == "" || strings.HasSuffix(s, ".") {
		return s
	}
	return s + "."
}

// capital writes the first letter large, of a crop too, whose name may begin with any: é.
func capital(s string) string {
	first, size := utf8.DecodeRuneInString(s)
	if large := unicode.ToUpper(first); large != first {
		return string(large) + s[size:]
	}
	return s
}
