package plan

import (
	"reflect"
	"sort"
	"strconv"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/zone"
)

// resolver puts the blocks of all files together: it joins names to what they
// name, takes in templates, and orders everything so that the order of files and
// lines does not matter.
type resolver struct {
	c      *Collection
	blocks *fileBlocks
	events []Event
	found  finding.List
	// silent keeps quiet about names that are nowhere defined, because a file that
	// could not be read may define them.
	silent bool
}

func (r *resolver) resolve() {
	c := r.c
	r.about()
	c.Rooms, c.rooms = byName(r, r.blocks.rooms, "room")
	c.Keepers, c.keepers = byName(r, r.blocks.keepers, "keeper")
	c.Rounds, c.rounds = byName(r, r.blocks.rounds, "round")
	c.Calendars, _ = byName(r, r.blocks.calendars, "calendar")
	var templates map[string]*Template
	c.Templates, templates = byName(r, r.blocks.templates, "template")
	c.Enclosures, c.enclosures = byName(r, r.blocks.enclosures, "enclosure")
	c.Aways = r.blocks.aways
	r.library()

	sort.SliceStable(c.Rooms, func(i, j int) bool {
		return walks(c.Rooms[i].Order, c.Rooms[j].Order, c.Rooms[i].Name.V, c.Rooms[j].Name.V)
	})
	sort.SliceStable(c.Rounds, func(i, j int) bool {
		a, b := c.Rounds[i], c.Rounds[j]
		if a.Clock.V != b.Clock.V {
			return a.Clock.V < b.Clock.V
		}
		return a.Name.V < b.Name.V
	})
	sort.SliceStable(c.Aways, func(i, j int) bool {
		a, b := c.Aways[i], c.Aways[j]
		if a.From.V != b.From.V {
			return a.From.V < b.From.V
		}
		return a.Name.V < b.Name.V
	})
	if n := len(c.Enclosures); n > MaxEnclosures {
		r.found.Add(finding.Finding{Rule: ruleTooMany, At: c.Enclosures[MaxEnclosures].At, Text: "there are " + strconv.Itoa(n) + " enclosures",
			Limit: strconv.Itoa(MaxEnclosures) + " enclosures in a collection", Write: "split the collection"})
		c.Enclosures = c.Enclosures[:MaxEnclosures]
	}
	for _, e := range c.Enclosures {
		r.enclosure(e, templates)
	}
	order := map[*Room]int{}
	for i, room := range c.Rooms {
		order[room] = i + 1
	}
	sort.SliceStable(c.Enclosures, func(i, j int) bool {
		a, b := c.Enclosures[i], c.Enclosures[j]
		if ra, rb := order[a.Place], order[b.Place]; ra != rb {
			return ra < rb
		}
		return walks(a.Order, b.Order, a.Name.V, b.Name.V)
	})
	r.references()
	r.log()
}

// walks orders a walk: those with an order first, by it, then by name.
func walks(a, b Written[int], an, bn string) bool {
	if a.Set() != b.Set() {
		return a.Set()
	}
	if a.V != b.V {
		return a.V < b.V
	}
	return naturally(an, bn)
}

// naturally orders names as people number things: tub-2 before tub-10.
func naturally(a, b string) bool {
	i, j := 0, 0
	for i < len(a) && j < len(b) {
		if digit(a[i]) && digit(b[j]) {
			x, y := i, j
			for x < len(a) && digit(a[x]) {
				x++
			}
			for y < len(b) && digit(b[y]) {
				y++
			}
			m, n := strings.TrimLeft(a[i:x], "0"), strings.TrimLeft(b[j:y], "0")
			if len(m) != len(n) {
				return len(m) < len(n)
			}
			if m != n {
				return m < n
			}
			i, j = x, y
			continue
		}
		if a[i] != b[j] {
			return a[i] < b[j]
		}
		i++
		j++
	}
	if len(a)-i != len(b)-j {
		return len(a)-i < len(b)-j
	}
	return a < b
}

func digit(c byte) bool { return c >= '0' && c <= '9' }

