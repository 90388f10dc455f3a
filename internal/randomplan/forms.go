package randomplan

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
)

// What a plan says can be written in several forms, of which none says more or less than
// another. Each of these returns a copy in another form.

// Templated takes what enclosures have in common into a template.
func (p *Plan) Templated() *Plan {
	q := p.Clone()
	var in []*Block
	for _, b := range q.Boxes {
		if !b.has("template") && q.chance(80) {
			in = append(in, b.Block)
		}
	}
	if len(in) == 0 {
		return q
	}
	t := q.lift(in, "title", "formerly")
	t.Word, t.Name = "template", "common"
	for _, b := range in {
		b.text("template", t.Name)
	}
	q.templates = append(q.templates, t)
	return q
}

// Racked puts the boxes of a room into a rack that says no more than the room.
func (p *Plan) Racked() *Plan {
	q := p.Clone()
	room := q.rooms[0].Name
	q.racks = append(q.racks, block("rack", "shelf").text("room", room))
	for _, b := range q.Boxes {
		if b.get("room") == room && !b.has("rack") {
			b.text("rack", "shelf")
			if q.chance(50) {
				b.drop("room")
			}
		}
	}
	return q
}

// Numbered writes the boxes, which are called box-1, box-2 and so on, as one block with
// numbers.
func (p *Plan) Numbered() *Plan {
	q := p.Clone()
	var numbers []string
	var in []*Block
	for _, b := range q.Boxes {
		if n, ok := strings.CutPrefix(b.Name, "box-"); ok && number(n) {
			numbers, in = append(numbers, n), append(in, b.Block)
		}
	}
	titled := true
	for i, b := range in {
		titled = titled && b.get("title") == "Box "+numbers[i]
	}
	if titled {
		for _, b := range in {
			b.drop("title")
		}
	}
	single := make([]bool, len(in))
	for i, b := range in {
		single[i] = len(b.of("animals")) == 1 && !b.has("template")
	}
	q.numbered = q.lift(in, "title", "formerly")
	q.numbered.Word, q.numbered.Name = "enclosure", "box"
	q.numbered.text("numbers", q.spans(numbers))
	if titled {
		q.numbered.text("title", "Box")
	}
	apart := map[string][]string{}
	for i, b := range in {
		for _, d := range q.facts(b, single[i]) {
			apart[d] = append(apart[d], numbers[i])
		}
	}
	for _, text := range slices.Sorted(maps.Keys(apart)) {
		if of := apart[text]; q.chance(70) && !strings.HasPrefix(text, "title ") && !strings.HasPrefix(text, "formerly ") {
			q.apart = append(q.apart, fmt.Sprintf("  number %q {%s}\n", strings.Join(of, ", "), text))
		} else {
			for _, n := range of {
				q.apart = append(q.apart, fmt.Sprintf("  number %q {%s}\n", n, text))
			}
		}
	}
	q.rng.Shuffle(len(q.apart), func(i, k int) { q.apart[i], q.apart[k] = q.apart[k], q.apart[i] })
	q.Boxes = slices.DeleteFunc(q.Boxes, func(b *Box) bool { return slices.Contains(in, b.Block) })
	return q
}

func number(s string) bool {
	_, err := strconv.Atoi(s)
	return err == nil
}

// spans writes numbers as a list, or as ranges.
func (p *Plan) spans(numbers []string) string {
	last := len(numbers) - 1
	if a, _ := strconv.Atoi(numbers[0]); p.chance(70) && numbers[last] == strconv.Itoa(a+last) {
		return numbers[0] + " to " + numbers[last]
	}
	if last == 0 {
		return numbers[0] + " to " + numbers[0]
	}
	return strings.Join(numbers[:last], ", ") + pick(p, []string{", ", " and "}) + numbers[last]
}

// facts are what is left of a box, as the insides of number blocks.
func (p *Plan) facts(b *Block, single bool) (out []string) {
	for _, a := range b.attrs {
		out = append(out, a.name+" = "+a.value)
	}
	for _, x := range b.inner {
		if p.chance(70) && len(x.inner) == 0 && (x.Word == "housing" || x.Word == "animals" && single && p.numbered.inside(x) != nil) {
			for _, a := range x.attrs {
				if a.name == "title" || a.name == "formerly" || a.name == "note" {
					panic("not to be said without its block")
				}
				out = append(out, a.name+" = "+a.value)
			}
			continue
		}
		var text strings.Builder
		x.write(&text, "    ")
		out = append(out, "\n"+text.String()+"  ")
	}
	return out
}

// lift takes out of blocks what all of them say, and returns it as a block. Where they do
// not say the same, what one of them says is lifted, or nothing.
func (p *Plan) lift(all []*Block, never ...string) *Block {
	common := &Block{Word: all[0].Word, Name: all[0].Name}
	for _, a := range slices.Clone(all[0].attrs) {
		if slices.Contains(never, a.name) || p.chance(20) || !each(all, func(b *Block) bool { return b.has(a.name) }) {
			continue
		}
		value := raw(pick(p, all), a.name)
		common.set(a.name, value)
		for _, b := range all {
			if raw(b, a.name) == value && p.chance(90) {
				b.drop(a.name)
			}
		}
	}
	for _, x := range slices.Clone(all[0].inner) {
		if p.chance(20) || !each(all, func(b *Block) bool { return b.inside(x) != nil }) {
			continue
		}
		var same []*Block
		for _, b := range all {
			same = append(same, b.inside(x))
		}
		common.add(p.lift(same))
		for i, b := range all {
			if y := same[i]; len(y.attrs) == 0 && len(y.inner) == 0 {
				b.inner = slices.DeleteFunc(b.inner, func(o *Block) bool { return o == y })
			}
		}
	}
	return common
}

func each(all []*Block, is func(*Block) bool) bool {
	return !slices.ContainsFunc(all, func(b *Block) bool { return !is(b) })
}

func raw(b *Block, name string) string { return b.attrs[b.find(name)].value }

// inside returns the inner block that has the word and the name of another, or nil.
func (b *Block) inside(x *Block) *Block {
	for _, y := range b.inner {
		if y.Word == x.Word && y.Name == x.Name {
			return y
		}
	}
	return nil
}
