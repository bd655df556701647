package chart

import (
	"fmt"
	"os"

	"golang.org/x/sys/unix"
)

// boundMemory has the system refuse this process more memory than so many bytes beyond
// what it has; what asks for it is ended. Addresses are bounded, as Go has a reserve of
// them from the start and takes all further ones before it writes; data likewise, for
// what lies in the reserve. Where this cannot be had, the watch remains.
func boundMemory(bytes uint64) {
	var pages uint64
	if b, err := os.ReadFile("/proc/self/statm"); err == nil {
		_, _ = fmt.Sscan(string(b), &pages) // the first number: all addresses
	}
	bound(unix.RLIMIT_DATA, bytes)
	if pages > 0 {
		bound(unix.RLIMIT_AS, pages*uint64(os.Getpagesize())+bytes)
	}
}

func bound(what int, bytes uint64) { _ = unix.Setrlimit(what, &unix.Rlimit{Cur: bytes, Max: bytes}) }
