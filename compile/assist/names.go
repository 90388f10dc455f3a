package assist

import (
	"slices"
	"strings"

	"vivary/compile"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/wording"
)

// name is something that a value or a label may name.
type name struct {
	name, detail, doc string
	also              []string
	usual             int
	kind              OfferKind
}

// known are the names that an attribute or a label may have of a type of block, or of what the
// program itself has names for: those of the page as it is typed now, and those of the whole
// collection.
func (p *Page) known(w *where, ref string) []name {
	if ref == "" {
		return nil
	}
	var all []name
	if of := vocabulary[ref]; of != nil {
		all = of(p, w)
	}
	has := make(map[string]bool, len(all))
	for i := range all {
		has[all[i].name] = true
	}
	for _, b := range w.tree.root.blocks {
		if b.typ == ref && b.label != "" && b.at.from != w.key.from && !has[b.label] {
			has[b.label] = true
			all = append(all, name{name: b.label, kind: KindName})
		}
	}
	return all
}

// vocabulary has the names of each type that is named somewhere.
var vocabulary map[string]func(*Page, *where) []name

func init() {
	vocabulary = map[string]func(*Page, *where) []name{
		"room":           rooms,
		"rack":           racks,
		"keeper":         keepers,
		"seller":         sellers,
		"round":          roundNames,
		"dates":          datesNames,
		"rota":           rotaNames,
		"template":       templates,
		"enclosure":      enclosures,
		"calendar":       calendars,
		"species":        speciesNames,
		"type":           typeNames,
		"feeder":         feederNames,
		"source":         sourceNames,
		"animals":        animalsNames,
		schema.NamesKind: kindNames,
		schema.NamesRule: ruleNames,
	}
}

func rooms(p *Page, _ *where) (all []name) {
	u := p.Result.Plan.Units
	for _, r := range p.Result.Plan.Rooms {
		doc := r.Shown()
		if r.Temperature.Set() {
			doc += ", " + u.TellRange(r.Temperature.V)
		}
		if r.Humidity.Set() {
			doc += ", " + r.Humidity.V.String()
		}
		all = append(all, name{name: r.Name.V, detail: doc, doc: r.Note.V, kind: KindName})
	}
	return all
}

func racks(p *Page, _ *where) (all []name) {
	for _, r := range p.Result.Plan.Racks {
		all = append(all, name{name: r.Name.V, detail: r.Shown() + ", " + wording.Count(len(r.Enclosures), "enclosure", "enclosures"), kind: KindName})
	}
	return all
}

func sellers(p *Page, _ *where) (all []name) {
	for _, s := range p.Result.Plan.Sellers {
		all = append(all, name{name: s.Name.V, detail: s.Shown(), doc: s.Note.V, kind: KindName})
	}
	return all
}

func keepers(p *Page, _ *where) (all []name) {
	for _, k := range p.Result.Plan.Keepers {
		detail := k.Shown()
		if all := k.Skills(); len(all) > 0 {
			detail += ", trained in " + wording.And(all)
		}
		all = append(all, name{name: k.Name.V, detail: detail, kind: KindName})
	}
	return all
}

func roundNames(p *Page, _ *where) (all []name) {
	for _, r := range plan.Wholes(p.Result.Plan.Rounds) {
		if !r.At.Written() {
			continue // one that was made
		}
		detail := r.Shown() + " at " + wording.Clock(r.Clock.V, p.Result.Plan.Units)
		if r.Keeper.Set() {
			detail += ", " + r.Keeper.V
		}
		all = append(all, name{name: r.Name.V, detail: detail, doc: r.Note.V, kind: KindName})
	}
	return all
}

func datesNames(p *Page, _ *where) (all []name) {
	for _, d := range p.Result.Plan.Dates {
		var days []string
		for _, x := range d.On {
			days = append(days, x.V.String())
		}
		all = append(all, name{name: d.Name.V, detail: strings.Join(days, ", "), kind: KindName})
	}
	return all
}

func rotaNames(p *Page, _ *where) (all []name) {
	for _, x := range p.Result.Plan.Rotas {
		var who []string
		for _, t := range x.Turns {
			if !slices.Contains(who, t.Name.V) {
				who = append(who, t.Name.V)
			}
		}
		all = append(all, name{name: x.Name.V, detail: strings.Join(who, ", "), doc: x.Note.V, kind: KindName})
	}
	return all
}

func templates(p *Page, _ *where) (all []name) {
	for _, t := range p.Result.Plan.Templates {
		all = append(all, name{name: t.Name.V, detail: t.Species.V, doc: t.Note.V, kind: KindName})
	}
	return all
}

// enclosures has the blocks with numbers too.
func enclosures(p *Page, _ *where) (all []name) {
	of := ""
	for _, e := range p.Result.Plan.Enclosures {
		if e.Of != "" && e.Of != of {
			of = e.Of
			all = append(all, name{name: of, detail: "all of them with numbers", kind: KindName})
		}
		all = append(all, name{name: e.Name.V, detail: shownOf(e), kind: KindName})
	}
	return all
}

