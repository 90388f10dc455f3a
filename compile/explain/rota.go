package explain

import (
	"strings"

	"vivary/compile"
	"vivary/plan"
	"vivary/schema/wording"
)

func listRotas(r *compile.Result) (out []Line) {
	for _, x := range r.Plan.Rotas {
		out = append(out, Line{Name: x.Name.V, Text: x.Shown()})
	}
	return out
}

// rotaWeeks is for how many weeks it is told whose the days are, at the least.
const rotaWeeks = 4

// explainRota says which rounds go by a rota, and whose the coming days are.
func explainRota(r *compile.Result, word string) (out []Answer) {
	for _, x := range r.Plan.Rotas {
		if !means(word, x.Name.V, x.Shown()) {
			continue
		}
		a := Answer{Title: "Rota " + x.Name.V + ": " + x.Shown(), Written: block(&x.Head)}
		if x.Note.Set() {
			a.Parts = append(a.Parts, Part{Lines: []Line{{Text: x.Note.V}}})
		}
		if worked(r) {
			for _, round := range plan.Wholes(r.Roster.Rounds) {
				if round.Turns == x {
					a.Parts = append(a.Parts, Part{Head: round.Shown() + " at " + wording.Clock(round.Clock.V, r.Plan.Units), Lines: daysOf(r, round, max(rotaWeeks, x.Weeks()))})
				}
			}
		}
		if len(a.Parts) == 0 {
			a.Parts = []Part{{Lines: []Line{{Text: "No round goes by it"}}}}
		}
		out = append(out, a)
	}
	return out
}

// daysOf says of the coming weeks whose the days of a round are, a line a week: who is away has
// whoever stands in.
func daysOf(r *compile.Result, round *plan.Round, weeks int) (out []Line) {
	week := -1
	var runs []string
	from, last, whose := -1, -1, ""
	end := func() {
		if from >= 0 {
			day := short(r.Horizon.Date(from).Weekday())
			if last > from {
				day += " to " + short(r.Horizon.Date(last).Weekday())
			}
			runs = append(runs, day+" "+whose)
		}
		from = -1
	}
	line := func() {
		if end(); len(runs) > 0 {
			out[len(out)-1].Text = strings.Join(runs, ", ")
		}
		runs = nil
	}
	first := (int(r.Today.Weekday()) + 6) % 7 // days of this week that are over
	for i := r.Horizon.Today; i < r.Horizon.Days && i < r.Horizon.Today+7*weeks-first; i++ {
		d := r.Horizon.Date(i)
		if k := (i - r.Horizon.Today + first) / 7; k != week {
			line()
			week, out = k, append(out, Line{Name: "from " + d.Short()})
		}
		who := ""
		for _, part := range r.Roster.Parts(round) {
			if held := r.Roster.HeldOn(part); held.Has(i) {
				name, there := r.Roster.People.Doer(part.Keeper.V, i)
				if who = person(r, name); !there {
					who = "nobody, " + person(r, part.Keeper.V) + " is away"
				}
			}
		}
		switch {
		case who == "":
			end()
		case from >= 0 && who == whose:
			last = i
		default:
			end()
			from, last, whose = i, i, who
		}
	}
	line()
	return out
}
