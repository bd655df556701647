package chart

import (
	"fmt"
	"os"

	"golang.org/x/sys/unix"
)

// boundMemory has the system refuse this process more than so many bytes of data, and of
// addresses beyond those it has; what asks for more is ended. A thread takes addresses of
// which it uses next to none, so that their bound is wide: it is for what asks for more at
// once than the watch could see. Where this cannot be had, the watch remains.
func boundMemory(data, addresses uint64) {
	var pages uint64
	if b, err := os.ReadFile("/proc/self/statm"); err == nil {
		_, _ = fmt.Sscan(string(b), &pages) // the first number: all addresses
	}
	bound(unix.RLIMIT_DATA, data)
	if pages > 0 {
		bound(unix.RLIMIT_AS, pages*uint64(os.Getpagesize())+addresses)
	}
}

func bound(what int, bytes uint64) { _ = unix.Setrlimit(what, &unix.Rlimit{Cur: bytes, Max: bytes}) }
