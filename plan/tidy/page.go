package tidy

import (
	"bytes"
	"cmp"
	"slices"
	"strings"

	"vivary/plan"
	"vivary/plan/syntax"
	"vivary/schema"
)

// unit is what stands in no block: an outermost block, or what is left as it is.
type unit struct {
	from, to int
	block    *syntax.Block // nil for what is left as it is
}

// units are those of a file, in the order of their lines. A block that no plan has is left as it
// is: it likely belongs into another, and how it is indented says into which.
func (p *page) units(o plan.Tree) (all []unit) {
	asItIs := func(from, to int) {
		to = from + len(bytes.TrimRight(p.src[from:to], " \t\r\n"))
		all = append(all, unit{from: p.indented(from), to: to})
	}
	for _, b := range o.Blocks {
		if schema.Plan.Block(b.Type) == nil {
			asItIs(int(b.Whole.Start), int(b.Whole.End))
		} else {
			all = append(all, unit{int(b.Whole.Start), int(b.Whole.End), b})
		}
	}
	for _, r := range o.Broken {
		asItIs(int(r.At.Start), int(r.At.End))
	}
	for _, a := range o.Loose {
		asItIs(int(a.At.Start), int(a.At.End))
	}
	slices.SortFunc(all, func(a, b unit) int { return cmp.Compare(a.from, b.from) })
	return p.byLines(all)
}

// indented is where a line begins whose first character is at a byte, or that byte.
func (p *page) indented(from int) int {
	line := bytes.LastIndexByte(p.src[:from], '\n') + 1
	if len(bytes.TrimSpace(p.src[line:from])) == 0 {
		return line
	}
	return from
}

// byLines makes one of units of which one begins on the line on which the other ends: what
// stands there is left as it is.
func (p *page) byLines(all []unit) (out []unit) {
	for _, u := range all {
		if n := len(out); n > 0 && u.from >= out[n-1].to {
			if g, ok := p.gapIn(out[n-1].to, u.from, true, ""); ok && g.lines == 0 {
				out[n-1] = unit{from: p.indented(out[n-1].from), to: u.to}
				continue
			}
		}
		out = append(out, u)
	}
	return out
}

// layOut lays out the file, or returns false where something stands in it that is not
// understood.
func (p *page) layOut(o plan.Tree) bool {
	all := p.units(o)
	at := 0
	if bytes.HasPrefix(p.src, []byte("\ufeff")) {
		at = len("\ufeff")
	}
	b := bindery{p: p}
	for i := range len(all) + 1 {
		from := len(p.src)
		if i < len(all) {
			from = all[i].from
		}
		if from < at {
			return false
		}
		g, ok := p.gapIn(at, from, i > 0, "")
		if !ok {
			return false
		}
		c := g.part(i == 0, i == len(all))
		b.behind(g.trail, c)
		if i == len(all) {
			break
		}
		if !b.take(all[i], c.lead, g.blank || len(c.lead) > 0 && c.lead[0].blank) {
			return false
		}
		at = all[i].to
	}
	b.close()
	return true
}

// bindery puts the stretches of a file together.
type bindery struct {
	p     *page
	chain []*thing // outermost blocks on a line each, one below the other; or one block
	from  int      // where the chain begins
	tight bool     // no blank line stands before it
	plain bool     // what was taken last is left as it is
}

// behind takes the comments behind and beneath what was taken last, and those by themselves.
func (b *bindery) behind(trail run, c parted) {
	if trail.to > 0 && len(b.chain) > 0 {
		b.chain[len(b.chain)-1].trail = trail
	} else if trail.to > 0 {
		last := &b.p.all[len(b.p.all)-1]
		last.to = trail.to
		last.text = string(b.p.src[last.from:last.to])
	}
	if len(c.tail) > 0 {
		b.close()
		b.comments(c.tail, true)
	}
	for _, free := range c.free {
		b.close()
		b.comments(free, false)
	}
}

func (b *bindery) comments(runs []run, tight bool) {
	b.p.all = append(b.p.all, stretch{runs[0].from, runs[len(runs)-1].to, strings.Join(b.p.texts(runs), "\n"), tight})
}

// take takes a unit with the comments above it.
func (b *bindery) take(u unit, lead []run, blank bool) bool {
	if u.block == nil {
		b.close()
		if len(lead) > 0 {
			b.comments(lead, !blank)
			blank = false
		}
		b.p.all = append(b.p.all, stretch{u.from, u.to, string(b.p.src[u.from:u.to]), !blank})
		b.plain = true
		return true
	}
	x := &thing{block: u.block, lead: lead, blank: blank, inner: b.p.body(u.block, schema.Plan.Block(u.block.Type))}
	if x.inner == nil {
		return false
	}
	if n := len(b.chain); n > 0 && !blank && x.inner.oneLine && b.chain[n-1].inner.oneLine {
		b.chain = append(b.chain, x)
		return true
	}
	b.close()
	b.chain, b.from, b.tight, b.plain = []*thing{x}, u.from, !blank && b.plain, false
	if len(lead) > 0 {
		b.from = lead[0].from
	}
	return true
}

// close ends the chain.
func (b *bindery) close() {
	if len(b.chain) == 0 {
		return
	}
	w := writer{p: b.p}
	for _, x := range b.chain {
		w.block(x, 0)
	}
	w.flush()
	last := b.chain[len(b.chain)-1]
	to := int(last.block.Whole.End)
	if last.trail.to > 0 {
		to = last.trail.to
	}
	b.p.all = append(b.p.all, stretch{b.from, to, strings.TrimSuffix(w.out.String(), "\n"), b.tight})
	b.chain = nil
}
