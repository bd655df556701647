package records

// mostNear is how many names of one kind are set beside one another: where there are more,
// no slip of the keys is to blame.
const mostNear = 20_000

// longestNeighbour is how many bytes a name among them may have.
const longestNeighbour = 60

// neighbours finds the names that a name may be one slip of the keys away from, without
// setting each beside each. Two names one insertion, deletion, replacement or swap apart
// become the same text if the right letter is left out of both, or of one: so names are
// kept under all that they become with one letter less, and as they are.
type neighbours struct {
	chains map[uint64]chain
	links  []link
}

// chain is the first and the last link of the names kept under one text, by their place
// in links; the first comes first.
type chain struct{ first, last int32 }

// link is a name, by its number, and the place of the next.
type link struct{ name, next int32 }

func newNeighbours() *neighbours { return &neighbours{chains: map[uint64]chain{}} }

// add keeps a name by a number, which is above all those before it.
func (n *neighbours) add(name string, number int) {
	for _, h := range shortened(name) {
		at := int32(len(n.links))
		n.links = append(n.links, link{int32(number), -1})
		c, ok := n.chains[h]
		if !ok {
			c.first = at
		} else {
			n.links[c.last].next = at
		}
		c.last = at
		n.chains[h] = c
	}
}

// first is the lowest number of a name that may be one slip away and that is near; -1 for
// none.
func (n *neighbours) first(name string, near func(int) bool) int {
	best := int32(-1)
	for _, h := range shortened(name) {
		c, ok := n.chains[h]
		for at := c.first; ok && at >= 0; at = n.links[at].next {
			number := n.links[at].name
			if best >= 0 && number >= best {
				break
			}
			if near(int(number)) {
				best = number
				break
			}
		}
	}
	return int(best)
}

// shortened are the sums of a name and of all that it becomes with one letter less; none
// of a name that is too long. Two texts may have the same sum, so that what is found is
// compared.
func shortened(name string) (sums []uint64) {
	if len(name) > longestNeighbour {
		return nil
	}
	letters := []rune(name)
	for without := -1; without < len(letters); without++ {
		sum := uint64(14695981039346656037) // FNV-1a, by letters
		for i, r := range letters {
			if i != without {
				sum = (sum ^ uint64(r)) * 1099511628211
			}
		}
		sums = append(sums, sum)
	}
	return sums
}
