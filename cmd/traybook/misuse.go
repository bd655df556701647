package main

import (
	"os"
	"regexp"
	"slices"
	"strings"
)

// usual rewrites arguments that people type out of habit: help and --version as other
// programs have them, a book alone, and a folder whose name begins with a dash, which is
// no flag.
func usual(args []string) []string {
	if os.PathSeparator == '\\' {
		args = unquoted(args)
	}
	if len(args) > 0 && args[0] == "help" {
		return append(slices.Clone(args[1:]), "--help")
	}
	if len(args) == 1 && (args[0] == "--version" || args[0] == "-V") {
		return []string{"version"}
	}
	if len(args) > 0 && isBook(args[0]) {
		args = append([]string{"build"}, args...)
	}
	out := slices.Clone(args)
	for i, a := range out {
		if a == "--" {
			break
		}
		if dashed(a) && a != "-h" {
			if info, err := os.Stat(a); err == nil && info.IsDir() {
				out[i] = "." + string(os.PathSeparator) + a
			}
		}
	}
	return out
}

// unquoted takes away the quotation mark that Windows leaves at the end of a folder's name
// that was typed with a backslash there, as in "C:\my book\": no name holds one.
func unquoted(args []string) []string {
	out := slices.Clone(args)
	for i, a := range out {
		out[i] = strings.TrimSuffix(a, `"`)
	}
	return out
}

// isBook reports whether the first argument is a book's folder or workbook where a command
// is expected, as when one is dropped on the program: that is to build it.
func isBook(first string) bool {
	return !slices.Contains(verbs, first) && first != "-h" && !strings.HasPrefix(first, "--") && placeOf(first).find() == nil
}

// dashed reports whether an argument begins with one dash and goes on.
func dashed(a string) bool { return len(a) > 1 && a[0] == '-' && a[1] != '-' }

// need is what a flag wants behind it: what is given that is not so, and what to give.
type need struct{ not, give string }

// needs are the flags that take a value.
var needs = map[string]need{
	"--season":  {"not a year", "give a year such as 2026"},
	"--today":   {"not a date", "write it as 2026-05-17"},
	"--since":   {"not a date", "write it as 2026-05-17"},
	"--grow":    {"not a factor", "give a factor such as 1.2"},
	"--switch":  {"not two tray codes", "write them as FROM=TO"},
	"--out":     {"no place", "name a place to write to"},
	"--echarts": {"no file", "give the file echarts.min.js of ECharts"},
	"--show":    {"not a thing to show", "give costs or lots"},
}

// misuses are the parser's words for what was typed, and ours in their place. The first
// group of a pattern is what was typed, the last one, if any, what may have been meant.
var misuses = []struct {
	said *regexp.Regexp
	say  func(typed, meant string, args []string) error
}{
	{regexp.MustCompile(`^expected one of (.+)$`), noCommand},
	{regexp.MustCompile(`^unexpected argument (.+?)(?:, did you mean "(.+)"\?)?$`), tooMany},
	{regexp.MustCompile(`^expected "<(\w+)>"$`), nothingNamed},
	{regexp.MustCompile(`^unknown flag (.+?)(?:, did you mean "(.+)"\?)?$`), noFlag},
	{regexp.MustCompile(`^missing flags: (--[a-z-]+)=`), missingFlag},
	{regexp.MustCompile(`^(--[a-z-]+): bool value`), noValue},
	{regexp.MustCompile(`^(--[a-z-]+): `), badValue},
}

// misuse says in plain words what is wrong with the arguments. What the table does not
// know is said as the parser says it, with where help is.
func misuse(err error, args []string) error {
	for _, m := range misuses {
		if found := m.said.FindStringSubmatch(err.Error()); found != nil {
			meant := ""
			if len(found) > 2 {
				meant = found[2]
			}
			return m.say(found[1], meant, args)
		}
	}
	return hint{err, moreHelp(args)}
}

// verbs are the commands.
var verbs = []string{"new", "check", "build", "sheets", "watch", "version"}

// moreHelp names the help to the command that was typed, if any.
func moreHelp(args []string) string {
	if len(args) > 0 && slices.Contains(verbs, args[0]) {
		return "traybook help " + args[0] + " says what it takes"
	}
	return "traybook help says what there is"
}

// noCommand is said where nothing, or only flags, were typed.
func noCommand(_, _ string, args []string) error {
	return failure(moreHelp(args), "no command is given: say one of %s", strings.Join(verbs, ", "))
}

// tooMany tells a word that is no command from one that stands behind a command which
// takes no more: a folder with a space in its name, unquoted, is the usual one.
func tooMany(typed, meant string, args []string) error {
	switch {
	case len(args) > 0 && args[0] != typed:
		return failure(moreHelp(args), "%s: one argument too many", typed)
	case meant != "":
		return failure(moreHelp(args), "%s: no such command; did you mean %q?", typed, meant)
	}
	return failure(moreHelp(args), "%s: no such command; the commands are %s", typed, strings.Join(verbs, ", "))
}

// nothingNamed says what a command works on, with an example to copy.
func nothingNamed(typed, _ string, args []string) error {
	if typed == "dir" {
		return failure("name a new folder, as in: traybook new mybook", "no folder is named")
	}
	return failure("name the folder that holds sowings.csv, as in: traybook "+args[0]+" mybook", "no record book is named")
}

// noFlag tells a flag with one dash from a folder whose name begins with one, of which
// the parser names the first letter alone.
func noFlag(typed, meant string, args []string) error {
	whole := typed
	if i := slices.IndexFunc(args, func(a string) bool { return strings.HasPrefix(a, typed) }); i >= 0 && dashed(typed) {
		whole = args[i]
		if _, known := needs["-"+whole]; known {
			meant = "-" + whole
		} else {
			return failure("write ./"+whole+" if it is a folder's name", "%s: no such flag and no such folder", whole)
		}
	}
	if meant != "" {
		return failure(moreHelp(args), "%s: no such flag; did you mean %q?", whole, meant)
	}
	return failure(moreHelp(args), "%s: no such flag", whole)
}

// missingFlag is said of a flag without which a command cannot work.
func missingFlag(typed, _ string, args []string) error {
	if typed == "--out" {
		return failure("name the file to write, as in: traybook "+args[0]+" mybook --out sheets.html", "--out: no file is named")
	}
	return failure(moreHelp(args), "%s is missing", typed)
}

// noValue is said of a flag that is there or not.
func noValue(flag, _ string, _ []string) error {
	return failure("leave the value away", "%s: this flag takes no value", flag)
}

// badValue says what a flag wants, and what stands behind it instead.
func badValue(flag, _ string, args []string) error {
	want, told := needs[flag]
	if !told {
		want = need{"not what it takes", moreHelp(args)}
	}
	value, given := valueOf(flag, args)
	if !given {
		return failure(want.give, "%s: nothing stands behind it", flag)
	}
	return failure(want.give, "%s %s: %s", flag, value, want.not)
}

// valueOf is what stands behind a flag; given is false where nothing does.
func valueOf(flag string, args []string) (value string, given bool) {
	for i, a := range args {
		if rest, ok := strings.CutPrefix(a, flag+"="); ok {
			return rest, rest != ""
		}
		if a == flag && i+1 < len(args) {
			return args[i+1], true
		}
	}
	return "", false
}
