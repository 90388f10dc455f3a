package explain

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"vivary/compile"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// weeksAhead is for how many weeks the minutes of a round are told by weekday: time
// enough for what is done once a month.
const weeksAhead = 8

func listRounds(r *compile.Result) []Line {
	if !worked(r) {
		return nil
	}
	var out []Line
	for _, x := range plan.Wholes(r.Roster.Rounds) {
		out = append(out, Line{Name: x.Name.V, Text: x.Shown() + " at " + wording.Clock(x.Clock.V, r.Plan.Units)})
	}
	return out
}

func explainRound(r *compile.Result, word string) []Answer {
	if !worked(r) {
		return nil
	}
	var out []Answer
	for _, x := range plan.Wholes(r.Roster.Rounds) {
		if means(word, x.Name.V, x.Shown()) {
			out = append(out, round(r, x))
		}
	}
	return out
}

func round(r *compile.Result, x *plan.Round) Answer {
	parts := part([]Part{{Lines: roundHead(r, x)}}, "Enclosures", passed(r, x))
	return Answer{Title: roundTitle(x), Parts: part(parts, "Minutes", minutes(r, x)),
		Written: absent(block(&x.Head), r, func(a *plan.Away) bool { return a.Name.V == keeper(r, x) })}
}

func roundTitle(x *plan.Round) string { return "Round " + x.Name.V + ": " + x.Shown() }

// roundHead says when a round is, who does it, and who else while they are away.
func roundHead(r *compile.Result, x *plan.Round) []Line {
	first := []Line{{Text: "When: " + held(x) + " at " + wording.Clock(x.Clock.V, r.Plan.Units)}, {Text: "Who: " + who(r, x)}}
	if n := x.People.V; n > 1 {
		first = append(first, Line{Text: "So that " + strconv.Itoa(n) + " come on every day of the year, with days off, leave and illness, a house has about " + strconv.Itoa(Staff(n)) + " who may (a rule of thumb of zoos: the number times 1.5 times 7/5)"})
	}
	for _, a := range absences(r, x) {
		first = append(first, Line{Text: a})
	}
	if x.Note.Set() {
		first = append(first, Line{Text: x.Note.V})
	}
	return first
}

// Staff is about how many people a house has so that some are there on every day of the year: times
// 1.5 for leave and illness, times 7/5 for days off, rounded up. A rule of thumb from a reviewer of
// zoos, 2020.
func Staff(needed int) int { return (needed*21 + 9) / 10 }

// held says on which days there is a round.
func held(x *plan.Round) string {
	out := "every day"
	if len(x.On) > 0 {
		out = spoken(x.On)
	}
	if len(x.NotOn) > 0 {
		out += ", not on " + spoken(x.NotOn)
	}
	if len(x.AlsoOn) > 0 {
		out += ", also on " + spoken(x.AlsoOn)
	}
	return out
}

func spoken(list []plan.Written[plan.Day]) string {
	var out []string
	for _, d := range list {
		if d.V.Kind == plan.EachWeekday {
			out = append(out, short(d.V.Weekday))
		} else {
			out = append(out, d.V.String())
		}
	}
	return strings.Join(out, ", ")
}

func short(w time.Weekday) string { return w.String()[:3] }

func who(r *compile.Result, x *plan.Round) string {
	out := "nobody is named"
	if k := keeper(r, x); k != "" {
		out = person(r, k)
	}
	if others := byRota(r, x); len(others) > 0 {
		out += "; by the rota " + x.Turns.Name.V + " on their days " + wording.And(others)
	}
	if x.People.Set() {
		out += ", " + strconv.Itoa(x.People.V) + " people"
	}
	return out
}

// byRota are those who have a day of a round by its rota, beside its keeper.
func byRota(r *compile.Result, x *plan.Round) (out []string) {
	for _, part := range r.Roster.Parts(x) {
		if part.Of != nil {
			out = append(out, person(r, part.Keeper.V))
		}
	}
	return out
}

// keeper is whose round it is: the one named, or the only one there is.
func keeper(r *compile.Result, x *plan.Round) string {
	return x.Keeper.Or(r.Roster.People.Only)
}

