package records

// Settings are the settings of book.csv, defaults filled in.
type Settings struct {
	Farm            string
	Currency        string
	SeasonStarts    int // month 1-12
	Wage            Maybe[float64]
	DiscountRate    float64 // share of 1 a year
	UsableFrom      int
	ScoreWords      [5]string
	Confidence      float64 // share of 1
	SureOfTarget    float64 // share of 1
	TransplantValue Maybe[float64]
	PlugPrice       Maybe[float64]
	LegalMinimum    bool // shown beside lots: 7 CFR 201.31
	HeatingFrom     int  // month
	HeatingUntil    int  // month; before HeatingFrom: over the new year
	BenchPlaces     Maybe[float64]
	ChamberPlaces   Maybe[float64]
	TrayTurnaround  int // days
	Fahrenheit      bool
	// Inputs lists every setting in the contract's order, as shown.
	Inputs []Input
}

// Input is one setting as used. Source is written or default.
type Input struct {
	Name, Value, Source string
}

// Heating reports whether the month is one of the heating months.
func (s Settings) Heating(month int) bool {
	if s.HeatingFrom <= s.HeatingUntil {
		return s.HeatingFrom <= month && month <= s.HeatingUntil
	}
	return month >= s.HeatingFrom || month <= s.HeatingUntil
}

// Season returns the season of a date: the year in which the season ends
// (rule "Seasons").
func (s Settings) Season(d Date) int {
	if s.SeasonStarts > 1 && int(d.Month()) >= s.SeasonStarts {
		return d.Year() + 1
	}
	return d.Year()
}

// SeasonDays returns the first day of a season and the first day after it.
func (s Settings) SeasonDays(season int) (first, after Date) {
	year, month := season, s.SeasonStarts
	if month > 1 {
		year--
	}
	return NewDate(year, timeMonth(month), 1), NewDate(year+1, timeMonth(month), 1)
}

// Degrees turns degrees Celsius into the book's own.
func (s Settings) Degrees(celsius float64) float64 {
	if s.Fahrenheit {
		return celsius*9/5 + 32
	}
	return celsius
}

// DegreeSign is the sign of the book's own degrees.
func (s Settings) DegreeSign() string {
	if s.Fahrenheit {
		return "°F"
	}
	return "°C"
}
