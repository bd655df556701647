package main

// byHand lists what the plan does not foresee: a re-sowing, and the sowings
// that are meant to run short in the season under way.
func byHand(season int) []wish {
	find := func(variety, code string) *plan {
		for i := range plans {
			if plans[i].variety == variety && plans[i].tray == code {
				return &plans[i]
			}
		}
		panic(variety)
	}
	switch season {
	case 2023:
		return []wish{{plan: find("Brookrib", "S200"), sown: on("2023-03-21"), tray: "S200", trays: 1, replaces: "CY23-01", note: "re-sown, more air this time"}}
	case 2026:
		return []wish{
			{plan: find("Conefield", "A72"), sown: on("2026-05-05"), tray: "S72", trays: 2, planned: on("2026-07-06"), wanted: 130, note: "fall bed, bed ready early July"},
			{plan: find("Candle Cos", "S128"), sown: on("2026-04-24"), tray: "S128", trays: 2, planned: on("2026-05-28"), wanted: 245, note: "promised to the school"},
		}
	}
	return nil
}
