// Package history goes through the revisions of a collection, from the newest back, and finds what
// they said of one enclosure.
//
// A revision is compiled only where a piece of it may mean something for the enclosure, and then
// with those enclosures alone that have to do with it.
package history

import (
	"fmt"
	"strings"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/compile/compare"
	"vivary/compile/identity"
	"vivary/compile/past"
	"vivary/plan"
	"vivary/plan/change"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/slip"
	"vivary/schema/wording"
)

// Root is the folder of the collection on the disk of a revision.
const Root = "."

// Revision is one state of the collection.
type Revision struct {
	past.Revision
	Disk func() (afero.Fs, error)
}

// Asked says what is to be told.
type Asked struct {
	Name string // of the enclosure, now or at any time
	Most int    // how many steps; 0 for all
	// Now is the present where the animals are; loc is nil where the plan does not say where that
	// is.
	Now func(loc *time.Location) (time.Time, error)
	// Begins says that the last revision is the first that there is.
	Begins bool
}

// Unknown is the error for a name that no revision has.
type Unknown struct {
	Name string
	Near string // what may be meant, or ""
	Torn string // why the newest revision cannot be understood, or ""
}

func (u *Unknown) Error() string {
	switch {
	case u.Torn != "":
		return fmt.Sprintf("no enclosure %q is in any revision that can be understood; the newest cannot: %s", u.Name, u.Torn)
	case u.Near != "":
		return fmt.Sprintf("no enclosure is or was named %q: did you mean %s?", u.Name, u.Near)
	}
	return fmt.Sprintf("no enclosure is or was named %q, in the plan or in any revision of it that is here", u.Name)
}

// Of tells what some revisions, the newest first, said of an enclosure.
func Of(revisions []Revision, asked Asked) (*past.Story, error) {
	w := &walk{asked: asked, story: &past.Story{}}
	var newer *state
	for i := range revisions {
		older, err := w.load(&revisions[i])
		if err != nil {
			return nil, err
		}
		if older.torn != "" {
			w.torn = append(w.torn, older)
			continue
		}
		if w.newest == nil {
			if err := w.begin(older); err != nil {
				return nil, err
			}
		}
		w.name(older)
		if newer != nil {
			w.step(older, newer)
		}
		w.tell(older)
		newer = older
		if w.done() {
			return w.story, nil
		}
	}
	if newer != nil {
		w.last(newer)
	}
	if w.id == "" {
		return nil, w.unknown()
	}
	return w.story, nil
}

// state is a revision as it was read.
type state struct {
	*Revision
	disk  afero.Fs
	plan  *plan.Collection
	found []finding.Finding
	torn  string
	of    *plan.Enclosure // the enclosure in it, or nil
}

// walk is one way back.
type walk struct {
	asked  Asked
	story  *past.Story
	reader plan.Reader
	now    time.Time
	today  civil.Date
	id     string       // the name that the enclosure had first; "" until it is found
	shown  string       // its name in the newest revision that has it
	log    []plan.Event // the lines about it in that one, its own and those that bring it animals
	until  civil.Date   // up to which day the year is told, from today back
	torn   []*state     // those between two that are understood
	first  *state       // the newest that cannot be
	newest *state       // the newest that can
}

// load reads a revision.
func (w *walk) load(r *Revision) (*state, error) {
	disk, err := r.Disk()
	if err != nil {
		return nil, err
	}
	s := &state{Revision: r, disk: disk}
	w.reader.Open = nil
	if s.plan, s.found, err = w.reader.Load(disk, Root); err != nil {
		return nil, err
	}
	if s.plan.Location == nil || !s.plan.Understood() || !s.plan.Complete() {
		s.torn = why(s.plan, s.found)
		if w.first == nil {
			w.first = s
		}
	}
	return s, nil
}

// why says in one line why a plan cannot be understood.
func why(c *plan.Collection, found []finding.Finding) string {
	for _, f := range finding.Sort(c.Files, found) {
		if f.Severity < finding.Error {
			continue
		}
		if !f.At.Written() {
			return f.Text
		}
		at := c.Files.Start(f.At)
		return fmt.Sprintf("%s:%d: %s", at.File, at.Line, f.Text)
	}
	return "it is no whole plan"
}

