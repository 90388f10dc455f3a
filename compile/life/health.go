package life

import (
	"strconv"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// course is a treatment that a veterinarian ordered.
type course struct {
	seen
	days int
	note string
}

// loose is animals that are out of their enclosure.
type loose struct {
	seen
	from *track
	n    int
}

func (r *reader) ill(t *track, e *plan.Event) {
	n, ok := r.howMany(e, 1, t.now())
	if !ok {
		return
	}
	if !t.sick.ok {
		t.sick = see(e)
	}
	t.unwell = e.Date
	t.ills = min(t.ills+n, t.now())
}

func (r *reader) injured(t *track, e *plan.Event) {
	n, ok := r.howMany(e, 1, t.now())
	if !ok {
		return
	}
	if !t.hurt.ok {
		t.hurt = see(e)
	}
	t.unwell = e.Date
	t.hurts = min(t.hurts+n, t.now())
}

func (r *reader) recovered(t *track, e *plan.Event) {
	n, ok := r.howMany(e, t.now(), t.now())
	if !ok {
		return
	}
	if t.ills, t.hurts = t.ills-n, t.hurts-n; t.ills > 0 || t.hurts > 0 {
		return // others are not well yet
	}
	for _, o := range append(r.twins(t, func(x *track) []seen { return []seen{x.sick, x.hurt} }), t) {
		o.ills, o.hurts = 0, 0
		holds := r.healthHolds(o)
		ended(holds, e.Date)
		o.Holds = append(o.Holds, holds...)
		o.sick, o.hurt, o.course = seen{}, seen{}, course{}
	}
}

// treated is one treatment, or the first day of a course of so many.
func (r *reader) treated(t *track, e *plan.Event) {
	if n := int(e.Number.V); e.Number.Set() && n > 0 {
		if t.course.ok {
			hold := r.courseHold(t)
			hold.Until = min(hold.Until, e.Date)
			t.Holds = append(t.Holds, hold)
		}
		t.course = course{see(e), min(n, 365), e.Note}
	}
}

// health says what illness asks for.
func (r *reader) health(t *track) {
	t.Holds = append(t.Holds, r.healthHolds(t)...)
	for _, s := range []struct {
		seen
		word string
	}{{t.sick, "ill"}, {t.hurt, "injured"}} {
		if s.ok {
			r.unwell(t, s.word, s.seen)
		}
	}
	if c := t.course; c.ok {
		text := "treatment"
		if c.note != "" {
			text += ": " + c.note
		}
		t.Tasks = append(t.Tasks, Task{Name: "treatment/" + c.on.String(), Kind: schema.KindTreat, On: c.on, Interval: 1, Times: c.days, High: true,
			Text: text + " (" + wording.Days(c.days) + " from " + c.on.Words() + ")", At: c.at})
	}
}

// daily is for how many days it is asked each day how one that is ill is, and then each
// week: a question that stands for months is not read (common practice, no source).
const daily = 14

// unwell asks how one is that is ill or injured, until it is answered.
func (r *reader) unwell(t *track, word string, s seen) {
	from := s.on
	if c := t.course; c.ok && c.on >= s.on {
		from = c.on + civil.Date(c.days) // until then the treatment stands in the round
	}
	since := "since " + s.on.Words()
	a := Ask{Name: word + "/" + s.on.String(), From: from, Until: max(from, t.unwell) + daily, Every: 1, Urgent: true, Harm: HarmIll, At: s.at,
		Text:  word + " " + since + ": how is it? ring a veterinarian; log recovered, treated or died",
		Short: word + ": how is it? ring a veterinarian; log recovered, treated or died", Aside: since,
		Said:  t.Animals.Name.V + " is " + word + " since " + s.on.Words(),
		Write: "recovered, treated and how many days, or died"}
	t.Asks = append(t.Asks, a)
	a.Name, a.From, a.Until, a.Every = word+"-still/"+s.on.String(), a.Until, 0, 7
	t.Asks = append(t.Asks, a)
}

func (r *reader) healthHolds(t *track) (out []Hold) {
	open := func(s seen, state *schema.State, why string) {
		if s.ok {
			out = append(out, Hold{From: s.on, Until: r.h.Last() + 1, Open: true, State: r.state(t, state), Part: t.now() > 1,
				Why: why + " since " + dated(s.on), End: "until recovered is logged", At: s.at})
		}
	}
	open(t.sick, schema.StateIll, "ill")
	open(t.hurt, schema.StateInjured, "injured")
	if t.course.ok {
		out = append(out, r.courseHold(t))
	}
	return out
}

func (r *reader) courseHold(t *track) Hold {
	c := t.course
	until := c.on + civil.Date(c.days)
	return Hold{From: c.on, Until: until, State: r.state(t, schema.StateTreated), Part: t.now() > 1, Why: "treated since " + dated(c.on), End: wording.Until(until), At: c.at}
}

// escaped takes animals out of a group that are somewhere, and are looked for.
func (r *reader) escaped(t *track, e *plan.Event) {
	n, ok := r.howMany(e, 1, t.now())
	if !ok || n == 0 {
		return
	}
	if last := len(r.loose) - 1; last >= 0 && r.loose[last].from == t && r.loose[last].on == e.Date {
		r.loose[last].n += n // one search, for all of them
	} else {
		r.loose = append(r.loose, loose{see(e), t, n})
	}
	r.bereave(t, n, e)
	r.lose(t, e, n, Escaped, nil)
}

// away is how many of a group are loose.
func (r *reader) away(t *track) (n int) {
	for _, x := range r.loose {
		if x.from == t {
			n += x.n
		}
	}
	return n
}

// foundDead is animals of a group that had escaped.
func (r *reader) foundDead(t *track, e *plan.Event) {
	n, ok := r.howMany(e, 1, r.away(t))
	for i := range r.loose {
		if x := &r.loose[i]; ok && x.from == t {
			gone := min(n, x.n)
			x.n -= gone
			n -= gone
			if gone > 0 {
				t.turn(see(e), gone, Found, nil)
				t.turn(see(e), -gone, Died, nil)
			}
		}
	}
}

// foundAgain is what had escaped and is back: the last who did first.
func (r *reader) foundAgain(t *track, e *plan.Event) {
	n, ok := r.howMany(e, 1, r.away(t))
	if !ok {
		return
	}
	if r.away(t) == 0 {
		r.found.Add(finding.Finding{Rule: ruleGone, At: e.At, Text: "none of " + t.Animals.Name.V + " have escaped from " + e.Enclosure.V + ", as far as the log says",
			Write: "the enclosure that it escaped from; then moved, where it is kept elsewhere now"})
		return
	}
	for i := len(r.loose) - 1; i >= 0 && n > 0; i-- {
		if x := &r.loose[i]; x.n > 0 && x.from == t {
			back := min(n, x.n)
			x.n -= back
			n -= back
			x.from.number(see(e), x.from.now()+back, Found, nil)
		}
	}
}

// search asks for what is loose, each day.
func (r *reader) search() {
	for _, x := range r.loose {
		if x.n == 0 {
			continue
		}
		who := strconv.Itoa(x.n) + " of " + x.from.Animals.Name.V
		r.out.Loose += x.n
		r.out.Asks = append(r.out.Asks, Ask{Name: "loose/" + x.from.Animals.Name.V + "/" + x.on.String(), From: x.on, Every: 1, Urgent: true, Harm: HarmEscaped, At: x.at,
			Text:  wording.Animals(x.n) + " out since " + x.on.Words() + ": search after dark by torch, behind heaters; lid, gaps; log found or died",
			Short: "out of the box: search after dark by torch, behind heaters; lid, gaps; log found or died", Aside: who + ", since " + x.on.Words(),
			Said:  who + " escaped on " + x.on.Words() + " and " + wording.Noun(x.n, "was", "were") + " not found",
			Write: "found, or died, and how many"})
	}
}
