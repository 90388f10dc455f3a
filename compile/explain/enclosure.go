package explain

import (
	"fmt"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/balance"
	"vivary/compile/food"
	"vivary/compile/growth"
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/wording"
)

func listEnclosures(r *compile.Result) []Line {
	var out []Line
	for _, e := range r.Plan.Enclosures {
		out = append(out, Line{Name: e.Name.V, Text: describe(e)})
	}
	return out
}

// describe says what an enclosure is: its title, who lives there and where it stands.
func describe(e *plan.Enclosure) string {
	out := e.Shown()
	if e.Sheet != nil {
		out += ", " + e.Sheet.Shown()
	}
	if e.Place != nil {
		out += ", in " + e.Place.Shown()
	}
	if e.Rack.Set() {
		out += ", rack " + e.Rack.V
	}
	return out
}

func explainEnclosure(r *compile.Result, word string) []Answer {
	var out []Answer
	for i, l := range r.Lives {
		if worked(r) && means(word, l.Plan.Name.V, l.Plan.Shown()) {
			out = append(out, enclosure(r, i))
		}
	}
	if out == nil && worked(r) {
		return explainNumbers(r, word)
	}
	return out
}

// Enclosure explains r.Lives[i], whatever else its name means.
func Enclosure(r *compile.Result, i int) Answer {
	return inUnits([]Answer{enclosure(r, i)}, r.Plan.Units)[0]
}

func enclosure(r *compile.Result, i int) Answer {
	l := r.Lives[i]
	parts := part(nil, "Where it is written", writtenAs(r, l.Plan))
	parts = part(parts, "Animals", animals(r, i))
	parts = part(parts, "Care", append(ofRack(r, l.Plan), careLines(r.Roster.Of[i], r)...))
	parts = part(parts, "If nobody comes", leaving(r, l))
	parts = part(parts, "Climate", plainly(climate(r, i)))
	if g, ok := growth.Of(l, r.Plan, r.Today); ok {
		parts = part(parts, "Growth and room", plainly(g.Lines()))
	}
	parts = part(parts, "Food", eats(r, i))
	var proofs []Line
	for k := range r.Proofs[i] {
		p := &r.Proofs[i][k]
		proofs = append(proofs, Line{Name: needOf(p), Text: proven(r, p)})
	}
	parts = part(parts, "Proof, from today to "+r.Horizon.Last().Words(), proofs)
	return Answer{Title: "Enclosure " + l.Plan.Name.V + ": " + describe(l.Plan), Parts: parts, Written: block(&l.Plan.Head)}
}

func eats(r *compile.Result, i int) []Line {
	var out []Line
	for _, g := range r.Lives[i].Groups {
		if f, ok := food.Of(r.Roster, r.Roster.Of[i], g, r.Today); ok {
			out = append(out, plainly(f.Lines(r.Lives[i].Plan))...)
		}
	}
	return out
}

func climate(r *compile.Result, i int) []string {
	l := r.Lives[i]
	b, ok := balance.Of(r.Plan, l.Plan, l)
	if !ok || !b.Limited() {
		return []string{"The plan does not say enough: it takes the inside of the housing, the temperature of the room and a species."}
	}
	water := roster.PouredInto(r.Roster.Of[i], r.Horizon, balance.DishHolds(l.Plan))
	return b.Lines(l.Plan, balance.Brought{Day: water.Day, Until: water.Until})
}

// animals says who lives there, and what is held and expected.
func animals(r *compile.Result, i int) []Line {
	var out []Line
	for _, g := range r.Lives[i].Groups {
		stage := g.Stage(r.Today)
		if stage == "" {
			stage = "stage unknown"
		}
		line := Line{Name: g.Animals.Name.V, Text: fmt.Sprintf("%d, %s", g.Count(r.Today), stage) + cameFrom(r, g), Under: holds(r, i, g.Holds)}
		for _, x := range g.Windows {
			line.Under = append(line.Under, x.Title+": "+x.From.Words()+" to "+(x.Until-1).Words())
		}
		out = append(out, line)
	}
	out = append(out, plainly(holds(r, i, r.Lives[i].Holds))...)
	s := r.Lives[i].Plan.Sheet
	if s == nil {
		return out
	}
	others := mixedUp(r.Plan.Library, s)
	if others != "" {
		out = append(out, Line{Text: others})
		s.Each(schema.FigureLooks, func(f *plan.Figure) {
			out = append(out, Line{Text: s.Shown() + " " + holding("looks", f.Stages) + ": " + f.Value.V})
		})
	}
	return out
}

