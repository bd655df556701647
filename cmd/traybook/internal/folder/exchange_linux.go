//go:build linux && !twosteps

package folder

import "golang.org/x/sys/unix"

// OneStep says whether this system can swap two folders in one step; not every
// file system on it can.
const OneStep = true

// exchange swaps two names; both must exist.
func exchange(a, b string) error {
	return unix.Renameat2(unix.AT_FDCWD, a, unix.AT_FDCWD, b, unix.RENAME_EXCHANGE)
}
