package main

import (
	"context"
	"errors"
	"os"
	"os/signal"
	"syscall"
	"time"

	"traybook/cmd/traybook/internal/folder"
)

// patience is how long a build waits for another one of the same site: longer than
// a large book takes, shorter than a user waits for an answer.
var patience = 2 * time.Minute

// whileHeld does work on a place that no other traybook changes meanwhile, and
// that it may write to. A signal ends the program in order: before the new one is
// in place, what stood there stays and nothing is left beside it; after that the
// program ends by itself.
func whileHeld(out *voice, name string, may func(string) error, work func(*folder.Held) error) error {
	ctx, stop := signal.NotifyContext(context.Background(), signals()...)
	defer stop()
	place, err := hold(ctx, out, name, may)
	if err != nil {
		return err
	}
	defer letGo(out, place, name)
	defer context.AfterFunc(ctx, func() { abandon(out, place, name) })()
	if err := may(name); err != nil {
		return err
	}
	return work(place)
}

// hold takes the place and says what it waits for and what it mended.
func hold(ctx context.Context, out *voice, name string, may func(string) error) (*folder.Held, error) {
	place, err := folder.Hold(ctx, name, patience, func() {
		out.remark("another build of %s is running; waiting for it", name)
	})
	if err != nil {
		return nil, notHeld(ctx, err, name, may)
	}
	if place.Mended {
		sayMended(out, name)
	}
	return place, nil
}

// notHeld says why a place cannot be had: another build, a signal, what stands
// there or, failing these, what the system says.
func notHeld(ctx context.Context, err error, name string, may func(string) error) error {
	if errors.Is(err, folder.ErrBusy) {
		return failure("let it end, or stop it, and build again", "another build of %s has not ended in %v", name, patience)
	}
	if ctx.Err() != nil {
		return stopped(name)
	}
	if refused := may(name); refused != nil { // which says more
		return refused
	}
	return cannotWrite(name, err)
}

// letGo says what cannot be cleared away.
func letGo(out *voice, place *folder.Held, name string) {
	if err := place.Release(); err != nil {
		out.remark("something is left beside %s, for the next build to clear: %v", name, reason(err))
	}
}

// abandon ends the program, unless the work is done. The work goes on in another
// goroutine until then, so it speaks by a voice of its own.
func abandon(out *voice, place *folder.Held, name string) {
	if place.Abandon() {
		own := &voice{stdout: out.stdout, stderr: out.stderr, terminal: out.terminal, lineOpen: out.terminal != nil}
		os.Exit(own.fail(stopped(name)))
	}
}

// stopped is what a build says that a signal ended before its swap.
func stopped(name string) error {
	return failure("run it again", "stopped; nothing was changed at %s", name)
}

// signals are those that stop a program, but for any that it was started to
// ignore, as nohup does.
func signals() (stopping []os.Signal) {
	for _, s := range []os.Signal{os.Interrupt, syscall.SIGTERM, syscall.SIGHUP} {
		if !signal.Ignored(s) {
			stopping = append(stopping, s)
		}
	}
	return stopping
}

// mend puts right what killed builds left in a book's folder.
func mend(out *voice, book string) {
	mended, err := folder.Mend(book)
	for _, name := range mended {
		sayMended(out, name)
	}
	if err != nil {
		out.remark("a build of a review in %s was killed, and what stood before cannot be moved back: %v", book, reason(err))
	}
}

// sayMended tells of the one moment at which a kill can leave no review.
func sayMended(out *voice, name string) {
	out.remark("a build was killed while it put %s in place; what stood before stands there again", name)
}
