package life

import (
	"slices"
	"strconv"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Groups that the log makes: broods, and animals that came to where no block of the
// plan fits them.

// wrote is a value that stands at a place of the log or the plan.
func wrote[T any](v T, at source.Place) (w plan.Written[T]) {
	w.V, w.At = v, at
	return w
}

// track finds the group of that name, or nil.
func (r *reader) track(name string) *track {
	for _, t := range r.tracks {
		if t.Animals.Name.V == name {
			return t
		}
	}
	return nil
}

// living returns the groups that have animals.
func (r *reader) living() []*track {
	var out []*track
	for _, t := range r.tracks {
		if t.now() > 0 {
			out = append(out, t)
		}
	}
	return out
}

// youngWords are what a keeper may call a brood in the log, beside its own name.
var youngWords = []string{"young", "brood", "babies", "scorplings", "slings"}

// subject finds the animals of which a line speaks, or says that there are none.
func (r *reader) subject(e *plan.Event) *track {
	if name := e.Group.V; name != "" {
		if t := r.track(name); t != nil {
			return t
		}
		if slices.Contains(youngWords, name) {
			if t := r.lastBrood(); t != nil {
				return t
			}
		}
		if a, ok := r.also[name]; ok && a.now() > 0 {
			if !e.Number.Set() && e.Word.After == schema.AfterEnclosure {
				e.Number = wrote(float64(a.n), e.WordAt)
			}
			return a.track
		}
		if e.Word == schema.WordArrived {
			return r.empty(name, e)
		}
		r.found.Add(finding.Finding{Rule: ruleGone, At: e.Group.At, Text: "there are no " + name + " in " + e.Enclosure.V + " on " + e.Date.Words(),
			Write: "one of: " + wording.Or(r.names())})
		return nil
	}
	living := r.living()
	switch {
	case len(living) == 1:
		return living[0]
	case e.Word == schema.WordArrived && len(living) == 0:
		return r.empty("animals", e)
	}
	f := finding.Finding{Rule: ruleGone, At: e.WordAt, Text: "no animals live in " + e.Enclosure.V + " on " + e.Date.Words(), Write: "the right day or enclosure; where they came, their line with arrived before this one"}
	if len(living) > 1 {
		f.Text, f.Write = e.Enclosure.V+" has several groups: the line does not say which of them is meant", e.Date.String()+" "+e.Enclosure.V+" "+wording.Or(r.names())+" "+e.Word.Name
	}
	r.found.Add(f)
	return nil
}

func (r *reader) names() (out []string) {
	for _, t := range r.tracks {
		out = append(out, t.Animals.Name.V)
	}
	return out
}

// lastBrood is the youngest brood that lives here.
func (r *reader) lastBrood() *track {
	for _, t := range slices.Backward(r.tracks) {
		if t.of != nil && t.now() > 0 {
			return t
		}
	}
	return nil
}

// empty is a new group of nobody yet.
func (r *reader) empty(name string, e *plan.Event) *track {
	return r.create(name, "", r.sheet, Stretch{}, see(e))
}

// maxGroups is how many groups of an enclosure are followed, those that are gone among them.
const maxGroups = 300

// create makes a group that the plan does not have, of nobody yet. One that is more than are
// followed is told of, and stands in nothing.
func (r *reader) create(name, title string, sheet *plan.SpeciesSheet, as Stretch, s seen) *track {
	follow := len(r.tracks) < maxGroups
	base := name
	for n := 2; follow && r.track(name) != nil; n++ { // no two groups of a box share a name
		name = base + "-" + strconv.Itoa(n)
	}
	a := &plan.Animals{Title: wrote(title, s.at), Count: wrote(quantity.Count{}, s.at), Stage: wrote(as.Stage, s.at)}
	a.Name = wrote(name, s.at)
	if title == "" {
		a.Title = plan.Written[string]{}
	}
	a.At = s.at
	as.From = s.on
	// Of the days before nothing is known, and nobody was here.
	g := &Group{Animals: a, Sheet: sheet, Logged: true, Since: wrote(s.on, s.at), Stages: []Stretch{as}, Numbers: []Number{{s.on - 1, 0}}}
	t := &track{Group: g, home: r, numbered: true}
	switch {
	case follow:
		r.tracks = append(r.tracks, t)
		r.out.Groups = append(r.out.Groups, g)
	case !r.crowded:
		r.crowded = true
		r.found.Add(finding.Finding{Rule: ruleNumber, At: s.at, Text: "from here on the log has more groups of animals in " + r.out.Plan.Name.V + " than are followed: whoever came, or was born or parted, with this line and later ones is not reckoned with",
			Limit: strconv.Itoa(maxGroups) + " groups in an enclosure", Write: "look who lives there, and write that as its animals in the plan"})
	}
	return t
}

// transfer takes n animals of a group to another enclosure, or to another group of the
// same one, and returns the group that they are in then.
func (r *reader) transfer(t *track, to *reader, name string, n int, e *plan.Event) *track {
	whole := n == t.now()
	j := to.joins(t, name)
	others := false
	for _, o := range to.living() {
		others = others || o != t && o != t.motherTrack()
	}
	fresh := j == nil || j.now() == 0
	if j == nil {
		base, title := name, ""
		if base == "" {
			base = t.Animals.Name.V
			if t.Logged {
				title = t.Animals.Title.V
			}
		}
		j = to.create(base, title, t.Sheet, t.stage(), see(e))
	} else if fresh {
		j.enter(t.stage(), e.Date)
	}
	j.number(see(e), min(j.now()+n, quantity.MaxCount), MovedIn, t)
	if others {
		j.joined = see(e)
		to.mixed(t, j, e)
	}
	if c := r.clock(t, e.Date); c.ok && !j.arrived.ok {
		j.arrived = c
	}
	male := t.male(e, n)
	switch {
	case whole:
		j.carry(t, fresh)
	case male:
		j.suspect(t)
	case n == 1 && t.carries() && t.leaving >= len(t.broods) && !others && !t.sick.ok && !t.hurt.ok:
		// A box of her own was asked for: it is she who went, unless it may be one that
		// is ill, or the box is not her own.
		j.expect(t)
		r.closeLate(t, e.Date)
		t.laid = seen{}
		j.suspect(t)
	default:
		// Which of them it is that is ill or soft nobody wrote: both are held.
		j.suspect(t)
		j.grewWith(t, fresh)
		if t.carries() {
			j.expect(t)
		}
	}
	m := max(0, n-(t.now()-t.males))
	if male {
		m = n
	}
	j.males, t.males = j.males+m, max(0, t.males-n)
	if name == "" && j.Animals.Name.V != t.Animals.Name.V && !t.Logged {
		to.also[t.Animals.Name.V] = alias{j, n, m}
	}
	return j
}

// twins are groups that took over a state from the same line, since it was not known
// which of them were in it: what is seen of one of them is the answer for all.
func (r *reader) twins(t *track, of func(*track) []seen) (out []*track) {
	mine := of(t)
	for _, x := range r.world.all {
		for _, o := range x.tracks {
			for i, s := range of(o) {
				if o != t && s.ok && mine[i].ok && s.at == mine[i].at {
					out = append(out, o)
					break
				}
			}
		}
	}
	return out
}

// alias is a group under the name that some of it had where they came from: keepers go
// on calling an animal by its name.
type alias struct {
	*track
	n, males int
}

// male reports whether those that a line moves are males for certain, by the name that
// they had where they came from: a male that goes home takes no birth to come with him.
func (t *track) male(e *plan.Event, n int) bool {
	a, ok := t.home.also[e.Group.V]
	return ok && a.track == t && n <= a.males
}

// expect takes over what is known of a birth to come.
func (t *track) expect(from *track) {
	t.matings = append(t.matings, from.matings...)
	t.undated = t.undated || from.undated
	for _, s := range []struct {
		to   *seen
		from seen
	}{{&t.gravid, from.gravid}, {&t.late, from.late}, {&t.laid, from.laid}} {
		if !s.to.ok {
			*s.to = s.from
		}
	}
}

// suspect takes over states of which it is not known whether those that came are in them.
func (t *track) suspect(from *track) {
	for _, s := range []struct {
		to   *seen
		from seen
	}{{&t.premoult, from.premoult}, {&t.hanging, from.hanging}, {&t.sealed, from.sealed}, {&t.sick, from.sick}, {&t.hurt, from.hurt}} {
		if !s.to.ok {
			*s.to = s.from
		}
	}
	if !t.course.ok {
		t.course = from.course
	}
	for i, x := range t.waiting() {
		*x.known = max(*x.known, min(*from.waiting()[i].known, t.now()))
	}
	t.unwell = max(t.unwell, from.unwell)
	t.ills, t.hurts = max(t.ills, min(from.ills, t.now())), max(t.hurts, min(from.hurts, t.now()))
	for _, h := range from.Holds {
		if (h.State.Name == schema.StateSoft.Name || h.State.Name == schema.StateHardening.Name) && h.Part {
			h.Part = t.now() > 1
			t.Holds = append(t.Holds, h)
		}
	}
}

// joins is the group of an enclosure that animals join: the one that is named, else
// one of their own kind and stage. It is nil where none fits them, or where the one that
// is named is of another kind: what is not alike is not counted together.
func (r *reader) joins(from *track, name string) *track {
	fits := func(t *track) bool {
		if t == from || t.Sheet != from.Sheet || t.Mother != nil {
			return false
		}
		a, b := t.stage().Stage, from.stage().Stage
		return t.now() == 0 || a == b || a == "" || b == ""
	}
	if name != "" {
		if t := r.track(name); t != nil && fits(t) {
			return t
		}
		return nil
	}
	if t := r.track(from.Animals.Name.V); t != nil && fits(t) {
		return t
	}
	for _, t := range r.tracks {
		if fits(t) && (t.now() > 0 || len(r.tracks) == 1) {
			return t
		}
	}
	for _, t := range r.tracks {
		if fits(t) {
			return t
		}
	}
	return nil
}

// carry takes over what is known of animals that came, all of a group.
func (t *track) carry(from *track, fresh bool) {
	t.expect(from)
	t.suspect(from)
	t.grewWith(from, fresh)
	if from.moult.ok && (!t.moult.ok || t.moult.on < from.moult.on) {
		t.moult = from.moult
	}
	if !fresh {
		return
	}
	t.before, t.moulted = from.before, from.moulted
	t.Weights, t.Moults = slices.Clone(from.Weights), slices.Clone(from.Moults)
	for _, h := range from.Holds {
		if h.Until > t.Since.V && slices.Contains([]string{schema.StateSoft.Name, schema.StateHardening.Name, schema.StateRefused.Name}, h.State.Name) && !h.Part {
			t.Holds = append(t.Holds, h)
		}
	}
}

// grewWith takes over what is true of each of a group, also of some that leave it: of
// what brood they are, and since when they have not eaten.
func (t *track) grewWith(from *track, fresh bool) {
	if fresh {
		t.of, t.orphan, t.entered = from.of, from.orphan, from.entered
		t.Fed, t.HasFed = from.Fed, from.HasFed
		t.refused, t.firstRefused, t.Refused = from.refused, from.firstRefused, from.Refused
		return
	}
	if b := from.of; b != nil && !(from.HasFed && b.first.ok && from.Fed >= b.first.on) {
		t.of = b // whether they have eaten is still to be asked
	}
}

// motherTrack is the group of the mother, while young are with her; else nil.
func (t *track) motherTrack() *track {
	if t.Mother == nil {
		return nil
	}
	return t.of.mother
}
