package words

import "traybook/report/rate"

// Interval writes the two ends of an interval in brackets: (76 to 87); or that too
// few batches stand behind it.
func Interval(low, high rate.Num, write func(float64) string) string {
	if !low.Known || !high.Known {
		return TooFew
	}
	return "(" + write(low.Value) + NBSP + "to" + NBSP + write(high.Value) + ")"
}

// ShareText writes a rate with its interval for a sentence: 82 % (76 to 87), or
// 82 % (too few batches for an interval). Where there are several batches but too few
// of one group to show how batches differ (rule "Scatter"), it says that.
func ShareText(r rate.Rate) string {
	switch {
	case !r.Share.Known:
		return "not known"
	case r.Low.Known && r.High.Known:
		return Percent(r.Share.Value) + " " + Interval(r.Low, r.High, PercentNumber)
	case !r.Few():
		return Percent(r.Share.Value) + " (no range: too few batches are alike)"
	}
	return Percent(r.Share.Value) + " (" + TooFew + " for an interval)"
}
