package main

import (
	"fmt"
	"hash/fnv"
	"math"
	"math/rand/v2"
)

// story numbers the luck of the books. It was chosen, with the sizes and rates of the
// plan, among some hundred, for a farm whose figures show what the pages can say; what
// they say of trays, varieties and seasons is made, and evidence of nothing.
const story = 53

// chance is a seeded source of the farm's luck.
type chance struct{ *rand.Rand }

// newChance starts an independent stream, so that a change in one part of the
// book leaves the others as they were.
func newChance(stream uint64) chance {
	return chance{rand.New(rand.NewPCG(4, stream))}
}

// of draws how many of n succeed at probability p.
func (c chance) of(n int, p float64) int {
	k := 0
	for range n {
		if c.Float64() < p {
			k++
		}
	}
	return k
}

// pick draws an index with the given weights.
func (c chance) pick(weights ...float64) int {
	u, sum := c.Float64(), 0.0
	for i, w := range weights {
		if sum += w; u < sum {
			return i
		}
	}
	return len(weights) - 1
}

// shift moves a probability along the logit scale.
func shift(p, by float64) float64 {
	return 1 / (1 + math.Exp(-(math.Log(p/(1-p)) + by)))
}

// luckOf starts the stream of a batch or a lot, so that what becomes of one says
// nothing of the others.
func luckOf(code string) chance {
	h := fnv.New64a()
	fmt.Fprint(h, story, code)
	return newChance(h.Sum64())
}
