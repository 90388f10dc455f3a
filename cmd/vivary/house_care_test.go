package main

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"vivary/internal/feedoracle"
	"vivary/internal/house"
	"vivary/schema/civil"
)

// stop is care for a box on a day, as an entry tells it.
type stop struct {
	box  *house.Box
	who  string // what stands behind the name of the box: the animals, or ""
	kind string
	text string // the whole of the entry
	live bool   // a meal that is not said to be killed
}

// notLive is how a meal is said to be killed, or not to be prey.
var notLive = regexp.MustCompile(`(?i)killed|dead|crushed|pieces|leftover|remains|leaves|greens|cucumber|look|moulted`)

// offers is how a task that is no meal of the plan says that it is one.
var offers = regexp.MustCompile(`(?i)\b(feed|offer|meal|killed|pieces)\b`)

// stop reads an entry.
func (j *judge) stop(o *feedoracle.Occurrence) stop {
	s := stop{kind: o.Kind, text: strings.TrimSpace(o.Summary + "\n" + o.Description)}
	i := strings.LastIndex(o.Summary, ": Box ")
	if i < 0 {
		j.wrong("an entry names no box", nil, o.Day, s.text)
		return s
	}
	title := o.Summary[i+2 : min(len(o.Summary), i+2+len("Box 00"))]
	for _, b := range j.w.Boxes {
		if b.Title == title {
			s.box = b
		}
	}
	s.who = strings.TrimSpace(o.Summary[i+2+len(title):])
	s.live = o.Kind == "feed" && !notLive.MatchString(s.text)
	return s
}

// offered reports whether an entry offers food to a lot: to its block by name, to the
// only animals of a box, or, of those without a block, to anybody who is no block.
func (s *stop) offered(b *house.Box, l *house.Lot) bool {
	if s.kind != "feed" && s.kind != "leaves" && !(s.kind == "other" && offers.MatchString(s.text)) {
		return false
	}
	alone := 0
	for _, x := range b.Lots {
		if x.Count > 0 {
			alone++
		}
	}
	named := l.Block != "" && strings.HasPrefix(s.who, l.Block)
	if l.Block == "" && l.Mother == nil && l.Stage == b.Lots[0].Stage && b.Lots[0].Count > 0 {
		l = b.Lots[0] // one of its kind and stage is one of the group
		named = strings.HasPrefix(s.who, l.Block)
	}
	young := strings.Contains(s.text, "young") || strings.Contains(s.text, "brood")
	if l.Block == "" {
		other := s.who != "" && !strings.HasPrefix(s.who, b.Lots[0].Block)
		return other || young || alone == 1
	}
	return named || alone == 1 || s.who == "" && !young
}

// forbidden holds that nothing is asked for that a state of that day forbids. In a box
// with several lots only what is the whole box's is judged: live prey, and digging.
func (j *judge) forbidden(b *house.Box, on civil.Date, stops []stop) {
	for _, l := range b.Lots {
		if l.Count == 0 {
			continue
		}
		for state, never := range house.Never {
			if !l.In(state, on) {
				continue
			}
			for _, s := range stops {
				kind := s.kind
				own := l.Block == "" || s.who == "" || strings.HasPrefix(s.who, l.Block)
				whole := s.live || kind == "deep-clean" || kind == "count" && strings.Contains(s.text, "dig")
				switch {
				case slices.Contains(never, "live") && s.live && state != house.Settling:
					j.wrong(fmt.Sprintf("live prey where one is %q", state), b, on, s.text)
				case slices.Contains(never, kind) && (whole || own && l.Block != ""):
					j.wrong(fmt.Sprintf("%s where one is %q", kind, state), b, on, s.text)
				}
			}
		}
	}
}

// fed holds that food is offered in time to all that may eat. A little is allowed beyond
// what the stage bears, for a day of the week on which somebody comes.
func (j *judge) fed(b *house.Box, on civil.Date, stops []stop) {
	const grace = 2
	for _, l := range b.Lots {
		switch {
		case l.Count == 0:
			j.fast[l] = 0
			continue
		case slices.ContainsFunc(stops, func(s stop) bool { return s.offered(b, l) }) || j.w.Said(b, l, "fed", on):
			j.fast[l] = 0
			continue
		case slices.ContainsFunc(house.Fasts, func(s house.State) bool { return l.In(s, on) }):
			continue
		}
		j.fast[l]++
		if most := b.Kind().Food[l.Stage]; most > 0 && j.fast[l] == most+grace+1 {
			who := l.Block
			if who == "" {
				who = "a brood"
			}
			j.wrong(fmt.Sprintf("no meal for %s, %s", who, l.Stage), b, on, fmt.Sprintf("%d days, and %d are the most", j.fast[l], most))
		}
	}
}

// watered holds that there is water in time. Where nobody may open the box, a look that
// fills an empty dish is water; while the keeper is away a full dish lasts longer.
func (j *judge) watered(b *house.Box, on civil.Date, stops []stop) {
	if b.Kind().Water == 0 || b.Total() == 0 {
		j.dry[b] = 0
		return
	}
	quiet := slices.ContainsFunc(b.Lots, func(l *house.Lot) bool {
		return l.In(house.Birth, on) || l.In(house.Moulting, on) || l.In(house.Brood, on)
	})
	if slices.ContainsFunc(stops, func(s stop) bool {
		return s.kind == "water" || quiet && (s.kind == "look" || s.kind == "watch")
	}) {
		j.dry[b] = 0
		return
	}
	j.dry[b]++
	const restful = 30 // days: a drink every 14 to 30, common practice
	most := b.Kind().Water
	if j.w.Away(on) {
		most = max(most, 3)
	}
	if b.Lots[0].In(house.Rest, on) {
		most = restful
	}
	if j.dry[b] == most+1 {
		j.wrong("no fresh water", b, on, fmt.Sprintf("%d days, and %d are the most", j.dry[b], most))
	}
}

// where holds that animals of which nobody wrote where they went are asked for in each
// round, first, and those that have escaped are searched for.
func (j *judge) where(b *house.Box, on civil.Date, visited bool) {
	if b.Lost != 0 {
		j.first("nobody asks where the young are", "where", b, on, visited)
	}
	if b.Out() > 0 {
		j.first("nobody searches for one that escaped", "search", b, on, visited)
	}
}

// numbered are boxes in a line: "04", "04 to 06".
var numbered = regexp.MustCompile(`\b(\d\d)(?: to (\d\d))?\b`)

// names reports whether a line of a round names a box, by itself or in a range.
func names(line string, b *house.Box) bool {
	i := strings.LastIndex(line, ": Box ")
	if i < 0 {
		return false
	}
	list := regexp.MustCompile(`\([^)]*\)`).ReplaceAllString(line[i:], "")
	n := strings.TrimPrefix(b.Title, "Box ")
	for _, m := range numbered.FindAllStringSubmatch(list, -1) {
		if n == m[1] || m[2] != "" && n > m[1] && n <= m[2] {
			return true
		}
	}
	return false
}

// first holds that a line of the round of a day that stands first has a word about a box.
func (j *judge) first(wrong, word string, b *house.Box, on civil.Date, visited bool) {
	text := ""
	for _, o := range j.shown {
		if o.Calendar == "rounds" && o.Day == on && o.At != "" {
			text += o.Description + "\n"
		}
	}
	for line := range strings.Lines(text) {
		if strings.HasPrefix(line, "FIRST") && names(line, b) && strings.Contains(strings.ToLower(line), word) {
			return
		}
	}
	if !visited {
		return // nobody comes to it on that day
	}
	j.wrong(wrong, b, on, text)
}
