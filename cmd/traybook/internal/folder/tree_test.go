package folder

import (
	"slices"
	"strings"
	"testing"
)

// The way up ends at what is there or at the top of a drive, a share or the whole, which
// may be missing: a disk taken out, a server that is away.
func TestUpToTheTop(t *testing.T) {
	// above as Windows has it: by backslashes, and a top is above itself
	above := func(name string) string {
		top := map[bool]int{true: len(`\\server\share`), false: len(`C:\`)}[strings.HasPrefix(name, `\\`)]
		return name[:max(min(top, len(name)), strings.LastIndexByte(name, '\\'))]
	}
	for name, tt := range map[string]struct {
		there string
		want  []string
	}{
		`C:\farm\site`:             {`C:\farm`, []string{`C:\farm\site`}},
		`C:\farm\2026\site`:        {`C:\`, []string{`C:\farm\2026\site`, `C:\farm\2026`, `C:\farm`}},
		`Z:\site`:                  {"", []string{`Z:\site`, `Z:\`}},
		`\\server\share\book\site`: {"", []string{`\\server\share\book\site`, `\\server\share\book`, `\\server\share`}},
	} {
		if got := upTo(name, func(s string) bool { return s != tt.there }, above); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %q, want %q", name, got, tt.want)
		}
	}
}
