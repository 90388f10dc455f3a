package check

import (
	"slices"
	"strconv"
	"strings"
	"unicode"

	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// A species of damp places that gets no misting or watering at all is found by the
// proof, as is a gap between two of them.
var moisture = []*Rule{
	{Enclosure: humidityHarms, Rule: finding.Rule{ID: "humidity-harmful", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "A humidity is planned that the species does not bear.",
		Why:     "A dry animal sticks in its moult; wet air brings mites, and fungus (mycosis) to animals of dry places.",
		Source:  "a species sheet that states a hard limit; scorpionforum.darkbb.com/t1846-molting-information-sheet",
		Instead: "Plan a humidity within the limits."}},
	{Enclosure: noWater, Rule: finding.Rule{ID: "no-water", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "There is no water dish for a species that drinks from one.",
		Why:     "Some species take all their water from damp soil, food or droplets. This one is not known to.",
		Source:  "the species sheet",
		Instead: "A shallow dish that always holds water."}},
	{Enclosure: substrateMoisture, Rule: finding.Rule{ID: "substrate-moisture", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The substrate is kept dry for a species of damp places, damp for one of dry places, or wet through.",
		Why:     "A dry animal sticks in its moult. A desert animal on wet soil is overrun by mites. Wet through is mud for any: water stands in burrows and in the chambers in which animals moult.",
		Source:  "the species sheet; fr.scribd.com/document/79285516, a college's procedure on wet instead of humid",
		Instead: "Damp below for the one, dry for the other."}},
	{Enclosure: moistureUnsaid, Rule: finding.Rule{ID: "moisture-unsaid", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "How damp the substrate is stands in its name only.",
		Why:     "Nothing is reckoned from words that are free: without moisture it is taken to be as is usual for the species.",
		Source:  "the plan itself",
		Instead: "moisture = \"dry\", \"damp below\", \"damp\" or \"wet\"."}},
	{Enclosure: humidityUnusual, Rule: finding.Rule{ID: "humidity-unusual", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A humidity is planned outside of what is good for the species.",
		Why:     "Keepers' figures differ. What none of them gives wants a reason.",
		Source:  "the species sheet",
		Instead: "Plan nearer to what is aimed for; a part of the year is a season block."}},
	{Enclosure: aridMist, Rule: finding.Rule{ID: "misted-too-often", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A species of dry places is misted or watered often.",
		Why:     "Wet soil brings mites, and the animal cannot get away from it.",
		Source:  "fr.scribd.com/document/79285516, a college's procedure; the figure of 7 days is common practice, no source",
		Instead: "Mist rarely, and let all dry again. Water in a dish is enough."}},
	{Enclosure: wetSealed, Rule: finding.Rule{ID: "wet-sealed", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "It is kept wet, and no air gets in.",
		Why:     "Keepers blame still, wet air for disease and deaths of spiders. Mould comes within days; whether mould alone harms is disputed.",
		Source:  "common practice; thetarantulacollective.com, Caribena versicolor, revised March 2025",
		Instead: "Openings, low on one side and high on the other, or soil that dries on top."}},
	{Enclosure: staleAir, Rule: finding.Rule{ID: "stale-air", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Damp air is aimed for, and hardly any air gets through.",
		Why:     "Stagnant wet air grows mould. A laboratory's frames warped and moulded. Whether mould harms a healthy animal is disputed; it shows that the air is poor.",
		Source:  "freethoughtblogs.com/pharyngula, a university's spider laboratory; thetarantulacollective.com",
		Instead: "Hold the damp in the substrate, and let air through."}},
	{Enclosure: noCrossAir, Rule: finding.Rule{ID: "no-cross-air", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A species that needs moving air has no openings on opposite sides.",
		Why:     "Still, wet air harms tree spiders and mantises more than dry air does: it brings mould and disease.",
		Source:  "the species sheet; thetarantulacollective.com, Caribena versicolor, revised March 2025",
		Instead: "Openings low on one side and high on the other."}},
	{Enclosure: airUnclear, Rule: finding.Rule{ID: "air-unclear", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Lid and vents say different things of the air.",
		Why:     "Whether it is a box that is shut or one that is open decides how damp it gets, and nothing is reckoned well from both.",
		Source:  "the plan itself",
		Instead: "Let vents say how air gets through with the lid that is on it."}},
	{Enclosure: meshTop, Rule: finding.Rule{ID: "mesh-top", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A mesh lid lies over a species of damp places.",
		Why:     "Warm, damp air rises and leaves through the lid, and the substrate dries faster than it is misted.",
		Source:  "common practice, no source",
		Instead: "A solid lid with some holes, or cover most of the mesh and write \"part mesh\"."}},
	{Enclosure: youngDraught, Rule: finding.Rule{ID: "young-draught", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Small young are kept in an enclosure with openings in its sides.",
		Why:     "A breeder found hers dried up at the vents.",
		Source:  "virginiacheeseman.co.uk/deserted, a professional breeder's diary",
		Instead: "Openings in the lid, until they have grown."}},
	{Enclosure: dishDeep, Rule: finding.Rule{ID: "dish-deep", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "The water dish is deep for the animals.",
		Why:     "They drown in it.",
		Source:  "common practice, no source: no deeper than the animal is high, taken as a quarter of its length; for the grown no deeper than they are long, as they reach the rim; 5 mm for all",
		Instead: "A shallower dish, or pebbles in it."}},
	{Enclosure: humidityExact, Rule: finding.Rule{ID: "humidity-exact", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "Humidity is planned as one exact figure.",
		Why:     "No keeper's gauge shows it that well, and no enclosure holds it.",
		Source:  "tomsbigspiders.wordpress.com, on care sheets and their figures",
		Instead: "A band, or a substrate that is damp below."}},
}

// humidities calls use for every humidity that the plan states.
func (e *Enclosure) humidities(use func(words string, season *plan.Season, h plan.Written[quantity.Range])) {
	if c := e.Plan.Climate; c != nil && c.Humidity.Set() {
		use("humidity", nil, c.Humidity)
	}
	for _, s := range e.Plan.Seasons {
		if s.Climate != nil && s.Climate.Humidity.Set() {
			use("humidity of season "+strconv.Quote(s.Name.V), s, s.Climate.Humidity)
		}
	}
}

func humidityHarms(r *Rule, e *Enclosure) {
	hard := e.figure(schema.FigureHumidityHard)
	if hard == nil {
		return
	}
	e.humidities(func(words string, _ *plan.Season, h plan.Written[quantity.Range]) {
		if !hard.Range.Encloses(h.V) {
			e.Add(finding.Finding{Rule: &r.Rule, At: h.At, Text: words + " is planned at " + h.V.String() + ", beyond what " + e.Sheet.Name.V + " bears",
				Limit: e.within(hard.Range, h.V.Unit, hard), Source: e.Cite(hard), Write: e.humidityInstead(), Edits: e.damper(h)})
		}
	})
}

// seasonal is for how many days of a year a dry or a wet season may be outside of what is
// good the rest of the year: a third of it (judgement).
const seasonal = 122

func humidityUnusual(r *Rule, e *Enclosure) {
	soft, hard := e.figure(schema.FigureHumiditySoft), e.figure(schema.FigureHumidityHard)
	if soft == nil {
		return
	}
	away := 0 // the days of the year in seasons that are planned outside
	e.humidities(func(_ string, s *plan.Season, h plan.Written[quantity.Range]) {
		if s != nil && !soft.Range.Encloses(h.V) {
			away += length(s)
		}
	})
	e.humidities(func(words string, s *plan.Season, h plan.Written[quantity.Range]) {
		if soft.Range.Encloses(h.V) || hard != nil && !hard.Range.Encloses(h.V) || s != nil && away <= seasonal {
			return
		}
		f := soft
		if t := e.figure(schema.FigureHumidityTarget); t != nil {
			f = t // which says what is disputed
		}
		dry := "drier"
		if h.V.High > soft.Range.High {
			dry = "damper"
		}
		if s != nil {
			words += ", in which it is away from what is good for " + wording.Days(away) + " of the year,"
		}
		once := ""
		if s != nil {
			once = "seasons"
		}
		e.Add(finding.Finding{Rule: &r.Rule, Once: once, Own: true, At: h.At, Text: words + " is planned at " + h.V.String() + ": " + dry + " than is good for " + e.Sheet.Name.V,
			Limit: e.within(soft.Range, h.V.Unit, soft), Source: e.Cite(f), Write: e.humidityInstead(), Edits: e.damper(h)})
	})
}

func (e *Enclosure) humidityInstead() string {
	if f := e.humidityAim(); f != nil {
		return "humidity of " + f.Range.String()
	}
	return ""
}

// damper is the edit that aims for the species' own humidity.
func (e *Enclosure) damper(h plan.Written[quantity.Range]) []finding.Edit {
	if f := e.humidityAim(); f != nil {
		return finding.Text(h.At, f.Range.String())
	}
	return nil
}

func (e *Enclosure) humidityAim() *plan.Figure {
	if f := e.figure(schema.FigureHumidityTarget); f != nil {
		return f
	}
	return e.figure(schema.FigureHumiditySoft)
}

func humidityExact(r *Rule, e *Enclosure) {
	e.humidities(func(words string, _ *plan.Season, h plan.Written[quantity.Range]) {
		if h.V.Single() {
			band := quantity.FormatRange(max(h.V.Low-5, 0), min(h.V.High+5, 100), h.V.Unit)
			e.Add(finding.Finding{Rule: &r.Rule, At: h.At, Text: words + " is planned at exactly " + h.V.String(), Source: r.Source,
				Write: "a band, " + band, Edits: finding.Text(h.At, band)})
		}
	})
}

func noWater(r *Rule, e *Enclosure) {
	w := e.Plan.Housing.Water
	if w.Set() && w.V == "none" && e.word(schema.FigureDrinks) == "dish" && !e.dropsForSmall() {
		f := e.figure(schema.FigureDrinks)
		e.Add(finding.Finding{Rule: &r.Rule, At: w.At, Text: "there is no dish, and " + e.Sheet.Name.V + " drinks from one", Limit: e.limit("drinks from a dish", f), Source: e.Cite(f), Write: "a dish, and then dish in water"})
	}
}

// dropsForSmall reports whether all are of the smallest and drink what is sprayed or dripped
// onto damp soil: slings in cups have no dish (common practice, no source).
func (e *Enclosure) dropsForSmall() bool {
	const often = 4 // days
	return e.all(small) && e.Plan.Housing.Moisture.Set() && e.Plan.Housing.Moisture.V != "dry" && slices.ContainsFunc(e.Series, func(s roster.Entry) bool {
		gap, more := e.closest(&s)
		return s.Kind.Needs == schema.NeedMoisture && more && gap <= often
	})
}

func substrateMoisture(r *Rule, e *Enclosure) {
	m := e.Plan.Housing.Moisture
	if !m.Set() {
		return
	}
	text, write := "", ""
	switch e.word(schema.FigureMoisture) {
	case "damp":
		if m.V == "dry" {
			text, write = "the substrate is kept dry through, and "+e.Sheet.Name.V+" depends on damp", "a substrate that is dry on top and damp below (moisture)"
		}
	case "arid":
		if m.V == "damp" || m.V == "wet" {
			text, write = "the substrate is kept "+m.V+" through, and "+e.Sheet.Name.V+" lives in dry places", "a dry substrate (moisture)"
		}
	}
	if text == "" && m.V == "wet" && e.sealed() == "" {
		// Nobody is known to live in mud: what digs has water in its burrow.
		e.Soft(finding.Finding{Rule: &r.Rule, At: m.At, Text: "the substrate is kept wet through: water stands in burrows and moulting chambers",
			Limit: "damp: a squeezed handful holds together and gives no drops", Source: "common practice, no source", Write: "a damp substrate (moisture)"}, finding.Caution)
		return
	}
	if text != "" {
		f := e.figure(schema.FigureMoisture)
		e.Add(finding.Finding{Rule: &r.Rule, At: m.At, Text: text, Limit: e.limit(f.Value.V, f), Source: e.Cite(f), Write: write})
	}
}

// How damp it is in a keeper's words, and what may be so of a part only.
var (
	soaked  = []string{"wet", "soaked", "soaking", "sodden", "flooded", "waterlogged", "boggy", "swampy"}
	dampish = []string{"damp", "moist", "humid"}
	parched = []string{"dry"}
	partly  = []string{"leaf", "leaves", "litter", "moss", "wood", "bark", "hay", "corner", "end", "side", "half", "hide", "below", "under", "over", "top", "layer"}
)

// moistureUnsaid asks for the word where what is taken in its place is the opposite of what
// the name of the substrate says.
func moistureUnsaid(r *Rule, e *Enclosure) {
	h := e.Plan.Housing
	if h.Moisture.Set() || !h.Substrate.Set() {
		return
	}
	words := strings.FieldsFunc(strings.ToLower(h.Substrate.V), func(r rune) bool { return !unicode.IsLetter(r) })
	any := func(of []string) bool {
		return slices.ContainsFunc(words, func(w string) bool { return slices.Contains(of, w) })
	}
	wet, damp, dry, arid := any(soaked), any(dampish), any(parched), e.word(schema.FigureMoisture) == "arid"
	taken, write := "damp below", ""
	if arid {
		taken = "dry"
	}
	switch {
	case any(partly), dry && (wet || damp):
		return
	case wet:
		write = "wet"
	case damp && arid:
		write = "damp"
	case dry && !arid:
		write = "dry"
	default:
		return
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: h.Substrate.At, Text: "how damp it is stands in the name of the substrate only, which is not reckoned with: it is taken to be " + taken,
		Limit: "moisture, where it is not as is usual for the species", Source: r.Source, Write: "moisture, with " + write + " or as it is"})
}