// mixedUp names the look-alikes of a species.
func mixedUp(l *plan.Library, s *plan.SpeciesSheet) string {
	var others []string
	for _, a := range l.LookAlikes(s) {
		others = append(others, a.Shown())
	}
	if others == nil {
		return ""
	}
	return "Check: sold as " + s.Shown() + ", or taken for it: " + strings.Join(others, ", ")
}

// cameFrom says since when animals are here and from which line, with whom, and of what
// species where that is not the enclosure's.
func cameFrom(r *compile.Result, g *life.Group) string {
	out := ""
	for _, s := range g.Stages[1:] {
		if s.From > r.Today {
			out += ", " + s.Stage + " from " + s.From.Words() + " by the sheet"
		}
	}
	if g.Mother != nil && g.Count(r.Today) > 0 {
		out += ", with " + g.Mother.Animals.Name.V
	}
	if at := r.Plan.Files.Start(g.Animals.At); g.Logged {
		out += fmt.Sprintf("; since %s (%s:%d)", g.Since.V.Words(), at.File, at.Line)
	} else if g.Animals.At.Written() {
		out += fmt.Sprintf(" (%s:%d)", at.File, at.Line)
	}
	if n := len(g.Numbers); n > 1 && (n > 2 || !g.Logged) {
		out += ", this many since " + g.Numbers[n-1].From.Words()
	}
	return out
}

// holds says in which states the animals are and will be: what may be done, the kinds of
// the enclosure's care that are held, why and how long.
func holds(r *compile.Result, i int, all []life.Hold) []string {
	var out []string
	for k := range all {
		h := &all[k]
		kinds := taken(r.Roster.Of[i], h)
		if h.Until <= r.Today || kinds == "" && h.State.Rule == "" {
			continue
		}
		text := "now"
		if h.From > r.Today {
			text = "from " + h.From.Words()
		}
		if kinds != "" {
			text = "held " + text + ": " + kinds
		}
		text += " (" + h.Why + "; " + h.End + ")"
		if h.State.Rule != "" {
			text += ": " + h.State.Rule
		}
		out = append(out, text)
	}
	return out
}

// taken names the kinds of care that a hold takes out, each once.
func taken(care []roster.Entry, h *life.Hold) string {
	var out []string
	for k := range care {
		if kind := care[k].Kind; h.Takes(kind) && !slices.Contains(out, kind.Name) {
			out = append(out, kind.Name)
		}
	}
	return strings.Join(out, ", ")
}

// careLines says of each care how often, when next and where it is from; once for
// one that is done at several times of a day.
func careLines(care []roster.Entry, r *compile.Result) []Line {
	var out []Line
	for k := range care {
		s := &care[k]
		if k > 0 && again(s, &care[k-1]) {
			continue
		}
		times, days := wording.Clock(s.At(), s.Plan().Units), s.Days.Clone()
		for j := k + 1; j < len(care) && again(&care[j], s); j++ {
			if care[j].Round.Of == nil { // else it is done by another on another day, at that time
				times += joined(days, &care[j]) + wording.Clock(care[j].At(), s.Plan().Units)
			}
			days.Union(care[j].Days)
		}
		out = append(out, Line{Name: s.Name, Text: s.Words() + " at " + times + "; next " + coming(r, days, 1), Under: []string{origin(r, s)}})
	}
	return out
}

