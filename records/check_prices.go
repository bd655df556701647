package records

import (
	"math"
	"slices"
	"strconv"
	"strings"
)

// oddTimes is how many times another an amount is odd; oddPrice that of a tray's price.
const (
	oddTimes = 10
	oddPrice = 5
)

// figure is a number of a row that is compared with others of its kind.
type figure struct {
	row   row
	value float64
}

// checkPrices warns of odd prices of trays and of seed.
func (l *loader) checkPrices() {
	l.checkTrayPrices()
	l.checkLotPrices()
}

// checkTrayPrices warns of a price that is five times, or a fifth of, all others of the
// tray code: a price of ten trays written for one. Trays given or sold are not compared.
func (l *loader) checkTrayPrices() {
	of := map[string][]figure{}
	var codes []string
	for e := range alive(l.trays) {
		if p := e.is.Price; p.Known && p.Value > 0 && e.is.Count.Or(1) >= 0 {
			codes = append(codes, e.is.Tray)
			of[e.is.Tray] = append(of[e.is.Tray], figure{e.row, p.Value})
		}
	}
	for _, code := range unique(codes) {
		oddOnes(of[code], 2, func(f figure, low, high float64) {
			if f.value >= oddPrice*high || f.value*oddPrice <= low {
				f.row.problem("odd-price", "price", "price "+plain(f.value)+" of a tray "+quote(code)+", others at "+amounts(low, high),
					"a price near the code's others is expected", "what a use costs hangs on it: is it of one tray?")
			}
		})
	}
}

// checkLotPrices warns of a lot whose seeds are ten times, or a tenth, as dear as those
// of all other lots of its crop. A lot without seeds, or grams and seeds in a gram, has
// no price a seed here.
func (l *loader) checkLotPrices() {
	of := map[string][]figure{}
	var crops []string
	for e := range alive(l.lots) {
		seeds := e.is.Seeds
		if !seeds.Known && e.is.Grams.Known && e.is.SeedsPerGram.Known {
			seeds = Known(e.is.Grams.Value * e.is.SeedsPerGram.Value)
		}
		if p := e.is.Price; p.Known && p.Value > 0 && seeds.Known {
			crops = append(crops, e.is.Crop)
			of[e.is.Crop] = append(of[e.is.Crop], figure{e.row, p.Value / seeds.Value})
		}
	}
	for _, crop := range unique(crops) {
		oddOnes(of[crop], 4, func(f figure, low, high float64) {
			if f.value >= oddTimes*high || f.value*oddTimes <= low {
				f.row.problem("odd-price", "price", "a seed of "+quote(crop)+" at "+threeDigits(f.value)+", others at "+amounts(low, high),
					"a price a seed near other lots' is expected", "what seed costs hangs on it: are seeds, grams and the price of the whole lot right?")
			}
		})
	}
}

// checkAmounts warns of an amount, or of hours, ten times the largest other of its
// category, of five or more rows.
func (l *loader) checkAmounts() {
	of := map[[2]string][]figure{}
	var kinds [][2]string
	add := func(col, kind string, r row, value float64) {
		k := [2]string{col, kind}
		kinds = append(kinds, k)
		of[k] = append(of[k], figure{r, value})
	}
	for e := range alive(l.costs) {
		if e.is.Amount.Known {
			add("amount", string(e.is.Category), e.row, math.Abs(e.is.Amount.Value))
		}
		if e.is.Hours.Known {
			add("hours", string(e.is.Task), e.row, e.is.Hours.Value)
		}
	}
	for _, k := range unique(kinds) {
		oddOnes(of[k], 5, func(f figure, _, high float64) {
			if high > 0 && f.value >= oddTimes*high {
				f.row.problem("odd-amount", k[0], k[0]+" "+plain(f.value)+" of "+k[1]+", the largest other "+plain(high),
					"no more than "+itoa(oddTimes)+" times the largest other is expected", "what a transplant costs hangs on it: is the number right?")
			}
		})
	}
}

// oddOnes hands over each of at least so many figures with the least and the largest of
// the others.
func oddOnes(all []figure, least int, judge func(f figure, low, high float64)) {
	if len(all) < least {
		return
	}
	values := make([]float64, len(all))
	for i, f := range all {
		values[i] = f.value
	}
	slices.Sort(values)
	n := len(values) - 1
	for _, f := range all {
		low, high := values[0], values[n]
		if f.value == low {
			low = values[1]
		}
		if f.value == high {
			high = values[n-1]
		}
		judge(f, low, high)
	}
}

// amounts writes the range of the others.
func amounts(low, high float64) string {
	if low == high {
		return threeDigits(low)
	}
	return threeDigits(low) + " to " + threeDigits(high)
}

// threeDigits writes a number with three digits that count, for messages.
func threeDigits(x float64) string {
	behind := 0
	if x != 0 {
		behind = max(0, 2-int(math.Floor(math.Log10(math.Abs(x)))))
	}
	s := strconv.FormatFloat(x, 'f', behind, 64)
	if behind == 0 {
		return s
	}
	return strings.TrimRight(strings.TrimRight(s, "0"), ".")
}

// unique lists each value once, in the order in which it first stands.
func unique[T comparable](all []T) []T {
	seen := map[T]bool{}
	var once []T
	for _, x := range all {
		if !seen[x] {
			seen[x] = true
			once = append(once, x)
		}
	}
	return once
}
