//go:build unix && !solaris && !illumos && !aix

package folder

import (
	"errors"
	"os"

	"golang.org/x/sys/unix"
)

// lock takes f for this process until f is closed or the process ends, or returns
// errBusy. A file system without locks lets everyone in.
func lock(f *os.File) error {
	err := unix.Flock(int(f.Fd()), unix.LOCK_EX|unix.LOCK_NB)
	switch {
	case errors.Is(err, unix.EWOULDBLOCK), errors.Is(err, unix.EINTR):
		return errBusy
	case errors.Is(err, errors.ErrUnsupported), errors.Is(err, unix.ENOLCK):
		return nil
	}
	return err
}
