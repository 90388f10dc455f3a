package plan

import (
	"errors"
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
)

// back is a line that takes another back.
type back struct {
	words []string   // the word that it takes back and what stood after it, as far as it is written
	day   civil.Date // of the line that it takes back, where dated
	dated bool
}

func takesBack(e *Event) back {
	var b back
	for _, a := range e.Args {
		b.words = append(b.words, a.V)
	}
	last := len(b.words) - 1
	if day, err := civil.Parse(b.words[last]); err == nil {
		b.day, b.dated, b.words = day, true, b.words[:last]
	}
	return b
}

// takenBack leaves out the lines that are taken back, and those that take them back.
// A line that takes back can be taken back itself, by one that stands after it: the
// last decides first.
func (r *resolver) takenBack(all []Event) []Event {
	if !slices.ContainsFunc(all, func(e Event) bool { return e.Word == schema.WordWithdrawn }) {
		return all
	}
	gone := make([]bool, len(all))
	by, copies := r.sayings(all), r.copies(all)
	worked := map[string]*Event{} // lines that took something back, by what they take back
	for i := len(all) - 1; i >= 0; i-- {
		w := &all[i]
		if w.Word != schema.WordWithdrawn || gone[i] {
			continue
		}
		gone[i] = true
		line := w.Enclosure.V + " " + w.whose() + " " + w.Group.V + " " + strings.ToLower(strings.Join(takesBack(w).words, " ")) + " " + takesBack(w).day.String()
		hit := r.meant(all, gone, i, by)
		switch {
		case hit >= 0:
			if o := worked[line]; o != nil && o.By.V != w.By.V {
				r.found.Add(finding.Finding{Rule: ruleLogWithdrawn, At: o.At, Text: quote(strings.Join(takesBack(w).words, " ")) + " is taken back by two people, and of two such lines neither counts any more",
					Write: "the one that was right, once more as it stands, where only one was wrong", Also: []finding.Related{{At: w.At, Text: "the other line"}}})
			}
			worked[line] = w
			r.strike(all, gone, i, hit, copies)
		case worked[line] == nil:
			r.found.Add(finding.Finding{Rule: ruleLogWithdrawn, At: w.At, Text: "nothing is taken back: no line about these animals says " + quote(strings.Join(takesBack(w).words, " ")),
				Write: "the word as it stands in the log, and its day: withdrawn moult 2026-11-02"})
		}
	}
	out := all[:0]
	for i := range all {
		if !gone[i] {
			out = append(out, all[i])
		}
	}
	return out
}

// meant returns which line the line at i takes back: the last that matches of those
// before it, else the last of all; -1 for none. What takes back is only taken back by
// what stands after it.
func (r *resolver) meant(all []Event, gone []bool, i int, by sayings) int {
	b, other := takesBack(&all[i]), -1
	for _, j := range slices.Backward(by.like(&all[i], b, gone)) {
		if j == i || gone[j] || !r.matches(&all[i], &all[j], b) {
			continue
		}
		if before(&all[j], &all[i]) && (j < i || all[j].Word != schema.WordWithdrawn) {
			return j
		}
		if other < 0 && all[j].Word != schema.WordWithdrawn {
			other = j
		}
	}
	return other
}

// before reports whether a line was written before another, as far as that is known:
// lines of one file are appended.
func before(a, b *Event) bool {
	if a.At.File == b.At.File {
		return a.At.Start < b.At.Start
	}
	return true
}

// strike leaves out a line that is taken back, with the copies of it that merging left.
// One that was noted again after it was taken back stands.
func (r *resolver) strike(all []Event, gone []bool, by, hit int, copies map[string][]int) {
	gone[hit] = true
	for _, j := range copies[r.c.Files.Of(all[hit].At)] {
		if !gone[j] && all[j].Date == all[hit].Date && before(&all[j], &all[by]) {
			gone[j] = true
		}
	}
}

// copies are the places of all lines of one text.
func (r *resolver) copies(all []Event) map[string][]int {
	out := make(map[string][]int, len(all))
	for i := range all {
		line := r.c.Files.Of(all[i].At)
		out[line] = append(out[line], i)
	}
	return out
}

// saying is what a line that is taken back has in common with the one that does: of whom it
// speaks, and its first word as it is written or as it is meant. A line is looked for among
// those alone.
type saying struct{ enclosure, whose, word string }

