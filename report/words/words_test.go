package words

import (
	"math"
	"testing"

	"traybook/records"
	"traybook/report/rate"
)

type cases []struct{ got, want string }

func (all cases) check(t *testing.T) {
	t.Helper()
	for i, c := range all {
		if c.got != c.want {
			t.Errorf("%d: got %q, want %q", i, c.got, c.want)
		}
	}
}

func TestNumbers(t *testing.T) {
	cases{
		{Percent(0.824), "82\u00a0%"},
		{Percent(0.825), "83\u00a0%"}, // the same in a table and in a chart's description
		{Percent(0.0), "0\u00a0%"},
		{Percent(1), "100\u00a0%"},
		{Fixed(0.285*100, 0), "29"}, // 28.499999999999996 as it is multiplied
		{Fixed(-28.5, 0), "−29"},
		{Fixed(-0.0004, 3), "0.000"},
		{Fixed(-1234567.891, 2), "−1,234,567.89"},
		{Fixed(999.9999, 2), "1,000.00"},
		{Fixed(math.Inf(1), 2), "–"},
		{Fixed(math.NaN(), 0), "–"},
		{Number(2.50), "2.5"},
		{Number(100), "100"},
		{Number(1000.004), "1,000"},
		{Whole(1234), "1,234"},
		{Signed(4.2, 1), "+4.2"},
		{Signed(0.01, 1), "0.0"},
		{Signed(-0.01, 1), "0.0"},
		{Signed(-4.2, 1), "−4.2"},
		{Of(rate.Num{}, Percent), "–"},
		{Of(records.Known(0.0), Percent), "0\u00a0%"},
	}.check(t)
}

func TestNumbersWithAWord(t *testing.T) {
	cases{
		{Days(6.26), "6.5\u00a0days"},
		{Days(1), "1\u00a0day"},
		{Days(0.8), "1\u00a0day"},
		{Days(0.2), "0\u00a0days"},
		{DaysNumber(3.75), "4"},
		{Tenths(16.48, "use", "uses"), "16.5\u00a0uses"},
		{Tenths(1.005, "use", "uses"), "1\u00a0use"},
		{Tenths(1.05, "use", "uses"), "1.1\u00a0uses"},
		{TenthsNumber(-2.25), "−2.3"},
		{Plural(1, "batch", "batches"), "1\u00a0batch"},
		{Plural(0.5, "tray", "trays"), "0.5\u00a0trays"},
		{Plural(1.5, "tray", "trays"), "1.5\u00a0trays"},
		{Plural(0, "tray", "trays"), "0\u00a0trays"},
		{Batches(12), "12\u00a0batches"},
		{Count(1, "match", "matches"), "1 match"},
		{Count(1200, "row", "rows"), "1200 rows"},
	}.check(t)
	if got := RoundPlants(0.285 * 100); got != 29 {
		t.Errorf("%g plants, shown as %s", got, Whole(0.285*100))
	}
}

func TestMoney(t *testing.T) {
	usd, yen, dinar, none := NewMoney("usd"), NewMoney("JPY"), NewMoney("TND"), NewMoney("")
	cases{
		{usd.Each(0.1234), "USD\u00a00.123"},
		{usd.EachNumber(0.0625), "0.063"},
		{usd.Sum(1240.5), "USD\u00a01,240.50"},
		{usd.SignedNumber(0.36), "+0.36"},
		{usd.SignedNumber(-0.001), "0.00"},
		{usd.Code(), "USD"},
		{yen.Each(12.34), "JPY\u00a012.3"}, // no smaller coin than the yen
		{yen.Sum(1240.5), "JPY\u00a01,241"},
		{dinar.Sum(1.2345), "TND\u00a01.235"}, // a thousand millimes
		{none.Sum(1), "1.00"},
		{NewMoney("XQZ").Sum(1), "XQZ\u00a01.00"},
	}.check(t)
}

func TestDatesAndDegrees(t *testing.T) {
	date := records.NewDate(2026, 3, 14)
	cases{
		{LongDate(date), "14\u00a0March 2026"},
		{LongDate(0), "no date"},
		{ISODate(date), "2026-03-14"},
		{ISODate(0), "–"},
		{DayMonth(date), "14 March"},
		{DaysLate(0), "up to the planned day"},
		{DaysLate(8), "8 to 14 days late"},
		{DaysLate(15), "15 days late or more"},
		{Degrees(records.Settings{Fahrenheit: true})(25), "77\u00a0°F"},
		{Degrees(records.Settings{})(-3.4), "−3\u00a0°C"},
	}.check(t)
}

func TestRatesAndIntervals(t *testing.T) {
	r := rate.Rate{Batches: 5, X: 41, N: 50, Share: records.Known(0.82), Low: records.Known(0.76), High: records.Known(0.87)}
	scattered, one := r, r
	scattered.Low, scattered.High = rate.Num{}, rate.Num{}
	one.Batches, one.Low, one.High = 1, rate.Num{}, rate.Num{}
	cases{
		{Interval(r.Low, r.High, PercentNumber), "(76\u00a0to\u00a087)"},
		{Interval(r.Low, rate.Num{}, PercentNumber), "too few batches"},
		{ShareText(r), "82\u00a0% (76\u00a0to\u00a087)"},
		{ShareText(scattered), "82\u00a0% (no range: too few batches are alike)"},
		{ShareText(one), "82\u00a0% (too few batches for an interval)"},
		{ShareText(rate.Rate{}), "not known"},
	}.check(t)
}
