package past

import (
	"slices"
	"strings"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/change"
)

// Scope is what may have to do with one enclosure in two revisions: its own block, what it is
// made from, and the enclosures whose animals or heaters have to do with its own.
type Scope struct {
	sides   [2]*side
	own     []string // names of the enclosure and of the block with numbers that it is in
	with    []string // names of it and the others, and of their blocks
	outer   map[string][]string
	touched []string // other enclosures that came, went, or have other animals
}

// side is the enclosure in one of the two.
type side struct {
	c    *plan.Collection
	e    *plan.Enclosure
	name string
}

// ScopeOf looks what may have to do with an enclosure in two collections, between which are some
// changes; a or b is nil where it is not in one.
func ScopeOf(was, is *plan.Collection, a, b *plan.Enclosure, between *change.Changes) *Scope {
	s := &Scope{outer: map[string][]string{}}
	for i := range between.Pieces {
		p := &between.Pieces[i]
		if p.Type == "enclosure" && (p.Attr == "" && len(p.In) == 0 || strings.HasPrefix(first(p.In), "animals")) {
			s.touched = append(s.touched, p.Name, p.Before) // its animals may have gone there
		}
	}
	for i, x := range []side{{c: was, e: a}, {c: is, e: b}} {
		if x.e != nil {
			x.name = x.e.Name.V
			s.sides[i] = &x
			s.look(&x)
		}
	}
	return s
}

// always are blocks that mean something to every enclosure.
var always = []string{"collection", "keeper", "round", "away", "dates", "calendar", "species", "type", "feeder", "gone"}

// look adds what has to do with the enclosure of one side.
func (s *Scope) look(x *side) {
	s.own = append(s.own, x.name)
	if x.e.Of != "" {
		s.own = append(s.own, x.e.Of)
	}
	for _, h := range life.Households(x.c) {
		if slices.ContainsFunc(h.At, func(i int) bool { return x.c.Enclosures[i] == x.e }) {
			for _, i := range h.At {
				s.add(x.c.Enclosures[i])
			}
		}
	}
	plugs := outlets(x.e)
	for _, o := range x.c.Enclosures {
		if x.e.Rack.Set() && o.Rack.V == x.e.Rack.V || slices.ContainsFunc(outlets(o), func(p string) bool { return slices.Contains(plugs, p) }) {
			s.add(o)
		}
	}
	if x.e.Rack.Set() {
		s.outer["rack"] = append(s.outer["rack"], x.e.Rack.V)
	}
	if x.e.Place != nil {
		s.outer["room"] = append(s.outer["room"], x.e.Place.Name.V)
	}
	if x.e.Template.Set() {
		s.outer["template"] = append(s.outer["template"], x.e.Template.V)
	}
	for _, a := range x.e.Differs() {
		if a.Template.Set() {
			s.outer["template"] = append(s.outer["template"], a.Template.V)
		}
	}
}

func (s *Scope) add(e *plan.Enclosure) {
	s.with = append(s.with, e.Name.V)
	if e.Of != "" {
		s.with = append(s.with, e.Of)
	}
}

// outlets are those that the heaters of an enclosure share with others.
func outlets(e *plan.Enclosure) (out []string) {
	if e.Climate != nil {
		for _, h := range e.Climate.Heaters {
			if h.Channel.Set() {
				out = append(out, h.Channel.V)
			}
		}
	}
	return out
}

// Own reports whether a piece is of the enclosure itself: of its block, or lines of the log about
// it.
func (s *Scope) Own(p *change.Piece) bool {
	switch {
	case p.Log():
		return s.named(p.Name)
	case p.Type != "enclosure" || !slices.Contains(s.own, p.Name) && (p.Before == "" || !slices.Contains(s.own, p.Before)):
		return false
	case s.named(p.Name) || s.named(p.Before):
		return true
	case p.Attr == "numbers" && len(p.In) == 0: // of its block there are more or fewer
		return s.sides[0] == nil || s.sides[1] == nil
	}
	if number, is := strings.CutPrefix(first(p.In), "number "); is { // about some of its block
		return slices.ContainsFunc(s.sides[:], func(x *side) bool {
			return x != nil && slices.ContainsFunc(x.e.Differs(), func(a *plan.Apart) bool { return a.Name.V == number })
		})
	}
	return true
}

func first(all []string) string {
	if len(all) == 0 {
		return ""
	}
	return all[0]
}

// named reports whether a name is that of the enclosure, before or after.
func (s *Scope) named(name string) bool {
	return name != "" && slices.ContainsFunc(s.sides[:], func(x *side) bool { return x != nil && x.name == name })
}

// May reports whether a piece may mean anything for the enclosure.
func (s *Scope) May(p *change.Piece) bool {
	switch {
	case s.Own(p) || p.Library || slices.Contains(always, p.Type):
		return true
	case p.Log(): // a keeper is none of the enclosures
		return slices.Contains(s.with, p.Name) || !s.enclosure(p.Name)
	case p.Type == "enclosure":
		return slices.Contains(s.with, p.Name) || slices.Contains(s.with, p.Before) || p.Attr == "places"
	case p.Type == "room" && slices.ContainsFunc(s.sides[:], func(x *side) bool { return x != nil && !x.e.Room.Set() }):
		return true // it stands in the only one that there is
	}
	of := s.outer[p.Type]
	return slices.Contains(of, p.Name) || p.Before != "" && slices.Contains(of, p.Before)
}

func (s *Scope) enclosure(name string) bool {
	return slices.ContainsFunc(s.sides[:], func(x *side) bool { return x != nil && x.c.Enclosure(name) != nil })
}

// Keep reports whether an enclosure is needed to say what follows for this one.
func (s *Scope) Keep(e *plan.Enclosure) bool {
	names := func(all []string) bool {
		return slices.Contains(all, e.Name.V) || e.Of != "" && slices.Contains(all, e.Of)
	}
	return names(s.own) || names(s.with) || names(s.touched) || e.Housing != nil && e.Housing.Places.Set()
}
