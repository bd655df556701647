package words

import "traybook/records"

// Degrees returns the writer of temperatures in the book's own unit, whole degrees:
// 25 C as 25 °C or 77 °F.
func Degrees(s records.Settings) func(celsius float64) string {
	return func(celsius float64) string { return Fixed(s.Degrees(celsius), 0) + NBSP + s.DegreeSign() }
}
