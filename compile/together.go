package compile

import (
	"cmp"
	"math"
	"slices"
	"strconv"
	"strings"
	"sync"

	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/quantity"
)

// together says once what has one cause, and of which enclosures it is true: at the line
// of a template, a rack, a room or a round that sixty tubs have from there; or, in one
// enclosure, what follows from one mistake. What accept blocks silence has been taken out.
//
// Findings have one cause if whoever made them says so (Once), or if they are of the same
// rule and at the same place in several enclosures. Those are said by the worst of them,
// with the others beneath it.
func together(c *plan.Collection, all []finding.Finding) []finding.Finding {
	w := walked(c)
	found := causes(all)
	out := make([]finding.Finding, 0, len(found))
	for _, of := range found {
		out = append(out, w.said(all, of))
	}
	return out
}

// causes returns the findings of each cause, by their places in all, in the order of the
// first of each.
func causes(all []finding.Finding) [][]int {
	type once struct{ cause, in string }
	type line struct {
		rule *finding.Rule
		at   source.Place
		once string
	}
	root := make([]int, len(all))
	find := func(i int) int {
		for root[i] != i {
			root[i] = root[root[i]]
			i = root[i]
		}
		return i
	}
	byOnce, byLine := map[once]int{}, map[line]int{}
	for i := range all {
		f := &all[i]
		root[i] = i
		if f.Once != "" {
			k := once{cause: f.Once}
			if f.Own {
				k.in = f.In.Name
			}
			join(byOnce, k, i, root, find)
		}
		if f.In.Name != "" && f.At.Written() {
			join(byLine, line{f.Rule, f.At, f.Once}, i, root, find)
		}
	}
	var out [][]int
	at := make(map[int]int, len(all))
	for i := range all {
		r := find(i)
		k, known := at[r]
		if !known {
			k = len(out)
			at[r], out = k, append(out, nil)
		}
		out[k] = append(out[k], i)
	}
	return out
}

// join makes one cause of a finding and the first that has the same key.
func join[K comparable](by map[K]int, key K, i int, root []int, find func(int) int) {
	if first, known := by[key]; known {
		root[find(i)] = find(first)
	} else {
		by[key] = i
	}
}

// walk is the enclosures of a collection, as findings speak of them.
type walk struct {
	c      *plan.Collection
	at     map[string]int       // place in walking order, by name
	blocks map[source.Place]int // how many enclosures a block writes
}

func walked(c *plan.Collection) walk {
	w := walk{c, make(map[string]int, len(c.Enclosures)), make(map[source.Place]int, len(c.Enclosures))}
	for i, e := range c.Enclosures {
		w.at[e.Name.V] = i
		w.blocks[e.Whole]++
	}
	return w
}

// same is what findings say that differ in nothing but the enclosure.
type same struct {
	rule        *finding.Rule
	severity    finding.Severity
	text, limit string
}

// words are findings that say the same of several enclosures.
type words struct {
	first *finding.Finding
	of    []*plan.Enclosure
}

// alsoSaid is how many others are named beneath the first of one cause.
const alsoSaid = 12

// said makes one finding of those of one cause.
func (w *walk) said(all []finding.Finding, of []int) finding.Finding {
	worst := make([]*finding.Finding, len(of))
	for i, k := range of {
		worst[i] = &all[k]
	}
	slices.SortStableFunc(worst, func(a, b *finding.Finding) int {
		return cmp.Or(cmp.Compare(b.Severity, a.Severity), cmp.Compare(strict(a), strict(b)))
	})
	kinds := w.kinds(worst)
	f := *worst[0]
	touched := w.touched(worst)
	for _, e := range touched {
		f.Of = append(f.Of, e.Name.V)
	}
	f.Where = w.where(&f, kinds[0].of, len(touched))
	if len(kinds[0].of) > 1 {
		f.Text = withoutName(f.Text, f.In.Name)
	}
	also := f.Also[:len(f.Also):len(f.Also)]
	for i, k := range kinds[1:] {
		if i == alsoSaid {
			also = append(also, finding.Related{Text: "and " + strconv.Itoa(len(kinds)-1-i) + " more"})
			break
		}
		also = append(also, w.beneath(&f, k, len(touched)))
	}
	f.Also = append(also, w.shares(&f)...)
	return f
}

// strict is the order of findings of one cause and severity.
func strict(f *finding.Finding) int {
	if f.Strict == 0 {
		return math.MaxInt
	}
	return f.Strict
}

// kinds puts findings together that say the same, and no finding twice.
func (w *walk) kinds(all []*finding.Finding) []words {
	at := map[same]int{}
	var out []words
	for _, f := range all {
		k := same{f.Rule, f.Severity, f.Text, f.Limit}
		var e *plan.Enclosure
		if i, known := w.at[f.In.Name]; known {
			e = w.c.Enclosures[i]
			k.text, k.limit = nameless(f.Text, e), nameless(f.Limit, e)
		}
		i, known := at[k]
		if !known {
			i = len(out)
			at[k], out = i, append(out, words{first: f})
		}
		if e != nil && !slices.Contains(out[i].of[max(0, len(out[i].of)-1):], e) {
			out[i].of = append(out[i].of, e)
		}
	}
	for i := range out {
		out[i].of = w.inOrder(out[i].of)
	}
	return out
}

