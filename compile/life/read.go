package life

import (
	"vivary/compile/horizon"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
)

// Read reads the life of one enclosure from its plan and the log lines about it,
// which are in the order of their days (see Lines). Lines after the present day are
// a mistake, are found as such, and do not count.
func Read(c *plan.Collection, e *plan.Enclosure, log []plan.Event, h horizon.Horizon) (*Enclosure, []finding.Finding) {
	out := &Enclosure{Plan: e, Groups: make([]*Group, len(e.Animals))}
	out.Holds, out.Halves = seasons(e.Seasons, h)
	quiet := len(log) == 0
	all := make([]start, len(e.Animals))
	for i, a := range e.Animals {
		out.Groups[i] = all[i].begin(a, e.Sheet, h.Now())
		quiet = quiet && !a.State.Set() && !a.Arrived.Set() && !a.Born.Set()
	}
	if quiet {
		return out, nil
	}
	r := &reader{c: c, h: h, today: h.Now(), out: out, sheet: e.Sheet, tracks: make([]track, len(out.Groups))}
	for i, g := range out.Groups {
		r.tracks[i] = track{Group: g, undated: g.Gravid}
		if g.Brood {
			r.tracks[i].broods = []brood{{}}
		}
	}
	for i := range log {
		r.line(&log[i])
	}
	for i := range r.tracks {
		r.conclude(&r.tracks[i])
	}
	r.whole()
	return out, r.found.All
}

// start is a group with room for what most groups have: one stage and one number.
// Of ten thousand enclosures nearly all are read without another allocation.
type start struct {
	Group
	stage  [1]Stretch
	number [1]Number
}

// begin makes the group as the plan has it.
func (s *start) begin(a *plan.Animals, sheet *plan.SpeciesSheet, today civil.Date) *Group {
	stage := a.Stage.V
	if stage == "" && a.Instar.Set() && sheet != nil {
		stage = sheet.StageOf(a.Instar.V)
	}
	s.stage[0] = Stretch{today, stage, a.Instar.V}
	s.number[0] = Number{today, a.Count.V.Total()}
	s.Group = Group{
		Animals: a,
		Sheet:   sheet,
		Stages:  s.stage[:],
		Numbers: s.number[:],
		Gravid:  a.State.V == "gravid",
		Brood:   a.State.V == "with brood",
	}
	return &s.Group
}

// reader is one reading of one enclosure. The lines are read first and only noted;
// what follows from them is concluded once all have been read, since a later line
// often ends what an earlier one began.
type reader struct {
	c      *plan.Collection
	h      horizon.Horizon
	today  civil.Date
	out    *Enclosure
	sheet  *plan.SpeciesSheet
	tracks []track
	heads  heads // counts of the whole enclosure
	died   seen
	mites  seen
	cares  map[string]bool // the names that done and skipped may use
	found  finding.List
}

// seen is something that was seen on a day.
type seen struct {
	on civil.Date
	at source.Place
	ok bool
}

func see(e *plan.Event) seen { return seen{e.Date, e.At, true} }

// track is a group and what has been noted of it so far.
type track struct {
	*Group
	numbered bool   // a line has changed the number
	gone     string // how the last of them went
	arrived  seen
	heads    heads

	moult    seen // the last
	before   seen // the one before it, of a single animal
	entered  seen // since when all are in the present instar
	moulted  int  // how many have left the present instar already
	premoult seen
	hanging  seen

	refused      seen // the last refusal
	firstRefused seen
	pause        int // the place of the pause after it among the holds, from 1; 0 is none

	matings []seen // since the last birth
	gravid  seen
	undated bool    // the plan says that she is gravid; no line does
	parted  bool    // some were moved away since the mating
	broods  []brood // by birth
	// How many of the broods have had their first moult, and how many have left.
	moulting, leaving int
}

// now returns how many there are after the lines read so far.
func (t *track) now() int { return t.Numbers[len(t.Numbers)-1].Count }

func (t *track) stage() Stretch { return t.Stages[len(t.Stages)-1] }

