package draw

import (
	"fmt"
	"html/template"
	"math"
	"strconv"
	"strings"

	"traybook/report/words"
)

// Next draws the uses a season of each tray beyond those owned, one narrow bar a tray,
// those to buy in the colour of their kind; line is the uses from which one pays, left out
// where it is not known (0). Heights are of the tallest bar, so the drawing shows how fast
// use falls off and not how much it is; numbers stand in the table. Empty where no further
// tray was wanted.
func Next(owned int, uses []float64, buy int, k Kind, line float64) template.HTML {
	const base, high = 64.0, 57.0
	n := owned + len(uses)
	most := line
	for _, u := range uses {
		most = math.Max(most, u)
	}
	if n == 0 || !(most > 0) {
		return ""
	}
	step := 100 / float64(n)
	var b strings.Builder
	b.WriteString(`<svg class="bars" aria-hidden="true">`)
	fmt.Fprintf(&b, `<rect class="own" x="0" y="59" width="%s" height="5"/>`, percent2(step*float64(owned)))
	for i, u := range uses {
		class := "b"
		if i < buy {
			class = string(k)
			if k == Solid || k == Other {
				class = "b"
			}
		}
		h := high * u / most
		fmt.Fprintf(&b, `<rect class="%s" x="%s" y="%s" width="%s" height="%s"/>`, class, percent2(step*float64(owned+i)), pixels(base-h), percent2(step*0.72), pixels(h))
	}
	if line > 0 {
		fmt.Fprintf(&b, `<rect class="need" x="%s" y="%s" width="%s" height="1"/>`, percent2(step*float64(owned)), pixels(base-high*line/most), percent2(100-step*float64(owned)))
	}
	fmt.Fprintf(&b, `<text class="an" x="0" y="79">%s owned</text><text class="an e" x="100%%" y="79">%s tray</text></svg>`, words.Whole(owned), Ordinal(n))
	return template.HTML(b.String())
}

// percent2 writes a share of the width to a hundredth, as many bars stand side by side. A
// tenth would let neighbours drift apart by a bar's width.
func percent2(p float64) string { return strconv.FormatFloat(words.Round(p, 2), 'f', -1, 64) + "%" }

// Ordinal writes 1st, 2nd, 3rd, 4th, 11th. The teens end in th, whatever their last digit.
func Ordinal(n int) string {
	end := "th"
	if n/10%10 != 1 {
		switch n % 10 {
		case 1:
			end = "st"
		case 2:
			end = "nd"
		case 3:
			end = "rd"
		}
	}
	return fmt.Sprintf("%d%s", n, end)
}
