package records

import "strings"

// purchase reads a row of trays.csv. A count may be negative: trays broken or sold.
func (r row) purchase() Purchase {
	return Purchase{
		At:      r.spot(),
		Tray:    r.name("tray", "tray"),
		Kind:    r.name("kind", "kind"),
		Cells:   r.whole("cells", 1).Value,
		CellML:  r.above("cell_ml"),
		Bought:  r.date("bought"),
		Count:   r.whole("count", -mostCount),
		Price:   r.money("price"),
		Lasts:   r.above("lasts"),
		Uses:    r.above("uses"),
		Minutes: r.number("minutes", 0),
		Places:  r.places(),
		Note:    r.text("note"),
	}
}

// lot reads a row of lots.csv.
func (r row) lot() Lot {
	crop := r.name("crop", "crop")
	return Lot{
		At:           r.spot(),
		Code:         r.name("lot", "lot"),
		Crop:         crop,
		Variety:      r.nameIn("variety", crop, "variety"),
		Supplier:     r.text("supplier"),
		LotNumber:    r.text("lot_number"),
		Bought:       r.date("bought"),
		Tested:       r.date("tested"),
		GermLabel:    r.share("germ_label"),
		Seeds:        r.upTo("seeds", mostCount),
		Grams:        r.above("grams"),
		SeedsPerGram: r.above("seeds_per_gram"),
		Price:        r.money("price"),
		Organic:      r.yes("organic"),
		Treated:      r.yes("treated"),
		Note:         r.text("note"),
	}
}

// sowing reads a row of sowings.csv. Of its defaults one seed a cell and a start from
// seed are filled in here; cells are not, which need the tray code.
func (r row) sowing() Sowing {
	crop := r.name("crop", "crop")
	code, ref := r.batchCode()
	start := r.oneOf("start", "seed", "plug", "cutting")
	if start == "" {
		start = "seed"
	}
	return Sowing{
		At:           r.spot(),
		Code:         code,
		Sown:         r.date("sown"),
		Crop:         crop,
		Variety:      r.nameIn("variety", crop, "variety"),
		Lot:          r.name("lot", "lot"),
		Tray:         r.name("tray", "tray"),
		Trays:        r.upTo("trays", mostTrays).Value,
		Cells:        r.whole("cells", 1),
		SeedsPerCell: r.whole("seeds_per_cell", 1).Or(1),
		Start:        Start(start),
		From:         r.name("batch", "from"),
		Chamber:      r.name("chamber", "chamber"),
		ChamberOut:   r.date("chamber_out"),
		Planned:      r.date("planned"),
		Wanted:       r.whole("wanted", 0),
		Replaces:     r.name("batch", "replaces"),
		SetOut:       r.date("set_out"),
		PlantsOut:    r.whole("plants_out", 0),
		Surplus:      r.whole("surplus", 0),
		Note:         r.text("note"),
		ref:          ref,
	}
}

// outRow reads a row of out.csv.
func (r row) outRow() Out {
	code, ref := r.batchCode()
	return Out{
		At:     r.spot(),
		Batch:  code,
		Date:   r.date("date"),
		Plants: r.whole("plants", 0).Value,
		To: Destination(r.oneOf("to", string(ToField), string(Sold), string(Given), string(ToSurplus),
			string(ToPottedOn), string(Dead))),
		Last:  r.yes("last").Value,
		Money: r.money("money"),
		Note:  r.text("note"),
		ref:   ref,
	}
}

// count reads a row of counts.csv. Cells that are blank stay unknown here: those of the
// tray or batch stand in where they are used.
func (r row) count() Count {
	_, ref := r.batchCode()
	return Count{
		At:      r.spot(),
		Batch:   ref,
		Date:    r.date("date"),
		Tray:    r.short("tray", 1),
		Cells:   r.short("cells", 1),
		Emerged: r.short("emerged", 0),
		Empty:   r.short("empty", 0),
		Lost:    r.short("lost", 0),
		said:    r.said(),
	}
}

// said reads the words of a count.
func (r row) said() uint32 {
	s := Said{r.name("cause", "cause"), r.text("note")}
	if s == (Said{}) {
		return 0
	}
	r.sayings = append(r.sayings, s)
	return uint32(len(r.sayings))
}

// look reads a row of scores.csv, of whichever form.
func (r row) look() Score {
	code, ref := r.batchCode()
	s := Score{
		At:     r.spot(),
		Batch:  code,
		Date:   r.date("date"),
		Looked: r.short("looked", 1),
		Usable: r.short("usable", 0),
		Score:  r.short("score", 0),
		Note:   r.text("note"),
		ref:    ref,
	}
	for i := range s.S {
		s.S[i] = r.short("s"+itoa(i+1), 0)
	}
	return s
}

// cost reads a row of costs.csv. Labour without a task is care; what is no labour has
// none.
func (r row) cost() Cost {
	words := make([]string, len(Categories))
	for i, c := range Categories {
		words[i] = string(c)
	}
	c := Cost{
		At:       r.spot(),
		Date:     r.date("date"),
		From:     r.date("from"),
		Until:    r.date("until"),
		Category: Category(r.oneOf("category", words...)),
		Task:     Task(r.oneOf("task", string(SowingTask), string(CareTask), string(OutTask))),
		Amount:   r.credit("amount"),
		Hours:    r.number("hours", 0),
		Quantity: r.number("quantity", 0),
		Unit:     r.text("unit"),
		Batch:    r.name("batch", "batch"),
		Crop:     r.name("crop", "crop"),
		Tray:     r.name("tray", "tray"),
		Note:     r.text("note"),
	}
	if c.Category == Labour && c.Task == "" {
		c.Task = CareTask
	}
	if c.Category != Labour {
		c.Task = ""
	}
	return c
}

// chamberReading reads a row of chamber.csv: a day, or a day and a time of day.
func (r row) chamberReading() ChamberReading {
	day, clock := splitTime(r.text("time"))
	return ChamberReading{
		At:       r.spot(),
		Date:     r.dateText("time", day),
		Minute:   r.clock("time", clock),
		Chamber:  r.name("chamber", "chamber"),
		Temp:     r.degrees("temp").Value,
		Humidity: r.share("humidity"),
	}
}

// houseReading reads a row of house.csv.
func (r row) houseReading() HouseReading {
	return HouseReading{
		At:      r.spot(),
		Date:    r.date("date"),
		Low:     r.degrees("low"),
		High:    r.degrees("high"),
		OutLow:  r.degrees("out_low"),
		OutHigh: r.degrees("out_high"),
		Note:    r.text("note"),
	}
}

// wish reads a row of wishes.csv.
func (r row) wish() Wish {
	crop := r.name("crop", "crop")
	return Wish{
		At:      r.spot(),
		Crop:    crop,
		Variety: r.nameIn("variety", crop, "variety"),
		Plants:  r.whole("plants", 1).Value,
		Planned: r.date("planned"),
		Tray:    r.name("tray", "tray"),
		Note:    r.text("note"),
	}
}

// change reads a row of changes.csv.
func (r row) change() Change {
	return Change{
		At:    r.spot(),
		Date:  r.date("date"),
		Until: r.date("until"),
		What:  r.text("what"),
		Note:  r.text("note"),
	}
}

// splitTime parts a day from a time of day, at a T or the first space.
func splitTime(s string) (day, clock string) {
	if i := strings.IndexAny(s, "T "); i > 0 {
		return s[:i], strings.TrimSpace(s[i+1:])
	}
	return s, ""
}
