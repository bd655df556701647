package records

import "strings"

// wholeSetting takes a whole number from least to most; what is what else is expected.
func wholeSetting(least, most int, what string, set func(*Settings, int)) func(*loader, string) (string, string) {
	return func(l *loader, s string) (used, expected string) {
		n, ok := parseWhole(s, point)
		if !ok || n < least || n > most {
			return "", what
		}
		set(&l.settings, n)
		return itoa(n), ""
	}
}

// shareSetting takes a percentage from least to most and sets a share of 1.
func shareSetting(least, most float64, set func(*Settings, float64)) func(*loader, string) (string, string) {
	return func(l *loader, s string) (used, expected string) {
		x, ok := l.settingNumber(percentCell, s)
		if !ok || x < least || x > most {
			return "", "a percentage from " + plain(least) + " to " + plain(most)
		}
		set(&l.settings, x/100)
		return plain(x), ""
	}
}

// amountSetting takes an amount of money that is not negative.
func amountSetting(set func(*Settings, float64)) func(*loader, string) (string, string) {
	return func(l *loader, s string) (used, expected string) {
		x, ok := l.settingNumber(moneyCell, s)
		if !ok || x < 0 {
			return "", "an amount such as 12.50"
		}
		set(&l.settings, x)
		return plain(x), ""
	}
}

// placesSetting takes a number of trays above 0.
func placesSetting(set func(*Settings, float64)) func(*loader, string) (string, string) {
	return func(l *loader, s string) (used, expected string) {
		x, ok := l.settingNumber(numberCell, s)
		if !ok || x <= 0 {
			return "", "a number of trays above 0"
		}
		set(&l.settings, x)
		return plain(x), ""
	}
}

// settingNumber reads a number of book.csv, with the sign or unit that it may carry.
func (l *loader) settingNumber(kind numberKind, s string) (float64, bool) {
	return parseNumber(kind.strip(s), l.decimal)
}

// scoreWord takes the farm's own word for a score, whatever it is.
func scoreWord(i int) func(*loader, string) (string, string) {
	return func(l *loader, s string) (used, expected string) { l.settings.ScoreWords[i] = s; return s, "" }
}

// takeCurrency takes a code that ISO 4217 knows, in whatever case.
func (l *loader) takeCurrency(s string) (used, expected string) {
	code := currencyCode(s)
	if code == "" {
		return "", "a currency's code of ISO 4217 such as USD or EUR"
	}
	l.settings.Currency = code
	return code, ""
}

// takeDates takes the order of slashed dates in every log.
func (l *loader) takeDates(s string) (used, expected string) {
	order := dateOrder(strings.ToLower(s))
	if order != ymd && order != dmy && order != mdy {
		l.orderBad = true
		return "", "ymd, dmy or mdy"
	}
	l.order = order
	return string(order), ""
}

// takeDecimal takes the sign before fractions, by its name or as itself.
func (l *loader) takeDecimal(s string) (used, expected string) {
	signs := map[string]decimal{"point": point, ".": point, "comma": comma, ",": comma}
	sign, ok := signs[strings.ToLower(s)]
	if !ok {
		return "", "point or comma"
	}
	l.decimal = sign
	return map[decimal]string{point: "point", comma: "comma"}[sign], ""
}

// takeTemperature takes the scale in which temperatures are written and shown; figures
// are in Celsius either way.
func (l *loader) takeTemperature(s string) (used, expected string) {
	scale := strings.ToUpper(strings.TrimPrefix(s, "°"))
	if scale != "C" && scale != "F" {
		return "", "C or F"
	}
	l.settings.Fahrenheit = scale == "F"
	return scale, ""
}

// takeLegal takes whether the legal minimum of the United States is shown.
func (l *loader) takeLegal(s string) (used, expected string) {
	v, ok := yesNo[strings.ToLower(s)]
	if !ok {
		return "", "yes or no"
	}
	l.settings.LegalMinimum = v
	return yesOrNo(v), ""
}

// yesOrNo writes an answer as it is read.
func yesOrNo(v bool) string {
	if v {
		return "yes"
	}
	return "no"
}

// takeHeating takes the first and the last month of heating, which may lie over the new
// year: 10-4.
func (l *loader) takeHeating(s string) (used, expected string) {
	first, last, ok := strings.Cut(strings.NewReplacer("–", "-", " to ", "-").Replace(s), "-")
	from, ok1 := parseWhole(first, point)
	until, ok2 := parseWhole(last, point)
	if !ok || !ok1 || !ok2 || from < 1 || from > 12 || until < 1 || until > 12 {
		return "", "two months such as 10-4"
	}
	l.settings.HeatingFrom, l.settings.HeatingUntil = from, until
	return itoa(from) + "-" + itoa(until), ""
}
