package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/words"
)

// weekWork is the list to walk the benches with: a line a batch, whatever there is to do
// with it, by tray code.
type weekWork struct {
	Title template.HTML
	Say   template.HTML // where there is nothing to do
	Rows  *rows
}

// job is a batch with its lines of the week, in the order of the page; none of a batch
// that is only shown.
type job struct {
	batch *report.Record
	lines []report.WeekLine
}

// jobsOn gathers the lines about batches, a job each.
func (p *page) jobsOn(whats ...report.WeekWhat) []job {
	var lines []report.WeekLine
	for _, what := range whats {
		lines = append(lines, p.r.Lines(what)...)
	}
	codes, of := batch.GroupBy(lines, func(l report.WeekLine) string { return l.Batch.Code })
	var jobs []job
	for _, code := range codes {
		jobs = append(jobs, job{p.r.Record(code), of[code]})
	}
	return byTray(jobs)
}

// jobsOf are batches without a line.
func jobsOf(batches []*report.Record) []job {
	var jobs []job
	for _, b := range batches {
		jobs = append(jobs, job{batch: b})
	}
	return byTray(jobs)
}

// byTray sorts jobs as one walks the benches: by tray code, then batch.
func byTray(jobs []job) []job {
	slices.SortStableFunc(jobs, func(a, b job) int {
		return cmp.Or(cmp.Compare(a.batch.Tray, b.batch.Tray), cmp.Compare(a.batch.Code, b.batch.Code))
	})
	return jobs
}

// weekWork lists the batches to see to, and those that left with too few plants. A batch
// with two things to do has one row with both. Those that left with too few plants stand
// last: nothing can be done with them but to sow again.
func (p *page) weekWork() weekWork {
	due, fell := p.jobsOn(report.ToCount, report.Late, report.Short), p.jobsOn(report.Fell)
	if len(due)+len(fell) == 0 {
		return p.nothingDue()
	}
	v := weekWork{Title: say("%s to see to", words.Batches(len(due)))}
	if len(due) == 0 {
		v.Title = say("Nothing to do but for %s that fell short", words.Batches(len(fell)))
	}
	all := slices.Concat(due, fell)
	l := p.lifeAxis(all)
	v.Rows = p.workRows("To do", l, all)
	l.addByTray(v.Rows, due, p.todo)
	if len(fell) > 0 {
		v.Rows.under("Gone with too few plants, and not sown again", "")
		for _, j := range fell {
			l.add(v.Rows, j, p.todo(j))
		}
	}
	workNotes(v.Rows, due)
	return v
}

// lastOutDays is how far back the page of an empty house tells what left last, days.
const lastOutDays = 30

// nothingDue is a week without work: it lists what stands, else what left last. An empty
// page would leave open whether there was nothing to do or nothing was read.
func (p *page) nothingDue() weekWork {
	today := p.r.Batches.Today
	v, last := weekWork{Title: "Nothing to do this week", Say: "No batch is due for a count, past its day or likely short. This is what stands."}, "Planned"
	shown := batch.Filter(p.r.Records, func(b *report.Record) bool { return !b.Ended() && b.Sown <= today })
	if len(shown) == 0 {
		shown = batch.Filter(p.r.Records, func(b *report.Record) bool { return b.Ended() && b.End <= today && b.End > today-lastOutDays })
		v.Title, v.Say, last = "No batch is open", p.allGone(len(shown)), "Gone"
	}
	jobs := jobsOf(shown)
	l := p.lifeAxis(jobs)
	v.Rows = p.workRows(last, l, jobs)
	l.addByTray(v.Rows, jobs, stayWords)
	return v
}

// allGone says that the house is empty, and what the list beneath holds.
func (p *page) allGone(listed int) template.HTML {
	out := template.HTML("Everything that was sown has left the house.")
	if slices.ContainsFunc(p.r.Records, func(b *report.Record) bool { return b.EndHow == batch.Assumed }) {
		out = "Everything that was sown has left the house, or is taken to have left after its crop’s usual stay."
	}
	if listed == 0 {
		return out
	}
	return join(out, say("These were the last to leave, in the %s to today.", words.Days(float64(lastOutDays))))
}

// stayWords is the day of a batch on which nothing is due. An assumed end says nothing of
// early or late, as nobody saw the batch leave.
func stayWords(j job) template.HTML {
	b := j.batch
	switch {
	case !b.Ended() && b.Planned.Known():
		return say("for %s", words.DayMonth(b.Planned))
	case !b.Ended():
		return "no planned day is written"
	case !b.Planned.Known() || b.EndHow == batch.Assumed:
		return markup(words.DayMonth(b.End))
	}
	return say("%s, %s", words.DayMonth(b.End), apartWords(b.End, b.Planned))
}

// apartWords is how far a day lies from the planned one.
func apartWords(d, planned records.Date) template.HTML {
	switch days := float64(d - planned); {
	case days > 0:
		return say("%s past its day", words.Days(days))
	case days < 0:
		return say("%s before its day", words.Days(-days))
	}
	return "on its day"
}
