package chart

import (
	"encoding/xml"
	"errors"
	"io"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// node is an element of a drawing: its attributes in order, and its text or parts.
type node struct {
	name  string
	attrs []attr
	text  string
	parts []*node
}

// attr is one attribute.
type attr struct{ name, value string }

// slim writes a cleaned drawing in about half its bytes: nothing that cannot be seen,
// coordinates to a tenth of a pixel, what neighbours share said once. It draws the same.
func slim(svg string) (string, error) {
	root, err := parse(svg)
	if err != nil {
		return "", err
	}
	root.lighten()
	var b strings.Builder
	root.write(&b)
	return b.String(), nil
}

// parse reads a drawing into nodes.
func parse(svg string) (*node, error) {
	in := xml.NewDecoder(strings.NewReader(svg))
	top := &node{}
	open := []*node{top}
	for {
		token, err := in.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return nil, err
		}
		here := open[len(open)-1]
		switch t := token.(type) {
		case xml.StartElement:
			n := &node{name: t.Name.Local}
			for _, a := range t.Attr {
				n.attrs = append(n.attrs, attr{a.Name.Local, a.Value})
			}
			here.parts = append(here.parts, n)
			open = append(open, n)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			if holdsText[here.name] {
				here.text += string(t)
			}
		}
	}
	if len(top.parts) != 1 {
		return nil, errors.New("there is no one drawing")
	}
	return top.parts[0], nil
}

// holdsText are the elements whose text is shown or read out.
var holdsText = set("text tspan title desc")

// lighten makes an element and its parts lighter.
func (n *node) lighten() {
	var kept []*node
	for _, p := range n.parts {
		p.round()
		p.place()
		p.lighten()
		switch {
		case p.unseen():
		case len(kept) > 0 && kept[len(kept)-1].joins(p):
			kept[len(kept)-1].join(p)
		default:
			kept = append(kept, p)
		}
	}
	n.parts = gather(kept)
}

// get returns an attribute's value; empty where it has none.
func (n *node) get(name string) string {
	for _, a := range n.attrs {
		if a.name == name {
			return a.value
		}
	}
	return ""
}

// drop takes attributes away.
func (n *node) drop(names ...string) {
	n.attrs = slices.DeleteFunc(n.attrs, func(a attr) bool { return slices.Contains(names, a.name) })
}

// drawnShapes are the elements that draw by fill and stroke.
var drawnShapes = set("path rect circle ellipse line polyline polygon")

// unseen reports whether an element draws nothing: neither filled nor stroked, or a
// group without parts.
func (n *node) unseen() bool {
	bare := func(v string) bool { return v == "none" || v == "transparent" }
	stroke := n.get("stroke")
	switch {
	case n.name == "g" || n.name == "defs":
		return len(n.parts) == 0
	case drawnShapes[n.name]:
		return bare(n.get("fill")) && (stroke == "" || bare(stroke)) && n.get("id") == ""
	case n.name == "text":
		return n.text == "" && len(n.parts) == 0
	}
	return false
}

// fractions matches a number with more than one decimal.
var fractions = regexp.MustCompile(`-?[0-9]*\.[0-9]+`)

// measured are the attributes that hold coordinates.
var measured = set("d x y x1 y1 x2 y2 cx cy r rx ry width height points transform stroke-width")

// round writes coordinates to a tenth.
func (n *node) round() {
	for i, a := range n.attrs {
		if measured[a.name] && n.name != "clipPath" {
			n.attrs[i].value = fractions.ReplaceAllStringFunc(a.value, tenth)
		}
	}
}

func tenth(s string) string {
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		return s
	}
	v = math.Round(v*10) / 10
	if v == 0 {
		return "0"
	}
	return strconv.FormatFloat(v, 'f', -1, 64)
}

// moved matches a transform that only moves.
var moved = regexp.MustCompile(`^translate\(([-0-9.]+) ([-0-9.]+)\)$`)

// place turns a text's move into its place, and leaves out what is so by default.
func (n *node) place() {
	if n.name != "text" {
		return
	}
	if at := moved.FindStringSubmatch(n.get("transform")); at != nil && n.get("x") == "" && n.get("y") == "" {
		n.drop("transform")
		n.attrs = append(n.attrs, attr{"x", at[1]}, attr{"y", at[2]})
	}
	for i, a := range n.attrs {
		if a.name == "font-size" {
			n.attrs[i].value = strings.TrimSuffix(a.value, "px")
		}
	}
}

// joins reports whether a path may be drawn in one go with the one before it: strokes of
// one look, none of them filled, moved or named.
func (n *node) joins(p *node) bool {
	if n.name != "path" || p.name != "path" || n.get("fill") != "none" || len(n.attrs) != len(p.attrs) {
		return false
	}
	for _, a := range n.attrs {
		if a.name == "id" || a.name == "transform" || a.name == "opacity" || a.name != "d" && p.get(a.name) != a.value {
			return false
		}
	}
	return true
}

// join adds a path's outline.
func (n *node) join(p *node) {
	for i, a := range n.attrs {
		if a.name == "d" {
			n.attrs[i].value += p.get("d")
		}
	}
}

// inherited are the attributes that a group hands on to its parts.
var inherited = []string{"dominant-baseline", "text-anchor", "font-size", "font-weight", "fill", "stroke", "stroke-width", "stroke-linecap", "stroke-linejoin"}

// gather puts runs of two texts or more, of one look, into a group that says it once.
func gather(list []*node) []*node {
	var out []*node
	for i := 0; i < len(list); {
		end := i + 1
		for end < len(list) && list[i].alike(list[end]) {
			end++
		}
		if end-i < 2 {
			out = append(out, list[i])
			i = end
			continue
		}
		group := &node{name: "g", parts: list[i:end]}
		for _, name := range inherited {
			if v := list[i].get(name); v != "" {
				group.attrs = append(group.attrs, attr{name, v})
			}
		}
		for _, p := range group.parts {
			p.drop(inherited...)
		}
		out = append(out, group)
		i = end
	}
	return out
}

// alike reports whether two neighbours share a look.
func (n *node) alike(p *node) bool {
	if n.name != p.name || n.name != "text" && !drawnShapes[n.name] || n.get("id") != "" || p.get("id") != "" {
		return false
	}
	return !slices.ContainsFunc(inherited, func(name string) bool { return n.get(name) != p.get(name) })
}

// write writes an element; one without parts closes itself.
func (n *node) write(b *strings.Builder) {
	b.WriteString("<" + n.name)
	for _, a := range n.attrs {
		b.WriteString(" " + a.name + `="` + escape.Replace(a.value) + `"`)
	}
	if n.text == "" && len(n.parts) == 0 {
		b.WriteString("/>")
		return
	}
	b.WriteString(">" + escape.Replace(n.text))
	for _, p := range n.parts {
		p.write(b)
	}
	b.WriteString("</" + n.name + ">")
}
