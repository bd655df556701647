package trade

import (
	"sync"

	"traybook/records"
)

// EmergenceDay is how a crop came up at one soil temperature.
type EmergenceDay struct {
	TempC  float64
	Days   records.Maybe[float64] // from sowing to emergence; unknown where none came up
	Normal records.Maybe[float64] // share of normal seedlings; unknown where the table has none
}

// EmergenceDays returns, by rising temperature, the temperatures at which a crop was tested; nil for a crop that the
// table does not know. A temperature at which none came up has no days, which is not the same as one not tested: that has no
// row. Source: Harrington and Minges (1954), Vegetable Seed Germination, seed sown half an inch deep.
func EmergenceDays(crop string) []EmergenceDay {
	days, _ := find(emergenceDays(), crop)
	return days
}

var emergenceDays = sync.OnceValue(func() map[string][]EmergenceDay {
	found := map[string][]EmergenceDay{}
	for _, r := range read("emergence_days.csv") {
		if r["status"] == "not tested" {
			continue
		}
		day := EmergenceDay{
			TempC:  r.number("soil_temp_c").Value,
			Days:   r.number("days_to_emergence"),
			Normal: r.number("pct_normal_seedlings"),
		}
		day.Normal.Value /= 100
		name := key(r["crop"])
		found[name] = append(found[name], day)
		if short := key(beforeBracket(r["crop"])); short != name {
			found[short] = found[name]
		}
	}
	return found
})
