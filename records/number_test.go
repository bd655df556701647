package records

import "testing"

// What counts as a number: what spreadsheets write, and nothing that only a
// programming language takes for one.
func TestParseNumber(t *testing.T) {
	for _, c := range []struct {
		s    string
		d    decimal
		want float64
		ok   bool
	}{
		{"0", point, 0, true},
		{"050", point, 50, true}, // not octal
		{"12.50", point, 12.5, true},
		{".5", point, 0.5, true},
		{"-3", point, -3, true},
		{"-0", point, 0, true},
		{"1,234", point, 1234, true},
		{"1,234,567.25", point, 1234567.25, true},
		{"1 234.5", point, 1234.5, true},
		{"1\u00a0234", point, 1234, true},
		{"1\u202f234", point, 1234, true},
		{"1'234", point, 1234, true},
		{"12,5", comma, 12.5, true},
		{"1.234,5", comma, 1234.5, true},
		{"1.234", comma, 1234, true},
		{"12,5", point, 0, false},
		{"0,12", point, 0, false},
		{"1234,567", point, 0, false},
		{"1,23,456", point, 0, false},
		{"1,234 567", point, 0, false},
		{"12.5", comma, 0, false},
		{"5.", point, 0, false},
		{".", point, 0, false},
		{"", point, 0, false},
		{"-", point, 0, false},
		{"1.2.3", point, 0, false},
		{"1e3", point, 0, false},
		{"0x10", point, 0, false},
		{"1_000", point, 0, false},
		{"NaN", point, 0, false},
		{"Inf", point, 0, false},
		{"--1", point, 0, false},
		{"+1", point, 0, false},
		{"٣", point, 0, false},
		{"1234567890123456", point, 0, false}, // more digits than a double holds
	} {
		if got, ok := parseNumber(c.s, c.d); got != c.want || ok != c.ok {
			t.Errorf("parseNumber(%q, %q) = %v, %v; want %v, %v", c.s, c.d, got, ok, c.want, c.ok)
		}
	}
}

func TestParseWhole(t *testing.T) {
	for s, want := range map[string]int{"60": 60, " 60 ": 60, "1,200": 1200, "-2": -2, "−2": -2, "999999999": 999999999, "60.0": 60, "60.00": 60} {
		if got, ok := parseWhole(s, point); !ok || got != want {
			t.Errorf("parseWhole(%q) = %v, %v", s, got, ok)
		}
	}
	// 1.000 is one in one country and a thousand in another.
	for _, s := range []string{"60.5", "60.01", ".0", "1.000", "6O", "50%", "$5", "1000000000", ""} {
		if got, ok := parseWhole(s, point); ok {
			t.Errorf("parseWhole(%q) = %v", s, got)
		}
	}
}

func TestStrip(t *testing.T) {
	for _, c := range []struct {
		kind numberKind
		s    string
		want string
	}{
		{moneyCell, "$ 12.50", "12.50"},
		{moneyCell, "12,50 €", "12,50"},
		{moneyCell, "-£2", "-2"},
		{moneyCell, "£-2", "-2"},
		{moneyCell, "\u22122", "-2"},
		{percentCell, " 85 % ", "85"},
		{degreesCell, "21 °C", "21"},
		{degreesCell, "-4°F", "-4"},
		{numberCell, "$5", "$5"},
		{numberCell, "85%", "85%"},
	} {
		if got := c.kind.strip(c.s); got != c.want {
			t.Errorf("strip(%q) = %q, want %q", c.s, got, c.want)
		}
	}
}

// Slips of the keys by optimal string alignment, each counted by hand. In "ab" and
// "bca" no letter may be swapped and then moved apart, hence 3 (the example of the
// Rust library strsim's osa_distance).
func TestSlips(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want int
	}{
		{"abc", "abc", 0}, {"ab", "ba", 1}, {"lettuce", "letuce", 1},
		{"emerged", "emergde", 1}, {"kale", "kales", 1}, {"a", "abcd", 3}, {"trays", "stray", 2}, {"ab", "bca", 3},
	} {
		if got := slips(c.a, c.b); got != c.want {
			t.Errorf("slips(%q, %q) = %d, want %d", c.a, c.b, got, c.want)
		}
	}
	if got := nearest("to", []string{"tu"}, foldHeader); got != "" {
		t.Errorf("names of two characters are never a slip: %q", got)
	}
	if got := nearest("LT-05", []string{"LT-04", "LT-03"}, func(s string) string { return s }); got != "" {
		t.Errorf("of two as near, neither is meant: %q", got)
	}
}
