package records

// Book is a checked record book: only rows without an error, every name in
// the one spelling in which it is shown (so names compare with ==), rows in the
// order of their files, but counts by batch, day and tray. Temperatures are in degrees Celsius, shares fractions of
// 1, money in the book's currency, hours in hours.
type Book struct {
	Settings Settings
	Sowings  []Sowing
	Outs     []Out
	Counts   []Count
	Scores   []Score
	Trays    []Purchase
	Lots     []Lot
	Costs    []Cost
	Chamber  []ChamberReading
	House    []HouseReading
	Wishes   []Wish
	Changes  []Change
	Notes    []Note
	Files    []File
	// OtherSheets are the sheets of a workbook that are no logs and were not read.
	OtherSheets []string

	*told
}

// File says what was read of one log. Rows counts the rows with anything in
// them; LeftOut those of them that no figure uses.
type File struct {
	Name    string
	As      string // its name as found, in places: of the file, or of a workbook's sheet
	Rows    int
	LeftOut int
	Columns []string // the contract's columns present, in the contract's order
	Unread  []string // the other columns' names, as written, in the file's order
	heads   []string // the contract's columns as the file has them, empty for others
	sheet   bool     // it is a workbook's sheet
}

// Has reports whether the log was in the folder.
func (b *Book) Has(file string) bool {
	for _, f := range b.Files {
		if f.Name == file {
			return true
		}
	}
	return false
}

// Workbook reports whether the book's logs are sheets of a workbook.
func (b *Book) Workbook() bool {
	for _, f := range b.Files {
		if f.sheet {
			return true
		}
	}
	return false
}

// Start is what a cell was started from.
type Start string

// The starts of a batch.
const (
	FromSeed    Start = "seed"
	FromPlug    Start = "plug"
	FromCutting Start = "cutting"
)

// Sowing is a batch: one variety sown on one day into one tray code.
type Sowing struct {
	At
	Code          string
	Sown          Date
	Crop, Variety string
	Lot           string // empty: none written
	Tray          string
	Trays         float64
	Cells         Maybe[int] // cells sown, where written
	SeedsPerCell  int        // 1 where blank
	Start         Start      // seed where blank
	From          string     // batch it was pricked out or potted on from
	Chamber       string
	ChamberOut    Date
	Planned       Date
	Wanted        Maybe[int]
	Replaces      string
	SetOut        Date
	PlantsOut     Maybe[int]
	Surplus       Maybe[int]
	Note          string
	ref           Ref // of its code
}

// Destination is where plants went.
type Destination string

// The destinations of out.csv.
const (
	ToField    Destination = "field"
	Sold       Destination = "sold"
	Given      Destination = "given"
	ToSurplus  Destination = "surplus"
	ToPottedOn Destination = "potted-on"
	Dead       Destination = "dead"
)

// Out is one row of plants that left the house.
type Out struct {
	At
	Batch  string
	Date   Date
	Plants int
	To     Destination
	Last   bool // the batch is cleared
	Money  Maybe[float64]
	Note   string
	ref    Ref // of Batch
}

// Count is a germination count: exactly one of Emerged and Empty is known.
type Count struct {
	At
	Batch   Ref
	Date    Date
	Tray    Maybe[int32] // number within the batch, from 1
	Cells   Maybe[int32] // cells looked at; unknown: those sown
	Emerged Maybe[int32]
	Empty   Maybe[int32]
	Lost    Maybe[int32] // since the last count
	said    uint32       // Book.Said, from 1; 0 where nothing was
}

// Score is a look at quality. Either Looked and Usable, or any of S, or Score.
type Score struct {
	At
	Batch          string
	Date           Date
	Looked, Usable Maybe[int32]
	S              [5]Maybe[int32] // plants at scores 1 to 5
	Score          Maybe[int32]    // one overall mark
	Note           string
	ref            Ref // of Batch
}

// Purchase is a row of trays.csv. Count is negative for broken or sold trays.
type Purchase struct {
	At
	Tray    string
	Kind    string
	Cells   int
	CellML  Maybe[float64]
	Bought  Date // unknown: always there
	Count   Maybe[int]
	Price   Maybe[float64] // each
	Lasts   Maybe[float64] // years in use
	Uses    Maybe[float64]
	Minutes Maybe[float64] // labour a use
	Places  Maybe[float64] // bench places a tray
	Note    string
}

// Lot is a seed lot. GermLabel is a share of 1.
type Lot struct {
	At
	Code             string
	Crop, Variety    string
	Supplier         string
	LotNumber        string
	Bought, Tested   Date
	GermLabel        Maybe[float64]
	Seeds, Grams     Maybe[float64]
	SeedsPerGram     Maybe[float64]
	Price            Maybe[float64] // of the whole lot
	Organic, Treated Maybe[bool]
	Note             string
}

// Category is a kind of cost.
type Category string

// The categories of costs.csv, in the order in which they are shown.
const (
	Seed      Category = "seed"
	Mix       Category = "mix"
	Labour    Category = "labour"
	Heat      Category = "heat"
	Power     Category = "power"
	Water     Category = "water"
	Feed      Category = "feed"
	Equipment Category = "equipment"
	Other     Category = "other"
)

// Categories lists all categories in order.
var Categories = []Category{Seed, Mix, Labour, Heat, Power, Water, Feed, Equipment, Other}

// Task is a kind of labour.
type Task string

// The tasks of labour; care where blank.
const (
	SowingTask Task = "sowing"
	CareTask   Task = "care"
	OutTask    Task = "out"
)

// Cost is a row of money or of hours: exactly one of Amount and Hours is known.
// Batch, Crop and Tray are empty for a shared row. A row that repeats a tray
// purchase or a lot is not in the book.
type Cost struct {
	At
	Date              Date
	From, Until       Date
	Category          Category
	Task              Task // of labour only
	Amount            Maybe[float64]
	Hours             Maybe[float64]
	Quantity          Maybe[float64]
	Unit              string
	Batch, Crop, Tray string
	Note              string
}

// Shared reports whether the row was for no batch, crop or tray in particular.
func (c Cost) Shared() bool { return c.Batch == "" && c.Crop == "" && c.Tray == "" }

// ChamberReading is one reading in a germination chamber.
type ChamberReading struct {
	At
	Date     Date
	Minute   Maybe[int] // of the day, where a time was written
	Chamber  string
	Temp     float64        // Celsius
	Humidity Maybe[float64] // share of 1
}

// HouseReading is a day's temperatures, Celsius, inside and outdoors.
type HouseReading struct {
	At
	Date            Date
	Low, High       Maybe[float64]
	OutLow, OutHigh Maybe[float64]
	Note            string
}

// Wish is what the fields want of a crop next season: a row of wishes.csv. Tray and
// Variety are empty and Planned is unknown where blank.
type Wish struct {
	At
	Crop, Variety string
	Plants        int
	Planned       Date
	Tray          string
	Note          string
}

// Change is something that the farm did differently from Date, until Until where
// that is written: a row of changes.csv.
type Change struct {
	At
	Date, Until Date
	What        string
	Note        string
}

// Note is a season in words.
type Note struct {
	File string
	Year int
	Text string // Markdown, UTF-8
}
