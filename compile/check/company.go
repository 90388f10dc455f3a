package check

import (
	"slices"
	"strconv"

	"vivary/compile/growth"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/wording"
)

// Who lives with whom. Separations, first meals and moults that the log gets wrong
// are found where the log is read; meals and work that a moult or a brood forbids
// are held back by the roster.
var company = []*Rule{
	{Enclosure: broodInGroup, Rule: finding.Rule{ID: "brood-in-group", Severity: finding.Error, Silence: finding.Never,
		Title:   "A female with young, or near birth, is among others.",
		Why:     "Others eat newborn young, and so does she under stress.",
		Source:  "lifeandscience.org/keepers/2011/05/18/scorplings, a museum's keeper; Polis & Farley 1979, Paruroctonus mesaensis",
		Instead: "Give her a box of her own, and log the move.",
		Now:     "gravid or with young among others: before the birth a box of her own, after it take the others out, not her; log where each is"}},
	{Enclosure: disturbed, Rule: finding.Rule{ID: "disturbing-held", Severity: finding.Error, Silence: finding.Never, Told: true,
		Title:   "Work that disturbs is fixed on a day on which the animals must be left alone.",
		Why:     "A gravid female that is disturbed may lose her young, and one with young may eat them; a soft animal is torn.",
		Source:  "thedailylink.com/thespiralburrow/features/keeping.html; pomoyemu.blogspot.com/2009/05/baby-scorpions.html",
		Instead: "Another day, after the hold."}},
	{Enclosure: keptAlone, Rule: finding.Rule{ID: "kept-alone", Severity: finding.Error, Silence: finding.Never,
		Title:   "Animals that are kept one to a box share one.",
		Why:     "One of them is eaten, sooner or later.",
		Source:  "libreddit.0x0c.link/r/Scorpions/wiki/scorpions/care; the species sheet",
		Instead: "A box for each. A rearing rack with a compartment for each is one enclosure with `places`.",
		Now:     "more than one, and they eat each other: part them now, and log where each is"}},
	{Enclosure: oneMale, Rule: finding.Rule{ID: "two-males", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "Two grown males are together in a species of one-male groups.",
		Why:     "They fight, and the weaker cannot leave.",
		Source:  "artsandculture.google.com/story/the-whip-spider; reptilien.hooxs.com, on leopard geckos",
		Instead: "One male with females, or a box for each.",
		Now:     "two grown males: part them now, and log where each is"}},
	{Enclosure: sexUnsaid, Rule: finding.Rule{ID: "sex-unsaid", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "The sexes of grown animals are not written, in a species of one-male groups.",
		Why:     "Two males fight, and the weaker cannot leave. Whether there are two cannot be told from a number.",
		Source:  "artsandculture.google.com/story/the-whip-spider; reptilien.hooxs.com, on leopard geckos",
		Instead: "The count as males.females.unsexed."}},
	{Enclosure: quarantineMixed, Rule: finding.Rule{ID: "quarantine-mixed", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "A new arrival shares its enclosure before its quarantine is over.",
		Why:     "Mites went from keeper to keeper on one tarantula.",
		Source:  "theraphosidresearchteam.com/general-arachnology/spiders-diseases/mite-treatment",
		Instead: "Another enclosure, best in another room, until quarantine ends.",
		Now:     "a new arrival is among others before its quarantine is over: own tools, nothing out of this box into another"}},
	{Enclosure: groupLarge, Rule: finding.Rule{ID: "group-large", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "The group is larger than is known to go well.",
		Why:     "Crowding and hunger lead to cannibalism.",
		Source:  "the species sheet",
		Instead: "Two groups."}},
	{Enclosure: mixedSizes, Rule: finding.Rule{ID: "mixed-sizes", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Small animals are together with much larger ones.",
		Why:     "Cannibalism of young by mothers and by larger siblings has been shown.",
		Source:  "Polis & Farley 1979, Paruroctonus mesaensis; lifeandscience.org/keepers/2011/05/18/scorplings",
		Instead: "One size to a box, a mother and her brood aside; none more than one and a half times as long as another."}},
	{Enclosure: softInGroup, Rule: finding.Rule{ID: "moult-in-group", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "An animal that is moulting, or is still soft, is among others of a species that does not live in groups.",
		Why:     "It cannot defend itself.",
		Source:  "scorpionforum.darkbb.com/t1846-molting-information-sheet",
		Instead: "Look in every day without digging; take the others out if they trouble it, never the one that moults."}},
	{Enclosure: nurseryFull, Rule: finding.Rule{ID: "nursery-full", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "More young are expected than there are places for.",
		Why:     "A laboratory had four hundred young and room for sixty.",
		Source:  "freethoughtblogs.com/pharyngula, a university's spider laboratory",
		Instead: "Boxes before the birth, a taker for the surplus, or no pairing."}},
	{Enclosure: stageUnknown, Rule: finding.Rule{ID: "stage-unknown", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "The stage of an animal is not known.",
		Why:     "Food, prey, floor and gaps depend on it. The strictest of all stages is taken.",
		Source:  "Francke & Jones 1982, J. Arachnol. 10:223-239: stages differ even between the sexes",
		Instead: "Write its stage, or its instar."}},
	{Enclosure: kinPaired, Rule: finding.Rule{ID: "kin-together", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "Males and females of one brood grow up together.",
		Why:     "They will pair.",
		Source:  "common practice, no source",
		Instead: "Part them by sex before they are adult, or write down that it is meant."}},
}

