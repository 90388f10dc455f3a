package page

import (
	"bytes"
	"io"
	"net/http"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/explain"
	"vivary/compile/life"
	"vivary/compile/picture"
	"vivary/compile/roster"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// tank answers for what is about one enclosure: its page, a form of its log, its picture.
func (q *request) tank(rest string) {
	name, what, _ := strings.Cut(rest, "/")
	r := q.readable()
	i := -1
	if r != nil {
		i = slices.IndexFunc(r.Lives, func(l *life.Enclosure) bool { return l.Plan.Name.V == name })
	}
	word, form := strings.CutPrefix(what, "log/")
	switch {
	case i < 0 && q.h.Called(name) != name:
		q.see("/tank/" + q.h.Called(name))
	case i < 0:
		q.lost()
	case what == "":
		q.show(http.StatusOK, "tank", q.tankPage(r, i))
	case what == "year.svg":
		q.year(r, i, picture.Year)
	case what == "year-narrow.svg":
		q.year(r, i, picture.YearNarrow)
	case form && q.v.Writes && logWord(word) != nil:
		q.show(http.StatusOK, "log", q.logPage(r, i, logWord(word), q.r.URL.Query(), nil))
	default:
		q.lost()
	}
}

// readable is the plan of which enclosures can be shown: as it stands where it can be read,
// else the last good one; nil for none.
func (q *request) readable() *compile.Result { return q.h.readable() }

func (h *House) readable() *compile.Result {
	switch {
	case h.Result.Roster != nil:
		return h.Result
	case h.Good != nil && h.Good.Roster != nil:
		return h.Good
	}
	return nil
}

// tankPage is the page of an enclosure.
type tankPage struct {
	frame
	about
	Name   string
	Write  bool
	Next   []next
	Log    []logged
	Words  []wordGroup
	Groups []string // to choose from in a form, where there are several
	Proof  []part
	Slip   *slip
	Before string
	At     string // of a line that takes back
	Label  string
	Behind string // of a plan that cannot be read: whose state this is
}

// next is a care with its next day.
type next struct {
	Text, Day, At, Often string
	Today                bool
	on                   civil.Date
}

// logged is a line of the log.
type logged struct {
	Day, By, Text string
	Line          string // whole, where the visitor may take it back
}

type part struct {
	Head  string
	Lines []explain.Line
	Code  string
}

func (q *request) tankPage(r *compile.Result, i int) tankPage {
	l := r.Lives[i]
	name := l.Plan.Name.V
	out := tankPage{frame: q.frame(l.Plan.Shown(), "tanks"), about: aboutOf(r, i), Name: name, Write: q.v.Writes, At: q.stamp(),
		Next: nextOf(r, i), Log: q.logOf(r, name), Words: wordGroups(), Slip: q.said.of(q.v, q.r.URL.Query().Get("noted"))}
	out.Ring = daylist.Numbers(r.Plan, []string{q.v.Keeper})
	if len(l.Groups) > 1 {
		for _, g := range l.Groups {
			out.Groups = append(out.Groups, g.Animals.Name.V)
		}
	}
	for _, p := range explain.Enclosure(r, i).Parts {
		out.Proof = append(out.Proof, part(p))
	}
	if q.h.Label != nil {
		out.Label = q.h.Label(name)
	}
	if r != q.h.Result {
		out.Behind = "The plan cannot be read now: this is as it was on " + r.Today.Words() + "."
	}
	return out
}

// nextOf is the care of an enclosure by its next day.
func nextOf(r *compile.Result, i int) (out []next) {
	ticks := r.Roster.Ticks()
	add := func(e *roster.Entry) {
		from := r.Horizon.Today
		if e.Days.Has(from) && ticks.Has(e, from) {
			from++
		}
		at := e.Days.Next(from)
		if at < 0 || e.Ask != nil {
			return
		}
		on := r.Horizon.Date(at)
		text := e.Task
		if e.Group != nil && len(e.Life.Groups) > 1 {
			text += ", " + calledGroup(e.Group)
		}
		n := next{Text: text, Day: on.Short(), At: wording.Clock(e.At(), r.Plan.Units), Often: e.Words(), Today: on == r.Today, on: on}
		if n.Today {
			n.Day = "today"
		}
		if !slices.Contains(out, n) {
			out = append(out, n)
		}
	}
	if k := r.Roster.RackOf(r.Lives[i].Plan); k != nil {
		for j := range k.Entries {
			add(&k.Entries[j])
		}
	}
	for k := range r.Roster.Of[i] {
		add(&r.Roster.Of[i][k])
	}
	slices.SortStableFunc(out, func(a, b next) int { return int(a.on - b.on) })
	return out
}

// shownLines is how many lines of a log a page shows.
const shownLines = 20

// logOf are the last lines of the log about an enclosure, the last first.
func (q *request) logOf(r *compile.Result, name string) (out []logged) {
	c := r.Plan
	for i := len(c.Log) - 1; i >= 0 && len(out) < shownLines; i-- {
		e := &c.Log[i]
		if e.Enclosure.V != name {
			continue
		}
		line := c.Files.Of(e.At)
		x := logged{Day: e.Date.Short(), By: signed(c, e, c.Units), Text: behind(line, name)}
		if e.Date < r.Today-300 {
			x.Day = e.Date.Words()
		}
		if q.v.Writes && q.own(e) {
			x.Line = line
		}
		out = append(out, x)
	}
	return out
}

// behind is what stands behind the enclosure in a line.
func behind(line, name string) string {
	if _, after, ok := strings.Cut(line, " "+name+" "); ok {
		return after
	}
	return line
}

// year answers with a picture of an enclosure's year.
func (q *request) year(r *compile.Result, i int, draw func(io.Writer, *compile.Result, int) error) {
	var b bytes.Buffer
	if err := draw(&b, r, i); err != nil {
		q.lost()
		return
	}
	q.picture(b.Bytes())
}

// picture answers with a drawing.
func (q *request) picture(svg []byte) {
	h := q.w.Header()
	h.Set("Content-Type", "image/svg+xml")
	h.Set("Cache-Control", "private, no-store")
	_, _ = q.w.Write(svg) // whoever asked has gone, if it fails
}
