package trade

import (
	"strings"
	"sync"
)

// others is the other names that growers write for what the tables name: tomatoes are
// found without it, courgettes by it.
var others = sync.OnceValue(func() map[string]string {
	found := map[string]string{}
	for _, r := range read("names.csv") {
		found[key(r["other"])] = key(r["name"])
	}
	return found
})

// find looks a crop up in a table as a grower writes it: the whole name, another name
// for it, then both without what stands in brackets. A name that is another's is never
// cut: "onion (spring)" is no onion.
func find[T any](table map[string]T, name string) (found T, ok bool) {
	for _, as := range []string{name, beforeBracket(name)} {
		if found, ok = table[key(as)]; ok {
			return found, true
		}
		if other, named := others()[key(as)]; named {
			found, ok = table[other]
			return found, ok
		}
	}
	return found, false
}

// unjoined takes what joins, parts or brackets words in a name as a space.
var unjoined = strings.NewReplacer("-", " ", "/", " ", ",", " ", "(", " ", ")", " ", "[", " ", "]", " ", "'", "", "’", "")

// key is a name as it is compared: without case, hyphens, commas, brackets and
// apostrophes, every word in the singular.
func key(name string) string {
	words := strings.Fields(unjoined.Replace(strings.ToLower(name)))
	for i, word := range words {
		words[i] = singular(word)
	}
	return strings.Join(words, " ")
}

// endings are the plurals of English names, the longest first; one without a singular
// (asparagus, cress) stands as it is.
var endings = []struct{ plural, singular string }{
	{"ies", "y"}, {"oes", "o"}, {"shes", "sh"}, {"ches", "ch"}, {"xes", "x"}, {"ss", "ss"}, {"us", "us"}, {"s", ""},
}

func singular(word string) string {
	for _, e := range endings {
		if stem, is := strings.CutSuffix(word, e.plural); is {
			return stem + e.singular
		}
	}
	return word
}

// beforeBracket is the part of a name before a bracket: melon of "melon (muskmelon)".
func beforeBracket(name string) string {
	if at := strings.IndexAny(name, "(["); at >= 0 {
		return name[:at]
	}
	return name
}

// byName keeps the rows by key, and by the part of the name before a bracket where no
// other row has it whole.
func byName[T any](name func(T) string, all []T) map[string]T {
	found := map[string]T{}
	for _, one := range all {
		found[key(beforeBracket(name(one)))] = one
	}
	for _, one := range all {
		found[key(name(one))] = one
	}
	return found
}
