package workbook

import (
	"path"
	"slices"
	"strings"
)

// xlsx is what the sheets of an .xlsx file share.
type xlsx struct {
	parts
	texts    []Cell
	shown    []shown // by the number of a cell's style
	from1904 bool
	left     *budget
	taken    map[string]bool // paths of the files that were read
}

// once notes that a file is about to be read: what all of them unpack to is bounded, and so
// must be how often.
func (x *xlsx) once(name string) error {
	name = partName(name)
	if x.taken[name] {
		return damaged("two of its parts are the same file")
	}
	x.taken[name] = true
	return nil
}

// readXLSX reads an .xlsx file.
func readXLSX(p parts, want func(string) bool) (*Book, error) {
	main := p.mainPart()
	var w struct {
		Settings struct {
			From1904 string `xml:"date1904,attr"`
		} `xml:"workbookPr"`
		Sheets []struct {
			Name string `xml:"name,attr"`
			ID   string `xml:"id,attr"`
		} `xml:"sheets>sheet"`
	}
	if err := p.decode(main, &w); err != nil {
		return nil, err
	}
	switch {
	case len(w.Sheets) == 0:
		return nil, damaged("it has no sheets")
	case len(w.Sheets) > mostParts:
		return nil, tooLarge("the workbook has more than 10,000 sheets")
	}
	x := &xlsx{parts: p, left: newBudget(), taken: map[string]bool{}, from1904: w.Settings.From1904 == "1" || w.Settings.From1904 == "true"}
	links, err := x.shared(main)
	if err != nil {
		return nil, err
	}
	b, paths := &Book{}, map[string]string{}
	for _, l := range slices.Backward(links) { // the first of an id stands
		paths[l.id] = l.path
	}
	for _, s := range w.Sheets {
		sheet := Sheet{Name: s.Name}
		if want(s.Name) {
			sheet.Bad = damaged("a sheet is missing")
			if path, linked := paths[s.ID]; linked {
				sheet.Bad = x.readSheet(&sheet, path)
			}
		}
		b.Sheets = append(b.Sheets, sheet)
	}
	return b, nil
}

// link is a file that another one refers to: its name there, where it stands, and what
// it is.
type link struct{ id, path, kind string }

// mainPart is the path of the list of sheets.
func (p parts) mainPart() string {
	links, err := p.links("_rels/.rels", "")
	if i := slices.IndexFunc(links, func(l link) bool { return l.kind == "officeDocument" }); err == nil && i >= 0 {
		return links[i].path
	}
	return "xl/workbook.xml"
}

// links are the files that one refers to, which stands in folder.
func (p parts) links(name, folder string) ([]link, error) {
	var r struct {
		Links []struct {
			ID     string `xml:"Id,attr"`
			Type   string `xml:"Type,attr"`
			Target string `xml:"Target,attr"`
		} `xml:"Relationship"`
	}
	if err := p.decode(name, &r); err != nil {
		return nil, err
	}
	var all []link
	for _, l := range r.Links {
		to := l.Target
		if !strings.HasPrefix(to, "/") {
			to = path.Join(folder, to)
		}
		all = append(all, link{l.ID, to, path.Base(l.Type)})
	}
	return all, nil
}

// shared reads the texts and styles of all sheets, and where the sheets are.
func (x *xlsx) shared(main string) ([]link, error) {
	folder := path.Dir(main)
	links, err := x.links(path.Join(folder, "_rels", path.Base(main)+".rels"), folder)
	if err != nil {
		return nil, err
	}
	read := map[string]func(string) error{"sharedStrings": x.readStrings, "styles": x.readStyles}
	for _, l := range links {
		into := read[l.kind]
		if into == nil {
			continue
		}
		if err = x.once(l.path); err == nil {
			err = into(l.path)
		}
		if err != nil {
			return nil, err
		}
	}
	return links, nil
}
