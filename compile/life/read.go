package life

import (
	"slices"
	"vivary/compile/horizon"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
)

// Read reads the lives of the enclosures of one household from their plans and the
// lines of the log about them, and returns one for each, in their order, with what was
// found. Lines after the present day are a mistake, are found as such, and do not count.
func Read(c *plan.Collection, of Household, h horizon.Horizon) ([]*Enclosure, [][]finding.Finding) {
	lives, found := make([]*Enclosure, len(of.At)), make([][]finding.Finding, len(of.At))
	w := world{}
	for i, at := range of.At {
		e := c.Enclosures[at]
		out := &Enclosure{Plan: e, Groups: make([]*Group, len(e.Animals))}
		lives[i] = out
		quiet := len(of.Log) == 0 && len(e.Seasons) == 0
		all := make([]start, len(e.Animals))
		for k, a := range e.Animals {
			out.Groups[k] = all[k].begin(a, e.Sheet, h.Now())
			quiet = quiet && !a.State.Set() && !a.Arrived.Set() && !a.Born.Set() && all[k].stage[0].Stage != newborn
		}
		if quiet {
			continue
		}
		w.add(&reader{c: c, h: h, today: h.Now(), out: out, sheet: e.Sheet, place: i})
	}
	for i := range of.Log {
		w.line(&of.Log[i])
	}
	for _, r := range w.all {
		r.conclude()
	}
	for _, r := range w.all {
		r.whole()
		found[r.place] = r.found.All
	}
	return lives, found
}

// start is a group with room for what most groups have: one stage and one number.
// Of ten thousand enclosures nearly all are read without another allocation.
type start struct {
	Group
	stage  [1]Stretch
	number [1]Number
}

// newborn is the stage before the first moult.
const newborn = "newborn"

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

// world is one reading of one household.
type world struct {
	all []*reader
	of  map[string]*reader // by the enclosure's name
}

func (w *world) add(r *reader) {
	if w.of == nil {
		w.of = map[string]*reader{}
	}
	r.world, r.also = w, map[string]alias{}
	w.all = append(w.all, r)
	w.of[r.out.Plan.Name.V] = r
	for _, g := range r.out.Groups {
		t := &track{Group: g, home: r, undated: g.Gravid, males: g.Animals.Count.V.Males}
		r.tracks = append(r.tracks, t)
		if a := g.Animals.Arrived; a.Set() && a.V <= r.today {
			t.appeared(seen{a.V, a.At, true}, t.now(), Arrived)
		}
		if g.Brood {
			r.told(t)
		}
	}
	r.beside()
}

// line reads one line. Those about one enclosure come to its reader; what moves
// animals says something to two.
func (w *world) line(e *plan.Event) {
	if r := w.of[e.Enclosure.V]; r != nil {
		r.line(e)
	}
}

// reader is one reading of one enclosure. The lines are read first and only noted;
// what follows from them is concluded once all have been read, since a later line
// often ends what an earlier one began.
type reader struct {
	world  *world
	place  int // in the household
	c      *plan.Collection
	h      horizon.Horizon
	today  civil.Date
	out    *Enclosure
	sheet  *plan.SpeciesSheet
	tracks []*track
	heads  heads // counts of the whole enclosure
	died   seen
	mites  seen
	harsh  []harsh          // measurements outside what the animals bear, of which none was better since
	loose  []loose          // who escaped
	also   map[string]alias // by the names that animals had where they came from
	cares  map[string]bool  // the names that done and skipped may use
	found  finding.List
	// crowded says that there were more groups than are followed.
	crowded bool
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
	home     *reader // where it is
	numbered bool    // a line has changed the number
	gone     string  // how the last of them went
	arrived  seen
	joined   seen // since when it is with others that it was not with before
	heads    heads

	moult   seen // the last
	before  seen // the one before it, of a single animal
	entered seen // since when all are in the present instar
	moulted int  // how many have left the present instar already
	// Those that wait for a moult, and of a group how many are known to.
	premoult, hanging, sealed    seen
	premoults, hangings, sealeds int

	refused      seen // the last refusal
	firstRefused seen
	pause        int // the place of the pause after it among the holds, from 1; 0 is none

	matings []seen // since the last birth
	gravid  seen
	late    seen // signs that a birth is near
	sign    seen // the last word that she is gravid still
	undated bool // the plan says that she is gravid; no line does
	parted  bool // some were moved away since the mating
	laid    seen // a sac or a clutch that has not hatched
	clutch  seen // the last one that was taken from her, to an incubator or another box
	broods  []*brood
	// How many of the broods have had their first moult, and how many have left.
	moulting, leaving int

	of     *brood // of young: the brood that they are; with their mother while Mother is set
	orphan seen   // when their mother died or went
	stray  seen   // taken out, and nobody said where to
	sick   seen
	hurt   seen
	unwell civil.Date // the last line that one is
	ills   int        // how many are ill, and how many hurt
	hurts  int
	males  int // how many are males for certain
	course course
	lean   lean

	told   told
	doubts []finding.Finding // what may have been told twice, and no count has answered
	meal   *doubt
}

// now returns how many there are after the lines read so far.
func (t *track) now() int { return t.Numbers[len(t.Numbers)-1].Count }

// stage is the one after the lines read so far.
func (t *track) stage() Stretch { return t.Stages[len(t.Stages)-1] }

// ahead is a line of the log about a day that has not come.
func ahead(e *plan.Event, today civil.Date) finding.Finding {
	return finding.Finding{Rule: RuleFuture, At: e.At, Text: e.Date.Words() + " is after today, " + today.Words(), Write: "the day on which it was seen"}
}

