package main

import (
	"flag"
	"os"
	"testing"

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
		Setup: func(e *testscript.Env) error {
			wd, err := os.Getwd()
			e.Setenv("EXAMPLES", wd+"/../../examples")
			e.Setenv("HOME", e.WorkDir+"/home")
			e.Setenv("XDG_CACHE_HOME", e.WorkDir+"/cache")
			return err
		},
	})
}
