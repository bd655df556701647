package main

import "runtime/debug"

type versionCommand struct{}

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
	for _, s := range info.Settings {
		if s.Key == "vcs.revision" {
			commit = ", commit " + s.Value
		}
	}
	out.result("traybook %s%s, %s", version, commit, info.GoVersion)
	return nil
}
