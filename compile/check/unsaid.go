package check

import (
	"slices"
	"strings"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/slip"
	"vivary/schema/wording"
)

// Rules about what a sheet does not say: a rule without its figure is silent, and that is
// not the same as finding no harm.
var unsaid = []*Rule{
	{Collection: venomUnsaid, Rule: finding.Rule{ID: "venom-unsaid", Severity: finding.Error, Silence: finding.Never,
		Title:   "It is not said how dangerous a species is to people.",
		Why:     "Locks, training and the card at the door hang on it. Kin are no guide: of more than 2,200 scorpions 104 are medically significant, and near relatives of harmless ones are among them.",
		Source:  "Ward et al. 2018, Toxicon 151:137-155",
		Instead: "Look it up and write it, with where you have it from."}},
	{Collection: venomDoubted, Rule: finding.Rule{ID: "venom-doubted", Severity: finding.Error, Silence: finding.Never,
		Title:   "A species of a genus with dangerous members is called harmless.",
		Why:     "Whoever looks after it and whoever is called when it goes wrong rely on that word.",
		Source:  "lists of dangerous genera; Fuchs et al. 2014, Toxicon 77:73",
		Instead: "Look it up; where this species is known to be milder than its kin, say because and from whom you know it."}},
	{Collection: notJudged, Rule: finding.Rule{ID: "not-judged", Severity: finding.Caution, Silence: finding.Never,
		Title:   "A species sheet leaves out what others state.",
		Why:     "Rules that ask for it are silent. What is not judged is not sound.",
		Source:  "the design of this program",
		Instead: "State what you know, each with where you have it from."}},
	{Collection: typeException, Rule: finding.Rule{ID: "type-exception", Severity: finding.Error, Silence: finding.Never,
		Title:   "A species belongs to a genus for which its care type does not hold.",
		Why:     "The type says what suits every other member. What suits this genus it does not know.",
		Source:  "the design of this program",
		Instead: "Take another type, or none and state its own figures and needs."}},
	{Collection: sheetTwice, Rule: finding.Rule{ID: "sheet-twice", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A sheet of the collection's own is of a species that has a built-in one under another name.",
		Why:     "What the built-in sheet knows of it, danger and limits among it, is not used.",
		Source:  "the species sheets",
		Instead: "Use the built-in name, and lay over it what you know better."}},
	{Collection: limitsCrossed, Rule: finding.Rule{ID: "limits-crossed", Severity: finding.Error, Silence: finding.Never,
		Title:   "Limits of a sheet do not lie within each other.",
		Why:     "What is aimed for would harm by the sheet's own limits, or by those that hold for every animal of its type. It is often a temperature on the other scale.",
		Source:  "the species sheet",
		Instead: "Correct the one that is wrong."}},
	{Collection: sizeOdd, Rule: finding.Rule{ID: "size-odd", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A species is far smaller or larger than all that live like it.",
		Why:     "Floor, depth, gaps and prey follow from its size. It is often a leg span for a body, or mm for cm.",
		Source:  "the species sheets of that type",
		Instead: "Measure the body, or say in the sheet whose figure it is."}},
	{Collection: typeExceeded, Rule: finding.Rule{ID: "type-exceeded", Severity: finding.Error, Silence: finding.Never,
		Title:   "A sheet of the collection's own states what is wrong for every member of its care type.",
		Why:     "It may be right for this species. Then it is known from somewhere, and worth saying why.",
		Source:  "the care type",
		Instead: "State less, or say because, and from whom it is known."}},
}

// How far outside the sizes of its type's members a species may be before it is asked about.
const oddlySmall, oddlyLarge = 0.3, 3

// From how much longer than the longest it may be a leg span, or a gecko with its tail.
const spanForBody = 1.45

