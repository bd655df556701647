package chart

import "slices"

// orWords puts words in the place of an empty name.
func orWords(names []string, empty string) []string {
	out := slices.Clone(names)
	for i, n := range out {
		if n == "" {
			out[i] = empty
		}
	}
	return out
}

// sortedKeys lists the keys of a map in order of bytes, so that a book gives the same
// bytes each time.
func sortedKeys[V any](m map[string]V) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}
