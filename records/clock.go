package records

import (
	"strings"
	"time"
)

var clocks = []string{"15:04", "15:04:05", "15:04:05.999", "3:04 PM", "3:04:05 PM", "3:04PM", "3 PM"}

// clock reads a time of day as minutes past midnight.
func (r row) clock(col, s string) Maybe[int] {
	if s == "" {
		return Maybe[int]{}
	}
	for _, layout := range clocks {
		if t, err := time.Parse(layout, strings.ToUpper(strings.TrimSuffix(s, "Z"))); err == nil {
			return Known(t.Hour()*60 + t.Minute())
		}
	}
	r.misread("time", col, "a time such as 2025-03-31 07:00 is expected", "")
	return Maybe[int]{}
}
