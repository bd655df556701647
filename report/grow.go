package report

import (
	"traybook/report/batch"
	"traybook/report/room"
	"traybook/report/trays"
)

// If is the room and trays "if" the farm grew or switched codes.
type If struct {
	Grow     float64
	Switch   []Switch
	Room     []room.Load
	InUse    []room.InUse
	NextTray []trays.NextTray
	Buys     []trays.Decision
}

// ifOf is the room and the next trays "if" every batch had its trays times
// Options.Grow and stood in the codes of Options.Switch; nil where neither is asked
// for. What a use gains and what is owned stay as the records show.
func ifOf(o Options, b *batch.Batches, t *trays.Figures) *If {
	grow := o.Grow
	if grow == 0 {
		grow = 1
	}
	if grow == 1 && len(o.Switch) == 0 {
		return nil
	}
	standings := b.Standings(grow, o.Switch)
	then := room.New(b, standings)
	next, buys := trays.Next(t, b, standings)
	return &If{Grow: grow, Switch: o.Switch, Room: then.Load, InUse: then.InUse, NextTray: next, Buys: buys}
}
