package chart

import (
	"encoding/json"
	"io"
	"os"
	"runtime"
	"runtime/metrics"
	"time"
)

// Bounds of a process that draws with a script given by a file. ECharts takes 20 to
// 500 ms a chart and 60 MB; a script that takes so much more will not end.
const (
	mostMemory = 256 << 20 // bytes in use, beyond which the process ends itself
	mostGiven  = 512 << 20 // bytes that the system gives it, where it can be told
	mostNamed  = 4 << 30   // bytes of addresses beyond those of its start; threads of C name 136 MB each and use few
	mostCalls  = 4000      // calls within calls; ECharts needs some hundred
	mostDrawn  = 16 << 20  // bytes of one drawing
	lookEvery  = 5 * time.Millisecond
)

// tookTooMuch is the exit status of a process that ends itself for its memory.
const tookTooMuch = 3

// request asks for one chart; the first brings the bundle.
type request struct {
	Bundle             []byte `json:",omitempty"`
	Name, Title, Label string
	Width, Height      int
	Option             string
}

// answer is one chart, or why there is none.
type answer struct{ SVG, Error string }

// Apart is all that a process started by DrawerOptions.Apart does: it answers requests
// from in on out, within bounds of memory. It never returns: the process ends with in,
// even in the midst of a script, so that none outlives the one that asked.
func Apart(in io.Reader, out io.Writer) {
	runtime.GOMAXPROCS(2) // each thread takes addresses, however many cores there are
	boundMemory(mostGiven, mostNamed)
	go watchMemory()
	requests := make(chan request)
	go listen(json.NewDecoder(in), requests)
	hand, to := (*engine)(nil), json.NewEncoder(out)
	for r := range requests {
		var a answer
		if hand, a = r.answer(hand); to.Encode(a) != nil {
			os.Exit(1)
		}
	}
}

// listen passes requests on, and ends the process after the last.
func listen(from *json.Decoder, to chan<- request) {
	for {
		var r request
		if from.Decode(&r) != nil {
			os.Exit(0)
		}
		to <- r
	}
}

// answer draws one chart, with the engine that the first request started.
func (r request) answer(e *engine) (*engine, answer) {
	var err error
	if e == nil {
		e, err = (&source{bundle: r.Bundle}).start()
	}
	if err == nil {
		var svg string
		s := Spec{Name: r.Name, Title: r.Title, Label: r.Label, Width: r.Width, Height: r.Height}
		if svg, err = e.draw(s, r.Option); err == nil {
			return e, answer{SVG: svg}
		}
	}
	return e, answer{Error: err.Error()}
}

// watchMemory ends the process when it holds too much: as soon as it is seen, as a
// script inside one call of the engine's own can be stopped by nothing else.
func watchMemory() {
	for range time.Tick(lookEvery) {
		if inUse() > mostMemory {
			os.Exit(tookTooMuch)
		}
	}
}

// inUse is the memory that the process holds of the system, bytes.
func inUse() uint64 {
	s := []metrics.Sample{{Name: "/memory/classes/total:bytes"}, {Name: "/memory/classes/heap/released:bytes"}}
	metrics.Read(s)
	return s[0].Value.Uint64() - s[1].Value.Uint64()
}
