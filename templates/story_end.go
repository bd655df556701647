package templates

import (
	"slices"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/plants"
)

// endWords tells when a batch ended and how that is known (rule "End of a batch").
func (t *teller) endWords(b *report.Record) {
	stay := float64(b.End - b.Sown)
	switch b.EndHow {
	case batch.Written:
		t.put("Out after ")
		t.days(stay)
		t.lateBy(b)
	case batch.Assumed:
		t.put("No date written; taken to have ended on ")
		t.date(b.End)
		t.put(", after the crop’s usual stay of ")
		t.days(stay)
	default:
		t.put("Still open on the last date in the book, after ")
		t.days(stay)
	}
	t.put(".")
}

// lateBy sets the end of a batch against its planned day.
func (t *teller) lateBy(b *report.Record) {
	switch d := int(b.End - b.Planned); {
	case !b.Planned.Known():
	case d < 0:
		t.put(", ")
		t.whole(-d)
		t.put(" before the planned day")
	case d == 0:
		t.put(", on the planned day")
	default:
		t.put(", ")
		t.whole(d)
		t.put(" past the planned day")
	}
}

// howUsable is how the usable plants of a batch are known, in a sentence; known for sure
// they need none.
var howUsable = map[plants.How]string{
	plants.ByCount:   "Reckoned from its own count and look.",
	plants.AtLeast:   "At least: what is written so far.",
	plants.Estimated: "Estimated from like batches, not its own records.",
}

// usableHow says how the usable plants are known (rule "Usable plants").
func (t *teller) usableHow(b *report.Record) {
	if !b.Usable.Known {
		t.put("Not known: neither plants out, nor a count and a look, nor like batches.")
		return
	}
	t.put(howUsable[b.UsableHow])
}

// batchCost tells a batch's cost by part.
func (t *teller) batchCost(b *report.Record) {
	if !b.Cost.Known {
		return
	}
	t.amount(t.money.AppendSum, b.Cost.Value)
	t.costParts(b.Parts)
	t.put(".")
	if b.PerTransplant.Known {
		t.put(" A transplant: ")
		t.amount(t.money.AppendEach, b.PerTransplant.Value)
		t.put(".")
	}
}

// costParts lists the parts of a cost that come to a coin, behind a colon.
func (t *teller) costParts(of money.Parts) {
	var room [len(of.By) + 1]costPart
	parts := slices.DeleteFunc(t.appendParts(room[:0], of), func(part costPart) bool { return !(abs(part.Money) >= 0.005) })
	if abs(of.Carried) >= 0.005 {
		parts = append(parts, costPart{Words: "taken over or handed on", Money: of.Carried})
	}
	for i, part := range parts {
		if i == 0 {
			t.put(": ")
		}
		t.put(between(i, len(parts)), part.Words, " ")
		t.amount(t.money.AppendSumNumber, part.Money)
	}
}
