// Package check holds the rules that compare a plan with what its species can
// bear: heat, moisture, food, company, safety. It looks at what is written and at
// the state of the animals; whether needs are met day by day is proved elsewhere.
package check

import (
	"embed"
	"sync"

	"vivary/compile/balance"
	"vivary/compile/deadline"
	"vivary/compile/growth"
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/compile/stock"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// Collection is what rules about the whole collection look at.
type Collection struct {
	Plan    *plan.Collection
	Today   civil.Date
	Horizon horizon.Horizon
	Lives   []*life.Enclosure
	Roster  *roster.Roster
	Stock   *stock.Report // nil where the plan has no culture, tub or supply
	// Deadlines are the dates of the house.
	Deadlines []deadline.Deadline
	found     finding.List
	facts     map[*plan.SpeciesSheet]facts
	sheets    []*plan.SpeciesSheet                   // those of the enclosures, each once, in walking order
	firsts    map[*plan.SpeciesSheet]*life.Enclosure // the first enclosure of each
	took      map[*plan.Round]walked                 // how long rounds take
	before    map[*plan.Round]walked                 // how long they took in the compilation before
	work      roster.Work                            // how long everybody works, once a rule has asked
	less      []Weaker                               // nil until it is asked
	byName    map[string]*life.Enclosure             // Lives by name; nil until it is asked
}

// Add adds a finding.
func (c *Collection) Add(f finding.Finding) { c.found.Add(f) }

// Enclosure is what rules about one enclosure look at. Plan.Sheet, Plan.Housing
// and at least one group are always there; Climate may be nil.
type Enclosure struct {
	*Collection
	Plan   *plan.Enclosure
	Sheet  *plan.SpeciesSheet
	Life   *life.Enclosure
	Series []roster.Entry
	facts  facts
	fed    []roster.Entry // those of Series that are meals
	found  finding.List

	balance  balance.Report // what physics says, once it is asked
	reported bool
	known    bool
	felt     bool          // whether cold and warm have been asked
	cold     *short        // how it is too cold, or nil
	warm     *short        // how it is too warm, or nil
	water    roster.Poured // what the care brings in, once it is asked
	watered  bool
	growth   growth.Report // what is to be expected, once it is asked
	grown    bool
	grows    bool
}

// enclosures are used again, one after another: they are large, and nobody keeps one.
var enclosures = sync.Pool{New: func() any { return new(Enclosure) }}

// Add adds a finding.
func (e *Enclosure) Add(f finding.Finding) {
	f.In = e.Plan.Box()
	e.found.Add(f)
}

// Soft adds a finding at a severity below its rule's own, for a milder case.
func (e *Enclosure) Soft(f finding.Finding, s finding.Severity) {
	f.In = e.Plan.Box()
	e.found.Soft(f, s)
}

// Cite says where a figure is from, and what others say.
func (c *Collection) Cite(f *plan.Figure) string {
	text := c.cite(f.Cited)
	if f.Disputed.Set() {
		text += "; others: " + f.Disputed.V
	}
	return text
}

func (c *Collection) cite(f plan.Cited) string { return c.Plan.Library.Cite(f) }

// Feeder returns the sheet of a feeder animal, or nil.
func (c *Collection) Feeder(name string) *plan.FeederSheet { return c.Plan.Library.Feeder(name) }

// Rule is one rule with what decides it. One of the two functions is set.
type Rule struct {
	finding.Rule
	Enclosure  func(*Rule, *Enclosure)
	Collection func(*Rule, *Collection)
}

// Family is the rules of one file, which are about one thing.
type Family struct {
	Title string
	About About
	Rules []*Rule
}

// About is what rules of a family are about, for who tells what they find beside what is so.
type About uint8

// What rules are about. The zero value is anything else.
const (
	AboutElse About = iota
	AboutHeat
	AboutDamp
	AboutFood
	AboutCompany
)

// AboutOf is what the rule of that id is about.
func AboutOf(id string) About { return about[id] }

var about = func() map[string]About {
	out := map[string]About{}
	for _, f := range Families {
		for _, r := range f.Rules {
			out[r.ID] = f.About
		}
	}
	return out
}()

// Families are all rules of this package. Adding one is an entry in the list of its
// family's file, the function beside it and an example.
var Families = []Family{
	{"Heaters", AboutHeat, heaters},
	{"Temperatures that are planned", AboutHeat, temperatures},
	{"Cool rests", AboutHeat, rests},
	{"What comes of the heat", AboutHeat, heat},
	{"Water, damp and air", AboutDamp, moisture},
	{"What comes of the damp", AboutDamp, damp},
	{"Gauges", AboutElse, gauges},
	{"Meals", AboutFood, feeding},
	{"Prey", AboutFood, prey},
	{"Feeder animals", AboutFood, stocks},
	{"Company", AboutCompany, company},
	{"The box", AboutElse, housing},
	{"Security", AboutElse, security},
	{"People", AboutElse, people},
	{"Rounds", AboutElse, walks},
	{"Hours of the people", AboutElse, hours},
	{"Training", AboutElse, training},
	{"Papers and records", AboutElse, papers},
	{"Dates of the house", AboutElse, deadlines},
	{"Calendars", AboutElse, calendars},
	{"What comes later", AboutElse, future},
	{"Needs and sheets", AboutElse, needs},
	{"What a sheet says and leaves out", AboutElse, unsaid},
	{"What is hardly meant", AboutElse, unlikely},
}

// Rules are the rules of all families.
var Rules = join(Families)

// Examples are what the rules are shown by, a file for each.
//
//go:embed examples
var Examples embed.FS

func join(families []Family) []*Rule {
	var all []*Rule
	for _, f := range families {
		all = append(all, f.Rules...)
	}
	return all
}

// Whole applies the rules about the collection, once it is prepared. It may run beside those
// about enclosures.
func (c *Collection) Whole() []finding.Finding {
	for _, r := range Rules {
		if r.Collection != nil {
			r.Collection(r, c)
		}
	}
	return c.found.All
}

// One applies the rules about the enclosure at one place of Lives, once the collection is
// prepared. Calls for different enclosures may run side by side.
func (c *Collection) One(i int) []finding.Finding {
	l := c.Lives[i]
	if l.Plan.Sheet == nil || l.Plan.Housing == nil || len(l.Groups) == 0 {
		return nil // said already
	}
	e := enclosures.Get().(*Enclosure)
	defer func() {
		*e = Enclosure{}
		enclosures.Put(e)
	}()
	e.Collection, e.Plan, e.Sheet, e.Life, e.facts = c, l.Plan, l.Plan.Sheet, l, c.facts[l.Plan.Sheet]
	if i < len(c.Roster.Of) {
		e.Series = c.Roster.Of[i]
		e.fed = meals(e.Series)
	}
	for _, r := range Rules {
		if r.Enclosure != nil {
			r.Enclosure(r, e)
		}
	}
	return e.found.All
}
