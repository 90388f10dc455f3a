package explain

import (
	"fmt"
	"strings"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// care is one care of one enclosure at one time of day, by its place in the roster.
type care struct {
	r    *compile.Result
	i, k int
}

func (c care) series() *roster.Entry { return &c.r.Roster.Of[c.i][c.k] }

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

func (c care) title() string { return "Care " + c.name() + " at " + c.series().At().String() }

// cares are all cares, in walking order.
func cares(r *compile.Result) []care {
	var out []care
	if !worked(r) {
		return nil
	}
	for i := range r.Roster.Of {
		for k := range r.Roster.Of[i] {
			out = append(out, care{r, i, k})
		}
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
	for i, l := range r.Lives {
		if !means(enclosure, l.Plan.Name.V, l.Plan.Shown()) {
			continue
		}
		for k := range r.Roster.Of[i] {
			switch s := &r.Roster.Of[i][k]; {
			case means(name, s.Name):
				named = append(named, care{r, i, k})
			case means(name, s.Kind.Name):
				kind = append(kind, care{r, i, k})
			}
		}
	}
	if len(named) > 0 {
		return named
	}
	return kind
}

// nearestCare returns the care of an enclosure that was likely meant, or "" where
// the word names no enclosure that there is.
func nearestCare(r *compile.Result, word string) string {
	enclosure, name, _ := strings.Cut(word, "/")
	var known []string
	for _, x := range cares(r) {
		if x.series().Plan().Name.V == enclosure {
			known = append(known, plain(x.series().Name), x.series().Kind.Name)
		}
	}
	if s := finding.Suggest(plain(name), known); s != "" {
		return enclosure + "/" + s
	}
	return ""
}

// listCares names a care once that is done at several times of a day.
func listCares(r *compile.Result) []Line {
	var out []Line
	for _, x := range cares(r) {
		at := " at " + x.series().At().String()
		if n := len(out); n > 0 && out[n-1].Name == x.name() {
			out[n-1].Text += " and" + at
			continue
		}
		out = append(out, Line{Name: x.name(), Text: x.series().Words() + at})
	}
	return out
}

func explainCare(r *compile.Result, word string) []Answer {
	var out []Answer
	for _, x := range caresOf(r, word) {
		s := x.series()
		lines := []Line{{Text: s.Task + prey(s)}, {Text: s.Words() + " at " + s.At().String() + ", " + s.Round.Shown() + by(r, s.Keeper)}, {Text: origin(r, s)}}
		if n := s.Kind.Needs; n != nil {
			lines = append(lines, Line{Text: "It meets the need " + n.Name + "."})
		}
		lines = append(lines, Line{Text: "Next: " + coming(r, s, 5)})
		out = append(out, Answer{Title: x.title(), Parts: []Part{{Lines: lines}}})
	}
	return out
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
func coming(r *compile.Result, s *roster.Entry, most int) string {
	var out []string
	for d := s.Days.Next(r.Horizon.Today); d >= 0 && len(out) < most; d = s.Days.Next(d + 1) {
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
	case s.FromSheet:
		return "from the species sheet, " + where + ": " + r.Plan.Library.Cite(s.Cited)
	case s.Once != nil:
		return "from the log, " + where
	}
	return "from the plan, " + where
}
