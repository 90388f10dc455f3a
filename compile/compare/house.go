package compare

import (
	"cmp"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/plan/change"
	"vivary/schema"
	"vivary/schema/civil"
)

// house stands in a key in place of an enclosure where a thing is about the house around the
// animals: its feeder animals, its dates, its people.
const house = "\x00house"

// matter is one thing that is so in the house of a compilation. Those of two compilations with the
// same key are compared by what they mean.
type matter struct {
	key   string
	topic Topic
	of    string // the block that it is about, by its name
	where string // the same as people know it
	name  string // as in "orders"
	text  string
	means string // what is compared in place of the text; "" for that
	rank  float64
	// each are what it comes to day by day, of which the first that differs is told.
	each []when
	// blocks are the outermost blocks that may change it, each as its type and name; where none of
	// them did anything may have.
	blocks []string
	from   civil.Date // the first day on which it is felt, where each has none; 0 for today
	minor  bool       // it is not told where the whole block came or went
}

// when is what a matter comes to on a day; whole is all of it, "" where that is the text.
type when struct {
	on          civil.Date
	text, whole string
}

func (w *when) same(o *when) bool { return w.on == o.on && w.text == o.text && w.whole == o.whole }

// aHouse are the matters of a compilation, in the order in which they are told. beside is the other
// one: of what neither knows nothing is told.
func aHouse(r, beside *compile.Result) []matter {
	return slices.Concat(feedersOf(r, beside), datesOf(r), figuresOf(r, beside))
}

// theHouse are the effects on the house around the animals. Those of them that are about food
// that lacks are for the animals, and have a way of their own.
func (r *Report) theHouse() []Effect {
	was, is := aHouse(r.Was, r.Is), aHouse(r.Is, r.Was)
	at := make(map[string]int, len(was))
	for i := range was {
		at[was[i].key] = i
	}
	var out []Effect
	add := func(a, b *matter) {
		switch {
		case a == nil && b.minor, b == nil && a.minor:
		case a == nil || b == nil || !a.same(b):
			out = append(out, r.becomes(a, b))
		}
	}
	for i := range is {
		if k, both := at[is[i].key]; both {
			delete(at, is[i].key)
			add(&was[k], &is[i])
		} else {
			add(nil, &is[i])
		}
	}
	for i := range was {
		if _, left := at[was[i].key]; left {
			add(&was[i], nil)
		}
	}
	return out
}

// same reports whether two matters of one key are no change.
func (m *matter) same(o *matter) bool {
	return cmp.Or(m.means, m.text) == cmp.Or(o.means, o.text) &&
		slices.EqualFunc(m.each, o.each, func(a, b when) bool { return a.same(&b) })
}

// becomes is what becomes of a matter; one of the two may be nil.
func (r *Report) becomes(a, b *matter) Effect {
	var none matter
	m := b
	if m == nil {
		m, b = a, &none
	}
	if a == nil {
		a = &none
	}
	e := Effect{Way: Otherwise, Topic: m.topic, Of: []string{m.of}, Where: m.where, Name: m.name, Was: a.text, Is: b.text, keys: []key{{house, m.key}},
		blocks: slices.Concat(a.blocks, b.blocks)}
	if a != &none && b != &none {
		switch {
		case b.rank > a.rank:
			e.Way = Worse
		case b.rank < a.rank:
			e.Way = Better
		}
	}
	felt := func(d civil.Date) {
		if d > 0 && (e.From == 0 || d < e.From) {
			e.From = d
		}
	}
	felt(a.from)
	felt(b.from)
	i := 0
	for i < len(a.each) && i < len(b.each) && a.each[i].same(&b.each[i]) {
		i++
	}
	if i < len(a.each) && i < len(b.each) { // what is the same all in all is not said
		x, y := &a.each[i], &b.each[i]
		if e.Was == e.Is {
			e.Was, e.Is = "", ""
		}
		if x.text == y.text && x.whole != y.whole {
			x, y = &when{on: x.on, text: x.whole}, &when{on: y.on, text: y.whole}
		}
		e.Was, e.Is = joined(e.Was, x.text), joined(e.Is, y.text)
		felt(x.on)
		felt(y.on)
	} else if i < len(a.each) {
		e.Was = joined(e.Was, a.each[i].text)
		felt(a.each[i].on)
	} else if i < len(b.each) {
		e.Is = joined(e.Is, b.each[i].text)
		felt(b.each[i].on)
	}
	if i == 0 && (len(a.each) == 0 || len(b.each) == 0) { // all of it came or went
		e.Was, e.Is = strings.Replace(e.Was, differs, "; the first: ", 1), strings.Replace(e.Is, differs, "; the first: ", 1)
	}
	if e.From <= r.Is.Today {
		e.From = 0
	}
	return e
}