// HouseAhead are the lines about feeder animals and dates of the house of which the day has not
// come: those of enclosures are found where their lives are read.
func HouseAhead(c *plan.Collection, today civil.Date) (found []finding.Finding) {
	if len(c.Stores)+len(c.Deadlines) == 0 {
		return nil
	}
	for i := range c.Log {
		if e := &c.Log[i]; e.Date > today && (e.Deadline.Set() || c.Store(e.Enclosure.V) != nil) {
			found = append(found, ahead(e, today))
		}
	}
	return found
}

func (r *reader) line(e *plan.Event) {
	switch {
	case e.Date > r.today:
		r.found.Add(ahead(e, r.today))
	case e.Word.Subject == schema.OfCare:
		r.care(e)
	case e.Word.Subject == schema.OfEnclosure:
		switch e.Word {
		case schema.WordMites:
			r.mites = see(e)
			r.infest(e)
		case schema.WordMeasured:
			r.measure(e)
		}
	case e.Group.V == "" && e.Word == schema.WordCounted && len(r.tracks) != 1:
		r.countedAll(e)
	default:
		if t := r.subject(e); t != nil {
			r.ofAnimals(t, e)
		}
	}
}

// words say what each word about animals does.
var words map[*schema.LogWord]func(*reader, *track, *plan.Event)

func init() {
	words = map[*schema.LogWord]func(*reader, *track, *plan.Event){
		schema.WordArrived: (*reader).arrived, schema.WordDied: (*reader).diedLine, schema.WordMoved: (*reader).movedOut, schema.WordCounted: (*reader).counted,
		schema.WordMoult: (*reader).moult, schema.WordPremoult: (*reader).premoult, schema.WordHanging: (*reader).hanging,
		schema.WordFed: (*reader).fed, schema.WordRefused: (*reader).refusal, schema.WordWeighed: (*reader).weighed,
		schema.WordMated: (*reader).mated, schema.WordGravid: (*reader).gravidLine, schema.WordBorn: (*reader).born,
		schema.WordFirstMoult: (*reader).firstMoult, schema.WordSeparated: (*reader).separated,
		schema.WordTreated: (*reader).treated, schema.WordIll: (*reader).ill, schema.WordInjured: (*reader).injured, schema.WordRecovered: (*reader).recovered,
		schema.WordSealed: (*reader).sealedIn, schema.WordMatured: (*reader).matured, schema.WordPaired: (*reader).mated,
		schema.WordNotGravid: (*reader).notGravid, schema.WordLate: (*reader).lateLine,
		schema.WordLaid: (*reader).laidLine, schema.WordSacTaken: (*reader).sacTaken, schema.WordHatched: (*reader).hatched,
		schema.WordEscaped: (*reader).escaped, schema.WordFound: (*reader).foundAgain, schema.WordQuarantined: (*reader).quarantined,
		schema.WordSeen: (*reader).sight, schema.WordDispersed: (*reader).dispersed,
	}
}

func (r *reader) ofAnimals(t *track, e *plan.Event) {
	if len(r.living()) == 0 && e.Word == schema.WordHatched && age(t.stage().Stage) <= age("young") {
		r.cameOut(t, e)
		return
	}
	if y := r.left(t); y != nil && t.now() == 0 && slices.Contains(ofYoung, e.Word) {
		t = y
	}
	if t.now() == 0 && e.Word != schema.WordArrived && e.Word != schema.WordCounted && !(r.away(t) > 0 && (e.Word == schema.WordFound || e.Word == schema.WordDied)) {
		r.ofGone(t, e)
		return
	}
	if does := words[e.Word]; does != nil {
		n := t.now()
		r.meals(t, e)
		does(r, t, e)
		r.twice(t, e, n)
		if slices.Contains(noted[:], e.Word) {
			t.Noted = append(t.Noted, e.At)
		}
		t.told.remember(e)
	}
}

// conclude draws the consequences for each group.
func (r *reader) conclude() {
	for _, t := range r.tracks {
		t.Brood, t.Beside = false, false
		if t.of != nil {
			t.Guessed, t.Born = t.of.number == 0, t.of.born.on
		}
		if t.now() == 0 {
			t.Gravid, t.Refused = false, 0
			continue
		}
		r.afterMoult(t)
		r.beforeMoult(t)
		r.forecast(t)
		r.fasting(t)
		r.carrying(t)
		for _, b := range t.broods {
			r.rearing(t, b)
		}
		r.growing(t)
		r.looseHere(t)
		r.quarantine(t)
		r.health(t)
		r.wasting(t)
	}
	r.sayDoubts()
	r.company()
	r.seasons() // whether animals may rest follows from all the rest, and when they are fed from that
	for _, t := range r.tracks {
		r.settle(t)
	}
}

// leave ends everything about those that are gone, but what held before.
func (r *reader) leave(t *track, on civil.Date) {
	t.eat(on)
	r.closeMoult(t, on)
	r.closeLate(t, on)
	for _, b := range t.broods {
		t.Holds = append(t.Holds, r.broodHolds(t, b)...)
	}
	t.Holds = append(t.Holds, r.healthHolds(t)...)
	t.Holds = append(t.Holds, r.sacHolds(t)...)
	t.Holds = append(t.Holds, r.looseHolds(t)...)
	if _, hold := r.reserves(t); hold.State != nil && (t.of != nil || t.stage().Stage == newborn) {
		t.Holds = append(t.Holds, hold)
	}
	for i := range t.Holds {
		h := &t.Holds[i]
		h.Until, h.Open = min(h.Until, on), false
	}
	t.Mother = nil
	*t = track{Group: t.Group, home: t.home, numbered: true, gone: t.gone}
}
