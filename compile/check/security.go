package check

import (
	"slices"
	"strconv"

	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// That somebody looks at every lid on every day is for the proof to show.
var security = []*Rule{
	{Enclosure: venomUnlocked, Rule: finding.Rule{ID: "venom-unlocked", Severity: finding.Danger, Silence: finding.Never,
		Title:   "A species whose venom is a danger to life is not behind two locks.",
		Why:     "A locked box in a locked room without gaps is the pattern of official guidance, written for snakes.",
		Source:  "studylib.net/doc/7599835, dangerous wild animals, Northern Ireland order 2004; arachnoboards.com/threads/safety-precautions.29291",
		Instead: "A lid with a lock, and a room that is kept locked. Local law may ask for more: look it up."}},
	{Enclosure: venomUntrained, Rule: finding.Rule{ID: "venom-untrained", Severity: finding.Danger, Silence: finding.Never,
		Title:   "Somebody who is not trained for it looks after a species whose venom is a danger to life.",
		Why:     "Stings and bites happen through inattention and for want of practice.",
		Source:  "docslib.org/doc/2943989, Safe laboratory management for arachnids of medical importance, 2011",
		Instead: "Have it done by somebody who is. In an absence a stand-in leaves it shut, and somebody who is trained is there to be rung; write trained = \"venom\" only of those who are."}},
	{Enclosure: lidLoose, Rule: finding.Rule{ID: "lid-loose", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The lid is not held shut.",
		Why:     "Scorpions and spiders lift a lid that merely lies on top.",
		Source:  "the species sheet; arachnoboards.com/threads/safety-precautions.29291",
		Instead: "A latch, a clip or a lock."}},
	{Enclosure: gapWide, Rule: finding.Rule{ID: "gap-wide", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "An opening is wide enough for the smallest animal to leave.",
		Why:     "Young leave through vents; a breeder has had breakouts.",
		Source:  "virginiacheeseman.co.uk/spring-next-month, a professional breeder's diary; the species sheet",
		Instead: "Finer mesh."}},
	{Enclosure: gapUnsaid, Rule: finding.Rule{ID: "gap-unsaid", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A lid is of mesh, and how wide the mesh is, is not said.",
		Why:     "Young leave through it; legs are caught in it.",
		Source:  "virginiacheeseman.co.uk/spring-next-month, a professional breeder's diary",
		Instead: "Write the widest opening."}},
	{Enclosure: handledFreely, Rule: finding.Rule{ID: "handled", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "An animal that stings, bites or throws hairs is taken into the hand without a reason.",
		Why:     "Falls injure it, and stings happen through inattention.",
		Source:  "scorpionpictureguide.com/pet-scorpion-sting-handling; keepingexoticpets.com/how-to-handle-scorpions-safely",
		Instead: "Move it with a tub or soft tongs; or write because."}},
	{Enclosure: hairsUntrained, Rule: finding.Rule{ID: "hairs-untrained", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Somebody who is not trained for it works inside with a spider that throws off hairs.",
		Why:     "The barbed hairs hurt eyes and airways.",
		Source:  "minaxtarantulas.com, Theraphosa blondi care",
		Instead: "Eyes covered, gloves, no fan. Write trained = \"hairs\" of those who have been shown."}},
	{Enclosure: painUntrained, Rule: finding.Rule{ID: "pain-untrained", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "Somebody who is not said to be trained works inside with a species whose venom hurts for hours or days.",
		Why:     "Of many such species little is known, and children, the old and people with an allergy are worse off. Who knows the animal and the way out of the box is not hurt.",
		Source:  "common practice, no source",
		Instead: "Show them, and write trained = \"venom\" of those who have been shown; or leave it to somebody who has."}},
	{Enclosure: stingCard, Rule: finding.Rule{ID: "sting-card", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "A species whose venom is a danger to life wants a card beside it.",
		Why:     "Alone and without the species' name a hospital can do less. Licensed sellers are asked for such a card.",
		Source:  "bexley.gov.uk, selling animals as pets: required procedures; scorpionforum.darkbb.com/t8690",
		Instead: "A card with the species' name, the hospital, the poison centre and a line on allergies, at the door and in the round's folder."}},
}

// deadly returns the figure of a venom that is a danger to life, of whichever species is
// there, or nil.
func (e *Enclosure) deadly() *plan.Figure {
	is := func(f *plan.Figure) bool { return f != nil && slices.Contains(f.Words, "medically significant") }
	if f := e.figure(schema.FigureVenom); is(f) {
		return f
	}
	for _, g := range e.Life.Groups {
		if g.Sheet == nil || g.Sheet == e.Sheet || g.Count(e.Today) == 0 {
			continue
		}
		if f := g.Sheet.Figure(schema.FigureVenom, ""); is(f) {
			return f
		}
	}
	return nil
}

func venomUnlocked(r *Rule, e *Enclosure) {
	f := e.deadly()
	if f == nil {
		return
	}
	x := finding.Finding{Rule: &r.Rule, Limit: e.limit("venom: "+f.Value.V, f), Source: r.Source}
	if h := e.Plan.Housing; h.Lid.Set() && !h.LidIs("locked") {
		x.At, x.Text, x.Write = h.Lid.At, "the lid over "+e.Sheet.Name.V+" has no lock", "a lock, and then locked in lid"
		e.Add(x)
	}
	if room := e.Plan.Place; room == nil || !room.Locked.V && !room.Locked.Bad {
		x.At, x.Text, x.Write = e.Plan.At, e.Sheet.Name.V+" stands in a room that is not said to be kept locked", "the room kept locked, and then true as locked in it"
		e.Add(x)
	}
}

func (c *Collection) trained(keeper, skill string) bool {
	k := c.Plan.Keeper(keeper)
	return k != nil && k.TrainedIn(skill)
}

func venomUntrained(r *Rule, e *Enclosure) {
	f := e.deadly()
	if f == nil {
		return
	}
	x := finding.Finding{Rule: &r.Rule, At: e.Plan.At, Limit: e.limit("venom: "+f.Value.V, f), Source: r.Source}
	said := map[string]bool{}
	for i := range e.Series {
		s := &e.Series[i]
		if said[s.Keeper] {
			continue
		}
		said[s.Keeper] = true
		if !e.trained(s.Keeper, "venom") {
			x.Text, x.Write = s.Keeper+" looks after "+e.Sheet.Name.V+" and is not said to be trained for venom", "somebody who is, as keeper of its rounds"
			if s.Keeper == "" {
				x.Text = "nobody is named who looks after " + e.Sheet.Name.V + " (" + s.Name + " in the " + s.Round.Shown() + ")"
			}
			e.Add(x)
		}
		for _, a := range e.aways() {
			cover := a.Cover
			if a.Name.V == s.Keeper && cover.Set() && !e.trained(cover.V, schema.SkillVenom) && !said[cover.V] {
				if on, ok := e.unguarded(a); ok {
					said[cover.V] = true
					y := x
					y.At, y.Text = cover.At, cover.V+" stands in for "+s.Keeper+" with "+e.Sheet.Name.V+", and on "+on.Words()+" nobody who is said to be trained for venom is there to be rung"
					y.Write = "a keeper who is there and trained for venom"
					e.Add(y)
				}
			}
		}
	}
}

// unguarded returns the first day of an absence, from today on, on which nobody trained
// for venom is there: whoever stands in leaves the box shut, and has nobody to ring.
func (c *Collection) unguarded(a *plan.Away) (civil.Date, bool) {
	for d := max(a.From.V, c.Today); d < min(a.To.V, c.Horizon.Last()+1); d++ {
		i, _ := c.Horizon.Index(d)
		if !slices.ContainsFunc(c.Plan.Keepers, func(k *plan.Keeper) bool {
			return c.Roster.Untrained(k.Name.V, []string{schema.SkillVenom}) == "" && c.Roster.People.There(k.Name.V, i)
		}) {
			return d, true
		}
	}
	return 0, false
}

func painUntrained(r *Rule, e *Enclosure) {
	f := e.figure(schema.FigureVenom)
	if f == nil || !slices.Contains(f.Words, "painful") {
		return
	}
	for i := range e.Series {
		s := &e.Series[i]
		who := []string{s.Keeper}
		for _, a := range e.aways() {
			if a.Name.V == s.Keeper && a.Cover.Set() {
				who = append(who, a.Cover.V)
			}
		}
		for _, k := range who {
			if k != "" && inside(s) && !e.trained(k, schema.SkillVenom) {
				e.Add(finding.Finding{Rule: &r.Rule, At: e.Plan.Species.At, Text: k + " works inside with " + e.Sheet.Name.V + " (" + s.Name + ") and is not said to be trained for venom",
					Limit: e.limit("venom: "+f.Value.V, f), Source: r.Source, Write: "once shown, venom under trained of keeper " + strconv.Quote(k)})
				return
			}
		}
	}
}

func stingCard(r *Rule, e *Enclosure) {
	if f := e.deadly(); f != nil {
		e.Add(finding.Finding{Rule: &r.Rule, At: e.Plan.Species.At, Text: "keep a card beside " + e.Sheet.Name.V + ": its name, the hospital, the poison centre, a line on allergies", Limit: e.limit("venom: "+f.Value.V, f), Source: r.Source})
	}
}

func lidLoose(r *Rule, e *Enclosure) {
	h := e.Plan.Housing
	if !h.Lid.Set() || h.Unread || h.LidIs("latched") || h.LidIs("locked") || e.word(schema.FigureLid) != "latched" {
		return
	}
	f := e.figure(schema.FigureLid)
	e.Add(finding.Finding{Rule: &r.Rule, At: h.Lid.At, Text: "nothing is said to hold the lid shut over " + e.Sheet.Name.V, Limit: e.limit("a lid that is held shut", f), Source: e.Cite(f), Write: "a latch or clips, and then latched in lid"})
}

// usualGap is the widest opening that holds an animal, as a share of its length,
// where its sheet has no figure. A scorpion's length in a sheet is with its tail
// (our estimate; common practice, no source).
const usualGap = 0.125

// asSold is how much wider than its name a mesh may be.
const asSold = 1.05

func gapWide(r *Rule, e *Enclosure) {
	gap := e.Plan.Housing.Gap
	if !gap.Set() {
		return
	}
	for _, g := range e.Life.Groups {
		stage := e.stage(g)
		if (g.Gravid || g.Brood) && len(e.facts[schema.FigureGapMax]) > 0 {
			stage = "newborn"
		}
		if e.count(g) == 0 {
			continue
		}
		f := e.least(schema.FigureGapMax, stage)
		if f == nil && stage == "newborn" {
			f = e.least(schema.FigureGapMax, "young") // those on her back are no larger
		}
		if f != nil {
			if j := judged(r, f, func(limit quantity.Range) bool { return gap.V.Value > limit.High*asSold }); j.bad {
				e.judge(j, f, finding.Finding{Rule: &r.Rule, At: gap.At, Text: g.Animals.Name.V + " can leave through a gap of " + gap.V.String(), Limit: e.atMost(f.Range.High, gap.V.Unit, f), Source: e.Cite(f), Write: "mesh of " + quantity.FormatAtMost(f.Range.High, gap.V.Unit) + " at the most"})
				return
			}
			continue
		}
		if long, known := e.bodyLength(g); known && gap.V.Value > long.Low*usualGap {
			e.Soft(finding.Finding{Rule: &r.Rule, At: gap.At, Text: g.Animals.Name.V + " of " + quantity.Format(long.Low, gap.V.Unit) + " may leave through a gap of " + gap.V.String(),
				Limit: wording.AtMost(long.Low*usualGap, gap.V.Unit) + ", an eighth of the animal", Source: "our estimate; common practice, no source", Write: "finer mesh"}, finding.Caution)
			return
		}
	}
}

func gapUnsaid(r *Rule, e *Enclosure) {
	h := e.Plan.Housing
	if h.Gap.At.Written() || !h.LidIs("mesh") && !h.LidIs("part mesh") {
		return
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: h.Lid.At, Text: "how wide the mesh of the lid is, is not said", Source: r.Source, Write: "gap, with how wide it is"})
}