func sizeOdd(r *Rule, c *Collection) {
	for _, s := range c.sheets {
		t, f := c.Plan.Library.Type(s.Type.V), s.Figure(schema.FigureLength, "adult")
		if t == nil || !t.Grown.Set() || f == nil || !f.Own {
			continue
		}
		known := t.Grown.V
		far := f.Range.High < oddlySmall*known.Low || f.Range.Low > oddlyLarge*known.High
		if far || f.Range.Low > spanForBody*known.High {
			how := finding.Advice
			if far {
				how = finding.Caution
			}
			c.found.Soft(finding.Finding{Rule: &r.Rule, At: f.Value.At, Text: s.Name.V + " is " + f.Value.V + " long when grown",
				Limit: "the grown of " + t.Title.V + " that are known here are " + known.String(), Source: r.Source,
				Write: "the length of the body, without legs and feelers: of a scorpion with its tail, of a gecko without"}, how)
		}
	}
}

func typeExceeded(r *Rule, c *Collection) {
	for _, s := range c.sheets {
		common := c.Plan.Library.Common(s)
		if common == nil {
			continue
		}
		add := func(x finding.Finding, because bool) {
			x.Rule = &r.Rule
			if because {
				c.found.Soft(x, finding.Caution)
				return
			}
			c.Add(x)
		}
		for _, f := range s.Figures {
			of := common.Figure(f.What, stageOf(f.Stages))
			if !f.Own || of == nil || of.Beyond.High == 0 {
				continue
			}
			most := f.What.AtMost()
			past := func(limit quantity.Range) bool {
				return most && f.Range.High > limit.High || !most && f.Range.Low < limit.Low
			}
			x := finding.Finding{Rule: &r.Rule, At: f.Value.At, Text: f.Name.V + " of " + s.Name.V + " is " + f.Value.V, Source: c.cite(of.Cited)}
			switch hearsay := f.Quality.V == "practice" || f.Quality.V == "memory"; {
			case past(of.Beyond):
				x.Limit, x.Write = of.Wrong.V+" is wrong for any of "+of.OfType, "because, with why it is known to be right"
				add(x, f.Because.Set())
			case past(of.Range) && hearsay && !f.Because.Set():
				x.Limit, x.Write = of.Value.V+" suits every one of "+of.OfType, "from whom it is known, with quality \"keeper\" or better; or because, with why"
				add(x, true)
			}
		}
		for _, n := range s.Needs {
			for _, of := range common.NeedsOf(stageOf(n.Stages)) {
				if n.Own && of.What == n.What && of.Wrong.Set() && n.Longest.V.Value > of.Wrong.V.Value {
					add(finding.Finding{At: n.Longest.At, Text: "need " + n.Name.V + " of " + s.Name.V + " is " + n.Longest.V.String(), Limit: of.Wrong.V.String() + " is too long for any of " + of.OfType,
						Source: c.cite(of.Cited), Write: "because, with why it is known to be right"}, n.Because.Set())
				}
			}
		}
	}
}

// stageOf is the last of the stages that a figure is for, the largest animals; "adult" for
// one that is for all.
func stageOf(stages []plan.Written[string]) string {
	if len(stages) == 0 {
		return "adult"
	}
	return stages[len(stages)-1].V
}

