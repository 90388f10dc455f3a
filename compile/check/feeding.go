package check

import (
	"math"
	"strconv"

	"vivary/compile/food"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// When and how much is fed. Too long between two meals, and leftovers that stay in,
// are found by the proof; meals that a moult or a season forbids are held back by
// the roster.
var feeding = []*Rule{
	{Enclosure: fedCold, Rule: finding.Rule{ID: "fed-while-cold", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "Meals go on in a season that is too cold to digest them.",
		Why:     "Below its active temperature an animal does not digest. The meal rots inside it, or the prey bites it.",
		Source:  "voofla.com, Titan Scorpions, 17 March 2022; herpetoculturenetwork.com, on power cuts",
		Instead: "feeding = \"none\" in that season."}},
	{Enclosure: fedOften, Rule: finding.Rule{ID: "fed-too-often", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Meals come closer together than is sensible.",
		Why:     "What is not eaten stays in, and a fat animal is at risk when it falls or moults.",
		Source:  "the species sheet; tarantulas.com, on amounts",
		Instead: "Longer between meals."}},
	{Enclosure: portionOdd, Rule: finding.Rule{ID: "portion-odd", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "The food of a week is far from what is usual.",
		Why:     "It is twice the most or half the least that keepers give, weighed; often it is a slip in a number.",
		Source:  "the species sheet",
		Instead: "Look at per_animal and at the days."}},
	{Enclosure: shortOfPrey, Rule: finding.Rule{ID: "prey-short", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A group gets fewer prey items than there are animals.",
		Why:     "Fights over one prey item, and hunger, lead to cannibalism.",
		Source:  "reptiliansource.com/pages/emperor-scorpion-care; scribd.com/document/253855207",
		Instead: "At least one item for each animal, and one more."}},
}

// fedCold takes as too cold what the sheet has for a cool rest; for a species that
// takes none, what is below all that is good for it.
func fedCold(r *Rule, e *Enclosure) {
	for _, s := range e.Plan.Seasons {
		e.fedUnheated(r, s)
		if s.Climate == nil || !s.Climate.WarmEnd.Set() || s.Feeding.V == "none" || s.Feeding.Bad {
			continue
		}
		if s.Heating.V == "off" && !s.Feeding.Set() {
			continue // no meals, without a word
		}
		warm, f := s.Climate.WarmEnd, e.figure(schema.FigureWinterRest)
		switch need := e.figure(schema.FigureSpotNeeded); {
		case need != nil && warm.V.High < need.Range.Low-rounding:
			f = need
		case f != nil && warm.V.High <= f.Range.High:
		case f == nil && e.figure(schema.FigureTemperatureSoft) != nil && warm.V.High < e.figure(schema.FigureTemperatureSoft).Range.Low:
			f = e.figure(schema.FigureTemperatureSoft)
		default:
			continue
		}
		at := s.Feeding.At
		if !at.Written() {
			at = s.At
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: at, Text: "meals go on in season " + strconv.Quote(s.Name.V) + ", when even the warm end is at " + warm.V.String(),
			Limit: e.within(f.Range, warm.V.Unit, f), Source: e.Cite(f), Write: e.restOrHeat(), Edits: e.fasting(s), Also: []finding.Related{{At: warm.At, Text: "the season's warm end"}}})
	}
}

// roomIn returns what the room is like in a season: as it says of its winter or its summer,
// where the middle of the season lies there, else of the year.
func (e *Enclosure) roomIn(s *plan.Season) plan.Written[quantity.Range] {
	room := e.Plan.Place
	if from, ok := dayOf(s.From.V); ok {
		mid := (from + length(s)/2) % 365
		if south, _ := e.Collection.Plan.South(); south {
			mid = (mid + 182) % 365
		}
		switch {
		case (mid < 90 || mid >= 304) && room.Winter.Set(): // November to March
			return room.Winter
		case mid >= 120 && mid < 274 && room.Summer.Set(): // May to September
			return room.Summer
		}
	}
	return room.Temperature
}

// restOrHeat is what is to be done where meals go on in the cold.
func (e *Enclosure) restOrHeat() string {
	if life.Rests(e.Sheet) {
		return "no meals in that season"
	}
	return "a warmer season: it takes no cool rest"
}

