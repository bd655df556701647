package main

import (
	"unsafe"

	"golang.org/x/sys/windows"
)

// ownWindow reports whether this process is the only one in its console's window. With
// no console at all there are none.
func ownWindow() bool {
	var ids [2]uint32
	call := windows.NewLazySystemDLL("kernel32.dll").NewProc("GetConsoleProcessList")
	if call.Find() != nil {
		return false
	}
	n, _, _ := call.Call(uintptr(unsafe.Pointer(&ids[0])), uintptr(len(ids)))
	return n == 1
}