// whose is of whom or of what a line is in place of an enclosure, "" for one about an enclosure.
func (e *Event) whose() string {
	switch {
	case e.Keeper.Set():
		return schema.LogKeeper + " " + e.Keeper.V
	case e.Deadline.Set():
		return schema.LogDeadline + " " + e.Deadline.V
	}
	return ""
}

type sayings map[saying][]int

func (r *resolver) sayings(all []Event) sayings {
	out := sayings{}
	for i := range all {
		e := &all[i]
		words := []string{""}
		if e.Word != nil {
			words = append(words, e.Word.Name+" ")
		}
		if said := wordsFrom(r.c.Files.Text(e.At.File), e); len(said) > 0 {
			words = append(words, strings.ToLower(said[0]))
		}
		for _, w := range words {
			k := saying{e.Enclosure.V, e.whose(), w}
			out[k] = append(out[k], i)
		}
	}
	return out
}

// like returns the places of the lines among which one is that a line may take back, in
// order. Those at the end that are gone are forgotten.
func (s sayings) like(w *Event, b back, gone []bool) []int {
	among := func(word string) []int {
		k := saying{w.Enclosure.V, w.whose(), word}
		all := s[k]
		for len(all) > 0 && gone[all[len(all)-1]] {
			all = all[:len(all)-1]
		}
		s[k] = all
		return all
	}
	if len(b.words) == 0 {
		return among("")
	}
	all := among(strings.ToLower(b.words[0]))
	meant, _ := schema.Spelled(b.words)
	if meant == nil || meant.Word == nil {
		return all
	}
	others := among(meant.Word.Name + " ")
	if len(all) == 0 || len(all) == len(others) && all[0] == others[0] && all[len(all)-1] == others[len(others)-1] && strings.EqualFold(b.words[0], meant.Word.Name) {
		return others
	}
	both := slices.Concat(all, others)
	slices.Sort(both)
	return slices.Compact(both)
}

func (r *resolver) matches(w, e *Event, b back) bool {
	if e.Enclosure.V != w.Enclosure.V || e.whose() != w.whose() || b.dated && e.Date != b.day {
		return false
	}
	if e.Group.V != w.Group.V && e.Enclosure.Set() && len(r.c.enclosures[e.Enclosure.V].Animals) != 1 {
		return false
	}
	said := wordsFrom(r.c.Files.Text(e.At.File), e)
	if prefix(said, b.words) {
		return true
	}
	meant, n := schema.Spelled(b.words)
	_, m := schema.Spelled(said)
	return meant != nil && meant.Word == e.Word && prefix(said[m:], b.words[n:])
}

// wordsFrom returns the words of a line from its word of the log on, without the note.
func wordsFrom(text []byte, e *Event) (all []string) {
	at := source.Place{File: e.At.File, Start: e.WordAt.Start, End: e.At.End}
	words, _, _ := logWords(string(text[at.Start:at.End]))
	for _, w := range words {
		all = append(all, w.text)
	}
	return all
}

// prefix reports whether words begin with some others, whatever their capitals.
func prefix(words, start []string) bool {
	return len(start) <= len(words) && slices.EqualFunc(words[:len(start)], start, strings.EqualFold)
}

// Withdrawal returns what to write after the day to take back a line of a log of this
// collection, such as "burrow-a young withdrawn moult 1 2026-11-02". The line may be
// one that takes back another.
func (c *Collection) Withdrawal(line string) (string, error) {
	e, wrong := readLine(1, 0, line, false, nil)
	if e != nil && e.either.Set() {
		if enclosure := c.Enclosure(e.Enclosure.V); enclosure != nil {
			e, wrong = readLine(1, 0, line, false, func(name string) bool { return enclosure.Group(name) != nil })
		}
	}
	switch {
	case wrong != nil:
		return "", errors.New(wrong.Text)
	case e == nil:
		return "", errors.New("the line says nothing")
	}
	words := []string{e.Enclosure.V}
	if e.Keeper.Set() {
		words = []string{schema.LogKeeper, e.Keeper.V}
	}
	if e.Deadline.Set() {
		words = []string{schema.LogDeadline, e.Deadline.V}
	}
	if e.Group.V != "" {
		words = append(words, e.Group.V)
	}
	said := wordsFrom([]byte(line), e)
	if len(said) == 0 || e.WordAt == e.At {
		return "", errors.New("the line has no word of the log")
	}
	words = append(append(words, schema.WordWithdrawn.Name), said...)
	return strings.Join(append(words, e.Date.String()), " "), nil
}
