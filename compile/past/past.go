// Package past says what the plan and the log said of one enclosure over the revisions of a
// collection: who changed what, with which effect for its animals, and the year as it was. It
// works nothing out itself: what a change means is said by compare, and on which days care stood
// by the plan that was in force then.
package past

import (
	"slices"
	"time"

	"vivary/compile/compare"
	"vivary/plan"
	"vivary/plan/change"
	"vivary/schema"
	"vivary/schema/civil"
)

// Story is what is told of an enclosure.
type Story struct {
	Name  string // in the newest revision in which it is
	Title string
	Steps []Step // newest first
	Year  *Year
	// Older says that there are more steps before these, Looked that so many revisions were looked
	// through and there are more, Cut that what came before is not known, since not all revisions
	// are here: the last that is has that name.
	Older  bool
	Looked int
	Cut    string
}

// Step is a revision that changed anything for the enclosure.
type Step struct {
	Revision
	Day  civil.Date // of the revision, where the animals are
	Name string     // of the enclosure since; as it was before where it was taken out
	// Report is what the step means for its animals, as of that day; nil where Torn is set, and
	// of the first revision that there is.
	Report *compare.Report
	Own    []int  // places in Report.Pieces: those of its own block
	Log    []Line // those that came to the log about it, by day
	Gone   []change.Side
	// Begins says who lives there, of the first revision that there is.
	Begins string
	// Torn says why the revision cannot be understood, so that nothing is compared.
	Torn string
}

// Revision is one of the revisions of a collection; without an ID what is not committed yet.
type Revision struct {
	ID, Short, Author, Subject string
	When                       time.Time
}

// Line is a line of the log.
type Line struct {
	change.Side
	Event *plan.Event
}

// Mark returns what a line means at a glance.
func (l *Line) Mark() *Mark { return markOf(l.Event.Word) }

// Mark is what the log says that is more than routine.
type Mark struct {
	Letter rune
	Doc    string
	Words  []*schema.LogWord
	// Told says that a line of it is told in full.
	Told bool
}

// Marks are all of them: of a week in which there are several the first is drawn.
var Marks = []Mark{
	{'†', "died", []*schema.LogWord{schema.WordDied}, true},
	{'!', "escaped, or mites", []*schema.LogWord{schema.WordEscaped, schema.WordMites}, true},
	{'i', "ill or injured", []*schema.LogWord{schema.WordIll, schema.WordInjured}, true},
	{'b', "born, hatched or laid", []*schema.LogWord{schema.WordBorn, schema.WordHatched, schema.WordLaid}, true},
	{'>', "moved or separated", []*schema.LogWord{schema.WordMoved, schema.WordSeparated}, true},
	{'<', "arrived, or found again", []*schema.LogWord{schema.WordArrived, schema.WordFound}, true},
	{'m', "moulted", []*schema.LogWord{schema.WordMoult, schema.WordMatured, schema.WordFirstMoult}, true},
	{'r', "refused a meal", []*schema.LogWord{schema.WordRefused}, false},
	{'s', "seen, counted or weighed", []*schema.LogWord{schema.WordSeen, schema.WordCounted, schema.WordWeighed}, false},
}

// markOf returns the mark of a word, or nil.
func markOf(w *schema.LogWord) *Mark {
	for i := range Marks {
		for _, x := range Marks[i].Words {
			if x == w {
				return &Marks[i]
			}
		}
	}
	return nil
}

// About returns the lines of a collection's log about an enclosure, by its name there: those
// that move animals to it too.
func About(c *plan.Collection, name string) (out []plan.Event) {
	for i := range c.Log {
		if about(&c.Log[i], name) {
			out = append(out, c.Log[i])
		}
	}
	return out
}

func about(e *plan.Event, name string) bool {
	to := (e.Word == schema.WordMoved || e.Word == schema.WordSeparated) && len(e.Args) > 0 && e.Args[0].V == name
	return name != "" && (e.Enclosure.V == name || to)
}

// Lines takes the lines about the enclosure from pieces of the log: those that came from the log of
// a collection, in which it is called so, and those that went, where it was called so.
func (s *Step) Lines(c *plan.Collection, name, before string, pieces []change.Piece) {
	type at struct {
		file string
		line int
	}
	came := map[at]change.Side{}
	for i := range pieces {
		if p := &pieces[i]; p.Log() {
			for _, l := range p.Lines {
				came[at{l.File, l.Line}] = l
			}
			if p.Name == name || before != "" && p.Name == before {
				s.Gone = append(s.Gone, p.Gone...)
			}
		}
	}
	if len(came) == 0 {
		return
	}
	for i := range c.Log {
		e := &c.Log[i]
		if !about(e, name) {
			continue
		}
		from := c.Files.Start(e.At)
		if side, is := came[at{from.File, from.Line}]; is {
			s.Log = append(s.Log, Line{side, e})
		}
	}
}

// Pieces are the places in Report.Pieces that are told: its own, and those that bring an effect. at
// says of each which of them it is.
func (s *Step) Pieces() (told []int, at map[int]int) {
	at = map[int]int{}
	for i := range s.Report.Pieces {
		if slices.Contains(s.Own, i) || s.Brings(i) {
			at[i] = len(told)
			told = append(told, i)
		}
	}
	return told, at
}

// Brings reports whether a piece has an effect on the animals.
func (s *Step) Brings(i int) bool { return !slices.Contains(s.Report.Idle, i) }