// mother returns the group with a brood, or nil.
func (e *Enclosure) mother() *life.Group {
	for _, g := range e.Life.Groups {
		if g.Brood && e.count(g) > 0 {
			return g
		}
	}
	return nil
}

// broodInGroup passes over a female whose mating is in the log: a question asks in time
// for a box of her own. Those that lay and have no part in their young stay where they are.
func broodInGroup(r *Rule, e *Enclosure) {
	if e.compartments() {
		return
	}
	for _, g := range e.Life.Groups {
		if !g.Brood && !g.Gravid || !g.Bears() || e.count(g) == 0 || e.asked(life.AboutBrood, g) {
			continue
		}
		others := e.count(g) - 1
		for _, o := range e.Life.Groups {
			if o != g && o.Mother != g && !small(e.stage(o)) {
				others += e.count(o)
			}
		}
		if others == 0 || !g.Brood && slices.ContainsFunc(g.Windows, func(w life.Window) bool { return w.Kind == life.BirthWindow }) {
			continue
		}
		x := finding.Finding{Rule: &r.Rule, At: e.carries(g), Source: r.Source, Write: "an enclosure of her own; in the log: moved and its name",
			Text: "a gravid female is among " + wording.Count(others, "other", "others") + ", and when she gives birth is not known"}
		if g.Brood {
			x.Text = "a female with young is among " + wording.Count(others, "other", "others")
		}
		e.Add(x)
	}
}

// carries is where it was written that a female is gravid or has young: in the plan, or
// in the log.
func (e *Enclosure) carries(g *life.Group) source.Place {
	if g.Animals.State.Set() {
		return g.Animals.State.At
	}
	for i := range g.Holds {
		if h := &g.Holds[i]; h.From <= e.Today && e.Today < h.Until && slices.Contains(breeding, h.State) {
			return h.At
		}
	}
	return origin(g)
}

// breeding are the states of a female that carries young or has them with her.
var breeding = []*schema.State{schema.StateGravid, schema.StateGravidLate, schema.StateBirth, schema.StateBrood, schema.StateSac, schema.StateYoungRound}

// disturbed finds work that was fixed on a day and is held on all of its days: the
// roster leaves it out, and the keeper means it to be done.
func disturbed(r *Rule, e *Enclosure) {
	for i := range e.Series {
		s := &e.Series[i]
		if !s.Kind.Disturbs() || s.Timing == nil || s.FromSheet || !fixed(s.Timing) || s.Days.Next(e.Horizon.Today) >= 0 {
			continue
		}
		for _, c := range s.Causes {
			if at := c.Days.Next(e.Horizon.Today); c.Why == roster.Held && at >= 0 && !c.Hold.Cool {
				e.Add(finding.Finding{Rule: &r.Rule, At: s.Origin, Source: r.Source, Write: "a day after that",
					Text:  s.Name + " is fixed on " + e.Horizon.Date(at).Words() + ", when they must be left alone: " + c.Hold.Why + ", " + c.Hold.End,
					First: []finding.First{{Text: "leave out " + s.Name + ": " + c.Hold.Why, Until: e.Horizon.Date(at) + 1}}})
				break
			}
		}
	}
}

// fixed reports whether a care is for a date, not for every so often.
func fixed(t *plan.Timing) bool {
	if t.From.Set() && t.Until.Set() {
		return true
	}
	for _, d := range t.On {
		if d.V.Kind == plan.DateOfYear {
			return true
		}
	}
	return false
}

func groupLarge(r *Rule, e *Enclosure) {
	f := e.figure(schema.FigureGroupMax)
	if n := e.total(); f != nil && float64(n) > f.Range.High && !e.compartments() {
		e.Add(finding.Finding{Rule: &r.Rule, At: e.together(), Text: strconv.Itoa(n) + " animals are together", Limit: e.limit(strconv.Itoa(int(f.Range.High))+" at the most", f), Source: e.Cite(f), Write: "two groups, each in an enclosure of its own"})
	}
}

// mixedSizes passes over species that eat no prey: their young and old live
// together.
func mixedSizes(r *Rule, e *Enclosure) {
	const most = 1.5
	if len(e.Life.Groups) < 2 || e.compartments() || !e.hunts() {
		return
	}
	withMother := e.mother() != nil
	var short, long *life.Group
	var low, high float64
	for _, g := range e.Life.Groups {
		stage := e.stage(g)
		if e.count(g) == 0 || stage == "newborn" || small(stage) && (withMother || g.Mother != nil || g.Hatchling(e.Today)) {
			continue
		}
		l := e.typicalLength(g)
		if short == nil || l < low {
			short, low = g, l
		}
		if long == nil || l > high {
			long, high = g, l
		}
	}
	if short == nil || short == long || high <= low*most {
		return
	}
	at, other := short, long
	if long.Logged {
		at, other = long, short
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: origin(at), Text: short.Animals.Name.V + " are much smaller than " + long.Animals.Name.V, Limit: "one and a half times as long at the most", Source: r.Source,
		Write: "an enclosure of their own", Also: []finding.Related{{At: origin(other), Text: "the others"}}})
}

