package plan

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"vivary/schema/quantity"
	"vivary/schema/slip"
)

// PreyNames is what is meant by prey that does not stand as the sheets have it.
type PreyNames struct {
	Feeders []*FeederSheet // that are called so; of several none is meant
	Prey    Prey           // by the names of the sheets, where feeder and size are known
	Rest    string         // what is written beside the feeder: nothing, or no size of it
	Measure string         // the length of the size that was taken for a measure; else empty
}

// ByOtherPrey looks for the feeder and its size that are written by other names: the
// common one, several of them, a trade name, the scientific name, a size by its length. The
// size may stand before the feeder, and some sizes have names of their own ("hydei"). What
// several feeders are called is never told apart by the size.
func (l *Library) ByOtherPrey(p Prey) (n PreyNames) {
	words := slices.DeleteFunc(strings.Fields(p.String()), func(w string) bool { return sayNothing[strings.ToLower(w)] })
	if f, size := l.sizeAlone(strings.Join(words, " ")); size != nil {
		return PreyNames{Feeders: []*FeederSheet{f}, Prey: Prey{f.Name.V, size.Name.V}}
	}
	for split := len(words); split > 0; split-- {
		for _, w := range [][2]string{
			{strings.Join(words[:split], " "), strings.Join(words[split:], " ")},
			{strings.Join(words[len(words)-split:], " "), strings.Join(words[:len(words)-split], " ")},
		} {
			feeders := l.feedersCalled(w[0])
			if len(feeders) == 1 {
				if size, measure := feeders[0].sizeCalled(w[1]); size != nil {
					return PreyNames{Feeders: feeders, Prey: Prey{feeders[0].Name.V, size.Name.V}, Measure: measure}
				}
			}
			if n.Feeders == nil { // of more words than any that follows
				n = PreyNames{Feeders: feeders, Rest: w[1]}
			}
			if len(n.Feeders) > 1 {
				return n
			}
		}
	}
	return n
}

// sayNothing are words that say neither which feeder nor which size.
var sayNothing = map[string]bool{"live": true, "feeder": true, "feeders": true, "some": true}

// feedersCalled returns the feeders of a name: the one whose sheet is named so, else all
// that are called so, one or several of them, however the words are put together.
func (l *Library) feedersCalled(name string) (all []*FeederSheet) {
	if f := l.Feeder(slug(name)); f != nil {
		return []*FeederSheet{f}
	}
	want := oneOf(name)
	for _, of := range l.FeederNames() {
		f := l.Feeder(of)
		if want != "" && slices.ContainsFunc(f.Names(), func(n string) bool { return oneOf(n) == want }) {
			all = append(all, f)
		}
	}
	return all
}

// Names returns all that a feeder is called: the name of its sheet, the common one,
// several of them, the scientific one and the others.
func (f *FeederSheet) Names() []string {
	all := []string{f.Name.V, f.Title.V, f.Plural.V}
	if latin := strings.Fields(f.Latin.V); len(latin) > 1 {
		of := strings.Trim(latin[1], ",")
		all = append(all, latin[0]+" "+of, latin[0][:1]+" "+of)
	}
	for _, w := range f.Also {
		all = append(all, w.V)
	}
	return slices.DeleteFunc(all, func(n string) bool { return n == "" })
}

// plurals are the ends of words that stand for several of a thing, and for one.
var plurals = [][2]string{{"flies", "fly"}, {"mice", "mouse"}, {"lice", "louse"}, {"larvae", "larva"}, {"pupae", "pupa"}, {"roaches", "roach"}, {"ies", "y"}, {"ss", "ss"}, {"s", ""}}

// oneOf returns a name of one animal without what parts its words: "Fruit flies" and
// "fruitfly" are the same.
func oneOf(name string) string {
	s := strings.ReplaceAll(slug(name), "-", "")
	for _, p := range plurals {
		if begin, ok := strings.CutSuffix(s, p[0]); ok && begin != "" {
			return begin + p[1]
		}
	}
	return s
}

// sizeAlone returns the size that is called so without its feeder.
func (l *Library) sizeAlone(name string) (*FeederSheet, *FeederSize) {
	want := oneOf(name)
	if want == "" || l.Feeder(slug(name)) != nil {
		return nil, nil
	}
	for _, of := range l.FeederNames() {
		for _, s := range l.Feeder(of).Sizes {
			if slices.ContainsFunc(s.Alone, func(w Written[string]) bool { return oneOf(w.V) == want }) {
				return l.Feeder(of), s
			}
		}
	}
	return nil, nil
}

