package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/report/germination"
)

// moreOn links to the page that tells more, if there is one and it is not this one.
func (p *page) moreOn(path, label string) template.HTML {
	if !p.paths[path] || path == p.spec.path {
		return ""
	}
	return p.to(path, label)
}

// emergenceOf are the groups of a season that were counted, the lowest first.
func (p *page) emergenceOf(season int) []*germination.Emergence {
	out := picked(p.r.Germination.Emergence, func(e *germination.Emergence) bool { return e.Season == season && e.Share.Known })
	slices.SortStableFunc(out, func(a, b *germination.Emergence) int { return cmp.Compare(a.Share.Value, b.Share.Value) })
	return out
}
