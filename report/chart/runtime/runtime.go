// Package runtime holds the scripts that charts are drawn with.
//
// ECharts itself is not kept in the source: `go generate ./...` fetches the
// version that package-lock.json pins and bundles the parts named in entry.js
// into echarts.js. Without that file everything still compiles, and Bundle
// says that there is none. The stock dist/echarts.min.js of the same version
// can be given instead.
//
// The files: entry.js (what is bundled), prelude.js (run before the bundle),
// bridge.js (run after it: the function draw and the table of named functions).
package runtime

import "embed"

//go:generate npm ci --ignore-scripts --no-audit --no-fund
//go:generate go tool esbuild entry.js --bundle --minify --format=iife --target=es2020 --legal-comments=eof --log-level=warning --outfile=echarts.js

// scripts matches the built bundle when there is one; the others are always here.
//
//go:embed *.js
var scripts embed.FS

// Bundle returns the ECharts bundle and whether it was built. Its licences
// stand at its end and must stay there.
func Bundle() ([]byte, bool) {
	b, err := scripts.ReadFile("echarts.js")
	return b, err == nil
}

// Prelude returns the script to run before the bundle.
func Prelude() string { return script("prelude.js") }

// Bridge returns the script to run after the bundle. It needs a global function
// measureWidth(text, font) and defines draw(optionJSON, width, height).
func Bridge() string { return script("bridge.js") }

func script(name string) string {
	b, err := scripts.ReadFile(name)
	if err != nil {
		panic(err) // embedded at compile time
	}
	return string(b)
}
