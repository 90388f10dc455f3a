package check

import (
	"slices"
	"strconv"
	"strings"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// origin is where a group is from: the line of the log that made it, else its block.
func origin(g *life.Group) source.Place {
	if g.Logged && g.Since.At.Written() {
		return g.Since.At
	}
	return g.Animals.At
}

// together is where it was written that those who live here are together: the last line
// of the log that brought some, else the count of the first block.
func (e *Enclosure) together() source.Place {
	at, since := e.Life.Groups[0].Animals.Count.At, civil.Date(0)
	for _, g := range e.Life.Groups {
		if g.Since.At.Written() && g.Since.V >= since && e.count(g) > 0 && !e.withMother(g) {
			at, since = g.Since.At, g.Since.V
		}
	}
	return at
}

// withMother reports whether a group is young that are with their mother: before they are
// grown they are no company to her.
func (e *Enclosure) withMother(g *life.Group) bool { return g.Mother != nil && small(e.stage(g)) }

// changes are the days from today on on which a group comes into another stage, today
// first.
func (e *Enclosure) changes() []civil.Date {
	out := []civil.Date{e.Today}
	for _, g := range e.Life.Groups {
		for _, s := range g.Stages {
			if s.From > e.Today && s.From <= e.Horizon.Last() && !g.Logged {
				out = append(out, s.From)
			}
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// ahead finds what is so today, or will be once animals of the plan are in their next
// stage: then it is a caution, since there is time. What a brood of the log comes to is
// asked about when it has.
func (e *Enclosure) ahead(is func(on civil.Date) (finding.Finding, bool)) {
	for _, on := range e.changes() {
		f, bad := is(on)
		switch {
		case !bad:
		case on == e.Today:
			e.Add(f)
			return
		default:
			f.Text += ", from " + on.Words() + " on"
			e.Soft(f, finding.Caution)
			return
		}
	}
}

// asked reports whether the log asks for what a rule of company finds: then nothing more
// is said. What the plan itself writes the rule finds all the same.
func (e *Enclosure) asked(about life.About, g *life.Group) bool {
	return e.Life.Asked(about, g, e.Today) && (about != life.AboutCompany || e.Life.Together() < 2)
}

func keptAlone(r *Rule, e *Enclosure) {
	f := e.keeping()
	if f == nil || e.compartments() || e.asked(life.AboutCompany, e.Life.Groups[0]) {
		return
	}
	keeping := f.Words[0]
	e.ahead(func(on civil.Date) (finding.Finding, bool) {
		grown, young := e.company(on)
		if keeping != "alone" && grown == 1 || grown+young < 2 {
			return finding.Finding{}, false
		}
		return finding.Finding{Rule: &r.Rule, At: e.together(), Text: strconv.Itoa(grown+young) + " animals share a box, and " + e.Sheet.Name.V + " is kept one to a box",
			Limit: e.limit(keeping, f), Source: e.Cite(f), Write: "an enclosure for each"}, true
	})
}

// keeping returns the figure that says that they are kept one to a box, or nil. A sheet of
// the collection's own that says otherwise of animals that eat each other is a caution of
// its own; it does not make them live together.
func (e *Enclosure) keeping() *plan.Figure {
	out := e.figure(schema.FigureKeeping)
	if base := e.Collection.Plan.Library.Against(e.Sheet.Name.V); base != nil {
		if b := base.Figure(schema.FigureKeeping, ""); b != nil && (out == nil || weaker(out, b)) {
			out = b
		}
	}
	if out == nil || len(out.Words) == 0 || strings.HasPrefix(out.Words[0], "groups") {
		return nil
	}
	return out
}

// company counts those who share the box on a day. Newborn young do not count, nor do
// young that are with their mother.
func (e *Enclosure) company(on civil.Date) (grown, young int) {
	for _, g := range e.Life.Groups {
		switch stage, n := g.Stage(on), e.countOn(g, on); {
		case stage == "newborn", stage == "young" && g.Mother != nil, g.Hatchling(on):
		case stage == "young":
			young += n
		default:
			grown += n
		}
	}
	return grown, young
}

// oneMale finds grown males together, and cautions of those who will be at their next
// moult.
func oneMale(r *Rule, e *Enclosure) {
	if e.word(schema.FigureKeeping) != "groups of one male" || e.compartments() {
		return
	}
	grown, soon := 0, 0
	at := e.Life.Groups[0].Animals.Count.At
	for _, g := range e.Life.Groups {
		males := min(g.Animals.Count.V.Males, e.count(g))
		switch e.stage(g) {
		case "adult", "":
			grown += males
		case "subadult":
			soon += males
		default:
			continue
		}
		if males > 0 && grown+soon > 1 {
			if at = g.Animals.Count.At; g.Logged {
				at = origin(g)
			}
		}
	}
	f := e.figure(schema.FigureKeeping)
	x := finding.Finding{Rule: &r.Rule, At: at, Limit: e.limit("one male to a group", f), Source: e.Cite(f), Write: "one male to a group, and another enclosure for the others"}
	switch {
	case grown > 1:
		x.Text = strconv.Itoa(grown) + " grown males are together"
		e.Add(x)
	case grown+soon > 1:
		x.Text = strconv.Itoa(grown+soon) + " males will be together once " + wording.Count(soon, "subadult one is", "subadult ones are") + " grown"
		e.Soft(x, finding.Caution)
	}
}

// sexUnsaid asks for the sexes where two of the grown animals of the plan may be males.
func sexUnsaid(r *Rule, e *Enclosure) {
	if e.word(schema.FigureKeeping) != "groups of one male" || e.compartments() {
		return
	}
	males, unsexed, at := 0, 0, source.Place{}
	for _, g := range e.Life.Groups {
		stage, n, c := e.stage(g), e.count(g), g.Animals.Count
		if n == 0 || stage != "adult" && stage != "" {
			continue
		}
		males += min(c.V.Males, n)
		if more := min(c.V.Unsexed, n); more > 0 && !g.Logged {
			unsexed, at = unsexed+more, c.At
		}
	}
	if unsexed == 0 || males+unsexed < 2 || males > 1 {
		return
	}
	f := e.figure(schema.FigureKeeping)
	text := wording.Count(unsexed, "grown animal is", "grown animals are") + " of unknown sex"
	if males > 0 {
		text += ", beside a male"
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: at, Text: text, Limit: e.limit("one male to a group", f), Source: e.Cite(f), Write: "count with males and females as they are, written males.females"})
}

// quarantineMixed passes over a mother with her own young, who are in it together.
func quarantineMixed(r *Rule, e *Enclosure) {
	for _, g := range e.Life.Groups {
		if g.Quarantined <= e.Today || g.Count(e.Today) == 0 {
			continue
		}
		for _, o := range e.Life.Groups {
			if o == g || o.Mother == g || g.Mother == o || o.Count(e.Today) == 0 || o.Quarantined == g.Quarantined {
				continue
			}
			at := g.Animals.Arrived.At
			if !at.Written() || g.Logged {
				at = origin(g)
			}
			e.Add(finding.Finding{Rule: &r.Rule, At: at, Text: g.Animals.Name.V + " are in quarantine until " + g.Quarantined.Words() + ", and share their enclosure with " + o.Animals.Name.V, Source: r.Source,
				Write: "an enclosure of their own until then", Also: []finding.Related{{At: origin(o), Text: "the others"}}})
			return
		}
	}
}
