package estimate

import "container/heap"

// Need is one tray wanted from day Start and held up to, but not on, day End.
type Need struct{ Start, End int }

// Replay hands trays out to the needs in their order, which the caller has sorted by date: each takes the free tray of
// the lowest number, a new one where none is free, and gives it back on End, in time for a need that starts that day.
// It returns how many needs each tray held, tray 1 at index 0; the length is the most trays held at once
// (rule "The next tray"). A need that ends no later than it starts uses a tray and frees it for the same day.
// Source: greedy interval partitioning, Kleinberg and Tardos (2006), Algorithm Design, section 4.1.
func Replay(needs []Need) []int {
	var uses []int
	var free numbers
	var held busy
	for _, need := range needs {
		for len(held) > 0 && held[0].until <= need.Start {
			heap.Push(&free, heap.Pop(&held).(holding).tray)
		}
		if len(free) == 0 {
			heap.Push(&free, len(uses))
			uses = append(uses, 0)
		}
		tray := heap.Pop(&free).(int)
		uses[tray]++
		heap.Push(&held, holding{until: need.End, tray: tray})
	}
	return uses
}

// numbers is a heap of free trays, the lowest number first.
type numbers []int

func (h numbers) Len() int           { return len(h) }
func (h numbers) Less(i, j int) bool { return h[i] < h[j] }
func (h numbers) Swap(i, j int)      { h[i], h[j] = h[j], h[i] }
func (h *numbers) Push(x any)        { *h = append(*h, x.(int)) }
func (h *numbers) Pop() any          { return popLast((*[]int)(h)) }

// holding is a tray in use until a day.
type holding struct{ until, tray int }

// busy is a heap of trays in use, the first to come free first.
type busy []holding

func (h busy) Len() int           { return len(h) }
func (h busy) Less(i, j int) bool { return h[i].until < h[j].until }
func (h busy) Swap(i, j int)      { h[i], h[j] = h[j], h[i] }
func (h *busy) Push(x any)        { *h = append(*h, x.(holding)) }
func (h *busy) Pop() any          { return popLast((*[]holding)(h)) }

func popLast[E any](s *[]E) E {
	last := len(*s) - 1
	e := (*s)[last]
	*s = (*s)[:last]
	return e
}
