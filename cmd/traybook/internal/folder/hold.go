package folder

import (
	"context"
	"errors"
	"os"
	"sync"
	"time"
)

// Held is a place that this process alone may change until it lets go.
type Held struct {
	Mended bool // what stood here before a killed process took it away stands here again

	place
	disk   disk
	locked *os.File
	made   []string     // folders made above the place, the topmost first
	gate   sync.RWMutex // held to read by each step of the work, to write by whoever ends it
	placed bool         // the new one stands at the place
	ended  bool
}

// ErrBusy is that another process held a place for longer than one was ready to wait.
var ErrBusy = errors.New("another process is at work there")

var (
	errBusy = errors.New("the lock is held")
	errGone = errors.New("the lock was removed by the one that held it")
)

// pause lies between two looks at a lock that another process holds.
const pause = 20 * time.Millisecond

// Hold takes the place name, whose parents it makes. Where another process holds
// it, busy is called once, and Hold waits for at most patience or until ctx ends.
// What a killed process left is mended and cleared first.
func Hold(ctx context.Context, name string, patience time.Duration, busy func()) (*Held, error) {
	return hold(ctx, system, name, patience, busy)
}

func hold(ctx context.Context, d disk, name string, patience time.Duration, busy func()) (*Held, error) {
	p, err := at(name)
	if err != nil {
		return nil, err
	}
	say := sync.OnceFunc(busy)
	for end := time.Now().Add(patience); ; {
		h, err := take(p, d)
		switch {
		case errors.Is(err, errBusy):
			say()
		case !errors.Is(err, errGone):
			return h, err
		}
		if time.Now().After(end) {
			return nil, ErrBusy
		}
		select {
		case <-ctx.Done():
			return nil, context.Cause(ctx)
		case <-time.After(pause):
		}
	}
}