func (r *resolver) about() {
	all := r.blocks.abouts
	if len(all) == 0 {
		if !r.silent && (len(r.blocks.enclosures)+len(r.blocks.rooms)+len(r.blocks.keepers)+len(r.blocks.rounds) > 0) {
			r.found.Add(finding.Finding{Rule: ruleNoCollection, Text: "no file has a collection block",
				Write: "collection \"my-collection\" { … } with time_zone = \"Europe/London\", or your own zone, in it"})
		}
		return
	}
	for _, again := range all[1:] {
		r.found.Add(duplicate("the collection block", &again.Head, &all[0].Head))
	}
	r.c.About = all[0]
	if loc, err := zone.Load(all[0].TimeZone.V); err == nil {
		r.c.Location = loc
	}
}

// byName sorts blocks by name, leaves out repeats and says so.
func byName[T interface{ head() *Head }](r *resolver, all []T, what string) ([]T, map[string]T) {
	named := make(map[string]T, len(all))
	out := make([]T, 0, len(all))
	for _, b := range all {
		h := b.head()
		if first, ok := named[h.Name.V]; ok {
			f := duplicate(what+" "+quote(h.Name.V), h, first.head())
			r.found.Add(f)
			continue
		}
		named[h.Name.V] = b
		out = append(out, b)
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].head().Name.V < out[j].head().Name.V })
	return out, named
}

func (r *resolver) library() {
	lib := r.c.Library
	lib.own.species = map[string]*SpeciesSheet{}
	lib.own.feeders = map[string]*FeederSheet{}
	for _, s := range r.blocks.species {
		if first := lib.own.species[s.Name.V]; first != nil {
			r.found.Add(duplicate("species "+quote(s.Name.V), &s.Head, &first.Head))
			continue
		}
		lib.own.species[s.Name.V] = s
	}
	for _, f := range r.blocks.feeders {
		if first := lib.own.feeders[f.Name.V]; first != nil {
			r.found.Add(duplicate("feeder "+quote(f.Name.V), &f.Head, &first.Head))
			continue
		}
		lib.own.feeders[f.Name.V] = f
	}
	if len(r.blocks.sources) > 0 {
		lib.Source("") // reads the built-in list first
		for _, s := range r.blocks.sources {
			lib.sources[s.Name.V] = s
		}
	}
	for _, s := range r.blocks.species {
		lib.Species(s.Name.V)
	}
}

func (r *resolver) enclosure(e *Enclosure, templates map[string]*Template) {
	if e.Template.Set() {
		if t := templates[e.Template.V]; t != nil {
			merge(reflect.ValueOf(e).Elem(), reflect.ValueOf(t).Elem())
		} else {
			r.unknownName(e.Template, "template", keys(templates))
		}
	}
	r.complete(e)
	r.species(e)
	switch {
	case e.Room.Set():
		if e.Place = r.c.rooms[e.Room.V]; e.Place == nil {
			r.unknownName(e.Room, "room", keys(r.c.rooms))
		}
	case len(r.c.Rooms) == 1:
		e.Place = r.c.Rooms[0]
	case len(r.c.Rooms) > 1:
		r.found.Add(finding.Finding{Rule: ruleMissing, At: e.At, Text: "enclosure" + named(&e.Head) + " has no room, and there is more than one",
			Write: "room = " + quote(r.c.Rooms[0].Name.V)})
	}
	for _, f := range e.Feeding {
		if e.Group(f.Name.V) == nil {
			var names []string
			for _, a := range e.Animals {
				names = append(names, a.Name.V)
			}
			r.unknownName(f.Name, "animals block in this enclosure", names)
		}
	}
	for _, c := range e.Care {
		if schema.FindKind(c.KindName()) == nil && !c.Off.V {
			name := c.Name
			if c.Kind.Set() {
				name = c.Kind
			}
			var known []string
			for _, k := range schema.CareKinds {
				known = append(known, k.Name)
			}
			f := finding.Finding{Rule: ruleUnknownWord, At: name.At, Text: quote(name.V) + " is not a kind of care",
				Write: "kind = one of: " + strings.Join(known, ", ")}
			if s := finding.Suggest(name.V, known); s != "" {
				f.Text += ": did you mean " + s + "?"
			}
			r.found.Add(f)
		}
	}
}

