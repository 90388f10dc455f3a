package compile

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"vivary/compile/ical"
	"vivary/compile/identity"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// Animals that the last calendars knew are in the plan, or something says what became of
// them: the log, or a gone block. It is judged by what the plan and the log say of the day
// on which the calendars were built, so that neither time nor anything that was logged of a
// later day can refuse; and a line that was logged since explains what it can.

// Missing is the rule about animals of which nothing says where they went.
var Missing = &finding.Rule{ID: "animals-missing", Severity: finding.Error,
	Title:   "Animals that the last calendars knew are not in the plan any more.",
	Why:     "A file that was cut off, a block that was taken out by a slip, a name that was changed: the animals are still in their box, and nobody would be told to feed them.",
	Source:  "the design of this program",
	Instead: "Put the block or the number back. What died or left is logged with `died`, `moved` or `sold`; or write a `gone` block with the reason."}

// missing finds them.
func (r *Result) missing(known []Known) []finding.Finding {
	if len(known) == 0 || !r.Plan.Complete() {
		return nil // what could not be read is said, and may hold them
	}
	m := &search{r: r, present: map[string]*presence{}, more: map[string]int{}}
	all := latest(known)
	m.came(all)
	for _, t := range all {
		i, here := m.in(t.salt).at[t.IDs[0]]
		switch {
		case t.Animals == 0:
		case here:
			m.fewer(&t, r.Lives[i])
		default:
			m.absent(&t)
		}
	}
	m.sayAbsent()
	return m.found.All
}

// search is for missing animals.
type search struct {
	r       *Result
	found   finding.List
	present map[string]*presence // by the salt of ids
	away    []told               // enclosures that are not in the plan
	fresh   []*life.Enclosure    // those of which the calendars did not know
	more    map[string]int       // animals that the plan has elsewhere now, by the id of their species
}

// presence is where the ids under one salt are.
type presence struct {
	at     map[string]int    // places in Lives
	logged map[string]string // names in the log
	gone   map[string]int    // animals that a gone block names, of enclosures that are not in the plan
}

func (m *search) in(salt string) *presence {
	if p := m.present[salt]; p != nil {
		return p
	}
	p := &presence{map[string]int{}, map[string]string{}, map[string]int{}}
	m.present[salt] = p
	for i, l := range m.r.Lives {
		p.at[ical.Short(salt, identity.Enclosure(l.Plan))] = i
	}
	for _, name := range m.r.Plan.Logged() {
		p.logged[ical.Short(salt, name)] = name
	}
	for _, g := range m.r.Plan.Gone {
		n := g.Animals.V
		if !g.Animals.Set() {
			n = everybody
		}
		p.gone[ical.Short(salt, g.Name.V)] += n
	}
	return p
}

// everybody is more than live anywhere.
const everybody = 1 << 40

// day is that of the calendars, as their keeper says it.
func (m *search) day(t *told) civil.Date {
	if t.made.IsZero() {
		return m.r.Today
	}
	return min(civil.FromTime(t.made.In(m.r.Plan.Location)), m.r.Today)
}

// built says when that was: when the calendars were built, or before a change.
func (m *search) built(t *told) string {
	if t.plan {
		return "before this change"
	}
	return "when the calendars were built on " + m.day(t).Words()
}

// fewer looks at an enclosure that is in the plan.
func (m *search) fewer(t *told, l *life.Enclosure) {
	now := living(l, m.day(t))
	planned, lines, _, gone := m.r.stated(l.Plan)
	lost := t.Animals - now
	switch less := t.Planned - planned; {
	case lost <= 0:
		return
	case lines > t.Lines && less <= 0:
		return // what was logged since tells
	case lines > t.Lines:
		lost = min(lost, less)
	}
	lost -= max(0, gone-t.Gone)
	if put := min(lost, m.more[t.Species]); put > 0 && t.Planned > planned {
		m.more[t.Species] -= put // into another block
		lost -= put
	}
	if lost <= 0 {
		return
	}
	f := finding.Finding{Rule: Missing, At: place(l.Plan), In: l.Plan.Box()}
	name := l.Plan.Name.V
	f.Text = fmt.Sprintf("%s had %s %s, and by the plan it has %d: nothing says what became of %d", quoted(t.Shown, name), wording.Animals(t.Animals), m.built(t), now, lost)
	if planned < t.Planned {
		f.Write = fmt.Sprintf("the number again that stood here, %d in all, and what happened into the log, which takes them off: vivary note %s died %d; or, where it was written wrongly, a gone block of the name %q, with %d as animals and the reason as because", t.Planned, named(l.Plan), lost, name, lost)
	} else {
		f.Write = fmt.Sprintf("the lines of the log again that told of them; or a gone block of the name %q, with %d as animals and the reason as because", name, lost)
	}
	m.found.Add(f)
}

// place is where the number of animals stands, where that is in one place.
func place(e *plan.Enclosure) source.Place {
	if len(e.Animals) == 1 && e.Animals[0].Count.At.Written() {
		return e.Animals[0].Count.At
	}
	return e.At
}

// named is an enclosure as a line of the log names it, with its animals where it has
// several groups.
func named(e *plan.Enclosure) string {
	if len(e.Animals) > 1 {
		return e.Name.V + " " + e.Animals[0].Name.V
	}
	return e.Name.V
}

// quoted is what people call an enclosure, with its name where that is another.
func quoted(shown, name string) string {
	if name == "" || shown == name {
		return strconv.Quote(shown)
	}
	return strconv.Quote(shown) + " (" + name + ")"
}

