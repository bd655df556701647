package main

import (
	"bytes"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// secrets are what the private book tells nobody: words that no page has a reason to
// hold, and numbers that nothing else in the book makes.
var secrets = []string{"ZZNOTE", "ZZSUPPLIER", "ZZNUMBER", "71.73", "7173", "913.37", "91337", "4177.19", "417719", "6121.91", "612191", "3.1313"}

// privateBook is a small book with all that a farm keeps to itself.
var privateBook = map[string]string{
	"book.csv":    "setting,value,note\nfarm,Hollin Garth,ZZNOTE\nwage,71.73,\nplug_price,3.1313,\n",
	"sowings.csv": "batch,sown,crop,variety,lot,tray,trays,wanted,set_out,plants_out,surplus,note\n" + manySowings(),
	"trays.csv":   "tray,kind,cells,count,price,lasts,bought,note\nA,air-pruning,72,20,913.37,5,2025-01-01,ZZNOTE\nW,solid-wall,72,20,6121.91,2,2025-01-01,\n",
	"lots.csv":    "lot,crop,variety,supplier,lot_number,price,seeds,germ_label,note\nL1,leek,Arvo,ZZSUPPLIER,ZZNUMBER,4177.19,9000,90,ZZNOTE\n",
	"costs.csv":   "date,category,amount,hours,note\n2025-03-01,mix,913.37,,ZZNOTE\n2025-03-02,labour,,9,ZZNOTE\n",
	"counts.csv":  "batch,date,emerged,note\nB1,2025-03-12,60,ZZNOTE\nB2,2025-03-12,55,\nB3,2025-04-12,50,\nB4,2025-04-12,58,\n",
	"out.csv":     "batch,date,plants,to,last,money,note\nB4,2025-05-20,40,sold,yes,4177.19,ZZNOTE\n",
}

func manySowings() string {
	return "B1,2025-03-01,leek,Arvo,L1,A,1,60,2025-05-01,50,3,ZZNOTE\nB2,2025-03-01,leek,Arvo,L1,W,1,60,2025-05-01,45,3,\n" +
		"B3,2025-04-01,leek,Arvo,L1,A,1,60,2025-06-01,50,3,\nB4,2025-04-01,leek,Arvo,L1,W,1,60,,,,\n"
}

// buildPrivate builds the private book and returns its folder.
func buildPrivate(t *testing.T, flags ...string) string {
	t.Helper()
	book, site := t.TempDir(), filepath.Join(t.TempDir(), "site")
	for name, body := range privateBook {
		if err := os.WriteFile(filepath.Join(book, name), []byte(body), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	var out, errs bytes.Buffer
	if code := run(append([]string{"build", book, "--out", site}, flags...), &out, &errs); code != done {
		t.Fatalf("status %d\n%s%s", code, &out, &errs)
	}
	return site
}

// found says which secrets stand in which files below a folder.
func found(t *testing.T, site string) []string {
	t.Helper()
	var all []string
	err := filepath.WalkDir(site, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		body, err := os.ReadFile(path)
		for _, s := range secrets {
			if strings.Contains(strings.ReplaceAll(string(body), ",", ""), s) {
				all = append(all, filepath.Base(path)+": "+s)
			}
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

func TestPublicEdition(t *testing.T) {
	if all := found(t, buildPrivate(t)); len(all) < 8 {
		t.Fatalf("the farm's own edition tells only %v: the test would see nothing", all)
	}
	if all := found(t, buildPrivate(t, "--public")); len(all) > 0 {
		t.Errorf("a public edition tells %v", all)
	}
	shown := strings.Join(found(t, buildPrivate(t, "--public", "--show", "lots")), "; ")
	if !strings.Contains(shown, "ZZSUPPLIER") || strings.Contains(shown, "ZZNOTE") || strings.Contains(shown, "4177.19") {
		t.Errorf("with --show lots: %s", shown)
	}
}

func TestSingleEdition(t *testing.T) {
	site := buildPrivate(t, "--single")
	body, err := os.ReadFile(filepath.Join(site, "review.html"))
	if err != nil {
		t.Fatal(err)
	}
	if link := regexp.MustCompile(`(?:href|src)="[^#"][^"]*"`).Find(body); link != nil {
		t.Errorf("one file links to %s", link)
	}
	for _, want := range []string{"<style>", "sha256-", "a transplant cost"} {
		if !bytes.Contains(body, []byte(want)) {
			t.Errorf("no %q in the file", want)
		}
	}
	entries, _ := os.ReadDir(site)
	if len(entries) != 2 { // and the list of files by which a build knows its folder
		t.Errorf("files: %v", entries)
	}
}
