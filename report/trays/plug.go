package trays

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/rate"
)

// atPlugPrice is the answer where an extra plant saves buying one in (rule "Value of a
// plant"); nil where no plug_price is written, the tray gives no more plants, no batch
// of the other, ofOther, tells what was wanted, or there is no gain.
func (pr *pair) atPlugPrice(back *Payback, ofOther []*money.Borne) *PlugPrice {
	price, extra := pr.settings.PlugPrice, back.Difference
	if !price.Known || !(extra.Value > 0) || !back.Gain.Known {
		return nil
	}
	wanting := batch.Filter(ofOther, tellsGap)
	share := gapShare(wanting, extra.Value)
	if !share.Known {
		return nil
	}
	at := &PlugPrice{Value: times(price, share), Gap: share.Value, Batches: len(wanting)}
	s, _ := pr.stakeOf(back, oneValue(at.Value))
	life := back.OtherLife.Uses.Value
	at.Gain = records.Known(s.gain(s.plants.mid, life))
	at.GainLow, at.GainHigh = records.Known(s.gain(s.plants.low, life)), records.Known(s.gain(s.plants.high, life))
	at.PaybackUses = rate.Ratio(back.Price, at.Gain)
	at.WorthToday = pr.averageWorth(back, at.Gain)
	at.Verdict = pr.verdict(back, at.Gain, at.GainLow, at.GainHigh)
	return at
}

// tellsGap reports whether a batch of the other tells if plants were lacking.
func tellsGap(b *money.Borne) bool {
	return b.Ended() && b.EntersUsable() && b.Wanted.Known
}

// gapShare is the share of the extra plants of batches that would have filled a gap:
//
//	sum min(extra, wanted - usable, not below 0) / sum extra,  extra = difference x cells sown
func gapShare(batches []*money.Borne, difference float64) Num {
	filled, all := 0.0, 0.0
	for _, b := range batches {
		extra := difference * float64(b.CellsSown.Value)
		filled += min(extra, max(0, float64(b.Wanted.Value)-b.Usable.Value))
		all += extra
	}
	return rate.Ratio(records.Known(filled), records.Known(all))
}
