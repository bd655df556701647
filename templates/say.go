package templates

import (
	"fmt"
	"html/template"
	"strings"
)

// name is untrusted text that may run in another direction than the sentence
// around it: a crop, a variety, a batch code. say sets it apart with bdi.
type name string

// say fills a sentence of ours. Every argument is escaped, names are isolated,
// and only HTML made here passes as it is. The format is ours, never the book's.
func say(format string, args ...any) template.HTML {
	escaped := make([]any, len(args))
	for i, a := range args {
		escaped[i] = string(markup(a))
	}
	return template.HTML(fmt.Sprintf(format, escaped...))
}

// markup is any value as HTML.
func markup(a any) template.HTML {
	switch a := a.(type) {
	case template.HTML:
		return a
	case name:
		return template.HTML("<bdi>" + template.HTMLEscapeString(string(a)) + "</bdi>")
	default:
		return template.HTML(template.HTMLEscapeString(fmt.Sprint(a)))
	}
}

// batchCode is the code of a batch, which no line's end breaks.
func batchCode(code string) template.HTML {
	return template.HTML(`<bdi class="code">` + template.HTMLEscapeString(code) + "</bdi>")
}

// list joins parts as a sentence does: a, b and c.
func list[T any](parts []T) template.HTML {
	var b strings.Builder
	for i, p := range parts {
		switch {
		case i == 0:
		case i == len(parts)-1:
			b.WriteString(" and ")
		default:
			b.WriteString(", ")
		}
		b.WriteString(string(markup(p)))
	}
	return template.HTML(b.String())
}

// join puts sentences after one another, leaving out empty ones.
func join(parts ...template.HTML) template.HTML {
	var kept []string
	for _, p := range parts {
		if p != "" {
			kept = append(kept, string(p))
		}
	}
	return template.HTML(strings.Join(kept, " "))
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

// capital writes the first letter of a word of ours large.
func capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}
