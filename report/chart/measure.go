package chart

import (
	"math"
	"strconv"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// widen makes Go Regular as wide as the widest sans-serif in common use
// (DejaVu Sans): nobody knows with which font a page will be read. Measured.
const widen = 1.2

// fontSize is the size of all text in a chart, in pixels, and lineHeight that
// of one line of it.
const (
	fontSize   = 14
	lineHeight = 18
)

var regular = sync.OnceValue(func() map[rune]float64 {
	f, err := sfnt.Parse(goregular.TTF)
	if err != nil {
		return nil // every letter counts as a wide one
	}
	widths := map[rune]float64{}
	var buf sfnt.Buffer
	for r := rune(' '); r < 0x2600; r++ {
		glyph, err := f.GlyphIndex(&buf, r)
		if err != nil || glyph == 0 {
			continue
		}
		if w, err := f.GlyphAdvance(&buf, glyph, fixed.I(1000), font.HintingNone); err == nil {
			widths[r] = float64(w) / 64 / 1000
		}
	}
	return widths
})

// textWidth returns the width of one line of text at a size, in pixels, a little on the
// wide side. Letters that Go Regular lacks count as square. A label that is measured too
// wide leaves a gap; one too narrow runs into its neighbour.
func textWidth(text string, size float64) float64 {
	widths, total := regular(), 0.0
	for _, r := range text {
		if w, ok := widths[r]; ok {
			total += w * widen
		} else if !unicode.Is(unicode.Mn, r) && !unicode.Is(unicode.Cf, r) {
			total += 1
		}
	}
	return total * size
}

// measureFont is textWidth for ECharts, which gives a font as "14px sans-serif".
func measureFont(text, font string) float64 {
	size := float64(fontSize)
	for _, word := range strings.Fields(font) {
		if v, err := strconv.ParseFloat(strings.TrimSuffix(word, "px"), 64); err == nil && strings.HasSuffix(word, "px") {
			size = v
		}
	}
	return textWidth(text, size)
}

// wrap breaks a name into lines no wider than width, at spaces where it can.
// What XML cannot hold becomes U+FFFD; runs of white space become one space.
func wrap(name string, width float64) []string {
	lines := []string{""}
	for _, word := range strings.Fields(printable(name)) {
		for _, piece := range pieces(word, width) {
			last := &lines[len(lines)-1]
			switch {
			case *last == "":
				*last = piece
			case textWidth(*last+" "+piece, fontSize) <= width:
				*last += " " + piece
			default:
				lines = append(lines, piece)
			}
		}
	}
	for i := range lines {
		lines[i] = unreserved(lines[i])
	}
	return lines
}

// reserved are names that every script object answers to. ECharts keeps texts as
// keys of plain objects; one of these would spoil its engine for all charts.
var reserved = set(`__proto__ constructor toString toLocaleString valueOf hasOwnProperty isPrototypeOf
	propertyIsEnumerable __defineGetter__ __defineSetter__ __lookupGetter__ __lookupSetter__`)

// unreserved tells a reserved name from itself by a mark without width.
func unreserved(line string) string {
	if reserved[line] {
		return line + "\u2060"
	}
	return line
}

// pieces cuts a word that is wider than a line. It is cut between letters, and never in
// the middle of one.
func pieces(word string, width float64) []string {
	var out []string
	for textWidth(word, fontSize) > width {
		cut := 0
		for cut < len(word) {
			_, n := utf8.DecodeRuneInString(word[cut:])
			if cut > 0 && textWidth(word[:cut+n], fontSize) > width {
				break
			}
			cut += n
		}
		if cut == len(word) {
			break
		}
		out, word = append(out, word[:cut]), word[cut:]
	}
	return append(out, word)
}

// printable replaces what an XML document cannot hold.
func printable(text string) string {
	return strings.Map(func(r rune) rune {
		if r == utf8.RuneError || r < ' ' && r != '\t' && r != '\n' && r != '\r' || r == 0xFFFE || r == 0xFFFF {
			return utf8.RuneError
		}
		return r
	}, text)
}

// widest returns the width of the widest of some lines.
func widest(lines []string) float64 {
	w := 0.0
	for _, l := range lines {
		w = math.Max(w, textWidth(l, fontSize))
	}
	return w
}
