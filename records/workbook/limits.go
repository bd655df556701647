package workbook

// The most that is read. A record book is far below; a small file can unpack to more
// than a machine has memory.
const (
	MostBytes    = 64_000_000  // of the file
	mostUnpacked = 256_000_000 // of all it holds, unpacked
	mostParts    = 10_000      // files inside it
	mostCells    = 4_000_000   // of a sheet, blank ones before the last of a row counted
	mostRows     = 1_048_576   // of a sheet; the format's own limit
	mostColumns  = 16_384      // of a sheet; the format's own limit
	mostMerged   = 1000        // areas of merged cells
	mostText     = 100_000     // bytes of a cell; what is beyond is cut off
)

// tooLarge says that a limit is passed.
func tooLarge(what string) Unread {
	return Unread{what + ": more than a record book has", "move what is no log into a workbook of its own"}
}

// budget counts the cells of a sheet down to nothing.
type budget int

// spend takes cells off; false where none are left.
func (b *budget) spend(cells int) bool {
	*b -= budget(cells)
	return *b >= 0
}
