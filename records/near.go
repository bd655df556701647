package records

import "unicode/utf8"

// nearest returns the candidate that differs from s by a slip of the keys, and
// empty if none does, or several do alike; fold brings candidates into the form
// in which s is.
func nearest(s string, candidates []string, fold func(string) string) string {
	best, least := "", tooFar
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
	switch n := min(utf8.RuneCountInString(a), utf8.RuneCountInString(b)); {
	case n <= 2:
		return 0
	case n <= 6:
		return 1
	}
	return 2
}

// tooFar stands for any number of slips that makes no likely mistake.
const tooFar = 3

// longestNear is how many bytes a name may have to be nearly another: comparing takes
// longer the longer names are, and nobody means a page of text by another.
const longestNear = 200

// slips counts the single characters to insert, delete, replace or swap with
// their neighbour between two words (the optimal string alignment distance), up
// to tooFar.
func slips(a, b string) int {
	if a == b {
		return 0
	}
	if d := len(a) - len(b); len(a) > longestNear || len(b) > longestNear || d > 2*utf8.UTFMax || d < -2*utf8.UTFMax {
		return tooFar
	}
	var roomX, roomY [longestNear]rune
	x, y := runes(roomX[:0], a), runes(roomY[:0], b)
	if d := len(x) - len(y); d > 2 || d < -2 {
		return tooFar
	}
	return alignment(x, y)
}

func runes(into []rune, s string) []rune {
	for _, r := range s {
		into = append(into, r)
	}
	return into
}

// alignment is the distance of slips. Of each row of the table of distances only five
// can be below tooFar, those in the middle: d[i][j] is at least the difference of i and j.
func alignment(x, y []rune) int {
	var room [3][longestNear + 2]int8
	before, last, now := room[0][:], room[1][:], room[2][:]
	for j := range len(y) + 1 {
		last[j] = int8(min(j, tooFar))
	}
	least := int8(0)
	for i := range x {
		from, to := max(i-2, 0), min(i+2, len(y)-1)
		now[from], now[to+2] = tooFar, tooFar // beside the five
		if from == 0 {
			now[0] = int8(min(i+1, tooFar))
		}
		above := least
		least = now[from]
		for j := from; j <= to; j++ {
			d := min(last[j+1]+1, now[j]+1, last[j]+differ(x[i], y[j]), tooFar)
			if i > 0 && j > 0 && x[i] == y[j-1] && x[i-1] == y[j] {
				d = min(d, before[j-1]+1)
			}
			now[j+1], least = d, min(least, d)
		}
		if least == tooFar && above >= tooFar-1 { // one such row a swap steps over, for one more
			return tooFar
		}
		before, last, now = last, now, before
	}
	return int(last[len(y)])
}

// differ is 1 for two letters that are not the same, else 0.
func differ(a, b rune) int8 {
	if a == b {
		return 0
	}
	return 1
}
