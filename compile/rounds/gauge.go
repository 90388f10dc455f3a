package rounds

import (
	"slices"
	"strings"

	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
)

// Show is what the gauge of a place should show on some days, in words.
type Show struct {
	From, Until int
	Text        string          // "22 to 30 C, air 70 to 80 %"
	Harm        string          // outside of what the animals are harmed: "15 to 35 C"; empty where that is not known
	Amiss       []*schema.Amiss // what to do first where it shows something else

	harm life.Span
}

// Ring is whom to ring on some days, where a gauge is past what the animals bear.
type Ring struct {
	From, Until int
	Text        string
}

// shows adds what the gauges of an enclosure should show.
func (g *gatherer) shows(p *Place, l *life.Enclosure) {
	for _, x := range life.Gauges(g.roster.Plan, l, g.roster.Horizon) {
		heat, damp := heatOf(&x), dampOf(&x)
		heat.From, heat.Until, damp.From, damp.Until = x.From, x.Until, x.From, x.Until
		p.Heat, p.Damp = append(p.Heat, heat), append(p.Damp, damp)
	}
}

// heatOf is what a thermometer should show; with the damp of the air where the plan aims for
// one, so that a hygrometer hangs there.
func heatOf(x *life.Gauge) Show {
	s := Show{Text: spanned(x.Heat), harm: x.Harm, Harm: spanned(x.Harm)}
	if s.Text != "" || s.Harm != "" {
		a := schema.AmissUnheated
		if x.Heated {
			a = schema.AmissHeated
		}
		s.Amiss = append(s.Amiss, a)
	}
	if x.Aimed && x.Damp.Known {
		if s.Text != "" {
			s.Text += ", "
		}
		s.Text += "air " + spanned(x.Damp)
		s.Amiss = append(s.Amiss, schema.AmissDamp)
	}
	return s
}

func dampOf(x *life.Gauge) Show {
	s := Show{Text: spanned(x.Damp)}
	if s.Text != "" {
		s.Amiss = []*schema.Amiss{schema.AmissDamp}
	}
	return s
}

func spanned(s life.Span) string {
	if !s.Known {
		return ""
	}
	return quantity.FormatRange(s.Low, s.High, s.Unit)
}

// showsOfRack adds what the thermometer of a rack should show: what is right for the boxes
// that stand in it, those of which the same is right named together.
func (g *gatherer) showsOfRack(p *Place, k *plan.Rack) {
	var lives []*life.Enclosure
	for _, l := range g.roster.Lives {
		if g.roster.Plan.RackOf(l.Plan) == k {
			lives = append(lives, l)
		}
	}
	boxes := make([]Place, len(lives))
	var cuts []int
	for i, l := range lives {
		g.shows(&boxes[i], l)
		for _, s := range boxes[i].Heat {
			cuts = append(cuts, s.From)
		}
	}
	slices.Sort(cuts)
	cuts = slices.Compact(cuts)
	for i, from := range cuts {
		until := g.roster.Horizon.Days
		if i+1 < len(cuts) {
			until = cuts[i+1]
		}
		s := together(boxes, lives, from)
		s.From, s.Until = from, until
		p.Heat = append(p.Heat, s)
	}
}

// together is what should show on a day at several boxes. What harms is what harms any.
func together(boxes []Place, lives []*life.Enclosure, on int) (out Show) {
	of := map[string][]*life.Enclosure{}
	var order []string
	for i := range boxes {
		s := shown(boxes[i].Heat, on)
		if s == nil || s.Text == "" {
			continue
		}
		if of[s.Text] == nil {
			order = append(order, s.Text)
		}
		of[s.Text] = append(of[s.Text], lives[i])
		out.harm = out.harm.Within(s.harm)
		for _, a := range s.Amiss {
			if !slices.Contains(out.Amiss, a) {
				out.Amiss = append(out.Amiss, a)
			}
		}
	}
	out.Harm = spanned(out.harm)
	if len(order) == 1 && len(of[order[0]]) == len(lives) {
		out.Text = order[0]
		return out
	}
	for i, text := range order {
		if i > 0 {
			out.Text += "; "
		}
		names, places := alone(of[text])
		out.Text += string(appendNames(nil, names, places)) + " " + text
	}
	return out
}

