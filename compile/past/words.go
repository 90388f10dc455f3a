package past

import (
	"bufio"
	"fmt"
	"io"
	"slices"
	"strings"

	"vivary/compile/compare"
	"vivary/plan/change"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// Of what is much so many lines are told, unless the whole is asked for.
const shown = 6

// Print writes a story for a terminal: the steps, newest first, and the year as it was. whole tells
// everything, however much it is.
func (s *Story) Print(w io.Writer, whole bool) error {
	out := bufio.NewWriter(w)
	fmt.Fprintf(out, "%s: %s\n", s.Called(), s.sum())
	for i := range s.Steps {
		s.Steps[i].print(out, whole)
	}
	fmt.Fprintln(out)
	for _, l := range s.Ends() {
		fmt.Fprintln(out, l)
	}
	if s.Year != nil {
		s.Year.print(out)
	}
	return out.Flush()
}

// Called is what the enclosure is called, by its keeper and in the plan.
func (s *Story) Called() string {
	if s.Title == s.Name {
		return s.Name
	}
	return s.Title + " (" + s.Name + ")"
}

func (s *Story) sum() string {
	if len(s.Steps) == 0 {
		return "no revision that is here changed anything"
	}
	return wording.Count(len(s.Steps), "step", "steps") + " that changed anything, the newest first"
}

// Ends says where the story ends, and why.
func (s *Story) Ends() (out []string) {
	switch {
	case s.Older:
		out = append(out, "There are older steps: all of them with --whole.")
	case s.Looked > 0:
		out = append(out, fmt.Sprintf("The last %d revisions were looked through: all of them with --whole.", s.Looked))
	}
	if s.Cut != "" && !s.Older {
		out = append(out, "What was before "+s.Cut+" is not known: this is a shallow clone, which has the last revisions only. git fetch --unshallow brings all.")
	}
	return out
}

// Head is the line above a step: the day, who, which revision, and what they called it.
func (s *Step) Head() string {
	if s.ID == "" {
		return "Not committed yet"
	}
	return wording.Line(s.Day.Words() + "  " + s.Author + "  " + s.Short + "  " + s.Subject)
}

func (s *Step) print(out *bufio.Writer, whole bool) {
	fmt.Fprintf(out, "\n%s\n", s.Head())
	say := func(depth int, lines []string, more string) {
		for i, l := range lines {
			if !whole && i == shown-1 && len(lines) > shown {
				fmt.Fprintf(out, "%sand %d more%s: all of it with --whole\n", strings.Repeat("  ", depth), len(lines)-i, more)
				return
			}
			fmt.Fprintf(out, "%s%s\n", strings.Repeat("  ", depth), l)
		}
	}
	if s.Torn != "" {
		fmt.Fprintf(out, "  could not be understood, so that no calendar was made of it: %s\n", s.Torn)
	}
	if s.Begins != "" {
		fmt.Fprintf(out, "  the history begins here: %s\n", s.Begins)
	}
	if s.Report != nil {
		for _, x := range s.Report.Sections() {
			fmt.Fprintf(out, "  %s\n", x.Head)
			for _, p := range x.Parts {
				say(2, p.Cause, "")
				var lines []string
				for _, l := range p.Lines {
					lines = append(lines, l.Text)
					if !whole {
						continue
					}
					for _, u := range l.Under {
						lines = append(lines, "  "+u)
					}
					if l.Was+l.Is != "" {
						lines = append(lines, "  was "+l.Was, "  is  "+l.Is)
					}
				}
				say(3, lines, "")
			}
		}
	}
	if idle := s.Idle(); len(idle) > 0 {
		if s.Report != nil {
			fmt.Fprintln(out, "  Without an effect on its animals")
		}
		var lines []string
		for _, p := range idle {
			lines = append(lines, compare.Told(p))
		}
		say(2, lines, "")
	}
	if len(s.Log)+len(s.Gone) > 0 {
		fmt.Fprintf(out, "  In the log: %s\n", s.Logged())
		say(2, s.told(whole), "")
	}
}

// Idle are the pieces of its own block that have no effect on its animals.
func (s *Step) Idle() (out []*change.Piece) {
	if s.Report == nil {
		return nil
	}
	for _, i := range s.Own {
		if p := &s.Report.Pieces[i]; !p.Log() && slices.Contains(s.Report.Idle, i) {
			out = append(out, p)
		}
	}
	return out
}

// Logged counts the lines that came, by their words.
func (s *Step) Logged() string {
	var words []string
	n := map[string]int{}
	for i := range s.Log {
		w := s.Log[i].Event.Word.Name
		if n[w]++; n[w] == 1 {
			words = append(words, w)
		}
	}
	for i, w := range words {
		if n[w] > 1 {
			words[i] = fmt.Sprintf("%s %d times", w, n[w])
		}
	}
	var parts []string
	if len(s.Log) > 0 {
		parts = append(parts, wording.Count(len(s.Log), "line", "lines")+": "+wording.And(words))
	}
	if len(s.Gone) > 0 {
		parts = append(parts, wording.Count(len(s.Gone), "line is", "lines are")+" there no more")
	}
	return strings.Join(parts, "; ")
}

// told are the lines of the log that are told in full: those that are more than routine, or all.
func (s *Step) told(whole bool) (out []string) {
	for i := range s.Log {
		l := &s.Log[i]
		if m := l.Mark(); whole || m != nil && m.Told {
			out = append(out, place(l.Side))
		}
	}
	for _, g := range s.Gone {
		out = append(out, place(g)+"  (no more)")
	}
	return out
}

func place(s change.Side) string {
	return fmt.Sprintf("%s:%d  %s", s.File, s.Line, wording.Line(strings.TrimSpace(s.Text)))
}

// widest is how wide the column of names grows.
const widest = 24

func (y *Year) print(out *bufio.Writer) {
	fmt.Fprintf(out, "The year as it was, by the plan in force on each day: %s. A letter is a week, from · for no day to █ for seven\n", wording.Dates(y.From, y.Until()-1))
	wide := 4
	for _, r := range y.Rows {
		wide = max(wide, min(widest, len([]rune(r.Name))))
	}
	line := func(name, what, letters string) {
		fmt.Fprintln(out, strings.TrimRight(fmt.Sprintf("  %-*s  %-4s  %s", wide, name, what, letters), " "))
	}
	line("", "", y.months())
	for _, r := range y.Rows {
		line(r.Name, "plan", y.Letters(&r.Stood))
		for _, x := range []struct {
			what string
			days *[Weeks * 7]bool
		}{{"done", &r.Done}, {"not", &r.Not}} {
			if slices.Contains(x.days[:], true) {
				line("", x.what, y.Letters(x.days))
			}
		}
	}
	var marks []rune
	var legend []string
	for _, m := range y.Marks {
		letter := ' '
		if m != nil {
			letter = m.Letter
		}
		marks = append(marks, letter)
	}
	for i := range Marks {
		if slices.Contains(marks, Marks[i].Letter) {
			legend = append(legend, string(Marks[i].Letter)+" "+Marks[i].Doc)
		}
	}
	if len(legend) > 0 {
		line("log", "", string(marks))
		fmt.Fprintf(out, "  %s\n", strings.Join(legend, ", "))
	}
	if slices.Contains(y.Known[:], false) {
		fmt.Fprintln(out, "  Weeks without a letter: no plan is known that had it.")
	}
}

// Letters are days of the year as a letter a week; a blank where nothing is known of a week.
func (y *Year) Letters(days *[Weeks * 7]bool) string {
	var out []rune
	for w := range Weeks {
		n, known := 0, false
		for d := w * 7; d < w*7+7; d++ {
			known = known || y.Known[d]
			if days[d] {
				n++
			}
		}
		if known {
			out = append(out, compare.Letter(n))
		} else {
			out = append(out, ' ')
		}
	}
	return string(out)
}

// months has the first letter of each month where it begins.
func (y *Year) months() string {
	var out strings.Builder
	for w := range Weeks {
		letter := " "
		for d := range 7 {
			if _, m, day := (y.From + civil.Date(7*w+d)).YMD(); day == 1 {
				letter = m.String()[:1]
			}
		}
		out.WriteString(letter)
	}
	return out.String()
}
