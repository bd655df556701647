package main

// byHand lists what the plan does not foresee: re-sowings, and the sowings
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
	case 2025:
		return []wish{{plan: find("Fatwick", "A128"), sown: on("2025-04-29"), tray: "S128", trays: 1, replaces: "FE25-01", note: "the first cooked in the small box"}}
	case 2026:
		return []wish{
			{plan: find("Conefield", "A72"), sown: on("2026-05-05"), tray: "S72", trays: 2, planned: on("2026-07-06"), wanted: 130, note: "fall bed, bed ready early July"},
			{plan: find("Candle Cos", "S128"), sown: on("2026-05-12"), tray: "S128", trays: 2, planned: on("2026-06-16"), wanted: 245, note: "promised to the school"},
			{plan: find("Fatwick", "A128"), sown: on("2026-03-27"), tray: "S128", trays: 1, planned: on("2026-05-01"), wanted: 115, note: "for the inn"},
			{plan: find("Noonspice", "A128"), sown: on("2026-05-05"), tray: "S128", trays: 1, planned: on("2026-06-09"), wanted: 115, note: "for the market's herb day"},
		}
	}
	return nil
}
