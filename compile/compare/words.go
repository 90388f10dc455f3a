package compare

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"vivary/compile/horizon"
	"vivary/plan/change"
	"vivary/schema/wording"
)

// Section is what is told of one way, or of people, or of phones: the parts of a report as it is
// read, for a terminal and for a page.
type Section struct {
	Head  string
	Parts []Part
}

// Part is effects with what causes them.
type Part struct {
	Cause []string // the lines of the change; none where it is said elsewhere
	Lines []Line
}

// Line is one effect.
type Line struct {
	Where, Text string
	Under       []string
	// Was and Is are on how many days of each week of the coming year, a letter a week; "" where
	// there is nothing to be drawn.
	Was, Is string
}

// Sum says in one line how much changes for the animals.
func (r *Report) Sum() string {
	switch r.Unread {
	case nil:
	case r.Is:
		return "The second cannot be understood in full, so that nothing can be compared"
	default:
		return "The first cannot be understood in full, so that nothing can be compared"
	}
	var parts []string
	for _, w := range Ways {
		n, some := r.Count(w), false
		for i := range r.Effects {
			some = some || r.Effects[i].Way == w
		}
		word := w.Word()
		switch {
		case n > 0:
			parts = append(parts, word+" for "+wording.Count(n, "enclosure", "enclosures"))
		case some:
			parts = append(parts, word+" for the collection as a whole")
		}
	}
	if len(parts) == 0 {
		return "Nothing changes for the animals"
	}
	s := strings.Join(parts, ", ")
	return strings.ToUpper(s[:1]) + s[1:]
}

// section has those of some effects that belong to it; what the same lines bring stands together.
func (r *Report) section(head string, all []Effect, of func(*Effect) bool, line func(*Effect) Line) Section {
	s := Section{Head: head}
	last := "none"
	for i := range all {
		e := &all[i]
		if !of(e) {
			continue
		}
		if k := causeKey(e.Cause); k != last || len(s.Parts) == 0 {
			s.Parts = append(s.Parts, Part{Cause: r.lines(e.Cause)})
			last = k
		}
		p := &s.Parts[len(s.Parts)-1]
		p.Lines = append(p.Lines, line(e))
	}
	return s
}

// Sections is the report as it is read: what harms first, people and phones last.
func (r *Report) Sections() (out []Section) {
	if r.Unread != nil {
		return nil // nothing is compared, so that nothing is without an effect
	}
	for _, w := range Ways {
		s := r.section(w.String(), r.Effects, func(e *Effect) bool { return e.Way == w }, r.line)
		if len(s.Parts) > 0 {
			out = append(out, s)
		}
	}
	if r.one {
		return out
	}
	for _, x := range []struct {
		head  string
		topic Topic
	}{{"Feeder animals", Feeders}, {"Dates of the house", Dates}} {
		if s := r.houseSection(x.head, x.topic); len(s.Parts) > 0 {
			out = append(out, s)
		}
	}
	if s := r.peopleSection(); len(s.Parts) > 0 {
		out = append(out, s)
	}
	if s := r.phonesSection(); len(s.Parts) > 0 {
		out = append(out, s)
	}
	if s := r.restSection(); len(s.Parts) > 0 {
		out = append(out, s)
	}
	return out
}

// line says one effect.
func (r *Report) line(e *Effect) Line {
	l := Line{Where: e.Where, Under: e.Under}
	if r.one {
		l.Where = ""
	}
	switch {
	case e.Found != nil && e.keys[0].fact == "rule "+e.Found.Rule.ID && e.Is == "":
		l.Text = "not found any more: " + e.Was
	case e.Found != nil && e.keys[0].fact == "rule "+e.Found.Rule.ID:
		l.Text = e.Is
		for _, u := range e.Under { // what is written, beside what is found of it
			l.Text += "; " + u
		}
		l.Under = nil
		if e.Was != "" {
			l.Under = []string{"before: " + e.Was}
		}
	case e.Name == "new":
		l.Text = "new: " + e.Is
	case e.Name == "taken out":
		l.Text = "not in the plan any more: " + e.Was
	default:
		l.Text = e.Name + ": " + becomes(e.Was, e.Is)
	}
	if e.Limit != "" {
		l.Text += " (limit: " + e.Limit + ")"
	}
	if e.From != 0 && !strings.Contains(l.Text, e.From.Words()) {
		l.Text += ", from " + e.From.Words()
	}
	if e.Found != nil && e.Way <= Worse {
		l.Text += " [" + e.Found.Rule.ID + "]"
	}
	if e.was != nil || e.is != nil {
		l.Was, l.Is = strip(r.Was.Horizon, e.was), strip(r.Is.Horizon, e.is)
		if l.Was == l.Is {
			l.Was, l.Is = "", ""
		}
	}
	return l
}

