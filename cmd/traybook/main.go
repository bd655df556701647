package main

import (
	"errors"
	"io"
	"os"
	"os/signal"
	"syscall"

	"github.com/alecthomas/kong"

	"traybook/report/chart"
)

// main only takes the process's own arguments and streams: tests call run.
func main() {
	signal.Ignore(syscall.SIGPIPE) // a closed pipe is an error of the write to it
	if len(os.Args) == 2 && os.Args[1] == drawsApart {
		chart.Apart(os.Stdin, os.Stdout)
	}
	code := run(os.Args[1:], os.Stdout, os.Stderr)
	stay(ownWindow(), os.Stdin, os.Stderr)
	os.Exit(code)
}

// The exit statuses.
const (
	done    = 0
	leftOut = 1
	nothing = 2
)

// status is an exit status carried as an error; whatever had to be said has been.
type status int

// Error makes a status an error; it is never shown.
func (s status) Error() string { return "exit status" }

type commands struct {
	New     newCommand     `cmd:"" help:"Make a starter record book in a new folder."`
	Check   checkCommand   `cmd:"" help:"Say every problem of a record book."`
	Build   buildCommand   `cmd:"" help:"Build the review of a record book."`
	Sheets  sheetsCommand  `cmd:"" help:"Make forms to print and write on, for this week's batches."`
	Watch   watchCommand   `cmd:"" help:"Build the review, and again after every save."`
	Version versionCommand `cmd:"" help:"Say which traybook this is."`
}

// run is the whole program: arguments in, words out, exit status back.
func run(args []string, stdout, stderr io.Writer) int {
	results, problems := &heard{to: stdout}, &heard{to: stderr}
	out := &voice{stdout: results, stderr: problems, terminal: terminal(stderr)}
	code := guarded(out, func() int { return parseAndRun(out, args) })
	if results.lost != nil {
		code = out.fail(failure("send it elsewhere and run it again", "cannot write standard output: %v", reason(results.lost)))
	}
	if problems.lost != nil { // nowhere is left to say it
		code = nothing
	}
	return code
}

// guarded turns a fault of ours into one line and an exit status. A review that stood
// before is not touched by it, as nothing is put in place half done.
func guarded(out *voice, do func() int) (code int) {
	defer func() {
		switch p := recover().(type) {
		case nil:
		case status: // kong leaves after --help by its Exit hook
			code = int(p)
		default:
			code = out.fail(failure("nothing was written; please report it with the book that shows it", "a fault inside traybook: %v", p))
		}
	}()
	return do()
}

// parseAndRun finds the command and runs it; bad arguments are answered with where help is.
func parseAndRun(out *voice, args []string) int {
	var c commands
	parser, err := kong.New(&c, kong.Name("traybook"),
		kong.Description("A review of a season's transplants from plain CSV logs."),
		kong.Writers(out.stdout, out.stderr), kong.Exit(func(n int) { panic(status(n)) }),
		kong.ConfigureHelp(kong.HelpOptions{Compact: true}))
	if err != nil {
		return out.fail(err)
	}
	args = usual(args)
	ctx, err := parser.Parse(args)
	if err != nil {
		return out.fail(misuse(err, args))
	}
	return exitStatus(out, ctx.Run(out))
}

// exitStatus says a failure that nobody said yet.
func exitStatus(out *voice, err error) int {
	var s status
	switch {
	case err == nil:
		return done
	case errors.As(err, &s):
		return int(s)
	default:
		return out.fail(err)
	}
}
