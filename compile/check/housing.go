package check

import (
	"strconv"

	"vivary/compile/growth"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
)

// Whether the enclosure fits those who live in it.
var housing = []*Rule{
	{Enclosure: fallHigh, Rule: finding.Rule{ID: "fall-high", Severity: finding.Danger, Kills: true,
		Title:   "A heavy spider can fall from too high.",
		Why:     "It climbs the walls, and a fall ruptures its abdomen.",
		Source:  "the species sheet; common practice: one and a half leg spans at the most",
		Instead: "Fill in more substrate, or take a lower enclosure.",
		Bad:     spiderBox("40 x 30 x 40 cm", "10 cm"), Good: spiderBox("40 x 30 x 28 cm", "10 cm")}},
	{Enclosure: noPerch, Rule: finding.Rule{ID: "no-perch", Severity: finding.Error,
		Title:   "There is nothing to hang from or to live on.",
		Why:     "Hanging moulters that cannot hang free die in the moult; animals of bark and trees find no rest on the floor.",
		Source:  "scorpionforum.darkbb.com/t1846-molting-information-sheet; jonathansjungleroadshow.co.uk, tailless whip scorpion",
		Instead: "Upright bark, or a roof that it can hang from, and perches = true.",
		Bad:     whipBox("\"1.2\"", false), Good: whipBox("\"1.2\"", true)}},
	{Enclosure: substrateShallow, Rule: finding.Rule{ID: "substrate-shallow", Severity: finding.Error,
		Title:   "The substrate is not deep enough.",
		Why:     "A burrower that cannot dig cannot get out of heat, dry air or light.",
		Source:  "the species sheet",
		Instead: "Fill in more, or accept it with a reason and a date.",
		Bad:     "housing {\n  inside = \"76 x 46 x 41 cm\"\n  lid    = \"solid, latched\"\n  depth  = \"5 cm\"\n  hides  = 4\n}\n",
		Good:    "housing {\n  inside = \"76 x 46 x 41 cm\"\n  lid    = \"solid, latched\"\n  depth  = \"16 cm\"\n  hides  = 4\n}\n"}},
	{Enclosure: floorSmall, Rule: finding.Rule{ID: "floor-small", Severity: finding.Caution,
		Title:   "The floor is small for the animals.",
		Why:     "Crowding and hunger lead to cannibalism.",
		Source:  "the species sheet; pkpets.com.au/scorpions-care-guide",
		Instead: "A larger enclosure, or fewer animals.",
		Bad:     "housing {\n  inside = \"40 x 30 x 35 cm\"\n  lid    = \"solid, latched\"\n  depth  = \"16 cm\"\n  hides  = 4\n}\n",
		Good:    "housing {\n  inside = \"60 x 45 x 35 cm\"\n  lid    = \"solid, latched\"\n  depth  = \"16 cm\"\n  hides  = 4\n}\n"}},
	{Enclosure: volumeSmall, Rule: finding.Rule{ID: "volume-small", Severity: finding.Caution,
		Title:   "The enclosure holds less than is asked for even one of the animals.",
		Why:     "A small volume heats up, dries out and fouls fast.",
		Source:  "the species sheet",
		Instead: "A larger enclosure.",
		Bad:     oneAdult("15 x 10 x 12 in"), Good: oneAdult("20 x 10 x 12 in")}},
	{Enclosure: heightLow, Rule: finding.Rule{ID: "height-low", Severity: finding.Caution,
		Title:   "The enclosure is lower than the species needs.",
		Why:     "There must be room for the substrate, or for climbing and moulting.",
		Source:  "the species sheet",
		Instead: "A taller enclosure.",
		Bad:     oneAdult("20 x 12 x 9 in"), Good: oneAdult("20 x 10 x 12 in")}},
	{Enclosure: dropShort, Rule: finding.Rule{ID: "drop-short", Severity: finding.Caution,
		Title:   "There is little room to hang free for a moult.",
		Why:     "An animal slides down out of its old skin; one that touches the ground on the way stays crooked.",
		Source:  "common practice, no source: twice its length above the substrate",
		Instead: "A taller enclosure, or less substrate.",
		Bad:     mantisBox("16 x 16 x 12 cm"), Good: mantisBox("16 x 16 x 24 cm")}},
	{Enclosure: hidesFew, Rule: finding.Rule{ID: "hides-few", Severity: finding.Caution,
		Title:   "There are fewer places to hide than animals.",
		Why:     "Those without one are harried, and do not feed.",
		Source:  "reptiliansource.com/pages/emperor-scorpion-care; scribd.com/document/253855207",
		Instead: "A hide for each.",
		Bad:     "housing {\n  inside = \"76 x 46 x 41 cm\"\n  lid    = \"solid, latched\"\n  depth  = \"16 cm\"\n  hides  = 1\n}\n",
		Good:    "housing {\n  inside = \"76 x 46 x 41 cm\"\n  lid    = \"solid, latched\"\n  depth  = \"16 cm\"\n  hides  = 3\n}\n"}},
}

