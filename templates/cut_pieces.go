package templates

import (
	"html/template"
	"slices"

	"traybook/report/words"
)

// of says which crop the last group belongs to.
func (t *rows) of(crop string) { t.Groups[len(t.Groups)-1].Crop = crop }

// byCrop are the crops whose groups are worth a page: those of more than one row.
func (t *rows) byCrop() (crops []string) {
	for _, g := range t.Groups {
		if g.Crop != "" && len(g.Rows) > 1 && !slices.Contains(crops, g.Crop) {
			crops = append(crops, g.Crop)
		}
	}
	return crops
}

// take is the groups of a crop; the first row of each stays and says how many more there
// are. The crop's first row keeps its place and its link, so that the page still names
// every crop.
func (t *rows) take(crop, at string) piece {
	taken := *t
	taken.Groups, taken.Notes = nil, nil
	for i, g := range t.Groups {
		if g.Crop != crop {
			continue
		}
		taken.Groups = append(taken.Groups, rowGroup{Class: g.Class, Rows: g.Rows})
		if more := len(g.Rows) - 1; more > 0 {
			first := g.Rows[0]
			first.Cells = slices.Clone(first.Cells)
			first.Cells[0] += say(` <a class="mr" href="%s">%s more</a>`, at, words.Whole(more))
			t.Groups[i].Rows = []rowOf{first}
		}
	}
	return &taken
}

// inGroup is a row with the number of its group.
type inGroup struct {
	group int
	rowOf
}

// rest leaves so many bytes of rows and gives the others as tables like it. Groups that
// are cut in two keep their line in both.
func (t *rows) rest(most int) (others []piece, kept int) {
	var all []inGroup
	for i, g := range t.Groups {
		for _, r := range g.Rows {
			all = append(all, inGroup{i, r})
		}
	}
	parts := chunks(all, func(r inGroup) int { return r.size() }, most, mostOfRest)
	if len(parts) < 2 {
		return nil, len(all)
	}
	for _, part := range parts[1:] {
		other := *t
		other.Groups, other.Notes = t.grouped(part), nil
		others = append(others, &other)
	}
	t.Groups = t.grouped(parts[0])
	return others, len(parts[0])
}

// grouped puts rows back into their groups.
func (t *rows) grouped(of []inGroup) (out []rowGroup) {
	for i, r := range of {
		if i == 0 || r.group != of[i-1].group {
			g := t.Groups[r.group]
			g.Rows = nil
			out = append(out, g)
		}
		last := &out[len(out)-1]
		last.Rows = append(last.Rows, r.rowOf)
	}
	return out
}

// moved is the table as it stands on a page one folder further down: every address in it
// leads one step up first.
func (t *rows) moved(from string) piece {
	to := *t
	to.Caption, to.Notes, to.Cols, to.Groups = deeper(t.Caption, from), deeperAll(t.Notes, from), slices.Clone(t.Cols), slices.Clone(t.Groups)
	if t.Data != "" {
		to.Data = "../" + t.Data
	}
	for i, g := range to.Groups {
		g.Sub, g.Rows = deeper(g.Sub, from), slices.Clone(g.Rows)
		for j := range g.Rows {
			g.Rows[j].Cells = deeperAll(g.Rows[j].Cells, from)
		}
		to.Groups[i] = g
	}
	return &to
}

// byCrop are the crops that rows of the table belong to.
func (t *table) byCrop() (crops []string) {
	for _, b := range t.Bodies {
		for _, r := range b.Rows {
			if r.Crop != "" && !slices.Contains(crops, r.Crop) {
				crops = append(crops, r.Crop)
			}
		}
	}
	return crops
}

// take is the rows of a crop, all of which go.
func (t *table) take(crop, _ string) piece {
	taken := *t
	taken.Bodies = nil
	for i, b := range t.Bodies {
		of := func(r row) bool { return r.Crop == crop }
		if mine := slices.DeleteFunc(slices.Clone(b.Rows), func(r row) bool { return !of(r) }); len(mine) > 0 {
			taken.Bodies = append(taken.Bodies, body{mine})
			t.Bodies[i].Rows = slices.DeleteFunc(b.Rows, of)
		}
	}
	return &taken
}

// rest leaves so many bytes of rows; notes stay with the first part, which says what holds
// for all.
func (t *table) rest(most int) (others []piece, kept int) {
	var all []row
	for _, b := range t.Bodies {
		all = append(all, b.Rows...)
	}
	parts := chunks(all, row.size, most, mostOfRest)
	if len(parts) < 2 {
		return nil, len(all)
	}
	for _, part := range parts[1:] {
		other := *t
		other.Bodies, other.Notes = []body{{part}}, nil
		others = append(others, &other)
	}
	t.Bodies = []body{{parts[0]}}
	return others, len(parts[0])
}

// moved is the table on a page one folder further down, cell by cell, since any cell may
// hold a link.
func (t *table) moved(from string) piece {
	to := *t
	to.Caption, to.Notes, to.Bodies = deeper(t.Caption, from), deeperAll(t.Notes, from), nil
	if t.Data != "" {
		to.Data = "../" + t.Data
	}
	for _, b := range t.Bodies {
		rows := slices.Clone(b.Rows)
		for i, r := range rows {
			rows[i].Cells = slices.Clone(r.Cells)
			for j := range r.Cells {
				c := &rows[i].Cells[j]
				c.Value, c.Sub = deeper(c.Value, from), deeper(c.Sub, from)
			}
		}
		to.Bodies = append(to.Bodies, body{rows})
	}
	return &to
}

// size counts the chart, drawn or not, so that a review without charts is cut as one with
// them; a table in the figure is a piece of its own.
func (f *figure) size() int {
	if f.chart {
		return chartBytes
	}
	return len(f.Drawing)
}

func (f *figure) byCrop() []string {
	if f.Crop == "" {
		return nil
	}
	return []string{f.Crop}
}

// take is the figure whole; nothing of it stays.
func (f *figure) take(string, string) piece {
	taken := *f
	*f = figure{ID: f.ID, Title: f.Title}
	return &taken
}

// rest is none: a drawing cannot be cut.
func (f *figure) rest(int) ([]piece, int) { return nil, 0 }

func (f *figure) moved(from string) piece {
	to := *f
	to.Caption = deeper(f.Caption, from)
	return &to
}

func (f *figure) note(template.HTML) {}