// shownOf is the title of an enclosure and what lives there.
func shownOf(e *plan.Enclosure) string {
	if e.Sheet == nil {
		return e.Shown()
	}
	return e.Shown() + ", " + e.Sheet.Shown()
}

func calendars(p *Page, _ *where) (all []name) {
	for _, c := range p.Result.Plan.Calendars {
		all = append(all, name{name: c.Name.V, detail: c.Shown(), kind: KindName})
	}
	return all
}

// speciesNames has those first that are kept here.
func speciesNames(p *Page, _ *where) (all []name) {
	l := p.Result.Plan.Library
	kept := map[string]int{}
	for _, e := range p.Result.Plan.Enclosures {
		if e.Sheet != nil {
			kept[e.Sheet.Name.V]++
		}
	}
	for _, n := range l.SpeciesNames() {
		s := l.Species(n)
		if s == nil {
			continue
		}
		x := name{name: n, detail: s.Shown(), doc: p.sheetInShort(s), usual: kept[n], kind: KindKnown, also: []string{s.Shown()}}
		for _, list := range [][]plan.Written[string]{s.Also, s.Former} {
			for _, a := range list {
				x.also = append(x.also, a.V)
			}
		}
		all = append(all, x)
	}
	return all
}

func typeNames(p *Page, _ *where) (all []name) {
	l := p.Result.Plan.Library
	for _, n := range l.TypeNames() {
		t := l.Type(n)
		all = append(all, name{name: n, detail: t.Title.V, doc: t.Note.V, kind: KindKnown})
	}
	return all
}

func feederNames(p *Page, _ *where) (all []name) {
	l := p.Result.Plan.Library
	for _, n := range l.FeederNames() {
		f := l.Feeder(n)
		all = append(all, name{name: n, detail: f.Title.Or(n), doc: hazards(f), kind: KindKnown, also: f.Names()})
	}
	return all
}

// sourceNames has the sources of the collection first, which are few; the library has many
// hundreds, and one of those is looked for by its name.
func sourceNames(p *Page, w *where) (all []name) {
	l := p.Result.Plan.Library
	for _, n := range l.SourceNames() {
		if m, _ := fits(w.typed, n, nil); m == other {
			continue
		}
		if s := l.Source(n); s != nil {
			all = append(all, name{name: n, detail: s.Kind.V, doc: s.Cite.V, kind: KindKnown})
		}
		if len(all) == Most {
			break
		}
	}
	return all
}

// animalsNames are the animals of the enclosure around, as they stand on the page, and as it
// has them from elsewhere.
func animalsNames(p *Page, w *where) (all []name) {
	for b := w.in; b != nil; b = b.in {
		for _, x := range b.blocks {
			if x.is == schema.Animals && x.label != "" {
				all = append(all, name{name: x.label, detail: animalsInShort(x, w.tree.src), kind: KindName})
			}
		}
	}
	if e := p.enclosure(w.in); e != nil {
		for _, a := range e.Animals {
			if !slices.ContainsFunc(all, func(n name) bool { return n.name == a.Name.V }) {
				all = append(all, name{name: a.Name.V, detail: a.Stage.V, kind: KindName})
			}
		}
	}
	return all
}

func animalsInShort(b *block, src string) string {
	var parts []string
	for _, attr := range []string{"count", "stage"} {
		if a := b.attr(attr); a != nil {
			parts = append(parts, a.value(src))
		}
	}
	return strings.Join(parts, ", ")
}

func kindNames(*Page, *where) (all []name) {
	for _, k := range schema.CareKinds {
		doc := k.Doc
		if k.Needs != nil {
			doc += "\n\nMeets the need " + k.Needs.Name + "."
		}
		all = append(all, name{name: k.Name, detail: k.Phrase, doc: doc, also: k.Also, kind: KindKnown})
	}
	return all
}

// ruleNames has those first that are found in the enclosure around.
func ruleNames(p *Page, w *where) (all []name) {
	found := map[string]string{}
	if e := p.enclosure(w.in); e != nil {
		for i := range p.Result.Findings {
			if f := &p.Result.Findings[i]; f.Silenced() && (f.In.Name == e.Name.V || slices.Contains(f.Of, e.Name.V)) {
				found[f.Rule.ID] = f.Text
			}
		}
	}
	for _, r := range compile.Rules() {
		if r.Silence == finding.Never {
			continue
		}
		x := name{name: r.ID, detail: r.Title, doc: r.Why + "\n\n" + r.Silence.String(), kind: KindKnown}
		if text := found[r.ID]; text != "" {
			x.usual, x.detail = 1, "found here: "+text
		}
		all = append(all, x)
	}
	return all
}

// enclosure returns the enclosure in whose block something stands: of one with numbers the
// first. It is nil where the collection has none of that name, as of one that is being typed.
func (p *Page) enclosure(b *block) *plan.Enclosure {
	for ; b != nil; b = b.in {
		if b.is != schema.Enclosure {
			continue
		}
		if e := p.Result.Plan.Enclosure(b.label); e != nil {
			return e
		}
		for _, e := range p.Result.Plan.Enclosures {
			if e.Of == b.label && b.label != "" {
				return e
			}
		}
	}
	return nil
}