// complete looks for attributes that must be there once templates are taken in.
func (r *resolver) complete(e *Enclosure) {
	var walk func(v reflect.Value)
	walk = func(v reflect.Value) {
		b := bindings[v.Type()]
		h := v.Addr().Interface().(interface{ head() *Head }).head()
		for _, a := range b.order {
			if a.attr.Required && !tried(v.FieldByIndex(a.field)) {
				r.found.Add(missing(b.block, a.attr, h))
			}
		}
	}
	walk(reflect.ValueOf(e).Elem())
	if e.Housing == nil {
		r.found.Add(finding.Finding{Rule: ruleMissing, At: e.At, Text: "enclosure" + named(&e.Head) + " has no housing block: the box itself",
			Write: firstLine(schema.Housing.Example) + " inside = \"60 x 40 x 40 cm\", lid = \"solid, latched\" }"})
	} else {
		walk(reflect.ValueOf(e.Housing).Elem())
	}
	if len(e.Animals) == 0 && !(e.Housing != nil && e.Housing.Places.Set()) {
		r.found.Add(finding.Finding{Rule: ruleMissing, At: e.At, Text: "enclosure" + named(&e.Head) + " has no animals block",
			Write: "animals \"adult\" { count = 1, stage = \"adult\" }"})
	}
	for _, a := range e.Animals {
		walk(reflect.ValueOf(a).Elem())
	}
	if e.Climate != nil {
		for _, h := range e.Climate.Heaters {
			walk(reflect.ValueOf(h).Elem())
		}
	}
}

func (r *resolver) species(e *Enclosure) {
	if !e.Species.Set() {
		return
	}
	lib := r.c.Library
	if e.Sheet = lib.Species(e.Species.V); e.Sheet != nil {
		return
	}
	sheet, how := lib.ByOtherName(e.Species.V)
	if sheet == nil {
		r.unknownName(e.Species, "species sheet", lib.SpeciesNames())
		return
	}
	f := finding.Finding{Rule: ruleOldName, At: e.Species.At, Write: "species = " + quote(sheet.Name.V)}
	switch how {
	case "mistaken":
		f.Text = quote(e.Species.V) + " is a name under which " + sheet.Name.V + " is sold by mistake; it means another animal"
		f.Rule = ruleUnknownName
	case "former":
		f.Text = quote(e.Species.V) + " is a former name; the sheet " + sheet.Name.V + " is used"
	default:
		f.Text = quote(e.Species.V) + " is another name; the sheet " + sheet.Name.V + " is used"
	}
	if how != "mistaken" {
		e.Sheet = sheet
	}
	r.found.Add(f)
}

func (r *resolver) unknownName(w Written[string], what string, known []string) {
	if r.silent {
		return
	}
	f := finding.Finding{Rule: ruleUnknownName, At: w.At, Text: "there is no " + what + " " + quote(w.V)}
	if s := finding.Suggest(w.V, known); s != "" {
		f.Text += ": did you mean " + quote(s) + "?"
		f.Write = quote(s)
	} else if len(known) > 0 && len(known) <= 12 {
		sort.Strings(known)
		f.Write = "one of: " + strings.Join(known, ", ")
	} else {
		f.Write = "define it, or use a name that is defined"
	}
	r.found.Add(f)
}

func keys[T any](m map[string]T) []string {
	out := make([]string, 0, len(m))
	for k := range m {
		out = append(out, k)
	}
	sort.Strings(out)
	return out
}

