package main

import (
	"encoding/json"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// part is what the program is made of, as .github/THIRD-PARTY.md tells it.
type part struct{ version, licence string }

// told reads the tables of .github/THIRD-PARTY.md, by name.
func told(t *testing.T) map[string]part {
	t.Helper()
	text, err := os.ReadFile("../../.github/THIRD-PARTY.md")
	if err != nil {
		t.Fatal(err)
	}
	parts := map[string]part{}
	for _, row := range regexp.MustCompile(`(?m)^\| (\S+) \| (v?[0-9]\S*) \| (\S+) \|$`).FindAllStringSubmatch(string(text), -1) {
		parts[row[1]] = part{row[2], row[3]}
	}
	return parts
}

// minor is a version without what stands behind its second number.
func minor(version string) string { return regexp.MustCompile(`^v?\d+\.\d+`).FindString(version) }

// linked are the modules that the program for a system is linked of.
func linked(t *testing.T, goos string) map[string]part {
	t.Helper()
	list := exec.Command("go", "list", "-deps", "-f", "{{with .Module}}{{if not .Main}}{{.Path}} {{.Version}} {{.Dir}}{{end}}{{end}}", ".")
	list.Env = append(os.Environ(), "GOOS="+goos)
	out, err := list.Output()
	if err != nil {
		t.Fatal(err)
	}
	parts := map[string]part{}
	for line := range strings.Lines(string(out)) {
		if f := strings.Fields(line); len(f) == 3 && parts[f[0]].version == "" {
			parts[f[0]] = part{minor(f[1]), licenceIn(t, f[2])}
		}
	}
	return parts
}

// licences are what tells a licence by its words, the surest first.
var licences = []struct{ words, name string }{
	{"Apache License Version 2.0", "Apache-2.0"},
	{"Neither the name of", "BSD-3-Clause"},
	{"to endorse or promote products derived from this software without specific prior written permission", "BSD-3-Clause"},
	{"Redistribution and use in source and binary forms, with or without modification, are permitted", "BSD-2-Clause"},
	{"Permission is hereby granted, free of charge, to any person obtaining a copy", "MIT"},
}

// licenceIn names the licence of a module by the file in its folder.
func licenceIn(t *testing.T, dir string) string {
	t.Helper()
	for _, pattern := range []string{"LICENSE*", "COPYING*"} {
		files, err := filepath.Glob(filepath.Join(dir, pattern))
		if err != nil || len(files) == 0 {
			continue
		}
		text, err := os.ReadFile(files[0])
		if err != nil {
			t.Fatal(err)
		}
		whole := strings.Join(strings.Fields(string(text)), " ")
		for _, l := range licences {
			if strings.Contains(whole, l.words) {
				return l.name
			}
		}
	}
	t.Errorf("%s: no licence that is known", dir)
	return ""
}

// bundled are the packages that the chart engine is bundled from.
func bundled(t *testing.T) map[string]part {
	t.Helper()
	raw, err := os.ReadFile("../../report/chart/runtime/package-lock.json")
	if err != nil {
		t.Fatal(err)
	}
	var lock struct {
		Packages map[string]struct{ Version, License string }
	}
	if err := json.Unmarshal(raw, &lock); err != nil {
		t.Fatal(err)
	}
	parts := map[string]part{}
	for path, p := range lock.Packages {
		if name, ok := strings.CutPrefix(path, "node_modules/"); ok {
			parts[name] = part{minor(p.Version), p.License}
		}
	}
	return parts
}

// The file of licences names all that is in the program on every system, its version and
// its licence, and nothing else.
func TestThirdPartiesAreTold(t *testing.T) {
	got, want := told(t), bundled(t)
	for _, goos := range []string{"linux", "windows", "darwin"} {
		maps.Copy(want, linked(t, goos))
	}
	for name, p := range want {
		if got[name] != p {
			t.Errorf("%s: told %v, is %v", name, got[name], p)
		}
	}
	for name := range got {
		if _, ok := want[name]; !ok {
			t.Errorf("%s is told, and not in the program", name)
		}
	}
	if len(want) < 10 {
		t.Errorf("only %d parts", len(want))
	}
}