func (w *walk) inOrder(of []*plan.Enclosure) []*plan.Enclosure {
	slices.SortFunc(of, func(a, b *plan.Enclosure) int { return w.at[a.Name.V] - w.at[b.Name.V] })
	return slices.Compact(of)
}

// touched are the enclosures that findings are about.
func (w *walk) touched(all []*finding.Finding) []*plan.Enclosure {
	var of []*plan.Enclosure
	for _, f := range all {
		if i, known := w.at[f.In.Name]; known {
			of = append(of, w.c.Enclosures[i])
		}
	}
	return w.inOrder(of)
}

// where names the enclosures of which a finding is true, of so many that its cause
// touches; "" for one that its text names, or in whose own lines it stands.
func (w *walk) where(f *finding.Finding, of []*plan.Enclosure, touched int) string {
	if len(of) == 0 || len(of) == 1 && touched == 1 && w.plain(f, of[0]) {
		return ""
	}
	n := strconv.Itoa(len(of))
	k := w.c.RackOf(of[0])
	switch {
	case len(of) == 1:
		return rounds.Named(of)
	case k != nil && k.Says(f.At) && len(of) == len(k.Enclosures):
		return "all " + n + " enclosures of rack " + k.Name.V
	case len(of) == len(w.c.Enclosures) && len(of) > 2:
		return "all " + n + " enclosures"
	}
	return n + " enclosures: " + some(of)
}

// Printer prints findings of a collection, and names its enclosures as their keeper does.
func (r *Result) Printer() finding.Printer {
	walk := sync.OnceValue(func() walk { return walked(r.Plan) })
	return finding.Printer{Files: r.Plan.Files, Named: func(names []string) string {
		w := walk()
		var of []*plan.Enclosure
		for _, n := range names {
			if i, known := w.at[n]; known {
				of = append(of, r.Plan.Enclosures[i])
			}
		}
		if of = w.inOrder(of); len(of) == 0 {
			return ""
		}
		return w.where(&finding.Finding{}, of, len(of)+1)
	}}
}

// plain reports whether a finding tells by its text or its place of which enclosure it is.
func (w *walk) plain(f *finding.Finding, e *plan.Enclosure) bool {
	own := e.Whole.File == f.At.File && e.Whole.Start <= f.At.Start && f.At.End <= e.Whole.End && w.blocks[e.Whole] == 1
	return own || inLog(w.c.Files, f.At) || !f.At.Written() || strings.Contains(f.Text, e.Name.V)
}

// namedIn is how long a list of enclosures becomes at the most, in bytes.
const namedIn = 200

// some names enclosures, or the first of them and how many more.
func some(of []*plan.Enclosure) string {
	text := rounds.Named(of)
	for n := min(len(of)-1, namedIn); n > 0 && len(text) > namedIn; n = n * 3 / 4 {
		text = rounds.Named(of[:n]) + ", and " + strconv.Itoa(len(of)-n) + " more"
	}
	return text
}

// beneath says what else one cause brings.
func (w *walk) beneath(first *finding.Finding, k words, touched int) finding.Related {
	f := k.first
	text := f.Text
	if f.Limit != "" {
		text += " (" + f.Limit + ")"
	}
	if touched == 1 || len(k.of) == 0 {
		return finding.Related{At: f.In.Whole, Text: text}
	}
	if len(k.of) > 1 {
		text = withoutName(text, f.In.Name)
	}
	if f.Severity != first.Severity {
		text = f.Severity.String() + ": " + text
	}
	where := w.where(f, k.of, touched)
	r := finding.Related{Text: "in " + where + ": " + text}
	if f.At != first.At {
		r.At = f.At
	}
	return r
}

// shares says how much of a rack's heater is each enclosure's.
func (w *walk) shares(f *finding.Finding) (out []finding.Related) {
	i, known := w.at[f.In.Name]
	if !known {
		return nil
	}
	k := w.c.RackOf(w.c.Enclosures[i])
	if k == nil || k.Share < 2 {
		return nil
	}
	for _, h := range k.Heaters {
		if p := h.Power.V; h.Power.Set() && (f.At == h.At || f.At == h.Power.At) {
			out = append(out, finding.Related{Text: p.String() + " for " + strconv.Itoa(k.Share) + " places: " + quantity.Format(p.Value/float64(k.Share), p.Unit) + " for each"})
		}
	}
	return out
}

// nameless is a text without the names of its enclosure.
func nameless(text string, e *plan.Enclosure) string {
	return strings.ReplaceAll(strings.ReplaceAll(text, e.Name.V, "\x00"), e.Shown(), "\x00")
}

// withoutName is a text of several enclosures without the name of the one that it was made
// for, if it begins with that: "tub-7 adults: 9 days" is "adults: 9 days".
func withoutName(text, name string) string {
	if more, ok := strings.CutPrefix(text, "enclosure "+strconv.Quote(name)+" "); ok {
		return "an enclosure " + more
	}
	rest, found := strings.CutPrefix(text, name)
	if !found {
		return text
	}
	if more, colon := strings.CutPrefix(rest, ": "); colon {
		return more
	}
	if more, space := strings.CutPrefix(rest, " "); space {
		return more
	}
	return text
}
