package records

import (
	"strings"
)

// named is a name where it is first written.
type named struct {
	name string
	row  row
	col  string
}

// checkNearNames warns of crops, and of varieties of one crop, that differ by a
// slip of the keys: names of five characters and more, not where only their
// digits differ.
func (l *loader) checkNearNames() {
	crops := map[string]bool{}
	varieties := map[[2]string]bool{}
	var allCrops []named
	of := map[string][]named{}
	add := func(crop, variety string, r row) {
		if crop != "" && !crops[crop] {
			crops[crop] = true
			allCrops = append(allCrops, named{crop, r, "crop"})
		}
		if k := [2]string{crop, variety}; variety != "" && !varieties[k] {
			varieties[k] = true
			of[crop] = append(of[crop], named{variety, r, "variety"})
		}
	}
	for e := range alive(l.lots) {
		add(e.is.Crop, e.is.Variety, e.row)
	}
	for e := range alive(l.sowings) {
		add(e.is.Crop, e.is.Variety, e.row)
	}
	for e := range alive(l.wishes) {
		add(e.is.Crop, e.is.Variety, e.row)
	}
	l.nearNames(allCrops)
	for _, crop := range allCrops {
		l.nearNames(of[crop.name])
	}
}

// nearNames warns of each name that is nearly one written before it.
func (l *loader) nearNames(names []named) {
	seen := newNeighbours()
	for i, n := range names[:min(len(names), mostNear)] {
		key := l.names.key(n.name)
		at := seen.first(key, func(j int) bool { return nearlySame(l.names.key(names[j].name), key) })
		if at >= 0 {
			before := quote(names[at].name)
			n.row.problem("near-name", n.col, n.col+" "+quote(n.name)+" is nearly "+before, "names that differ clearly are expected",
				"did you mean "+before+"? If both are right, leave them")
		}
		seen.add(key, i)
	}
}

// nearlySame reports whether two names differ by one slip of the keys. Short names, and
// names of a series such as Conefield 1 and Conefield 2, are meant as they stand.
func nearlySame(a, b string) bool {
	if len([]rune(a)) < 5 || len([]rune(b)) < 5 || slips(a, b) != 1 {
		return false
	}
	return withoutDigits(a) != withoutDigits(b)
}

// withoutDigits takes the digits out of a name.
func withoutDigits(s string) string {
	return strings.Map(func(r rune) rune {
		if r >= '0' && r <= '9' {
			return -1
		}
		return r
	}, s)
}
