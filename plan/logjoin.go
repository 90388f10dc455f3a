package plan

import (
	"slices"
	"sort"
	"strconv"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/wording"
)

// log joins the lines of the logs to enclosures and animals. Of what is wrong with them as
// much is told as anybody reads, and then how much more: every line counts all the same,
// and none keeps the plan from being understood.
func (r *resolver) log() {
	plan := r.found
	r.found, r.logs = finding.List{}, true
	r.joinLog()
	found := r.found.All
	if more := len(found) - MaxFound; more > 0 {
		last := found[MaxFound-1]
		found = found[:MaxFound]
		found = append(found, *wrongLine(last.At, "of "+strconv.Itoa(more)+" more lines of the logs something is to be said", "those above as they should be, first"))
	}
	plan.All = append(plan.All, found...)
	r.found, r.logs = plan, false
}

// joinLog joins the lines, sorts them by day, and leaves out those that are taken back and
// those that stand twice.
func (r *resolver) joinLog() {
	r.made = map[string]bool{}
	r.broods()
	r.former = r.formerNames()
	for i := range r.events {
		r.nowCalled(&r.events[i])
		r.makes(&r.events[i])
	}
	r.depart()
	all := r.events[:0]
	for _, e := range r.events {
		if r.joined(&e) {
			all = append(all, e)
		}
	}
	r.sayStrangers()
	r.inOrder(all)
	all = slices.DeleteFunc(r.takenBack(all), func(e Event) bool {
		over := r.isGone(&e)
		if over {
			r.ofGone(&e)
		}
		return over
	})
	r.c.Log = r.forRacks(r.once(all))
	r.gaugeTests()
	r.c.learn()
	r.sudden()
	for i := range r.c.Log {
		e := &r.c.Log[i]
		r.found.All = append(r.found.All, e.said...)
		if e.By.Set() && r.c.keepers[e.By.V] == nil {
			r.unknownWriter(e.By)
		}
	}
}

// joined finds the enclosure and the animals of which a line speaks.
func (r *resolver) joined(e *Event) bool {
	if e.Keeper.Set() {
		return r.joinedKeeper(e)
	}
	if e.Deadline.Set() {
		if r.c.enclosures[schema.LogDeadline] == nil || r.c.deadlines[e.Deadline.V] != nil {
			return r.joinedDeadline(e)
		}
		again, wrong := readLine(e.At.File, int(e.At.Start), r.c.Files.Of(e.At), e.quiet, func(string) bool { return true })
		if wrong != nil {
			r.found.Add(*wrong)
			return false
		}
		*e = *again // an enclosure is called so
	}
	enclosure := r.c.enclosures[e.Enclosure.V]
	if enclosure == nil && e.Enclosure.V == schema.LogKeeper {
		r.found.Add(*wrongLine(e.At, "of a keeper the log takes who it is, and away or back", "keeper, the name, away or back, and a note: 2026-11-02 keeper lead away \"ill\""))
		return false
	}
	if enclosure == nil && e.Enclosure.V == schema.LogDeadline {
		r.found.Add(*wrongLine(e.At, "of a date of the house the log takes which it is, and done", "deadline, the name, done, and a note: 2027-12-02 deadline dwa-licence done \"applied\""))
		return false
	}
	if k := r.c.racks[e.Enclosure.V]; enclosure == nil && k != nil {
		r.joinedRack(e, k)
		return true
	}
	if s := r.c.stores[e.Enclosure.V]; enclosure == nil && s != nil {
		r.joinedStore(e, s)
		return true
	}
	if b := r.several[e.Enclosure.V]; enclosure == nil && b != nil {
		all := r.c.numbered[b].all
		r.found.Add(finding.Finding{Rule: ruleUnknownName, At: e.Enclosure.At, Text: quote(b.Name.V) + " is " + wording.Count(len(all), "enclosure", "enclosures") + " with numbers, " + b.Numbers.V.String() + ": the log takes the names of those that are meant",
			Write: quote(all[0].Name.V) + ", and a line for each of the others of which it is true"})
		return false
	}
	if enclosure == nil && r.c.rooms[e.Enclosure.V] != nil && (e.Test != nil || e.Word == schema.WordWithdrawn) {
		return true // its gauges are tested
	}
	if r.isGone(e) {
		return true
	}
	if enclosure == nil {
		if !r.byTitle(e) {
			r.unknownEnclosure(e.Enclosure)
		}
		return false
	}
	if e.either.Set() && enclosure.called(e.either.V) != nil && !e.Group.Set() {
		again, wrong := readLine(e.At.File, int(e.At.Start), r.c.Files.Of(e.At), e.quiet, func(name string) bool { return enclosure.called(name) != nil })
		if wrong != nil {
			r.found.Add(*wrong)
			return false
		}
		if e.quiet && again.Word == schema.WordRemark {
			again.said, again.quiet = nil, true
		}
		*e = *again
		r.nowCalled(e)
	}
	return r.logGroup(e, enclosure)
}