// sizeCalled returns the size class of a name, its own or another, or of a length; then
// also the length that it has. It is nil for none.
func (f *FeederSheet) sizeCalled(name string) (size *FeederSize, measure string) {
	want := slug(name)
	if want == "" && len(f.Sizes) == 1 {
		return f.Sizes[0], "" // there is no other
	}
	for _, s := range f.Sizes {
		if slug(s.Name.V) == want || slices.ContainsFunc(s.Also, func(w Written[string]) bool { return slug(w.V) == want }) {
			return s, ""
		}
	}
	if mm, ok := longAs(name); ok {
		return f.sizeOf(mm)
	}
	return nil, ""
}

// sizeOf returns the size that is nearest to a length by the share in which they differ, if
// that is not more than a third.
func (f *FeederSheet) sizeOf(mm float64) (size *FeederSize, measure string) {
	least := math.Log(4. / 3)
	for _, s := range f.Sizes {
		if l := s.Length.V; s.Length.Set() && l.Low > 0 {
			off := max(0, math.Log(l.Low/mm), math.Log(mm/l.High))
			if off < least {
				size, least, measure = s, off, l.String()
			}
		}
	}
	return size, measure
}

var longForm = regexp.MustCompile(`(?i)^(?:(\d+)/(\d+)|(half|quarter|eighth)|(\d+(?:\.\d+)?))\s*-?\s*(inch|inches|in|"|″|mm|cm)$`)

// longAs reads a length as sellers write it, in millimetres: "1/2 inch", "half inch", "10 mm".
func longAs(s string) (mm float64, ok bool) {
	m := longForm.FindStringSubmatch(strings.TrimSpace(s))
	if m == nil {
		return 0, false
	}
	part := map[string]float64{"half": 1. / 2, "quarter": 1. / 4, "eighth": 1. / 8}
	n, _ := strconv.ParseFloat(m[4], 64)
	if over, err := strconv.ParseFloat(m[2], 64); err == nil && over > 0 {
		n, _ = strconv.ParseFloat(m[1], 64)
		n /= over
	} else if m[3] != "" {
		n = part[strings.ToLower(m[3])]
	}
	unit := strings.ToLower(m[5])
	if unit != "mm" && unit != "cm" {
		unit = "in"
	}
	q, err := quantity.Parse(strconv.FormatFloat(n, 'f', -1, 64)+" "+unit, quantity.Length)
	return q.Value, err == nil && q.Value > 0
}

// nearPrey returns the prey that may be meant by a word that is the name of a size alone
// ("bluebottle"), the feeders in whose names a word stands ("fly"), and those of whose
// names it is a slip of the pen, by the names of the sheets. None of it is ever taken.
func (l *Library) nearPrey(written string) (near []string) {
	want := slug(written)
	for _, of := range l.FeederNames() {
		f := l.Feeder(of)
		for _, s := range f.Sizes {
			if len(want) > 4 && (slug(s.Name.V) == want || slices.ContainsFunc(s.Also, func(w Written[string]) bool { return slug(w.V) == want })) {
				near = append(near, Prey{f.Name.V, s.Name.V}.String())
			}
		}
	}
	if len(near) > 0 && len(near) <= 2 { // more is a word such as small, which tells nothing
		return near
	}
	words := strings.Split(want, "-")
	near = nil
	for _, of := range l.FeederNames() {
		if slices.ContainsFunc(l.Feeder(of).Names(), func(n string) bool { return nearFeeder(words, n) }) {
			near = append(near, of)
		}
	}
	if len(near) > mostNear {
		return nil
	}
	return near
}

// nearFeeder reports whether a feeder of that name may be meant by some words, of which the
// first or the last may be a size.
func nearFeeder(words []string, name string) bool {
	if len(words) == 1 && slices.Contains(strings.Split(slug(name), "-"), words[0]) {
		return true
	}
	its := oneOf(name)
	for _, w := range [][]string{words, words[:len(words)-1], words[1:]} {
		if typed := oneOf(strings.Join(w, "-")); len(typed) > 4 && slip.Between(typed, its) <= slip.Most(typed) {
			return true
		}
	}
	return false
}
