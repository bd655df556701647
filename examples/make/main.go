package main

import (
	"fmt"
	"log"
	"maps"
	"os"
	"path/filepath"
	"slices"
)

func main() {
	dir := "examples"
	if len(os.Args) > 1 {
		dir = os.Args[1]
	}
	all, err := books()
	if err == nil {
		err = write(dir, all)
	}
	if err != nil {
		log.Fatal(err)
	}
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
