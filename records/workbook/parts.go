package workbook

import (
	"archive/zip"
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"path"
	"strings"
)

// parts are the files inside a workbook, by their path in small letters.
type parts map[string]*zip.File

// partsOf lists the files of an archive. What they say of their size is held to when
// they are unpacked: package zip stops there.
func partsOf(z *zip.Reader) (parts, error) {
	if len(z.File) > mostParts {
		return nil, tooLarge("the workbook holds too many files")
	}
	p, size := parts{}, uint64(0)
	for _, f := range z.File {
		if size += f.UncompressedSize64; size > mostUnpacked || f.UncompressedSize64 > mostUnpacked {
			return nil, tooLarge("the workbook unpacks to more than 128 MB")
		}
		p[partName(f.Name)] = f
	}
	return p, nil
}

// partName is a path as it is compared: some programs write it with backslashes, and
// names do not tell capitals apart.
func partName(s string) string {
	return strings.ToLower(strings.TrimPrefix(path.Clean(strings.ReplaceAll(s, `\`, "/")), "/"))
}

// has reports whether there is such a file.
func (p parts) has(name string) bool { return p[name] != nil }

// bytes unpacks a file; empty where there is none.
func (p parts) bytes(name string) ([]byte, error) {
	f := p[partName(name)]
	if f == nil {
		return nil, nil
	}
	r, err := f.Open()
	if err != nil {
		return nil, damaged(err.Error())
	}
	defer r.Close()
	b, err := io.ReadAll(r)
	if err != nil {
		return nil, damaged(err.Error())
	}
	return b, nil
}

// decode unpacks a file into a struct; nothing where there is no such file.
func (p parts) decode(name string, into any) error {
	if f := p[partName(name)]; f != nil && f.UncompressedSize64 > mostOfList {
		return tooLarge("a list inside the workbook is larger than 8 MB")
	}
	b, err := p.bytes(name)
	if err != nil || len(b) == 0 {
		return err
	}
	if err := shape(b); err != nil {
		return err
	}
	if err := xml.Unmarshal(b, into); err != nil {
		return damaged(path.Base(name) + ": " + err.Error())
	}
	return nil
}

// walk hands out the elements of a file in turn. enter sees an element begin, and may
// read on to its end with the decoder; leave sees it end; text sees what stands
// between. It stops at the first error that is not io.EOF.
func walk(b []byte, w walker) error {
	if err := shape(b); err != nil {
		return err
	}
	d := xml.NewDecoder(bytes.NewReader(b))
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return nil
		}
		if err == nil {
			switch t := token.(type) {
			case xml.StartElement:
				err = w.enter(d, t)
			case xml.EndElement:
				err = w.leave(t.Name.Local)
			case xml.CharData:
				w.text(t)
			}
		}
		if err != nil {
			return unread(err)
		}
	}
}

// walker looks at the elements of a file.
type walker interface {
	enter(*xml.Decoder, xml.StartElement) error
	leave(name string) error
	text([]byte)
}

// unread makes an Unread of any error.
func unread(err error) error {
	var u Unread
	if errors.As(err, &u) {
		return u
	}
	return damaged(err.Error())
}

// attr is an attribute of an element by its name without prefix; empty for none.
func attr(e xml.StartElement, name string) string {
	for _, a := range e.Attr {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}
