package workbook

// The most that is read. A record book is far below; a small file can unpack to more
// than a machine has memory.
const (
	MostBytes    = 64_000_000  // of the file
	mostUnpacked = 128_000_000 // of all it holds, unpacked
	mostOfList   = 8_000_000   // bytes of its list of sheets, of links, of styles
	mostParts    = 10_000      // files inside it; sheets
	mostCells    = 4_000_000   // of all sheets, blank ones before the last of a row counted
	mostLetters  = 64_000_000  // bytes of the cells of all sheets, each as often as it stands there
	mostTexts    = 1_000_000   // that cells share
	mostRows     = 1_048_576   // of a sheet; the format's own limit
	mostColumns  = 16_384      // of a sheet; the format's own limit
	mostMerged   = 1000        // areas of merged cells
	mostText     = 100_000     // bytes of a cell; what is beyond is cut off
)

// tooLarge says that a limit is passed.
func tooLarge(what string) Unread {
	return Unread{what + ": more than a record book has", "move what is no log into a workbook of its own"}
}

// budget counts the cells of a workbook, and the bytes of their texts, down to nothing.
type budget struct{ cells, letters int }

// newBudget is what a workbook may hold.
func newBudget() *budget { return &budget{mostCells, mostLetters} }

// spend takes cells and bytes of text off; it says of what there is too much.
func (b *budget) spend(cells, letters int) error {
	b.cells -= cells
	b.letters -= letters
	switch {
	case b.cells < 0:
		return tooLarge("the workbook has more than 4 million cells")
	case b.letters < 0:
		return tooLarge("the cells of the workbook hold more than 64 MB of text")
	}
	return nil
}
