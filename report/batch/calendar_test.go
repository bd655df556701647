package batch

import (
	"testing"

	"traybook/report/internal/booktest"
)

func TestYearsBefore(t *testing.T) {
	for _, tt := range []struct {
		day   string
		years int
		want  string
	}{{"2025-05-01", 1, "2024-05-01"}, {"2024-02-29", 1, "2023-02-28"}, {"2024-02-29", 4, "2020-02-29"}, {"2023-02-28", 1, "2022-02-28"},
		{"2024-12-31", 2, "2022-12-31"}, {"2024-03-01", 1, "2023-03-01"}} {
		if got := YearsBefore(booktest.Day(t, tt.day), tt.years); got != booktest.Day(t, tt.want) {
			t.Errorf("%s, %d years before: %s, want %s", tt.day, tt.years, got, tt.want)
		}
	}
}