// oneAdult is a single grown emperor scorpion in an enclosure of a size.
func oneAdult(inside string) string {
	return "housing {\n  inside = \"" + inside + "\"\n  lid    = \"solid, latched\"\n  depth  = \"6 in\"\n  hides  = 1\n}\nanimals \"adults\" {\n  count = 1\n  stage = \"adult\"\n}\n"
}

func spiderBox(inside, depth string) string {
	return "enclosure \"spider\" {\n  species = \"brachypelma-hamorii\"\n  housing {\n    inside = \"" + inside + "\"\n    lid    = \"solid, latched\"\n    depth  = \"" + depth + "\"\n    hides  = 1\n  }\n  animals \"female\" {\n    count = \"0.1\"\n    stage = \"adult\"\n  }\n}\n"
}

func whipBox(count string, perches bool) string {
	return "enclosure \"whip\" {\n  species = \"damon-diadema\"\n  housing {\n    inside  = \"45 x 45 x 60 cm\"\n    lid     = \"solid, latched\"\n    gap     = \"1 mm\"\n    depth   = \"6 cm\"\n    hides   = 4\n    perches = " + strconv.FormatBool(perches) + "\n  }\n" +
		"  animals \"adults\" {\n    count = " + count + "\n    stage = \"adult\"\n  }\n}\n"
}

func mantisBox(inside string) string {
	return "enclosure \"mantis\" {\n  species = \"hierodula-membranacea\"\n  housing {\n    inside  = \"" + inside + "\"\n    lid     = \"part mesh, latched\"\n    gap     = \"1 mm\"\n    vents   = \"cross\"\n    perches = true\n  }\n" +
		"  animals \"nymph\" {\n    count = 1\n    stage = \"subadult\"\n  }\n}\n"
}

// compartments reports whether each animal has a place of its own within the
// enclosure, or whether it is a culture that nobody counts.
func (e *Enclosure) compartments() bool { return e.Plan.Housing.Places.Set() || e.Plan.Culture.V }

func fallHigh(r *Rule, e *Enclosure) {
	h := e.Plan.Housing
	if !h.Inside.Set() {
		return
	}
	depth := h.Depth.V.Value
	if f := e.figure(schema.FigureSubstrateDepthMin); !h.Depth.Set() && f != nil {
		depth = f.Range.Low
	}
	free := h.Inside.V.Height - depth
	for _, g := range e.Life.Groups {
		f := e.least(schema.FigureFallMax, e.stage(g))
		if f == nil || e.count(g) == 0 || free <= f.Range.High+0.5 {
			continue
		}
		u := h.Inside.V.Unit
		e.Add(finding.Finding{Rule: &r.Rule, At: h.Inside.At, Text: g.Animals.Name.V + " can fall " + quantity.Format(free, u) + " from the lid to the substrate",
			Limit: e.atMost(f.Range.High, u, f), Source: e.Cite(f), Write: "depth = \"" + quantity.FormatAtLeast(h.Inside.V.Height-f.Range.High, u) + "\", or a lower enclosure"})
		return
	}
}

// hangs reports whether animals of a stage still have a moult to hang for.
func (e *Enclosure) hangs(stage string) bool {
	return e.true(schema.FigureHangsToMoult) && (stage != "adult" || e.true(schema.FigureMoultsAsAdult))
}

func noPerch(r *Rule, e *Enclosure) {
	h := e.Plan.Housing
	if h.Perches.V || h.Perches.Bad {
		return
	}
	climber := e.word(schema.FigureLifestyle) == "tree" || e.word(schema.FigureLifestyle) == "bark"
	for _, g := range e.Life.Groups {
		stage := e.stage(g)
		if e.count(g) == 0 || stage == "newborn" || !climber && !e.hangs(stage) {
			continue
		}
		f, limit, text := e.figure(schema.FigureLifestyle), "lives above the ground", g.Animals.Name.V+" live above the ground, and there is nothing to live on"
		if e.hangs(stage) {
			f, limit, text = e.figure(schema.FigureHangsToMoult), "hangs free", g.Animals.Name.V+" must hang free to moult, and there is nothing to hang from"
		}
		at := h.Perches.At
		if !at.Written() {
			at = h.At
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: at, Text: text, Limit: e.limit(limit, f), Source: e.Cite(f), Write: "perches = true, once there is upright bark"})
		return
	}
}