// usualMistGap is the least number of days between two mistings of a species of
// dry places where its sheet has none (common practice, no source).
const usualMistGap = 7

func aridMist(r *Rule, e *Enclosure) {
	if e.word(schema.FigureMoisture) != "arid" || e.all(small) || e.hasNeed(schema.NeedMoisture) {
		return // the smallest dry out, and are kept damper; a moist box in a dry one is wetted often
	}
	f := e.figure(schema.FigureMistIntervalMin)
	least := usualMistGap
	if f != nil {
		least = int(f.Range.Low / (24 * 60))
	}
	for i := range e.Series {
		s := &e.Series[i]
		if s.Kind.Needs != schema.NeedMoisture || s.Timing == nil || s.FromSheet {
			continue
		}
		if gap, more := e.closest(s); more && gap < least {
			x := finding.Finding{Rule: &r.Rule, At: s.Origin, Text: s.Name + " comes up " + step(gap) + ", and " + e.Sheet.Name.V + " lives in dry places",
				Limit: wording.Days(least) + " between two at the least", Source: r.Source, Write: wording.Days(least) + " or more between two"}
			if s.Timing.Every.Set() {
				x.Edits = finding.Text(s.Timing.Every.At, wording.Days(least))
			}
			if f != nil {
				x.Limit, x.Source = e.limit(x.Limit, f), e.Cite(f)
			}
			e.Add(x)
		}
	}
}