func typeException(r *Rule, c *Collection) {
	for _, s := range c.sheets {
		lib := c.Plan.Library
		t := lib.Type(s.Type.V)
		if t == nil || !lib.Own(s.Name.V) { // a sheet of ours states what differs
			continue
		}
		x := finding.Finding{Rule: &r.Rule, At: s.Type.At, Source: r.Source}
		genus := s.Genus()
		if genus == "" {
			x.Text, x.Write = "the genus of "+s.Name.V+" is not said, and whether its care type holds for it depends on that", "latin, with its scientific name"
			c.Add(x)
			continue
		}
		if e := t.Exception(genus); e != nil && e.Empty() {
			x.Text, x.Write = s.Name.V+" is not cared for like "+t.Title.V+": "+e.Because.V, "another type; or its own figures and needs, without type"
			c.Add(x)
			continue
		}
		if slices.ContainsFunc(t.Genera, func(g plan.Written[string]) bool { return g.V == genus }) || t.Exception(genus) != nil {
			continue
		}
		types := lib.TypesOf(genus)
		if slices.ContainsFunc(types, func(n string) bool { return slices.Contains(lib.Wider(n), t) }) {
			continue // it is the wider one of a type that has the genus
		}
		if len(types) > 0 {
			x.Text = s.Name.V + " is not cared for like " + t.Title.V + ": " + genus + " are " + lib.Type(types[0]).Title.V
			x.Write = "as type " + strings.Join(types, " or ")
			if len(types) == 1 {
				x.Edits = finding.Text(s.Type.At, types[0])
			}
			c.Add(x)
			continue
		}
		known := slices.Concat(lib.Genera(), schema.DangerousGenera())
		if near := slip.Of(genus, known); near != "" && strings.HasPrefix(near, genus[:3]) {
			x.At, x.Text, x.Write = s.Latin.At, "no genus "+genus+" is known here; there is "+near, "latin with "+near+", if that is what is meant"
			x.Edits = finding.Instead(s.Latin.At, s.Latin.V, strings.Replace(s.Latin.V, genus, near, 1))
			if schema.DangerOf(near) == nil {
				c.found.Soft(x, finding.Caution) // it may be a genus that is not known here
				continue
			}
			c.Add(x)
		}
	}
}

func sheetTwice(r *Rule, c *Collection) {
	for _, s := range c.sheets {
		name := s.Binomial()
		if known := c.Plan.Library.Species(name); c.Plan.Library.Own(s.Name.V) && known != nil && known != s && !c.Plan.Library.Own(name) {
			c.Add(finding.Finding{Rule: &r.Rule, At: s.Latin.At, Source: r.Source, Text: "of " + s.Latin.V + " a sheet is built in: " + name,
				Write: quoted(name) + " as species; and what you know better in a species block of that name"})
		}
	}
}

// nests are pairs of figures of which the first lies about the second.
var nests = [][2]*schema.Figure{
	{schema.FigureTemperatureHard, schema.FigureTemperatureSoft}, {schema.FigureTemperatureHard, schema.FigureTemperatureTarget},
	{schema.FigureTemperatureSoft, schema.FigureTemperatureTarget}, {schema.FigureTemperatureHard, schema.FigureNight},
	{schema.FigureTemperatureHard, schema.FigureWarmSpot}, {schema.FigureTemperatureHard, schema.FigureAir}, {schema.FigureTemperatureHard, schema.FigureWinterRest},
	{schema.FigureHumidityHard, schema.FigureHumiditySoft}, {schema.FigureHumidityHard, schema.FigureHumidityTarget}, {schema.FigureHumiditySoft, schema.FigureHumidityTarget},
}

func limitsCrossed(r *Rule, c *Collection) {
	for _, s := range c.sheets {
		said := map[*schema.Figure]bool{}
		for _, n := range nests {
			outer, inner := s.Figure(n[0], ""), s.Figure(n[1], "")
			if outer == nil || inner == nil || !outer.Own && !inner.Own || outer.Range.Encloses(inner.Range) {
				continue
			}
			if !outer.Own && outer.OfType != "" && inner.Range.High >= outer.Range.Low && inner.Range.Low <= outer.Range.High && n[0] != schema.FigureTemperatureHard {
				continue // beside what suits every member it may well reach further
			}
			f := inner
			if !f.Own {
				f = outer
			}
			if said[f.What] {
				continue
			}
			said[f.What] = true
			x := finding.Finding{Rule: &r.Rule, At: f.Value.At, Text: inner.Name.V + " of " + s.Name.V + ", " + inner.Value.V + ", does not lie within " + outer.Name.V,
				Limit: outer.Value.V + ", " + outer.Name.V + " of " + outer.Whose(s), Source: c.cite(outer.Cited), Write: "values that lie within each other: hard about soft about target, night and spot within hard"}
			if f == inner && n[1].Dimension == quantity.Temperature {
				if other, text := otherScale(f.Value.V); other.High > 0 && outer.Range.Encloses(other) {
					x.Write, x.Edits = quoted(text)+", read on the other scale", finding.Instead(f.Value.At, f.Value.V, text)
				}
			}
			c.Add(x)
		}
	}
}