// references joins the names of keepers, rounds, rooms and enclosures.
func (r *resolver) references() {
	c := r.c
	keeper := func(w Written[string]) {
		if w.Set() && c.keepers[w.V] == nil {
			r.unknownName(w, "keeper", keys(c.keepers))
		}
	}
	each := func(list []Written[string], what string, has func(string) bool, known func() []string) {
		for _, w := range list {
			if !has(w.V) {
				r.unknownName(w, what, known())
			}
		}
	}
	hasRound := func(s string) bool { return c.rounds[s] != nil }
	rounds := func() []string { return keys(c.rounds) }
	for _, x := range c.Rounds {
		keeper(x.Keeper)
	}
	for _, a := range c.Aways {
		keeper(a.Name)
		keeper(a.Cover)
		if a.From.Set() && a.To.Set() && a.To.V < a.From.V {
			r.found.Add(finding.Finding{Rule: ruleDate, At: a.To.At, Text: "the return (" + a.To.V.String() + ") is before the first day away (" + a.From.V.String() + ")",
				Write: "a day after " + a.From.V.String()})
		}
	}
	for _, k := range c.Calendars {
		each(k.Rounds, "round", hasRound, rounds)
		each(k.Keepers, "keeper", func(s string) bool { return c.keepers[s] != nil }, func() []string { return keys(c.keepers) })
		each(k.Rooms, "room", func(s string) bool { return c.rooms[s] != nil }, func() []string { return keys(c.rooms) })
		each(k.Enclosures, "enclosure", func(s string) bool { return c.enclosures[s] != nil }, func() []string { return keys(c.enclosures) })
		each(k.Kinds, "kind of care", func(s string) bool { return schema.FindKind(s) != nil }, func() []string {
			var n []string
			for _, x := range schema.CareKinds {
				n = append(n, x.Name)
			}
			return n
		})
	}
	timing := func(t *Timing) {
		keeper(t.Keeper)
		each(t.Round, "round", hasRound, rounds)
		if t.From.Set() && t.Until.Set() && t.Until.V < t.From.V {
			r.found.Add(finding.Finding{Rule: ruleDate, At: t.Until.At, Text: "the last day (" + t.Until.V.String() + ") is before the first (" + t.From.V.String() + ")",
				Write: "until = a day after " + t.From.V.String()})
		}
	}
	prey := func(list []Written[Prey]) {
		for _, p := range list {
			f := c.Library.Feeder(p.V.Feeder)
			if f == nil {
				r.unknownName(wrote(p.V.Feeder, p.At), "feeder", c.Library.FeederNames())
				continue
			}
			if f.Size(p.V.Size) == nil {
				var sizes []string
				for _, s := range f.Sizes {
					sizes = append(sizes, s.Name.V)
				}
				r.unknownName(wrote(p.V.Size, p.At), "size of "+p.V.Feeder, sizes)
			}
		}
	}
	round := func(w Written[string]) {
		if w.Set() && c.rounds[w.V] == nil {
			r.unknownName(w, "round", rounds())
		}
	}
	for _, x := range c.Rooms {
		round(x.Round)
	}
	for _, e := range c.Enclosures {
		round(e.Round)
		for _, x := range e.Care {
			timing(&x.Timing)
		}
		for _, x := range e.Feeding {
			timing(&x.Timing)
			prey(x.Menu())
		}
	}
}

// log joins the lines of the logs to enclosures and animals and sorts them by day.
func (r *resolver) log() {
	c := r.c
	out := r.events[:0]
	for _, e := range r.events {
		enclosure := c.enclosures[e.Enclosure.V]
		if enclosure == nil {
			r.unknownName(e.Enclosure, "enclosure", keys(c.enclosures))
			continue
		}
		if r.logGroup(&e, enclosure) {
			out = append(out, e)
		}
	}
	sort.SliceStable(out, func(i, j int) bool {
		if out[i].Date != out[j].Date {
			return out[i].Date < out[j].Date
		}
		return c.Files.Before(out[i].At, out[j].At)
	})
	// Merging by union in git can leave a line twice.
	c.Log = out[:0]
	seen := map[string]bool{}
	for _, e := range out {
		line := string(c.Files.Text(e.At.File)[e.At.Start:e.At.End])
		if !seen[line] {
			seen[line] = true
			c.Log = append(c.Log, e)
		}
	}
}

// logGroup finds the animals of which a line speaks.
func (r *resolver) logGroup(e *Event, enclosure *Enclosure) bool {
	if e.Group.V != "" {
		if enclosure.Group(e.Group.V) == nil {
			var names []string
			for _, a := range enclosure.Animals {
				names = append(names, a.Name.V)
			}
			r.unknownName(e.Group, "animals block in "+enclosure.Name.V, names)
			return false
		}
		return true
	}
	if e.Word.Subject != schema.OfAnimals {
		return true
	}
	if len(enclosure.Animals) == 1 {
		e.Group = wrote(enclosure.Animals[0].Name.V, source.Place{})
		return true
	}
	if e.Word.Name == "counted" || e.Word.Name == "died" && len(enclosure.Animals) == 0 {
		return true
	}
	var names []string
	for _, a := range enclosure.Animals {
		names = append(names, a.Name.V)
	}
	r.found.Add(finding.Finding{Rule: ruleLogLine, At: e.WordAt, Text: quote(enclosure.Name.V) + " has several animals blocks: the line does not say which of them is meant",
		Write: e.Date.String() + " " + enclosure.Name.V + " " + strings.Join(names, " or ") + " " + e.Word.Name})
	return false
}
