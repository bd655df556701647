package main

import (
	"flag"
	"os"
	"regexp"
	"testing"
	"time"

	"github.com/rogpeppe/go-internal/testscript"
)

var update = flag.Bool("update", false, "rewrite the expected output of the scripts")

// scratch is a folder that lives as long as the tests of this package run.
var scratch string

// tidy runs the tests with scratch there, and takes it away.
type tidy struct{ *testing.M }

// Run runs the tests.
func (m tidy) Run() int {
	dir, err := os.MkdirTemp("", "traybook-test-")
	if err != nil {
		panic(err)
	}
	defer os.RemoveAll(dir)
	scratch = dir
	return m.M.Run()
}

func TestMain(m *testing.M) {
	testscript.Main(tidy{m}, map[string]func(){
		"traybook": main,
	})
}

// The command line as its user meets it: a script for each behaviour.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 "testdata",
		UpdateScripts:       *update,
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Cmds:                map[string]func(*testscript.TestScript, bool, []string){"until": until},
		Setup: func(e *testscript.Env) error {
			wd, err := os.Getwd()
			e.Setenv("EXAMPLES", wd+"/../../examples")
			e.Setenv("HOME", e.WorkDir+"/home")
			e.Setenv("XDG_CACHE_HOME", e.WorkDir+"/cache")
			return err
		},
	})
}

// until waits until a file holds what an expression finds: until FILE EXPRESSION.
func until(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: until FILE EXPRESSION")
	}
	want := regexp.MustCompile(args[1])
	for range 600 {
		b, err := os.ReadFile(ts.MkAbs(args[0]))
		if err == nil && want.Match(b) {
			return
		}
		time.Sleep(50 * time.Millisecond)
	}
	ts.Fatalf("%s never held %s", args[0], args[1])
}
