package plants

// stillFit is the usable share from which on a band counts as still fit; within noise
// is as much.
// StillFit is the usable share from which on a band counts as still fit; what misses
// it by noise is as much (rule "Missing").
const (
	StillFit = 0.80
	noise    = 1e-9
)

// FitCase says which way the words of rule "Leeway" go.
type FitCase string

// The cases; empty: no band with looks at three batches or more, nothing can be told.
const (
	FitUntil FitCase = "until"                                        // up to the band Last; Below is the next known one
	FitEvery FitCase = "in every band looked at"                      // Last is the latest of them
	FitNever FitCase = "fewer than four in five were fit at any time" // Below is the first of them
)

// Fit is how late plants of a crop in a kind of tray may be set out, for words. Last
// and Below are rows of the table with a share; without one (Batches 0) where the case
// has none.
type Fit struct {
	Crop        string // empty: all crops
	Kind        string
	Case        FitCase
	Last, Below Leeway
}

// fitsOf reads the table, crop by crop and kind by kind, in its order.
func fitsOf(table []Leeway) []Fit {
	var fits []Fit
	for _, l := range table {
		if n := len(fits); n == 0 || fits[n-1].Crop != l.Crop || fits[n-1].Kind != l.Kind {
			fits = append(fits, Fit{Crop: l.Crop, Kind: l.Kind})
		}
		fits[len(fits)-1].read(l)
	}
	return fits
}

// read takes the next band. One without a share is passed over; the first below ends
// the search, whatever comes later.
func (f *Fit) read(l Leeway) {
	switch {
	case !l.Share.Known || f.Case == FitUntil || f.Case == FitNever:
	case l.Share.Value >= StillFit-noise:
		f.Case, f.Last = FitEvery, l
	case f.Case == FitEvery:
		f.Case, f.Below = FitUntil, l
	default:
		f.Case, f.Below = FitNever, l
	}
}

// Fit finds the words of a crop (empty: all crops) and kind; of one without looks past
// a planned day nothing can be told.
func (f *Figures) Fit(crop, kind string) Fit {
	for _, fit := range f.Fits {
		if fit.Crop == crop && fit.Kind == kind {
			return fit
		}
	}
	return Fit{Crop: crop, Kind: kind}
}
