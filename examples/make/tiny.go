package main

// tiny is the book to read whole: ten trays of 50 cells, five batches that all
// stand forty days, no interest, a wage of 20. Shares of the shared costs come
// out in halves, fifths and tenths.
func tiny() files {
	return files{
		"book.csv":      tinySettings().csv(),
		"trays.csv":     tinyTrays().csv(),
		"lots.csv":      tinyLots().csv(),
		"sowings.csv":   tinySowings().csv(),
		"counts.csv":    tinyCounts().csv(),
		"scores.csv":    tinyScores().csv(),
		"out.csv":       tinyOut().csv(),
		"costs.csv":     tinyCosts().csv(),
		"notes/2025.md": []byte("# 2025\n\nTen trays, five batches. The last lettuce was forgotten behind the door and thrown out.\n"),
	}
}

func tinySettings() *table {
	t := columns("setting,value,note")
	t.row("farm", "Tiny", "a book to read whole")
	t.row("wage", 20)
	t.row("discount_rate", 0, "no interest")
	return t
}

func tinyTrays() *table {
	t := columns("tray,kind,cells,cell_ml,bought,count,price,lasts,minutes")
	t.row("A50", air, 50, 100, "2025-01-10", 6, 10, 4, 4)
	t.row("S50", solid, 50, 100, "2025-01-10", 4, 1, 1, 3)
	return t
}

func tinyLots() *table {
	t := columns("lot,crop,variety,supplier,lot_number,bought,germ_label,tested,seeds,price,organic,treated")
	t.row("L1", "lettuce", "Fenwimple", "Wimblestraw Seed Barn", "W501", "2025-01-15", 95, "2024-11-01", 1000, 20, "yes", "no")
	t.row("C1", "cabbage", "Conefield", "Tuppenny Seed Loft", "T502", "2025-01-15", 92, "2024-11-01", 500, 25, "no", "no")
	return t
}

func tinySowings() *table {
	t := columns("batch,sown,crop,variety,lot,tray,trays,planned,wanted,set_out,plants_out,surplus,note")
	t.row("A", "2025-03-03", "lettuce", "Fenwimple", "L1", "A50", 2, "2025-04-12", 80, "2025-04-12", 85, 5)
	t.row("B", "2025-03-03", "lettuce", "Fenwimple", "L1", "S50", 2, "2025-04-12", 80, "2025-04-12", 80, 0)
	t.row("C", "2025-03-03", "cabbage", "Conefield", "C1", "A50", 4, "2025-04-12", 180)
	t.row("D", "2025-03-03", "cabbage", "Drumhouse", "", "S50", 1, "2025-04-12", 40, "2025-04-12", 40, 0, "seed from a neighbour")
	t.row("E", "2025-03-03", "lettuce", "Fenwimple", "L1", "S50", 1, "2025-04-08", 40)
	return t
}

func tinyCounts() *table {
	t := columns("batch,date,tray,cells,emerged,empty,lost,cause")
	t.row("A", "2025-03-06", "", "", 28)
	t.row("A", "2025-03-08", "", "", 68)
	t.row("A", "2025-03-11", "", "", 95)
	t.row("B", "2025-03-10", "", "", 90)
	for tray, emerged := range []int{50, 49, 48, 49} {
		t.row("C", "2025-03-13", tray+1, 50, emerged)
	}
	t.row("D", "2025-03-13", "", "", "", 8)
	t.row("E", "2025-03-10", "", "", 40)
	t.row("E", "2025-03-24", "", "", 10, "", 30, "dried out")
	return t
}

func tinyScores() *table {
	t := columns("batch,date,looked,usable,s1,s2,s3,s4,s5")
	t.row("A", "2025-04-11", 20, 19)
	t.row("B", "2025-04-11", "", "", 1, 2, 7, 8, 2)
	return t
}

func tinyOut() *table {
	t := columns("batch,date,plants,to,last,money")
	t.row("C", "2025-04-02", 150, "field")
	t.row("C", "2025-04-12", 40, "sold", "yes", 12)
	t.row("E", "2025-04-12", 0, "dead", "yes")
	return t
}

func tinyCosts() *table {
	season := func(c cost) cost {
		c.from, c.until = on("2025-03-03"), on("2025-04-12")
		return c
	}
	return costRows([]cost{
		{on: on("2025-02-20"), category: "mix", amount: 15, quantity: 60, unit: "litres"},
		{on: on("2025-02-25"), category: "seed", amount: 3, note: "for seed without a lot"},
		season(cost{on: on("2025-04-12"), category: "labour", task: "sowing", hours: 1}),
		season(cost{on: on("2025-04-12"), category: "labour", task: "care", hours: 2}),
		season(cost{on: on("2025-04-12"), category: "labour", task: "out", hours: 1}),
		season(cost{on: on("2025-04-12"), category: "heat", amount: 40, quantity: 16, unit: "gallons"}),
		season(cost{on: on("2025-04-12"), category: "power", amount: 20}),
		{on: on("2025-04-12"), category: "water", amount: 4},
		{on: on("2025-03-20"), category: "feed", amount: 8},
		{on: on("2025-03-10"), category: "equipment", amount: 12, tray: "A50", note: "rack for the heavy trays"},
		{on: on("2025-03-10"), category: "other", amount: 6, batch: "B"},
		{on: on("2025-03-10"), category: "other", amount: -4, crop: "cabbage", note: "crate returned"},
	})
}
