package main

import (
	"vivary/cmd/internal/lastlist"
	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/schema/civil"
)

// dueForm is the JSON form of the list of days; schema/json/due.schema.json describes it.
// Rounds, keepers, enclosures and animals go by their names in the plan.
type dueForm struct {
	envelope
	Today   string `json:"today"` // where the animals are
	Refused bool   `json:"refused"`
	// From says where the list is from: "plan", or "calendars" that were built last, while
	// the plan is refused; Built is then the day of that build.
	From  string    `json:"from"`
	Built string    `json:"built,omitempty"`
	Days  []dayForm `json:"days"`
	// Dates are those of the house that are to be seen to.
	Dates []dateForm `json:"dates,omitempty"`
}

// dateForm is a date of the house: a deadline of the plan by its name, or what is to be looked at
// again, which has none.
type dateForm struct {
	Name    string `json:"name,omitempty"`
	Title   string `json:"title"`
	Does    string `json:"does,omitempty"`
	From    string `json:"from"` // since when it is told
	By      string `json:"by"`
	Overdue bool   `json:"overdue"`
	Keeper  string `json:"keeper,omitempty"`
}

// dayForm is a day on which anything is due; Entries are in place of rounds where the list is
// from calendars.
type dayForm struct {
	Date    string      `json:"date"`
	Away    []awayForm  `json:"away,omitempty"`
	Rounds  []roundForm `json:"rounds,omitempty"`
	Entries []entryForm `json:"entries,omitempty"`
}

type awayForm struct {
	Title string   `json:"title"`
	Lines []string `json:"lines"`
}

type roundForm struct {
	At      string     `json:"at"`
	Round   string     `json:"round"`
	Title   string     `json:"title"`
	Done    bool       `json:"done"` // nothing of it is left
	Keepers []string   `json:"keepers,omitempty"`
	Ring    []string   `json:"ring,omitempty"`
	Minutes int        `json:"minutes"` // of what is left
	Before  []string   `json:"before,omitempty"`
	Holds   []string   `json:"holds,omitempty"`
	Lines   []taskForm `json:"lines"`
}

type taskForm struct {
	Kind       string     `json:"kind"`
	Text       string     `json:"text"`
	First      bool       `json:"first,omitempty"`
	Last       bool       `json:"last,omitempty"`
	Done       bool       `json:"done,omitempty"` // the log says so
	Enclosures []stopForm `json:"enclosures"`
}

type stopForm struct {
	Enclosure string    `json:"enclosure"`
	Animals   string    `json:"animals,omitempty"`
	Shown     string    `json:"shown"`
	Should    string    `json:"should_show,omitempty"` // a gauge that is read
	Harm      string    `json:"harm_outside,omitempty"`
	Prey      *preyForm `json:"prey,omitempty"`
}

// preyForm is what the animals of a stop are given: so many items for each of so
// many animals.
type preyForm struct {
	Name      string  `json:"name"`
	PerAnimal float64 `json:"per_animal"`
	Animals   int     `json:"animals"`
	Total     int     `json:"total"`
	Killed    bool    `json:"killed,omitempty"`
	Dusted    bool    `json:"dusted,omitempty"`
}

// entryForm is an entry of a calendar.
type entryForm struct {
	At       string `json:"at,omitempty"` // none for a whole day
	Calendar string `json:"calendar"`
	Summary  string `json:"summary"`
	Text     string `json:"text"`
}

func newDueForm(r *compile.Result) dueForm {
	return dueForm{envelope: begin("due"), Today: r.Today.String(), Refused: r.Refused(), From: "plan", Days: []dayForm{}}
}

func dueJSON(w *world, r *compile.Result, f *flags, sheets []*daylist.List) int {
	out := newDueForm(r)
	for on := r.Today; on < r.Today+civil.Date(f.daysShown()); on++ {
		d := dayForm{Date: on.String(), Away: awayForms(daylist.Leaves(r, on, f.keeper))}
		for i := range sheets {
			if sheets[i].Date == on {
				d.Rounds = append(d.Rounds, roundOf(sheets[i]))
			}
		}
		if len(d.Away)+len(d.Rounds) > 0 {
			out.Days = append(out.Days, d)
		}
	}
	for _, d := range f.datesDue(r) {
		out.Dates = append(out.Dates, dateForm{d.Name, d.Title, d.Does, d.Time.From.String(), d.Time.By.String(), d.Time.Overdue(r.Today), d.Keeper})
	}
	printJSON(w, out)
	return fine
}

func awayForms(leaves []roster.Leave) (out []awayForm) {
	for _, l := range leaves {
		out = append(out, awayForm{l.Title, l.Lines})
	}
	return out
}

func roundOf(s *daylist.List) roundForm {
	j := roundForm{At: s.Round.Clock.V.String(), Round: s.Round.Name.V, Title: s.Round.Shown(), Done: !s.Open, Keepers: s.Keepers, Ring: s.Ring,
		Minutes: s.Minutes, Before: s.Before, Holds: s.Held, Lines: []taskForm{}}
	for _, d := range s.Due {
		j.Lines = append(j.Lines, taskForm{Kind: d.Kind.Name, Text: d.Text, First: d.First, Last: d.Last, Enclosures: stopsOf(d.Stops)})
	}
	for _, t := range s.Ticks {
		j.Lines = append(j.Lines, taskForm{Kind: t.Kind.Name, Text: t.Task, Done: true, Enclosures: stopsOf(t.Stops)})
	}
	return j
}

func stopsOf(stops []rounds.Stop) []stopForm {
	out := make([]stopForm, 0, len(stops))
	for _, t := range stops {
		out = append(out, stopForm{Enclosure: t.Place.Name, Animals: t.Item.Animals, Shown: t.Shown, Should: t.Should, Harm: t.Harm, Prey: preyOf(&t.Item.Prey)})
	}
	return out
}

func preyOf(p *rounds.Prey) *preyForm {
	if p.Many == "" {
		return nil
	}
	return &preyForm{Name: p.Many, PerAnimal: p.Each, Animals: p.Animals, Total: p.Total(), Killed: p.Killed, Dusted: p.Dust}
}

// lastJSON is the form of a list that is from calendars.
func lastJSON(w *world, r *compile.Result, last *lastlist.List) {
	out := newDueForm(r)
	out.From = "calendars"
	if !last.Made.IsZero() {
		out.Built = madeOn(r, last).String()
	}
	for _, x := range last.Items {
		n := len(out.Days)
		if n == 0 || out.Days[n-1].Date != x.Day.String() {
			out.Days = append(out.Days, dayForm{Date: x.Day.String()})
			n++
		}
		out.Days[n-1].Entries = append(out.Days[n-1].Entries, entryForm{x.At, x.Calendar, x.Summary, x.Text})
	}
	printJSON(w, out)
}
