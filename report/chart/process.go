package chart

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os/exec"
	"regexp"
	"strings"
	"sync"
	"sync/atomic"
	"time"
)

// Bounds of time of a script that is given by a file. The bundle that traybook was built
// with is trusted and has none, however slow the machine.
const (
	mostTime  = 20 * time.Second // of all charts, beyond the free time of each
	freeTime  = time.Second      // of a chart, counted for nothing
	mostHands = 2                // processes at a time, each with its memory
)

// errOver stands for the charts that are not begun after a script was stopped.
var errOver = errors.New("the ECharts file was stopped at another chart")

// patience is the time that a script still has, over all its charts: one that is slow at
// each of a hundred must not take a hundred times as long as one that never ends.
type patience struct {
	mu   sync.Mutex
	most time.Duration
	used time.Duration
	over bool // a script was stopped: no further one is begun
}

// left is how long the next chart may take; 0: none is begun.
func (p *patience) left() time.Duration {
	p.mu.Lock()
	defer p.mu.Unlock()
	if p.over {
		return 0
	}
	return max(p.most-p.used, min(freeTime, p.most))
}

// spend counts a chart's time.
func (p *patience) spend(took time.Duration) {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.used += max(0, took-freeTime)
}

// end lets no further chart begin.
func (p *patience) end() {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.over = true
}

// process draws with a script in a process of its own, which can be ended whatever the
// script does.
type process struct {
	*patience
	bundle []byte // until it is sent
	cmd    *exec.Cmd
	pipe   io.Closer
	to     *json.Encoder
	from   *json.Decoder
	said   *head
	late   atomic.Bool
}

// apart starts a process. What it writes to standard error is kept for the reason, up to a
// bound: it is somebody else's script.
func apart(cmd *exec.Cmd, bundle []byte, p *patience) (*process, error) {
	said := &head{}
	cmd.Stderr = said
	in, err := cmd.StdinPipe()
	if err != nil {
		return nil, err
	}
	out, err := cmd.StdoutPipe()
	if err == nil {
		err = cmd.Start()
	}
	if err != nil {
		return nil, fmt.Errorf("no process can be started to draw with the ECharts file: %w", err)
	}
	return &process{patience: p, bundle: bundle, cmd: cmd, pipe: in, to: json.NewEncoder(in), from: json.NewDecoder(out), said: said}, nil
}

// draw asks for one chart. After an error the process must be ended.
func (p *process) draw(s Spec, option string) (string, error) {
	left := p.left()
	if left == 0 {
		return "", errOver
	}
	start := time.Now()
	timer := time.AfterFunc(left, func() {
		p.late.Store(true)
		_ = p.cmd.Process.Kill()
	})
	a, err := p.ask(request{p.bundle, s.Name, s.Title, s.Label, s.Width, s.Height, option})
	timer.Stop()
	p.spend(time.Since(start))
	switch {
	case err != nil:
		p.patience.end()
		return "", p.why()
	case a.Error != "":
		return "", errors.New(a.Error)
	}
	return a.SVG, nil
}

// ask sends a request and waits for the answer; the script goes with the first request
// alone.
func (p *process) ask(r request) (a answer, err error) {
	p.bundle = nil
	if err = p.to.Encode(r); err == nil {
		err = p.from.Decode(&a)
	}
	return a, err
}

// end lets the process go, which ends with its input.
func (p *process) end() {
	_ = p.pipe.Close()
	_ = p.cmd.Wait()
}

// refused is what Go says when the system gives no more memory, for a heap or a thread.
var refused = regexp.MustCompile(`out of memory|cannot allocate memory|pthread_create failed|failed to create new OS thread`)

// why says what ended the process.
func (p *process) why() error {
	p.end()
	said := p.said.String()
	switch {
	case p.late.Load():
		return fmt.Errorf("the ECharts file was stopped: it ran for more than %v", p.most)
	case p.cmd.ProcessState.ExitCode() == tookTooMuch, refused.MatchString(said):
		return fmt.Errorf("the ECharts file was stopped: it took more than %d MB of memory", mostMemory>>20)
	}
	first, _, _ := strings.Cut(strings.TrimSpace(said), "\n")
	return fmt.Errorf("the ECharts file was stopped: what draws with it ended (%v) %s", p.cmd.ProcessState, first)
}

// head keeps the beginning of what is written to it.
type head struct{ strings.Builder }

// Write never fails, so that nobody is held up.
func (h *head) Write(b []byte) (int, error) {
	h.Builder.Write(b[:min(len(b), max(0, 4096-h.Len()))])
	return len(b), nil
}
