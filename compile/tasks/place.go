package tasks

import (
	"strings"

	"vivary/compile/roster"
	"vivary/plan"
)

// mark stands before each place.
const mark = "- "

// label names animals at a place in a way that means no others, now and later: by the title
// that people know, with the name behind it unless the title is the name in other letters. A
// title may be changed, or given to another, before a tick of it is read.
func (l *List) label(place, group string) string {
	title := place
	e := l.standing(place)
	if e != nil {
		title = e.Shown()
	}
	same := l.titles[title] > 1
	if title = oneLine(title); same || !saysName(title, place) {
		title += " (" + place + ")"
	}
	if group != "" && !alone(e, group) {
		title += ", " + group
	}
	return title
}

// standing is the enclosure of a name, or the rack as a place at which something is done; nil
// for none.
func (l *List) standing(name string) *plan.Enclosure {
	if e := l.r.Plan.Enclosure(name); e != nil {
		return e
	}
	if k := l.r.Plan.Rack(name); k != nil {
		return k.Stop
	}
	if s := l.r.Plan.Store(name); s != nil {
		return s.Stop
	}
	return nil
}

// alone reports whether an enclosure has no other animals than those of a name.
func alone(e *plan.Enclosure, group string) bool {
	return e != nil && len(e.Animals) == 1 && e.Animals[0].Name.V == group
}

// saysName reports whether a title is a name, but for what people write otherwise.
func saysName(title, name string) bool {
	return strings.EqualFold(title, strings.NewReplacer("-", " ", "_", " ").Replace(name))
}

// means reports whether a place, as the text of a task names it, is that of an entry.
func (l *List) means(place string, e *roster.Entry) bool {
	g := group(e)
	if g == "" {
		return l.names(place, e.Plan())
	}
	for _, name := range []string{g, e.Group.Animals.Formerly.V} {
		if at, is := strings.CutSuffix(place, ", "+name); is && l.names(at, e.Plan()) {
			return true
		}
	}
	return alone(e.Plan(), g) && l.names(place, e.Plan())
}

// names reports whether a text names an enclosure, by its name of now or the one that it had,
// unless another has that by now.
func (l *List) names(text string, e *plan.Enclosure) bool {
	before := e.Formerly.V
	if before != "" && l.standing(before) != nil {
		before = ""
	}
	for _, name := range []string{e.Name.V, before} {
		if name != "" && (saysName(text, name) || strings.HasSuffix(text, " ("+name+")")) {
			return true
		}
	}
	return false
}