// begin begins with the newest revision that is understood.
func (w *walk) begin(s *state) (err error) {
	w.newest = s
	if w.now, err = w.asked.Now(s.plan.Location); err != nil {
		return err
	}
	w.today = civil.FromTime(w.now.In(s.plan.Location))
	w.until = w.today + 1
	w.story.Year = past.NewYear(w.today)
	return nil
}

// name finds the enclosure in a revision: by the name that it had first, else by that which it had
// in the revision after it.
func (w *walk) name(s *state) {
	c := s.plan
	if w.id == "" {
		if s.of = c.Enclosure(w.asked.Name); s.of == nil {
			s.of = formerly(c, w.asked.Name)
		}
		if s.of == nil {
			return
		}
		w.shown, w.story.Name, w.story.Title = s.of.Name.V, s.of.Name.V, s.of.Shown()
		w.log = past.About(c, s.of.Name.V)
		w.story.Year.Mark(w.log)
	} else if s.of = formerly(c, w.id); s.of == nil {
		s.of = c.Enclosure(w.id)
	}
	if s.of != nil {
		w.id = identity.Enclosure(s.of)
	}
}

func formerly(c *plan.Collection, id string) *plan.Enclosure {
	for _, e := range c.Enclosures {
		if identity.Enclosure(e) == id {
			return e
		}
	}
	return nil
}

// moment is that as of which a revision is judged, and its day. What is not committed yet is of
// today.
func (w *walk) moment(s *state, loc *time.Location) (time.Time, civil.Date) {
	at := s.When.In(loc)
	if s.ID == "" || s.When.Year() < 1971 || s.When.Year() > 9000 {
		return w.now, w.today
	}
	return at, civil.FromTime(at)
}

// step compares two revisions that follow each other.
func (w *walk) step(older, newer *state) {
	if older.of == nil && newer.of == nil {
		return
	}
	all := change.Between(older.plan, newer.plan)
	scope := past.ScopeOf(older.plan, newer.plan, older.of, newer.of, all)
	may := all.Only(scope.May)
	if len(may.Pieces) == 0 {
		return
	}
	t := &tries{w: w, scope: scope, disk: older.disk, changes: may}
	at, day := w.moment(newer, newer.plan.Location)
	t.was = compile.From(compile.Input{Plan: older.plan.Only(scope.Keep), Loaded: older.found, Now: at})
	t.now, t.known = at, t.was.Known()
	is := t.compile(newer.plan, newer.found)
	w.stood(newer, is, day)
	s := past.Step{Revision: newer.Revision.Revision, Day: day, Report: compare.OfOne(w.id, t.was, is, may, t.try)}
	before, name := nameOf(older), nameOf(newer)
	s.Name = name
	if name == "" {
		s.Name = before
	}
	for i := range may.Pieces {
		if scope.Own(&may.Pieces[i]) {
			s.Own = append(s.Own, i)
		}
	}
	s.Lines(newer.plan, s.Name, before, may.Pieces)
	if len(s.Own)+len(s.Report.Effects)+len(s.Log) > 0 {
		w.add(s)
	}
}

func nameOf(s *state) string {
	if s.of == nil {
		return ""
	}
	return s.of.Name.V
}

// add tells a step, unless enough of them are told.
func (w *walk) add(s past.Step) {
	if w.asked.Most > 0 && len(w.story.Steps) >= w.asked.Most {
		w.story.Older = true
		return
	}
	w.story.Steps = append(w.story.Steps, s)
}

// tell tells of the revisions after this one that cannot be understood, where they touched the
// enclosure or hid it.
func (w *walk) tell(older *state) {
	torn := w.torn
	if w.torn = nil; older.of == nil {
		return
	}
	for _, s := range torn {
		all := change.Between(older.plan, s.plan)
		scope := past.ScopeOf(older.plan, older.plan, older.of, older.of, all)
		own := all.Only(scope.Own)
		if len(own.Pieces) == 0 && s.plan.Enclosure(older.of.Name.V) != nil {
			continue
		}
		_, day := w.moment(s, older.plan.Location)
		w.add(past.Step{Revision: s.Revision.Revision, Day: day, Name: older.of.Name.V, Torn: s.torn})
	}
}

