package folder

import (
	"errors"
	"os"
	"path/filepath"
	"testing"
)

// Mend looks only at hidden folders of the form that a hold makes, and touches
// nothing in them but its own.
func TestMendLeavesOthersAlone(t *testing.T) {
	top := t.TempDir()
	for _, name := range []string{"..traybook", "...traybook", "....traybook", ".traybook", "x.traybook"} {
		if err := os.MkdirAll(filepath.Join(top, name, "old"), 0o755); err != nil {
			t.Fatal(err)
		}
	}
	mine := filepath.Join(top, ".own.traybook", "mine")
	if err := errors.Join(os.MkdirAll(mine, 0o755), os.Symlink(top, filepath.Join(top, ".link.traybook"))); err != nil {
		t.Skip(err)
	}
	if mended, err := Mend(top); mended != nil || err != nil || !stands(mine) {
		t.Errorf("mended %v, %v", mended, err)
	}
	if entries, _ := os.ReadDir(top); len(entries) != 7 {
		t.Errorf("left: %v", entries)
	}
	if _, err := Hold(t.Context(), filepath.Join(top, "link"), 0, func() {}); err == nil {
		t.Error("a link is taken for the hidden folder")
	}
}
