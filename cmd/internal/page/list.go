package page

import (
	"net/url"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// list is what is due today, of a keeper or of all, ready to be shown.
type list struct {
	Rounds []round
	Urgent []urgent // in enclosures that no round passes
	Leaves []leave
	Coming []coming
	Others bool // others have something to do that is not in it
}

// round is a round of today.
type round struct {
	Name, ID  string
	At, Half  string // "19:30", or "7:30" and "pm"
	Clock     civil.Clock
	Title     string
	Who       []string
	Minutes   int
	Open      bool
	First     []line
	States    []state
	Leaving   []line
	Ready     []string
	Sections  []section
	Amiss     string
	Done      []done
	Ring      []string
	Ticks     int // how many stops can be ticked off at once
	Questions int

	may  map[string]bool // what may be ticked: words and enclosure
	html *fragments
}

// section is what is done in one room.
type section struct {
	Title string
	Lines []*line
}

// line is a line of the list: where, and what is done there.
type line struct {
	ID    string
	Names string
	Text  string // the whole of it, where it has no names
	Tank  string // the one enclosure that it is about, "" for several and for a rack
	Jobs  []job
	All   string // the tick of all of its jobs, where there are several
	Stops []stop // its places one by one, where there are several
}

// job is one thing to be done at the places of a line, or at one of them.
type job struct {
	Text    string
	Should  string
	Tick    string   // what a button sends; "" where a question is among it
	Asks    bool     // a question is among it
	Tank    string   // of one place
	Answers []answer // the words that answer it, of a question at one place
}

// stop is one place of a line.
type stop struct {
	Shown, Tank string
	Jobs        []job
}

// state is what may be done at animals in some state.
type state struct {
	Text string
	Tank string // where it is one enclosure
}

type urgent struct{ Text, Shown, Tank string }

type leave struct {
	Title string
	Lines []string
}

// coming is a round of a day to come, in a line.
type coming struct{ Day, At, Summary string }

// listOf makes the list of a keeper, or of all for "". What has not changed since the last
// list is kept.
func (k *kept) listOf(r *compile.Result, keeper string) *list {
	const ahead = 3
	l := &list{}
	sheets := k.lists.Of(r, daylist.Asked{Days: ahead, Keeper: keeper, Brief: true})
	before, now := k.rounds[keeper], map[*daylist.List]round{}
	log := eventsOf(r.Plan, r.Today)
	for _, s := range sheets {
		if s.Date != r.Today {
			l.Coming = append(l.Coming, coming{s.Date.Short(), wording.Clock(s.Round.Clock.V, r.Plan.Units), s.Summary})
			continue
		}
		x, made := before[s]
		if !made {
			x = roundOf(r, s)
		}
		if done := doneOf(r.Plan, s, log); !made || !slices.Equal(done, x.Done) {
			x.Done, x.html = done, new(fragments)
		}
		now[s] = x
		l.Rounds = append(l.Rounds, x)
	}
	if k.rounds == nil {
		k.rounds = map[string]map[*daylist.List]round{}
	}
	k.rounds[keeper] = now
	l.Others = keeper != "" && others(r, keeper)
	if len(r.Roster.Pressing) > 0 {
		if l.Others {
			sheets = k.lists.Of(r, daylist.Asked{Days: 1}) // somebody else may pass it
		}
		for _, f := range daylist.Unpassed(r, sheets) {
			l.Urgent = append(l.Urgent, urgent{f.Text, f.Enclosure.Shown(), f.Enclosure.Name.V})
		}
	}
	for _, x := range daylist.Leaves(r, r.Today, keeper) {
		v := leave{Title: x.Title, Lines: slices.Clone(x.Lines)}
		if r.Today == max(x.From, r.Today) && x.For != "" && x.From == r.Today {
			v.Lines = append(v.Lines, r.Roster.Aid(&x)...)
		}
		l.Leaves = append(l.Leaves, v)
	}
	return l
}

// others reports whether anybody else has something to do today.
func others(r *compile.Result, keeper string) bool {
	for e := range r.Roster.All() {
		if who, there := r.Roster.Doer(e, r.Horizon.Today); e.Days.Has(r.Horizon.Today) && there && who != "" && who != keeper {
			return true
		}
	}
	return false
}

func roundOf(r *compile.Result, s *daylist.List) round {
	out := round{may: map[string]bool{}, Name: s.Round.Name.V, ID: "r-" + s.Round.Name.V, Title: s.Round.Shown(), Minutes: max(1, s.Minutes), Open: s.Open, Ring: s.Ring, Clock: s.Round.Clock.V}
	out.At, out.Half, _ = strings.Cut(wording.Clock(s.Round.Clock.V, r.Plan.Units), " ")
	for _, k := range s.Keepers {
		out.Who = append(out.Who, daylist.Shown(r.Plan, k))
	}
	m := maker{r.Plan, &out, map[string]bool{}}
	if s.Open {
		m.walk(s.Walk)
	}
	for _, t := range s.Ticks {
		for k := range t.Stops {
			if words := t.Stops[k].Item.Said; words != "" {
				m.out.may[words+"*"+t.Stops[k].Place.Name] = true
			}
		}
	}
	return out
}

// maker makes the lines of one round.
type maker struct {
	plan *plan.Collection
	out  *round
	ids  map[string]bool
}

func (m *maker) walk(walk []rounds.Line) {
	for i := range walk {
		switch x := &walk[i]; x.Sort {
		case rounds.Pressing:
			m.out.First = append(m.out.First, *m.line(x, strings.TrimPrefix(x.Text, "FIRST: ")))
		case rounds.States:
			v := state{Text: x.Text}
			if len(x.Of) == 1 && m.plan.Enclosure(x.Of[0]) != nil {
				v.Tank = x.Of[0]
			}
			m.out.States = append(m.out.States, v)
		case rounds.Leaving:
			m.out.Leaving = append(m.out.Leaving, *m.line(x, x.Text))
		case rounds.Ready:
			m.out.Ready = append(m.out.Ready, x.Text)
		case rounds.Heading:
			m.out.Sections = append(m.out.Sections, section{Title: strings.TrimSuffix(x.Text, ":")})
		case rounds.Todo:
			if len(m.out.Sections) == 0 {
				m.out.Sections = append(m.out.Sections, section{})
			}
			last := &m.out.Sections[len(m.out.Sections)-1]
			last.Lines = append(last.Lines, m.line(x, ""))
		case rounds.Amiss:
			m.out.Amiss = x.Text
		}
	}
}

// line makes a line. text is the whole of it, where it does not name its places apart.
func (m *maker) line(x *rounds.Line, text string) *line {
	out := &line{Names: x.Names, Text: text}
	var all []string
	for i := range x.Jobs {
		j := m.job(&x.Jobs[i])
		if j.Tick != "" {
			all = append(all, j.Tick)
		}
		out.Jobs = append(out.Jobs, j)
		m.stops(out, &x.Jobs[i])
	}
	first := x.Jobs[0].Stops[0].Place
	out.ID = m.id(first.Name)
	if len(out.Stops) == 1 {
		out.Tank, out.Stops = out.Stops[0].Tank, nil
	}
	if text != "" && len(out.Jobs) == 1 { // the text says it already
		out.Jobs[0].Text = ""
	}
	if len(all) > 1 && len(all) == len(out.Jobs) {
		out.All = sendable(strings.Join(all, "!"))
	}
	return out
}

// sendable is what a button sends, or "" where it would be longer than a form may be: then its
// places are ticked off one by one, or the round as a whole.
func sendable(tick string) string {
	if len(url.QueryEscape(tick)) > maxBody-1024 {
		return ""
	}
	return tick
}

// stops adds what a job is at each of its places.
func (m *maker) stops(l *line, j *rounds.Job) {
	for i := range j.Stops {
		s := &j.Stops[i]
		tank := m.tank(s)
		at := slices.IndexFunc(l.Stops, func(o stop) bool { return o.Shown == s.Shown && o.Tank == tank })
		if at < 0 {
			at = len(l.Stops)
			l.Stops = append(l.Stops, stop{Shown: s.Shown, Tank: tank})
		}
		one := job{Text: j.Text, Tank: tank, Answers: answers(s)}
		if s.Item.Said != "" {
			one.Tick = s.Item.Said + "*" + s.Place.Name
		}
		l.Stops[at].Jobs = append(l.Stops[at].Jobs, one)
	}
}

// tank is the name of the enclosure at which a stop is; "" for a rack.
func (m *maker) tank(s *rounds.Stop) string {
	if m.plan.Enclosure(s.Place.Name) != nil {
		return s.Place.Name
	}
	return ""
}

// id is an address within the page.
func (m *maker) id(name string) string {
	id := m.out.ID + "-" + name
	for m.ids[id] {
		id += "-"
	}
	m.ids[id] = true
	return id
}

// job makes what is done at all places of a line.
func (m *maker) job(j *rounds.Job) job {
	first := &j.Stops[0]
	out := job{Text: j.Text, Should: first.Should}
	var order []string
	of, asks := map[string][]string{}, false
	for i := range j.Stops {
		s := &j.Stops[i]
		said := s.Item.Said
		if s.Should != out.Should {
			out.Should = ""
		}
		if said == "" {
			asks = true
			m.out.Questions++
			continue
		}
		if of[said] == nil {
			order = append(order, said)
		}
		of[said] = append(of[said], s.Place.Name)
		m.out.may[said+"*"+s.Place.Name] = true
		m.out.Ticks++
	}
	if out.Asks = asks; !asks {
		for i, said := range order {
			order[i] = said + "*" + strings.Join(of[said], ".")
		}
		out.Tick = sendable(strings.Join(order, "!"))
	}
	if len(j.Stops) == 1 {
		out.Tank, out.Answers = m.tank(first), answers(first)
	}
	return out
}

// done is what is done already at some places, with when and by whom.
type done struct {
	Text string
	By   string
}

// doneOf lists what the log says was done of a round.
func doneOf(c *plan.Collection, s *daylist.List, log events) (all []done) {
	for i, t := range s.Ticks {
		out := done{Text: s.Ticked[i]}
		var who []string
		for k := range t.Stops {
			if w := log.by(c, t.Kind, &t.Stops[k], c.Units); w != "" && !slices.Contains(who, w) {
				who = append(who, w)
			}
		}
		out.By = strings.Join(who, "; ")
		all = append(all, out)
	}
	return all
}
