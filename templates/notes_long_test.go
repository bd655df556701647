package templates

import (
	"fmt"
	"strings"
	"testing"

	"traybook/records"
)

// A note of a megabyte stands on pages below its season, all of it in order, no page larger
// than another; the review has the beginning and leads there.
func TestLongNotes(t *testing.T) {
	var months strings.Builder
	for i := range 130 {
		fmt.Fprintf(&months, "## Week %d\n\n", i+1)
		for j := range 40 {
			fmt.Fprintf(&months, "Said %d.%d: %s\n\n", i+1, j+1, strings.Repeat("dew & frost, ", 14))
		}
	}
	for name, tt := range map[string]struct {
		text         string
		begins, ends string // of the review's part of it
		said         int    // paragraphs that are told
		pages        int
	}{
		"weeks":       {months.String(), "Said 1.1:", "Said 1.40:", 130 * 40, 6},
		"no headings": {strings.ReplaceAll(months.String(), "## ", ""), "Said 1.1:", "Said 1.40:", 130 * 40, 6},
		"figures":     {"Said 1.1: all of it\n\n" + strings.Repeat("```figure groups\n```\n\n", 90), "Said 1.1:", "all of it", 1, 3},
	} {
		r := changedHouse(t, func(b *records.Book) {
			b.Notes = []records.Note{{File: "notes/2025.md", Year: 2025, Text: tt.text}}
		})
		b := buildOf(t, r, nil)
		ids, said, pages, last := idsOf(t, b), 0, 0, ""
		for _, page := range b.html() {
			body := b.pages[page]
			if len(body) > mostOfPage {
				t.Errorf("%s: %s takes %d bytes", name, page, len(body))
			}
			leadsSomewhere(t, page, body, ids)
			if strings.HasPrefix(page, "2025/notes") {
				said, pages = said+strings.Count(body, "Said "), pages+1
			}
		}
		for i := range pages { // in order, on pages that are numbered from 2
			page := "2025/notes.html"
			if i > 0 {
				page = fmt.Sprintf("2025/notes-%d.html", i+1)
			}
			last += b.pages[page]
		}
		if said != tt.said || pages != tt.pages {
			t.Errorf("%s: %d paragraphs on %d pages, want %d on %d", name, said, pages, tt.said, tt.pages)
		}
		if first, second := strings.Index(last, "Said 1.1:"), strings.LastIndex(last, "Said "); first > second {
			t.Errorf("%s: the paragraphs are out of order", name)
		}
		for page, at := range map[string]string{"index.html": "2025/notes.html", "2025/index.html": "../2025/notes.html"} {
			body := b.pages[page]
			if !strings.Contains(body, tt.begins) || !strings.Contains(body, tt.ends) || !strings.Contains(body, `<a href="`+at+`">all of it</a>`) || strings.Contains(body, "Said 3.1:") {
				t.Errorf("%s: %s has not the beginning and the way to the rest", name, page)
			}
		}
		if b.pages["2025/notes.html"] == "" || b.pages["2024/notes.html"] != "" {
			t.Errorf("%s: other pages than the note's season", name)
		}
		single, err := Single(r, nil)
		if err != nil || len(single.Body) > mostOfPage || !strings.Contains(string(single.Body), "The note goes on in <bdi>notes/2025.md</bdi>.") {
			t.Errorf("%s: as one file it takes %d bytes, %v", name, len(single.Body), err)
		}
	}
}

// What is too long for any page is not cut in two: the page says where it stands.
func TestLongBlockOfANote(t *testing.T) {
	r := changedHouse(t, func(b *records.Book) {
		b.Notes = []records.Note{{File: "notes/2025.md", Year: 2025, Text: "A beginning.\n\n" + strings.Repeat("dew \" frost\n", 60_000) + "\nAn end."}}
	})
	b := buildOf(t, r, nil)
	expect(t, textOf(t, b, "index.html"), "A beginning.", "What stands at line 3 of notes/2025.md is too long for a page.", "An end.")
	if n := len(b.pages["index.html"]); n > mostOfPage {
		t.Errorf("the front page takes %d bytes", n)
	}
}

// A note that cannot even begin on its review is not said to go on.
func TestNoteThatCannotBegin(t *testing.T) {
	r := changedHouse(t, func(b *records.Book) {
		b.Notes = []records.Note{{File: "notes/2025.md", Year: 2025, Text: strings.Repeat("a word of the season\n", 8_000) + "\nAn end."}}
	})
	b := buildOf(t, r, nil)
	expect(t, textOf(t, b, "2025/index.html"), "The note is too long for this page, and stands on one of its own.")
	if !strings.Contains(b.pages["2025/index.html"], `<a href="../2025/notes.html">on one of its own</a>`) || b.pages["2025/notes.html"] == "" {
		t.Error("no way to the note")
	}
	single, err := Single(r, nil)
	if err != nil || !strings.Contains(string(single.Body), "The note is too long for this page, and stands in <bdi>notes/2025.md</bdi>.") {
		t.Errorf("as one file: %v", err)
	}
}

// A heading without what it heads does not stand alone on the review.
func TestNoteBeginsWithNoLoneHeading(t *testing.T) {
	r := changedHouse(t, func(b *records.Book) {
		b.Notes = []records.Note{{File: "notes/2025.md", Year: 2025, Text: "A word.\n\n## The spring\n\n" + strings.Repeat("a word of the season\n", 8_000) + "\nAn end."}}
	})
	b := buildOf(t, r, nil)
	if front := b.pages["index.html"]; !strings.Contains(front, "A word.") || strings.Contains(front, "The spring") {
		t.Error("the heading stands alone, or the beginning is not told")
	}
	if !strings.Contains(b.pages["2025/notes.html"], "The spring") {
		t.Error("the heading is lost")
	}
}

// A note that fits stands whole on its review and has no page of its own.
func TestShortNotes(t *testing.T) {
	r := changedHouse(t, func(b *records.Book) {
		b.Notes = []records.Note{{File: "notes/2025.md", Year: 2025, Text: strings.Repeat("Said: a word.\n\n", 300)}}
	})
	b := buildOf(t, r, nil)
	if n := strings.Count(b.pages["index.html"], "Said:"); n != 300 || b.pages["2025/notes.html"] != "" {
		t.Errorf("%d paragraphs of 300 on the front page", n)
	}
}
