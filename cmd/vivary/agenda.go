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

func agenda(w *world, f *flags, args []string) int {
	root, err := folder(f, args)
	if err != nil {
		fmt.Fprintf(w.err, "vivary agenda: %v\n", err)
		return usage
	}
	r, status := w.compiled(f, root)
	if status != fine {
		return status
	}
	if r.Refused() {
		return w.refuse(r, "There is no agenda until this is put right")
	}
	if f.round != "" && !hasRound(r, f.round) {
		fmt.Fprintf(w.err, "vivary agenda: there is no round %q\n", f.round)
		return usage
	}
	if f.keeper != "" && r.Plan.Keeper(f.keeper) == nil {
		fmt.Fprintf(w.err, "vivary agenda: there is no keeper %q\n", f.keeper)
		return usage
	}
	if f.days < 1 || f.days > r.Horizon.Days {
		fmt.Fprintf(w.err, "vivary agenda: --days is from 1 to %d\n", r.Horizon.Days)
		return usage
	}
	sheets := due(r, f)
	if f.format == "json" {
		return agendaJSON(w, sheets)
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
	for _, x := range r.Roster.People.Leaves(r.Plan) {
		if x.From <= day && day < x.From+max(1, x.Days) && (keeper == "" || x.Keeper == "" || x.Keeper == keeper) {
			fmt.Fprintf(w.out, "  %s: %s\n", x.Title, strings.Join(x.Lines, "; "))
		}
	}
}

func hasRound(r *compile.Result, name string) bool {
	return slices.ContainsFunc(r.Roster.Rounds, func(x *plan.Round) bool { return x.Name.V == name })
}

// sheet is a round on a day, with who does it: nil where nobody is named.
type sheet struct {
	rounds.Sheet
	keeper *plan.Keeper
}

// due returns the rounds of the days asked for, by day and time.
func due(r *compile.Result, f *flags) []sheet {
	picks := map[*plan.Round][]rounds.Pick{}
	for round, all := range r.Roster.In {
		for _, x := range all {
			picks[round] = append(picks[round], rounds.Pick{Series: x})
		}
	}
	var out []sheet
	for day := range f.days {
		for _, round := range r.Roster.Rounds {
			if len(picks[round]) == 0 || f.round != "" && round.Name.V != f.round {
				continue
			}
			keeper := round.Keeper.Or(r.Roster.People.Only)
			who, there := r.Roster.People.Doer(keeper, day)
			if f.keeper != "" && (who != f.keeper || !there) {
				continue
			}
			s := rounds.New(r.Roster, round, picks[round])
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
	for _, l := range s.Lines {
		fmt.Fprintln(w.out, strings.TrimRight("    "+l, " "))
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
	Enclosure string    `json:"enclosure"`
	Animals   string    `json:"animals,omitempty"`
	Shown     string    `json:"shown"`
	Prey      *jsonPrey `json:"prey,omitempty"`
}

// jsonPrey is what the animals of a stop are given: so many items for each of so
// many animals.
type jsonPrey struct {
	Name      string  `json:"name"`
	PerAnimal float64 `json:"per_animal"`
	Animals   int     `json:"animals"`
	Total     int     `json:"total"`
	Killed    bool    `json:"killed,omitempty"`
	Dusted    bool    `json:"dusted,omitempty"`
}

func agendaJSON(w *world, sheets []sheet) int {
	out := []jsonRound{}
	for i := range sheets {
		s := &sheets[i]
		j := jsonRound{Date: s.Date.String(), At: s.Round.Clock.V.String(), Round: s.Round.Name.V, Minutes: s.Minutes, Holds: s.Held, Lines: []jsonLine{}}
		if s.keeper != nil {
			j.Keeper = s.keeper.Name.V
		}
		for _, d := range s.Due {
			jl := jsonLine{Kind: d.Kind.Name, Text: d.Text, First: d.First, Last: d.Last}
			for _, t := range d.Stops {
				jl.Enclosures = append(jl.Enclosures, jsonStop{Enclosure: t.Place.Name, Animals: t.Item.Animals, Shown: t.Shown, Prey: preyJSON(&t.Item.Prey)})
			}
			j.Lines = append(j.Lines, jl)
		}
		out = append(out, j)
	}
	printJSON(w, out)
	return fine
}

func preyJSON(p *rounds.Prey) *jsonPrey {
	if p.Many == "" {
		return nil
	}
	return &jsonPrey{Name: p.Many, PerAnimal: p.Each, Animals: p.Animals, Total: p.Total(), Killed: p.Killed, Dusted: p.Dust}
}