// shown is what stands on a day, or nil.
func shown(all []Show, on int) *Show {
	for i := range all {
		if all[i].From <= on && on < all[i].Until {
			return &all[i]
		}
	}
	return nil
}

// rings says on each day whom whoever stands in for others rings. Feeds are read by others
// too, so that no number stands there.
func (g *gatherer) rings(picks []roster.Pick) (out []Ring) {
	for i := g.roster.Horizon.Today; i < g.roster.Horizon.Days; i++ {
		text := ""
		for _, p := range picks {
			if p.Entry.Kind.Reads == 0 || !p.Days.Has(i) {
				continue
			}
			if who, there := g.roster.Doer(p.Entry, i); there && who != p.Entry.Keeper {
				text = strings.TrimPrefix(ring(g.roster, p.Entry, i), "; ")
			}
			break
		}
		if n := len(out); n > 0 && out[n-1].Text == text && out[n-1].Until == i {
			out[n-1].Until = i + 1
		} else if text != "" {
			out = append(out, Ring{i, i + 1, text})
		}
	}
	return out
}

// show is what the gauge that is read for a kind of care should show at a place on a day;
// nil where nothing is read or known.
func (r *Round) show(k *schema.CareKind, place int32, on int) *Show {
	p := &r.places[place]
	var s *Show
	switch k.Reads {
	case quantity.Temperature:
		s = shown(p.Heat, on)
	case quantity.Humidity:
		s = shown(p.Damp, on)
	}
	if s == nil || s.Text == "" && s.Harm == "" {
		return nil
	}
	return s
}

func (r *Round) showText(t *task, place int32) string {
	if s := r.show(r.kinds[t.kind], place, r.day.on); s != nil {
		return s.Text
	}
	return ""
}

// should stands before what a gauge should show.
const should = "should show"

// appendShows appends what the gauges should show at the places of a task: behind its line
// where it is the same at all of them, else a line for each that is the same at some.
func (r *Round) appendShows(dst []byte, t *task, places []int32, names func(dst []byte, places []int32) []byte) []byte {
	if r.kinds[t.kind].Reads == 0 {
		return dst
	}
	first := r.showText(t, places[0])
	if !slices.ContainsFunc(places, func(p int32) bool { return r.showText(t, p) != first }) {
		if first == "" {
			return dst
		}
		return append(append(append(dst, ": "+should...), ' '), first...)
	}
	dst = append(dst, "; "+should+":"...)
	for _, x := range r.alike(t, places) {
		if x.text != "" {
			dst = append(append(dst, "\n  "...), x.text...)
			dst = names(append(dst, ": "...), x.places)
		}
	}
	return dst
}

// alike is some places of which the same is said.
type alike struct {
	text   string
	places []int32
}

// alike puts places together whose gauges should show the same: those of few species.
func (r *Round) alike(t *task, places []int32) (out []alike) {
	for _, p := range places {
		text := r.showText(t, p)
		out = among(out, text, p)
	}
	return out
}

// among adds a place to those of which the same is said.
func among(all []alike, text string, place int32) []alike {
	k := slices.IndexFunc(all, func(x alike) bool { return x.text == text })
	if k < 0 {
		k = len(all)
		all = append(all, alike{text: text})
	}
	all[k].places = append(all[k].places, place)
	return all
}

// sameShows reports whether at two places the gauges should show the same, as far as they
// are read on the day.
func (r *Round) sameShows(a, b int32) bool {
	return !slices.ContainsFunc(r.day.todo[a], func(t int32) bool { return r.showText(&r.tasks[t], a) != r.showText(&r.tasks[t], b) })
}

