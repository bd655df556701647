package templates

import (
	"html/template"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"traybook/report/words"
)

// written is what a pen wrote.
func written(write func(*pen)) string {
	w := pen{out: []byte("before")}
	write(&w)
	return string(w.out[len("before"):])
}

// executed is text as html/template writes it into an element.
func executed(s string) string {
	var out strings.Builder
	if err := template.Must(template.New("").Parse("<p>{{.}}")).Execute(&out, s); err != nil {
		return err.Error()
	}
	return strings.TrimPrefix(out.String(), "<p>")
}

// Whatever a log holds, a pen writes it as html/template would, and a name as say does.
func TestPenEscapes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.OneOf(rapid.String(), rapid.StringMatching(`[ab+<>&'"\x00]*`)).Draw(t, "text")
		for _, c := range []struct{ got, want string }{
			{written(func(w *pen) { w.text(s) }), template.HTMLEscapeString(s)},
			{written(func(w *pen) { w.name(s) }), string(say("%s", name(s)))},
			{written(func(w *pen) { w.code(s) }), string(batchCode(s))},
			{written(func(w *pen) { w.escaped(s) }), executed(s)},
		} {
			if c.got != c.want {
				t.Errorf("%q: %q, want %q", s, c.got, c.want)
			}
		}
	})
}

// The currency is a word of the book.
func TestPenEscapesTheCurrency(t *testing.T) {
	for code, want := range map[string]string{"USD": "USD\u00a01,240.50", "<b>": "&lt;B&gt;\u00a01,240.50", "": "1,240.50"} {
		if got := written(func(w *pen) { w.amount(words.NewMoney(code).AppendSum, 1240.5) }); got != want {
			t.Errorf("in %q: %q, want %q", code, got, want)
		}
	}
}

// An empty note is no pair of quotes.
func TestPenNotes(t *testing.T) {
	if got := written(func(w *pen) { w.note("") }); got != "" {
		t.Errorf("no note is %q", got)
	}
	if got, want := written(func(w *pen) { w.note("wet & cold") }), "“<bdi>wet &amp; cold</bdi>”"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

// Pieces stay as they were cut when the pen goes on writing.
func TestPieces(t *testing.T) {
	var w inPieces
	piece := func(s string) { w.put(s); w.cut() }
	piece("a")
	piece("")
	piece("bc")
	first := w.pieces()
	piece("xyz")
	second := w.pieces()
	if !slices.Equal(first, []template.HTML{"a", "", "bc"}) || !slices.Equal(second, []template.HTML{"xyz"}) || len(w.pieces()) != 0 {
		t.Errorf("got %q, then %q", first, second)
	}
}

// A list is cut where its key changes, and nowhere else.
func TestRuns(t *testing.T) {
	got := runs([]int{1, 3, 2, 4, 5}, func(i int) bool { return i%2 == 0 })
	if want := [][]int{{1, 3}, {2, 4}, {5}}; !slices.EqualFunc(got, want, slices.Equal[[]int]) {
		t.Errorf("got %v, want %v", got, want)
	}
	if got := runs(nil, func(i int) int { return i }); got != nil {
		t.Errorf("of nothing: %v", got)
	}
}