// absences says who does the round while its keeper is away.
func absences(r *compile.Result, x *plan.Round) []string {
	var out []string
	for _, a := range r.Plan.Aways {
		if a.Name.V != keeper(r, x) || a.To.V < r.Today {
			continue
		}
		out = append(out, "From "+Absence(r, a))
	}
	return out
}

// Absence says from when to when somebody is away, and who does their care then.
func Absence(r *compile.Result, a *plan.Away) string {
	text := a.From.V.Words() + ", back on " + a.To.V.Words() + ": "
	switch {
	case !a.Cover.Set():
		return text + "nobody"
	case len(a.Visits) == 0:
		return text + person(r, a.Cover.V)
	}
	return text + person(r, a.Cover.V) + " on " + spoken(a.Visits)
}

// passed says which enclosures the round passes, and what is done there; those with
// the same care stand together.
func passed(r *compile.Result, x *plan.Round) []Line {
	var g gather
	all := r.Roster.In[r.Roster.Parts(x)[0]] // its other parts pass the same
	for i := 0; i < len(all); {
		var kinds []string
		k := i
		for ; k < len(all) && all[k].Life == all[i].Life; k++ {
			if n := len(kinds); n == 0 || kinds[n-1] != all[k].Kind.Name {
				kinds = append(kinds, all[k].Kind.Name)
			}
		}
		g.add(all[i].Plan().Name.V, strings.Join(kinds, ", "))
		i = k
	}
	return g.lines()
}

// minutes says how long the round takes: today, by weekday, and at its longest.
func minutes(r *compile.Result, x *plan.Round) []Line {
	on := lengths(r, x)
	var some []int // of the days on which anything is done
	for _, m := range on {
		if m > 0 {
			some = append(some, m)
		}
	}
	switch {
	case len(some) == 0:
		return []Line{{Text: "Nothing is done in it until " + r.Horizon.Last().Words()}}
	case slices.Min(some) == slices.Max(some):
		return []Line{{Text: "About " + strconv.Itoa(some[0]) + " min each time" + meant(x)}}
	}
	var out []Line
	if on[0] > 0 {
		out = append(out, Line{Text: "Today: about " + strconv.Itoa(on[0]) + " min"})
	}
	worst := slices.Max(on)
	first := r.Today + civil.Date(slices.Index(on, worst))
	return append(out,
		Line{Text: fmt.Sprintf("Over the next %d weeks: %s", weeksAhead, byWeekday(r, on))},
		Line{Text: fmt.Sprintf("At its longest until %s: about %d min, first on %s%s", r.Horizon.Last().Words(), worst, first.Words(), meant(x))})
}

// meant says how long the round may take, where the plan does.
func meant(x *plan.Round) string {
	if !x.Within.Set() {
		return ""
	}
	return "; it is to be done within " + x.Within.V.String()
}

// lengths returns the minutes of the round on each day from today on, 0 where nothing
// is done.
func lengths(r *compile.Result, x *plan.Round) []int {
	out := make([]int, r.Horizon.Ahead())
	for _, part := range r.Roster.Parts(x) {
		walk := rounds.New(r.Roster, part, r.Roster.Picks(part, ""))
		for d := range out {
			if i := r.Horizon.Today + d; walk.Days.Has(i) {
				s := walk.On(i)
				out[d] = max(1, s.Minutes)
			}
		}
	}
	return out
}

// byWeekday says for each weekday between which ends the minutes lie in the coming
// weeks.
func byWeekday(r *compile.Result, on []int) string {
	var least, most [7]int
	for d, m := range on[:min(len(on), 7*weeksAhead)] {
		w := (r.Today + civil.Date(d)).Weekday()
		if m > 0 && (least[w] == 0 || m < least[w]) {
			least[w] = m
		}
		most[w] = max(most[w], m)
	}
	var out []string
	for k := range 7 {
		w := (r.Plan.Units.Week() + time.Weekday(k)) % 7
		switch {
		case most[w] == 0:
		default:
			out = append(out, short(w)+" "+wording.Span(float64(least[w]), float64(most[w])))
		}
	}
	return strings.Join(out, ", ") + " min"
}
