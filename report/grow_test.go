package report

import (
	"testing"

	"traybook/report/internal/booktest"
)

// "If" the farm grew by half and sowed THIN in place of HEAVY: the room and the next
// trays of what would then have stood; the room as it was stands beside it.
func TestGrowAndSwitch(t *testing.T) {
	b := pair(t, 1, 2, 3, 1, 2, 3)
	if reportOf(b).If != nil {
		t.Fatal("an if that nobody asked for")
	}
	r := reportWith(b, Options{Grow: 1.5, Switch: []Switch{{From: "HEAVY", To: "THIN"}}})
	if len(r.If.Room) != 2 || r.If.Room[1].Place != "THIN" || r.If.Room[1].Peak != 3 || r.Room.Load[1].Peak != 1 {
		t.Errorf("%+v", r.If.Room)
	}
	// 3 trays at once each date, 2 owned: the third is used on all 6 dates.
	if len(r.If.NextTray) != 1 || r.If.NextTray[0].Nth != 3 || r.If.NextTray[0].Uses != 6 {
		t.Errorf("%+v", r.If.NextTray)
	}
	// What a use gains stays as the records show.
	if buy := r.If.Buys[0]; len(r.If.Buys) != 1 || buy.Tray != "HEAVY" || buy.Buy == nil || buy.Owned != r.Trays.Decisions[0].Owned {
		t.Errorf("%+v", r.If.Buys)
	}
	booktest.Finite(t, r.If, "if")
}

// Growing to once its trays is as it is.
func TestGrowToOnce(t *testing.T) {
	if r := reportWith(pair(t, 1, 2, 3, 1), Options{Grow: 1}); r.If != nil {
		t.Errorf("%+v", r.If)
	}
}