func handledFreely(r *Rule, e *Enclosure) {
	if (e.word(schema.FigureVenom) == "none" || e.word(schema.FigureVenom) == "") && (e.word(schema.FigureHairs) == "none" || e.word(schema.FigureHairs) == "") {
		return
	}
	for _, c := range e.Plan.Care {
		if c.What() == schema.KindHandle && !c.Because.Set() && !c.Off.V {
			e.Add(finding.Finding{Rule: &r.Rule, At: c.At, Text: e.Sheet.Name.V + " is taken into the hand, and it is not said why", Source: r.Source, Write: "because, with the reason"})
		}
	}
}

func hairsUntrained(r *Rule, e *Enclosure) {
	if e.word(schema.FigureHairs) != "thrown" {
		return
	}
	for i := range e.Series {
		s := &e.Series[i]
		if !inside(s) || s.Keeper == "" || e.trained(s.Keeper, "hairs") {
			continue
		}
		f := e.figure(schema.FigureHairs)
		e.Add(finding.Finding{Rule: &r.Rule, At: e.Plan.Species.At, Text: s.Keeper + " works inside with " + e.Sheet.Name.V + " (" + s.Name + ") and is not said to be trained for its hairs",
			Limit: e.limit("throws barbed hairs", f), Source: r.Source, Write: "once shown, hairs under trained of keeper " + strconv.Quote(s.Keeper)})
		return
	}
}

// inside reports whether a care is work with the hands in the box.
func inside(s *roster.Entry) bool { return s.Kind.Disturbs() || s.Kind.Needs == schema.NeedCleaning }
