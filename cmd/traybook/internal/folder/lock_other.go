//go:build !windows && (!unix || solaris || illumos || aix)

package folder

import "os"

// lock lets everyone in: here no lock is known that ends with its process.
func lock(*os.File) error { return nil }
