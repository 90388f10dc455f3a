package plan

import (
	"cmp"
	"errors"
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/syntax"
	"vivary/schema"
	"vivary/schema/wording"
)

// Apart is a number block: what differs in some enclosures of a block with numbers.
type Apart struct {
	Head
	Title    Written[string] `care:"title"`
	Template Written[string] `care:"template"`
	Formerly Written[string] `care:"formerly"`
	Body

	Numbers Spans // of its label
}

// apart reads the labels of the number blocks in an enclosure.
func (d *decoder) apart(e *Enclosure) {
	for _, a := range e.Apart {
		if !a.Name.Set() {
			continue
		}
		var err error
		if a.Numbers, err = ParseSpans(a.Name.V); err != nil {
			f := finding.Finding{Rule: ruleValue, At: a.Name.At, Text: err.Error(), Write: "behind number, in quotes, one number or several: 7, 31 to 40, or 3, 5, 9"}
			var spans spanError
			if errors.As(err, &spans) && spans.instead != "" {
				f.Write, f.Edits = "number "+quote(spans.instead), finding.Instead(a.Name.At, a.Name.V, spans.instead)
			}
			d.found.Add(f)
		}
	}
}

// numberList finds numbers that are written as a list, and reports whether they are.
func (d *decoder) numberList(x *syntax.Value, attr *schema.Attr) bool {
	if x.Kind != syntax.List {
		return false
	}
	var texts []string
	for _, item := range d.items(x, attr) {
		texts = append(texts, item.Text)
	}
	f := finding.Finding{Rule: ruleValue, At: x.At, Text: attr.Name + " is one text, not a list", Write: attr.Form()}
	if all, err := ParseSpans(strings.Join(texts, ", ")); err == nil {
		f.Write, f.Edits = attr.Name+" = "+quote(all.String()), []finding.Edit{{At: f.At, Text: quote(all.String())}}
	}
	d.found.Add(f)
	return true
}

// numbered are the enclosures that a block with numbers stands for.
type numbered struct {
	all   []*Enclosure
	found finding.List
}

// number puts in place of each block with numbers the enclosures that it stands for, each
// as if it were written out. Those of a block that is the same as in the load before are
// the same.
func (r *resolver) number() {
	if !slices.ContainsFunc(r.blocks.enclosures, func(e *Enclosure) bool { return e.Numbers.tried() || len(e.Apart) > 0 }) {
		return
	}
	before := r.numbered
	r.c.numbered, r.several = map[*Enclosure]*numbered{}, map[string]*Enclosure{}
	bound := &expansion{MaxEnclosures, maxInner, maxAbout}
	var written, several []*Enclosure
	for _, e := range r.blocks.enclosures {
		switch {
		case !e.Numbers.tried():
			written = append(written, e)
			if len(e.Apart) > 0 {
				r.found.Add(finding.Finding{Rule: ruleMissing, At: e.Apart[0].At, Text: "enclosure" + named(&e.Head) + " has no numbers: it is one enclosure, and a number block is about one of several",
					Write: "in the enclosure, which numbers there are, as numbers; or, in place of this block, what it says"})
			}
		case !e.Numbers.Set() || e.Name.V == "" || !bound.admits(r, e):
			r.unread.whole = true // which they are is not known
		default:
			n := before[e]
			if n == nil {
				n = e.each()
			}
			r.c.numbered[e] = n
			several = append(several, e)
			r.several[e.Name.V] = e
			r.found.All = append(r.found.All, n.found.All...)
			for _, a := range e.Apart {
				r.strays(e, a)
			}
		}
	}
	r.blocks.enclosures = r.onlyOnce(written, several)
}

// onlyOnce returns the enclosures that are written out and those of blocks with numbers,
// each name once.
func (r *resolver) onlyOnce(all, several []*Enclosure) []*Enclosure {
	named := make(map[string]*Enclosure, len(all))
	for _, e := range all {
		named[e.Name.V] = e
	}
	for _, block := range several {
		if o := named[block.Name.V]; o != nil && o.Of == "" {
			r.found.Add(finding.Finding{Rule: ruleTwice, At: block.Name.At, Text: "enclosure " + quote(block.Name.V) + " is there alone and with numbers: " + quote(block.Name.V) + " could mean either",
				Write: "another name for the one, and its name of now as formerly", Also: []finding.Related{{At: o.At, Text: "the one"}}})
		}
		again := map[source.Place][]*Enclosure{} // by the block that has them too
		var others []*Enclosure
		for _, e := range r.c.numbered[block].all {
			o := named[e.Name.V]
			if o == nil {
				named[e.Name.V] = e
				all = append(all, e)
				continue
			}
			if again[o.Whole] == nil {
				others = append(others, o)
			}
			again[o.Whole] = append(again[o.Whole], e)
		}
		r.repeated(block, others, again)
	}
	return all
}

