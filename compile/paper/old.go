package paper

import (
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/schema"
	"vivary/schema/civil"
)

// Old is what calendars ask that were built before a plan was refused, and what they cannot
// know.
type Old struct {
	Warning string   // that the plan is refused, and from when the lists are
	First   []string // what is urgent now
	Logged  []string // lines of the log since
	Done    []string // what was done today, by the log
	Items   []OldItem
}

// OldItem is an entry of a calendar on one of its days. They stand by day and time.
type OldItem struct {
	Day   civil.Date
	Clock string // as it is printed, "" for a whole day
	Text  string
	Lines []string
}

// OldRound is the sheet of some days of a plan that is refused, from the calendars that were
// built last. Nothing of the plan that was refused stands on it but whom to ring.
func OldRound(r *compile.Result, old *Old) *Document {
	d := document(r, "Round sheet, "+r.Plan.Title())
	d.refused()
	for items := range old.days() {
		on := items[0].Day
		parts := old.known(r, on)
		if len(parts) > 0 {
			parts = append(parts, Head{Text: "What the calendars ask"})
		}
		parts = append(parts, asked(items)...)
		if heated(r.Plan) {
			parts = append(parts, Para{Text: "Mains and water: " + schema.MainsBrief + ".", Small: true})
		}
		d.oldDay(r, on, append(parts, numbersOf(r, nil, "Ring")...))
	}
	if len(d.Sheets) == 0 || old.Items[0].Day != r.Today {
		d.Sheets = slices.Insert(d.Sheets, 0, Sheet{Head: r.Plan.Title(), Parts: append([]Part{Title{Text: r.Today.Words()}}, append(old.known(r, r.Today), Para{Text: "The calendars ask nothing today."})...)})
	}
	d.Warn(old.Warning)
	return d
}

// OldCover is the sheet of somebody who stands in while the plan is refused: the lists are those
// of old, and what was reckoned from the plan (what a gauge should show, how long heat lasts,
// the portions) is left out, since it may be what the plan is refused for.
func OldCover(r *compile.Result, stint *roster.Stint, address string, old *Old) (*Document, error) {
	c := covering(r, stint)
	c.old = old
	d, err := c.document(address)
	if err == nil {
		more := slices.Clone(old.First)
		for _, line := range old.Logged {
			more = append(more, "Logged since, and in no list: "+line)
		}
		d.Warn(old.Warning, more...)
	}
	return d, err
}

// Warn says on each page that is no label, before all else, why it may be wrong; and on the
// first of them what else is to be known.
func (d *Document) Warn(text string, more ...string) {
	said := append([]string{text}, more...)
	for i := range d.Sheets {
		if s := &d.Sheets[i]; !s.Bare {
			s.Parts = slices.Insert(s.Parts, 0, Part(List{Look: Alarm, Items: items(said...)}))
			said = said[:1]
		}
	}
}

// refused says on each page when it was made, and not as of which plan.
func (d *Document) refused() { d.stamp = "Refused plan of " + strings.TrimPrefix(d.stamp, "Plan of ") }

func (d *Document) oldDay(r *compile.Result, on civil.Date, parts []Part) {
	d.add(on.Words()+" · "+r.Plan.Title(), slices.Concat([]Part{Title{Text: on.Words()}}, parts, signed())...)
}

// days are the entries by day.
func (o *Old) days() func(yield func([]OldItem) bool) {
	return func(yield func([]OldItem) bool) {
		for from, to := 0, 0; from < len(o.Items); from = to {
			for to = from; to < len(o.Items) && o.Items[to].Day == o.Items[from].Day; to++ {
			}
			if !yield(o.Items[from:to]) {
				return
			}
		}
	}
}

// known is what is known of today and stands in no calendar.
func (o *Old) known(r *compile.Result, on civil.Date) (out []Part) {
	if on != r.Today {
		return nil
	}
	for _, x := range []struct {
		head  string
		look  Look
		lines []string
	}{
		{"First of all", Alarm, o.First},
		{"Logged since, and not in the list: after a moult, a birth or an illness leave the animals alone", Points, o.Logged},
		{"Done today, by the log, and still in the list", Points, o.Done},
	} {
		if len(x.lines) > 0 {
			out = append(out, Head{Text: x.head}, List{Look: x.look, Items: items(x.lines...)})
		}
	}
	return out
}

// asked is what entries ask. A round has its tasks in lines of its own, any other entry is one.
func asked(all []OldItem) (out []Part) {
	for i := range all {
		x := &all[i]
		text := strings.TrimLeft(x.Clock+" "+x.Text, " ")
		switch {
		case slices.ContainsFunc(x.Lines, task):
			out = append(out, Head{Text: text, Large: true})
		case x.Clock == "":
			out = onto(out, false, "", Points, Item{Text: text})
		default:
			out = onto(out, false, "", Ticks, Item{Text: text})
		}
		out = lined(out, x.Lines)
	}
	return out
}

func task(line string) bool { return strings.HasPrefix(line, "- ") }

// lined adds the lines of an entry as they stand there: what is pressing, tasks to be ticked
// off, whatever else is said, and the name of a room before its tasks.
func lined(out []Part, lines []string) []Part {
	for i, line := range lines {
		switch {
		case strings.TrimSpace(line) == "":
		case strings.HasPrefix(line, "FIRST: "):
			out = onto(out, false, "", Alarm, Item{Text: strings.TrimPrefix(line, "FIRST: ")})
		case task(line):
			out = onto(out, false, "", Ticks, Item{Text: strings.TrimPrefix(line, "- ")})
		case i+1 < len(lines) && task(lines[i+1]) && line[0] != ' ':
			out = append(out, Head{Text: strings.TrimSuffix(line, ":")})
		default:
			out = onto(out, false, "", Points, Item{Text: strings.TrimSpace(line)})
		}
	}
	return out
}
