// Package tasks makes the tasks of the coming days as a list on a phone has them, and says
// what it means that they were ticked. A task is what one line of the log says of several
// enclosures in a round: "Fresh water: Tub 1 to 3". Where the list is kept, and how it is
// reached, is the business of others.
package tasks

import (
	"slices"
	"strings"
	"time"

	"golang.org/x/text/unicode/norm"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/ical"
	"vivary/compile/identity"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// List is the tasks of a collection, or of one keeper in it.
type List struct {
	r      *compile.Result
	keeper string
	titles map[string]int // how many enclosures and racks are called so
	walked map[string]int // the places of enclosures in walking order
}

// Of returns the tasks of a collection: only what a keeper does where one is named. The plan
// must have been understood: r has a roster.
func Of(r *compile.Result, keeper string) *List {
	l := &List{r: r, keeper: keeper, titles: map[string]int{}, walked: map[string]int{}}
	for i, x := range r.Roster.Lives {
		l.walked[x.Plan.Name.V] = i
	}
	for _, e := range r.Plan.Enclosures {
		l.titles[e.Shown()]++
	}
	for _, k := range r.Plan.Racks {
		l.titles[k.Shown()]++
	}
	return l
}

// Wanted returns what is still to be done from today on, by day, time and the order of the
// round.
func (l *List) Wanted(days int) (out []ical.Todo) {
	lists := daylist.Of(l.r, daylist.Asked{Days: days, Keeper: l.keeper})
	for _, x := range lists {
		if x.Open {
			for _, t := range gather(x) {
				out = append(out, l.todo(x, t))
			}
		}
	}
	return out
}

// task is what is said to be done by the same words of the log.
type task struct {
	words  string // behind enclosure and animals, such as "done water"; "" for what is asked
	blocks []rounds.Due
}

// gather puts together what is ticked together.
func gather(x *daylist.List) (all []*task) {
	for _, d := range x.Due {
		for _, stop := range d.Stops {
			words := wordsOf(stop.Item.Said, stop.Item.Animals)
			k := slices.IndexFunc(all, func(t *task) bool { return t.words == words })
			if k < 0 {
				k = len(all)
				all = append(all, &task{words: words})
			}
			t := all[k]
			t.add(&d, stop)
		}
	}
	return all
}

// add adds a place at which a task is due, to those of the same words.
func (t *task) add(d *rounds.Due, stop rounds.Stop) {
	k := slices.IndexFunc(t.blocks, func(b rounds.Due) bool { return b.Text == d.Text && b.First == d.First && b.Last == d.Last })
	if k < 0 {
		k = len(t.blocks)
		t.blocks = append(t.blocks, *d)
		t.blocks[k].Stops = nil
	}
	t.blocks[k].Stops = append(t.blocks[k].Stops, stop)
}

// wordsOf are the words of the log by which something is ticked, without the animals.
func wordsOf(said, group string) string { return strings.TrimPrefix(said, group+" ") }

func (l *List) todo(x *daylist.List, t *task) ical.Todo {
	start := x.Date.At(x.Round.Clock.V, l.r.Plan.Location)
	length := time.Hour
	if x.Round.Within.Set() {
		length = time.Duration(max(x.Round.Within.V.Value, 1)) * time.Minute
	}
	pressing := slices.ContainsFunc(t.blocks, func(d rounds.Due) bool { return d.First })
	return ical.Todo{UID: l.uid(x.Date, x.Round, t.words), Start: start, Due: start.Add(length), First: pressing, Summary: l.summary(t, pressing), Description: l.description(x, t)}
}

// first begins what comes before all else.
const first = "FIRST: "

// longest is how many bytes a title has at most: beyond it the enclosures stand in the text.
const longest = 120

// summary is the title: what to do, and where.
func (l *List) summary(t *task, pressing bool) string {
	what := t.blocks[0].Text
	switch {
	case t.words == "":
		what = "To be answered"
	case len(t.blocks) > 1:
		what = t.blocks[0].Kind.Phrase
	}
	if pressing {
		what = first + what
	}
	var at []*plan.Enclosure
	var racks []string
	seen := map[string]bool{}
	for _, d := range t.blocks {
		for _, s := range d.Stops {
			if seen[s.Place.Name] {
				continue
			}
			seen[s.Place.Name] = true
			if e := l.r.Plan.Enclosure(s.Place.Name); e != nil {
				at = append(at, e)
			} else {
				racks = append(racks, s.Place.Title)
			}
		}
	}
	slices.SortFunc(at, func(a, b *plan.Enclosure) int { return l.walked[a.Name.V] - l.walked[b.Name.V] })
	if len(at) > 0 {
		racks = append([]string{rounds.Named(at)}, racks...)
	}
	if s := oneLine(what + ": " + strings.Join(racks, ", ")); len(s) <= longest {
		return s
	}
	return oneLine(what + ": " + wording.Count(len(seen), "enclosure", "enclosures"))
}

// description is the whole of what to do. Each place stands on a line of its own behind a
// hyphen: by these lines it is known of which a tick was.
func (l *List) description(x *daylist.List, t *task) string {
	var b strings.Builder
	for _, d := range t.blocks {
		l.block(&b, &d)
	}
	if t.words == "" {
		b.WriteString("A tick is no answer: note what is so.\n")
	}
	for _, line := range slices.Concat(x.Before, x.Held) {
		b.WriteString("* " + oneLine(line) + "\n")
	}
	b.WriteString(x.Round.Shown() + ", " + wording.Clock(x.Round.Clock.V, l.r.Plan.Units))
	for _, k := range x.Keepers {
		b.WriteString(", " + daylist.Shown(l.r.Plan, k))
	}
	return b.String()
}

// block writes a task with its places.
func (l *List) block(b *strings.Builder, d *rounds.Due) {
	if d.First {
		b.WriteString(first)
	}
	if d.Last {
		b.WriteString("Last, with tools of their own: ")
	}
	b.WriteString(strings.TrimLeft(oneLine(d.Text), mark))
	should := d.Stops[0].Should
	same := !slices.ContainsFunc(d.Stops, func(s rounds.Stop) bool { return s.Should != should })
	if same && should != "" {
		b.WriteString(", should show " + oneLine(should))
	}
	b.WriteString(":\n")
	for _, s := range d.Stops {
		b.WriteString(mark + l.label(s.Place.Name, s.Item.Animals) + "\n")
		if !same && s.Should != "" {
			b.WriteString("  should show " + oneLine(s.Should) + "\n")
		}
	}
}

// oneLine is a text on one line, with letters put together in one way: apps change both.
func oneLine(text string) string { return norm.NFC.String(strings.Join(strings.Fields(text), " ")) }

// Mark begins the UID of every task that was ever put up.
const Mark = "vivary-"

// prefix begins the UID of every task of the list, and of no other: by it they are known
// where others keep theirs beside them.
func (l *List) prefix() string {
	return Mark + ical.UID("tasks", l.r.Plan.About.Name.V, l.keeper)[:8] + "-"
}

// uid is the same for as long as there is the round, and care that is logged by these words,
// whatever its words are: nothing that is on a phone changes its identity.
func (l *List) uid(day civil.Date, round *plan.Round, words string) string {
	return l.prefix() + string(day.Append(nil, "")) + "-" + ical.UID("task", identity.Round(round), words)
}

// Day returns of which day a task of the list is; false for one that is none of it.
func (l *List) Day(uid string) (civil.Date, bool) {
	rest, ours := strings.CutPrefix(uid, l.prefix())
	if !ours || len(rest) < 9 || rest[8] != '-' {
		return 0, false
	}
	d, err := civil.Parse(rest[:4] + "-" + rest[4:6] + "-" + rest[6:8])
	return d, err == nil
}

// ticked is what a task says that was done.
type ticked struct {
	round *plan.Round
	asked bool            // it is what is asked, which only the log answers
	of    []*roster.Entry // on whichever days they are due
}

// find returns what a task of a day says; false where no round has such care any more.
func (l *List) find(uid string, day civil.Date) (ticked, bool) {
	for _, round := range l.r.Roster.Rounds {
		if held := l.r.Roster.HeldOn(round); round.Turns != nil && held != nil {
			if i, in := l.r.Horizon.Index(day); in && !held.Has(i) {
				continue // somebody else's turn
			}
		}
		t := ticked{round: round, asked: l.uid(day, round, "") == uid}
		is := map[string]bool{"": false}
		for _, e := range l.r.Roster.In[round] {
			words := wordsOf(e.Said(), group(e))
			if _, known := is[words]; !known {
				is[words] = l.uid(day, round, words) == uid
			}
			if is[words] {
				t.of = append(t.of, e)
			}
		}
		if t.asked || len(t.of) > 0 {
			return t, true
		}
	}
	return ticked{}, false
}

func group(e *roster.Entry) string {
	if e.Group == nil {
		return ""
	}
	return e.Group.Animals.Name.V
}