// absent looks at an enclosure that is not in the plan.
func (m *search) absent(t *told) {
	p, left := m.in(t.salt), t.Animals
	for _, id := range t.IDs {
		left -= max(0, p.gone[id])
		if name := p.logged[id]; name != "" {
			left -= max(0, m.r.Plan.Departed(name).Left-t.Left)
		}
	}
	if left > 0 {
		m.away = append(m.away, *t)
	}
}

// came gathers what the plan has that the calendars did not know: enclosures, and animals in
// those that they knew. Who was put from one block into another is not missing.
func (m *search) came(all []told) {
	knew := map[int]bool{}
	for i := range all {
		t := &all[i]
		at, here := m.in(t.salt).at[t.IDs[0]]
		if !here {
			continue
		}
		knew[at] = true
		e := m.r.Lives[at].Plan
		if planned, _, _, _ := m.r.stated(e); planned > t.Planned {
			m.more[speciesID(t.salt, e)] += planned - t.Planned
		}
	}
	for i, l := range m.r.Lives {
		if knew[i] {
			continue
		}
		m.fresh = append(m.fresh, l)
		for salt := range m.present {
			m.more[speciesID(salt, l.Plan)] += l.Plan.Total()
		}
	}
}

// sayAbsent says which enclosures are not in the plan: each that was renamed by itself, and
// all others together, since one file may have held them.
func (m *search) sayAbsent() {
	var rest []told
	for _, t := range m.away {
		if name, l := m.nameOf(&t), m.renamed(&t); l != nil && name != "" {
			m.sayRenamed(&t, name, l)
		} else {
			rest = append(rest, t)
		}
	}
	if len(rest) == 0 {
		return
	}
	first, n := &rest[0], 0
	var shown []string
	for _, t := range rest {
		n += t.Animals
		shown = append(shown, quoted(t.Shown, m.nameOf(&t)))
	}
	name := m.nameOf(first)
	if name == "" {
		name = "NAME"
	}
	gone := "a gone block of the name " + strconv.Quote(name) + ", with that as because"
	f := finding.Finding{Rule: Missing, At: m.r.Plan.About.At}
	if len(rest) == 1 {
		f.Text = shown[0] + " had " + wording.Animals(n) + " " + m.built(first) + ", and the plan has it no more"
		f.Write = "its block again; or, where the " + wording.Noun(n, "animal is", "animals are") + " not there any more, what became of " + wording.Noun(n, "it", "them") + ": " + gone
	} else {
		f.Text = wording.Count(len(rest), "enclosure", "enclosures") + " had " + wording.Animals(n) + " " + m.built(first) + ", and the plan has them no more: " + listed(shown)
		f.Write = "their blocks again; where they only have other names now, formerly in them; or, for each where they are not there any more, what became of them: " + gone
	}
	m.found.Add(f)
}

// most is how many are named in a finding.
const most = 12

func listed(names []string) string {
	if len(names) <= most {
		return strings.Join(names, ", ")
	}
	return strings.Join(names[:most], ", ") + " and " + strconv.Itoa(len(names)-most) + " more"
}

// nameOf is the name of an enclosure that is not in the plan, where that can be told: the
// calendars have no names.
func (m *search) nameOf(t *told) string {
	p := m.in(t.salt)
	for _, id := range slices.Backward(t.IDs) {
		if name := p.logged[id]; name != "" {
			return name
		}
		if name := strings.ReplaceAll(strings.ToLower(t.Shown), " ", "-"); ical.Short(t.salt, name) == id {
			return name
		}
	}
	return ""
}

// renamed is the only new enclosure that can be one of old under another name.
func (m *search) renamed(t *told) *life.Enclosure {
	fits := func(x *told, l *life.Enclosure) bool {
		return speciesID(x.salt, l.Plan) == x.Species && l.Plan.Total() == x.Planned && !l.Plan.Formerly.Set()
	}
	var one *life.Enclosure
	for _, l := range m.fresh {
		if !fits(t, l) {
			continue
		}
		if one != nil {
			return nil
		}
		one = l
	}
	for i := range m.away {
		if o := &m.away[i]; one != nil && (o.salt != t.salt || o.IDs[0] != t.IDs[0]) && fits(o, one) {
			return nil
		}
	}
	return one
}

// sayRenamed says that an enclosure may have another name now, with the line that says so.
func (m *search) sayRenamed(t *told, name string, l *life.Enclosure) {
	e := l.Plan
	f := finding.Finding{Rule: Missing, At: e.Name.At, In: e.Box(),
		Text: quoted(t.Shown, name) + " had " + wording.Animals(t.Animals) + " " + m.built(t) + ", and the plan has it no more. " + strconv.Quote(e.Name.V) + " is new and may be the same under another name",
		Also: []finding.Related{{Text: "where it is another, put the old block back, or say in a gone block of the name " + strconv.Quote(name) + " what became of its animals"}}}
	line := "formerly = " + strconv.Quote(name)
	f.Write = line + " in its block"
	text := m.r.Plan.Files.Text(e.At.File)
	if at := e.At.End; e.At.Written() && int(e.Whole.End) <= len(text) {
		if brace := strings.IndexByte(string(text[at:e.Whole.End]), '{'); brace >= 0 {
			at += int32(brace) + 1
			f.Edits = []finding.Edit{{At: source.Place{File: e.At.File, Start: at, End: at}, Text: "\n  " + line}}
		}
	}
	m.found.Add(f)
}
