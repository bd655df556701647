package main

import "fmt"

// verify looks for what a reader of the book would call an error.
func (f *farm) verify() error {
	seen := map[string]bool{}
	for _, b := range f.batches {
		if seen[b.code] {
			return fmt.Errorf("%s twice", b.code)
		}
		seen[b.code] = true
		for _, check := range []func(*batch) error{f.verifyDates, verifyCounts, verifyOut} {
			if err := check(b); err != nil {
				return fmt.Errorf("%s: %w", b.code, err)
			}
		}
	}
	return f.verifyTrays()
}

func (f *farm) verifyDates(b *batch) error {
	switch {
	case b.sown > f.last, b.chamberOut > f.last:
		return fmt.Errorf("dated after %s", f.last)
	case b.end <= b.sown, b.planned <= b.sown:
		return fmt.Errorf("leaves before it is sown")
	case b.chamberOut != 0 && b.chamberOut >= b.end:
		return fmt.Errorf("leaves the chamber after the house")
	}
	for _, l := range b.looks {
		if l.on < b.sown || l.on >= b.end {
			return fmt.Errorf("looked at on %s", l.on)
		}
	}
	return nil
}

func verifyCounts(b *batch) error {
	was := map[int]count{}
	for _, c := range b.counts {
		cells := b.cells
		if c.cells > 0 {
			cells = c.cells
		}
		before, again := was[c.tray]
		switch {
		case c.on <= b.sown || c.on >= b.end:
			return fmt.Errorf("counted on %s", c.on)
		case c.emerged < 0 || c.emerged > cells || c.emerged+c.lost > cells:
			return fmt.Errorf("%d of %d cells", c.emerged, cells)
		case again && (c.on <= before.on || c.emerged+c.lost < before.emerged):
			return fmt.Errorf("the count of %s falls", c.on)
		}
		was[c.tray] = c
	}
	return nil
}

func verifyOut(b *batch) error {
	sum, was := 0, b.sown
	for _, l := range b.leaves {
		if l.on < was {
			return fmt.Errorf("out on %s", l.on)
		}
		sum, was = sum+l.plants, l.on
	}
	if sum > b.living || b.living > b.up || b.up > b.cells {
		return fmt.Errorf("%d out of %d living, %d up, %d cells", sum, b.living, b.up, b.cells)
	}
	return nil
}

// verifyTrays finds a day with more trays in use than owned.
func (f *farm) verifyTrays() error {
	for d := f.batches[0].sown; d <= f.last; d++ {
		for _, t := range trays {
			if n := f.standing(t.code, d); n > owned(t.code, d) {
				return fmt.Errorf("%s: %g %s in use, %g owned", d, n, t.code, owned(t.code, d))
			}
		}
	}
	return nil
}
