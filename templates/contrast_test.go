package templates

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"
)

var (
	schemeStart = regexp.MustCompile(`(?s):root\{(.*?)\}`)
	colour      = regexp.MustCompile(`--([a-z0-9]+):(#[0-9a-f]{3,6})`)
)

// schemes are the colours of light, dark and print, in the order of the sheet.
func schemes(t *testing.T) []map[string]string {
	t.Helper()
	sheet, err := files.ReadFile("static/site.css")
	if err != nil {
		t.Fatal(err)
	}
	var out []map[string]string
	for _, block := range schemeStart.FindAllStringSubmatch(string(sheet), -1) {
		colours := map[string]string{}
		for _, c := range colour.FindAllStringSubmatch(block[1], -1) {
			colours[c[1]] = c[2]
		}
		out = append(out, colours)
	}
	return out
}

// luminance is the relative luminance of WCAG 2.2 (W3C Recommendation of 2023,
// definition of relative luminance).
func luminance(hex string) float64 {
	hex = strings.TrimPrefix(hex, "#")
	if len(hex) == 3 {
		hex = string([]byte{hex[0], hex[0], hex[1], hex[1], hex[2], hex[2]})
	}
	var rgb [3]int
	_, _ = fmt.Sscanf(hex, "%02x%02x%02x", &rgb[0], &rgb[1], &rgb[2])
	sum := 0.0
	for i, weight := range []float64{0.2126, 0.7152, 0.0722} {
		c := float64(rgb[i]) / 255
		if c <= 0.04045 {
			c /= 12.92
		} else {
			c = math.Pow((c+0.055)/1.055, 2.4)
		}
		sum += weight * c
	}
	return sum
}

func contrast(a, b string) float64 {
	x, y := luminance(a), luminance(b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

// Text stands out from what is behind it by 4.5 to 1, the marks of charts by 3 to
// 1, in every scheme (WCAG 2.2, success criteria 1.4.3 and 1.4.11, level AA).
func TestContrast(t *testing.T) {
	if got := contrast("#000", "#fff"); got != 21 {
		t.Fatalf("black on white is %g, not 21", got)
	}
	all := schemes(t)
	if len(all) != 3 {
		t.Fatalf("%d schemes, want light, dark and print", len(all))
	}
	for i, scheme := range all {
		for _, text := range []string{"ink", "soft", "good", "bad"} {
			if got := contrast(scheme[text], scheme["paper"]); got < 4.5 {
				t.Errorf("scheme %d: %s on paper is %.2f to 1", i, text, got)
			}
		}
		for _, mark := range []string{"air", "solid", "flat"} {
			if got := contrast(scheme[mark], scheme["paper"]); got < 3 {
				t.Errorf("scheme %d: %s on paper is %.2f to 1", i, mark, got)
			}
		}
	}
}
