package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"maps"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"traybook/cmd/traybook/internal/folder"
)

// reviews are two reviews of one book that a build can leave, by their flags.
var reviews = []string{"--grow=1", "--grow=2"}

// shop is a copy of a small book, what each of its reviews holds, and how long a
// build of it takes.
type shop struct {
	book, site string
	whole      []map[string]string
	takes      time.Duration
}

func newShop(t *testing.T) shop {
	t.Helper()
	t.Setenv("XDG_CACHE_HOME", t.TempDir()) // charts are drawn once
	s := shop{book: filepath.Join(t.TempDir(), "book")}
	s.site = filepath.Join(s.book, "site")
	if err := os.CopyFS(s.book, os.DirFS("../../examples/tiny")); err != nil {
		t.Fatal(err)
	}
	if err := os.RemoveAll(s.site); err != nil { // that somebody built in the example
		t.Fatal(err)
	}
	for _, flag := range append(reviews, reviews...) {
		start := time.Now()
		if out, err := s.command("build", flag).CombinedOutput(); err != nil {
			t.Fatalf("%v: %s", err, out)
		}
		s.takes = time.Since(start)
		s.whole = append(s.whole, contentsOf(t, s.site))
	}
	return s
}

// wear is what sites must stand, each with a site that is whole before and after.
var wear = map[string]func(*testing.T, shop){
	"killed": killedBuilds, "second waits": secondWaits, "many at once": manyAtOnce, "impatient": impatientBuild,
}

func TestHardWear(t *testing.T) {
	s := newShop(t)
	for _, name := range slices.Sorted(maps.Keys(wear)) {
		t.Run(name, func(t *testing.T) { wear[name](t, s) })
	}
}

// command is the program itself, to be run on the book.
func (s shop) command(args ...string) *exec.Cmd {
	return exec.Command("traybook", append(args, s.book)...)
}

func contentsOf(t *testing.T, dir string) map[string]string {
	t.Helper()
	all := map[string]string{}
	err := fs.WalkDir(os.DirFS(dir), ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		body, err := os.ReadFile(filepath.Join(dir, name))
		all[name] = string(body)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// stands reports whether one of the reviews stands whole.
func (s shop) stands(t *testing.T) bool {
	got := contentsOf(t, s.site)
	return maps.Equal(got, s.whole[0]) || maps.Equal(got, s.whole[1])
}

// litter is the hidden folders in the book.
func (s shop) litter(t *testing.T) []string {
	t.Helper()
	names, err := filepath.Glob(filepath.Join(s.book, ".*"))
	if err != nil {
		t.Fatal(err)
	}
	return names
}

// rounds is how often a test of chance is done; TRAYBOOK_KILLS asks for more.
func rounds(t *testing.T, usual int) int {
	t.Helper()
	if more := os.Getenv("TRAYBOOK_KILLS"); more != "" {
		n, err := strconv.Atoi(more)
		if err != nil {
			t.Fatal(err)
		}
		return n
	}
	return usual
}

// A build killed at any moment leaves one whole review, or one that the next
// command of any kind moves back and says so. The next build leaves nothing beside.
func killedBuilds(t *testing.T, s shop) {
	luck := rand.New(rand.NewPCG(1, 2))
	n, dead, littered, mended := rounds(t, 12), 0, 0, 0
	for i := range n {
		build := s.command("build", reviews[i%2])
		if err := build.Start(); err != nil {
			t.Fatal(err)
		}
		time.Sleep(time.Duration(luck.Float64() * 1.1 * float64(s.takes)))
		_ = build.Process.Kill()
		if build.Wait() != nil {
			dead++
		}
		if len(s.litter(t)) > 0 {
			littered++
		}
		if s.mendedBy(t, "check") {
			mended++
		}
		if !s.stands(t) {
			t.Fatalf("round %d: no whole review", i)
		}
	}
	if out, err := s.command("build").CombinedOutput(); err != nil || len(s.litter(t)) > 0 {
		t.Errorf("%v, %s, beside it %v", err, out, s.litter(t))
	}
	t.Logf("%d builds: %d killed, %d left something, %d mended by the next command", n, dead, littered, mended)
}

// mendedBy runs a command and reports whether it moved a review back, which only
// systems that swap in two steps ever need.
func (s shop) mendedBy(t *testing.T, command string) bool {
	t.Helper()
	_, err := os.Stat(s.site)
	said, failed := s.command(command).CombinedOutput()
	told := bytes.Contains(said, []byte("what stood before stands there again"))
	if failed != nil || told != (err != nil) || told && folder.OneStep {
		t.Fatalf("the site was missing: %v; %s says %s", err != nil, command, said)
	}
	return told
}

// Of two builds at once the second says that it waits, and both succeed.
func secondWaits(t *testing.T, s shop) {
	first, err := folder.Hold(t.Context(), s.site, 0, func() {})
	if err != nil {
		t.Fatal(err)
	}
	second := s.command("build", reviews[0])
	stderr, err := second.StderrPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := second.Start(); err != nil {
		t.Fatal(err)
	}
	said := make([]byte, 1000)
	n, err := stderr.Read(said)
	if want := fmt.Sprintf("traybook: another build of %s is running; waiting for it\n", s.site); err != nil || string(said[:n]) != want {
		t.Errorf("says %q, %v", said[:n], err)
	}
	if err := first.Release(); err != nil {
		t.Error(err)
	}
	if err := second.Wait(); err != nil || !s.stands(t) || len(s.litter(t)) > 0 {
		t.Errorf("%v; beside it %v", err, s.litter(t))
	}
}

// Builds at once, and checks between them, disturb each other in nothing.
func manyAtOnce(t *testing.T, s shop) {
	var all []*exec.Cmd
	for i := range 6 {
		all = append(all, s.command("build", reviews[i%2]), s.command("check"))
	}
	for _, c := range all {
		if err := c.Start(); err != nil {
			t.Fatal(err)
		}
	}
	for _, c := range all {
		if err := c.Wait(); err != nil {
			t.Errorf("%v: %v", c.Args, err)
		}
	}
	if !s.stands(t) || len(s.litter(t)) > 0 {
		t.Errorf("beside the site: %v", s.litter(t))
	}
}

// A build that never ends is not waited for without end.
func impatientBuild(t *testing.T, s shop) {
	first, err := folder.Hold(t.Context(), s.site, 0, func() {})
	if err != nil {
		t.Fatal(err)
	}
	defer first.Release()
	usual := patience
	patience = 50 * time.Millisecond
	defer func() { patience = usual }()
	var said strings.Builder
	code := run([]string{"build", s.book}, &said, &said)
	if want := "has not ended in 50ms; let it end, or stop it, and build again\n"; code != nothing || !strings.HasSuffix(said.String(), want) {
		t.Errorf("status %d: %s", code, said.String())
	}
}