func substrateShallow(r *Rule, e *Enclosure) {
	h, least := e.Plan.Housing, e.figure(schema.FigureSubstrateDepthMin)
	if least == nil || least.Range.Low == 0 || h.Depth.Bad || h.Inside.Bad {
		return
	}
	if !h.Depth.Set() {
		u := h.Inside.V.Unit
		e.Soft(finding.Finding{Rule: &r.Rule, At: h.At, Text: "how deep the substrate is, is not said", Limit: e.atLeast(least.Range.Low, u, least), Source: e.Cite(least),
			Write: "depth = \"" + quantity.FormatAtLeast(least.Range.Low, u) + "\", or what it is"}, finding.Caution)
		return
	}
	depth, u := h.Depth.V.Value, h.Depth.V.Unit
	if depth < least.Range.Low-1e-9 {
		x := finding.Finding{Rule: &r.Rule, At: h.Depth.At, Text: h.Depth.V.String() + " of substrate is too shallow for " + e.Sheet.Name.V,
			Limit: e.atLeast(least.Range.Low, u, least), Source: e.Cite(least), Write: "depth = \"" + quantity.FormatAtLeast(least.Range.Low, u) + "\""}
		for _, g := range e.Life.Groups {
			if !small(e.stage(g)) {
				e.Add(x)
				return
			}
		}
		e.Soft(x, finding.Advice) // the figure is for the grown; young dig their own length
		return
	}
	if f := e.figure(schema.FigureSubstrateDepthAdvised); f != nil && depth < f.Range.Low-1e-9 {
		e.Soft(finding.Finding{Rule: &r.Rule, At: h.Depth.At, Text: h.Depth.V.String() + " of substrate is enough, and more is advised",
			Limit: e.atLeast(f.Range.Low, u, f), Source: e.Cite(f), Write: "depth = \"" + quantity.FormatAtLeast(f.Range.Low, u) + "\""}, finding.Advice)
	}
}

func floorSmall(r *Rule, e *Enclosure) {
	g, ok := e.forecast()
	if !ok {
		return
	}
	now, size := &g.Now, e.Plan.Housing.Inside
	if !now.Sized || now.First == nil || now.FloorFits() {
		return
	}
	u := areaUnit(size.V.Unit)
	limit := quantity.FormatAtLeast(now.Floor, u) + " at the least"
	if now.Animals > 1 {
		limit += ": " + quantity.Format(now.First.Range.Low, u) + " for the first and less for each further"
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: size.At, Text: "a floor of " + quantity.Format(now.Has, u) + " is small for " + strconv.Itoa(now.Animals) + " animal" + plural(now.Animals),
		Limit: e.limit(limit, now.First), Source: e.Cite(now.First), Write: "a larger enclosure, or fewer animals"})
}

func volumeSmall(r *Rule, e *Enclosure) {
	size := e.Plan.Housing.Inside
	if !size.Set() || e.compartments() {
		return
	}
	for _, g := range e.Life.Groups {
		f := e.most(schema.FigureVolumeFirst, e.stage(g))
		if f == nil || e.count(g) == 0 || 1000*size.V.VolumeLitres() >= f.Range.Low*growth.Tolerance {
			continue
		}
		u := volumeUnit(size.V.Unit)
		e.Add(finding.Finding{Rule: &r.Rule, At: size.At, Text: "the enclosure holds " + quantity.Format(1000*size.V.VolumeLitres(), u), Limit: e.atLeast(f.Range.Low, u, f) + ", for one", Source: e.Cite(f), Write: "a larger enclosure"})
		return
	}
}

func heightLow(r *Rule, e *Enclosure) {
	size := e.Plan.Housing.Inside
	if !size.Set() {
		return
	}
	for _, g := range e.Life.Groups {
		f := e.most(schema.FigureHeightMin, e.stage(g))
		if f == nil || e.count(g) == 0 || size.V.Height >= f.Range.Low*growth.Tolerance {
			continue
		}
		u := size.V.Unit
		e.Add(finding.Finding{Rule: &r.Rule, At: size.At, Text: "the enclosure is " + quantity.Format(size.V.Height, u) + " high inside", Limit: e.atLeast(f.Range.Low, u, f), Source: e.Cite(f), Write: "a taller enclosure"})
		return
	}
}

func dropShort(r *Rule, e *Enclosure) {
	h := e.Plan.Housing
	if !h.Inside.Set() || !e.true(schema.FigureHangsToMoult) {
		return
	}
	free := h.Inside.V.Height - h.Depth.V.Value
	for _, g := range e.Life.Groups {
		stage := e.stage(g)
		long, known := e.bodyLength(g)
		if !known || stage == "newborn" || e.count(g) == 0 || !e.hangs(stage) || free >= 2*long.High {
			continue
		}
		u := h.Inside.V.Unit
		e.Add(finding.Finding{Rule: &r.Rule, At: h.Inside.At, Text: "there are " + quantity.Format(free, u) + " between substrate and roof for " + g.Animals.Name.V + " of up to " + quantity.Format(long.High, u),
			Limit: quantity.FormatAtLeast(2*long.High, u) + " at the least", Source: r.Source, Write: "a taller enclosure"})
		return
	}
}

func hidesFew(r *Rule, e *Enclosure) {
	h := e.Plan.Housing.Hides
	if !h.Set() || e.compartments() || e.Plan.Housing.Perches.V {
		return
	}
	g, ok := e.forecast()
	if n := g.Now.Animals; ok && h.V < n {
		e.Add(finding.Finding{Rule: &r.Rule, At: h.At, Text: strconv.Itoa(h.V) + " place" + plural(h.V) + " to hide for " + strconv.Itoa(n) + " animal" + plural(n), Limit: "one for each", Source: r.Source, Write: "hides = " + strconv.Itoa(n)})
	}
}