func (r *reader) line(e *plan.Event) {
	own := e.Enclosure.V == r.out.Plan.Name.V
	in := !own && e.Word == schema.WordMoved && len(e.Args) > 0 && e.Args[0].V == r.out.Plan.Name.V
	switch {
	case !own && !in:
	case e.Date > r.today:
		if own {
			r.found.Add(finding.Finding{Rule: ruleFuture, At: e.At,
				Text:  e.Date.Words() + " is after today, " + r.today.Words(),
				Write: "the day on which it was seen"})
		}
	case in:
		r.movedIn(e)
	case e.Word.Subject == schema.OfCare:
		r.care(e)
	case e.Word.Subject == schema.OfEnclosure:
		if e.Word == schema.WordMites {
			r.mites = see(e)
		}
	case e.Group.V == "":
		if e.Word == schema.WordCounted {
			r.countedAll(e)
		}
	default:
		if t := r.track(e.Group.V); t != nil {
			r.ofAnimals(t, e)
		}
	}
}

func (r *reader) track(name string) *track {
	for i := range r.tracks {
		if r.tracks[i].Animals.Name.V == name {
			return &r.tracks[i]
		}
	}
	return nil
}

// passed is for a word from which nothing follows.
func passed(*reader, *track, *plan.Event) {}

// words say what each word about animals does.
var words = map[*schema.LogWord]func(*reader, *track, *plan.Event){
	schema.WordArrived: (*reader).arrived, schema.WordDied: (*reader).diedLine, schema.WordMoved: (*reader).movedOut, schema.WordCounted: (*reader).counted,
	schema.WordMoult: (*reader).moult, schema.WordPremoult: (*reader).premoult, schema.WordHanging: (*reader).hanging,
	schema.WordFed: (*reader).fed, schema.WordRefused: (*reader).refusal, schema.WordWeighed: (*reader).weighed,
	schema.WordMated: (*reader).mated, schema.WordGravid: (*reader).gravidLine, schema.WordBorn: (*reader).born,
	schema.WordFirstMoult: (*reader).firstMoult, schema.WordSeparated: (*reader).separated,
	schema.WordTreated: passed, // the note is the record
	schema.WordSeen:    passed, schema.WordQuarantined: passed, schema.WordSealed: passed, schema.WordPaired: passed, schema.WordNotGravid: passed,
	schema.WordLate: passed, schema.WordLaid: passed, schema.WordSacTaken: passed, schema.WordDispersed: passed,
	schema.WordEscaped: passed, schema.WordFound: passed, schema.WordIll: passed, schema.WordInjured: passed, schema.WordRecovered: passed,
	schema.WordHatched: (*reader).born, schema.WordMatured: (*reader).moult,
}

func (r *reader) ofAnimals(t *track, e *plan.Event) {
	if t.now() == 0 && e.Word != schema.WordArrived && e.Word != schema.WordCounted {
		f := finding.Finding{Rule: ruleGone, At: e.At,
			Text:  "there are no " + t.Animals.Name.V + " in " + e.Enclosure.V + " on " + e.Date.Words(),
			Write: "the right day or animals; where new ones came, their line with arrived and how many before this one"}
		if t.gone != "" {
			f.Text += ": " + t.gone
		}
		r.found.Add(f)
		return
	}
	words[e.Word](r, t, e)
}

// conclude draws the consequences for one group.
func (r *reader) conclude(t *track) {
	t.Brood = false
	if t.now() == 0 {
		t.Gravid, t.Refused = false, 0
		r.settle(t)
		return
	}
	r.afterMoult(t)
	r.beforeMoult(t)
	r.forecast(t)
	r.fasting(t)
	r.carrying(t)
	for i := range t.broods {
		r.rearing(t, &t.broods[i])
	}
	r.quarantine(t)
	r.settle(t)
}

// leave ends everything about those that are gone, but what held before.
func (r *reader) leave(t *track, on civil.Date) {
	t.eat(on)
	r.closeMoult(t, on)
	t.closeLate(r, on)
	for i := range t.broods {
		t.Holds = append(t.Holds, r.broodHolds(t, &t.broods[i])...)
	}
	for i := range t.Holds {
		h := &t.Holds[i]
		h.Until, h.Open = min(h.Until, on), false
	}
	*t = track{Group: t.Group, numbered: true, gone: t.gone}
}
