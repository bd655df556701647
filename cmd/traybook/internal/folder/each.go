package folder

import (
	"errors"
	"iter"
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

// eachFile does something for every file, several at a time and in no order, while the
// next is being made; first is done before, for one file at a time in their order. It
// stops at the first error, and holds no more files than there are workers.
func eachFile(files iter.Seq2[File, error], first, do func(File) error) error {
	work, failed := make(chan File), atomic.Bool{}
	errs := make([]error, workers+1) // each has an error of its own, so no lock is needed
	var all sync.WaitGroup
	for w := range workers {
		all.Go(func() {
			for f := range work {
				if errs[w] == nil {
					errs[w] = do(f)
				}
				if errs[w] != nil {
					failed.Store(true)
				}
			}
		})
	}
	for f, err := range files {
		if err == nil {
			err = first(f)
		}
		if errs[workers] = err; err != nil || failed.Load() {
			break
		}
		work <- f
	}
	close(work)
	all.Wait()
	return errors.Join(errs...)
}