// hunts reports whether prey is a meal for the species.
func (e *Enclosure) hunts() bool { return e.Sheet.Hunts() }

// typicalLength is the middle of the length of a group's animals. Where no figure
// is known, stages are taken to be half as long again as the one before.
func (e *Enclosure) typicalLength(g *life.Group) float64 {
	stage := e.stage(g)
	if l := g.Animals.Length; l.Set() {
		return l.V.Value
	}
	if f := e.of(schema.FigureLength, stage); f != nil && (len(f.Stages) > 0 || stage == "") {
		return (f.Range.Low + f.Range.High) / 2
	}
	grown := 100.0
	if f := e.of(schema.FigureLength, "adult"); f != nil {
		grown = (f.Range.Low + f.Range.High) / 2
	}
	switch stage {
	case "subadult":
		return grown / 1.4
	case "juvenile":
		return grown / 2.25
	case "young":
		return grown / 3.4
	}
	return grown
}

// moulting are the states in which an animal cannot defend itself.
var moulting = []*schema.State{schema.StatePremoult, schema.StateMoulting, schema.StateSoft, schema.StateHardening}

// softInGroup is not about species that live in groups, each of which moults among the
// others: the round says what to do. Nor is it about young with their mother, who moult on
// her or round her.
func softInGroup(r *Rule, e *Enclosure) {
	if e.compartments() || e.total() < 2 || e.keeping() == nil {
		return
	}
	for _, g := range e.Life.Groups {
		if e.count(g) == 0 || g.Brood || g.Mother != nil {
			continue
		}
		for i := range g.Holds {
			h := &g.Holds[i]
			if h.From > e.Today || e.Today >= h.Until || !slices.Contains(moulting, h.State) {
				continue
			}
			e.Add(finding.Finding{Rule: &r.Rule, At: origin(g), Text: "one of " + g.Animals.Name.V + " is soft or about to be (" + h.Why + "), and there are others with it",
				Source: r.Source, Write: "a care \"watch\" every day until " + min(h.Until, e.Today+14).Words(), Also: []finding.Related{{At: h.At, Text: "what was seen"}}})
			return
		}
	}
}

func nurseryFull(r *Rule, e *Enclosure) {
	size := e.figure(schema.FigureBroodSize)
	if size == nil || e.word(schema.FigureSeparation) != "separate" {
		return
	}
	for _, g := range e.Life.Groups {
		if !g.Gravid || e.count(g) == 0 {
			continue
		}
		young := int(size.Range.High) * max(1, min(g.Animals.Count.V.Females, e.count(g)))
		places := growth.Places(e.Collection.Plan, e.Sheet)
		if young <= places {
			continue
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: g.Animals.At, Text: "up to " + strconv.Itoa(young) + " young are to be expected, and there are " + strconv.Itoa(places) + " places for them",
			Limit: e.limit(size.Value.V+" young", size), Source: e.Cite(size), Write: strconv.Itoa(young) + " places, said by places in the housing of a nursery"})
		return
	}
}

func stageUnknown(r *Rule, e *Enclosure) {
	for _, g := range e.Life.Groups {
		if e.stage(g) == "" && e.count(g) > 0 && !e.Plan.Culture.V && !g.Animals.Stage.Bad && !g.Animals.Instar.Bad {
			e.Add(finding.Finding{Rule: &r.Rule, At: origin(g), Text: "the stage of " + g.Animals.Name.V + " is not known: the strictest limits of all stages hold", Source: r.Source, Write: "stage, or instar, with what they are in"})
		}
	}
}

func kinPaired(r *Rule, e *Enclosure) {
	for i, g := range e.Life.Groups {
		a := g.Animals
		if !a.Brood.Set() || e.count(g) == 0 || !nearlyGrown(e.stage(g)) {
			continue
		}
		for _, o := range e.Life.Groups[i:] {
			b := o.Animals
			if b.Brood.V != a.Brood.V || e.count(o) == 0 || !nearlyGrown(e.stage(o)) {
				continue
			}
			if a.Count.V.Males > 0 && b.Count.V.Females > 0 || a.Count.V.Females > 0 && b.Count.V.Males > 0 {
				e.Add(finding.Finding{Rule: &r.Rule, At: b.Brood.At, Text: "males and females of brood " + strconv.Quote(a.Brood.V) + " are together", Source: r.Source, Write: "enclosures of their own"})
				return
			}
		}
	}
}

func nearlyGrown(stage string) bool { return stage == "adult" || stage == "subadult" }