// stood tells the year by a revision that was in force from a day on, up to what is told already.
func (w *walk) stood(s *state, r *compile.Result, day civil.Date) {
	from := min(day, w.until)
	defer func() { w.until = from }()
	year := w.story.Year
	if s.of == nil || from >= w.until || w.until <= year.From {
		return
	}
	if from < year.From {
		from = year.From
	}
	if r == nil || r.Horizon.Last() < w.until-1 { // it was in force for longer than it looks ahead
		at := civil.Date(max(from, day)).At(12*60, s.plan.Location)
		scope := past.ScopeOf(s.plan, s.plan, s.of, s.of, &change.Changes{})
		r = compile.From(compile.Input{Plan: s.plan.Only(scope.Keep), Loaded: s.found, Now: at})
	}
	for i, l := range r.Lives {
		if identity.Enclosure(l.Plan) == w.id || l.Plan.Name.V == s.of.Name.V {
			year.Add(r, i, w.own(), from, w.until)
			break
		}
	}
	if day < year.From {
		from = day
	}
}

// own are the lines of the log about the enclosure itself.
func (w *walk) own() (out []plan.Event) {
	for _, e := range w.log {
		if e.Enclosure.V == w.shown {
			out = append(out, e)
		}
	}
	return out
}

// done reports whether all is told that was asked for.
func (w *walk) done() bool {
	return w.asked.Most > 0 && w.story.Older && w.until <= w.story.Year.From
}

// last tells of the oldest revision that there is.
func (w *walk) last(s *state) {
	if s.of == nil || w.id == "" {
		return
	}
	at, day := w.moment(s, s.plan.Location)
	w.stood(s, nil, day)
	if !w.asked.Begins || s.ID == "" {
		return
	}
	n := 0
	scope := past.ScopeOf(s.plan, s.plan, s.of, s.of, &change.Changes{})
	r := compile.From(compile.Input{Plan: s.plan.Only(scope.Keep), Loaded: s.found, Now: at})
	for _, l := range r.Lives {
		if l.Plan == s.of {
			for _, g := range l.Groups {
				n += g.Count(r.Today)
			}
		}
	}
	begins := "it is in the plan, with " + wording.Animals(n)
	w.add(past.Step{Revision: s.Revision.Revision, Day: day, Name: s.of.Name.V, Begins: begins})
}

// unknown says that no revision has the enclosure.
func (w *walk) unknown() error {
	u := &Unknown{Name: w.asked.Name}
	if w.first != nil {
		u.Torn = w.first.torn
	}
	if w.newest != nil {
		var names []string
		for _, e := range w.newest.plan.Enclosures {
			if names = append(names, e.Name.V); e.Of == w.asked.Name {
				u.Near = e.Name.V + " or another of that block" // with numbers
				return u
			}
		}
		u.Near = slip.Of(strings.ToLower(w.asked.Name), names)
	}
	return u
}

// tries compiles one of two revisions, and the first with pieces of what is between them.
type tries struct {
	w       *walk
	scope   *past.Scope
	disk    afero.Fs // of the first, which was read last
	changes *change.Changes
	now     time.Time
	was     *compile.Result
	known   []compile.Known
}

func (t *tries) compile(c *plan.Collection, found []finding.Finding) *compile.Result {
	return compile.From(compile.Input{Plan: c.Only(t.scope.Keep), Loaded: found, Now: t.now, Known: t.known, Last: t.was})
}

func (t *tries) try(pieces []int) *compile.Result {
	texts, ok := t.changes.With(pieces...)
	if !ok {
		return nil
	}
	t.w.reader.Open = texts
	c, found, err := t.w.reader.Load(t.disk, Root)
	if err != nil {
		return nil
	}
	return t.compile(c, found)
}
