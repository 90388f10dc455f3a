package explain

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/slip"
	"vivary/schema/wording"
)

// care is one care of one enclosure, or of a rack, at one time of day.
type care struct {
	r     *compile.Result
	entry *roster.Entry
}

func (c care) series() *roster.Entry { return c.entry }

// name is the care as it is asked for: ENCLOSURE/CARE.
func (c care) name() string { return c.series().Plan().Name.V + "/" + plain(c.series().Name) }

// where is the enclosure, and the animals where it has several.
func (c care) where() string {
	s := c.series()
	if s.Group != nil && len(s.Life.Groups) > 1 {
		return s.Plan().Name.V + " " + s.Group.Animals.Name.V
	}
	return s.Plan().Name.V
}

func (c care) title() string {
	return "Care " + c.name() + " at " + wording.Clock(c.series().At(), c.series().Plan().Units)
}

// cares are all cares, in walking order.
func cares(r *compile.Result) []care {
	var out []care
	if !worked(r) {
		return nil
	}
	for s := range r.Roster.All() {
		out = append(out, care{r, s})
	}
	return out
}

// caresOf are the cares that a word means: that of the name, or all of the kind.
func caresOf(r *compile.Result, word string) []care {
	enclosure, name, given := strings.Cut(word, "/")
	if !given || !worked(r) {
		return nil
	}
	var named, kind []care // a name means that care, and a kind all of it
	for s := range r.Roster.All() {
		switch {
		case !means(enclosure, s.Plan().Name.V, s.Plan().Shown()) && !servedBy(s, enclosure):
		case means(name, s.Name):
			named = append(named, care{r, s})
		case means(name, s.Kind.Name):
			kind = append(kind, care{r, s})
		}
	}
	if len(named) > 0 {
		return named
	}
	return kind
}

// turns parts cares into those that are one to a keeper: what is done in one round by one after
// the other, as a rota says. The first of each is that of the round's own keeper.
func turns(all []care) (out [][]care) {
	for _, x := range all {
		k := slices.IndexFunc(out, func(o []care) bool { return x.turnOf(o[0]) })
		if k < 0 {
			k, out = len(out), append(out, nil)
		}
		out[k] = append(out[k], x)
	}
	return out
}

// turnOf reports whether a care is another one that somebody else does on other days.
func (c care) turnOf(o care) bool {
	x, y := c.series(), o.series()
	return x != y && x.Round.Turns != nil && x.Round.Whole() == y.Round.Whole() && x.Life == y.Life && x.Group == y.Group && x.Name == y.Name && x.Kind == y.Kind && x.Stage == y.Stage && x.Origin == y.Origin
}

// servedBy reports whether a word means an enclosure that has this care of its rack.
func servedBy(s *roster.Entry, enclosure string) bool {
	return s.Rack != nil && slices.ContainsFunc(s.Rack.Plan.Enclosures, func(e *plan.Enclosure) bool { return means(enclosure, e.Name.V, e.Shown()) })
}

// nearestCare returns the care of an enclosure from whose name a word is a slip of the
// keyboard, or "".
func nearestCare(r *compile.Result, word string) string {
	enclosure, name, _ := strings.Cut(word, "/")
	var known []string
	for _, x := range cares(r) {
		if x.series().Plan().Name.V == enclosure {
			known = append(known, plain(x.series().Name), x.series().Kind.Name)
		}
	}
	if s := slip.Of(plain(name), known); s != "" {
		return enclosure + "/" + s
	}
	return ""
}

// Cares returns the cares of the enclosure that a word names before its slash, by the names
// by which they are explained.
func Cares(r *compile.Result, word string) (names []string) {
	enclosure, _, _ := strings.Cut(word, "/")
	for _, x := range cares(r) {
		if x.series().Plan().Name.V == enclosure && !slices.Contains(names, x.name()) {
			names = append(names, x.name())
		}
	}
	return names
}

// listCares names a care once that is done at several times of a day.
func listCares(r *compile.Result) []Line {
	var out []Line
	var days horizon.Days
	for _, x := range cares(r) {
		at := " at " + wording.Clock(x.series().At(), r.Plan.Units)
		if n := len(out); n > 0 && out[n-1].Name == x.name() {
			if x.series().Round.Of != nil {
				days.Union(x.series().Days)
				continue // somebody else's days of one that stands there
			}
			out[n-1].Text += strings.TrimRight(joined(days, x.series()), " ") + at
			days.Union(x.series().Days)
			continue
		}
		days = x.series().Days.Clone()
		out = append(out, Line{Name: x.name(), Text: x.series().Words() + at})
	}
	return out
}

