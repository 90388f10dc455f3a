package plan

import (
	"maps"
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/slip"
)

// references looks whether all that is named by rounds, absences, calendars, care
// and meals is there. Enclosures of which that cannot be said are doubtful.
func (r *resolver) references(doubtful map[string]bool) {
	c := r.c
	keeper := func(w Written[string]) {
		if w.Set() && c.keepers[w.V] == nil {
			r.unknownName(w, "keeper", keysOf(r, "keeper", c.keepers))
		}
	}
	each := func(list []Written[string], what string, has func(string) bool, known func() []string) {
		for _, w := range list {
			if !has(w.V) {
				r.unknownName(w, what, known())
			}
		}
	}
	hasRound := func(s string) bool { return c.rounds[s] != nil }
	rounds := func() []string { return keysOf(r, "round", c.rounds) }
	same := map[source.Place]bool{}
	inRounds := func(list []Written[string]) {
		each(list, "round", hasRound, rounds)
		for i, w := range list {
			if slices.ContainsFunc(list[:i], func(o Written[string]) bool { return o.V == w.V }) && !same[w.At] {
				same[w.At] = true // of a template it is in several
				r.found.Add(finding.Finding{Rule: ruleTwice, At: w.At, Text: "round " + quote(w.V) + " is named twice: it is held once on a day",
					Write: "another round, where it is done twice a day; or this one once"})
			}
		}
	}
	for _, x := range c.Rounds {
		if x.Of != nil {
			continue // as the round of which it is a part
		}
		keeper(x.Keeper)
		r.days(x.On, x.NotOn, x.AlsoOn)
	}
	for _, a := range c.Aways {
		keeper(a.Name)
		keeper(a.Cover)
		r.days(a.Visits)
		if a.From.Set() && a.To.Set() && a.To.V < a.From.V {
			r.found.Add(finding.Finding{Rule: ruleDate, At: a.To.At, Text: "the return (" + a.To.V.String() + ") is before the first day away (" + a.From.V.String() + ")",
				Write: "a day after " + a.From.V.String()})
		}
	}
	for _, k := range c.Calendars {
		each(k.Rounds, "round", hasRound, rounds)
		each(k.Keepers, "keeper", func(s string) bool { return c.keepers[s] != nil }, func() []string { return keysOf(r, "keeper", c.keepers) })
		each(k.Rooms, "room", func(s string) bool { return c.rooms[s] != nil }, func() []string { return keysOf(r, "room", c.rooms) })
		each(k.Enclosures, "enclosure", func(s string) bool { return c.enclosures[s] != nil || r.several[s] != nil }, func() []string { return keysOf(r, "enclosure", c.enclosures) })
		each(k.Kinds, "kind of care", func(s string) bool { return schema.FindKind(s) != nil }, kindNames)
	}
	for _, d := range c.Deadlines {
		keeper(d.Keeper)
	}
	r.keepers()
	timing := func(t *Timing) {
		keeper(t.Keeper)
		inRounds(t.Round)
		r.days(t.On, t.NotOn, t.AlsoOn)
		if t.From.Set() && t.Until.Set() && t.Until.V < t.From.V {
			r.found.Add(finding.Finding{Rule: ruleDate, At: t.Until.At, Text: "the last day (" + t.Until.V.String() + ") is before the first (" + t.From.V.String() + ")",
				Write: "a day after " + t.From.V.String()})
		}
	}
	menu := func(f *Feeding) {
		for _, w := range f.asTyped().Menu() {
			r.prey(w)
		}
	}
	for _, x := range c.Rooms {
		inRounds(x.Round)
	}
	for _, x := range c.Racks {
		inRounds(x.Round)
	}
	cares := func(care []*Care, feeding []*Feeding) {
		for _, x := range care {
			r.kind(x, care)
			timing(&x.Timing)
		}
		for _, x := range feeding {
			timing(&x.Timing)
			inRounds(x.LookIn)
			menu(x)
		}
	}
	for _, e := range c.Enclosures {
		if r.full() {
			break
		}
		if r.stands(e) {
			continue
		}
		found, marked := len(r.found.All), r.marked
		r.doubt(e, doubtful, func() {
			inRounds(e.Round)
			cares(e.Care, e.Feeding)
		})
		if len(r.found.All) > found || r.marked > marked {
			r.said[e] = true
		}
	}
	for _, s := range r.blocks.species {
		cares(s.Care, s.Feeding)
	}
	for _, t := range r.blocks.types {
		for _, x := range t.Feeding {
			menu(x)
		}
	}
	for _, x := range r.blocks.templates { // of which no enclosure may be made
		for _, y := range x.Care {
			r.days(y.On, y.NotOn, y.AlsoOn)
		}
		for _, y := range x.Feeding {
			r.days(y.On, y.NotOn, y.AlsoOn)
		}
	}
	for _, x := range c.Dates {
		r.ofDates(x)
	}
}

// days looks whether the dates blocks that lists of days name are there.
func (r *resolver) days(lists ...[]Written[Day]) {
	for _, list := range lists {
		for _, d := range list {
			switch {
			case d.V.Kind != NamedDays:
			case r.c.dates[d.V.Name] == nil:
				r.noDay(d)
			default:
				r.dated[d.V.Name] = true
				r.marked++
			}
		}
	}
}

