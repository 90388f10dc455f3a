package main

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/wording"
)

// who is of whom a note is: enclosures or racks by their names.
type who struct {
	names []string
	whole []string // words that stood for several: a rack, or a block with numbers
}

// maxBoxes is of how many enclosures one note may be.
const maxBoxes = 2000

// takeWho reads the enclosures with which the words of a note begin, and returns the words
// behind them. Several stand one after another, with commas or without, or as a range:
// "tub-1,tub-2", "tub-7 to 12", "tub-7..12". What a name is not is left as it was typed, so
// that the plan says what may be meant.
func takeWho(c *plan.Collection, words []string) (out who, rest []string, err error) {
	for more := true; more; {
		var word, to string
		word, words = titled(c, words)
		parts := strings.Split(strings.Trim(word, ","), ",")
		more = strings.HasSuffix(word, ",")
		if last := parts[len(parts)-1]; !more && len(words) > 1 && words[0] == "to" && called(c, last) != "" {
			to, word, more = strings.Cut(words[1], ",")
			if words = words[2:]; word != "" {
				words = append([]string{word}, words...)
			}
		}
		for i, part := range parts {
			if i < len(parts)-1 {
				err = out.add(c, part, "")
			} else {
				err = out.add(c, part, to)
			}
			if err != nil {
				return out, nil, err
			}
		}
		if len(words) > 1 && words[0] == "and" {
			more, words = true, words[1:]
		}
		more = len(words) > 0 && (more || out.goesOn(c, words))
	}
	if len(out.names) > maxBoxes {
		return out, nil, fmt.Errorf("these are %d enclosures: at most %d in one note", len(out.names), maxBoxes)
	}
	return out, words, nil
}

// titled takes the first word, or as many as are a title: "Burrow A".
func titled(c *plan.Collection, words []string) (word string, rest []string) {
	for n := min(len(words), 5); n > 1 && called(c, words[0]) == ""; n-- {
		if name := called(c, strings.Join(words[:n], " ")); name != "" {
			return name, words[n:]
		}
	}
	return words[0], words[1:]
}

// goesOn reports whether the next word is one more enclosure, and neither animals of the
// last nor a word of the log.
func (x *who) goesOn(c *plan.Collection, words []string) bool {
	if e := c.Enclosure(x.names[len(x.names)-1]); e != nil && e.Group(words[0]) != nil {
		return false
	}
	first, _, several := strings.Cut(words[0], ",")
	if s, _ := schema.Spelled(words); s != nil && !several {
		return false
	}
	first, _, _ = strings.Cut(first, "..")
	return called(c, first) != ""
}

// add takes in one name, title or range.
func (x *who) add(c *plan.Collection, word, to string) error {
	from, until, ranged := strings.Cut(word, "..")
	if ranged {
		to = until
	}
	if to != "" {
		return x.span(c, from, to)
	}
	if name := called(c, word); name != "" {
		x.put(name)
		return nil
	}
	if all := ofBlock(c, word); len(all) > 0 {
		x.whole = append(x.whole, word)
		x.put(all...)
		return nil
	}
	x.put(word)
	return nil
}

func (x *who) put(names ...string) {
	for _, n := range names {
		if !slices.Contains(x.names, n) {
			x.names = append(x.names, n)
		}
	}
}

// span takes in those from one to another, by the numbers at the ends of their names.
func (x *who) span(c *plan.Collection, from, to string) error {
	stem, first := numberAt(from)
	otherStem, last := numberAt(to)
	a, errA := strconv.Atoi(first)
	b, errB := strconv.Atoi(last)
	switch {
	case errA != nil || errB != nil || otherStem != "" && !strings.EqualFold(stem, otherStem):
		return fmt.Errorf("%q to %q is no range of enclosures: write tub-7..12, or tub-7 to 12", from, to)
	case b < a || b-a > maxBoxes:
		return fmt.Errorf("from %d to %d is no range of enclosures", a, b)
	}
	var lacking []string
	for n := a; n <= b; n++ {
		digits := strconv.Itoa(n)
		if strings.HasPrefix(first, "0") {
			digits = fmt.Sprintf("%0*d", len(first), n)
		}
		name := called(c, stem+digits)
		if name == "" {
			lacking = append(lacking, stem+digits)
			continue
		}
		x.put(name)
	}
	if len(lacking) > 0 {
		return fmt.Errorf("there is no enclosure %s", wording.Or(lacking[:min(len(lacking), 5)]))
	}
	return nil
}

func numberAt(name string) (stem, digits string) {
	stem = strings.TrimRight(name, "0123456789")
	return stem, name[len(stem):]
}

// called returns the name of the one enclosure or rack that is called so: by its name,
// whatever its capitals, else by its title; "" for none or several.
func called(c *plan.Collection, word string) string {
	if c.Enclosure(word) != nil || c.Rack(word) != nil || c.Store(word) != nil {
		return word
	}
	var by [2][]string
	see := func(name, title string) {
		if strings.EqualFold(name, word) {
			by[0] = append(by[0], name)
		}
		if strings.EqualFold(title, word) {
			by[1] = append(by[1], name)
		}
	}
	for _, e := range c.Enclosures {
		see(e.Name.V, e.Shown())
	}
	for _, k := range c.Racks {
		see(k.Name.V, k.Shown())
	}
	for _, s := range c.Stores {
		see(s.Name.V, s.Shown())
	}
	for _, names := range by {
		if len(names) == 1 {
			return names[0]
		}
	}
	return ""
}

// ofBlock returns the enclosures of a block with numbers.
func ofBlock(c *plan.Collection, name string) (all []string) {
	for _, e := range c.Enclosures {
		if e.Of == name {
			all = append(all, e.Name.V)
		}
	}
	return all
}

// each are the words that may be said of a rack or a block with numbers as a whole, though
// they are about animals: what is done at each of the boxes alike.
var each = []*schema.LogWord{schema.WordFed, schema.WordRefused, schema.WordSeen, schema.WordDone, schema.WordSkipped, schema.WordRemark}

// boxes puts the enclosures of a rack in the place of its name, where a word is about
// animals or about care that is not done once for all in it.
func (x *who) boxes(c *plan.Collection, word *schema.LogWord, care string) error {
	for _, name := range x.whole {
		if !slices.Contains(each, word) {
			return fmt.Errorf("%q is several enclosures: of which of them is %s?", name, word.Name)
		}
	}
	var all []string
	for _, name := range x.names {
		k := c.Rack(name)
		if c.Enclosure(name) != nil || k == nil || !slices.Contains(each, word) || word == schema.WordRemark || onceForAll(k, care) {
			all = append(all, name)
			continue
		}
		for _, e := range k.Enclosures {
			all = append(all, e.Name.V)
		}
	}
	x.names = slices.Compact(all)
	return nil
}

// onceForAll reports whether a care is done once for all that stand in a rack.
func onceForAll(k *plan.Rack, care string) bool {
	return slices.ContainsFunc(schema.CareKinds, func(kind *schema.CareKind) bool {
		return kind.OfRack != "" && (kind.OfRack == care || kind.Name == care) && k.Does(kind)
	})
}
