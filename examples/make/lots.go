package main

import (
	"fmt"
	"math"
	"strings"
)

// lot is a row of lots.csv.
type lot struct {
	luck     chance
	code     string
	crop     *crop
	variety  string
	season   int // season in which it was bought
	supplier string
	number   string
	vigour   float64 // unlike its label, on the logit scale
	sown     int     // seeds sown from it
	bought   int     // seeds, or the seeds that its grams hold
	grams    float64
	price    float64
	organic  bool
	treated  bool
	note     string
}

var suppliers = []string{"Wimblestraw Seed Barn", "Alderquay Growers' Seed", "Tuppenny Seed Loft"}

// unlike lists lots that came up unlike their packet.
var unlike = map[string]struct {
	bought int
	vigour float64
	note   string
}{
	"CAN-25": {2024, -1.9, "opened packet from the back of the shelf"},
	"BAR-26": {2024, -.9, "left from the year before last, kept in the barn"},
}

// lotFor finds or opens the lot a batch is sown from: lettuce and the big
// seeds are bought every year, the rest every second. Now and then nobody
// wrote the lot down.
func (f *farm) lotFor(b *batch) *lot {
	if b.crop.cents == 0 || !b.paired && f.luck.Float64() < .035 {
		return nil
	}
	season := b.season
	if b.crop.cents < 1.5 && b.crop.code != "ON" {
		season -= (season - 2023) % 2
	}
	code, twin := f.lotCode(b.variety, season)
	for _, l := range f.lots {
		if l.code == code {
			l.sown += b.cells * b.seeds
			return l
		}
	}
	l := f.openLot(code, season, b, twin)
	l.sown = b.cells * b.seeds
	f.lots = append(f.lots, l)
	return l
}

// lotCode is the variety's first letters and the year: three letters, or five
// where the lot of another variety, its twin, has the three.
func (f *farm) lotCode(variety string, season int) (code string, twin *lot) {
	code = fmt.Sprintf("%s-%d", strings.ToUpper(variety[:3]), season%100)
	for _, l := range f.lots {
		if l.code == code && l.variety != variety {
			return fmt.Sprintf("%s-%d", strings.ToUpper(variety[:5]), season%100), l
		}
	}
	return code, nil
}

// openLot gives a new lot its supplier, number and vigour.
func (f *farm) openLot(code string, season int, b *batch, twin *lot) *lot {
	luck := luckOf(code)
	who := luck.IntN(len(suppliers))
	l := &lot{luck: luck, code: code, crop: b.crop, variety: b.variety, season: season, supplier: suppliers[who],
		number:  fmt.Sprintf("%c%d%04d", "WAT"[who], season%10, 1000+luck.IntN(8999)),
		vigour:  .08 * luck.NormFloat64(),
		organic: luck.Float64() < .45}
	if twin != nil {
		l.vigour = twin.vigour
	}
	if odd, ok := unlike[code]; ok {
		l.season, l.vigour, l.note, l.organic = odd.bought, odd.vigour, odd.note, false
	}
	if code == "MIL-24" {
		l.treated, l.organic, l.note = true, false, "dyed; gloves; not for the organic field"
	}
	return l
}

// buySeed sizes each lot from what was sown of it, with some left over.
func (f *farm) buySeed() {
	for _, l := range f.lots {
		n := float64(l.sown) * (1.08 + .3*l.luck.Float64())
		unit := 250.0
		if n < 600 {
			unit = 50
		}
		l.bought = int(math.Ceil(n/unit) * unit)
		if l.crop.gram > 0 {
			l.grams = math.Ceil(n / l.crop.gram)
			l.bought = int(l.grams * l.crop.gram)
		}
		cents := l.crop.cents * (.95 + .05*float64(l.season-2023))
		if l.organic {
			cents *= 1.25
		}
		l.price = math.Max(4.5, math.Round(float64(l.bought)*cents/10)/10)
	}
}

// lotTable writes lots.csv.
func (f *farm) lotTable() *table {
	t := columns("lot,crop,variety,supplier,lot_number,bought,germ_label,tested,seeds,grams,seeds_per_gram,price,organic,treated,note")
	for i, l := range f.lots {
		bought := in(l.season, "01-10") + day(i%3*4)
		tested := in(l.season-1, "10-05") + day(i*7%60)
		label := math.Round(l.crop.label+9*math.Min(0, odd[l.variety])) - float64(i%3)
		seeds, grams, perGram := fmt.Sprint(l.bought), "", ""
		if l.grams > 0 {
			seeds, grams = "", text(l.grams)
			if i%4 != 0 {
				perGram = text(l.crop.gram)
			}
		}
		t.row(l.code, l.crop.name, l.variety, l.supplier, l.number, bought, label, tested, seeds, grams, perGram,
			money(l.price), yesNo(l.organic), yesNo(l.treated), l.note)
	}
	return t
}

func yesNo(yes bool) string {
	if yes {
		return "yes"
	}
	return "no"
}
