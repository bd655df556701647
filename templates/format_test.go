package templates

import (
	"math"
	"testing"

	"traybook/records"
	"traybook/report"
)

// A value worked out is told to four figures, one that was written as it is.
func TestShortened(t *testing.T) {
	for value, want := range map[string]string{"0.02235393965868012": "0.02235", "41": "41", "0.32": "0.32", "ymd": "ymd", "2-5": "2-5"} {
		if got := shortened(value); got != want {
			t.Errorf("%s: %s, want %s", value, got, want)
		}
	}
}

func TestFormat(t *testing.T) {
	usd, yen, dinar, none := newMoney("usd"), newMoney("JPY"), newMoney("TND"), newMoney("")
	date := records.NewDate(2026, 3, 14)
	tests := []struct{ got, want string }{
		{percent(0.824), "82\u00a0%"},
		{percent(0.825), "83\u00a0%"},
		{percent(0.0), "0\u00a0%"},
		{percent(1), "100\u00a0%"},
		{fixed(0.285*100, 0), "29"}, // 28.499999999999996 as it is multiplied
		{fixed(-0.0004, 3), "0.000"},
		{fixed(-1234567.891, 2), "−1,234,567.89"},
		{fixed(999.9999, 2), "1,000.00"},
		{fixed(math.Inf(1), 2), "–"},
		{fixed(math.NaN(), 0), "–"},
		{number(2.50), "2.5"},
		{number(100), "100"},
		{number(1000.004), "1,000"},
		{signed(4.2, 1), "+4.2"},
		{signed(0.01, 1), "0.0"},
		{signed(-0.01, 1), "0.0"},
		{signed(-4.2, 1), "−4.2"},
		{points(0.01), "+1\u00a0point"},
		{points(-0.02), "−2\u00a0points"},
		{days(6.26), "6.5\u00a0days"},
		{days(1), "1\u00a0day"},
		{days(0.2), "0\u00a0days"},
		{daysNumber(3.75), "4"},
		{tenths(16.48, "use", "uses"), "16.5\u00a0uses"},
		{plural(1, "batch", "batches"), "1\u00a0batch"},
		{plural(0.5, "tray", "trays"), "0.5\u00a0trays"},
		{batchCount(12), "12\u00a0batches"},
		{usd.each(0.1234), "USD\u00a00.123"},
		{usd.sum(1240.5), "USD\u00a01,240.50"},
		{yen.each(12.34), "JPY\u00a012.3"}, // no smaller coin than the yen
		{yen.sum(1240.5), "JPY\u00a01,241"},
		{dinar.sum(1.2345), "TND\u00a01.235"}, // a thousand millimes
		{none.sum(1), "1.00"},
		{newMoney("XQZ").sum(1), "XQZ\u00a01.00"},
		{longDate(date), "14\u00a0March 2026"},
		{longDate(0), "no date"},
		{isoDate(date), "2026-03-14"},
		{isoDate(0), "–"},
		{degrees(true)(25), "77\u00a0°F"},
		{degrees(false)(-3.4), "−3\u00a0°C"},
		{monthName(3), "March"},
		{interval(num(0.76), num(0.87), percentNumber), "(76\u00a0to\u00a087)"},
		{interval(num(0.76), report.Num{}, percentNumber), "too few batches"},
		{shareText(shareOf(41, 50, 5, 0.76, 0.87)), "82\u00a0% (76\u00a0to\u00a087)"},
		{shareText(shareOf(41, 50, 1, 0, 0)), "82\u00a0% (too few batches for an interval)"},
		{shareText(report.Rate{}), "not known"},
		{of(report.Num{}, percent), "–"},
	}
	for i, tt := range tests {
		if tt.got != tt.want {
			t.Errorf("%d: got %q, want %q", i, tt.got, tt.want)
		}
	}
}