// amiss writes what to do first where a gauge shows something else than it should, once for
// the whole round.
func (r *Round) amiss() {
	d := &r.day
	var all []*schema.Amiss
	var harms []alike
	for i := range r.tasks {
		t := &r.tasks[i]
		if d.full || r.kinds[t.kind].Reads == 0 || t.count(d.on) == 0 {
			continue
		}
		d.due = t.places(d.on, d.due[:0])
		for _, p := range d.due {
			s := r.show(r.kinds[t.kind], p, d.on)
			if s == nil {
				continue
			}
			if s.Harm != "" {
				harms = among(harms, s.Harm, p)
			}
			for _, a := range s.Amiss {
				if !slices.Contains(all, a) {
					all = append(all, a)
				}
			}
		}
	}
	if len(all) > 0 {
		d.gap = true
		d.line(r.amissText(all, harms))
	}
}

// amissText is in sentences: what to do at too much and too little, then at what harms.
func (r *Round) amissText(all []*schema.Amiss, harms []alike) string {
	var parts []string
	say := func(begin, text string) {
		if text != "" {
			parts = append(parts, begin+": "+ended(text))
		}
	}
	has := func(a *schema.Amiss) bool { return slices.Contains(all, a) }
	heat := schema.AmissUnheated
	if has(schema.AmissHeated) {
		heat = schema.AmissHeated
	}
	if has(heat) {
		say("Too warm", heat.More)
		say("Too cold", heat.Less)
	}
	if has(schema.AmissUnheated) && heat == schema.AmissHeated {
		say("No heater", schema.AmissUnheated.Either)
	}
	if has(schema.AmissDamp) {
		say("Air too damp", schema.AmissDamp.More)
		say("Air too dry", schema.AmissDamp.Less)
	}
	if len(harms) > 0 {
		parts = append(parts, r.harmText(harms)+".")
		say("Above it", heat.Over)
		say("Below it", heat.Under)
		parts = append(parts, "Open no lid for it"+r.rung()+".")
	}
	return strings.Join(append(parts, "Log it (measured)."), " ")
}

// harmText names what harms: first what does so at most places, which are not named.
func (r *Round) harmText(harms []alike) string {
	slices.SortStableFunc(harms, func(a, b alike) int { return len(b.places) - len(a.places) })
	text := "Harm outside " + harms[0].text
	var others []string
	for _, x := range harms[1:] {
		slices.Sort(x.places)
		others = append(others, string(appendNames(nil, r.names, slices.Compact(x.places)))+" outside "+x.text)
	}
	if len(others) > 0 {
		text += " (" + strings.Join(others, "; ") + ")"
	}
	return text
}

// rung is whom to ring on the day, behind other words.
func (r *Round) rung() string {
	for _, x := range r.ring {
		if x.From <= r.day.on && r.day.on < x.Until {
			return "; " + x.Text
		}
	}
	return ""
}

// ended is a text with the mark at its end that it lacks.
func ended(text string) string {
	if strings.HasSuffix(text, "?") {
		return text
	}
	return text + "."
}

// showsLength is no less than what the lines of gauges take on a day.
func (r *Round) showsLength(on int) int {
	const mark, foot = 16, 600
	n := 0
	for i := range r.lines {
		l := &r.lines[i]
		if k := r.kinds[r.tasks[l.task].kind]; k.Reads != 0 && l.count(on) > 0 {
			l.each(on, func(c *cell) {
				if s := r.show(k, c.place, on); s != nil {
					n += len(s.Text) + len(s.Harm) + len(should) + 2*mark + len(r.names[c.place].text)
					n += len(r.names[c.place].text) + len(r.sections[r.room[c.place]].label) + mark
				}
			})
			n += foot
		}
	}
	return n
}

// Shows are what the thermometer of an enclosure should show, with the air where the plan
// aims for a humidity, by days of the horizon.
func Shows(s *roster.Roster, l *life.Enclosure) []Show {
	var p Place
	(&gatherer{roster: s}).shows(&p, l)
	return p.Heat
}
