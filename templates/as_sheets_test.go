package templates

import (
	"strings"
	"testing"
)

// Sentences name sheets; addresses, values of the logs, links to data files, a note and a
// style stay as they are, whatever is cut off.
func TestAsSheets(t *testing.T) {
	for in, want := range map[string]string{
		"into sowings.csv, or rows into out.csv":              "into sheet sowings, or rows into sheet out",
		`<code>lots.csv</code> and <b title="lots.csv">x</b>`: `<code>sheet lots</code> and <b title="lots.csv">x</b>`,
		`<a href="../data/lots.csv">lots.csv</a>: book.csv`:   `<a href="../data/lots.csv">lots.csv</a>: sheet book`,
		`<a href="missing.html">trays.csv</a>`:                `<a href="missing.html">sheet trays</a>`,
		`<bdi class="code">out.csv</bdi>, out.csv`:            `<bdi class="code">out.csv</bdi>, sheet out`,
		`<style>out.csv</style>` + "costs.csv":                `<style>out.csv</style>` + "sheet costs",
		noteStart + "<p>my out.csv</p></div>" + noteEnd + "x": noteStart + "<p>my out.csv</p></div>" + noteEnd + "x",
		"emergence.csv and cost.csv are data":                 "emergence.csv and cost.csv are data",
		"<bdi>out.csv":                                        "<bdi>out.csv",
		"<a href=":                                            "<a href=",
		"":                                                    "",
	} {
		if got := string(asSheets([]byte(in))); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
	page, err := files.ReadFile("html/index.html")
	if err != nil || !strings.Contains(string(page), noteStart) || !strings.Contains(string(page), noteEnd) {
		t.Errorf("the page opens and closes a note otherwise: %v", err)
	}
}