// byTitle finds a line that says an enclosure or a rack by the title that phones show, and
// reports whether it does: the log takes names, since titles are of several words.
func (r *resolver) byTitle(e *Event) bool {
	text := r.c.Files.Of(source.Place{File: e.At.File, Start: e.Enclosure.At.Start, End: e.At.End})
	longest, names := "", []string(nil)
	see := func(title, name string) {
		if n := len(title); n >= len(longest) && len(text) >= n && strings.EqualFold(text[:n], title) && (n == len(text) || text[n] == ' ') {
			if n > len(longest) {
				longest, names = text[:n], nil
			}
			names = append(names, name)
		}
	}
	for _, x := range r.c.Enclosures {
		see(x.Shown(), x.Name.V)
	}
	for _, k := range r.c.Racks {
		see(k.Shown(), k.Name.V)
	}
	if len(names) == 0 || r.unsaid(e.Enclosure.V) {
		return len(names) > 0
	}
	f := finding.Finding{Rule: ruleUnknownName, At: e.Enclosure.At, Text: quote(longest) + " is a title; the log takes the name", Write: wording.Or(names)}
	if len(names) == 1 {
		f.At.End = f.At.Start + int32(len(longest))
		f.Edits = finding.Instead(f.At, longest, names[0])
	}
	r.found.Add(f)
	return true
}

// inOrder sorts lines by day and, within a day, as they stand in their files; those
// that have a time change places among themselves.
func (r *resolver) inOrder(all []Event) {
	sort.SliceStable(all, func(i, j int) bool {
		if all[i].Date != all[j].Date {
			return all[i].Date < all[j].Date
		}
		return r.c.Files.Before(all[i].At, all[j].At)
	})
	for from := 0; from < len(all); {
		to := from
		var timed []int
		for ; to < len(all) && all[to].Date == all[from].Date; to++ {
			if all[to].Clock.Set() {
				timed = append(timed, to)
			}
		}
		from = to
		if len(timed) < 2 {
			continue
		}
		lines := make([]Event, len(timed))
		for i, at := range timed {
			lines[i] = all[at]
		}
		slices.SortStableFunc(lines, func(a, b Event) int { return int(a.Clock.V - b.Clock.V) })
		for i, at := range timed {
			all[at] = lines[i]
		}
	}
}

// saysNoMore are words of which a second line of a day in the same words says nothing new:
// nobody is one more or one less by it, and a merge can leave a copy.
var saysNoMore = []*schema.LogWord{schema.WordDone, schema.WordSkipped, schema.WordFed, schema.WordRefused, schema.WordSeen, schema.WordCounted,
	schema.WordMeasured, schema.WordTested, schema.WordWeighed, schema.WordRemark, schema.WordWithdrawn}

