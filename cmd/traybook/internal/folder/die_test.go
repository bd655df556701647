package folder

import (
	"fmt"
	"os"
	"os/exec"
	"strconv"
	"sync/atomic"
	"testing"
)

func TestMain(m *testing.M) {
	if site := os.Getenv("FOLDER_DIES_AT"); site != "" {
		dieAt(site, os.Getenv("FOLDER_KIND"), os.Getenv("FOLDER_OPERATION"))
		return
	}
	os.Exit(m.Run())
}

// dieAt builds, and kills this process at one operation.
func dieAt(site, kind, operation string) {
	var count atomic.Int64
	n, err := strconv.ParseInt(operation, 10, 64)
	if err == nil {
		err = build(watched(stepwise()[kind], func(do func() error, half func()) error {
			if count.Add(1) == n {
				half()
				kill()
			}
			return do()
		}), site)
	}
	if err != nil {
		fmt.Println(err)
		os.Exit(1)
	}
}

// kill ends this process as a stranger would: nothing of it runs after.
func kill() {
	self, err := os.FindProcess(os.Getpid())
	if err == nil {
		err = self.Kill()
	}
	if err != nil {
		panic(err)
	}
	select {}
}

// A process that is killed at any operation, before it or half way through it,
// leaves the whole old one or the whole new one, but for the moment between two
// steps; the next command finds the lock free, mends that and clears the rest.
func TestKilledAtEveryOperation(t *testing.T) {
	for kind := range stepwise() {
		for _, had := range []bool{true, false} {
			t.Run(fmt.Sprintf("%s, site before %v", kind, had), func(t *testing.T) {
				t.Parallel()
				everyKill(t, kind, had)
			})
		}
	}
}

func everyKill(t *testing.T, kind string, had bool) {
	absent := 0
	for n := int64(1); ; n++ {
		w := newWorld(t, had)
		child := exec.Command(os.Args[0])
		child.Env = append(os.Environ(), "FOLDER_DIES_AT="+w.site, "FOLDER_KIND="+kind, fmt.Sprint("FOLDER_OPERATION=", n))
		said, err := child.CombinedOutput()
		if err == nil { // it ended before its time to die
			if state := stateOf(w.site); state != "after" || n < 15 {
				t.Errorf("after %d operations: %s", n-1, state)
			}
			break
		}
		if len(said) > 0 {
			t.Fatalf("%s", said)
		}
		if had && stateOf(w.site) == "none" {
			absent++
		}
		next(t, w, n)
	}
	if want := map[bool]int{true: 1}[had && kind == "two steps"]; absent != want {
		t.Errorf("no site stood after %d kills; %d expected", absent, want)
	}
}
