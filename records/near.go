package records

// nearest returns the candidate that differs from s by a slip of the keys, and
// empty if none does, or several do alike; fold brings candidates into the form
// in which s is.
func nearest(s string, candidates []string, fold func(string) string) string {
	best, least := "", 3
	for _, c := range candidates {
		f := fold(c)
		d := slips(s, f)
		switch {
		case d > least || d > allowedSlips(s, f) || d == 0:
		case d == least:
			best = ""
		default:
			best, least = c, d
		}
	}
	return best
}

// allowedSlips is how many slips still make a likely mistake: none in names of
// up to two characters, one up to six, else two.
func allowedSlips(a, b string) int {
	switch n := min(len([]rune(a)), len([]rune(b))); {
	case n <= 2:
		return 0
	case n <= 6:
		return 1
	}
	return 2
}

// slips counts the single characters to insert, delete, replace or swap with
// their neighbour between two words (the optimal string alignment distance).
func slips(a, b string) int {
	x, y := []rune(a), []rune(b)
	if d := len(x) - len(y); d > 2 || d < -2 {
		return 3
	}
	before, last, now := make([]int, len(y)+1), make([]int, len(y)+1), make([]int, len(y)+1)
	for j := range last {
		last[j] = j
	}
	for i := range x {
		now[0] = i + 1
		for j := range y {
			d := min(last[j+1]+1, now[j]+1, last[j]+differ(x[i], y[j]))
			if i > 0 && j > 0 && x[i] == y[j-1] && x[i-1] == y[j] {
				d = min(d, before[j-1]+1)
			}
			now[j+1] = d
		}
		before, last, now = last, now, before
	}
	return last[len(y)]
}

// differ is 1 for two letters that are not the same, else 0.
func differ(a, b rune) int {
	if a == b {
		return 0
	}
	return 1
}