// fasting is the edit that leaves out the meals of a season, of a species that rests.
func (e *Enclosure) fasting(s *plan.Season) []finding.Edit {
	if !life.Rests(e.Sheet) || !s.Feeding.Set() {
		return nil
	}
	return finding.Text(s.Feeding.At, "none")
}

// fedUnheated is about meals in a season in which the heaters are off and no warm end is
// planned: it is then as the room is.
func (e *Enclosure) fedUnheated(r *Rule, s *plan.Season) {
	if s.Off.V || s.Heating.V != "off" || s.Feeding.V == "none" || s.Climate != nil && s.Climate.WarmEnd.Set() || life.CoolingOf(e.Plan, s).Fasting {
		return
	}
	room := e.Plan.Place
	if room == nil || !room.Temperature.Set() || !e.Plan.Heated() {
		return
	}
	t := e.roomIn(s)
	warmest := t.V.High
	f := e.figure(schema.FigureSpotNeeded)
	if f != nil {
		warmest = (t.V.Low + t.V.High) / 2
	} else {
		f = e.figure(schema.FigureTemperatureSoft)
	}
	if f == nil || warmest >= f.Range.Low-rounding {
		return
	}
	at := s.Feeding.At
	if !at.Written() {
		at = s.Heating.At
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: at, Text: "meals go on in season " + strconv.Quote(s.Name.V) + " with the heaters off, in a room of " + t.V.String() + ": it cannot digest them",
		Limit: e.atLeast(f.Range.Low, t.V.Unit, f), Source: e.Cite(f), Write: "the heaters on in that season; or no meals in it, where the species takes a cool rest", Also: []finding.Related{{At: t.At, Text: "the room"}}})
}

// meals returns the part of an enclosure's series that is meals: series are sorted
// by their kind.
func meals(all []roster.Entry) []roster.Entry {
	from := 0
	for from < len(all) && !all[from].Kind.Meal {
		from++
	}
	to := from
	for to < len(all) && all[to].Kind.Meal {
		to++
	}
	return all[from:to]
}

// meals calls use for every series of meals that has prey and eaters.
func (e *Enclosure) meals(use func(*roster.Entry)) {
	for i := range e.fed {
		if s := &e.fed[i]; s.Meal != nil && !s.Meal.Unread && s.Group != nil && !s.Group.Animals.Unread && len(s.Menu) > 0 && e.count(s.Group) > 0 {
			use(s)
		}
	}
}

// own returns the plan's feeding of a group, or nil where the sheet brings it.
func (e *Enclosure) own(g *life.Group) *plan.Feeding {
	for _, f := range e.Plan.Feeding {
		if f.Name.V == g.Animals.Name.V {
			return f
		}
	}
	return nil
}

// mealAt is where the meal stands in the plan.
func (e *Enclosure) mealAt(s *roster.Entry) source.Place {
	if f := e.own(s.Group); f != nil {
		return f.At
	}
	return s.Group.Animals.At
}

func fedOften(r *Rule, e *Enclosure) {
	e.meals(func(s *roster.Entry) {
		if e.own(s.Group) == nil {
			return
		}
		n := e.need(schema.NeedFood, e.stage(s.Group))
		if n == nil || !n.Shortest.Set() {
			return
		}
		least := int(n.Shortest.V.Value / (24 * 60))
		if gap, often := tooClose(e.between(s), least); often {
			var edits []finding.Edit
			if f := e.own(s.Group); f.Every.Set() {
				edits = finding.Text(f.Every.At, wording.Days(least))
			}
			e.Add(finding.Finding{Rule: &r.Rule, At: e.mealAt(s), Text: s.Group.Animals.Name.V + " are fed " + again(gap),
				Limit: wording.Days(least) + " between meals at the least, need \"food\" of " + n.Whose(e.Sheet), Source: e.cite(n.Cited), Write: wording.Days(least) + " or more between two meals", Edits: edits})
		}
	})
}

// again says after how many days something is done again.
func again(days int) string {
	if days == 0 {
		return "twice on one day"
	}
	return "again after " + wording.Days(days)
}

// tooClose returns the shortest of the times between two meals, and whether meals are too
// close together: some by more than half, or many. A meal that is put a day earlier for once,
// as before a journey, harms nobody (common practice, no source).
func tooClose(between []int, least int) (shortest int, is bool) {
	const seldom = 10 // of so many times one
	shortest, short := least, 0
	for _, days := range between {
		if days < least {
			short++
		}
		shortest = min(shortest, days)
	}
	return shortest, short > 0 && (2*shortest < least || seldom*short > len(between))
}

