package main

import (
	"context"
	"errors"
	"os"
	"os/exec"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

// skipOrFail skips a test that needs what is not installed, and fails it where
// TRAYBOOK_NO_SKIP is set, as .ci/run does.
func skipOrFail(t *testing.T, why string) {
	t.Helper()
	if os.Getenv("TRAYBOOK_NO_SKIP") != "" {
		t.Fatal(why)
	}
	t.Skip(why)
}

// browser starts Chromium, or skips.
func browser(t *testing.T) context.Context {
	t.Helper()
	name := ""
	for _, n := range []string{"chromium", "chromium-browser", "google-chrome", "chrome"} {
		if p, err := exec.LookPath(n); err == nil {
			name = p
			break
		}
	}
	if name == "" {
		skipOrFail(t, "no Chromium on this machine: the pages were not opened")
	}
	flags := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.ExecPath(name), chromedp.NoSandbox, chromedp.DisableGPU,
		chromedp.Flag("disable-background-networking", true), chromedp.Flag("disable-component-update", true),
		chromedp.Flag("disable-sync", true), chromedp.Flag("disable-quic", true),
		chromedp.UserDataDir(t.TempDir()))
	alloc, stop := chromedp.NewExecAllocator(t.Context(), flags...)
	t.Cleanup(stop)
	ctx, cancel := chromedp.NewContext(alloc)
	t.Cleanup(cancel)
	ctx, cancelTime := context.WithTimeout(ctx, 8*time.Minute)
	t.Cleanup(cancelTime)
	if err := chromedp.Do(ctx); err != nil {
		skipOrFail(t, "Chromium does not start: "+err.Error())
	}
	return ctx
}

// tab opens a tab of the browser and watches it.
func tab(t *testing.T, browser context.Context) (context.Context, *watch) {
	t.Helper()
	ctx, cancel := chromedp.NewContext(browser)
	t.Cleanup(cancel)
	w := &watch{}
	w.on(t, ctx)
	return ctx, w
}

// watch collects what a page says on the console and asks of the network.
type watch struct {
	sync.Mutex
	said, asked []string
}

func (w *watch) on(t *testing.T, ctx context.Context) {
	t.Helper()
	err := chromedp.Listen(ctx, func(event any) {
		w.Lock()
		defer w.Unlock()
		switch e := event.(type) {
		case *runtime.EventConsoleAPICalled:
			w.said = append(w.said, "console call")
		case *runtime.EventExceptionThrown:
			w.said = append(w.said, e.ExceptionDetails.Text)
		case *log.EventEntryAdded:
			w.said = append(w.said, e.Entry.Text+" "+e.Entry.URL)
		case *network.EventRequestWillBeSent:
			w.asked = append(w.asked, e.Request.URL)
		}
	})
	_, errNetwork := chromedp.Call(ctx, network.Enable, network.EnableParams{})
	_, errLog := chromedp.Call(ctx, log.Enable, cdp.Empty{})
	_, errRuntime := chromedp.Call(ctx, runtime.Enable, cdp.Empty{})
	if err := errors.Join(err, errNetwork, errLog, errRuntime); err != nil {
		t.Fatal(err)
	}
}

func (w *watch) take() (said, asked []string) {
	w.Lock()
	defer w.Unlock()
	said, asked = w.said, w.asked
	w.said, w.asked = nil, nil
	return said, asked
}

// judge finds fault with what the page said and with what it asked for beyond its site.
func (w *watch) judge(t *testing.T, page, prefix string) {
	t.Helper()
	said, asked := w.take()
	for _, s := range said {
		t.Errorf("%s: the browser says %q", page, s)
	}
	for _, a := range asked {
		if !strings.HasPrefix(a, prefix) && !strings.HasPrefix(a, "data:") {
			t.Errorf("%s: asks for %s", page, a)
		}
	}
}
