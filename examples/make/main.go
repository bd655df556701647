package main

import (
	"cmp"
	"flag"
	"fmt"
	"log"
	"maps"
	"os"
	"path/filepath"
	"slices"
)

func main() {
	var size largest
	flag.IntVar(&size.seasons, "seasons", 0, "write one large `book` of so many seasons instead, for measuring")
	flag.IntVar(&size.sowings, "sowings", 1500, "its `batches` a season")
	flag.IntVar(&size.counts, "counts", 0, "its germination `counts` in all; six a batch where none is written")
	flag.Parse()
	err := run(size, cmp.Or(flag.Arg(0), "examples"))
	if err != nil {
		log.Fatal(err)
	}
}

// run writes the example books below dir, or one large book into it.
func run(size largest, dir string) error {
	if size.seasons > 0 {
		size.counts = cmp.Or(size.counts, 6*size.seasons*size.sowings)
		return write(dir, large(size))
	}
	all, err := books()
	if err != nil {
		return err
	}
	return write(dir, all)
}

// files holds the bytes of each file under its slashed path below examples.
type files map[string][]byte

// books makes every example book; an error is this program's own.
func books() (files, error) {
	all := files{}
	farm := raise()
	if err := farm.verify(); err != nil {
		return nil, err
	}
	all.add("ottermoss", farm.book())
	all.add("ottermoss-broken", broken(farm))
	all.add("tiny", tiny())
	all.add("poor/sowings-only", sowingsOnly(farm))
	all.add("poor/third-blank", thirdBlank(farm))
	all.add("poor/yearly-bill", yearlyBill(farm))
	all.add("checks/c15", checkC15())
	all.add("checks/c16", checkC16())
	all.add("checks/c17", checkC17())
	return all, nil
}

// add puts a book's files under its folder.
func (f files) add(folder string, book files) {
	for name, text := range book {
		f[folder+"/"+name] = text
	}
}

// write puts the files below dir.
func write(dir string, all files) error {
	for _, name := range slices.Sorted(maps.Keys(all)) {
		path := filepath.Join(dir, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(path), 0o777); err != nil {
			return err
		}
		if err := os.WriteFile(path, all[name], 0o666); err != nil {
			return err
		}
	}
	fmt.Printf("%d files written below %s\n", len(all), dir)
	return nil
}