func (e *Enclosure) need(what *schema.NeedName, stage string) *plan.Need {
	var general *plan.Need
	for _, n := range e.Sheet.Needs {
		switch {
		case n.What != what:
		case len(n.Stages) == 0:
			general = n
		case plan.Lists(n.Stages, stage):
			return n
		}
	}
	return general
}

// portionOdd weighs a week's food: a sheet counts in prey of its own default menu,
// and four small items are not four large ones.
func portionOdd(r *Rule, e *Enclosure) {
	for _, g := range e.Life.Groups {
		own := e.own(g)
		if own == nil || e.count(g) == 0 {
			continue
		}
		stage := e.stage(g)
		usual := e.of(schema.FigureItemsAWeek, stage)
		if usual == nil {
			continue
		}
		items, grams, known := 0.0, 0.0, true
		e.meals(func(s *roster.Entry) {
			if s.Group != g {
				return
			}
			n := food.Rate(e.Horizon, s) * s.Menu[0].Items
			items += n
			m, ok := e.meanMass(s)
			grams, known = grams+n*m, known && ok
		})
		if items == 0 {
			continue
		}
		low, high, got := usual.Range.Low, usual.Range.High, items
		text, limit := wording.Items(items)+" a week for each animal", e.limit(usual.Value.V+" items a week", usual)
		if each, ok := e.defaultMass(stage); ok && known {
			low, high, got = low*each, high*each, grams
			text += ", about " + quantity.Format(grams, e.in(quantity.Gram))
			limit += ", about " + quantity.FormatRange(low, high, e.in(quantity.Gram))
		}
		x := finding.Finding{Rule: &r.Rule, At: own.At, Limit: limit, Source: e.Cite(usual), Write: "more or fewer for each (per_animal), or other days, so that it comes nearer"}
		switch {
		case got > 2*high:
			x.Text = text + ": more than twice the most that is usual"
		case got < low/2:
			x.Text = text + ": less than half the least that is usual"
		default:
			continue
		}
		if own.PerAnimal.Set() {
			x.At = own.PerAnimal.At
		}
		e.Add(x)
	}
}

// meanMass is the mean weight of the items of a menu, in g.
func (e *Enclosure) meanMass(s *roster.Entry) (float64, bool) {
	sum := 0.0
	for k := range s.Menu {
		z := e.size(s.Menu[k].Prey)
		if z == nil || !z.Mass.Set() {
			return 0, false
		}
		sum += (z.Mass.V.Low + z.Mass.V.High) / 2
	}
	return sum / float64(len(s.Menu)), true
}

// defaultMass is the mean weight of the prey that the sheet gives a stage, in g.
func (e *Enclosure) defaultMass(stage string) (float64, bool) {
	for _, f := range e.Sheet.Feeding {
		if len(f.Stages) > 0 && !plan.Lists(f.Stages, stage) {
			continue
		}
		sum, menu := 0.0, f.Menu()
		for _, p := range menu {
			z := e.size(p.V)
			if z == nil || !z.Mass.Set() {
				return 0, false
			}
			sum += (z.Mass.V.Low + z.Mass.V.High) / 2
		}
		return sum / float64(max(1, len(menu))), len(menu) > 0
	}
	return 0, false
}

func shortOfPrey(r *Rule, e *Enclosure) {
	e.meals(func(s *roster.Entry) {
		n := e.count(s.Group)
		items := int(math.Ceil(s.Menu[0].Items*float64(n) - 1e-9))
		if n < 2 || items >= n || e.Plan.Culture.V || !e.Sheet.Preys() {
			return
		}
		at, edits := e.mealAt(s), []finding.Edit(nil)
		if f := e.own(s.Group); f != nil && f.PerAnimal.Set() {
			at, edits = f.PerAnimal.At, finding.Plain(f.PerAnimal.At, "1")
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: at, Text: strconv.Itoa(n) + " animals share " + strconv.Itoa(items) + " prey items", Limit: "one item for each at the least", Source: r.Source, Write: "one for each animal at the least", Edits: edits})
	})
}
