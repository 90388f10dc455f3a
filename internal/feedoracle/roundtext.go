package feedoracle

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// Words are the kinds of care by the words of their tasks. They are learned from a
// calendar that has an entry for each care, where each says its kind.
type Words map[string]string

// Learn adds the tasks of such a calendar.
func (w Words) Learn(names Names, shown []Occurrence) {
	for i := range shown {
		if o := &shown[i]; o.Kind != "" {
			if task, _, ok := names.Task(o); ok {
				w[plain(strings.TrimPrefix(task, "FIRST: "))] = o.Kind
			}
		}
	}
}

// remark is what is said of a task besides: of whom, how many, since when.
var remark = regexp.MustCompile(` \([^()]*\)`)

// band is what a gauge should show, which stands beside a reading.
var band = regexp.MustCompile(`[:;] should show:?( (air )?-?[\d.]+( to -?[\d.]+)? [CF%],?)*`)

// plain is a task without what differs from day to day, and from the beginning of a
// line to within one.
func plain(task string) string { return strings.ToLower(remark.ReplaceAllString(task, "")) }

// kind returns the kind of a task. What is fed differs from meal to meal.
func (w Words) kind(task string) string {
	task = plain(task)
	if k := w[task]; k != "" {
		return k
	}
	if strings.HasPrefix(task, "feed ") && !strings.HasPrefix(task, "feed the feeders") {
		return "feed"
	}
	return ""
}

// tasks parts a line where one task ends and the next begins. A task may have a semicolon
// of its own: what is no task goes on until it is one.
func (w Words) tasks(line string) (out []string) {
	parts := strings.Split(line, "; ")
	for i := 0; i < len(parts); {
		n := 1
		for n < len(parts)-i && w.kind(strings.Join(parts[i:i+n], "; ")) == "" {
			n++
		}
		if w.kind(strings.Join(parts[i:i+n], "; ")) == "" {
			n = 1
		}
		out = append(out, strings.Join(parts[i:i+n], "; "))
		i += n
	}
	return out
}

// Rounds returns the stops of calendars that have an entry a round, each for a whole
// enclosure. everybody are the enclosures that a calendar may hold, by its name. Lines
// that are for all of some of them name none, and are returned as unread, without an
// enclosure.
func (n Names) Rounds(w Words, shown []Occurrence, everybody map[string][]string) (out, unread []Stop, err error) {
	for i := range shown {
		o := &shown[i]
		if o.At == "" {
			continue
		}
		r := sheet{names: n, words: w, all: everybody[o.Calendar]}
		for line := range strings.Lines(o.Description) {
			if err := r.line(strings.TrimSpace(line)); err != nil {
				return nil, nil, fmt.Errorf("%s on %s: %w", o.Calendar, o.Day, err)
			}
		}
		for _, s := range r.stops {
			s.Day = o.Day
			if s.Box == "" {
				unread = append(unread, s)
			} else {
				out = append(out, s)
			}
		}
	}
	return Once(out), Once(unread), nil
}

// sheet is the text of a round as far as it has been read.
type sheet struct {
	names Names
	words Words
	all   []string // who may be in the round
	whole bool     // all of them are, as a line before has said
	alone string   // the enclosure that is a heading by itself
	stops []Stop
}

// leaving begins what is done before days when nobody comes: it is to bring water.
const leaving = "Before leaving, "

// line reads one line: a task and then for whom it is, or whom and then what.
func (s *sheet) line(line string) error {
	line = band.ReplaceAllString(line, "")
	said, ok := strings.CutPrefix(line, "- ")
	if !ok {
		if strings.HasPrefix(line, leaving) {
			return s.leaving(remark.ReplaceAllString(line, ""))
		}
		if said, ok = strings.CutPrefix(line, "FIRST: "); !ok {
			if to, known := s.names[line]; known {
				s.alone = to.Box
			}
			return nil
		}
	}
	if kind := s.words.kind(said); kind != "" && s.alone != "" {
		return s.say([]string{s.alone}, said)
	}
	said = remark.ReplaceAllString(said, "")
	if i := strings.Index(said, ": "); i >= 0 {
		if boxes, ok := s.who(said[:i]); ok {
			return s.say(boxes, s.words.tasks(said[i+2:])...)
		}
	}
	for i := range said {
		if strings.HasPrefix(said[i:], ": ") && s.words.kind(said[:i]) != "" {
			if boxes, ok := s.byRoom(said[i+2:]); ok {
				return s.say(boxes, said[:i])
			}
		}
	}
	return fmt.Errorf("nobody knows for whom %q is, or what it is", line)
}

