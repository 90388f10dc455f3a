package plan

import (
	"bytes"
	"cmp"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"time"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
)

// Turn is other days for one care or the meals of some animals in an enclosure: other days of
// the week, or for an interval another day from which it is counted.
type Turn struct {
	Enclosure *Enclosure
	Meal      bool   // Name is that of animals
	Name      string // of the care
	On        civil.Weekdays
	From      civil.Date // where On is empty
}

// block is the type of the block in which it is written, attr the attribute, and value how it
// is written there.
func (t *Turn) block() string {
	if t.Meal {
		return schema.Feeding.Name
	}
	return schema.Care.Name
}

func (t *Turn) attr() (name, value string) {
	if t.On == 0 {
		return "from", strconv.Quote(t.From.String())
	}
	var days []string
	for i := range 7 {
		if d := time.Weekday((i + 1) % 7); t.On&civil.Weekdays(0).With(d) != 0 {
			days = append(days, strconv.Quote(strings.ToLower(d.String()[:3])))
		}
	}
	return "on", "[" + strings.Join(days, ", ") + "]"
}

// timing returns what the enclosure has of its care, nil for nothing.
func (t *Turn) timing() (*Head, *Timing) {
	if t.Meal {
		for _, f := range t.Enclosure.Feeding {
			if f.Name.V == t.Name {
				return &f.Head, &f.Timing
			}
		}
		return nil, nil
	}
	for _, c := range t.Enclosure.Care {
		if c.Name.V == t.Name {
			return &c.Head, &c.Timing
		}
	}
	return nil, nil
}

// at is where what the turn changes is written, if it is.
func (t *Turn) at() source.Place {
	_, has := t.timing()
	switch {
	case has == nil:
		return source.Place{}
	case t.On == 0:
		return has.From.At
	case len(has.On) == 0:
		return source.Place{}
	}
	at := has.On[0].At
	at.End = has.On[len(has.On)-1].At.End
	return at
}

// Turns reports whether other days can be written for a care: in its enclosure, for it alone.
// What a number block says of several, beside other things, is for its keeper to part.
func (c *Collection) Turns(t *Turn) bool {
	e := t.Enclosure
	if e.Whole.File <= 0 || !bytes.Contains(c.Files.Text(e.Whole.File)[e.Whole.Start:e.Whole.End], []byte{'\n'}) {
		return false
	}
	if e.Of == "" {
		return true
	}
	a := e.saidBy(t.at())
	return a == nil || a.Numbers.Count() == 1 || c.turned(a) != nil
}

// turnedBlock is a number block that says nothing but when one care is done.
var turnedBlock = regexp.MustCompile(`^number "[^"]*" \{ (care|feeding) "([^"]*)" \{ (on|from) = (\[[^\]{}=#]*\]|"[^"]*") \} \}$`)

// turned is what such a number block says, nil for another: block, name, attribute, value.
func (c *Collection) turned(a *Apart) []string {
	text := c.Files.Text(a.Whole.File)
	if a.Whole.File <= 0 || int(a.Whole.End) > len(text) || a.Whole.End-a.Whole.Start > 4000 {
		return nil
	}
	if m := turnedBlock.FindStringSubmatch(strings.Join(strings.Fields(string(text[a.Whole.Start:a.Whole.End])), " ")); m != nil {
		return m[1:]
	}
	return nil
}

// Turned returns the edits that write turns. Of one care there is one turn.
func (c *Collection) Turned(all []Turn) []finding.Edit {
	var out []finding.Edit
	several := map[source.Place][]*Turn{}
	alone := map[source.Place]*adding{}
	for i := range all {
		t := &all[i]
		if e := t.Enclosure; e.Of != "" {
			several[e.Whole] = append(several[e.Whole], t)
			continue
		}
		if alone[t.Enclosure.Whole] == nil {
			alone[t.Enclosure.Whole] = &adding{}
		}
		out = append(out, c.turnAlone(t, alone[t.Enclosure.Whole])...)
	}
	for _, at := range inPlaces(alone) {
		out = append(out, alone[at].edits(c.Files.Text(at.File), at)...)
	}
	for _, at := range inPlaces(several) {
		out = append(out, c.turnSeveral(at, several[at])...)
	}
	return out
}

// inPlaces are the keys of a map in the order of files and lines.
func inPlaces[T any](m map[source.Place]T) []source.Place {
	var all []source.Place
	for at := range m {
		all = append(all, at)
	}
	slices.SortFunc(all, func(a, b source.Place) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Start, b.Start))
	})
	return all
}

// adding gathers blocks that are put at the end of another.
type adding struct{ blocks []string }

// edits puts them before the closing brace of a block, an empty line before the first.
func (a *adding) edits(text []byte, whole source.Place) []finding.Edit {
	if len(a.blocks) == 0 {
		return nil
	}
	end := int(whole.End) - 1
	line := bytes.LastIndexByte(text[:end], '\n') + 1
	indent := string(text[line:end])
	if strings.TrimSpace(indent) != "" {
		return nil // the brace stands behind something else
	}
	eol := "\n"
	if line > 1 && text[line-2] == '\r' {
		eol = "\r\n"
	}
	var b strings.Builder
	for _, block := range a.blocks {
		b.WriteString(eol)
		for l := range strings.Lines(block) {
			b.WriteString(indent + "  " + strings.TrimSuffix(l, "\n") + eol)
		}
	}
	at := source.Place{File: whole.File, Start: int32(line), End: int32(line)}
	return []finding.Edit{{At: at, Text: b.String()}}
}