func explainCare(r *compile.Result, word string) []Answer {
	var out []Answer
	for _, same := range turns(caresOf(r, word)) {
		x := same[0]
		s, days := x.series(), x.series().Days
		lines := []Line{{Text: s.Task + prey(s)}, {Text: s.Words() + " at " + wording.Clock(s.At(), r.Plan.Units) + ", " + s.Round.Shown() + by(r, s.Keeper)}, {Text: origin(r, s)}}
		if len(same) > 1 {
			var others []string
			days = days.Clone()
			for _, o := range same[1:] {
				days.Union(o.series().Days)
				others = append(others, person(r, o.series().Keeper))
			}
			lines = append(lines, Line{Text: "By the rota " + s.Round.Turns.Name.V + " others do it on their days: " + wording.And(others)})
		}
		if n := s.Kind.Needs; n != nil {
			lines = append(lines, Line{Text: "It meets the need " + n.Name + "."})
		}
		lines = append(lines, Line{Text: takes(r, s)}, Line{Text: "Next: " + coming(r, days, 5)})
		out = append(out, Answer{Title: x.title(), Written: timed(s), Parts: []Part{{Lines: lines}}})
	}
	return out
}

// takes says how long a care takes, and who says so.
func takes(r *compile.Result, s *roster.Entry) string {
	out := "It takes about " + wording.Count(s.Minutes, "minute", "minutes")
	switch l, own, ok := r.Plan.Learnt(s.Plan().Name.V, s.Kind); {
	case s.Timing != nil && s.Timing.Minutes.Set() && s.After == 0:
		return out + ", as is written there"
	case ok && own && s.Once == nil:
		return out + ": the median of " + strconv.Itoa(l.Lines) + " lines of the log about " + s.Plan().Name.V
	case ok && s.Once == nil:
		return out + ": the median of " + strconv.Itoa(l.Lines) + " lines of the log, about all enclosures"
	}
	return out + " (common practice, no source)"
}

// prey says what is offered at a meal, in turn.
func prey(s *roster.Entry) string {
	if s.Meal == nil || !s.Kind.Meal {
		return ""
	}
	var menu []string
	for _, p := range s.Meal.Menu() {
		menu = append(menu, p.V.String())
	}
	out := strings.Join(menu, ", then ")
	if s.Meal.PerAnimal.Set() {
		out = wording.ByHand(s.Meal.PerAnimal.V) + " for each animal: " + out
	}
	return ", " + out
}

// coming are the next days of a care.
func coming(r *compile.Result, days horizon.Days, most int) string {
	var out []string
	for d := days.Next(r.Horizon.Today); d >= 0 && len(out) < most; d = days.Next(d + 1) {
		out = append(out, day(r, r.Horizon.Date(d)))
	}
	if len(out) == 0 {
		return "never until " + r.Horizon.Last().Words()
	}
	return strings.Join(out, ", ")
}

func day(r *compile.Result, d civil.Date) string {
	if d == r.Today {
		return "today"
	}
	return d.Short()
}

// by names who does it where anybody is named.
func by(r *compile.Result, keeper string) string {
	if keeper == "" {
		return ""
	}
	return ", by " + person(r, keeper)
}

func person(r *compile.Result, keeper string) string {
	if k := r.Plan.Keeper(keeper); k != nil {
		return k.Shown()
	}
	return keeper
}

// origin says where a care is from: a line of the plan or the log, or the species
// sheet and its source.
func origin(r *compile.Result, s *roster.Entry) string {
	at := r.Plan.Files.Start(s.Origin)
	where := fmt.Sprintf("%s:%d", at.File, at.Line)
	switch {
	case s.Rack != nil:
		out := "from the rack, " + where + ", for all in it, as often as their sheets ask"
		if by := r.Plan.Library.Cite(s.Cited); by != "" {
			out += ": " + by
		}
		return out
	case s.FromSheet:
		out := "from the species sheet, " + where
		if by := r.Plan.Library.Cite(s.Cited); by != "" {
			out += ": " + by
		}
		return out
	case s.Once != nil:
		return "from the log, " + where
	}
	return "from the plan, " + where
}