// levels are the letters of a strip, by the days of a week on which something is done.
var levels = []rune("·▁▂▃▄▅▆█")

// Letter is what stands for a week, of which something is so on some days.
func Letter(days int) rune { return levels[days] }

// strip is the coming year as a letter a week.
func strip(h horizon.Horizon, days horizon.Days) string {
	if len(days) == 0 {
		days = h.New()
	}
	out := make([]rune, 0, year/7)
	for i := h.Today; i+7 <= h.Today+year; i += 7 {
		out = append(out, Letter(days.CountFrom(i)-days.CountFrom(i+7)))
	}
	return string(out)
}

// most is how many lines of a change are named for one effect.
const most = 4

// lines name pieces with their places, and once what was done alike in several enclosures.
func (r *Report) lines(pieces []int) []string {
	var first, many []int
	at := map[string]int{}
	for _, i := range pieces {
		k := like(&r.Pieces[i], i)
		n, known := at[k]
		if !known {
			n = len(first)
			at[k] = n
			first, many = append(first, i), append(many, 0)
		}
		many[n]++
	}
	var out []string
	for n, i := range first {
		if n == most-1 && len(first) > most {
			out = append(out, fmt.Sprintf("and %d more lines of the change", len(first)-n))
			break
		}
		text := Told(&r.Pieces[i])
		if more := many[n] - 1; more > 0 {
			text += fmt.Sprintf(", and the same in %d more", more)
		}
		out = append(out, text)
	}
	return out
}

// Told says what a piece changes, and where.
func Told(p *change.Piece) string {
	at := p.Is
	if !at.Written() {
		at = p.Was
	}
	place := fmt.Sprintf("%s:%d", at.File, at.Line)
	if p.Library {
		place = "vivary's own " + place
	}
	switch {
	case p.Log() && len(p.Lines) > 0:
		text := place + "  " + cut(p.Lines[0].Text)
		if n := len(p.Lines) + len(p.Gone) - 1; n > 0 {
			text += ", and " + wording.Count(n, "more line", "more lines") + " about " + p.Name
		}
		return text
	case p.Log():
		return place + "  no more in the log: " + cut(p.Gone[0].Text)
	case p.Attr == "name":
		return place + "  " + p.Type + " " + p.Before + " is called " + p.Name
	case p.Attr == "phone" && p.Was.Written() && p.Is.Written(), p.Was.Written() && p.Was.Text == p.Is.Text:
		return place + "  " + p.Path() + ": another number" // which is not shown around
	case p.Attr != "" && !p.Was.Written():
		return place + "  " + p.Path() + ": new, " + value(p.Is)
	case p.Attr != "":
		return place + "  " + p.Path() + ": " + becomes(value(p.Was), value(p.Is))
	case !p.Was.Written():
		return place + "  " + p.Path() + " is new"
	case !p.Is.Written():
		return place + "  " + p.Path() + " is taken out"
	}
	return place + "  " + p.Path() + ": " + cut(p.Was.Text) + " → " + cut(p.Is.Text)
}

// value is what stands behind the = of an attribute.
func value(s change.Side) string {
	_, v, _ := strings.Cut(s.Text, "=")
	return cut(v)
}

// cut makes one short line of a text.
func cut(s string) string {
	s = wording.Line(strings.Join(strings.Fields(s), " "))
	if utf8.RuneCountInString(s) > longest {
		s = string([]rune(s)[:longest-1]) + "…"
	}
	return s
}

const longest = 70