// repeated finds enclosures of a block with numbers that others have too.
func (r *resolver) repeated(block *Enclosure, others []*Enclosure, again map[source.Place][]*Enclosure) {
	var out []*Enclosure // written out
	for _, o := range others {
		if o.Of == "" {
			out = append(out, o)
			continue
		}
		same := again[o.Whole]
		r.found.Add(finding.Finding{Rule: ruleTwice, At: block.Numbers.At, Text: theirNames(same) + " stand in another block with numbers too", Write: "each number in one of the two only",
			Also: []finding.Related{{At: o.At, Text: "the other"}}})
	}
	if len(out) == 0 {
		return
	}
	var gone Spans
	f := finding.Finding{Rule: ruleTwice, At: block.Numbers.At, Text: theirNames(out) + " stand among these numbers, and are written out besides"}
	plain := true
	for i, o := range out {
		if i < namedAtOnce {
			f.Also = append(f.Also, finding.Related{At: o.At, Text: "written out"})
		}
		e := again[o.Whole][0]
		gone = append(gone, Span{Low: e.number, High: e.number})
		plain = plain && len(e.apart) == 0
	}
	slices.SortFunc(gone, func(a, b Span) int { return cmp.Compare(a.Low, b.Low) })
	f.Write = "what is written out as number blocks here, and no blocks besides"
	if left := block.Numbers.V.less(gone); len(left) > 0 && plain {
		f.Write, f.Edits = "numbers = "+quote(left.String()), inQuotes(block.Numbers.At, left.String())
	}
	r.found.Add(f)
}

// namedAtOnce is how many enclosures are named in one finding.
const namedAtOnce = 12

// theirNames names enclosures.
func theirNames(all []*Enclosure) string {
	var names []string
	for i, e := range all {
		if i == namedAtOnce {
			names = append(names, strconv.Itoa(len(all)-i)+" more")
			break
		}
		names = append(names, e.Name.V)
	}
	return wording.And(names)
}

// inQuotes writes another text into the quotes at a place.
func inQuotes(at source.Place, text string) []finding.Edit {
	at.Start, at.End = at.Start+1, at.End-1
	return []finding.Edit{{At: at, Text: text}}
}

// Bounds on what blocks with numbers stand for.
const (
	maxInner = 50 * MaxEnclosures // blocks within their enclosures
	maxAbout = 10 * MaxEnclosures // enclosures that number blocks are about, each counted for itself
	maxFacts = 200                // number blocks about one enclosure
)

// expansion is how much more blocks with numbers may stand for.
type expansion struct{ enclosures, inner, about int }

// admits reports whether a block with numbers is within the bounds, and says so where it
// is not.
func (x *expansion) admits(r *resolver, e *Enclosure) bool {
	n := e.Numbers.V.Count()
	x.enclosures -= n
	x.inner -= n * e.inner()
	for _, a := range e.Apart {
		x.about -= a.Numbers.Count()
		x.inner -= a.Numbers.Count() * a.inner()
	}
	f := finding.Finding{Rule: ruleTooMany, At: e.Numbers.At}
	switch {
	case x.enclosures < 0:
		f.Text = "with these numbers there are " + strconv.Itoa(MaxEnclosures-x.enclosures) + " enclosures"
		f.Limit, f.Write = strconv.Itoa(MaxEnclosures)+" enclosures in a collection", "the numbers of the enclosures that there are"
	case x.about < 0:
		f.Text = "the number blocks are about " + strconv.Itoa(maxAbout-x.about) + " enclosures, if each is counted for itself"
		f.Limit, f.Write = strconv.Itoa(maxAbout)+" in a collection", "what several have in common in the enclosure itself"
	case x.inner < 0:
		f.Text = "with these numbers there are " + strconv.Itoa(maxInner-x.inner) + " blocks within enclosures"
		f.Limit, f.Write = strconv.Itoa(maxInner)+" in all enclosures with numbers", "fewer numbers, or fewer blocks"
	default:
		return true
	}
	r.found.Add(f)
	return false
}

// inner is how many blocks stand in it.
func (b *Body) inner() int {
	return len(b.Animals) + len(b.Care) + len(b.Feeding) + len(b.Seasons) + len(b.Accepts)
}

