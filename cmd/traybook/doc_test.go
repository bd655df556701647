package main

import (
	_ "embed"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
)

//go:embed doc.go
var manual string

// Every example of the manual says what it is said to say; "..." stands for words
// that change with the book or the chart runtime.
func TestManualExamples(t *testing.T) {
	t.Chdir(t.TempDir())
	ran := 0
	examples := strings.Split(manual, "\n//\t$ traybook ")[1:]
	for _, example := range examples {
		lines := strings.Split(example, "\n")
		want := ""
		for _, line := range lines[1:] {
			rest, ok := strings.CutPrefix(line, "//\t")
			if !ok {
				break
			}
			want += rest + "\n"
		}
		var said strings.Builder
		run(strings.Fields(lines[0]), &said, &said)
		pattern := "^" + strings.ReplaceAll(regexp.QuoteMeta(want), `\.\.\.`, "[^\n]*") + "$"
		got := strings.ReplaceAll(withoutRuntimeRemark(said.String()), string(os.PathSeparator), "/")
		if !regexp.MustCompile(pattern).MatchString(got) {
			t.Errorf("traybook %s\nsays   %swanted %s", lines[0], got, want)
		}
		ran++
	}
	if ran < 5 {
		t.Errorf("%d examples in the manual", ran)
	}
}

// withoutRuntimeRemark takes away what a build without a chart runtime remarks.
func withoutRuntimeRemark(said string) string {
	lines := slices.Collect(strings.Lines(said))
	return strings.Join(slices.DeleteFunc(lines, func(s string) bool { return strings.HasPrefix(s, "traybook: no chart runtime") }), "")
}

// The manual and the help name the same flags.
func TestManualNamesEveryFlag(t *testing.T) {
	flags := regexp.MustCompile(`--[a-z-]+`)
	var help strings.Builder
	for _, command := range []string{"new", "check", "build", "sheets", "version"} {
		if code := run([]string{command, "--help"}, &help, &help); code != done {
			t.Errorf("%s --help: status %d", command, code)
		}
		if !strings.Contains(manual, "traybook "+command) {
			t.Errorf("the manual has no %s", command)
		}
	}
	told := flags.FindAllString(manual, -1)
	for _, flag := range flags.FindAllString(help.String(), -1) {
		if flag != "--help" && !slices.Contains(told, flag) {
			t.Errorf("the manual has no %s", flag)
		}
	}
	for _, flag := range told {
		if !strings.Contains(help.String(), flag) {
			t.Errorf("no command takes %s", flag)
		}
	}
}
