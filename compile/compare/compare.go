// Package compare says what changes for the animals, the people and the phones from one
// collection to another: two revisions of one, or one and the same with a trial. Both are
// compiled as of one day, so that nothing is told that only time changed. It judges nothing
// by itself: what is harm, a limit or a need is taken from what was compiled, and which line
// causes what is found by compiling the first collection with that line alone.
package compare

import (
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/horizon"
	"vivary/compile/identity"
	"vivary/plan/change"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// Way is whether a change is for the better.
type Way uint8

// The ways, the worst first.
const (
	// Harm is what refuses the plan or is urgent, and was not before.
	Harm Way = iota
	// Worse is further from what the animals need, or nearer to a limit.
	Worse
	// Better is the other way round, and what harmed and does not any more.
	Better
	// Otherwise is another way that is neither.
	Otherwise
)

// Ways are all of them, in the order in which they are told.
var Ways = []Way{Harm, Worse, Better, Otherwise}

// String is the heading of changes of a way.
func (w Way) String() string {
	return [...]string{"Harm", "Worse for the animals", "Better for the animals", "Otherwise for the animals"}[w]
}

// Effect is one thing that changes for the animals of some enclosures.
type Effect struct {
	Way   Way
	Topic Topic
	// Of are the enclosures, by their names in the second collection, or in the first where they
	// are in that alone, in walking order; Where is the same in words.
	Of    []string
	Where string
	// Name is what changes, as in "food, adults"; Was and Is what it was and is, "" for nothing.
	Name, Was, Is string
	// Limit is what it may be, and whose limit that is; "" where there is none.
	Limit string
	// From is the first day on which it is felt; 0 where that is not one day.
	From civil.Date
	// Cause are places in Report.Pieces; none where no piece alone does it.
	Cause []int
	// Found is the finding that came or went, or nil; Under are more words of the same thing.
	Found *finding.Finding
	Under []string

	keys    []key
	blocks  []string     // of the house that it is about, where it is about that
	group   string       // of animals that it is about, as the plan calls them; "" for all
	alone   bool         // it is in one of the two alone
	was, is horizon.Days // on which it was and is, nil where that is every day
}

// key names what an effect is about, in whichever collection.
type key struct{ enclosure, fact string }

// Report is everything that changes.
type Report struct {
	Was, Is *compile.Result
	Pieces  []change.Piece
	Moves   []change.Move
	Laid    []string
	// Effects are those for the animals, the worst first.
	Effects []Effect
	// House are those on the house around them: feeder animals, dates, figures of its people. Of is
	// the block that each is about.
	House  []Effect
	Rounds []Walk
	People []Work
	Care   []Care
	Phones []Phone
	// Idle are the pieces that change nothing of all this.
	Idle []int
	// Unread is the one of the two that could not be read in full, so that nothing is compared: what
	// stands in a block that is not understood would be missed. Refuses are the findings that say
	// why.
	Unread  *compile.Result
	Refuses []finding.Finding

	pair  []pair
	then  *compile.Result
	named []func([]string) string // enclosures as their keeper knows them, in the second and the first
	one   bool                    // it is of one enclosure
}

// Try compiles the first collection with some pieces made in it; nil where that cannot be done.
type Try func(pieces []int) *compile.Result

// Of compares two compilations, which are as of one day. changes are the pieces of text, and try
// makes some of them. then is the first as of a day of its own, or nil: what was is told as it was
// then, and what only time changed is not told at all.
func Of(was, is, then *compile.Result, changes *change.Changes, try Try) *Report {
	r := &Report{then: then, Was: was, Is: is, Pieces: changes.Pieces, Moves: changes.Moves, Laid: changes.Laid}
	for _, x := range []*compile.Result{is, was} {
		if !understood(x) {
			r.Unread = x
			for i := range x.Findings {
				if f := &x.Findings[i]; f.Severity.Refuses() {
					r.Refuses = append(r.Refuses, *f)
				}
			}
			return r
		}
	}
	r.pair = pairs(was, is)
	r.named = []func([]string) string{is.Printer().Named, was.Printer().Named}
	r.Effects = r.animals()
	r.causes(try, r.Effects, (*Report).eachAnimal)
	r.around(try)
	r.asItWas()
	r.Effects = beneath(r.Effects)
	r.Effects = r.together(r.Effects)
	r.rounds()
	r.people()
	r.phones()
	r.idle()
	return r
}

// OfOne is what Of says of one enclosure alone, by the name that it had first. Nothing is said of
// people and phones; the pieces are those that may have to do with it.
func OfOne(enclosure string, was, is *compile.Result, changes *change.Changes, try Try) *Report {
	r := &Report{Was: was, Is: is, Pieces: changes.Pieces, one: true}
	r.pair = slices.DeleteFunc(pairs(was, is), func(p pair) bool { return p.id != enclosure })
	r.named = []func([]string) string{is.Printer().Named, was.Printer().Named}
	r.Effects = slices.DeleteFunc(r.animals(), func(e Effect) bool { return e.keys[0].enclosure != enclosure && !r.misses(&e) })
	r.causes(try, r.Effects, (*Report).eachAnimal)
	r.Effects = r.together(r.Effects)
	r.idle()
	return r
}

// misses reports whether an effect says that nothing tells where the animals of the one enclosure
// went, which is in the plan no more. It is said of all such enclosures at once.
func (r *Report) misses(e *Effect) bool {
	return e.Found != nil && e.Found.Rule == compile.Missing && slices.ContainsFunc(r.pair, func(p pair) bool {
		return p.is < 0 && strings.Contains(e.Is, r.Was.Lives[p.was].Plan.Shown())
	})
}

// understood reports whether all of a collection could be read.
func understood(r *compile.Result) bool { return r.Roster != nil && r.Plan.Complete() }

// asItWas tells what was as it was on the day of the first collection.
func (r *Report) asItWas() {
	if r.then == nil || r.then.Roster == nil {
		return
	}
	at := make(map[string]int, len(r.then.Lives))
	for i, l := range r.then.Lives {
		at[identity.Enclosure(l.Plan)] = i
	}
	known := map[string][]fact{}
	out := r.Effects[:0]
	for _, e := range r.Effects {
		k := e.keys[0]
		i, there := at[k.enclosure]
		if there && e.Found == nil && e.Was != "" {
			if known[k.enclosure] == nil {
				known[k.enclosure] = factsOf(r.then, i, r.Is.Plan.Units, true)
			}
			for _, f := range known[k.enclosure] {
				if f.key == k.fact {
					e.Was = f.whole()
				}
			}
			if e.Was == e.Is {
				continue
			}
		}
		out = append(out, e)
	}
	r.Effects = out
}

// Harmed reports whether anything is harm that was none.
func (r *Report) Harmed() bool {
	return r.Unread == r.Is || len(r.Effects) > 0 && r.Effects[0].Way == Harm
}

// Changed reports whether anything changes for the animals.
func (r *Report) Changed() bool {
	return r.Unread != nil || len(r.Effects) > 0
}

// Count is how many enclosures have an effect of a way.
func (r *Report) Count(w Way) int {
	var all []string
	for i := range r.Effects {
		if r.Effects[i].Way == w {
			all = append(all, r.Effects[i].Of...)
		}
	}
	slices.Sort(all)
	return len(slices.Compact(all))
}

// pair is an enclosure in both collections; a place of -1 is that it is not in one.
type pair struct {
	id      string
	was, is int // places in Lives
}

// pairs are all enclosures: in the walking order of the second collection, then those that went.
func pairs(was, is *compile.Result) []pair {
	at := make(map[string]int, len(was.Lives))
	for i, l := range was.Lives {
		at[identity.Enclosure(l.Plan)] = i
	}
	var out []pair
	for i, l := range is.Lives {
		id := identity.Enclosure(l.Plan)
		k, there := at[id]
		if !there {
			k = -1
		}
		delete(at, id)
		out = append(out, pair{id, k, i})
	}
	for i, l := range was.Lives {
		if id := identity.Enclosure(l.Plan); len(at) > 0 {
			if _, left := at[id]; left {
				out = append(out, pair{id, i, -1})
			}
		}
	}
	return out
}

// name is that of the enclosure of a pair, as it is now if it is.
func (r *Report) name(p pair) string {
	if p.is >= 0 {
		return r.Is.Lives[p.is].Plan.Name.V
	}
	return r.Was.Lives[p.was].Plan.Name.V
}

// Word is the word of a way for programs.
func (w Way) Word() string { return [...]string{"harm", "worse", "better", "otherwise"}[w] }
