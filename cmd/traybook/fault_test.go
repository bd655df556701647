package main

import (
	"strings"
	"testing"
)

// A fault of ours is said and is never taken for success.
func TestAFaultIsSaid(t *testing.T) {
	var stderr strings.Builder
	code := guarded(&voice{stdout: &stderr, stderr: &stderr}, func() int { panic("broken") })
	if code != nothing || !strings.Contains(stderr.String(), "traybook: a fault inside traybook: broken; nothing was written") {
		t.Errorf("status %d: %q", code, stderr.String())
	}
}
