package randomplan

import (
	"fmt"
	"slices"
	"strings"

	"vivary/schema/civil"
)

// Line is a line of the log.
type Line struct {
	Date         civil.Date
	Box, Animals string // Animals is "" in a line about the whole enclosure
	Word, Rest   string
}

// Text is the line as it is written.
func (l *Line) Text() string {
	return strings.Join(slices.DeleteFunc([]string{l.Date.String(), l.Box, l.Animals, l.Word, l.Rest}, func(s string) bool { return s == "" }), " ") + "\n"
}

// The log reaches from so many days before today to so many after it.
const (
	logBefore = 240
	logAfter  = 45
)

// history adds what was seen: a story for each group, told in its order.
func (p *Plan) history() {
	if p.chance(30) {
		return
	}
	for _, b := range p.Boxes {
		for _, g := range b.Groups {
			if p.chance(55) {
				p.story(b, g)
			}
		}
		p.chores(b)
	}
	slices.SortStableFunc(p.Log, func(a, b Line) int { return int(a.Date - b.Date) })
}

func (p *Plan) tell(on civil.Date, b *Box, g *Group, word, rest string) {
	l := Line{Date: on, Box: b.Name, Word: word, Rest: rest}
	if g != nil && (len(b.Groups) > 1 || p.chance(30)) {
		l.Animals = g.Name
	}
	p.Log = append(p.Log, l)
}

// day is a day of the log, most of them not long ago.
func (p *Plan) day() civil.Date {
	if p.chance(70) {
		return p.Today + civil.Date(p.between(-40, logAfter))
	}
	return p.Today + civil.Date(p.between(-logBefore, logAfter))
}

// story tells one thing that happens to a group.
func (p *Plan) story(b *Box, g *Group) {
	on := p.day()
	switch p.rng.IntN(9) {
	case 0, 1:
		p.moults(b, g, on)
	case 2:
		p.refuses(b, g, on)
	case 3:
		p.loses(b, g, on)
	case 4:
		p.tell(on, b, g, "fed", "")
		p.tell(on+civil.Date(p.between(3, 9)), b, g, "fed", "")
	case 5:
		if g.Count > 1 {
			p.tell(on, b, g, "counted", fmt.Sprint(g.left-p.rng.IntN(2)))
		} else {
			p.tell(on, b, g, "weighed", "11 g")
		}
	case 6:
		p.breeds(b, g)
	case 7:
		if g.left > 0 {
			p.remarks(b, g, on)
		}
	default:
		p.arrives(b, g, on)
	}
}

// remarks tells of what is seen in passing, as keepers write it, and of what was
// written by mistake.
func (p *Plan) remarks(b *Box, g *Group, on civil.Date) {
	switch p.rng.IntN(6) {
	case 0:
		p.tell(on, b, g, pick(p, []string{"seen", "remark", "off its food today", "threw it about"}), "")
	case 1:
		p.tell(on, b, g, "injured", "")
		p.tell(on+civil.Date(p.between(3, 20)), b, g, "recovered", "")
	case 2:
		p.tell(on, b, nil, "measured", pick(p, []string{"27 C", "26 C 70 %"}))
	case 3:
		p.tell(on, b, g, "shed", "")
		p.tell(on, b, g, "withdrawn", "shed "+on.String())
	case 4:
		p.tell(on, b, g, "treated", pick(p, []string{"5 days", "for 2 weeks"}))
	default:
		p.tell(on, b, g, "treated", `"looked over, sound"`)
	}
}

// moults tells of a moult, the sign of it before or not. Grown animals do not.
func (p *Plan) moults(b *Box, g *Group, on civil.Date) {
	if g.Stage == "adult" {
		p.refuses(b, g, on)
		return
	}
	if p.chance(50) {
		p.tell(on-civil.Date(p.between(2, 15)), b, g, "premoult", "")
	}
	if p.chance(75) {
		p.tell(on, b, g, "moult", pick(p, []string{"", `"found on its side, left alone"`}))
	}
}

func (p *Plan) refuses(b *Box, g *Group, on civil.Date) {
	for range p.between(1, 3) {
		p.tell(on, b, g, "refused", "")
		on += civil.Date(p.between(3, 8))
	}
	if p.chance(50) {
		p.tell(on, b, g, "fed", "")
	}
}

// loses tells of a death, or of one that left the collection.
func (p *Plan) loses(b *Box, g *Group, on civil.Date) {
	n := p.between(1, g.left)
	if p.chance(60) {
		n = 1
	}
	g.left -= n
	p.tell(on, b, g, pick(p, []string{"died", "moved"}), "")
	if l := &p.Log[len(p.Log)-1]; n > 1 || l.Word == "died" && p.chance(30) {
		l.Rest = fmt.Sprint(n)
	} else if l.Word == "moved" {
		l.Rest = "1"
	}
}

// breeds tells of a mating and of what follows, as far as it has come.
func (p *Plan) breeds(b *Box, g *Group) {
	if b.Species != "pandinus-imperator" || g.Stage != "adult" || g.Count != 1 || g.Name == "males" {
		p.tell(p.day(), b, nil, "mites", "")
		return
	}
	mated := p.Today - civil.Date(p.between(200, 420))
	p.tell(mated, b, g, "mated", "")
	if p.chance(30) {
		return
	}
	born := mated + civil.Date(p.between(210, 380))
	p.tell(born, b, g, "born", pick(p, []string{"", "14"}))
	if p.chance(70) {
		moulted := born + civil.Date(p.between(11, 18))
		p.tell(moulted, b, g, "first_moult", "")
		if p.chance(60) {
			p.tell(moulted+civil.Date(p.between(10, 20)), b, g, "separated", "14")
		}
	}
}

// arrives tells of animals that came.
func (p *Plan) arrives(b *Box, g *Group, on civil.Date) {
	p.tell(on, b, g, "arrived", "")
}

// chores tells of care that was done on a day of its own, or was not done.
func (p *Plan) chores(b *Box) {
	for _, c := range b.of("care") {
		if p.chance(15) {
			p.tell(p.day(), b, nil, pick(p, []string{"done", "skipped", "skipped"}), c.Name)
		}
	}
	if p.chance(10) {
		p.tell(p.day(), b, nil, "skipped", "look")
	}
}

// Of returns the lines about an enclosure until a day.
func (p *Plan) Of(box string, until civil.Date) (out []Line) {
	for _, l := range p.Log {
		if l.Box == box && l.Date <= until {
			out = append(out, l)
		}
	}
	return out
}