// leaving reads for whom something is done before days when nobody comes.
func (s *sheet) leaving(line string) error {
	for i := range line {
		if strings.HasPrefix(line[i:], ": ") {
			if boxes, ok := s.byRoom(line[i+2:]); ok {
				for _, b := range boxes {
					s.stops = append(s.stops, Stop{Target: Target{Box: b}, Kind: "water"})
				}
				return nil
			}
		}
	}
	return fmt.Errorf("nobody knows for whom %q is", line)
}

// byRoom reads a list of enclosures, or one for each of several rooms, which stands
// behind its title.
func (s *sheet) byRoom(text string) (out []string, ok bool) {
	if out, ok = s.who(text); ok {
		return out, true
	}
	for part := range strings.SplitSeq(text, "; ") {
		i := strings.LastIndex(part, ": ")
		if i < 0 {
			return nil, false
		}
		some, ok := s.list(part[i+2:])
		if !ok {
			return nil, false
		}
		out = append(out, some...)
	}
	return out, true
}

// say notes tasks for enclosures; for none where the line does not name them.
func (s *sheet) say(boxes []string, tasks ...string) error {
	for _, t := range tasks {
		kind := s.words.kind(t)
		if kind == "" {
			return fmt.Errorf("no calendar by care has the task %q", t)
		}
		for _, b := range boxes {
			s.stops = append(s.stops, Stop{Target: Target{Box: b}, Kind: kind})
		}
	}
	return nil
}

// who reads a list of enclosures, or all of them.
func (s *sheet) who(text string) ([]string, bool) {
	if strings.HasPrefix(text, "All ") { // "here" leaves out those who come last
		text = strings.Replace(text, " here", "", 1)
	}
	if but, ok := strings.CutPrefix(text, "All but "); ok {
		not, ok := s.list(but)
		if !ok || !s.whole {
			return []string{""}, ok
		}
		return slices.DeleteFunc(slices.Clone(s.all), func(b string) bool { return slices.Contains(not, b) }), true
	}
	if number, ok := strings.CutPrefix(strings.ToLower(text), "all "); ok {
		count, err := strconv.Atoi(number)
		if err != nil {
			return nil, false
		}
		if count != len(s.all) {
			return []string{""}, true
		}
		s.whole = true
		return s.all, true
	}
	return s.list(text)
}

// list reads names, of which neighbours may share their words: "Box 1 to 3, 5 and 7".
func (s *sheet) list(text string) (out []string, ok bool) {
	stem := ""
	for part := range strings.SplitSeq(strings.ReplaceAll(text, " and ", ", "), ", ") {
		if to, known := s.names.find(part); known {
			out, stem = append(out, to.Box), strings.TrimRight(part, "0123456789")
			continue
		}
		first, last, _ := strings.Cut(part, " to ")
		if last == "" {
			last = first
		}
		if _, known := s.names.find(first); known {
			stem = strings.TrimRight(first, "0123456789")
			first = first[len(stem):]
		}
		boxes, ok := s.numbers(stem, first, last)
		if !ok {
			return nil, false
		}
		out = append(out, boxes...)
	}
	return out, true
}

// numbers are the enclosures of one stem from one number to another.
func (s *sheet) numbers(stem, first, last string) (out []string, ok bool) {
	from, err := strconv.Atoi(first)
	until, err2 := strconv.Atoi(last)
	if err != nil || err2 != nil {
		return nil, false
	}
	for i := from; i <= until; i++ {
		to, known := s.names[stem+strconv.Itoa(i)]
		if !known {
			return nil, false
		}
		out = append(out, to.Box)
	}
	return out, true
}