// turnAlone writes a turn in an enclosure that is written out.
func (c *Collection) turnAlone(t *Turn, add *adding) []finding.Edit {
	e := t.Enclosure
	head, _ := t.timing()
	name, value := t.attr()
	text := c.Files.Text(e.Whole.File)
	switch at := t.at(); {
	case e.says(at):
		return c.turnValue(t, at)
	case head != nil && e.says(head.At):
		return finding.Inside(text, head.At, head.Whole, name+" = "+value)
	}
	add.blocks = append(add.blocks, t.block()+" "+strconv.Quote(t.Name)+" {\n  "+name+" = "+value+"\n}\n")
	return nil
}

// turnValue writes other days in the place of those that stand there.
func (c *Collection) turnValue(t *Turn, at source.Place) []finding.Edit {
	_, value := t.attr()
	if t.On == 0 {
		return finding.Plain(at, value)
	}
	_, has := t.timing()
	days := strings.Split(strings.Trim(strings.ReplaceAll(value, `"`, ""), "[]"), ", ")
	if edits := finding.Items(c.Files.Text(at.File), has.On[0].At, has.On[len(has.On)-1].At, days); edits != nil {
		return edits
	}
	return finding.Plain(at, value)
}

// group is what number blocks say of some enclosures: when one care is done.
type group struct {
	key, attr, value string // key is the block with its name
	numbers          map[int]bool
	of               *Apart // nil for one that is not there yet
	changed          bool
}

// turnSeveral writes turns of enclosures of one block with numbers, each value once with the
// numbers of which it is said.
func (c *Collection) turnSeveral(whole source.Place, all []*Turn) []finding.Edit {
	block := c.blockAt(whole, all[0].Enclosure.Of)
	if block == nil {
		return nil
	}
	var out []finding.Edit
	var groups []*group
	for _, a := range block.Apart {
		if m := c.turned(a); m != nil && a.Numbers.Count() > 0 {
			g := &group{key: m[0] + " " + strconv.Quote(m[1]), attr: m[2], value: m[3], numbers: map[int]bool{}, of: a}
			for _, x := range a.Numbers {
				for n := x.Low; n <= x.High; n++ {
					g.numbers[n] = true
				}
			}
			groups = append(groups, g)
		}
	}
	for _, t := range all {
		at := t.at()
		if a := t.Enclosure.saidBy(at); a != nil && c.turned(a) == nil {
			out = append(out, c.turnValue(t, at)...) // of this number alone
			continue
		}
		key := t.block() + " " + strconv.Quote(t.Name)
		attr, value := t.attr()
		n, found := t.Enclosure.number, false
		for _, g := range groups {
			if g.key != key || g.attr != attr {
				continue
			}
			if g.value != value {
				g.changed = g.changed || g.numbers[n]
				delete(g.numbers, n)
			} else if !found {
				found, g.changed = true, g.changed || !g.numbers[n]
				g.numbers[n] = true
			}
		}
		if !found {
			groups = append(groups, &group{key: key, attr: attr, value: value, numbers: map[int]bool{n: true}, changed: true})
		}
	}
	add := &adding{}
	for _, g := range groups {
		labels := labels(block.Numbers.V, g.numbers)
		switch {
		case !g.changed:
			continue
		case g.of != nil && len(labels) == 0:
			out = append(out, finding.Without(c.Files.Text(whole.File), g.of.Whole)...)
			continue
		case g.of != nil:
			out = append(out, inQuotes(g.of.Name.At, labels[0])...)
			labels = labels[1:]
		}
		for _, l := range labels {
			add.blocks = append(add.blocks, "number "+strconv.Quote(l)+" {\n  "+g.key+" {\n    "+g.attr+" = "+g.value+"\n  }\n}\n")
		}
	}
	return append(out, add.edits(c.Files.Text(whole.File), whole)...)
}

// blockAt is the block with numbers at a place.
func (c *Collection) blockAt(whole source.Place, name string) *Enclosure {
	for e := range c.numbered {
		if e.Whole == whole && e.Name.V == name {
			return e
		}
	}
	return nil
}

// longestLabel is how long a label is that is written for numbers; longer ones are parted.
const longestLabel = 200

// labels writes some of the numbers of a block, as labels of number blocks.
func labels(of Spans, some map[int]bool) []string {
	var out []string
	var now Spans
	flush := func() {
		if len(now) > 0 {
			out, now = append(out, now.String()), nil
		}
	}
	for _, x := range of {
		for n := x.Low; n <= x.High; n++ {
			if !some[n] {
				continue
			}
			if k := len(now) - 1; k >= 0 && now[k].High == n-1 && now[k].Digits == x.Digits {
				now[k].High = n
				continue
			}
			if len(now.String()) > longestLabel {
				flush()
			}
			now = append(now, Span{Low: n, High: n, Digits: x.Digits})
		}
	}
	flush()
	return out
}

// Line is how the turn is written: `on = ["tue"]`.
func (t *Turn) Line() string {
	name, value := t.attr()
	return name + " = " + value
}
