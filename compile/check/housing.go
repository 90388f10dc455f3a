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
		Title:   "There is nothing to hang from, or to live on or in.",
		Why:     "Hanging moulters that cannot hang free die in the moult; animals of bark and trees find no rest on the floor, nor those of rock outside a crack.",
		Source:  "scorpionforum.darkbb.com/t1846-molting-information-sheet; jonathansjungleroadshow.co.uk, tailless whip scorpion",
		Instead: "Upright bark, or a roof that it can hang from, and perches = true. For animals of rock flat stones that cannot slip, and how many as hides."}},
	{Enclosure: substrateShallow, Rule: finding.Rule{ID: "substrate-shallow", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The substrate is not deep enough.",
		Why:     "A burrower that cannot dig cannot get out of heat, dry air or light.",
		Source:  "the species sheet",
		Instead: "Fill in more, or accept it with a reason and a date."}},
	{Enclosure: substrateHigh, Rule: finding.Rule{ID: "substrate-high", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The substrate reaches up to the lid, or past it.",
		Why:     "There is no room above it, or one of the two numbers is a slip, and whatever follows from them is wrong.",
		Source:  "the plan itself",
		Instead: "The depth and the height inside as they are measured."}},
	{Enclosure: soilChanged, Rule: finding.Rule{ID: "soil-changed", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "Soil that animals live in and eat is changed whole, or too often.",
		Why:     "They moult and pupate in chambers in it, and lie there as eggs: a chamber that is opened kills, and what is thrown out is young and food.",
		Source:  "the species sheet",
		Instead: "Top it up; change a part, far from where they have dug in, and say in task which part."}},
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
	{Enclosure: dropShort, Rule: finding.Rule{ID: "drop-short", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "There is little room to hang free for a moult.",
		Why:     "An animal slides down out of its old skin; one that touches the ground on the way stays crooked. With less than its own length it cannot get out: that refuses.",
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

// lightBody is the body length, in mm, up to which a fall of some leg spans is not known to
// burst a ground spider: common practice, no source.
const lightBody = 35

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
		if e.count(g) == 0 {
			continue
		}
		f, j := e.worst(r, schema.FigureFallMax, e.stage(g), func(limit quantity.Range) bool { return free > limit.High+0.5 })
		if !j.bad {
			continue
		}
		if long, known := e.bodyLength(g); known && long.High <= lightBody && f.OfType != "" {
			j.how, j.beyond = min(j.how, finding.Caution), false
		}
		u := h.Inside.V.Unit
		e.judge(j, f, finding.Finding{Rule: &r.Rule, At: h.Inside.At, Text: g.Animals.Name.V + " can fall " + quantity.Format(free, u) + " from the lid to the substrate",
			Limit: e.atMost(f.Range.High, u, f), Source: e.Cite(f), Write: quantity.FormatAtLeast(h.Inside.V.Height-f.Range.High, u) + " of substrate, or a lower enclosure"})
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
	life := e.word(schema.FigureLifestyle)
	crevice := life == "crevice" && h.Hides.V == 0 && !h.Hides.Bad
	for _, g := range e.Life.Groups {
		stage := e.stage(g)
		if e.count(g) == 0 || stage == "newborn" || life != "tree" && life != "bark" && !(crevice && !small(stage)) && !e.hangs(stage) {
			continue // young hide under bits of stone that nobody counts
		}
		at := h.Perches.At
		if !at.Written() {
			at = h.At
		}
		f := e.figure(schema.FigureLifestyle)
		x := finding.Finding{Rule: &r.Rule, At: at, Text: g.Animals.Name.V + " live above the ground, and there is nothing to live on", Limit: e.limit("lives above the ground", f), Write: "upright bark, and then true as perches"}
		how := r.Severity
		switch {
		case e.hangs(stage):
			f = e.figure(schema.FigureHangsToMoult)
			x.Text, x.Limit = g.Animals.Name.V+" must hang free to moult, and there is nothing to hang from", e.limit("hangs free", f)
		case crevice:
			x.Text, x.Limit = g.Animals.Name.V+" live in cracks of rock, and there is none", e.limit("lives under and between flat stones", f)
			x.Write = "flat stones that cannot slip, and then as hides " + strconv.Itoa(max(1, e.hiding()))
			if h.Hides.Set() {
				x.At = h.Hides.At
			} else {
				x.Text, how = g.Animals.Name.V+" live in cracks of rock, and what they hide in is not said", finding.Caution
			}
		}
		x.Source = e.Cite(f)
		if how == r.Severity {
			e.Add(x)
		} else {
			e.Soft(x, how)
		}
		return
	}
}

// substrateHigh passes over substrate that just fills a box of animals that live in it.
func substrateHigh(r *Rule, e *Enclosure) {
	h := e.Plan.Housing
	if !h.Depth.Set() || !h.Inside.Set() {
		return
	}
	depth, high, u := h.Depth.V.Value, h.Inside.V.Height, h.Inside.V.Unit
	if depth < high-1e-9 {
		return
	}
	x := finding.Finding{Rule: &r.Rule, At: h.Depth.At, Text: "the substrate is " + h.Depth.V.String() + " deep in a box that is " + quantity.Format(high, u) + " high inside",
		Limit: "less than " + quantity.Format(high, u), Source: r.Source, Write: "the depth that is there, or the height inside as it is", Also: []finding.Related{{At: h.Inside.At, Text: "the box"}}}
	if depth > high+1e-9 || e.Sheet.Preys() {
		e.Add(x)
		return
	}
	e.Soft(x, finding.Caution)
}

// soilChanged passes over a box in which all are grown and moult no more.
func soilChanged(r *Rule, e *Enclosure) {
	if !e.true(schema.FigureLivesInFood) || e.all(func(stage string) bool { return stage == "adult" && !e.true(schema.FigureMoultsAsAdult) }) {
		return
	}
	least, days := e.figure(schema.FigureSubstrateChange), 0
	if least != nil {
		days = int(least.Range.Low / (24 * 60))
	}
	for i := range e.Series {
		s := &e.Series[i]
		if s.Kind != schema.KindDeepClean || s.FromSheet || s.Timing == nil {
			continue
		}
		f := e.figure(schema.FigureLivesInFood)
		x := finding.Finding{Rule: &r.Rule, At: s.Origin, Source: e.Cite(f)}
		gap, more := e.closest(s)
		switch {
		case least != nil && more && gap < days-days/30: // months differ in length
			x.Text = "the soil is changed " + step(gap) + ", and " + e.Sheet.Name.V + " lives in it"
			long := quantity.Format(least.Range.Low, least.Range.Unit)
			x.Limit = e.limit(long+" between two at the least, and never whole", least)
			x.Source, x.Write = e.Cite(least), long+" or more between two, and in task that it is a part of it"
		case !s.Own && s.Days.Next(e.Horizon.Today) >= 0:
			x.Text = "the whole soil is changed, and " + e.Sheet.Name.V + " lives in it"
			x.Limit, x.Write = e.limit("never whole", f), "in task what is really done, such as a third of the soil"
		default:
			continue
		}
		e.Add(x)
	}
}

// filled says what to write where there must be so much substrate, in mm: a depth, and a
// taller box where this one has no room above it for the animals.
func (e *Enclosure) filled(depth float64, u quantity.Unit) string {
	text := quantity.FormatAtLeast(depth, u) + " of substrate"
	size, room := e.Plan.Housing.Inside, 0.0
	for _, g := range e.Life.Groups {
		if e.count(g) > 0 {
			room = max(room, e.typicalLength(g))
		}
	}
	if size.Set() && depth+room > size.V.Height {
		text += " in a box at least " + quantity.FormatAtLeast(depth+room, size.V.Unit) + " high"
	}
	return text
}

// share is how long the animals are as a share of the grown, the longest of them; 1 where
// one is grown or soon will be. A sheet's depth is for the grown, and smaller ones dig less.
func (e *Enclosure) share() float64 {
	f := e.of(schema.FigureLength, "adult")
	if f == nil || e.hasGrown() {
		return 1
	}
	share := 0.0
	for _, g := range e.Life.Groups {
		if e.count(g) > 0 {
			share = max(share, 2*e.typicalLength(g)/(f.Range.Low+f.Range.High))
		}
	}
	if share == 0 {
		return 1
	}
	return min(share, 1)
}

func substrateShallow(r *Rule, e *Enclosure) {
	h, least := e.Plan.Housing, e.figure(schema.FigureSubstrateDepthMin)
	if least == nil || least.Range.Low == 0 || h.Depth.Bad || h.Inside.Bad {
		return
	}
	share := e.share()
	enough := least.Range.Low * share
	limit := func(u quantity.Unit) string {
		if share == 1 {
			return e.atLeast(least.Range.Low, u, least)
		}
		return wording.AtLeast(enough, u) + " at their size: " + e.atLeast(least.Range.Low, u, least) + ", when grown"
	}
	if !h.Depth.Set() {
		u := h.Inside.V.Unit
		e.Soft(finding.Finding{Rule: &r.Rule, At: h.At, Text: "how deep the substrate is, is not said", Limit: limit(u), Source: e.Cite(least),
			Write: e.filled(enough, u) + ", or the depth as it is"}, finding.Caution)
		return
	}
	depth, u := h.Depth.V.Value, h.Depth.V.Unit
	if j := judged(r, least, func(limit quantity.Range) bool { return depth < limit.Low*share-1e-9 }); j.bad {
		x := finding.Finding{Rule: &r.Rule, At: h.Depth.At, Text: h.Depth.V.String() + " of substrate is too shallow for " + e.Sheet.Name.V,
			Limit: limit(u), Source: e.Cite(least), Write: e.filled(enough, u)}
		if share == 1 {
			if !e.hasGrown() {
				j.how = finding.Advice // how large they are is not known
			}
			e.judge(j, least, x)
			return
		}
		// Young of a stage differ twofold in size, and the smallest want the least.
		x.Text += " of this size"
		switch {
		case j.how == finding.Advice, !e.all(small) && depth >= enough/2:
			e.Soft(x, finding.Advice)
		case depth < enough/2:
			e.Soft(x, finding.Caution)
		}
		return
	}
	// Up to a fifth less is as good as what is advised (judgement).
	if f := e.figure(schema.FigureSubstrateDepthAdvised); f != nil && e.hasGrown() && depth < 0.8*f.Range.Low-1e-9 {
		e.Soft(finding.Finding{Rule: &r.Rule, At: h.Depth.At, Text: h.Depth.V.String() + " of substrate is enough, and more is advised",
			Limit: e.atLeast(f.Range.Low, u, f), Source: e.Cite(f), Write: e.filled(f.Range.Low, u)}, finding.Advice)
	}
}

// hasGrown reports whether a grown animal is in the enclosure, or one that will soon be.
func (e *Enclosure) hasGrown() bool {
	return slices.ContainsFunc(e.Life.Groups, func(g *life.Group) bool { return !small(e.stage(g)) && e.stage(g) != "juvenile" })
}

// all reports whether something is so of the stages of all who live here.
func (e *Enclosure) all(is func(stage string) bool) bool {
	return !slices.ContainsFunc(e.Life.Groups, func(g *life.Group) bool { return e.count(g) > 0 && !is(e.stage(g)) })
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
		x := finding.Finding{Rule: &r.Rule, At: h.Inside.At, Text: "there are " + quantity.Format(free, u) + " between substrate and roof for " + g.Animals.Name.V + " of up to " + quantity.Format(long.High, u),
			Limit: wording.AtLeast(2*long.High, u), Source: r.Source, Write: "a taller enclosure, or less substrate"}
		if free < long.Low {
			e.Add(x) // not even the smallest of them has its own length
		} else {
			e.Soft(x, finding.Caution)
		}
		return
	}
}

// hiding counts those that need a hide of their own: hunters that are past the smallest
// sizes. Young hide under bits of bark and in crevices that nobody counts, and woodlice
// and millipedes crowd under one piece of bark.
func (e *Enclosure) hiding() int { return growth.Hiding(e.Life, e.Today) }

func hidesFew(r *Rule, e *Enclosure) {
	h := e.Plan.Housing.Hides
	crevice := e.word(schema.FigureLifestyle) == "crevice"
	if !h.Set() || e.compartments() || e.Plan.Housing.Perches.V && !crevice || crevice && h.V == 0 && !e.Plan.Housing.Perches.V {
		return // on branches there is cover enough; no crack at all is said by no-perch
	}
	n := e.hiding()
	if h.V >= n {
		return
	}
	x := finding.Finding{Rule: &r.Rule, At: h.At, Text: wording.Count(h.V, "place", "places") + " to hide for " + wording.Animals(n), Limit: "one for each", Source: r.Source, Write: wording.Count(n, "place", "places") + " to hide, and then as hides " + strconv.Itoa(n)}
	if crevice {
		x.Write += ", of flat stones that cannot slip"
	}
	e.Add(x)
}
