package report

// Quality is the usable share of the latest looks of a group (rule 16).
type Quality struct {
	Group
	Share        // usable of looked
	S     [5]Num // plants at each score, where scored so
	Marks int    // looks with only an overall mark: shown, never a share
}

// Leeway is the usable share of looks by days past the planned date (rule 17).
type Leeway struct {
	Crop     string // empty: all crops
	Kind     string
	DaysLate int // the band's first day: 0, 1, 4, 8, 15
	Share
}

// LeewayBands are the first days of the bands of rule 17.
var LeewayBands = []int{0, 1, 4, 8, 15}

// Usable is the usable rate of a group (rule 18): usable plants of cells sown
// over its batches with usable by out or counted.
type Usable struct {
	Group
	Share
	LeftOut int
}