// differs stands before the one of many that is told.
const differs = "; the first that differs: "

func joined(a, b string) string { return strings.TrimPrefix(a+differs+b, differs) }

// around compares the house, and finds what causes each change of it. What lacks is told with
// what changes for the animals.
func (r *Report) around(try Try) {
	all := r.theHouse()
	if len(all) == 0 {
		return
	}
	r.causes(try, all, func(part *Report) [][]Effect { return [][]Effect{part.theHouse()} })
	for _, e := range all {
		r.withSeller(&e)
		if e.Topic == Food {
			e.keys = []key{{"", e.keys[0].fact}}
			e.Name, e.Of, e.Where = e.Where+", "+e.Name, nil, ""
			r.Effects = append(r.Effects, e)
			continue
		}
		e.Way = Otherwise
		r.House = append(r.House, e)
	}
	slices.SortStableFunc(r.House, func(a, b Effect) int { return cmp.Compare(a.Topic, b.Topic) })
}

// withSeller adds a seller who came or went together with a supply to what causes an effect: without
// the one the other cannot be read, so that trying tells nothing of it.
func (r *Report) withSeller(e *Effect) {
	whole := func(i int, kind *schema.Block) bool {
		p := &r.Pieces[i]
		return p.Type == kind.Name && p.Attr == "" && len(p.In) == 0
	}
	if !slices.ContainsFunc(e.Cause, func(i int) bool { return whole(i, schema.Supply) }) {
		return
	}
	for i := range r.Pieces {
		if whole(i, schema.Seller) && slices.Contains(e.blocks, schema.Seller.Name+" "+r.Pieces[i].Name) && !slices.Contains(e.Cause, i) {
			e.Cause = append(slices.Clone(e.Cause), i)
		}
	}
	slices.Sort(e.Cause)
}

// stored are the blocks of feeder animals and of the dates of a house, which mean nothing to the
// enclosures by themselves.
var stored = []string{schema.Seller.Name, schema.Supply.Name, schema.Tub.Name, schema.Culture.Name, schema.Deadline.Name}

// aside reports whether a piece is of the house: of a block of feeder animals or of a date.
func (w *trials) aside(p *change.Piece) bool {
	if !p.Log() {
		return slices.Contains(stored, p.Type)
	}
	for _, r := range []*compile.Result{w.r.Was, w.r.Is} {
		if r.Plan.Store(p.Name) != nil {
			return true
		}
	}
	return strings.HasPrefix(p.Name, schema.LogDeadline+" ")
}

// inHouse are the pieces that may bring a change of the house: those of the blocks that it is made
// of and of the log about them, and what is no block of the house. Where it can only be one of its
// own blocks nothing else is asked for.
func (w *trials) inHouse(e *Effect) (out []int) {
	var others []int
	for i := range w.r.Pieces {
		p := &w.r.Pieces[i]
		named := func(name string) bool {
			return name != "" && slices.ContainsFunc(e.blocks, func(b string) bool {
				return b == p.Type+" "+name || p.Log() && (strings.HasSuffix(b, " "+name) || b == name)
			})
		}
		switch {
		case named(p.Name) || named(p.Before):
			out = append(out, i)
		case !w.aside(p) && !p.Library, p.Library && p.Type == "feeder" && e.Topic != Dates:
			others = append(others, i)
		}
	}
	if e.Topic == Dates && len(out) > 0 {
		return out
	}
	out = append(out, others...)
	slices.Sort(out)
	return out
}

// houseSection is what changes of one topic of the house.
func (r *Report) houseSection(head string, topic Topic) Section {
	return r.section(head, r.House, func(e *Effect) bool { return e.Topic == topic }, func(e *Effect) Line {
		return Line{Where: e.Where, Text: e.Name + ": " + becomes(e.Was, e.Is)}
	})
}
