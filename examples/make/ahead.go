package main

// wanting writes wishes.csv: what the fields want of 2027. The okra is new, so that
// nothing can be told of it; the heat-proof lettuce is of whatever variety, the kale in
// whatever tray, and the fennel has no day yet.
func wanting() *table {
	t := columns("crop,variety,plants,planned,tray,note")
	for _, w := range [][6]string{
		{"lettuce", "Fenwimple", "400", "2027-04-13", "A128", "first beds"},
		{"lettuce", "", "250", "2027-06-15", "S128", "whatever stands heat"},
		{"spinach", "Slatemere", "400", "2027-04-06", "S128", "the inn again"},
		{"cabbage", "Conefield", "260", "2027-04-16", "S72", ""},
		{"broccoli", "Hedgecrown", "250", "2027-04-20", "A72", ""},
		{"beet", "Oxpenny", "220", "2027-04-27", "S128", "fewer than in 2025"},
		{"kale", "Tatterling", "350", "2027-05-04", "", ""},
		{"bunching onion", "Greenquill", "200", "2027-05-11", "A128", ""},
		{"leek", "Stiltmere", "400", "2027-05-07", "S200", ""},
		{"cucumber", "Millrace", "120", "2027-05-18", "S50", ""},
		{"fennel", "Fatwick", "150", "", "A128", "day not fixed"},
		{"okra", "Tinderpod", "60", "2027-06-01", "S50", "never tried"},
	} {
		t.row(w[0], w[1], w[2], w[3], w[4], w[5])
	}
	return t
}

// changed writes changes.csv: what was done differently, without a claim of what it did.
func changed() *table {
	t := columns("date,until,what,note")
	t.row("2024-01-19", "", "eight more heavy 128s", "")
	t.row("2024-05-13", "", "trays of the end bench on wire, traps set", "after the voles")
	t.row("2025-03-07", "", "cabbage half and half in both kinds of 72", "")
	t.row("2025-04-24", "", "new sensor in the small box", "it had stuck at 98 F")
	t.row("2025-07-10", "2025-08-31", "second shade cloth on", "")
	t.row("2026-02-03", "", "a finer mix in all small cells", "from Tuppenny, sieved")
	return t
}
