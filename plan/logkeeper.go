package plan

import (
	"slices"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
)

// Sudden is an absence of a keeper that nobody knew of before: the log tells of it.
type Sudden struct {
	At     source.Place
	Keeper string
	From   civil.Date
	Back   civil.Date   // the day of return, 0 while it is not logged
	BackAt source.Place // the line that says so
}

// keeper reads a line about one of the people, from the name on, and reports whether it
// is one: "lead away", or "lead withdrawn away".
func (l *lineReader) keeper(e *Event, at int) bool {
	return l.aside(e, at, schema.LogKeeper, schema.FindKeeperWord, &e.Keeper)
}

// aside reads a line about something that is no enclosure, which the word in its place says,
// from the name on: into, a word of its own, or what takes one back.
func (l *lineReader) aside(e *Event, at int, place string, find func(string) *schema.LogWord, into *Written[string]) bool {
	if e.Enclosure.V != place || at+1 >= len(l.words) {
		return false
	}
	word := find(l.words[at+1].text)
	switch {
	case word != nil:
	case at+2 < len(l.words) && l.words[at+1].text == schema.WordWithdrawn.Name && find(l.words[at+2].text) != nil:
		word = schema.WordWithdrawn
	default:
		return false
	}
	e.Enclosure, *into = Written[string]{}, l.written(at)
	e.Word, e.WordAt = word, l.span(at+1, at+2)
	if word == schema.WordWithdrawn {
		l.after(e, at+2)
	} else if e.Note == "" && at+2 < len(l.words) {
		e.Note = l.text(at+2, len(l.words)) // a shell takes the quotes off "ill"
	}
	return true
}

// joinedKeeper finds the keeper of whom a line speaks.
func (r *resolver) joinedKeeper(e *Event) bool {
	if r.c.keepers[e.Keeper.V] == nil {
		r.unknownName(e.Keeper, "keeper", keysOf(r, "keeper", r.c.keepers))
		return false
	}
	return true
}

// sudden gathers the absences of which the log tells.
func (r *resolver) sudden() {
	r.c.Sudden = nil
	for i := range r.c.Log {
		e := &r.c.Log[i]
		if e.Word != schema.WordAway && e.Word != schema.WordBack {
			continue
		}
		open := slices.IndexFunc(r.c.Sudden, func(s Sudden) bool { return s.Keeper == e.Keeper.V && s.Back == 0 })
		switch {
		case e.Word == schema.WordAway && open < 0:
			r.c.Sudden = append(r.c.Sudden, Sudden{At: e.At, Keeper: e.Keeper.V, From: e.Date})
		case e.Word == schema.WordBack && open >= 0:
			r.c.Sudden[open].Back, r.c.Sudden[open].BackAt = e.Date, e.At
		case e.Word == schema.WordBack:
			r.found.Add(finding.Finding{Rule: ruleLogLine, At: e.At, Text: quote(e.Keeper.V) + " is back, and no line says since when they were away",
				Write: "keeper " + e.Keeper.V + " away on the day they went; an absence of the plan ends with to in its away block"})
		}
	}
	// Back on the day they went: they were there.
	r.c.Sudden = slices.DeleteFunc(r.c.Sudden, func(s Sudden) bool { return s.Back == s.From })
}
