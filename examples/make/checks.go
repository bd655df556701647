package main

import "fmt"

// checkC15 enters check C15: what one 128-cell tray and its 105 plants cost. Two
// trays are sown, so that every amount is in whole cents.
func checkC15() files {
	book := told(2025,
		"# What a transplant costs, worked by hand",
		"",
		"Own arithmetic of the trade table, C15, for one 128-cell tray: seed 0.03 a cell, mix 3.7 litres at 0.15,",
		"a tray of 2.00 over 2 uses, 9 minutes of labour at 20 an hour, 1.64 square feet for 5 weeks at 0.25.",
		"",
		"    seed 3.84 + mix 0.555 + tray 1.00 + labour 3.00 + space 2.05 = 10.445 a tray",
		"    10.445 / 105 plants used = 0.0995 a plant used; 10.445 / 128 = 0.0816 a cell",
		"",
		"This book holds two such trays, so that every amount is in whole cents: 20.89 for 210 plants. Space stands",
		"under `other`. Two trays owned and two sown: one use a season, so a life of two uses lasts two seasons and",
		"each tray bears 1.00 in each of them (no interest).")
	book["book.csv"] = []byte("setting,value\nfarm,C15\nwage,20\ndiscount_rate,0\n")
	trays := columns("tray,kind,cells,bought,count,price,uses")
	trays.row("S128", solid, 128, "2025-01-10", 2, 2, 2)
	sown := columns("batch,sown,crop,variety,tray,trays,planned,set_out,plants_out,surplus")
	sown.row("L1", "2025-04-01", "lettuce", "Fenwimple", "S128", 2, "2025-05-06", "2025-05-06", 210, 0)
	book["trays.csv"], book["sowings.csv"] = trays.csv(), sown.csv()
	book["costs.csv"] = costRows([]cost{
		{on: on("2025-04-01"), category: "seed", amount: 7.68, quantity: 256, unit: "seeds"},
		{on: on("2025-04-01"), category: "mix", amount: 1.11, quantity: 7.4, unit: "litres"},
		{on: on("2025-04-01"), category: "labour", task: "sowing", hours: .3, batch: "L1"},
		{on: on("2025-05-06"), category: "other", amount: 4.1, quantity: 16.4, unit: "square foot weeks", note: "space"},
	}).csv()
	return book
}

// checkC16 enters check C16: a heavy tray of 12.00 against a thin one of 2.00 that
// lasts two uses, with no other difference.
func checkC16() files {
	book := told(2025,
		"# Payback of a tray, worked by hand",
		"",
		"Own arithmetic of the trade table, C16: heavy tray 12.00, thin tray 2.00 lasting 2 uses, no other difference.",
		"",
		"    gain a use = 2.00 / 2 = 1.00; payback = 12.00 / 1.00 = 12 uses; at 3 uses a year 4.0 years",
		"",
		"Two heavy trays are owned and six sown: three uses a season. Both kinds gave 115 plants of 128 cells at each of",
		"six matched sowings, so the difference is exactly 0.")
	payback(book, "C16", 20, 5, 5, 115)
	return book
}

// checkC17 enters check C17: the same, but two more usable plants a heavy tray,
// worth 0.10 each, and 0.25 more labour a use.
func checkC17() files {
	book := told(2025,
		"# Payback of a tray that gives more plants and takes more work, worked by hand",
		"",
		"Own arithmetic of the trade table, C17: as C16 (heavy 12.00, thin 2.00 lasting 2 uses), but the heavy tray gives",
		"2 more usable plants, worth 0.10 each, and costs 0.25 more to handle: 1 minute more at 15 an hour.",
		"",
		"    gain a use = 1.00 + 2 x 0.10 - 0.25 = 0.95; payback = 12.00 / 0.95 = 12.63 uses (13 whole ones)",
		"",
		"Two heavy trays are owned and six sown: three uses a season. 117 against 115 plants of 128 cells at each of six",
		"matched sowings.")
	payback(book, "C17", 15, 6, 5, 117)
	return book
}

// payback writes the book of a pair of trays, sown side by side on six dates.
func payback(book files, name string, wage, minutes, otherMinutes, plants int) {
	book["book.csv"] = fmt.Appendf(nil, "setting,value\nfarm,%s\nwage,%d\ndiscount_rate,0\ntransplant_value,0.10\n", name, wage)
	trays := columns("tray,kind,cells,bought,count,price,lasts,uses,minutes")
	trays.row("HEAVY", air, 128, "2025-01-10", 2, 12, 10, "", minutes)
	trays.row("THIN", solid, 128, "2025-01-10", 6, 2, "", 2, otherMinutes)
	sown := columns("batch,sown,crop,variety,tray,trays,planned,set_out,plants_out,surplus")
	for n := range 6 {
		d := on("2025-03-04") + day(28*n)
		out := d + 35
		sown.row(fmt.Sprintf("H%d", n+1), d, "lettuce", "Fenwimple", "HEAVY", 1, out, out, plants-5, 5)
		sown.row(fmt.Sprintf("T%d", n+1), d, "lettuce", "Fenwimple", "THIN", 1, out, out, 110, 5)
	}
	book["trays.csv"], book["sowings.csv"] = trays.csv(), sown.csv()
}
