//go:build unix

package main

import (
	"bytes"
	"errors"
	"math/rand/v2"
	"os"
	"os/exec"
	"strings"
	"syscall"
	"testing"
	"time"

	"traybook/cmd/traybook/internal/folder"
)

func init() {
	wear["stopped"], wear["stopped while it waits"], wear["file too large"] = stoppedBuilds, stoppedWaiting, tooLarge
}

// A build stopped by a closed terminal, by Ctrl-C or by a polite kill leaves one
// whole review and nothing beside it, and says which.
func stoppedBuilds(t *testing.T, s shop) {
	luck := rand.New(rand.NewPCG(3, 4))
	signals := []syscall.Signal{syscall.SIGHUP, syscall.SIGINT, syscall.SIGTERM}
	n, stopped := rounds(t, 12), 0
	for i := range n {
		build := s.command("build", reviews[i%2])
		var said bytes.Buffer
		build.Stderr = &said
		if err := build.Start(); err != nil {
			t.Fatal(err)
		}
		time.Sleep(time.Duration(luck.Float64() * float64(s.takes)))
		_ = build.Process.Signal(signals[i%3])
		err := build.Wait()
		if strings.Contains(said.String(), "traybook: stopped; nothing was changed at ") {
			stopped++
		} else if atOnce := killedBy(err, signals[i%3]); err != nil && !atOnce {
			t.Errorf("%v, %v: %s", signals[i%3], err, said.String())
		}
		if !s.stands(t) || len(s.litter(t)) > 0 {
			t.Fatalf("round %d, %v: beside the site: %v", i, signals[i%3], s.litter(t))
		}
	}
	t.Logf("%d builds, %d stopped in order", n, stopped)
}

// killedBy reports whether a program died of a signal, which it does as long as
// it holds nothing.
func killedBy(err error, s syscall.Signal) bool {
	var exit *exec.ExitError
	if !errors.As(err, &exit) {
		return false
	}
	status, ok := exit.Sys().(syscall.WaitStatus)
	return ok && status.Signaled() && status.Signal() == s
}

// A build that waits for another can be stopped, and says so.
func stoppedWaiting(t *testing.T, s shop) {
	first, err := folder.Hold(t.Context(), s.site, 0, func() {})
	if err != nil {
		t.Fatal(err)
	}
	defer first.Release()
	build := s.command("build")
	stderr, err := build.StderrPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := build.Start(); err != nil {
		t.Fatal(err)
	}
	said := make([]byte, 1000)
	if _, err := stderr.Read(said); err != nil {
		t.Fatal(err)
	}
	if err := build.Process.Signal(os.Interrupt); err != nil {
		t.Fatal(err)
	}
	n, _ := stderr.Read(said)
	_ = build.Wait()
	if build.ProcessState.ExitCode() != nothing || !bytes.HasPrefix(said, []byte("traybook: stopped; nothing was changed at")) {
		t.Errorf("status %d: %s", build.ProcessState.ExitCode(), said[:n])
	}
}

// A file that the system lets grow no further, as on a full disk: the old review
// stays whole, nothing is left beside it, one line says why.
func tooLarge(t *testing.T, s shop) {
	limited := exec.Command("sh", "-c", `ulimit -f 4; exec traybook build "$0"`, s.book)
	out, err := limited.CombinedOutput()
	if err == nil || limited.ProcessState.ExitCode() != nothing || !bytes.Contains(out, []byte("traybook: cannot write "+s.site+": file too large; ")) {
		t.Errorf("%v: %s", err, out)
	}
	if !s.stands(t) || len(s.litter(t)) > 0 {
		t.Errorf("beside the site: %v", s.litter(t))
	}
}
