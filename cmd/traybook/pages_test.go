package main

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// Pages in a real browser: nothing on the console, no request beyond the site's
// folder, no empty chart, nothing wider than the screen; everybody can read them;
// and hostile names run nothing.
func TestPagesInChromium(t *testing.T) {
	ctx := browser(t)
	t.Run("example", func(t *testing.T) {
		b := exampleSite(t)
		if strings.Contains(b.said, "no chart runtime") {
			skipOrFail(t, "no chart runtime: run go generate ./...")
		}
		openAll(t, ctx, b.site, 1280, 1920, 1024, 768, 390, 320)
	})
	t.Run("for everybody", func(t *testing.T) { readableByAll(t, ctx, exampleSite(t).site) })
	t.Run("hostile names", func(t *testing.T) {
		openAll(t, ctx, hostileSite(t), 1280, 390)
	})
}

// pageFacts is what a look at a loaded page gives.
type pageFacts struct {
	Title    string   `json:"title"`
	Width    int      `json:"width"`
	Letters  float64  `json:"letters"`
	Empty    []string `json:"empty"`
	Script   int      `json:"script"`
	Headings int      `json:"headings"`
	Wide     []string `json:"wide"`
}

// look runs in the page: a chart of the engine is empty where its drawing has no
// extent. Of two drawings of a chart one is shown. Wide are the elements that stick
// out, to say who is to blame for a page that is too wide.
const look = `(() => {
	const shown = [...document.querySelectorAll('.chart svg')].filter(s => s.checkVisibility());
	const empty = shown.filter(s => {
		const b = s.getBBox(); return b.width < 50 || b.height < 20 || s.querySelectorAll('path,rect,text').length < 3;
	}).map(s => s.getAttribute('aria-labelledby') || '?');
	const width = document.documentElement.scrollWidth;
	const wide = width <= innerWidth ? [] : [...document.querySelectorAll('body *')].filter(e =>
		e.getBoundingClientRect().right > innerWidth + 1 && !e.closest('[role=region]')).map(e => e.tagName + '.' + (e.getAttribute('class') ?? ''));
	return {title: document.title, width, letters: parseFloat(getComputedStyle(document.documentElement).fontSize), empty,
		script: document.querySelectorAll('script,[onclick],[onload],[onerror]').length,
		headings: document.querySelectorAll('h1').length, wide: wide.slice(0, 3)};
})()`

// text sets the size of text, as a reader with weak eyes sets it in the browser.
func text(size int64) chromedp.Action[chromedp.Void] {
	return chromedp.Func(func(ctx context.Context, _ *chromedp.Target) error {
		_, err := chromedp.Call(ctx, page.SetFontSizes, page.SetFontSizesParams{FontSizes: &page.FontSizes{Standard: size}})
		return err
	})
}

// tabs is in how many tabs at once pages are opened.
const tabs = 2

// inTabs deals pages to tabs, and judges what each page says and asks for.
func inTabs(t *testing.T, browser context.Context, site string, pages []string, visit func(t *testing.T, ctx context.Context, page string)) {
	t.Helper()
	prefix := "file://" + (&url.URL{Path: site}).EscapedPath() + "/"
	for first := range tabs {
		t.Run(fmt.Sprintf("tab %d", first+1), func(t *testing.T) {
			t.Parallel()
			ctx, w := tab(t, browser)
			for i := first; i < len(pages); i += tabs {
				if err := chromedp.Do(ctx, chromedp.Navigate(prefix+pages[i])); err != nil {
					t.Fatalf("%s: %v", pages[i], err)
				}
				visit(t, ctx, pages[i])
				w.judge(t, pages[i], prefix)
			}
		})
	}
}

// openAll opens every page of a site once and judges it at each width, and on a
// telephone with its text at 200 %.
func openAll(t *testing.T, browser context.Context, site string, widths ...int64) {
	t.Helper()
	inTabs(t, browser, site, htmlPages(t, site), func(t *testing.T, ctx context.Context, page string) {
		for _, width := range widths {
			judge(t, page, width, lookAt(t, ctx, page, width))
		}
		errTwice := chromedp.Do(ctx, text(32))
		f := lookAt(t, ctx, page, 390)
		if err := errors.Join(errTwice, chromedp.Do(ctx, text(16))); err != nil || f.Letters != 32 {
			t.Fatalf("%s: the text is %v pixels high, not 32: %v", page, f.Letters, err)
		}
		judge(t, page+" at 200 %", 390, f)
	})
}

// lookAt looks at a loaded page on a screen of that width.
func lookAt(t *testing.T, ctx context.Context, page string, width int64) pageFacts {
	t.Helper()
	err := chromedp.Do(ctx, chromedp.EmulateViewport(width, 900))
	f, err2 := chromedp.Run(ctx, chromedp.Evaluate[pageFacts](look))
	if err := errors.Join(err, err2); err != nil {
		t.Fatalf("%s: %v", page, err)
	}
	return f
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
