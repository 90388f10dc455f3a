package page

import (
	"cmp"
	"net/http"
	"slices"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/life"
	"vivary/compile/rounds"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// weekPage is the coming seven days: who does what, who is away, what is held or may happen.
type weekPage struct {
	frame
	Shut   *shutDay
	Mine   string // as on the day's page
	Days   []weekDay
	Covers []coverLine
	Away   []awayLine
	States []bandLine
	More   int // how many states have no room here
}

// weekDay is a day with its rounds.
type weekDay struct {
	Title  string
	Day    string // as an address has it
	Today  bool
	Leaves []leave
	Rounds []weekRound
}

// weekRound is a round in a line, with all of its lines.
type weekRound struct {
	At, Title, Summary string
	Who                []string
	Minutes            int
	Lines              []textLine
}

// textLine is a line of a list as it is printed, or the name of a room.
type textLine struct {
	Text string
	Head bool
}

// coverLine is somebody who stands in, with the sheet for them.
type coverLine struct{ Who, For, Until, ForName, ByName, Back string }

func coversOf(r *compile.Result) (out []coverLine) {
	stints := r.Roster.Stints()
	for i := range stints {
		s := &stints[i]
		until := (s.Back - 1).Words()
		if s.Open {
			until = "nobody knows yet"
		}
		out = append(out, coverLine{daylist.Shown(r.Plan, s.Keeper), daylist.Shown(r.Plan, s.For), until, s.For, s.Keeper, s.Back.String()})
	}
	return out
}

// awayLine is somebody's absence.
type awayLine struct{ Text, When string }

// bandLine is a state that animals are in, or days on which something may happen.
type bandLine struct {
	Tank, Shown, Text, From, Until string
	Held                           bool
	from                           civil.Date
}

// week shows the coming seven days.
func (q *request) week() {
	r, shut := q.listed()
	out := weekPage{frame: q.frame("The week", "week"), Shut: shut}
	if r != nil {
		keeper := q.v.Keeper
		if keeper != "" {
			if out.Mine = "mine"; q.r.URL.Query().Get("who") == "all" {
				out.Mine, keeper = "all", ""
			}
		}
		out.Days = q.weekOf(r, keeper)
		out.Away = awayOf(r)
		out.Covers = coversOf(r)
		out.States = bandsOf(r)
		if n := len(out.States); n > maxBands {
			out.States, out.More = out.States[:maxBands], n-maxBands
		}
	}
	q.show(http.StatusOK, "week", out)
}

const (
	weekDays = 7
	maxBands = 300 // states in a list; whoever has more looks at the tanks
)

// weekOf makes the days, once for each House and keeper.
func (q *request) weekOf(r *compile.Result, keeper string) []weekDay {
	c := &q.h.cache
	c.mu.Lock()
	defer c.mu.Unlock()
	if days, made := c.week[keeper]; made {
		return days
	}
	var out []weekDay
	sheets := daylist.Of(r, daylist.Asked{Days: min(weekDays, r.Horizon.Ahead()), Keeper: keeper})
	for on := r.Today; on < r.Today+weekDays; on++ {
		d := weekDay{Title: on.Words(), Day: on.String(), Today: on == r.Today}
		for _, x := range daylist.Leaves(r, on, keeper) {
			d.Leaves = append(d.Leaves, leave{x.Title, x.Lines})
		}
		for i := range sheets {
			if s := sheets[i]; s.Date == on {
				d.Rounds = append(d.Rounds, weekRoundOf(r, s))
			}
		}
		out = append(out, d)
	}
	if c.week == nil {
		c.week = map[string][]weekDay{}
	}
	c.week[keeper] = out
	return out
}

func weekRoundOf(r *compile.Result, s *daylist.List) weekRound {
	x := weekRound{At: wording.Clock(s.Round.Clock.V, r.Plan.Units), Title: s.Round.Shown(), Summary: s.Summary, Minutes: max(1, s.Minutes)}
	if !s.Open {
		x.Summary = "Done · " + x.Title
	}
	for _, k := range s.Keepers {
		x.Who = append(x.Who, daylist.Shown(r.Plan, k))
	}
	for i := range s.Walk {
		l := &s.Walk[i]
		x.Lines = append(x.Lines, textLine{l.Text, l.Sort == rounds.Heading})
	}
	return x
}

// awayOf are the absences that are not over, the next first.
func awayOf(r *compile.Result) (out []awayLine) {
	for _, a := range r.Plan.Aways {
		if a.To.V < r.Today || !a.From.Set() {
			continue
		}
		text := a.Name.V
		if k := r.Plan.Keeper(a.Name.V); k != nil {
			text = k.Shown()
		}
		if a.Cover.Set() {
			text += ", " + daylist.Shown(r.Plan, a.Cover.V) + " stands in"
		}
		when := wording.Dates(a.From.V, a.To.V)
		if a.Open {
			when = "since " + a.From.V.Words() + ", until they are back"
		}
		out = append(out, awayLine{text, when})
	}
	return out
}

// bandsOf are the states that animals are in, and the days on which something may happen.
func bandsOf(r *compile.Result) (out []bandLine) {
	for _, l := range r.Lives {
		holds := func(all []life.Hold, who string) {
			for i := range all {
				h := &all[i]
				if h.Until <= r.Today || h.From > r.Today+weekDays || h.State.Rule == "" && h.Why == "" {
					continue
				}
				until := "until " + (h.Until - 1).Words()
				if h.End != "" {
					until = h.End
				}
				out = append(out, bandLine{l.Plan.Name.V, whose(l, who), cmp.Or(h.Why, h.State.Is) + ruled(h), since(h.From), until, true, h.From})
			}
		}
		holds(l.Holds, "")
		for _, g := range l.Groups {
			who := ""
			if len(l.Groups) > 1 {
				who = calledGroup(g)
			}
			holds(g.Holds, who)
			for _, x := range g.Windows {
				if x.Until > r.Today && x.From <= r.Today+60 {
					out = append(out, bandLine{l.Plan.Name.V, whose(l, who), x.Title, x.From.Words(), "until " + (x.Until - 1).Words(), false, x.From})
				}
			}
		}
	}
	told := map[bandLine]bool{} // a season that comes in two steps is one
	out = slices.DeleteFunc(out, func(x bandLine) bool {
		x.from, x.From = 0, ""
		again := told[x]
		told[x] = true
		return again
	})
	slices.SortStableFunc(out, func(a, b bandLine) int { return cmp.Compare(a.from, b.from) })
	return out
}

// since is the first day of a state; the plan may tell of one without a day.
func since(d civil.Date) string {
	if d <= 0 {
		return ""
	}
	return d.Words()
}

func whose(l *life.Enclosure, who string) string {
	if who == "" {
		return l.Plan.Shown()
	}
	return l.Plan.Shown() + ", " + who
}

// calledGroup is how a group is called: as the plan names it, and one that the log made by its
// title.
func calledGroup(g *life.Group) string {
	if g.Logged {
		return g.Animals.Shown()
	}
	return g.Animals.Name.V
}

func ruled(h *life.Hold) string {
	if h.State.Rule == "" {
		return ""
	}
	return ": " + h.State.Rule
}
