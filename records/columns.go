package records

import "slices"

// Log is one file of a record book: its name, what it holds, and its columns
// in the contract's order.
type Log struct {
	Name, What string
	Columns    []Column
}

// Column is one column of a log. A log without a required column cannot be
// read, and a row with a blank cell in one is left out.
type Column struct {
	Name     string
	Required bool
	What     string
}

// must and may are a required column, and one that is not.
func must(name, what string) Column { return Column{Name: name, Required: true, What: what} }
func may(name, what string) Column  { return Column{Name: name, What: what} }

// Logs lists every log and column, in the order in which they are shown.
var Logs = []Log{
	{"book.csv", "settings, a row each; all are optional", []Column{
		must("setting", "the setting's name"),
		may("value", "its value; blank stands for the default"),
		may("note", "anything"),
	}},
	{"sowings.csv", "a row per batch: one variety sown on one day into one tray code", []Column{
		must("batch", "the code on the label; no two batches share one"),
		must("sown", "date of sowing"),
		must("crop", "the crop"),
		must("variety", "the variety"),
		may("lot", "the seed lot's code in lots.csv"),
		must("tray", "the tray's code in trays.csv"),
		must("trays", "trays sown; a part is fine, such as 0.25 of a mixed tray"),
		may("cells", "cells sown, where not trays x cells of the tray"),
		may("seeds_per_cell", "seeds in a cell; blank stands for 1"),
		may("start", "seed, plug or cutting; blank stands for seed"),
		may("from", "the batch it was pricked out or potted on from"),
		may("chamber", "name of the germination chamber"),
		may("chamber_out", "date it left the chamber"),
		may("planned", "date the field was planned for"),
		may("wanted", "plants the field needs"),
		may("replaces", "the batch it re-sows"),
		may("set_out", "date it was set out"),
		may("plants_out", "plants set out"),
		may("surplus", "usable plants left over; 0 is an answer, blank is not"),
		may("note", "anything"),
	}},
	{"out.csv", "what left the house, a row per event, in place of a batch's set_out, plants_out and surplus", []Column{
		must("batch", "the batch"),
		must("date", "the day"),
		must("plants", "plants that left"),
		must("to", "field, sold, given, surplus, potted-on or dead"),
		may("last", "yes: the batch is cleared"),
		may("money", "money received"),
		may("note", "anything"),
	}},
	{"counts.csv", "germination counts, a row per look", []Column{
		must("batch", "the batch"),
		must("date", "the day"),
		may("tray", "number of the tray within the batch, from 1, where trays are counted apart"),
		may("cells", "cells looked at; blank stands for those sown"),
		may("emerged", "cells with a living seedling that day; either this or empty"),
		may("empty", "cells without one; either this or emerged"),
		may("lost", "cells lost since the last count"),
		may("cause", "what of"),
		may("note", "anything"),
	}},
	{"scores.csv", "quality, a row per look at some plants", []Column{
		must("batch", "the batch"),
		must("date", "the day"),
		may("looked", "plants looked at, with usable"),
		may("usable", "plants of those fit to set out"),
		may("s1", "plants at score 1"),
		may("s2", "plants at score 2"),
		may("s3", "plants at score 3"),
		may("s4", "plants at score 4"),
		may("s5", "plants at score 5"),
		may("score", "one overall mark, 1 to 5"),
		may("note", "anything"),
	}},
	{"trays.csv", "trays bought, a row per purchase", []Column{
		must("tray", "the code written in sowings"),
		must("kind", "air-pruning, solid-wall or any word; the same in all rows of a code"),
		must("cells", "cells of one tray; the same in all rows of a code"),
		may("cell_ml", "volume of a cell, millilitres; the same in all rows of a code"),
		may("bought", "date of the purchase; blank stands for always there"),
		may("count", "trays bought; negative for broken or sold; blank is unknown"),
		may("price", "money for one tray"),
		may("lasts", "years the tray is in use"),
		may("uses", "uses it survives; whichever comes first ends its life"),
		may("minutes", "labour a use that differs by tray, minutes: filling, washing, popping out"),
		may("places", "bench places one tray takes; blank stands for 1"),
		may("note", "anything"),
	}},
	{"lots.csv", "seed lots, a row each", []Column{
		must("lot", "the code written in sowings"),
		must("crop", "the crop"),
		must("variety", "the variety"),
		may("supplier", "who sold it"),
		may("lot_number", "the supplier's number of the lot"),
		may("bought", "date of the purchase"),
		may("germ_label", "germination on the packet, percent"),
		may("tested", "date of the packet's germination test"),
		may("seeds", "seeds bought"),
		may("grams", "grams bought, where seeds are not counted"),
		may("seeds_per_gram", "seeds in a gram; blank stands for the trade table's figure, marked"),
		may("price", "money for the whole lot"),
		may("organic", "yes or no"),
		may("treated", "yes or no"),
		may("note", "anything"),
	}},
	{"costs.csv", "money and labour, a row per bill or stretch of work; not trays, not seed lots", []Column{
		must("date", "the day of the bill or of the work"),
		may("from", "first day it covers"),
		may("until", "last day it covers"),
		must("category", "seed, mix, labour, heat, power, water, feed, equipment or other"),
		may("task", "of labour: sowing, care or out; blank stands for care"),
		may("amount", "money; negative is a credit; either this or hours"),
		may("hours", "hours of labour; either this or amount"),
		may("quantity", "how much was bought"),
		may("unit", "of the quantity"),
		may("batch", "the batch it was for"),
		may("crop", "the crop it was for"),
		may("tray", "the tray code it was for; batch, crop and tray all blank: shared"),
		may("note", "anything"),
	}},
	{"chamber.csv", "readings in the germination chambers", []Column{
		must("time", "the day, or the day and the time"),
		may("chamber", "the chamber's name"),
		must("temp", "temperature"),
		may("humidity", "relative humidity, percent"),
	}},
	{"house.csv", "a day's temperatures", []Column{
		must("date", "the day"),
		may("low", "lowest inside"),
		may("high", "highest inside"),
		may("out_low", "lowest outdoors"),
		may("out_high", "highest outdoors"),
		may("note", "anything"),
	}},
	{"wishes.csv", "what the fields want of the next season", []Column{
		must("crop", "the crop"),
		may("variety", "the variety"),
		must("plants", "plants wanted"),
		may("planned", "date they are to be set out"),
		may("tray", "the tray code to sow into"),
		may("note", "anything"),
	}},
	{"changes.csv", "what the farm did differently", []Column{
		must("date", "the day, or the first"),
		may("until", "the last day; blank stands for from then on"),
		must("what", "what was done, such as shade cloth on"),
		may("note", "anything"),
	}},
}

// logOf returns the log of a file name.
func logOf(name string) Log {
	return Logs[slices.IndexFunc(Logs, func(l Log) bool { return l.Name == name })]
}

// column returns the position of a column in the log, -1 if it has none.
func (l Log) column(name string) int {
	return slices.IndexFunc(l.Columns, func(c Column) bool { return c.Name == name })
}
