package workbook

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
)

// oldFormat opens the files of the older binary format and those with a password.
var oldFormat = []byte{0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1}

// Read reads the sheets of a workbook that are wanted and names the others. The error
// is an Unread.
func Read(raw []byte, want func(sheet string) bool) (book *Book, err error) {
	defer func() { // a damaged file must never end the program
		if p := recover(); p != nil {
			book, err = nil, damaged(fmt.Sprint(p))
		}
	}()
	p, err := unpack(raw)
	switch {
	case err != nil:
		return nil, err
	case p.has("content.xml"):
		return readODS(p, want)
	case p.has("xl/workbook.xml") || p.has("[content_types].xml"):
		return readXLSX(p, want)
	}
	return nil, Unread{"this is no workbook", "save the book as .xlsx or .ods"}
}

// unpack lists the files inside a workbook, within the limits.
func unpack(raw []byte) (parts, error) {
	switch {
	case len(raw) > MostBytes:
		return nil, tooLarge("the workbook is larger than 64 MB")
	case bytes.HasPrefix(raw, oldFormat):
		return nil, Unread{"the workbook is in the older format .xls, or has a password",
			"save it as .xlsx or .ods, without a password"}
	case len(raw) == 0:
		return nil, Unread{"the workbook is empty", again}
	}
	z, err := zip.NewReader(bytes.NewReader(raw), int64(len(raw)))
	if errors.Is(err, zip.ErrFormat) || z == nil {
		return nil, Unread{"this is no workbook, or only a part of one", "save the book as .xlsx or .ods"}
	}
	return partsOf(z)
}
