package report

import (
	"strings"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// swap asks for one code in place of another.
func swap(from, to string) []Switch { return []Switch{{From: from, To: to}} }

// What a build asks for must fit the book; codes are found whatever their case.
func TestOptionsMustFitTheBook(t *testing.T) {
	for want, o := range map[string]Options{
		"":                                  {Switch: swap(" a72", "A72 "), Grow: 2},
		"season 1999 has no sowing":         {Season: 1999},
		"lies before the first sowing":      {Today: records.NewDate(1900, 1, 1)},
		"cannot be meant":                   {Grow: 1e9},
		`no batch was sown in tray "Z"`:     {Switch: swap("Z", "A72")},
		`there is no tray "Z"; give one of`: {Switch: swap("A72", "Z")},
	} {
		b := booktest.New(t)
		alike(b, 1, 60)
		for i := range b.Sowings {
			b.Sowings[i].Tray = "A72"
		}
		r, err := New(b.Book(), nil, o)
		switch {
		case want == "" && err != nil:
			t.Errorf("%v: %v", o, err)
		case want == "" && r.If.Switch[0] != swap("A72", "A72")[0]:
			t.Errorf("spelt %q", r.If.Switch)
		case want != "" && (err == nil || !strings.Contains(err.Error(), want)):
			t.Errorf("%v: %v; want %s", o, err, want)
		}
	}
}
