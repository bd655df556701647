package workbook

import "strings"

// shown is what the form in which a number is shown makes of it.
type shown uint8

const (
	asNumber shown = iota
	asPercent
	asDay  // a day, perhaps with a time
	asTime // a time of day, or a length of time
)

// builtIn are the forms that files name by number alone (ECMA-376, part 1, 18.8.30).
// Those of East Asian days, 27 to 36 and 50 to 58, are among them.
func builtIn(n int) shown {
	switch {
	case n == 9 || n == 10:
		return asPercent
	case n >= 18 && n <= 21, n >= 32 && n <= 35, n >= 45 && n <= 47:
		return asTime
	case n >= 14 && n <= 17, n == 22, n >= 27 && n <= 36, n >= 50 && n <= 58:
		return asDay
	}
	return asNumber
}

// readStyles reads in which form each style shows a number.
func (x *xlsx) readStyles(name string) error {
	var s struct {
		Forms []struct {
			ID   int    `xml:"numFmtId,attr"`
			Code string `xml:"formatCode,attr"`
		} `xml:"numFmts>numFmt"`
		Styles []struct {
			Form int `xml:"numFmtId,attr"`
		} `xml:"cellXfs>xf"`
	}
	if err := x.decode(name, &s); err != nil {
		return err
	}
	own := map[int]shown{}
	for _, f := range s.Forms {
		own[f.ID] = formOf(f.Code)
	}
	for _, st := range s.Styles {
		form, ok := own[st.Form]
		if !ok {
			form = builtIn(st.Form)
		}
		x.shown = append(x.shown, form)
	}
	return nil
}

// formOf reads a form's code, such as yyyy-mm-dd;@ or 0.0%: the letters that stand for
// parts of a day, outside quotation marks, brackets and what a backslash spares.
func formOf(code string) shown {
	bare := strings.ToLower(bareForm(code))
	bare = strings.NewReplacer("general", "", "am/pm", "h", "a/p", "h").Replace(bare)
	switch {
	case strings.ContainsAny(bare, "yd"):
		return asDay
	case strings.ContainsAny(bare, "hs"):
		return asTime
	case strings.Contains(bare, "m"): // months, as nothing says that they are minutes
		return asDay
	case strings.Contains(bare, "%"):
		return asPercent
	}
	return asNumber
}

// bareForm is a form's code for positive numbers without its literal parts. Brackets
// hold colours, languages and conditions, but [h], [m] and [s] count hours, minutes and
// seconds beyond a day.
func bareForm(code string) string {
	var b strings.Builder
	for i := 0; i < len(code); i++ {
		switch c := code[i]; c {
		case ';':
			return b.String()
		case '\\', '_', '*':
			i++
		case '"', '[':
			end := strings.IndexByte(code[i+1:], closing[c])
			if end < 0 {
				return b.String()
			}
			if c == '[' && strings.Trim(strings.ToLower(code[i+1:i+1+end]), "hms") == "" {
				b.WriteByte('h')
			}
			i += end + 1
		default:
			b.WriteByte(c)
		}
	}
	return b.String()
}

var closing = map[byte]byte{'"': '"', '[': ']'}