// between returns the numbers of days between one occasion of a series and the next, in
// whichever of its rounds, from today on: 0 for two on one day. Of a series in several rounds
// the first entry has them, and the others none.
func (e *Enclosure) between(s *roster.Entry) (gaps []int) {
	days, twice := s.Days, horizon.Days(nil)
	for i := range e.Series {
		switch o := &e.Series[i]; {
		case o == s || o.Timing == nil || o.Timing != s.Timing || o.Group != s.Group || o.Kind != s.Kind || o.Stage != s.Stage:
		case o.Round.Clock.V < s.Round.Clock.V || o.Round.Clock.V == s.Round.Clock.V && o.Round.Name.V < s.Round.Name.V:
			return nil
		default:
			again := o.Days.Clone()
			again.Keep(days)
			days = days.Clone()
			days.Union(o.Days)
			if twice != nil {
				again.Union(twice)
			}
			twice = again
		}
	}
	last := -1
	for d := days.Next(e.Horizon.Today); d >= 0; d = days.Next(d + 1) {
		if last >= 0 {
			gaps = append(gaps, d-last)
		}
		if last = d; twice != nil && twice.Has(d) {
			gaps = append(gaps, 0)
		}
	}
	return gaps
}

// closest is the least number of days between two occasions of a series, and false where
// there are no two.
func (e *Enclosure) closest(s *roster.Entry) (int, bool) {
	gaps := e.between(s)
	if len(gaps) == 0 {
		return 0, false
	}
	return slices.Min(gaps), true
}

