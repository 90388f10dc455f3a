package page

import (
	"net/http"
	"slices"
	"strconv"
	"strings"
	"sync"

	"vivary/cmd/internal/journal"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// slip says what came of a form, on the page to which the browser is sent on.
type slip struct {
	Text   string
	Notes  []string // what follows, what stood already
	Bad    bool     // nothing was written
	Lines  []string // what can be taken back
	At     string   // with which time a line that takes them back is written
	Before string   // the id of what it stands before
	Back   string   // where taking back leads
	Number string   // by which it is known
	of     Visitor
}

// said keeps the last slips, with the lines that each can take back: a form of thousands of
// them would be too long. One that is no longer known is not shown: the log has it.
type said struct {
	mu    sync.Mutex
	next  int
	slips [256]*slip
}

func (s *said) put(x *slip) string {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.next++
	s.slips[s.next%len(s.slips)] = x
	x.Number = strconv.Itoa(s.next)
	return x.Number
}

// of returns the slip of that number, if it is the visitor's.
func (s *said) of(v Visitor, number string) *slip {
	n, err := strconv.Atoi(number)
	if err != nil || n < 1 {
		return nil
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	if x := s.slips[n%len(s.slips)]; x != nil && n <= s.next && n > s.next-len(s.slips) && x.of == v {
		return x
	}
	return nil
}

// write writes lines and sends the browser on to a page, which ends in "?" or "&", where a
// slip says before some line what came of it.
func (q *request) write(lines []string, what, back, before string) {
	out, err := q.Note(q.r.Context(), q.v, lines)
	q.came(out, err, what, back, before)
}

// came sends the browser on to a page that says what came of lines.
func (q *request) came(out journal.Outcome, err error, what, back, before string) {
	x := &slip{of: q.v, Before: before, Back: back, At: q.stamp()}
	switch {
	case err != nil:
		x.Bad, x.Text = true, "Nothing was written: "+wording.Plain(err).Error()+"."
	case out.Slips:
		x.Bad, x.Text = true, "Nothing was written."
		for i := range out.Findings {
			x.Notes = append(x.Notes, out.Findings[i].Said())
		}
	case out.Idle != nil:
		x.Bad, x.Text = true, "Nothing was written: nothing was held, asked or begun there that "+out.Idle.Name+" would end or begin. Is it another enclosure, or other animals? What was seen all the same is a remark."
	case len(out.Written) == 0:
		x.Text = "Noted already: " + what
	default:
		x.Text, x.Lines = "Noted: "+what, out.Written
		if n := len(out.Already); n > 0 {
			x.Notes = append(x.Notes, wording.Count(n, "line", "lines")+" stood already.")
		}
		for i := range out.Findings {
			x.Notes = append(x.Notes, out.Findings[i].Said())
		}
		if out.With != nil && out.With.Roster != nil && q.h.Result.Roster != nil {
			x.Notes = append(x.Notes, cut(journal.Changes(q.h.Result, out.With), 8)...)
		}
	}
	q.see(back + "noted=" + q.said.put(x) + "#noted")
}

// cut keeps the first few of what is said, and says how many more there are.
func cut(all []string, few int) []string {
	if len(all) <= few {
		return all
	}
	return append(all[:few:few], wording.Count(len(all)-few, "more line", "more lines")+" that follow stand at their tanks.")
}

// stamp is the present minute as a form has it.
func (q *request) stamp() string {
	now := q.now()
	return civil.FromTime(now).String() + " " + civil.Clock(now.Hour()*60+now.Minute()).String()
}

// undo takes back lines that the visitor wrote. The time is that at which the button was
// shown, so that two taps write one line and not one that takes back more.
func (q *request) undo() {
	form := q.r.PostForm
	lines, when, to, before := form["line"], form.Get("at"), form.Get("back"), ""
	if number := form.Get("noted"); number != "" {
		x := q.said.of(q.v, number)
		if x == nil {
			q.fail(http.StatusConflict, "That is too long ago to be taken back at once. Each line can be taken back at its tank.")
			return
		}
		lines, when, to, before = x.Lines, x.At, x.Back, x.Before
	}
	at, ok := stamped(when)
	if !ok || len(lines) == 0 || len(lines) > maxLines {
		q.lost()
		return
	}
	c := q.h.Result.Plan
	head := at
	if q.v.Keeper != "" {
		head += " by " + q.v.Keeper
	}
	var back []string
	for _, line := range lines {
		if !slices.ContainsFunc(c.Log, func(e plan.Event) bool { return q.own(&e) && c.Files.Of(e.At) == line }) {
			continue
		}
		words, err := c.Withdrawal(line)
		if err != nil {
			q.fail(http.StatusConflict, "That line cannot be taken back here: "+wording.Plain(err).Error()+". Correct it in the log.", line)
			return
		}
		back = append(back, head+" "+words)
	}
	if !strings.HasPrefix(to, "/") || !strings.ContainsAny(to, "?") || strings.ContainsAny(to, "\r\n\\") || strings.HasPrefix(to, "//") {
		to = "/?"
	}
	if len(back) == 0 {
		x := &slip{of: q.v, Text: "That was taken back already, or is no line of yours.", Before: before, Bad: true}
		q.see(to + "noted=" + q.said.put(x) + "#noted")
		return
	}
	q.write(back, "taken back, "+wording.Count(len(back), "line", "lines"), to, before)
}

// own reports whether a line of the log is one that the visitor may take back: of these days,
// and by them.
func (q *request) own(e *plan.Event) bool {
	return e.By.V == q.v.Keeper && e.Date >= q.h.Result.Today-7
}

// stamped reads what stamp wrote.
func stamped(s string) (string, bool) {
	day, at, ok := strings.Cut(s, " ")
	if !ok {
		return "", false
	}
	if _, err := civil.Parse(day); err != nil {
		return "", false
	}
	if _, err := civil.ParseClock(at); err != nil {
		return "", false
	}
	return s, true
}