// ofRack are the cares that an enclosure has by the rack in which it stands.
func ofRack(r *compile.Result, e *plan.Enclosure) []Line {
	k := r.Roster.RackOf(e)
	if k == nil {
		return nil
	}
	out := careLines(k.Entries, r)
	for i := range out {
		out[i].Text = "of rack " + k.Plan.Name.V + ", once for all in it: " + out[i].Text
	}
	return out
}

// again reports whether a care is another one at another time of the same day.
func again(s, before *roster.Entry) bool {
	return s.Name == before.Name && s.Origin == before.Origin && s.Words() == before.Words()
}

// joined joins a time of a care to others: "and" where it is done at both on some day, "or"
// where its rounds take turns.
func joined(days horizon.Days, other *roster.Entry) string {
	if days.Intersects(other.Days) {
		return " and "
	}
	return " or "
}

// leaving says how long the enclosure can be left, and what fails first.
func leaving(r *compile.Result, l *life.Enclosure) []Line {
	sheet := l.Plan.Sheet
	if sheet == nil {
		return nil
	}
	var out []Line
	for _, g := range l.Groups {
		stage := g.Stage(r.Today)
		var parts []string
		if f := sheet.Figure(schema.FigureUnattended, stage); f != nil {
			parts = append(parts, f.Range.LowQ().String()+" with a full dish")
		}
		for _, n := range sheet.NeedsOf(stage) {
			if n.Name.V == "food" || n.Name.V == "water" && len(parts) == 0 {
				parts = append(parts, n.Longest.V.String()+" without "+n.Name.V)
			}
		}
		if len(parts) == 0 {
			parts = append(parts, "the sheet has no figure: do not leave it alone")
		}
		out = append(out, Line{Name: g.Animals.Name.V, Text: strings.Join(parts, ", ")})
	}
	return out
}

// needOf names the need of a proof, with the animals where it is theirs alone.
func needOf(p *prove.Proof) string {
	if p.Group != nil {
		return p.Name.Name + ", " + p.Group.Animals.Name.V
	}
	return p.Name.Name
}

// livesThere names the enclosure of a proof, with the animals where the need is
// theirs alone.
func livesThere(p *prove.Proof) string {
	if p.Group != nil {
		return p.Life.Plan.Name.V + " " + p.Group.Animals.Name.V
	}
	return p.Life.Plan.Name.V
}

// proven says what the proof found for a need.
func proven(r *compile.Result, p *prove.Proof) string {
	out := "met: at most " + wording.Days(p.Longest) + " apart"
	switch {
	case !p.Met():
		out = fmt.Sprintf("NOT MET: %s from %s, %d allowed", wording.Days(p.Breach.To-p.Breach.From), r.Horizon.Date(max(0, p.Breach.From)).Words(), p.Limit.Days)
	case p.Longest > p.Allowed:
		out += fmt.Sprintf(", with nobody there (%d allowed then, else %d)", p.Unattended, p.Allowed)
	default:
		out += fmt.Sprintf(", %d allowed", p.Allowed)
	}
	return fmt.Sprintf("%s%s; on %s, by %s", during(r, p), out, wording.Days(p.Times), met(p))
}

// during says of which days a proof is, where it is of a stage that does not last.
func during(r *compile.Result, p *prove.Proof) string {
	stage := p.Stage
	if stage != "" {
		stage = ", " + stage
	}
	switch from, to := r.Horizon.Date(p.Begin).Words(), r.Horizon.Date(p.End-1).Words(); {
	case p.Begin > r.Horizon.Today && p.End < r.Horizon.Days:
		return "from " + from + " to " + to + stage + ": "
	case p.Begin > r.Horizon.Today:
		return "from " + from + " on" + stage + ": "
	case p.End < r.Horizon.Days:
		return "until " + to + stage + ": "
	}
	return ""
}

// met names the cares that meet a need, each once.
func met(p *prove.Proof) string {
	var out []string
	for _, s := range p.By {
		name := s.Name
		if s.Once != nil {
			name = s.Kind.Name + " because of the log"
		}
		if len(out) == 0 || out[len(out)-1] != name {
			out = append(out, name)
		}
	}
	if len(out) == 0 {
		return "nothing"
	}
	return strings.Join(out, ", ")
}
