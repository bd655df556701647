package estimate

import (
	"math"

	"gonum.org/v1/gonum/stat"
)

// Paired is the mean of N matched differences, in their unit: SD their standard deviation (divisor N - 1), SE that of the
// mean, SD/sqrt(N), CI the mean's interval by Student's t with N - 1 degrees of freedom.
type Paired struct {
	N            int
	Mean, SD, SE float64
	CI           Interval
}

// PairedMean returns the mean of the differences d and its interval at confidence conf (rule "Matched sowings"). ok is false,
// and the result empty, for fewer than two differences or where one is no finite number.
// Source: Student (1908), Biometrika 6:1-25.
func PairedMean(d []float64, conf float64) (p Paired, ok bool) {
	if len(d) < 2 {
		return Paired{}, false
	}
	mean, sd := stat.MeanStdDev(d, nil)
	se := sd / math.Sqrt(float64(len(d)))
	if math.IsNaN(mean+sd) || math.IsInf(mean+sd, 0) {
		return Paired{}, false
	}
	half := 0.0 // equal differences: an interval of no width, whatever t is
	if se > 0 {
		half = T(conf, float64(len(d)-1)) * se
	}
	return Paired{N: len(d), Mean: mean, SD: sd, SE: se, CI: Interval{mean - half, mean + half}}, true
}
