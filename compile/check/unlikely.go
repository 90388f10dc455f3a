package check

import (
	"slices"
	"strconv"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// What is written of young and cannot well be so. It is asked, since who saw it may be
// right and the plan wrong.
var unlikely = []*Rule{
	{Collection: youngUnlikely, Rule: finding.Rule{ID: "young-unlikely", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Young are written of animals that cannot have them, or not in this way.",
		Why:     "What follows from it, holds for months and meals that are left out, is for the wrong animals.",
		Source:  "the plan's count and stage; the species sheet, which has a time for a sac or one for young that are carried",
		Instead: "Withdraw the line if another box was meant, or mend count or stage in the plan."}},
	{Enclosure: bornAhead, Rule: finding.Rule{ID: "born-ahead", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Animals are kept that are said to be born on a day still ahead.",
		Why:     "Their age decides about meals, moults and rest; with a slip in the year all of that is reckoned wrongly, or not at all.",
		Source:  "the date in the plan",
		Instead: "Write the day of their birth; leave born out where it is not known."}},
}

func bornAhead(r *Rule, e *Enclosure) {
	for _, g := range e.Life.Groups {
		if b := g.Animals.Born; !g.Logged && b.Set() && b.V > e.Today {
			e.Add(finding.Finding{Rule: &r.Rule, At: b.At, Source: r.Source,
				Text:  g.Animals.Name.V + ": born is " + b.V.Words() + ", which is still ahead",
				Write: "the day of their birth; or no born, where it is not known"})
		}
	}
}

// ofMothers are the words of the log about what only a grown female does, and ofGrown
// those about what only grown animals do.
var (
	ofMothers = []*schema.LogWord{schema.WordGravid, schema.WordLate, schema.WordLaid, schema.WordBorn}
	ofGrown   = append(slices.Clone(ofMothers), schema.WordMated)
)

func youngUnlikely(r *Rule, c *Collection) {
	for _, l := range c.Lives {
		for _, g := range l.Groups {
			s := g.Animals.State
			if !s.Set() || g.Logged {
				continue
			}
			if why, write := cannot(l, g.Animals.Name.V, c.Today, true); why != "" {
				c.Add(finding.Finding{Rule: &r.Rule, At: s.At, In: l.Plan.Box(), Source: r.Source,
					Text: g.Animals.Name.V + " are called " + strconv.Quote(s.V) + ", and " + why, Write: "no state here; or " + write})
			}
		}
	}
	for i := range c.Plan.Log {
		x := &c.Plan.Log[i]
		if x.Word == nil || !slices.Contains(ofGrown, x.Word) && x.Word != schema.WordHatched {
			continue
		}
		l := c.life(x.Enclosure.V)
		if l == nil {
			continue
		}
		why, write := otherwise(l.Plan.Sheet, x.Word)
		if why == "" && x.Word != schema.WordHatched {
			why, write = cannot(l, x.Group.V, x.Date, slices.Contains(ofMothers, x.Word))
		}
		if why != "" {
			c.Add(finding.Finding{Rule: &r.Rule, At: x.At, In: l.Plan.Box(), Source: r.Source, Text: strconv.Quote(x.Word.Name) + " of " + x.Enclosure.V + ": " + why,
				Write: "in the log withdrawn " + x.Word.Name + ", if it was not that; or " + write})
		}
	}
}

// life returns the life of the enclosure of a name, or nil.
func (c *Collection) life(name string) *life.Enclosure {
	if c.byName == nil {
		c.byName = make(map[string]*life.Enclosure, len(c.Lives))
		for _, l := range c.Lives {
			c.byName[l.Plan.Name.V] = l
		}
	}
	return c.byName[name]
}

// otherwise says that a species has its young in another way than a word of the log says.
func otherwise(s *plan.SpeciesSheet, w *schema.LogWord) (why, write string) {
	if s == nil {
		return "", ""
	}
	eggs, carried := s.Figure(schema.FigureSacTime, "adult") != nil, s.Figure(schema.FigureGestation, "adult") != nil
	switch {
	case (w == schema.WordLaid || w == schema.WordHatched) && carried && !eggs:
		return s.Name.V + " lays no eggs: its young are born. Is this the right box?", "born"
	case w == schema.WordBorn && eggs && !carried && s.Figure(schema.FigureOnMother, "newborn") == nil && s.Figure(schema.FigureOnMother, "adult") == nil:
		return s.Name.V + " lays eggs: its young hatch. Did they?", "hatched"
	}
	return "", ""
}

// cannot says why animals of an enclosure, all or those of one name, cannot have young on a
// day: none of them is grown or, of what only a mother does, a female.
func cannot(l *life.Enclosure, name string, on civil.Date, mother bool) (why, write string) {
	any, males, small := 0, 0, 0
	for _, g := range l.Groups {
		n, a := g.Count(on), g.Animals
		if n == 0 || g.Mother != nil || name != "" && a.Name.V != name || g.Logged && g.Since.V == on {
			continue
		}
		any++
		if k := a.Count.V; !g.Logged && k.Males > 0 && k.Total() == k.Males && n <= k.Males {
			males++
		}
		switch g.Stage(on) {
		case "newborn", "young", "juvenile":
			small++
		}
	}
	switch {
	case any == 0:
		return "", ""
	case any == small:
		return "none of them is grown. Another box?", "adult as stage in the plan"
	case mother && any == males:
		return "they are males by the plan. Another box, or a female after all?", "0.1.0 as count in the plan"
	}
	return "", ""
}
