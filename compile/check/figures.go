package check

import (
	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// facts are what a sheet states, by figure. Rules ask for some forty of them in
// every enclosure, and a sheet has a hundred.
type facts map[*schema.Figure][]*plan.Figure

func factsOf(s *plan.SpeciesSheet) facts {
	f := make(facts, len(s.Figures))
	for _, x := range s.Figures {
		if !x.Instar.Set() {
			f[x.What] = append(f[x.What], x)
		}
	}
	return f
}

// figure returns what the sheet states of the species as a whole, or nil.
func (e *Enclosure) figure(what *schema.Figure) *plan.Figure { return e.of(what, "") }

// of returns the figure that holds for a stage: the one that names it, else the
// one for all stages, else nil.
func (e *Enclosure) of(what *schema.Figure, stage string) *plan.Figure {
	var general *plan.Figure
	for _, f := range e.facts[what] {
		if len(f.Stages) == 0 {
			general = f
		} else if stage != "" && plan.Lists(f.Stages, stage) {
			return f
		}
	}
	return general
}

// most returns the figure for a stage; where the stage is not known, the largest
// of all stages. It is for what there must be enough of.
func (e *Enclosure) most(what *schema.Figure, stage string) *plan.Figure {
	return e.strictest(what, stage, func(f, best *plan.Figure) bool { return f.Range.Low > best.Range.Low })
}

// least is most for what there must not be too much of.
func (e *Enclosure) least(what *schema.Figure, stage string) *plan.Figure {
	return e.strictest(what, stage, func(f, best *plan.Figure) bool { return f.Range.High < best.Range.High })
}

func (e *Enclosure) strictest(what *schema.Figure, stage string, stricter func(f, best *plan.Figure) bool) *plan.Figure {
	if stage != "" {
		return e.of(what, stage)
	}
	var best *plan.Figure
	for _, f := range e.facts[what] {
		if best == nil || stricter(f, best) {
			best = f
		}
	}
	return best
}

// word returns the word that the sheet states, or "".
func (e *Enclosure) word(what *schema.Figure) string {
	if f := e.figure(what); f != nil && len(f.Words) > 0 {
		return f.Words[0]
	}
	return ""
}

// true reports whether the sheet states that it is so.
func (e *Enclosure) true(what *schema.Figure) bool {
	f := e.figure(what)
	return f != nil && f.Truth
}

// limit names a figure as the limit that was passed, such as "35 C at the most,
// temperature-hard of pandinus-imperator".
func (e *Enclosure) limit(text string, f *plan.Figure) string {
	text += ", " + f.Name.V + " of " + f.Whose(e.Sheet)
	if len(f.Stages) > 0 {
		text += " for stage " + f.Stages[0].V
		for _, s := range f.Stages[1:] {
			text += ", " + s.V
		}
	}
	return text
}

// atMost names an upper limit. In the unit in which the figure is stated it is that very
// number; in another it is rounded to the side of the limit.
func (e *Enclosure) atMost(v float64, u quantity.Unit, f *plan.Figure) string {
	if v == f.Range.High && u == f.Range.Unit {
		return e.limit(f.Range.HighQ().String()+" at the most", f)
	}
	return e.limit(wording.AtMost(v, u), f)
}

// atLeast is atMost for a lower limit.
func (e *Enclosure) atLeast(v float64, u quantity.Unit, f *plan.Figure) string {
	if v == f.Range.Low && u == f.Range.Unit {
		return e.limit(f.Range.LowQ().String()+" at the least", f)
	}
	return e.limit(wording.AtLeast(v, u), f)
}

// within is atMost for both limits.
func (e *Enclosure) within(r quantity.Range, u quantity.Unit, f *plan.Figure) string {
	if r == f.Range && u == r.Unit {
		return e.limit(r.String(), f)
	}
	return e.limit(quantity.FormatRange(r.Low, r.High, u), f)
}

// in is the unit in which the keeper is told what is stated in another: a figure of a sheet,
// or what physics reckons. What the keeper wrote is told in the unit in which it is written.
func (e *Enclosure) in(u quantity.Unit) quantity.Unit { return e.Plan.Units.Of(u) }

// stage returns the stage of a group today, or "".
func (e *Enclosure) stage(g *life.Group) string { return g.Stage(e.Today) }

// count returns how many of a group there are today. Animals of another species that
// the log brought are none: a rule says that they are to go, and no other speaks of them.
// So are those that were taken out to where nobody said.
func (e *Enclosure) count(g *life.Group) int { return e.countOn(g, e.Today) }

func (e *Enclosure) countOn(g *life.Group, on civil.Date) int {
	if g.Sheet != e.Sheet || g.Strayed() {
		return 0 // not of this kind, or taken out, and nobody said where to
	}
	return g.Count(on)
}

// total returns how many animals live here today, without newborns, and without young
// that are with their mother or have just hatched. Of those that eat no prey only the grown count.
func (e *Enclosure) total() int {
	n := 0
	for _, g := range e.Life.Groups {
		if e.stage(g) != "newborn" && !e.withMother(g) && !g.Hatchling(e.Today) && (e.hunts() || !small(e.stage(g))) {
			n += e.count(g)
		}
	}
	return n
}

// small reports whether a stage is that of the smallest animals.
func small(stage string) bool { return stage == "newborn" || stage == "young" }

// bodyLength returns the length of the animals of a group: as written, else as the
// sheet has it for their stage. A scorpion's in the sheet is with its tail.
func (e *Enclosure) bodyLength(g *life.Group) (quantity.Range, bool) {
	if l := g.Animals.Length; l.Set() {
		return quantity.Range{Low: l.V.Value, High: l.V.Value, Unit: l.V.Unit}, true
	}
	if f := e.least(schema.FigureLength, e.stage(g)); f != nil {
		return f.Range, true
	}
	return quantity.Range{}, false
}

// bodyMass is bodyLength for the weight; the last in the log counts first.
func (e *Enclosure) bodyMass(g *life.Group) (quantity.Range, bool) {
	m := g.Weight()
	if !m.At.Written() {
		m = g.Animals.Mass
	}
	if m.Set() {
		return quantity.Range{Low: m.V.Value, High: m.V.Value, Unit: m.V.Unit}, true
	}
	if f := e.least(schema.FigureMass, e.stage(g)); f != nil {
		return f.Range, true
	}
	return quantity.Range{}, false
}

// judgement is how bad it is that a value is past a figure.
type judgement struct {
	how    finding.Severity
	beyond bool // of a type: it is wrong for every member
	bad    bool
}

// judged judges a value by a figure. What a species states judges at the rule's own
// severity. A type has two values: between what suits every member and what is wrong for
// every member it is not known for a species.
func judged(r *Rule, f *plan.Figure, past func(limit quantity.Range) bool) judgement {
	if !past(f.Range) {
		return judgement{}
	}
	if f.OfType == "" {
		return judgement{how: r.Severity, bad: true}
	}
	j := judgement{how: finding.Caution, beyond: f.Beyond.High > 0 && past(f.Beyond), bad: true}
	switch f.Harm.V {
	case "comfort":
		j.how, j.bad = finding.Advice, j.beyond
	case "harms":
		if !j.beyond {
			j.how = finding.Advice
		}
	default:
		if j.beyond {
			j.how = r.Severity
		}
	}
	return j
}

// worst judges a value by the figure of a stage; where the stage is not known by those of
// all stages, and returns the one by which it is worst.
func (e *Enclosure) worst(r *Rule, what *schema.Figure, stage string, past func(limit quantity.Range) bool) (by *plan.Figure, worst judgement) {
	if stage != "" {
		if by = e.of(what, stage); by != nil {
			worst = judged(r, by, past)
		}
		return by, worst
	}
	for _, f := range e.facts[what] {
		if j := judged(r, f, past); j.bad && (!worst.bad || j.how > worst.how) {
			by, worst = f, j
		}
	}
	return by, worst
}

// judge adds what was judged. What a type says is said with both of its values.
func (e *Enclosure) judge(j judgement, f *plan.Figure, x finding.Finding) {
	if f.OfType != "" {
		x.Limit = f.Told(e.Plan.Units) + " suits every one"
		if f.Wrong.Set() {
			x.Limit += ", " + f.ToldWrong(e.Plan.Units) + " is wrong for any"
		}
		x.Limit = e.limit(x.Limit, f)
		if !j.beyond {
			x.Text += "; whether it is so for this species is not known"
		}
	}
	if j.how == x.Rule.Severity {
		e.Add(x)
		return
	}
	e.Soft(x, j.how)
}
