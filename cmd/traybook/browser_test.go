package main

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
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
	ctx, cancelTime := context.WithTimeout(ctx, 4*time.Minute)
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

// pageFacts is what a look at a loaded page gives.
type pageFacts struct {
	Title    string   `json:"title"`
	Width    int      `json:"width"`
	Empty    []string `json:"empty"`
	Script   int      `json:"script"`
	Headings int      `json:"headings"`
	Wide     []string `json:"wide"`
}

// look runs in the page: a chart is empty where its drawing has no extent. Of two
// drawings of a chart one is shown; it may be wider than the screen only if no
// other is there.
const look = `(() => {
	const shown = [...document.querySelectorAll('figure svg')].filter(s => s.checkVisibility());
	const empty = shown.filter(s => {
		const b = s.getBBox(); return b.width < 50 || b.height < 20 || s.querySelectorAll('path,rect,text').length < 3;
	}).map(s => s.getAttribute('aria-labelledby') || '?');
	const wide = [...document.querySelectorAll('body *')].filter(e =>
		e.getBoundingClientRect().right > innerWidth + 1 && !e.closest('[role=region]') && !e.closest('svg')).map(e => e.tagName + '.' + e.className);
	return {title: document.title, width: document.documentElement.scrollWidth, empty,
		script: document.querySelectorAll('script,[onclick],[onload],[onerror]').length,
		headings: document.querySelectorAll('h1').length, wide: wide.slice(0, 3)};
})()`

// tabs is in how many tabs at once pages are opened.
const tabs = 2

// openAll opens every page of a site once and judges it at each width.
func openAll(t *testing.T, browser context.Context, site string, widths ...int64) {
	t.Helper()
	pages := htmlPages(t, site)
	prefix := "file://" + (&url.URL{Path: site}).EscapedPath() + "/"
	for first := range tabs {
		t.Run(fmt.Sprintf("tab %d", first+1), func(t *testing.T) {
			t.Parallel()
			ctx, w := tab(t, browser)
			for i := first; i < len(pages); i += tabs {
				open(t, ctx, prefix, pages[i], widths)
				said, asked := w.take()
				for _, s := range said {
					t.Errorf("%s: the browser says %q", pages[i], s)
				}
				for _, a := range asked {
					if !strings.HasPrefix(a, prefix) {
						t.Errorf("%s: asks for %s", pages[i], a)
					}
				}
			}
		})
	}
}

// open opens a page and judges it at each width.
func open(t *testing.T, ctx context.Context, prefix, page string, widths []int64) {
	t.Helper()
	if err := chromedp.Do(ctx, chromedp.Navigate(prefix+page)); err != nil {
		t.Fatalf("%s: %v", page, err)
	}
	for _, width := range widths {
		err := chromedp.Do(ctx, chromedp.EmulateViewport(width, 900))
		f, err2 := chromedp.Run(ctx, chromedp.Evaluate[pageFacts](look))
		if err := errors.Join(err, err2); err != nil {
			t.Fatalf("%s: %v", page, err)
		}
		judge(t, page, width, f)
	}
}

func judge(t *testing.T, page string, width int64, f pageFacts) {
	t.Helper()
	if f.Title == "" || f.Headings != 1 {
		t.Errorf("%s: title %q, %d main headings", page, f.Title, f.Headings)
	}
	if f.Script > 0 {
		t.Errorf("%s: %d scripts or handlers", page, f.Script)
	}
	if len(f.Empty) > 0 {
		t.Errorf("%s: empty charts %v", page, f.Empty)
	}
	if f.Width > int(width) {
		t.Errorf("%s: %d pixels wide on a screen of %d: %v", page, f.Width, width, f.Wide)
	}
}

func htmlPages(t *testing.T, site string) (pages []string) {
	t.Helper()
	err := fs.WalkDir(os.DirFS(site), ".", func(name string, d fs.DirEntry, err error) error {
		if err == nil && filepath.Ext(name) == ".html" {
			pages = append(pages, name)
		}
		return err
	})
	if err != nil || len(pages) == 0 {
		t.Fatalf("%d pages in %s, %v", len(pages), site, err)
	}
	return pages
}

// Pages in a real browser: nothing on the console, no request beyond the site's
// folder, no empty chart, nothing wider than the screen; and hostile names run nothing.
func TestPagesInChromium(t *testing.T) {
	ctx := browser(t)
	t.Run("example", func(t *testing.T) {
		b := exampleSite(t)
		if strings.Contains(b.said, "no chart runtime") {
			skipOrFail(t, "no chart runtime: run go generate ./...")
		}
		openAll(t, ctx, b.site, 1280, 390)
	})
	t.Run("hostile names", func(t *testing.T) {
		openAll(t, ctx, hostileSite(t), 1280)
	})
}

// hostileSite builds a book whose names try to be a script, a picture and a handler.
func hostileSite(t *testing.T) string {
	t.Helper()
	book := t.TempDir()
	const evil = `</script><script>console.log(1)</script>`
	rows := "batch,sown,crop,variety,tray,trays,cells\n"
	counts := "batch,date,emerged\n"
	for _, b := range []string{"1", "2", "3"} {
		rows += b + `,2025-03-0` + b + `,` + evil + `,"<img src=x onerror=console.log(2)>",<b onclick=x>,1,72` + "\n"
		counts += b + ",2025-03-20,6" + b + "\n"
	}
	for name, text := range map[string]string{"sowings.csv": rows, "counts.csv": counts} {
		if err := os.WriteFile(filepath.Join(book, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	var said strings.Builder
	if code := run([]string{"build", book}, &said, &said); code != done {
		t.Fatalf("status %d: %s", code, said.String())
	}
	return filepath.Join(book, "site")
}
