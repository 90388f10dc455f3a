package randomplan

import (
	"fmt"
	"slices"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Ledger is what a log says of numbers, kept by hand: what came into each box is there or
// has gone, and nobody is in two.
type Ledger struct {
	Here map[string]int // animals by box
	// Loose are those that escaped: whether they count as living in their box is open.
	Loose      map[string]int
	Came, Went int

	sure     map[*Group]int // of a block, those that no line may have taken elsewhere
	young    map[*Group]int // broods by their mothers' block, as far as they are there for sure
	brooding map[*Group]bool
}

// Silly adds lines of all words in any order, sense or none, from some days before today
// until today, and returns what they come to. Numbers are far too large or right, so that
// which lines cannot be so is plain. Lines that the language does not know are left out.
func (p *Plan) Silly(lines int) *Ledger {
	k := &Ledger{Here: map[string]int{}, Loose: map[string]int{}, sure: map[*Group]int{}, young: map[*Group]int{}, brooding: map[*Group]bool{}}
	p.Log = nil
	for _, b := range p.Boxes {
		for _, g := range b.Groups {
			k.sure[g] = g.Count
			k.Here[b.Name] += g.Count
			k.Came += g.Count
		}
	}
	written := map[string]bool{}
	for i := range lines {
		b := pick(p, p.Boxes)
		g := pick(p, b.Groups)
		l := Line{Date: p.Today - civil.Date((lines-i)/3), Box: b.Name, Animals: g.Name, Word: pick(p, schema.LogWords).Name}
		then := p.sense(k, b, g, &l)
		text := l.Text()
		if written[text] || !understood(text) {
			continue // an identical line is one fact
		}
		written[text] = true
		p.Log = append(p.Log, l)
		then()
	}
	return k
}

// understood reports whether the language knows a line.
func understood(text string) bool {
	_, found := plan.ParseLogLine(1, text[:len(text)-1])
	return len(found) == 0
}

// sense gives a line what stands after its word, and returns what it does to the ledger.
func (p *Plan) sense(k *Ledger, b *Box, g *Group, l *Line) func() {
	nothing := func() {}
	here := k.sure[g]
	many := 500 + p.rng.IntN(99) // more than anywhere
	switch l.Word {
	case "arrived":
		return p.comes(k, b, g, l)
	case "born", "hatched":
		n := p.between(1, 20)
		l.Rest = fmt.Sprint(n)
		if here == 0 {
			l.Word, l.Rest = "fed", ""
			return nothing
		}
		return func() { k.Here[b.Name] += n; k.young[g] += n; k.Came += n; k.brooding[g] = true }
	case "died", "escaped":
		if here == 0 || p.chance(20) {
			l.Rest = fmt.Sprint(many)
			return nothing
		}
		n := p.between(1, here)
		l.Rest = fmt.Sprint(n)
		if l.Word == "escaped" {
			return func() { k.Loose[b.Name] += n; k.sure[g] -= n }
		}
		return func() { k.Here[b.Name] -= n; k.sure[g] -= n; k.Went += n }
	case "moved":
		return p.goes(k, b, g, l, here, many)
	case "separated":
		return p.parts(k, b, g, l, many)
	case "counted", "seen":
		l.Rest = fmt.Sprint(pick(p, []int{0, 1, here, many}))
	case "weighed":
		l.Rest = pick(p, []string{"11 g", "2 kg"})
	case "done", "skipped":
		l.Animals, l.Rest = "", pick(p, []string{"water", "look", "watr"})
	case "mites", "remark":
		l.Animals = ""
	case "measured":
		l.Animals, l.Rest = "", "24 C"
	case "withdrawn":
		l.Word = "fed" // what it takes back would have to be found first
	case "found":
		n := min(1, k.Loose[b.Name])
		l.Rest = fmt.Sprint(max(1, n))
	}
	return nothing
}

// comes is some that arrived. As many as the plan has could be the plan's own.
func (p *Plan) comes(k *Ledger, b *Box, g *Group, l *Line) func() {
	n := p.between(1, 3)
	if n == g.Count {
		n++
	}
	l.Rest = fmt.Sprint(n)
	return func() { k.Here[b.Name] += n; k.sure[g] += n; k.Came += n }
}

// goes is some that were moved: out, to another box, or to one that does not exist.
// Mothers with young stay: those would go with them.
func (p *Plan) goes(k *Ledger, b *Box, g *Group, l *Line, here, many int) func() {
	if here == 0 || k.brooding[g] || p.chance(15) {
		l.Rest = fmt.Sprint(many)
		return func() {}
	}
	n := p.between(1, here)
	l.Rest = fmt.Sprint(n)
	to := pick(p, p.Boxes)
	switch {
	case p.chance(10):
		l.Rest += " nowhere"
		return func() {}
	case p.chance(30) || to == b:
		return func() { k.Here[b.Name] -= n; k.sure[g] -= n; k.Went += n }
	}
	l.Rest += " " + to.Name
	return func() { k.Here[b.Name] -= n; k.sure[g] -= n; k.Here[to.Name] += n }
}

// parts is young that were taken out: to a box, or to where nobody wrote.
func (p *Plan) parts(k *Ledger, b *Box, g *Group, l *Line, many int) func() {
	young := k.young[g]
	if young == 0 {
		return func() {} // with a number it would be young of whose birth nobody wrote
	}
	if p.chance(20) {
		l.Rest = fmt.Sprint(many)
		return func() {}
	}
	n := p.between(1, young)
	l.Rest = fmt.Sprint(n)
	to := pick(p, p.Boxes)
	if to == b || p.chance(50) {
		return func() { k.young[g] = 0 } // from which brood the next are is open
	}
	l.Rest += " " + to.Name
	return func() { k.Here[b.Name] -= n; k.Here[to.Name] += n; k.young[g] = 0 }
}

// Words are the words that the log of a plan uses, each once.
func (p *Plan) Words() (out []string) {
	for _, l := range p.Log {
		out = append(out, l.Word)
	}
	slices.Sort(out)
	return slices.Compact(out)
}
