package keys

import (
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclwrite"
	"github.com/zclconf/go-cty/cty"

	"vivary/compile/identity"
	"vivary/plan"
)

// Named is the name of a calendar or a keeper, and the one that it had first, by which an
// address is kept for it however often it is called otherwise.
type Named struct{ Name, First string }

// Former is what bore an address before.
type Former struct {
	Names []string // the one that it had first is the first of them
	Keys  []Key    // besides its own, of which each leads there as well
}

// For returns what a collection needs keys for, of which these calendars stand in a folder.
func For(c *plan.Collection, calendars []string) Wanted {
	want := Wanted{Title: c.Title()}
	for _, x := range c.Calendars {
		if slices.Contains(calendars, x.Name.V) {
			want.Calendars = with(want.Calendars, Named{x.Name.V, identity.Calendar(x)})
		}
	}
	for _, name := range calendars {
		if !slices.ContainsFunc(want.Calendars, func(n Named) bool { return n.Name == name }) {
			want.Standing = append(want.Standing, name)
		}
	}
	for _, k := range c.Keepers {
		want.Keepers = with(want.Keepers, Named{k.Name.V, identity.Keeper(k)})
	}
	return want
}

// Led returns the names of before by which calendars can have been fetched, each with the name
// of now. A ring knows more of them than a plan; it may be nil.
func (want *Wanted) Led(r *Ring) map[string]string {
	out := map[string]string{}
	for _, n := range want.Calendars {
		names := []string{n.First}
		if r != nil {
			names = append(names, r.Former["calendar "+n.Name].Names...)
		}
		for _, name := range names {
			if !slices.ContainsFunc(want.Calendars, func(o Named) bool { return o.Name == name }) {
				out[name] = n.Name
			}
		}
	}
	return out
}

// Leads returns the keys that lead to a calendar, its own first; none where it has none.
func (r *Ring) Leads(calendar string) []Key {
	own := r.Calendars[calendar]
	if own == "" {
		return nil
	}
	return append([]Key{own}, r.Former["calendar "+calendar].Keys...)
}

// with adds a name, unless it has none or there is one already: of a plan with a mistake.
func with(all []Named, n Named) []Named {
	if n.Name == "" || slices.ContainsFunc(all, func(o Named) bool { return o.Name == n.Name }) {
		return all
	}
	return append(all, n)
}

// was reports whether a calendar that is called otherwise now had a name.
func (r *Ring) was(word, name string) bool {
	for of, f := range r.Former {
		if of != word+" "+name && strings.HasPrefix(of, word+" ") && slices.Contains(f.Names, name) {
			return true
		}
	}
	return false
}

// owner returns the one of those wanted whose block bears a name now: the one that had that
// name first; else the one that has it; else the one whose first name the block had, since
// a plan may name the wrong one of several as the first.
func (r *Ring) owner(word, name string, wanted []Named) (at int, first bool) {
	names := r.Former[word+" "+name].Names
	id := name
	if len(names) > 0 {
		id = names[0]
	}
	if at = slices.IndexFunc(wanted, func(n Named) bool { return n.First == id }); at >= 0 {
		return at, true
	}
	if at = slices.IndexFunc(wanted, func(n Named) bool { return n.Name == name }); at >= 0 {
		return at, false
	}
	return slices.IndexFunc(wanted, func(n Named) bool { return n.First == name || slices.Contains(names, n.First) }), false
}

// rename gives blocks the names that a plan has now for what they are of. Where there is
// more than one for a name (a plan that was built before it said "formerly") they become one,
// to which both addresses lead. It reports whether the file has changed.
func (r *Ring) rename(body *hclwrite.Body, word string, wanted []Named) (changed bool) {
	own := make([][]*hclwrite.Block, len(wanted))
	for _, b := range body.Blocks() {
		if b.Type() != word || len(b.Labels()) != 1 {
			continue
		}
		switch i, first := r.owner(word, b.Labels()[0], wanted); {
		case i >= 0 && first:
			own[i] = slices.Insert(own[i], 0, b)
		case i >= 0:
			own[i] = append(own[i], b)
		}
	}
	for i, n := range wanted {
		if len(own[i]) > 0 && r.join(body, n, own[i]) {
			changed = true
		}
	}
	return changed
}

// join makes one block of those that are of one thing.
func (r *Ring) join(body *hclwrite.Body, n Named, all []*hclwrite.Block) (changed bool) {
	word, called := all[0].Type(), all[0].Labels()[0]
	was := r.Former[word+" "+called]
	names, also, mail := []string{n.First}, slices.Clone(was.Keys), r.Keepers[called].Mail
	for _, b := range all {
		name := b.Labels()[0]
		names = append(append(names, r.Former[word+" "+name].Names...), name)
		if b == all[0] {
			continue
		}
		also = append(append(also, r.key(word, name)), r.Former[word+" "+name].Keys...)
		if mail == "" && word == "keeper" {
			mail = r.Keepers[name].Mail
		}
		body.RemoveBlock(b)
	}
	names = distinct(names, n.Name)
	if called == n.Name && slices.Equal(names, was.Names) && len(all) == 1 {
		return false
	}
	all[0].SetLabels([]string{n.Name})
	in := all[0].Body()
	if len(names) > 0 {
		in.SetAttributeValue("formerly", texts(names))
	}
	if len(also) > 0 {
		in.SetAttributeValue("also", texts(also))
	}
	if mail != "" {
		in.SetAttributeValue("mail", cty.StringVal(mail))
	}
	return true
}

func (r *Ring) key(word, name string) Key {
	if word == "keeper" {
		return r.Keepers[name].Key
	}
	return r.Calendars[name]
}

// distinct are names without those that come again, and without the one of now unless it is
// the first one.
func distinct(names []string, now string) (out []string) {
	for i, name := range names {
		if !slices.Contains(out, name) && (i == 0 || name != now) {
			out = append(out, name)
		}
	}
	if len(out) == 1 && out[0] == now {
		return nil
	}
	return out
}

func texts[T ~string](all []T) cty.Value {
	out := make([]cty.Value, len(all))
	for i, x := range all {
		out[i] = cty.StringVal(string(x))
	}
	return cty.ListVal(out)
}
