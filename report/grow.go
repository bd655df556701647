package report

// grown is the room and the next trays "if" every batch had its trays times
// Options.Grow and stood in the codes of Options.Switch; nil where neither is
// asked for. What a use gains and what is owned stay as the records show.
func (r *Report) grown() *If {
	grow := r.Options.Grow
	if !(grow > 0) {
		grow = 1
	}
	if grow == 1 && len(r.Options.Switch) == 0 {
		return nil
	}
	stays := r.stays(grow, r.Options.Switch)
	then := &If{Grow: grow, Switch: r.Options.Switch}
	then.Room, then.InUse = r.roomOf(stays)
	p := &accounts{r: r, codes: trayCodes(r)}
	for _, pr := range pairsOf(p.codes) {
		back := r.paybackOf(pr.tray.code, pr.other.code)
		next, buy := p.nextTrays(back, pr, p.replay(pr, stays))
		then.NextTray = append(then.NextTray, next...)
		then.Buys = append(then.Buys, PairBuy{Tray: back.Tray, Other: back.Other, Buy: buy})
	}
	return then
}

// paybackOf finds a pair's figures; empty ones where money was not computed.
func (r *Report) paybackOf(tray, other string) *Payback {
	for i := range r.Payback {
		if r.Payback[i].Tray == tray && r.Payback[i].Other == other {
			return &r.Payback[i]
		}
	}
	return &Payback{Tray: tray, Other: other}
}
