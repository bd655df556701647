package main

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"
)

// sizes are the books that are measured: seasons, sowings a season, counts in all.
var sizes = []struct{ seasons, sowings, counts int }{{3, 400, 7_000}, {10, 1_500, 90_000}, {20, 5_000, 1_000_000}}

// BenchmarkBooks measures, for a book of each size, the CPU of check, and of a build without
// charts, as times that of a pass that binds every cell by hand and keeps nothing, in the
// same run on the same machine; beside it the most memory, and how long it takes to build
// again after one row has changed. The table in DEVELOPERS.md is made of it:
//
//	go test -run '^$' -bench Books -benchtime 1x -timeout 30m ./cmd/traybook
func BenchmarkBooks(b *testing.B) {
	if dir := os.Getenv("TRAYBOOK_PASS"); dir != "" {
		b.Log(passOver(b, dir))
		return
	}
	dir := b.TempDir()
	program, maker := filepath.Join(dir, "traybook"), filepath.Join(dir, "make")
	must(b, exec.Command("go", "build", "-o", program, ".").Run())
	must(b, exec.Command("go", "build", "-o", maker, "../../examples/make").Run())
	for _, s := range sizes {
		b.Run(fmt.Sprintf("%dx%d", s.seasons, s.sowings), func(b *testing.B) {
			book := filepath.Join(dir, b.Name())
			must(b, exec.Command(maker, "--seasons", strconv.Itoa(s.seasons), "--sowings", strconv.Itoa(s.sowings), "--counts", strconv.Itoa(s.counts), book).Run())
			for b.Loop() {
				measureBook(b, program, book)
			}
		})
	}
}

// measureBook reports the figures of one book.
func measureBook(b *testing.B, program, book string) {
	pass := exec.Command(os.Args[0], "-test.run", "^$", "-test.bench", "Books", "-test.benchtime", "1x")
	pass.Env = append(os.Environ(), "TRAYBOOK_PASS="+book)
	base := used(b, pass)
	check := used(b, exec.Command(program, "check", book))
	build := used(b, exec.Command(program, "build", book, "--no-charts"))
	counts := filepath.Join(book, "counts.csv")
	text, err := os.ReadFile(counts)
	must(b, err)
	must(b, os.WriteFile(counts, text[:strings.LastIndex(strings.TrimSpace(string(text)), "\n")+1], 0o666))
	again := used(b, exec.Command(program, "build", book, "--no-charts"))
	must(b, os.WriteFile(counts, text, 0o666))
	b.ReportMetric(base.cpu.Seconds(), "pass-s")
	b.ReportMetric(check.cpu.Seconds()/base.cpu.Seconds(), "check-x")
	b.ReportMetric(check.megabytes, "check-MB")
	b.ReportMetric(build.cpu.Seconds()/base.cpu.Seconds(), "build-x")
	b.ReportMetric(build.megabytes, "build-MB")
	b.ReportMetric(again.wall.Seconds(), "again-s")
}

// use is what a process took.
type use struct {
	cpu, wall time.Duration
	megabytes float64
}

// used runs a command and says what it took.
func used(b *testing.B, c *exec.Cmd) use {
	began := time.Now()
	if out, err := c.CombinedOutput(); err != nil {
		b.Fatalf("%v: %v\n%s", c.Args, err, out)
	}
	p := c.ProcessState
	return use{p.UserTime() + p.SystemTime(), time.Since(began), float64(p.SysUsage().(*syscall.Rusage).Maxrss) / 1024}
}

// The columns of a record book whose cells are days and numbers.
var (
	dayCells    = []string{"sown", "chamber_out", "planned", "set_out", "date", "from", "until", "bought"}
	numberCells = []string{"trays", "cells", "wanted", "emerged", "lost", "looked", "usable", "plants", "amount", "hours", "temp", "humidity", "low", "high", "out_low", "out_high"}
)

// bound is a row of any log with its cells as what they are.
type bound struct {
	texts   [24]string
	numbers [24]float64
	days    [24]time.Time
}

// passOver reads every log of a folder and binds its cells, row by row, as a program
// would that does no more than that; it returns how many rows there are.
func passOver(b *testing.B, dir string) (rows int) {
	logs, err := filepath.Glob(filepath.Join(dir, "*.csv"))
	must(b, err)
	for _, log := range logs {
		f, err := os.Open(log)
		must(b, err)
		r := csv.NewReader(f)
		head, err := r.Read()
		must(b, err)
		for {
			cells, err := r.Read()
			if errors.Is(err, io.EOF) {
				break
			}
			must(b, err)
			var row bound
			row.bind(head, cells, filepath.Base(log))
			rows++
		}
		must(b, f.Close())
	}
	return rows
}

// bind reads the cells of a row.
func (r *bound) bind(head, cells []string, log string) {
	for i, cell := range cells {
		switch col := head[i]; {
		case cell == "":
		case slices.Contains(dayCells, col):
			r.days[i], _ = time.Parse(time.DateOnly, cell)
		case slices.Contains(numberCells, col) || col == "tray" && log == "counts.csv":
			r.numbers[i], _ = strconv.ParseFloat(cell, 64)
		default:
			r.texts[i] = cell
		}
	}
}

// must ends the benchmark where what it needs fails.
func must(b *testing.B, err error) {
	b.Helper()
	if err != nil {
		b.Fatal(err)
	}
}