// step says how often something comes up whose occasions lie so many days apart.
func step(gap int) string {
	if gap == 0 {
		return "twice on a day"
	}
	return "every " + wording.Step(gap)
}

func dishDeep(r *Rule, e *Enclosure) {
	const (
		share = 0.25
		cap   = 5 // mm; as deep as a bottle cap, which many slings have (common practice, no source)
	)
	d := e.Plan.Housing.DishDepth
	if !d.Set() || d.V.Value <= cap {
		return
	}
	for _, g := range e.Life.Groups {
		if e.count(g) == 0 {
			continue
		}
		stage := e.stage(g)
		long, known := e.bodyLength(g)
		most, who := long.Low*share, g.Animals.Name.V
		if !small(stage) && stage != "juvenile" {
			most = long.Low // the grown reach the rim
		}
		if f := e.of(schema.FigureLength, "young"); g.Brood && f != nil {
			long, known, most, who = f.Range, true, f.Range.Low*share, "the young on "+who
		}
		if most = max(most, cap); !known || d.V.Value <= most {
			continue
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: d.At, Text: who + " of " + quantity.Format(long.Low, d.V.Unit) + " may drown in a dish " + d.V.String() + " deep",
			Limit: wording.AtMost(most, d.V.Unit), Source: r.Source, Write: "a dish no deeper than " + quantity.FormatAtMost(most, d.V.Unit) + ", or pebbles in it"})
		return
	}
}
