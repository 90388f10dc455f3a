package check

import (
	"cmp"
	"slices"
	"strconv"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// Papers, and what keeps a plan readable. None of this is a legal conclusion.
var papers = []*Rule{
	{Collection: identityClash, Rule: finding.Rule{ID: "identity-clash", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "Two things claim the same former name.",
		Why:     "A former name keeps entries on people's phones the same. Two of one identity overwrite each other, and one is never seen.",
		Source:  "RFC 5545, 3.8.4.7: the identifier is globally unique",
		Instead: "Keep formerly with the one that is the old thing, and take it out of the other."}},
	{Enclosure: originUnsaid, Rule: finding.Rule{ID: "origin-unsaid", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Where an animal of a listed species is from, and what proves it, is not said.",
		Why:     "Trade and moves across borders need proof, often years later.",
		Source:  "CITES appendices, as the species sheet has them; cites.org for the text in force",
		Instead: "Write origin and paper. What the law asks where you live is for you to look up."}},
	{Collection: figureOverdue, Rule: finding.Rule{ID: "figure-overdue", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A figure of your own is due to be looked at again.",
		Why:     "It takes the place of a known figure for a reason that may no longer hold.",
		Source:  "the date in the plan",
		Instead: "Look at it, and write a new review date; or take it out."}},
	{Enclosure: lookAlike, Rule: finding.Rule{ID: "look-alike", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "The species is often mixed up with one that differs in danger, law or climate.",
		Why:     "A label names what the seller took it for. Care for the one is a danger with the other, to the animal or to you.",
		Source:  "the sheets of both species",
		Instead: "Look which yours are, or ask somebody who knows them; then say so in an accept block."}},
	{Enclosure: arrivalUnsaid, Rule: finding.Rule{ID: "arrival-unsaid", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "Of an animal neither origin nor arrival nor birth is written.",
		Why:     "A register of animals has them, and whoever takes it over will ask.",
		Source:  "southhams.gov.uk/animal-welfare-licences/selling-animals-pets, on registers",
		Instead: "Write what is known: origin, arrived, born."}},
	{Collection: logSilent, Rule: finding.Rule{ID: "log-silent", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "Nothing has been logged for weeks.",
		Why:     "A moult or a birth that is not logged holds nothing back, and the plan drifts from the animals.",
		Source:  "common practice, no source: eight weeks",
		Instead: "Log what was seen: moults, refusals, counts."}},
}

// claim is a name that an identity is made of, and where it was written.
type claim struct {
	formerly plan.Written[string]
	name     plan.Written[string]
}

// clash finds two of a list that claim one name, or one that claims the name that
// another still bears. It looks no further where nothing was ever renamed.
func clash(c *Collection, r *Rule, what string, in finding.Box, n int, at func(int) claim) {
	var by map[string]claim
	for i := range n {
		if x := at(i); x.formerly.Set() {
			if by == nil {
				by = map[string]claim{}
			}
			if first, twice := by[x.formerly.V]; twice {
				c.Add(finding.Finding{Rule: &r.Rule, At: x.formerly.At, In: in, Text: what + strconv.Quote(x.name.V) + " and " + what + strconv.Quote(first.name.V) + " were both formerly " + strconv.Quote(x.formerly.V),
					Source: r.Source, Write: "formerly in one of them only", Also: []finding.Related{{At: first.formerly.At, Text: "the other"}}})
				continue
			}
			by[x.formerly.V] = x
		}
	}
	if by == nil {
		return
	}
	for i := range n {
		x := at(i)
		if first, claimed := by[x.name.V]; claimed && !x.formerly.Set() {
			c.Add(finding.Finding{Rule: &r.Rule, At: first.formerly.At, In: in, Text: what + strconv.Quote(first.name.V) + " was formerly " + strconv.Quote(x.name.V) + ", and there is one of that name",
				Source: r.Source, Write: "no formerly here, or another name there", Also: []finding.Related{{At: x.name.At, Text: "the one of that name"}}})
		}
	}
}

func identityClash(r *Rule, c *Collection) {
	all := c.Plan.Enclosures
	clash(c, r, "enclosure ", finding.Box{}, len(all), func(i int) claim { return claim{all[i].Formerly, all[i].Name} })
	for _, e := range all {
		if len(e.Care) > 1 && slices.ContainsFunc(e.Care, func(x *plan.Care) bool { return x.Formerly.Set() }) {
			clash(c, r, "care ", e.Box(), len(e.Care), func(i int) claim { return claim{e.Care[i].Formerly, e.Care[i].Name} })
		}
		if len(e.Animals) > 1 && slices.ContainsFunc(e.Animals, func(x *plan.Animals) bool { return x.Formerly.Set() }) {
			clash(c, r, "group ", e.Box(), len(e.Animals), func(i int) claim { return claim{e.Animals[i].Formerly, e.Animals[i].Name} })
		}
	}
	rounds, calendars := plan.Wholes(c.Plan.Rounds), c.Plan.Calendars
	clash(c, r, "round ", finding.Box{}, len(rounds), func(i int) claim { return claim{rounds[i].Formerly, rounds[i].Name} })
	clash(c, r, "calendar ", finding.Box{}, len(calendars), func(i int) claim { return claim{calendars[i].Formerly, calendars[i].Name} })
}

// originUnsaid passes over groups that the log made: what was born here is bred here, and
// a line of the log has no place for an origin.
func originUnsaid(r *Rule, e *Enclosure) {
	f := e.figure(schema.FigureCITES)
	if f == nil || len(f.Words) == 0 || slices.Contains(f.Words, "none") {
		return
	}
	for _, g := range e.Life.Groups { // what the log brought has its line there
		a := g.Animals
		if g.Logged || e.count(g) == 0 || a.Origin.Bad || a.Paper.Bad || a.Origin.Set() && a.Paper.Set() {
			continue
		}
		x := finding.Finding{Rule: &r.Rule, At: a.At, Limit: e.limit("CITES Appendix "+f.Value.V, f), Source: e.Cite(f), Write: "origin as it is, and paper with the number of its paper"}
		switch {
		case a.Origin.Set():
			x.Text, x.Write = "no paper is named that proves the origin of "+a.Name.V, "paper, with its number"
			e.Soft(x, finding.Advice)
		case a.Paper.Set():
			x.Text, x.Write = "the origin of "+a.Name.V+" is not said", "origin, with where it is from"
			e.Add(x)
		default:
			x.Text = "the origin of " + a.Name.V + ", and what proves it, is not said"
			e.Add(x)
		}
	}
}

// lookAlike speaks once of a species, at the first enclosure of it, and only of look-alikes
// that are worse for people, stand under a law, or cannot live at what this one is kept at.
// Of those bred in captivity the breeder knows the parents: there it speaks only of a danger
// to life. Other look-alikes stand on the page of the species, and why tells them.
func lookAlike(r *Rule, e *Enclosure) {
	if e.firsts[e.Sheet] != e.Life {
		return
	}
	bred := !slices.ContainsFunc(e.Life.Groups, func(g *life.Group) bool { return !g.Logged && g.Animals.Origin.V != "captive bred" })
	var text, limit []string
	source := ""
	for _, a := range e.Collection.Plan.Library.LookAlikes(e.Sheet) {
		for _, o := range a.Sheets {
			for _, d := range e.unlike(o) {
				if bred && !slices.Contains(d.by.Words, deadly) {
					continue
				}
				text = append(text, o.Name.V+" "+d.words)
				limit = append(limit, d.by.Value.V+", "+d.by.Name.V+" of "+d.by.Whose(o))
				source = cmp.Or(source, e.Cite(d.by))
			}
		}
	}
	if text == nil {
		return
	}
	x := finding.Finding{Rule: &r.Rule, At: e.Plan.Species.At, Source: source, Limit: wording.And(limit),
		Text: e.Sheet.Name.V + " is mixed up with others, by sellers too: " + wording.And(text) + "; check which yours are", Write: "once you know, an accept block \"" + r.ID + "\" that says so"}
	if looks := e.of(schema.FigureLooks, "adult"); looks != nil {
		x.Write += ": " + looks.Value.V
	}
	e.Add(x)
}

// deadly is the venom that is a danger to life.
const deadly = "medically significant"

// unlike is how a look-alike differs where it matters, and the figure of it that says so.
type unlike struct {
	words string
	by    *plan.Figure
}

func (e *Enclosure) unlike(o *plan.SpeciesSheet) (all []unlike) {
	for _, worse := range []struct {
		what  *schema.Figure
		words string
	}{{schema.FigureVenom, "has a stronger venom"}, {schema.FigureHairs, "has worse hairs"}} {
		if own, other := e.figure(worse.what), o.Figure(worse.what, ""); own != nil && other != nil && degree(other) > degree(own) {
			all = append(all, unlike{worse.words, other})
		}
	}
	if f := o.Figure(schema.FigureCITES, ""); f != nil && degree(f) > 0 && e.word(schema.FigureCITES) == "none" {
		all = append(all, unlike{"is listed in CITES", f})
	}
	for _, climate := range []struct {
		aim, bears *schema.Figure
		words      string
	}{{schema.FigureTemperatureTarget, schema.FigureTemperatureSoft, "needs another warmth"}, {schema.FigureHumidityTarget, schema.FigureHumiditySoft, "needs another air"}} {
		if aim, bears := e.figure(climate.aim), o.Figure(climate.bears, ""); aim != nil && bears != nil && (aim.Range.High < bears.Range.Low || aim.Range.Low > bears.Range.High) {
			all = append(all, unlike{climate.words, bears})
		}
	}
	return all
}

// degree is the place of a figure's word among its choices, which stand from harmless on.
func degree(f *plan.Figure) int {
	return slices.IndexFunc(f.What.Choices, func(c schema.Choice) bool { return slices.Contains(f.Words, c.Name) })
}

func arrivalUnsaid(r *Rule, e *Enclosure) {
	if e.Plan.Culture.V || e.word(schema.FigureCITES) != "none" {
		return // of listed species origin-unsaid speaks
	}
	for _, g := range e.Life.Groups {
		a := g.Animals
		if !g.Logged && e.count(g) > 0 && !a.Origin.At.Written() && !a.Arrived.At.Written() && !a.Born.At.Written() {
			e.Add(finding.Finding{Rule: &r.Rule, At: a.At, Text: "neither origin nor arrival nor birth of " + a.Name.V + " is written", Source: r.Source, Write: "what is known of origin, arrived and born"})
		}
	}
}

func figureOverdue(r *Rule, c *Collection) {
	overdue := func(what string, name plan.Written[string], own bool, review plan.Written[civil.Date]) {
		if own && review.Set() && review.V <= c.Today {
			f := finding.Finding{Rule: &r.Rule, At: review.At, Text: "your own " + what + " " + strconv.Quote(name.V) + " was to be looked at again on " + review.V.Words(), Source: r.Source, Write: "a new date in review, once looked at"}
			if slices.ContainsFunc(c.weaker(), func(w Weaker) bool { return w.Review.At == review.At }) {
				f.Severity = finding.Urgent // what it lets pass may harm
			}
			c.Add(f)
		}
	}
	for _, s := range c.sheets {
		for _, f := range s.Figures {
			overdue("figure", f.Name, f.Own, f.Review)
		}
		for _, n := range s.Needs {
			overdue("need", n.Name, n.Own, n.Review)
		}
	}
}

// silentFor is how many weeks without a line of the log are passed over.
const silentFor = 8

func logSilent(r *Rule, c *Collection) {
	if len(c.Plan.Log) == 0 {
		return // a collection that keeps no log is not asked to
	}
	last := &c.Plan.Log[len(c.Plan.Log)-1]
	if c.Today-last.Date > silentFor*7 {
		c.Add(finding.Finding{Rule: &r.Rule, At: last.At, Text: "the last line of the log is of " + last.Date.Words(), Limit: strconv.Itoa(silentFor) + " weeks", Source: r.Source, Write: "a line for whatever was seen since, such as a count"})
	}
}
