package templates

import (
	"cmp"
	"html/template"
	"regexp"
	"strconv"
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"

	"traybook/report"
)

// page is the page being written: the site as seen from it. season is the one that it
// speaks of, else the one reviewed.
type page struct {
	*site
	spec   spec
	season int
	root   string          // "" or "../": from the page to the site's folder
	ids    map[string]bool // taken on the page
	err    error           // what went wrong in making it
	pieces []piece         // its tables and charts
	said   int             // bytes of a season's note beside them
	extras []extra         // pages that hold what is too much for it
	byCrop template.HTML   // links to those of them that hold a crop
}

// newPage starts a page on which no id is taken yet.
func newPage(s *site, sp spec) *page {
	return &page{site: s, spec: sp, season: cmp.Or(sp.season, s.r.Season), root: strings.Repeat("../", strings.Count(sp.path, "/")), ids: map[string]bool{}}
}

// id returns an id that the page has not used yet: want, or want with a number.
func (p *page) id(want string) string {
	id := want
	for i := 2; p.ids[id]; i++ {
		id = want + "-" + strconv.Itoa(i)
	}
	p.ids[id] = true
	return id
}

// href is the address of a file of the site as seen from the page.
func (p *page) href(target string) string { return p.root + target }

// to links to a page of the site; where it was left out, the words stand alone.
func (p *page) to(target string, words any) template.HTML {
	file, _, _ := strings.Cut(target, "#")
	if file != "" && !p.paths[file] || p.single {
		return markup(words)
	}
	if at := strings.TrimPrefix(target, p.spec.path); strings.HasPrefix(at, "#") {
		target = at // on the page itself
	} else {
		target = p.href(target)
	}
	return template.HTML(`<a href="`+template.HTMLEscapeString(target)+`">`) + markup(words) + "</a>"
}

// linkTo writes words that link to an anchor on a page of the site; where the page was left
// out, they stand alone.
func (p *page) linkTo(w *pen, file, id string, words func(*pen, string), of string) {
	if !p.paths[file] || p.single {
		words(w, of)
		return
	}
	w.put(`<a href="`)
	if file != p.spec.path {
		w.put(p.root)
		w.text(file)
	}
	w.put("#")
	w.text(id)
	w.put(`">`)
	words(w, of)
	w.put("</a>")
}

// writeBatch links to the story of a batch.
func (p *page) writeBatch(w *pen, b *report.Record) {
	file, id := p.anchors.of(b)
	p.linkTo(w, file, id, (*pen).code, b.Code)
}

// writeCode links to the story of the batch with a code; one that was never sown has none.
func (p *page) writeCode(w *pen, code string) {
	if b := p.r.Record(code); b != nil {
		p.writeBatch(w, b)
	} else {
		w.code(code)
	}
}

// linkBytes is about how many bytes a link to a batch takes.
const linkBytes = 112

// batch links to the story of a batch.
func (p *page) batch(code string) template.HTML {
	w := pen{out: make([]byte, 0, linkBytes)}
	p.writeCode(&w, code)
	return template.HTML(w.out)
}

// batches links to several batches, in a sentence.
func (p *page) batches(codes []string) template.HTML {
	w := pen{out: make([]byte, 0, linkBytes*len(codes))}
	for i, c := range codes {
		w.put(between(i, len(codes)))
		p.writeCode(&w, c)
	}
	return template.HTML(w.out)
}

// seasonPath is where the review of a season stands.
func (s *site) seasonPath(season int) string { return seasonFile("index", season) }

// here is the address of a page of the season that the page speaks of:
// 2025/germination.html.
func (p *page) here(name string) string { return seasonFile(name, p.season) }

// slug turns a name into what may stand in a file name or an anchor: lower-case
// letters a to z and digits, with hyphens between; accents are taken off.
func slug(s string) string {
	var b strings.Builder
	for _, r := range norm.NFKD.String(strings.ToLower(s)) {
		switch {
		case 'a' <= r && r <= 'z' || '0' <= r && r <= '9':
			b.WriteRune(r)
		case unicode.Is(unicode.Mn, r):
		case b.Len() > 0 && !strings.HasSuffix(b.String(), "-"):
			b.WriteByte('-')
		}
	}
	out := strings.Trim(b.String(), "-")
	return strings.Trim(out[:min(len(out), 60)], "-")
}

// slugs gives each key a slug of its own, in the order given.
type slugs struct{ taken map[string]bool }

// unique is the slug of s, or of otherwise where s has no letter, with a number behind
// it where it is taken.
func (u *slugs) unique(s, otherwise string) string {
	if u.taken == nil {
		u.taken = map[string]bool{}
	}
	base := cmp.Or(slug(s), otherwise)
	out := base
	for i := 2; u.taken[out]; i++ {
		out = base + "-" + strconv.Itoa(i)
	}
	u.taken[out] = true
	return out
}

// cropSlugs gives each crop one name in addresses, the same in every season.
type cropSlugs struct {
	slugs
	of map[string]string
}

// device is a name that Windows keeps for a device: no file is called so there, whatever
// its ending.
var device = regexp.MustCompile(`^(con|prn|aux|nul|com[0-9]|lpt[0-9])$`)

// cropSlug is a crop's name in addresses, and in the name of a file.
func cropSlug(c *cropSlugs, crop string) string {
	if c.of == nil {
		c.of = map[string]string{}
	}
	if _, known := c.of[crop]; !known {
		if device.MatchString(slug(crop)) {
			c.of[crop] = c.unique(crop+" crop", "crop")
		} else {
			c.of[crop] = c.unique(crop, "crop")
		}
	}
	return c.of[crop]
}

// cropSeason is a crop in a season.
type cropSeason struct {
	crop   string
	season int
}

// cropFile is a crop's name in addresses, the same in every season.
func (s *site) cropFile(crop string) string {
	if known, ok := s.cropNames.of[crop]; ok {
		return known
	}
	return cmp.Or(slug(crop), "crop") // of a wish or a lot that was never sown
}
