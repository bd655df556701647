package estimate

import "testing"

// Two and three seeds a cell at 70 %: 91.0 and 97.3 % of cells have a plant (1 - 0.3^2, 1 - 0.3^3); here back again.
func TestPerSeedByHand(t *testing.T) {
	near(t, "one", PerSeed(0.7, 1), 0.7, 0)
	near(t, "two", PerSeed(0.91, 2), 0.7, 1e-12)
	near(t, "three", PerSeed(0.973, 3), 0.7, 1e-12)
}

func TestPerSeedEnds(t *testing.T) {
	for k := range 5 {
		if PerSeed(0, k) != 0 || PerSeed(1, k) != 1 || PerSeed(-1, k) != 0 || PerSeed(2, k) != 1 {
			t.Errorf("k = %d: %v to %v", k, PerSeed(0, k), PerSeed(1, k))
		}
	}
}