// each returns the enclosures that a block with numbers stands for, each as if it were
// written out. They share whatever is the same in several.
func (e *Enclosure) each() *numbered {
	out := &numbered{}
	last := e.Numbers.V[len(e.Numbers.V)-1]
	if longest := e.Name.V + "-" + last.write(last.High); validName(e.Name.V) && !validName(longest) {
		out.found.Add(finding.Finding{Rule: ruleValue, At: e.Name.At, Text: quote(longest) + " cannot be a name: it has more than 60 characters", Write: "a shorter name, and the name of now as formerly"})
	}
	about := map[int][]int{} // the number blocks about each number
	for i, a := range e.Apart {
		for _, x := range a.Numbers {
			for n := x.Low; n <= x.High; n++ {
				if about[n] = append(about[n], i); len(about[n]) == maxFacts+1 {
					out.found.Add(finding.Finding{Rule: ruleTooMany, At: a.At, Text: "there are more number blocks about " + e.Name.V + "-" + x.write(n) + " than are read",
						Limit: strconv.Itoa(maxFacts) + " about one enclosure", Write: "enclosure " + quote(e.Name.V+"-"+x.write(n)) + " written out, and the number not in numbers"})
				}
			}
		}
	}
	made := map[string]*Enclosure{}
	said := map[source.Place]bool{}
	for _, x := range e.Numbers.V {
		for n := x.Low; n <= x.High; n++ {
			about[n] = about[n][:min(len(about[n]), maxFacts)]
			key := fmt.Sprint(about[n])
			one := made[key]
			if one == nil {
				one = e.with(about[n])
				made[key] = one
				saidTwice(e, one.apart, said, &out.found)
			}
			out.all = append(out.all, one.numbered(n, x.write(n)))
		}
	}
	return out
}

// with returns what the block says of the enclosures that some of its number blocks are
// about. It has no number yet.
func (e *Enclosure) with(about []int) *Enclosure {
	own := &Enclosure{Head: e.Head, Of: e.Name.V}
	for _, i := range about {
		merge(reflect.ValueOf(own).Elem(), reflect.ValueOf(e.Apart[i]).Elem())
		own.apart = append(own.apart, e.Apart[i])
	}
	merge(reflect.ValueOf(own).Elem(), reflect.ValueOf(e).Elem())
	own.Numbers, own.Apart = Written[Spans]{}, nil
	return own
}

// numbered returns the enclosure of a number. What is said of several has the number after
// it: a former name as the label writes it that says so, since zeros before it may be new.
func (e *Enclosure) numbered(n int, number string) *Enclosure {
	one := *e
	one.number = n
	one.Name.V += "-" + number
	if one.Title.Set() {
		if by := e.saidBy(one.Title.At); by == nil || by.Numbers.Count() > 1 {
			one.Title.V += " " + number
		}
	}
	if one.Formerly.Set() {
		switch by := e.saidBy(one.Formerly.At); {
		case by == nil:
			one.Formerly.V += "-" + number
		case by.Numbers.Count() > 1:
			one.Formerly.V += "-" + by.Numbers.write(n)
		}
	}
	return &one
}

// saidBy returns the number block in which a place is, or nil.
func (e *Enclosure) saidBy(at source.Place) *Apart {
	if i := slices.IndexFunc(e.apart, func(a *Apart) bool { return a.says(at) }); i >= 0 {
		return e.apart[i]
	}
	return nil
}

// says reports whether a place is in the block.
func (h *Head) says(at source.Place) bool {
	return at.Written() && at.File == h.Whole.File && h.Whole.Start <= at.Start && at.End <= h.Whole.End
}

// strays finds numbers of a number block that its enclosure does not have.
func (r *resolver) strays(e *Enclosure, a *Apart) {
	away := a.Numbers.strays(e.Numbers.V)
	if len(away) == 0 {
		return
	}
	f := finding.Finding{Rule: ruleUnknownName, At: a.Name.At, Text: away.String() + " is not among the numbers of enclosure" + named(&e.Head) + ", " + quote(e.Numbers.V.String()),
		Write: "a number that is there; or the number in numbers, where there is such an enclosure", Also: []finding.Related{{At: e.Numbers.At, Text: "the numbers"}}}
	last := e.Numbers.V[len(e.Numbers.V)-1]
	switch left := a.Numbers.less(away); {
	case len(left) > 0:
		f.Edits = inQuotes(a.Name.At, left.String())
	case away[len(away)-1].High < last.High: // one that was taken out
		f.Edits = finding.Without(r.c.Files.Text(a.Whole.File), a.Whole)
	case len(away) == 1 && away[0].Low == last.High+1: // those that were added
		more := slices.Clone(e.Numbers.V)
		more[len(more)-1].High = away[0].High
		f.Edits = inQuotes(e.Numbers.At, more.String())
	}
	r.found.Add(f)
}
