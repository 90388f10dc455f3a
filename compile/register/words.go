package register

import (
	"strconv"
	"strings"

	"vivary/plan/source"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Sexes writes how many there are as the trade does, males.females.unsexed, always all three;
// a change that is less than none with a minus. It is "" for none.
func Sexes(c quantity.Count) string {
	part := func(c quantity.Count) string {
		return strconv.Itoa(c.Males) + "." + strconv.Itoa(c.Females) + "." + strconv.Itoa(c.Unsexed)
	}
	more := quantity.Count{Males: max(0, c.Males), Females: max(0, c.Females), Unsexed: max(0, c.Unsexed)}
	less := plus(more, minus(c))
	none := quantity.Count{}
	switch {
	case less == none && more == none:
		return ""
	case less == none:
		return part(more)
	case more == none:
		return "-" + part(less)
	}
	return part(more) + " -" + part(less)
}

// Kind is what a step of a row is about.
type Kind uint8

// What steps are about.
const (
	Number Kind = iota // they came, or are more, fewer, gone
	Move               // to another place
	Health             // treatments, and what they were for
	Mating
)

// Kind is what a step is about.
func (s *Step) Kind() Kind {
	switch s.What {
	case "moved to", "came from":
		return Move
	case "treated", "ill", "injured", "recovered":
		return Health
	case "mated", "paired":
		return Mating
	}
	return Number
}

// Words say a step in a line: "2026-05-01 moved to nursery/young: 0.0.2 (as agreed)".
func (s *Step) Words() string {
	text := day(s.On) + s.What
	if s.To != "" {
		text += " " + s.To
	}
	if n := Sexes(s.Count); n != "" {
		text += ": " + n
	}
	if s.Note != "" {
		text += " (" + wording.Line(s.Note) + ")"
	}
	return text
}

// day is a day with a blank behind it; "" where the plan tells of a thing without a day.
func day(on civil.Date) string {
	if on == 0 {
		return ""
	}
	return on.String() + " "
}

// told are the steps that are about something, in words.
func (r *Row) told(k Kind) string {
	var all []string
	for i := range r.Steps {
		if s := &r.Steps[i]; s.Kind() == k {
			all = append(all, s.Words())
		}
	}
	return strings.Join(all, "; ")
}

// Where is the file and the line in which something stands: "log/2026.care.log:7".
func Where(files *source.Set, at source.Place) string {
	p := files.Start(at)
	return p.File + ":" + strconv.Itoa(p.Line)
}

// Lines are the places of a row and all of its steps, each once.
func (r *Register) Lines(row *Row) (out []string) {
	files := r.book.r.Plan.Files
	last := ""
	out = append(out, Where(files, row.At))
	for i := range row.Steps {
		if at := Where(files, row.Steps[i].At); at != last && at != out[0] {
			out, last = append(out, at), at
		}
	}
	return out
}
