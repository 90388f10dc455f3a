package check

import (
	"slices"
	"strconv"

	"vivary/compile/growth"
	"vivary/compile/life"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Whether the enclosure fits those who live in it.
var housing = []*Rule{
	{Enclosure: fallHigh, Rule: finding.Rule{ID: "fall-high", Severity: finding.Danger, Silence: finding.Never,
		Title:   "A heavy spider can fall from too high.",
		Why:     "It climbs the walls, and a fall ruptures its abdomen.",
		Source:  "the species sheet; common practice: one and a half leg spans at the most",
		Instead: "Fill in more substrate, or take a lower enclosure."}},
	{Enclosure: noPerch, Rule: finding.Rule{ID: "no-perch", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "There is nothing to hang from or to live on.",
		Why:     "Hanging moulters that cannot hang free die in the moult; animals of bark and trees find no rest on the floor.",
		Source:  "scorpionforum.darkbb.com/t1846-molting-information-sheet; jonathansjungleroadshow.co.uk, tailless whip scorpion",
		Instead: "Upright bark, or a roof that it can hang from, and perches = true."}},
	{Enclosure: substrateShallow, Rule: finding.Rule{ID: "substrate-shallow", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The substrate is not deep enough.",
		Why:     "A burrower that cannot dig cannot get out of heat, dry air or light.",
		Source:  "the species sheet",
		Instead: "Fill in more, or accept it with a reason and a date."}},
	{Enclosure: floorSmall, Rule: finding.Rule{ID: "floor-small", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "The floor is small for the animals.",
		Why:     "Crowding and hunger lead to cannibalism.",
		Source:  "the species sheet; pkpets.com.au/scorpions-care-guide",
		Instead: "A larger enclosure, or fewer animals."}},
	{Enclosure: volumeSmall, Rule: finding.Rule{ID: "volume-small", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "The enclosure holds less than is asked for even one of the animals.",
		Why:     "A small volume heats up, dries out and fouls fast.",
		Source:  "the species sheet",
		Instead: "A larger enclosure."}},
	{Enclosure: heightLow, Rule: finding.Rule{ID: "height-low", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The enclosure is lower than the species needs.",
		Why:     "There must be room for the substrate, or for climbing and moulting. What hangs to moult and has no room for it dies of it or is lame: that refuses.",
		Source:  "the species sheet",
		Instead: "A taller enclosure."}},
	{Enclosure: dropShort, Rule: finding.Rule{ID: "drop-short", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "There is little room to hang free for a moult.",
		Why:     "An animal slides down out of its old skin; one that touches the ground on the way stays crooked.",
		Source:  "common practice, no source: twice its length above the substrate",
		Instead: "A taller enclosure, or less substrate."}},
	{Enclosure: hidesFew, Rule: finding.Rule{ID: "hides-few", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "There are fewer places to hide than animals.",
		Why:     "Those without one are harried, and do not feed.",
		Source:  "reptiliansource.com/pages/emperor-scorpion-care; scribd.com/document/253855207",
		Instead: "A hide for each."}},
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
		if f == nil || e.count(g) == 0 {
			continue
		}
		j := judged(r, f, func(limit quantity.Range) bool { return free > limit.High+0.5 })
		if !j.bad {
			continue
		}
		u := h.Inside.V.Unit
		e.judge(j, f, finding.Finding{Rule: &r.Rule, At: h.Inside.At, Text: g.Animals.Name.V + " can fall " + quantity.Format(free, u) + " from the lid to the substrate",
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
	if j := judged(r, least, func(limit quantity.Range) bool { return depth < limit.Low-1e-9 }); j.bad {
		x := finding.Finding{Rule: &r.Rule, At: h.Depth.At, Text: h.Depth.V.String() + " of substrate is too shallow for " + e.Sheet.Name.V,
			Limit: e.atLeast(least.Range.Low, u, least), Source: e.Cite(least), Write: "depth = \"" + quantity.FormatAtLeast(least.Range.Low, u) + "\""}
		if !e.hasGrown() {
			j.how = finding.Advice // the figure is for the grown; smaller ones dig their own length
		}
		e.judge(j, least, x)
		return
	}
	if f := e.figure(schema.FigureSubstrateDepthAdvised); f != nil && e.hasGrown() && depth < f.Range.Low-1e-9 {
		e.Soft(finding.Finding{Rule: &r.Rule, At: h.Depth.At, Text: h.Depth.V.String() + " of substrate is enough, and more is advised",
			Limit: e.atLeast(f.Range.Low, u, f), Source: e.Cite(f), Write: "depth = \"" + quantity.FormatAtLeast(f.Range.Low, u) + "\""}, finding.Advice)
	}
}

// hasGrown reports whether a grown animal is in the enclosure, or one that will soon be.
func (e *Enclosure) hasGrown() bool {
	return slices.ContainsFunc(e.Life.Groups, func(g *life.Group) bool { return !small(e.stage(g)) && e.stage(g) != "juvenile" })
}

func floorSmall(r *Rule, e *Enclosure) {
	g, ok := e.forecast()
	if !ok {
		return
	}
	now, size := &g.Now, e.Plan.Housing.Inside
	if !now.Sized || now.First == nil {
		return
	}
	// What a type says of one is said of all in the same proportion.
	j := judged(r, now.First, func(limit quantity.Range) bool {
		return now.Has < now.Floor*limit.Low/now.First.Range.Low*growth.Tolerance
	})
	if !j.bad {
		return
	}
	u := size.V.Unit.Square()
	limit := wording.AtLeast(now.Floor, u)
	if now.Animals > 1 {
		limit += ": " + quantity.Format(now.First.Range.Low, u) + " for the first and less for each further"
	}
	e.judge(j, now.First, finding.Finding{Rule: &r.Rule, At: size.At, Text: "a floor of " + quantity.Format(now.Has, u) + " is small for " + wording.Animals(now.Animals),
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
		u := size.V.Unit.Hollow()
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
		if f == nil || e.count(g) == 0 {
			continue
		}
		j := judged(r, f, func(limit quantity.Range) bool { return size.V.Height < limit.Low*growth.Tolerance })
		if !j.bad {
			continue
		}
		if kills := j.beyond && f.Harm.Or("kills") == "kills" && e.hangs(e.stage(g)); j.how == r.Severity && !kills {
			j.how = finding.Caution // it is lame for want of height where it hangs for a moult, and uneasy elsewhere
		}
		u := size.V.Unit
		e.judge(j, f, finding.Finding{Rule: &r.Rule, At: size.At, Text: "the enclosure is " + quantity.Format(size.V.Height, u) + " high inside", Limit: e.atLeast(f.Range.Low, u, f), Source: e.Cite(f), Write: "a taller enclosure"})
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
			Limit: wording.AtLeast(2*long.High, u), Source: r.Source, Write: "a taller enclosure"})
		return
	}
}

// hiding counts those that need a hide of their own: hunters that are past the smallest
// sizes. Young hide under bits of bark and in crevices that nobody counts, and woodlice
// and millipedes crowd under one piece of bark.
func (e *Enclosure) hiding() (n int) {
	if !e.hunts() {
		return 0
	}
	for _, g := range e.Life.Groups {
		if !small(e.stage(g)) && !g.Strayed() {
			n += e.count(g)
		}
	}
	return n
}

func hidesFew(r *Rule, e *Enclosure) {
	h := e.Plan.Housing.Hides
	if !h.Set() || e.compartments() || e.Plan.Housing.Perches.V {
		return
	}
	if n := e.hiding(); h.V < n {
		e.Add(finding.Finding{Rule: &r.Rule, At: h.At, Text: wording.Count(h.V, "place", "places") + " to hide for " + wording.Animals(n), Limit: "one for each", Source: r.Source, Write: "hides = " + strconv.Itoa(n)})
	}
}
