package main

import (
	"fmt"
	"slices"
	"strings"

	"traybook/records"
	"traybook/report"
	"traybook/report/words"
	"traybook/templates"
)

// news says in one line what a build changed: the rows of each log, and the large numbers
// of the front page that moved. Before the first build it says the numbers. It is what one
// looks at after a save: whether the rows typed arrived, and what they moved.
func news(before, now *report.Report) string {
	if before == nil {
		return numbers(templates.Headlines(now))
	}
	parts := append(rowNews(before.Book, now.Book), moved(templates.Headlines(before), templates.Headlines(now))...)
	if len(parts) == 0 {
		return "no row and no large number changed"
	}
	return strings.Join(parts, "; ")
}

// numbers lists the large numbers that are known.
func numbers(all []templates.Headline) string {
	var parts []string
	for _, h := range all {
		if h.Number != "?" {
			parts = append(parts, h.Number+" "+h.Says)
		}
	}
	if len(parts) == 0 {
		return "built"
	}
	return strings.Join(parts, "; ")
}

// moved lists the large numbers that are not what they were. Numbers are compared as they
// are written, so that what rounds to the same is no news. One that has become unknown is
// told as a question mark.
func moved(before, now []templates.Headline) []string {
	was := map[string]string{}
	for _, h := range before {
		was[h.Says] = h.Number
	}
	var parts []string
	for _, h := range now {
		if old, ok := was[h.Says]; !ok && h.Number != "?" {
			parts = append(parts, h.Number+" "+h.Says)
		} else if ok && old != h.Number {
			parts = append(parts, fmt.Sprintf("%s %s (%s before)", h.Number, h.Says, old))
		}
	}
	return parts
}

// rowNews says of each log how many rows came or went, or that they changed. Rows are
// counted as read, those left out with them; a log with as many rows as before and another
// content has "changed".
func rowNews(before, now *records.Book) []string {
	rows := func(b *records.Book, log string) int {
		for _, f := range b.Files {
			if f.Name == log {
				return f.Rows
			}
		}
		return 0
	}
	var parts []string
	for _, log := range records.Logs {
		switch n := rows(now, log.Name) - rows(before, log.Name); {
		case n > 0:
			parts = append(parts, log.Sheet()+": "+words.Count(n, "row", "rows")+" more")
		case n < 0:
			parts = append(parts, log.Sheet()+": "+words.Count(-n, "row", "rows")+" fewer")
		case !now.Same(before, log.Name):
			parts = append(parts, log.Sheet()+" changed")
		}
	}
	if !slices.Equal(before.Notes, now.Notes) {
		parts = append(parts, "notes changed")
	}
	return parts
}
