package page

import (
	"fmt"
	"net/http"
	"slices"
	"strings"

	"vivary/schema/civil"
	"vivary/schema/wording"
)

// A button sends what the log then says: the words behind the enclosure, a star, the
// enclosures with points between them, and the next such words behind an exclamation mark:
// "done water*tub-1.tub-2!fed*tub-1". None of these is in a name. A page that was open for
// long still says what was meant by whoever looked at it.

// tick notes that something of a round was done.
func (q *request) tick() {
	form := q.r.PostForm
	day, err := civil.Parse(form.Get("day"))
	name, ticks := form.Get("round"), strings.Split(form.Get("tick"), "!")
	now := q.now()
	today := civil.FromTime(now)
	if err != nil || day > today || day < today-1 {
		q.fail(http.StatusConflict, "That list was of another day, and nothing was written. What was done then is noted at its tank, with the day.")
		return
	}
	r, _ := q.listed()
	if r == nil {
		q.fail(http.StatusConflict, "There is no list now: the plan cannot be read. What was done is noted in the log by hand. Nothing was written.")
		return
	}
	l, at := q.found(r, name, ticks, form.Get("sum"))
	if at == nil && day == q.h.Result.Today {
		q.fail(http.StatusConflict, "The list has changed since that page was opened, and nothing was written. Look at it again.")
		return
	}
	if form.Get("tick") == "all" {
		ticks = at.round.all()
	}
	by := ""
	if q.v.Keeper != "" {
		by = " by " + q.v.Keeper
	}
	clock := civil.Clock(now.Hour()*60 + now.Minute())
	var lines []string
	for _, t := range ticks {
		words, names, _ := strings.Cut(t, "*")
		for tank := range strings.SplitSeq(names, ".") {
			if !plainWords(words) || q.known(tank) == "" {
				q.lost()
				return
			}
			head := day.String()
			if day == today { // past midnight nobody knows when it was
				head += " " + q.list(r, "").when(name, words+"*"+tank, clock).String()
			}
			lines = append(lines, head+by+" "+tank+" "+words)
		}
	}
	if len(lines) > maxLines {
		q.fail(http.StatusConflict, "These would be "+itoa(len(lines))+" lines of the log at once, which is too many: tick them off one task after another. Nothing was written.")
		return
	}
	said := words(q, ticks)
	query := ""
	if form.Get("who") == "all" {
		query = "who=all&"
	}
	before := ""
	if at != nil {
		before = at.next(l, ticks)
	}
	q.write(lines, said, "/?"+query, before)
}

// when is the time with which a tick of a round is noted: the present one, unless the same is
// due in another round that is nearer to it. The log would take it for that one's, so that the
// time of the round that was meant is written.
func (l *list) when(name, tick string, now civil.Clock) civil.Clock {
	var own, best *round
	for i := range l.Rounds {
		x := &l.Rounds[i]
		if x.Name == name {
			own = x
		}
		if x.may[tick] && (best == nil || apart(x.Clock, now) < apart(best.Clock, now)) {
			best = x
		}
	}
	if own == nil || best == nil || own == best {
		return now
	}
	return own.Clock
}

func apart(a, b civil.Clock) civil.Clock { return max(a-b, b-a) }

// maxLines is how many lines one tick writes at the most.
const maxLines = 20000

// plainWords reports whether words are such as a tick has: letters, digits and what names have,
// a blank between two.
func plainWords(s string) bool {
	return s != "" && !strings.ContainsFunc(s, func(r rune) bool { return r < ' ' || r == '"' || r == '#' || r == '\\' }) && s == strings.Join(strings.Fields(s), " ")
}

// known returns how people call an enclosure or a rack of that name; "" for none.
func (q *request) known(name string) string {
	c := q.h.Result.Plan
	if e := c.Enclosure(name); e != nil {
		return e.Shown()
	}
	if k := c.Rack(name); k != nil {
		return k.Shown()
	}
	if s := c.Store(name); s != nil {
		return s.Shown()
	}
	if q.h.Good != nil && q.h.Good.Plan.Enclosure(name) != nil {
		return q.h.Good.Plan.Enclosure(name).Shown()
	}
	return ""
}

// place is where in a list something was ticked off.
type place struct {
	round *round
	line  int // among all lines of the round
}

// words says what was ticked off: "Tub 1, Tub 2: done water".
func words(q *request, ticks []string) string {
	var out []string
	n := 0
	for _, t := range ticks {
		said, names, _ := strings.Cut(t, "*")
		of := strings.Split(names, ".")
		if n += len(of); len(out) < 3 {
			var shown []string
			for _, name := range of[:min(len(of), 3)] {
				shown = append(shown, q.known(name))
			}
			text := strings.Join(shown, ", ")
			if more := len(of) - len(shown); more > 0 {
				text = fmt.Sprintf("%s and %d more", text, more)
			}
			out = append(out, text+": "+said)
		}
	}
	if len(ticks) > len(out) {
		return wording.Count(n, "line", "lines") + ": " + strings.Join(out, "; ") + " …"
	}
	return strings.Join(out, "; ")
}

// lines are all lines of a round, in order.
func (x *round) lines() (out []*line) {
	for i := range x.First {
		out = append(out, &x.First[i])
	}
	for i := range x.Leaving {
		out = append(out, &x.Leaving[i])
	}
	for _, s := range x.Sections {
		out = append(out, s.Lines...)
	}
	return out
}

// within reports whether all that a button sends is among some ticks.
func within(tick string, ticks []string) bool {
	for t := range strings.SplitSeq(tick, "!") {
		if !slices.Contains(ticks, t) {
			return false
		}
	}
	return true
}

// next is the line at which the work goes on once some ticks are done: the same one where
// something of it is left.
func (at *place) next(l *list, ticks []string) string {
	all := at.round.lines()
	if at.line < 0 {
		return at.round.ID
	}
	left := 0
	for _, j := range all[at.line].Jobs {
		if !within(j.Tick, ticks) {
			left++
		}
	}
	switch {
	case left > 0:
		return all[at.line].ID
	case at.line+1 < len(all):
		return all[at.line+1].ID
	}
	return at.round.ID
}