// noDay finds an item of a list of days that is neither a day nor the name of a dates block.
func (r *resolver) noDay(d Written[Day]) {
	if r.unsaid(d.V.Name) {
		return
	}
	f := finding.Finding{Rule: ruleUnknownName, At: d.At, Text: quote(d.V.Name) + " is neither a day nor the name of a dates block", Write: DayForms}
	if s := r.slip(d.V.Name, slices.Concat(keysOf(r, "dates", r.c.dates), weekdayNames)); s != "" {
		if w, ok := civil.ParseWeekday(s); ok && len(s) > 3 {
			s = strings.ToLower(w.String()[:3])
		}
		f.Text += ": did you mean " + quote(s) + "?"
		f.Write = quote(s)
		f.Edits = finding.Instead(d.At, d.V.Name, s)
	}
	r.found.Add(f)
}

// ofDates looks at a dates block itself: it is found by its name where days are listed, and
// holds days only.
func (r *resolver) ofDates(x *Dates) {
	if read, err := ParseDays(x.Name.V); err != nil || read[0].Kind != NamedDays {
		r.found.Add(finding.Finding{Rule: ruleValue, At: x.Name.At, Text: quote(x.Name.V) + " would be read as a day, or as a number, where days are listed",
			Write: "a name that begins with a letter and is no weekday, such as \"school-holidays\""})
	} else if !r.dated[x.Name.V] && !r.unread.mayHold(x.Name.V) {
		r.found.Add(finding.Finding{Rule: ruleDatesUnnamed, At: x.At, Text: "dates" + named(&x.Head) + " is named nowhere: no round and no care is other for it",
			Write: quote(x.Name.V) + " under not_on in the rounds that are not held on them, or under on in one that is"})
	}
	for _, d := range x.On {
		if d.V.Kind == NamedDays {
			r.found.Add(finding.Finding{Rule: ruleValue, At: d.At, Text: quote(d.V.Name) + " is no day: a dates block holds days, and not other dates blocks", Write: DayForms})
		}
	}
}

// weekdayNames are the weekdays as they are written, and in full, as many begin to.
var weekdayNames = []string{"mon", "tue", "wed", "thu", "fri", "sat", "sun", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"}

// within returns a word of a text at its own place, or at that of the text where it
// is not plain which part is meant.
func (r *resolver) within(at source.Place, word string) Written[string] {
	typed := r.c.Files.Of(at)
	if strings.Count(typed, word) == 1 {
		at.Start += int32(strings.Index(typed, word))
		at.End = at.Start + int32(len(word))
	}
	return wrote(word, at)
}

// kind finds a care of which it is not known what it is. others are those beside it,
// whose names are taken.
func (r *resolver) kind(c *Care, others []*Care) {
	if c.What() != nil || c.Off.V {
		return
	}
	name := c.Name
	if c.Kind.Set() {
		name = c.Kind
	}
	if q := schema.AskedBack(schema.UnclearKinds, name.V); q != nil {
		r.found.Add(finding.Finding{Rule: ruleUnknownWord, At: name.At, Text: quote(name.V) + " does not say which care: " + q.Ask, Write: q.Write})
		return
	}
	r.notListed(name, "a kind of care", "as kind one of: ", kindNames(), func(better string) bool {
		return c.Kind.Set() || !slices.ContainsFunc(others, func(o *Care) bool { return o.Name.V == better })
	})
}

func kindNames() []string {
	var n []string
	for _, k := range schema.CareKinds {
		n = append(n, k.Name)
	}
	return n
}

// maxNamed is how many names are listed where none is near.
const maxNamed = 12

func (r *resolver) unknownName(w Written[string], what string, known []string) {
	if !r.logs && r.full() || r.unsaid(w.V) {
		return
	}
	f := finding.Finding{Rule: ruleUnknownName, At: w.At, Text: "there is no " + what + " " + quote(w.V)}
	if s := r.slip(w.V, known); s != "" {
		f.Text += ": did you mean " + quote(s) + "?"
		f.Write = quote(s)
		f.Edits = finding.Instead(w.At, w.V, s)
	} else if len(known) > 0 && len(known) <= maxNamed {
		f.Write = "one of: " + strings.Join(slices.Sorted(slices.Values(known)), ", ")
	} else {
		f.Write = "define it, or use a name that is defined"
	}
	r.found.Add(f)
}

// slip returns the name that was meant by one that is nowhere defined, or "": also where
// others have been compared with so many that no more are.
func (r *resolver) slip(written string, known []string) string {
	if r.guessed += len(known); r.guessed > maxGuesses {
		return ""
	}
	return slip.Of(written, known)
}

// keysOf returns the names of blocks in order, which are put in order once.
func keysOf[T any](r *resolver, what string, m map[string]T) []string {
	all := r.sorted[what]
	if len(all) != len(m) {
		if r.sorted == nil {
			r.sorted = map[string][]string{}
		}
		all = slices.Sorted(maps.Keys(m))
		r.sorted[what] = all
	}
	return all
}
