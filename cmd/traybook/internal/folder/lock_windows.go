package folder

import (
	"errors"
	"os"

	"golang.org/x/sys/windows"
)

// lock takes f for this process until f is closed or the process ends, or returns
// errBusy. Other than elsewhere the lock keeps others from reading too, so the file
// stays empty.
func lock(f *os.File) error {
	const mode = windows.LOCKFILE_EXCLUSIVE_LOCK | windows.LOCKFILE_FAIL_IMMEDIATELY
	err := windows.LockFileEx(windows.Handle(f.Fd()), mode, 0, 1, 0, &windows.Overlapped{})
	if errors.Is(err, windows.ERROR_LOCK_VIOLATION) || errors.Is(err, windows.ERROR_IO_PENDING) {
		return errBusy
	}
	return err
}