func (r *Report) peopleSection() Section {
	s := Section{Head: "For the people"}
	p := Part{}
	for i := range r.Rounds {
		w := &r.Rounds[i]
		text := becomes(w.Was, w.Is)
		if w.Was == "" {
			text = "new, " + w.Is
		}
		p.Lines = append(p.Lines, Line{Where: w.Shown, Text: text})
	}
	for i := range r.People {
		w := &r.People[i]
		text := fmt.Sprintf("%.0f → %.0f minutes a week", w.Was, w.Is)
		if fmt.Sprintf("%.0f", w.Was) == fmt.Sprintf("%.0f", w.Is) {
			text = fmt.Sprintf("%.0f minutes a week, as before", w.Is)
		}
		if w.From != 0 {
			text += "; from " + w.From.Words()
		}
		switch {
		case w.LiveIs && !w.LiveWas:
			text += "; gives live prey now"
		case w.LiveWas && !w.LiveIs:
			text += "; gives no live prey any more"
		}
		if len(w.Skills) > 0 {
			text += "; has to be trained in " + wording.And(w.Skills)
		}
		if len(w.Unasked) > 0 {
			text += "; need not be trained in " + wording.And(w.Unasked)
		}
		p.Lines = append(p.Lines, Line{Where: w.Shown, Text: text})
	}
	for i := range r.Care {
		c := &r.Care[i]
		var parts []string
		for _, x := range []struct {
			n    int
			word string
		}{{c.Gone, "taken out"}, {c.Added, "added"}, {c.Moved, "moved"}} {
			if x.n > 0 {
				parts = append(parts, fmt.Sprintf("%d %s", x.n, x.word))
			}
		}
		l := Line{Where: c.Kind.Name, Text: strings.Join(parts, ", ") + " in a year, the first on " + c.From.Words()}
		l.Under = months(c)
		p.Lines = append(p.Lines, l)
	}
	if len(p.Lines) > 0 {
		s.Parts = append(s.Parts, p)
	}
	s.Parts = append(s.Parts, r.houseSection("", People).Parts...)
	return s
}

// months says of each month how often, in one line.
func months(c *Care) []string {
	var out []string
	for _, m := range c.Months {
		text := ""
		for _, x := range []struct {
			n    int
			sign string
		}{{m.Gone, "−"}, {m.Added, "+"}, {m.Moved, "~"}} {
			if x.n > 0 {
				text += fmt.Sprintf("%s%d", x.sign, x.n)
			}
		}
		out = append(out, fmt.Sprintf("%s %d %s", [...]string{"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"}[m.Month-1], m.Year, text))
	}
	if len(out) == 0 {
		return nil
	}
	return []string{strings.Join(out, ", ")}
}

func (r *Report) phonesSection() Section {
	s := Section{Head: "On the phones"}
	p := Part{}
	if len(r.Pieces) > 0 && r.Is.Refused() {
		p.Lines = append(p.Lines, Line{Text: "nothing: a plan that is refused makes no calendars, and the last good ones stay"})
	}
	for i := range r.Phones {
		x := &r.Phones[i]
		var parts []string
		switch {
		case x.Old:
			parts = append(parts, "the calendar is no more")
		case x.New:
			parts = append(parts, "a new calendar, of "+wording.Count(x.All, "entry", "entries"))
		default:
			for _, y := range []struct {
				n    int
				word string
			}{{x.Changed, "change"}, {x.Added, "come"}, {x.Gone, "go"}} {
				if y.n > 0 {
					parts = append(parts, fmt.Sprintf("%d %s", y.n, y.word))
				}
			}
			parts = []string{strings.Join(parts, ", ") + " of " + wording.Count(x.All, "entry", "entries")}
		}
		text := parts[0]
		if x.From != 0 && !x.New {
			text += ", the first on " + x.From.Words()
		}
		p.Lines = append(p.Lines, Line{Where: x.Shown, Text: text})
	}
	if len(p.Lines) > 0 {
		s.Parts = append(s.Parts, p)
	}
	return s
}

// restSection is what changes nothing of all this.
func (r *Report) restSection() Section {
	s := Section{Head: "Without an effect on animals or work"}
	p := Part{}
	if n := len(r.Moves) + len(r.Laid); n > 0 {
		var parts []string
		if n := len(r.Moves); n > 0 {
			parts = append(parts, wording.Count(n, "block stands", "blocks stand")+" in another file")
		}
		if n := len(r.Laid); n > 0 {
			parts = append(parts, wording.Count(n, "file is", "files are")+" laid out otherwise")
		}
		p.Lines = append(p.Lines, Line{Text: strings.Join(parts, ", and ") + ": nothing else"})
	}
	for _, line := range r.lines(r.Idle) {
		p.Lines = append(p.Lines, Line{Text: line})
	}
	if len(p.Lines) > 0 {
		s.Parts = append(s.Parts, p)
	}
	return s
}