// otherScale reads the numbers of a temperature as degrees of the other scale, and returns
// the text as well.
func otherScale(text string) (quantity.Range, string) {
	if bare, ok := strings.CutSuffix(text, "C"); ok {
		text = bare + "F"
	} else if bare, ok := strings.CutSuffix(text, "F"); ok {
		text = bare + "C"
	}
	r, err := quantity.ParseRange(text, quantity.Temperature)
	if err != nil {
		return quantity.Range{}, text
	}
	return r, text
}

func venomUnsaid(r *Rule, c *Collection) {
	for _, s := range c.sheets {
		if s.Figure(schema.FigureVenom, "") != nil {
			continue
		}
		f := finding.Finding{Rule: &r.Rule, At: s.At, Text: "how dangerous the venom of " + s.Name.V + " is to people is not said", Source: r.Source,
			Write: "figure \"venom\" with value \"none\", \"mild\", \"painful\" or \"medically significant\", and source"}
		if s.Like.Set() {
			f.Limit = "no sheet lends it: " + s.Like.V + " may be harmless and its kin not"
		}
		c.Add(f)
	}
}

func venomDoubted(r *Rule, c *Collection) {
	for _, s := range c.sheets {
		f, d := s.Figure(schema.FigureVenom, ""), schema.DangerOf(s.Genus())
		venomous := slices.IndexFunc(c.Plan.Library.Wider(s.Type.V), func(t *plan.TypeSheet) bool { return t.Venom.V })
		if f != nil && f.Own && venomous >= 0 && slices.Contains(f.Words, "none") {
			t := c.Plan.Library.Wider(s.Type.V)[venomous]
			c.Add(finding.Finding{Rule: &r.Rule, At: f.Value.At, Text: "the venom of " + s.Name.V + " is called none", Limit: "all " + t.Title.V + " have venom", Source: r.Source,
				Write: "mild, painful or medically significant as value, with source"})
			continue
		}
		if f == nil || d == nil || !f.Own || slices.Contains(f.Words, "medically significant") {
			continue
		}
		x := finding.Finding{Rule: &r.Rule, At: f.Value.At, Text: "the venom of " + s.Name.V + " is called " + quoted(f.Value.V) + ", and its genus has members that are a danger to people",
			Source: d.Source, Write: "medically significant as value; or because and source, where it is known to be milder"}
		if d.Says != "" {
			x.Limit = d.Genus + ": " + d.Says
		}
		if f.Because.Set() {
			c.found.Soft(x, finding.Caution)
			continue
		}
		c.Add(x)
	}
}

func quoted(s string) string { return "\"" + s + "\"" }

func notJudged(r *Rule, c *Collection) {
	for _, s := range c.sheets {
		unknown := slices.DeleteFunc(s.Unknown(), func(f *schema.Figure) bool { return f == schema.FigureVenom })
		if len(unknown) == 0 {
			continue
		}
		var names []string
		for _, f := range unknown {
			names = append(names, f.Name)
		}
		c.Add(finding.Finding{Rule: &r.Rule, At: s.At, Source: r.Source,
			Text:  "of " + s.Name.V + " is not judged: " + wording.And(unjudged(s)),
			Write: "a figure, with source, for each that you know of: " + strings.Join(names, ", ")})
	}
}

// unjudged leaves out venom, which has a rule of its own.
func unjudged(s *plan.SpeciesSheet) []string {
	return slices.DeleteFunc(s.Unjudged(), func(about string) bool { return about == schema.FigureVenom.About })
}
