package main

import (
	"iter"
	"slices"
	"strings"

	"traybook/cmd/traybook/internal/folder"
	"traybook/records"
	"traybook/report"
	"traybook/templates"
)

// edition is for whom a review is built: for the farm, for everybody, or as one file to
// send.
type edition struct {
	Public bool     `help:"Leave out what a farm keeps to itself: money, wages, suppliers, prices, notes in the logs."`
	Show   []string `placeholder:"costs,lots" help:"With --public: show costs, or where seed came from, all the same."`
	Single bool     `help:"The season's review as one file, review.html, to send by mail."`
}

// showable are what --show may name.
var showable = []string{"costs", "lots"}

// check refuses what cannot be meant.
func (e edition) check() error {
	if len(e.Show) > 0 && !e.Public {
		return failure("add --public, or leave it out", "--show %s: only --public leaves anything out", strings.Join(e.Show, ","))
	}
	for _, s := range e.Show {
		if !slices.Contains(showable, s) {
			return failure("give "+strings.Join(showable, " or "), "--show %s: not a thing to show", s)
		}
	}
	return nil
}

// shown is what a public edition shows.
func (e edition) shown() records.Shown {
	return records.Shown{Costs: slices.Contains(e.Show, "costs"), Lots: slices.Contains(e.Show, "lots")}
}

// site gives the files of the edition. The single file has no data files: it is sent by
// mail and opened by itself.
func (e edition) site(r *report.Report, drawings templates.Charts) iter.Seq2[folder.File, error] {
	if !e.Single {
		return site(r, drawings)
	}
	return func(yield func(folder.File, error) bool) {
		page, err := templates.Single(r, drawings)
		yield(folder.File{Path: page.Path, Body: page.Body}, err)
	}
}

// first is the file to open.
func (e edition) first() string {
	if e.Single {
		return templates.SingleFile
	}
	return "index.html"
}

// compute makes the report of the edition. What is wrong with a log quotes its cells, so
// it is said on the terminal and stands in no public edition. The book itself is thinned
// out before anything is figured, so that no page or data file can let slip what it never
// knew.
func (e edition) compute(l *loaded, options report.Options) (*report.Report, error) {
	if !e.Public {
		return l.compute(options)
	}
	said := l.problems
	l.book, l.problems, options.Public = l.book.Public(e.shown()), nil, true
	r, err := l.compute(options)
	l.problems = append(said, l.problems...)
	records.SortProblems(l.problems)
	return r, err
}
