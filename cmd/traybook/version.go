package main

import (
	"cmp"
	"runtime/debug"
)

type versionCommand struct{}

// release is the version that a release was built as; empty in other builds.
var release string

// Run says the module's version and, where it was built from a checkout, the
// commit.
func (versionCommand) Run(out *voice) error {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		out.result("traybook, version unknown")
		return nil
	}
	version, commit := info.Main.Version, ""
	if version == "" || version == "(devel)" {
		version = "unreleased"
	}
	version = cmp.Or(release, version)
	for _, s := range info.Settings {
		if s.Key == "vcs.revision" {
			commit = ", commit " + s.Value
		}
	}
	out.result("traybook %s%s, %s", version, commit, info.GoVersion)
	return nil
}
