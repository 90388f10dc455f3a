package main

import (
	"fmt"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

func dueRounds(w *world, f *flags, args []string) int {
	root, err := folder(f, args)
	if err != nil {
		fmt.Fprintf(w.err, "vivary due: %v\n", err)
		return usage
	}
	r, status := w.compiled(f, root)
	if status != fine {
		return status
	}
	if r.Refused() {
		return w.refuse(r, "There is no list of what is due until this is put right")
	}
	if f.round != "" && !hasRound(r, f.round) {
		fmt.Fprintf(w.err, "vivary due: there is no round %q\n", f.round)
		return usage
	}
	if f.keeper != "" && r.Plan.Keeper(f.keeper) == nil {
		fmt.Fprintf(w.err, "vivary due: there is no keeper %q\n", f.keeper)
		return usage
	}
	if f.days < 1 || f.days > r.Horizon.Days {
		fmt.Fprintf(w.err, "vivary due: --days is from 1 to %d\n", r.Horizon.Days)
		return usage
	}
	sheets := sheetsOf(r, f)
	if f.format == "json" {
		return dueJSON(w, sheets)
	}
	var on civil.Date = -1
	for _, s := range sheets {
		if s.Date != on {
			if on >= 0 {
				fmt.Fprintln(w.out)
			}
			on = s.Date
			day := s.Date.Words()
			if s.Date == r.Today {
				day += ", today"
			}
			fmt.Fprintln(w.out, day)
			printLeaves(w, r, int(on-r.Today), f.keeper)
		}
		printSheet(w, &s)
	}
	if len(sheets) == 0 {
		fmt.Fprintln(w.out, "Nothing is due.")
	}
	if sum := finding.Summary(r.Findings); sum != "" {
		fmt.Fprintf(w.out, "\n%s: see vivary check.\n", sum)
	}
	return fine
}

// printLeaves says who is away, and what that asks of people on a day.
func printLeaves(w *world, r *compile.Result, day int, keeper string) {
	for _, x := range r.Schedule.People.Leaves(r.Plan) {
		if x.From <= day && day < x.From+max(1, x.Days) && (keeper == "" || x.Keeper == "" || x.Keeper == keeper) {
			fmt.Fprintf(w.out, "  %s: %s\n", x.Title, strings.Join(x.Lines, "; "))
		}
	}
}

func hasRound(r *compile.Result, name string) bool {
	return slices.ContainsFunc(r.Schedule.Rounds, func(x *plan.Round) bool { return x.Name.V == name })
}

// sheet is a round on a day, with who does it: nil where nobody is named.
type sheet struct {
	rounds.Sheet
	keeper *plan.Keeper
}

// sheetsOf returns the rounds of the days asked for, by day and time.
func sheetsOf(r *compile.Result, f *flags) []sheet {
	picks := map[*plan.Round][]rounds.Pick{}
	for round, all := range r.Schedule.In {
		for _, x := range all {
			picks[round] = append(picks[round], rounds.Pick{Series: x})
		}
	}
	var out []sheet
	for day := range f.days {
		for _, round := range r.Schedule.Rounds {
			if len(picks[round]) == 0 || f.round != "" && round.Name.V != f.round {
				continue
			}
			keeper := round.Keeper.Or(r.Schedule.People.Only)
			who, there := r.Schedule.People.Doer(keeper, day)
			if f.keeper != "" && (who != f.keeper || !there) {
				continue
			}
			s := rounds.New(r.Schedule, round, picks[round])
			if !s.Days.Has(day) {
				continue
			}
			out = append(out, sheet{s.On(day), r.Plan.Keeper(who)})
		}
	}
	return out
}

func printSheet(w *world, s *sheet) {
	fmt.Fprintf(w.out, "  %s %s", s.Round.Clock.V, s.Round.Shown())
	if s.keeper != nil {
		fmt.Fprintf(w.out, ", %s", s.keeper.Shown())
	}
	fmt.Fprintf(w.out, ", about %d min\n", max(1, s.Minutes))
	for _, h := range s.Holds {
		fmt.Fprintf(w.out, "    %s\n", h)
	}
	lasts := false
	for i := range s.Lines {
		l := &s.Lines[i]
		if l.Last && !lasts {
			lasts = true
			fmt.Fprintln(w.out, "    Last, with tools of their own:")
		}
		mark := "-"
		if l.High {
			mark = "FIRST:"
		}
		fmt.Fprintf(w.out, "    %s %s: %s\n", mark, l.Text, l.Names())
	}
}

// jsonRound is a round of the JSON form. Rounds, keepers, enclosures and animals go
// by their names in the plan.
type jsonRound struct {
	Date    string     `json:"date"`
	At      string     `json:"at"`
	Round   string     `json:"round"`
	Keeper  string     `json:"keeper,omitempty"`
	Minutes int        `json:"minutes"`
	Holds   []string   `json:"holds,omitempty"`
	Lines   []jsonLine `json:"lines"`
}

type jsonLine struct {
	Kind       string     `json:"kind"`
	Text       string     `json:"text"`
	First      bool       `json:"first,omitempty"`
	Last       bool       `json:"last,omitempty"`
	Enclosures []jsonStop `json:"enclosures"`
}

type jsonStop struct {
	Enclosure string `json:"enclosure"`
	Animals   string `json:"animals,omitempty"`
	Shown     string `json:"shown"`
	Total     string `json:"total,omitempty"`
}

func dueJSON(w *world, sheets []sheet) int {
	out := []jsonRound{}
	for i := range sheets {
		s := &sheets[i]
		j := jsonRound{Date: s.Date.String(), At: s.Round.Clock.V.String(), Round: s.Round.Name.V, Minutes: s.Minutes, Holds: s.Holds, Lines: []jsonLine{}}
		if s.keeper != nil {
			j.Keeper = s.keeper.Name.V
		}
		for _, l := range s.Lines {
			jl := jsonLine{Kind: l.Kind.Name, Text: l.Text, First: l.High, Last: l.Last}
			for _, t := range l.Targets {
				stop := jsonStop{Enclosure: t.Series.Plan().Name.V, Shown: t.Name, Total: t.Total}
				if t.Series.Group != nil {
					stop.Animals = t.Series.Group.Animals.Name.V
				}
				jl.Enclosures = append(jl.Enclosures, stop)
			}
			j.Lines = append(j.Lines, jl)
		}
		out = append(out, j)
	}
	printJSON(w, out)
	return fine
}