// once leaves out lines that stand twice. Merging by union in git can leave a line in
// two files, or twice in one; there it is worth saying where two may have been meant.
func (r *resolver) once(all []Event) []Event {
	out := all[:0]
	seen := make(map[string]source.ID, len(all))
	for _, e := range all {
		line := r.c.Files.Of(e.At)
		file, again := seen[line]
		if !again {
			seen[line] = e.At.File
			out = append(out, e)
			continue
		}
		if file == e.At.File && e.Enclosure.Set() && !slices.Contains(saysNoMore, e.Word) {
			r.found.Add(finding.Finding{Rule: ruleLogRepeat, At: e.At, Once: "log-repeat",
				Text:  "the same line stands twice in this file, and counts once",
				Write: "nothing; or, where it happened twice, how many (died 2) or a time after the day"})
		}
	}
	return out
}

func (r *resolver) unknownWriter(by Written[string]) {
	if r.unsaid(by.V) {
		return
	}
	f := finding.Finding{Rule: ruleLogKeeper, At: by.At, Text: "there is no keeper " + quote(by.V) + ": who wrote the line is not known; it counts", Write: "the name of a keeper of the plan, or no by"}
	if s := r.slip(by.V, keysOf(r, "keeper", r.c.keepers)); s != "" {
		f.Text = "there is no keeper " + quote(by.V) + ": did you mean " + quote(s) + "? The line counts"
		f.Write = s
		f.Edits = finding.Instead(by.At, by.V, s)
	}
	r.found.Add(f)
}

// logGroup finds the animals of which a line speaks, as far as the plan tells. The log
// itself makes groups, of broods and of animals that came: which there are on a day is
// known only when it is read, so that a name that the plan does not have is left to the
// reader where the log can have made it.
func (r *resolver) logGroup(e *Event, enclosure *Enclosure) bool {
	if e.Word.Subject == schema.OfStock {
		e.remark(finding.Finding{Rule: ruleLogLine, At: e.WordAt, Text: quote(e.Word.Name) + " is said of feeder animals, and " + quote(enclosure.Name.V) + " is an enclosure: it is a remark, from which nothing follows",
			Write: "in place of the enclosure the culture, the tub or the supply, if one is meant"})
		return true
	}
	if e.Group.V != "" {
		if g := enclosure.called(e.Group.V); g != nil {
			e.Group.V = g.Name.V
		} else if !r.made[enclosure.Name.V] {
			r.unknownName(e.Group, "animals block in "+enclosure.Name.V, enclosure.groups())
			return false
		}
		return true
	}
	if e.Word.Subject != schema.OfAnimals {
		return true
	}
	if len(enclosure.Animals) == 1 {
		e.Group = wrote(enclosure.Animals[0].Name.V, source.Place{})
		return true
	}
	if e.Word == schema.WordCounted || e.Word == schema.WordSeen || len(enclosure.Animals) == 0 {
		return true
	}
	e.remark(finding.Finding{Rule: ruleLogLine, At: e.WordAt, Text: quote(enclosure.Name.V) + " has several animals blocks: the line does not say which of them is meant",
		Write: e.Date.String() + " " + enclosure.Name.V + " " + wording.Or(enclosure.groups()) + " " + e.Word.Name})
	return true
}

// makes notes where a line may make groups that the plan does not have.
func (r *resolver) makes(e *Event) {
	switch e.Word {
	case schema.WordBorn, schema.WordHatched, schema.WordSeparated, schema.WordArrived:
		r.made[e.Enclosure.V] = true
	}
	if (e.Word == schema.WordMoved || e.Word == schema.WordSeparated) && len(e.Args) > 0 {
		r.made[e.Args[0].V] = true
	}
}

// broods notes where the plan itself speaks of young without a block.
func (r *resolver) broods() {
	for _, e := range r.c.Enclosures {
		for _, a := range e.Animals {
			if a.State.V == "with brood" {
				r.made[e.Name.V] = true
			}
		}
	}
}
