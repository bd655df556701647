//go:build !windows

package main

// ownWindow is false: elsewhere a window belongs to the shell in it.
func ownWindow() bool { return false }
