package folder

import (
	"errors"
	"sync"
	"sync/atomic"
)

// workers is how many files are brought down to the disk at a time. A disk writes
// many in about the time of one.
const workers = 8

// each does something for every i below n, several at a time and in no order, and
// stops at the first error.
func each(n int, do func(i int) error) error {
	var next, failed atomic.Int64
	errs := make([]error, min(n, workers))
	var all sync.WaitGroup
	for w := range errs { // each has an error of its own, so no lock is needed
		all.Go(func() {
			for i := next.Add(1) - 1; i < int64(n) && failed.Load() == 0; i = next.Add(1) - 1 {
				if errs[w] = do(int(i)); errs[w] != nil {
					failed.Add(1)
				}
			}
		})
	}
	all.Wait()
	return errors.Join(errs...)
}
