package life

import (
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// together is for how many days after they hatched young may share a box where the sheet
// does not say. Slings and nymphs are parted when they begin to hunt each other, weeks
// after they are free (common practice, no source).
const together = 30

// looseFor is for how many days the substrate is left where young of a kind that eats no
// prey have hatched in it; a hunter's are loose in it for as long as they are small
// (common practice, no source).
const looseFor = 90

// Hatchling reports whether the group is a brood of the log that is so young that all of
// it may still be in one box. It is then no company, and takes no room to speak of. Young
// that are free and in the box of their mother are that for as long as they are small: they
// stay by their sheet, or the log asks for them to be taken out.
func (g *Group) Hatchling(on civil.Date) bool {
	if g.Born == 0 || g.Sheet == nil {
		return false
	}
	if stage := g.Stage(on); stage != newborn && stage != "young" {
		return false
	}
	if g.Beside {
		return true
	}
	return on < after(g.Born, spanOf(g.Sheet.Figure(schema.FigureSeparateWithin, "young")).or(together).high)
}

// looseHolds are what is held for young that hatched here and are loose in the box. Those
// that ride on their mother are that once she is left in peace no more.
func (r *reader) looseHolds(t *track) []Hold {
	b := t.of
	if b == nil || !b.born.ok || t.Since.V != b.born.on && b.mother != t || r.boxes() {
		return nil
	}
	hold := Hold{State: r.state(t, schema.StateYoungLoose), From: b.born.on, Until: r.h.Last() + 1, Open: true, At: b.born.at,
		Why: "young loose since " + dated(b.born.on), End: "until they are moved or half grown"}
	for _, h := range r.broodHolds(b.mother, b) {
		if h.State.Name != schema.StateAfterBrood.Name {
			hold.From = max(hold.From, h.Until)
		}
	}
	switch {
	case t.apart():
		hold.End = "until separated is logged"
	case !t.hunts():
		hold.Until, hold.Open = after(hold.From, looseFor), false
		hold.End = wording.Until(hold.Until)
	}
	out := []Hold{hold}
	if t.stray.ok {
		ended(out, t.stray.on)
	}
	for _, s := range t.Stages {
		if age(s.Stage) > age("young") {
			ended(out, s.From)
		}
	}
	return out
}

// looseHere is about young that are loose in the box that they hatched in, and what is to
// become of them where it is that of their mother.
func (r *reader) looseHere(t *track) {
	holds := r.looseHolds(t)
	t.Holds = append(t.Holds, holds...)
	b := t.of
	if len(holds) == 0 || !holds[0].Open && t.hunts() || t.Bears() || b.mother == t || b.mother.home != r || b.mother.now() == 0 {
		return
	}
	t.Beside = t.apart() || t.Sheet.Is(schema.FigureSeparation, "keep with mother")
	if t.apart() {
		r.takeYoung(t, b)
	}
}

// hunts reports whether young eat others: those that do not find their leaves and wood
// where they hatch.
func (t *track) hunts() bool {
	return t.Bears() || t.days(schema.FigureFirstMeal, "young").ok
}

// takeYoung asks for young that are free from the first day on to be taken from their
// mother: at once, where she has no part in them and hunts them like anything else; of
// those that guard their eggs as other young that are taken out.
func (r *reader) takeYoung(t *track, b *brood) {
	by, young := b.born.on, r.young(t)
	if r.fasts(b.mother) {
		from := by
		if _, hold := r.reserves(t); hold.State != nil && hold.Out(schema.RowRehouse) { // first they are left alone
			from = hold.Until
		}
		by = max(after(by, tooLong), from+1)
		t.Tasks = append(t.Tasks, Task{Name: "separate/" + b.name(), Kind: schema.KindSeparate, On: from, Interval: 1, Times: int(by - from), Text: "separate the young, from " + from.Words(), At: b.born.at})
	}
	r.out.Asks = append(r.out.Asks, Ask{Name: "young-out/" + b.name(), About: AboutCompany, Kind: schema.KindSeparate, From: by, Every: 1, Urgent: true, Harm: HarmBirth, At: b.born.at,
		Text:  "take the " + young + " out, away from the grown; log " + t.called() + " separated, how many and to where",
		Short: "take the young out, away from the grown; log young separated, how many and to where", Aside: young,
		Said:  t.Animals.Shown() + " are loose in the box of their mother, and young of " + t.kind() + " are taken out",
		Limit: "separation = \"separate\", species sheet " + t.Sheet.Name.V, Write: t.called() + " separated, how many and the enclosure that they went to"})
}

// cameOut is young that came out of a sac or a clutch where nobody lived till then: in the
// cup to which the sac was taken.
func (r *reader) cameOut(t *track, e *plan.Event) {
	n, ok := r.howMany(e, 0, mostBorn)
	if !ok {
		return
	}
	b := &brood{mother: t, young: t, born: see(e), last: e.Date, number: r.likely(t, n, e), separated: see(e)}
	as := Stretch{Stage: newborn, Instar: 1}
	if !t.Bears() {
		as, b.first = Stretch{Stage: "young", Instar: 2}, b.born // what leaves the sac is free
	}
	t.enter(as, e.Date)
	t.of = b
	t.number(see(e), r.size(b), Born, nil)
}
