package records

import (
	"math"
	"strconv"
	"strings"
	"unicode"
)

// numberKind is a kind of number, by what may stand beside the digits.
type numberKind struct {
	example string
	beside  func(r rune) bool // signs taken away from either end
}

// none is what stands beside the digits of a plain number.
func none(rune) bool { return false }

var (
	numberCell  = numberKind{"a number such as 2.5", none}
	moneyCell   = numberKind{"an amount such as 12.50", func(r rune) bool { return unicode.Is(unicode.Sc, r) }}
	percentCell = numberKind{"a percentage such as 85", func(r rune) bool { return r == '%' }}
	degreesCell = numberKind{"a temperature such as 18.5", func(r rune) bool { return strings.ContainsRune("°CFcf", r) }}
)

// expected says what the column holds, written as the book writes decimals.
func (k numberKind) expected(d decimal) string {
	if d == comma {
		return strings.ReplaceAll(k.example, ".", ",") + " is expected"
	}
	return k.example + " is expected"
}

// strip takes away what may stand beside the digits, after a minus too.
func (k numberKind) strip(s string) string {
	s = strings.ReplaceAll(s, "\u2212", "-")
	sign := ""
	beside := func(r rune) bool { return unicode.IsSpace(r) || k.beside(r) }
	s = strings.TrimFunc(s, beside)
	if rest, ok := strings.CutPrefix(s, "-"); ok {
		sign, s = "-", strings.TrimLeftFunc(rest, beside)
	}
	return sign + s
}

// decimal is the sign between a whole number and its fraction.
type decimal byte

const (
	point decimal = '.'
	comma decimal = ','
)

// parseNumber reads digits with an optional minus, separators of thousands and
// a fraction. Nothing else: no exponent, no infinity, no base but ten.
func parseNumber(s string, d decimal) (float64, bool) {
	rest, minus := strings.CutPrefix(s, "-")
	whole, fraction, broken := strings.Cut(rest, string(rune(d)))
	whole, ok := ungroup(whole, d)
	if whole == "" && broken {
		whole, ok = "0", true // .5
	}
	if !ok || broken && !digits(fraction) || len(fraction) > 15 || len(strings.TrimLeft(whole+fraction, "0")) > 15 {
		return 0, false
	}
	x, err := strconv.ParseFloat(whole+"."+fraction, 64)
	if err != nil {
		return 0, false
	}
	if minus {
		x = -x
	}
	return x + 0, true
}

// ungroup takes the separators of thousands out of a whole number: all alike,
// with three digits after each.
func ungroup(s string, d decimal) (string, bool) {
	sep := strings.IndexFunc(s, func(r rune) bool { return r < '0' || r > '9' })
	if sep < 0 {
		return s, s != ""
	}
	var mark string
	for _, r := range s[sep:] {
		mark = string(r)
		break
	}
	other := map[decimal]string{point: ",", comma: "."}[d]
	if mark != other && !strings.Contains(" '\u2019\u00a0\u202f", mark) {
		return "", false
	}
	groups := strings.Split(s, mark)
	for i, g := range groups {
		if !digits(g) || i > 0 && len(g) != 3 || len(g) > 3 {
			return "", false
		}
	}
	return strings.Join(groups, ""), true
}

// digits reports whether a text is digits and nothing else.
func digits(s string) bool {
	for i := range len(s) {
		if s[i] < '0' || s[i] > '9' {
			return false
		}
	}
	return s != ""
}

// parseWhole reads a whole number of up to nine digits.
func parseWhole(s string, d decimal) (int, bool) {
	if len(s) < 10 && digits(s) {
		return atoi(s), true
	}
	s = numberCell.strip(s)
	for _, zeros := range []string{"0", "00"} { // 60.0 and 60.00, as a spreadsheet may write 60; 1.000 may be a thousand
		if whole, ok := strings.CutSuffix(s, string(rune(d))+zeros); ok && whole != "" {
			s = whole
			break
		}
	}
	if strings.ContainsRune(s, rune(d)) {
		return 0, false
	}
	x, ok := parseNumber(s, d)
	if !ok || math.Abs(x) >= 1e9 {
		return 0, false
	}
	return int(x), true
}

// lookalikes are letters that a typist takes for digits.
var lookalikes = strings.NewReplacer("O", "0", "o", "0", "l", "1", "I", "1", "i", "1")

// wholeRemedy says how to mend what is no whole number.
func wholeRemedy(s string) string {
	if remedy := letterRemedy(s); remedy != "" {
		return remedy
	}
	for _, d := range []decimal{point, comma} {
		if _, ok := parseNumber(s, d); ok {
			return "a part of one cannot be counted: write it without a fraction"
		}
	}
	return ""
}

// numberRemedy says how to mend what is no number.
func numberRemedy(s string, d decimal) string {
	if remedy := letterRemedy(s); remedy != "" {
		return remedy
	}
	if _, ok := parseNumber(s, d); ok {
		return ""
	}
	if d == point {
		if _, ok := parseNumber(s, comma); ok {
			return "write a point for the fraction, or set decimal to comma in book.csv"
		}
	}
	if d == comma {
		if _, ok := parseNumber(s, point); ok {
			return "write a comma for the fraction, or set decimal to point in book.csv"
		}
	}
	return ""
}

// remedy says how to mend what is no number of a kind: by its digits, without the sign
// or code beside them, and by a code that is not the book's.
func (s Settings) remedy(kind numberKind, cell string, d decimal) string {
	bare, other := kind.strip(cell), ""
	if kind.example == moneyCell.example {
		bare, other = withoutLetters(bare)
	}
	remedy := numberRemedy(bare, d)
	if code := currencyCode(other); code != "" && code != s.Currency {
		if remedy != "" {
			remedy += "; "
		}
		remedy += "the book's currency is " + s.Currency + ": convert it, or mend the setting currency"
	}
	return remedy
}

// withoutLetters parts an amount from a code of three letters before or behind it.
func withoutLetters(s string) (amount, code string) {
	for _, cut := range [][2]int{{0, 3}, {len(s) - 3, len(s)}} {
		if len(s) > 3 && currencyCode(s[cut[0]:cut[1]]) != "" {
			return strings.TrimSpace(s[:cut[0]] + s[cut[1]:]), s[cut[0]:cut[1]]
		}
	}
	return s, ""
}

// letterRemedy tells a letter that was typed for a digit; empty where that does not
// make a number of the cell.
func letterRemedy(s string) string {
	mended := lookalikes.Replace(strings.TrimSpace(s))
	if mended == s {
		return ""
	}
	if _, ok := parseNumber(mended, point); !ok {
		return ""
	}
	if strings.ContainsAny(s, "Oo") {
		return "the letter O stands for a zero"
	}
	return "a letter stands for a one"
}

// plain writes a number with as few digits as tell it.
func plain(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// itoa writes a whole number.
func itoa(n int) string { return strconv.Itoa(n) }
