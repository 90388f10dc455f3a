// Package life says what state each group of animals is in on each day, from the
// plan and the log: stage, number, holds, windows and the tasks that follow from
// what was seen. It makes no schedule; it says what a schedule must respect.
//
// The plan says how things were before the first line of the log that changes
// them, and the log goes on from there: a plan with three animals and a log in
// which one died gives two.
package life

import (
	"slices"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// Hold is a stretch of days on which some recurring care must not be done. A Task
// is not held: it has been put where it may stand.
type Hold struct {
	From  civil.Date // the first day; 1970-01-01 for what the plan tells without a day
	Until civil.Date // the first day after it; for an open hold the first after the horizon
	Open  bool       // ends only when something is logged
	// State is what the animals are in: its table says what may be done how. It is the
	// species' own where its sheet says otherwise, and a season's own.
	State *schema.State
	// Part says that only some of a group are in it: then all eat killed prey, where those
	// alone would not be fed.
	Part bool
	Some int // how many those are, of a part; 0 for one
	// Cool says that it is of a season that is too cold to digest: only then does a season
	// excuse meals.
	Cool  bool
	Why   string       // what was seen: "moulted 2 Nov"
	End   string       // what ends it: "until Wed 11 Nov", "until the moult is logged"
	At    source.Place // the log line or the plan line that began it
	Cited plan.Cited   // where the length is from; empty for common practice
}

// Out reports whether a row of the table is held altogether.
func (h *Hold) Out(row schema.Row) bool { return h.State.May[row].Manner == schema.Held }

// Planned reports whether a hold is written in the plan, and does not come from the log.
func (h *Hold) Planned(l *Enclosure) bool {
	for _, g := range l.Groups {
		if a := g.Animals; !g.Logged && h.At.Written() && (h.At == a.State.At || h.At == a.Arrived.At) {
			return true
		}
	}
	return !h.At.Written() || slices.ContainsFunc(l.Plan.Seasons, func(s *plan.Season) bool { return s.At == h.At })
}

// Takes reports whether a hold takes out care of a kind. What brings drinking water is
// never taken out; a meal is where killed prey is held too.
func (h *Hold) Takes(k *schema.CareKind) bool {
	if k.Water || h.Part && k.Meal {
		return false
	}
	return h.State.Of(k, true).Manner == schema.Held
}

// WindowKind is what may happen in a window.
type WindowKind uint8

// The kinds of windows.
const (
	BirthWindow      WindowKind = iota
	FirstMoultWindow            // of a brood, with their mother
	MoultWindow
	QuarantineWindow
)

// Window is a stretch of days in which something may happen, shown as a band.
type Window struct {
	Kind        WindowKind
	From, Until civil.Date // the first day, and the first after
	Name        string     // stable: part of the entry's identity, such as "birth/2026-11-02"
	Title       string     // "Birth possible"
	Text        string     // what to look for, what to leave alone
	At          source.Place
	Cited       plan.Cited
}

// Births reports whether the window is for a birth or for what follows one.
func (w *Window) Births() bool { return w.Kind == BirthWindow || w.Kind == FirstMoultWindow }

// Task is something to do once, or on each day of a short run, because of what
// was seen. Every occasion lies on the horizon, or past its end.
type Task struct {
	Name     string // stable: part of the entry's identity
	Kind     *schema.CareKind
	On       civil.Date
	Times    int // on how many occasions; 1 is once
	Interval int // days between them
	Text     string
	Minutes  int  // how long it takes; 0 for as long as its kind
	High     bool // before everything else in its round
	Meal     bool // it offers food to the group, so it satisfies the need for it
	Instead  bool // of a meal: it stands in place of the usual one
	Killed   bool // its prey is killed first, whoever is there
	At       source.Place
	Cited    plan.Cited
}

// Ask is a question that stands until the log answers it: it stands in the round on
// each of its days, before everything else where it is pressing, and is a finding.
type Ask struct {
	Name  string // stable: part of the entry's identity
	About About
	Kind  *schema.CareKind // what is done for it; nil for a look from outside
	From  civil.Date
	Until civil.Date // the first day on which it is asked no more; 0 for until it is answered
	Every int        // days; 1 is daily
	// Undated says that the plan tells of what it is about without a day: it is open from
	// the beginning, and From is only the first day on which a round asks it.
	Undated bool
	Rule    *finding.Rule // nil for the usual ones: something to do now, or a question
	Urgent  bool          // harm now: FIRST, and an urgent finding; else a caution
	Harm    Harm          // of an urgent one: its place among others
	Text    string        // in the round, a question or what to do: "first moult of the young? white: no, light brown: yes"
	// Short and Aside are Text for a line that is about several enclosures: what is the
	// same for all of them, and what is this one's: "ill: how is it?", "since Fri 5 Mar".
	// No Short is the whole of the text.
	Short, Aside string
	Said         string // in the finding: what is wrong
	Limit        string // the limit that was passed, and whose it is
	Write        string // the words to log
	At           source.Place
	Cited        plan.Cited
}

// Harm is how bad what an urgent ask is about may be. The worst is asked first.
type Harm uint8

// What asks are urgent for, the worst last.
const (
	HarmSlow     Harm = iota // it bears a day
	HarmIll                  // ill, injured, much lighter, too hot
	HarmEscaped              // out of the enclosure
	HarmBirth                // animals that may eat each other, or are stuck in a moult
	HarmStarving             // young without a meal
	HarmLost                 // nobody knows where they are
)

// About is what an ask is about, where rules of who lives with whom look at the same: what
// the log alone brought, the ask says, and no rule says it again.
type About uint8

// What asks are about.
const (
	AboutOther   About = iota // what no rule looks at
	AboutCompany              // more than one of a kind that is kept one to a box
	AboutBrood                // others with a female that has young, or is near birth
	AboutPlace                // where animals are that were taken out
)

// Strayed reports whether the animals of a group were taken out, and nobody said where to:
// they are cared for where they were, and take no room there.
func (g *Group) Strayed() bool {
	return slices.ContainsFunc(g.Asks, func(a Ask) bool { return a.About == AboutPlace })
}

// Asked reports whether an ask about a group, or about all who live here, stands on a day.
func (l *Enclosure) Asked(about About, g *Group, on civil.Date) bool {
	is := func(a Ask) bool { return a.About == about && a.From <= on }
	return slices.ContainsFunc(g.Asks, is) || slices.ContainsFunc(l.Asks, is)
}

// Together is how many animals the plan itself puts together, before what the log says of
// them; without young, who may be with their mother.
func (l *Enclosure) Together() (n int) {
	for _, a := range l.Plan.Animals {
		if a.Stage.V != newborn && a.Stage.V != "young" {
			n += a.Count.V.Total()
		}
	}
	return n
}

// Stretch is a stage of life from a day on, until the next stretch.
type Stretch struct {
	From   civil.Date
	Stage  string // "" where it is not known
	Instar int    // 0 where it is not known
}

// Number is how many animals there are from a day on.
type Number struct {
	From  civil.Date
	Count int
}

// Group is the life of one animals block.
type Group struct {
	Animals *plan.Animals
	// Sheet is that of its species: the enclosure's own but for animals that were moved
	// there by mistake. It is nil where the species is not known.
	Sheet *plan.SpeciesSheet
	// Logged says that it is no block of the plan but was made by the log: a brood, or
	// animals that came without a block for them. Since is then when and from which line.
	Logged bool
	Since  plan.Written[civil.Date]
	// Guessed says that how many they are was never said: Count is the most that a brood has.
	Guessed bool
	// Born is the day of its birth or hatching, of a brood of the log; 0 for all others.
	Born civil.Date
	// Beside says that it is a brood that nothing carries, loose in the box of its mother.
	Beside bool
	// Mother is the group whose brood it is while it lives with her, else nil.
	Mother  *Group
	Asks    []Ask
	Stages  []Stretch // never empty; the first holds from the horizon's first day at the latest
	Numbers []Number  // never empty
	Turns   []Turn    // how it came to them, in the order of the log
	// Dam is the group that bore or laid them, where the log or the plan tells, wherever they
	// live now.
	Dam *Group
	// Noted are the lines about their health and their matings, in the order of the log.
	Noted   []source.Place
	Holds   []Hold // by first day, those that are over too; they may overlap, and each says why
	Windows []Window
	Tasks   []Task // by first day
	// Fed is the last day on which a meal is known to have been taken, and Refused
	// on how many days one was refused since, or since a moult.
	Fed     civil.Date
	HasFed  bool
	Refused int
	// Offered are the days of the meals that stand in place of the usual ones, in
	// order, those that are over too: where the log is silent they were eaten.
	Offered []civil.Date
	// Quarantined says until when it is kept apart; zero for not at all.
	Quarantined civil.Date
	Gravid      bool // carries young, or may: mated, and no birth since
	Brood       bool // young on her back or around her
	// Weights are those of the log, in order; Moults the days on which it was seen to moult, of
	// one that is alone.
	Weights []Weighing
	Moults  []civil.Date
}

// Weighing is a weight in the log.
type Weighing struct {
	On     civil.Date
	Weight plan.Written[quantity.Quantity]
}

// Weight returns the last weight in the log; it is not set where there is none.
func (g *Group) Weight() plan.Written[quantity.Quantity] {
	if n := len(g.Weights); n > 0 {
		return g.Weights[n-1].Weight
	}
	return plan.Written[quantity.Quantity]{}
}

// Weighed returns the day of the last weight in the log, 0 where there is none.
func (g *Group) Weighed() civil.Date {
	if n := len(g.Weights); n > 0 {
		return g.Weights[n-1].On
	}
	return 0
}

// Stage returns the stage on a day, or "" where it is not known.
func (g *Group) Stage(on civil.Date) string { return g.stretch(on).Stage }

// Instar returns the instar on a day, or 0 where it is not known.
func (g *Group) Instar(on civil.Date) int { return g.stretch(on).Instar }

func (g *Group) stretch(on civil.Date) Stretch {
	at := g.Stages[0]
	for _, s := range g.Stages[1:] {
		if s.From <= on {
			at = s
		}
	}
	return at
}

// Count returns how many animals there are on a day.
func (g *Group) Count(on civil.Date) int {
	n := g.Numbers[0].Count
	for _, c := range g.Numbers[1:] {
		if c.From <= on {
			n = c.Count
		}
	}
	return n
}

// Enclosure is the life of one enclosure.
type Enclosure struct {
	Plan   *plan.Enclosure
	Groups []*Group
	Holds  []Hold  // of the whole enclosure: its seasons
	Halves []Hold  // not holds: on these days every second occasion is left out
	Rests  []*Rest // the seasons that are not over, each time that one comes up
	Tasks  []Task
	Asks   []Ask
	// Measured is what was measured of its heat together with the room's, by day.
	Measured []Measurement
	// Shown is every temperature and humidity of the log, by day.
	Shown []Reading
	Loose int // how many have escaped and were not found
	// Done is the last day on which each care is known to have been done, by name;
	// the meals of a group are "feed " and the group's name.
	Done map[string]civil.Date
	// Skipped are the days on which a care is known not to have been done, by name.
	Skipped map[string][]civil.Date
	// Mites is the day on which mites were last found. HasMites says that this is
	// less than four weeks ago, so that the enclosure is still visited last.
	Mites    civil.Date
	HasMites bool
}
