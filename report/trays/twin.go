package trays

// What chance alone says of a tray that is the twin of the other in all but name and is
// worth just its price: the shares of books in which it is said to pay in the middle or
// better (and some are counted to buy), and even at the low end of a 95 % interval (and
// buying is said outright). Met in 2,000 simulated books of eight matched sowings that
// differ by the same chance, one from another: 0.51 and 0.029.
//
// The bad case: one crop makes half of the matches and takes to the tray, or against it,
// as a whole, though crops at large do not. Its matches then are no four, and the low end
// lies too near: one book in five buys for nothing (0.21 of 2,000). Where a crop is
// merely wilder, match by match, it is no more than 0.02.
const (
	TwinPaysMiddle     = 0.5
	TwinPaysLow        = 0.025
	TwinPaysLowOneCrop = 0.21
)
