package estimate

import (
	"cmp"
	"math/rand/v2"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// By hand. Tray 1 is held 1-5, tray 2 2-3; on day 3 tray 2 is free again and taken till 9; on day 5 tray 1 is free, on
// day 6 a third is needed.
func TestReplayByHand(t *testing.T) {
	for _, c := range []struct {
		name  string
		needs []Need
		want  []int
	}{
		{"none", nil, nil},
		{"back on the day it is wanted", []Need{{1, 5}, {2, 3}, {3, 9}, {5, 8}, {6, 7}}, []int{2, 2, 1}},
		{"the lowest number of several free", []Need{{1, 4}, {1, 3}, {1, 2}, {5, 6}}, []int{2, 1, 1}},
		{"held for no time", []Need{{1, 1}, {1, 0}, {1, 4}}, []int{3}},
	} {
		if got := Replay(c.needs); !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}

// Against a plain search of all trays: the same uses. They add up to the needs, and as many trays are used as are ever
// wanted at once.
func TestReplayLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		needs := rapid.SliceOf(rapid.Custom(func(t *rapid.T) Need {
			start := rapid.IntRange(0, 60).Draw(t, "start")
			return Need{start, start + rapid.IntRange(1, 30).Draw(t, "days")}
		})).Draw(t, "needs")
		slices.SortStableFunc(needs, func(a, b Need) int { return cmp.Compare(a.Start, b.Start) })
		uses := Replay(needs)
		if plain := replayBySearch(needs); !slices.Equal(uses, plain) {
			t.Fatalf("%v, by search %v", uses, plain)
		}
		sum := 0
		for _, n := range uses {
			sum += n
		}
		spans := make([]Span, len(needs))
		for i, n := range needs {
			spans[i] = Span{n.Start, n.End, 1}
		}
		if most, _, _ := Peak(Occupancy(spans)); sum != len(needs) || float64(len(uses)) != most {
			t.Fatalf("%d uses of %d needs, %d trays for %v at once", sum, len(needs), len(uses), most)
		}
	})
}

func replayBySearch(needs []Need) []int {
	var uses, until []int
	for _, need := range needs {
		tray := slices.IndexFunc(until, func(day int) bool { return day <= need.Start })
		if tray < 0 {
			tray = len(uses)
			uses, until = append(uses, 0), append(until, 0)
		}
		uses[tray]++
		until[tray] = need.End
	}
	return uses
}

func BenchmarkReplay5000Needs(b *testing.B) {
	random := rand.New(rand.NewPCG(1, 2))
	needs := make([]Need, 5000)
	for i := range needs {
		start := i * 200 / len(needs)
		needs[i] = Need{start, start + 20 + random.IntN(30)}
	}
	for b.Loop() {
		Replay(needs)
	}
}
