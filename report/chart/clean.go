package chart

import (
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"regexp"
	"strings"
)

// cleanerVersion belongs to the cache's key: raise it when clean, the layout of
// the cache or the measuring of text changes.
const cleanerVersion = "3"

// keptElements are the parts of a drawing that may enter a page. Others are
// left out with all they hold, above all style and script.
var keptElements = set("svg g path rect circle ellipse line polyline polygon text tspan defs clipPath pattern use linearGradient radialGradient stop")

// keptAttributes are the attributes that may enter a page.
var keptAttributes = set(`id d x y x1 y1 x2 y2 cx cy r rx ry width height points transform
	fill fill-opacity fill-rule stroke stroke-width stroke-opacity stroke-dasharray stroke-dashoffset stroke-linecap
	stroke-linejoin stroke-miterlimit opacity paint-order text-anchor dominant-baseline dy dx clip-path href
	patternUnits patternTransform patternContentUnits clipPathUnits gradientUnits offset stop-color stop-opacity
	font-size font-weight font-style`)

func set(words string) map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(words) {
		m[w] = true
	}
	return m
}

// engineID matches the ids that ECharts counts up engine by engine.
var engineID = regexp.MustCompile(`^(url\()?(#)?zr[0-9]+-`)

// clean turns the SVG that ECharts writes into one that can stand in a page:
// no style elements or attributes, classes, events or outside references; ids
// that begin with the figure's name; sized by the page; named for a screen
// reader.
func clean(raw string, s Spec) (string, error) {
	c := cleaner{spec: s, in: xml.NewDecoder(strings.NewReader(raw))}
	for {
		token, err := c.in.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return "", fmt.Errorf("the drawing is not well formed: %w", err)
		}
		c.token(token)
	}
	if c.out.Len() == 0 || c.depth != 0 {
		return "", errors.New("there is no drawing")
	}
	return slim(c.out.String())
}

// cleaner reads one drawing and writes what may stand in a page.
type cleaner struct {
	spec  Spec
	in    *xml.Decoder
	out   strings.Builder
	depth int
	skip  int // elements open inside one that is left out
}

// token passes on what may stand in a page; what is left out takes all it holds along.
func (c *cleaner) token(token xml.Token) {
	switch t := token.(type) {
	case xml.StartElement:
		if c.skip > 0 || !keptElements[t.Name.Local] {
			c.skip++
			return
		}
		c.open(t)
	case xml.EndElement:
		if c.skip > 0 {
			c.skip--
			return
		}
		c.depth--
		c.out.WriteString("</" + t.Name.Local + ">")
	case xml.CharData:
		if c.skip == 0 && c.depth > 0 {
			c.text(string(t))
		}
	}
}

// open writes the start of an element with the attributes that may enter.
func (c *cleaner) open(t xml.StartElement) {
	c.depth++
	c.out.WriteString("<" + t.Name.Local)
	if c.depth == 1 {
		c.root()
		return
	}
	for _, a := range t.Attr {
		if a.Name.Local == "style" {
			c.style(a.Value)
		} else if keptAttributes[a.Name.Local] {
			c.attribute(a.Name.Local, a.Value)
		}
	}
	c.out.WriteString(">")
}

// root writes what the outermost element carries: the viewBox, not a size, and
// the words for a screen reader.
func (c *cleaner) root() {
	n := c.spec.Name
	c.attribute("viewBox", fmt.Sprintf("0 0 %d %d", c.spec.Width, c.spec.Height))
	c.attribute("role", "img")
	c.attribute("aria-labelledby", n+"-title")
	c.out.WriteString(`><title id="` + n + `-title">`)
	c.text(c.spec.Label)
	c.out.WriteString("</title>")
}

// style writes what a style attribute says of the font, as attributes. Its family
// is left to the page; ECharts writes colours as attributes already.
func (c *cleaner) style(css string) {
	for part := range strings.SplitSeq(css, ";") {
		name, value, ok := strings.Cut(part, ":")
		name = strings.TrimSpace(name)
		if ok && strings.HasPrefix(name, "font-") && keptAttributes[name] {
			c.attribute(name, strings.TrimSpace(value))
		}
	}
}

// attribute writes one attribute, its ids made the figure's own. A reference
// that leads outside the drawing is left out.
func (c *cleaner) attribute(name, value string) {
	value = engineID.ReplaceAllString(value, "${1}${2}"+c.spec.Name+"-")
	if name == "href" && !strings.HasPrefix(value, "#") || strings.HasPrefix(value, "url(") && !strings.HasPrefix(value, "url(#") {
		return
	}
	c.out.WriteString(" " + name + `="`)
	c.text(value)
	c.out.WriteString(`"`)
}

var escape = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&#34;", "'", "&#39;")

// text writes escaped text.
func (c *cleaner) text(s string) { c.out.WriteString(escape.Replace(printable(s))) }
