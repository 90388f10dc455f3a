package plan

import (
	"reflect"
	"slices"
	"sort"
	"strconv"
	"strings"

	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/zone"
)

// resolver puts the blocks of all files together: it joins names to what they
// name, takes in templates, and orders everything so that the order of files and
// lines does not matter.
type resolver struct {
	c      *Collection
	blocks blocks
	events []Event
	made   map[string]bool       // the enclosures where the log can have made animals that the plan does not have
	before map[string]*Enclosure // of the load before
	former formerNames           // for the log
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
	c.Contacts, _ = byName(r, r.blocks.contacts, "contact")
	c.Rounds, c.rounds = byName(r, r.blocks.rounds, "round")
	c.Calendars, _ = byName(r, r.blocks.calendars, "calendar")
	_, templates := byName(r, r.blocks.templates, "template")
	c.Enclosures, c.enclosures = byName(r, r.blocks.enclosures, "enclosure")
	c.Aways = r.blocks.aways
	if n := len(c.Aways); n > MaxAways {
		r.found.Add(finding.Finding{Rule: ruleTooMany, At: c.Aways[MaxAways].At, Text: "there are " + strconv.Itoa(n) + " absences",
			Limit: strconv.Itoa(MaxAways) + " in a collection", Write: "take out those that are long over"})
		c.Aways = c.Aways[:MaxAways]
	}
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
	for i, e := range c.Enclosures {
		c.Enclosures[i] = r.enclosure(e, templates)
		c.enclosures[e.Name.V] = c.Enclosures[i]
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

func (r *resolver) about() {
	all := r.blocks.abouts
	if len(all) == 0 {
		if !r.silent && r.c.Files.Len() > 0 {
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

// byName sorts blocks by name, leaves out those without and repeats, and says so.
func byName[T interface{ head() *Head }](r *resolver, all []T, what string) ([]T, map[string]T) {
	named := make(map[string]T, len(all))
	out := make([]T, 0, len(all))
	for _, b := range all {
		h := b.head()
		if h.Name.V == "" {
			continue // said already
		}
		if first, ok := named[h.Name.V]; ok {
			r.found.Add(duplicate(what+" "+quote(h.Name.V), h, first.head()))
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
	_, lib.own.species = byName(r, r.blocks.species, "species")
	_, lib.own.types = byName(r, r.blocks.types, "type")
	_, lib.own.feeders = byName(r, r.blocks.feeders, "feeder")
	_, lib.own.sources = byName(r, r.blocks.sources, "source")
	for _, s := range lib.own.species {
		r.like(s)
		r.reasoned(s)
		r.allowed(s)
	}
}

// reasoned finds figures and needs of the collection's own that take the place of known
// ones and do not say why, on whose word and until when. Where nothing was known it is
// enough to say on whose word.
func (r *resolver) reasoned(s *SpeciesSheet) {
	base := r.c.Library.Beneath(s.Name.V)
	find := func(h *Head, known bool, because Written[string], review Written[civil.Date], src []Written[string]) {
		if lacks := unreasoned(because, review, src); known && lacks != "" {
			r.found.Add(finding.Finding{Rule: RuleUnreasoned, At: h.At,
				Text: quote(h.Name.V) + " takes the place of a known figure, but has " + lacks, Write: writeReason})
		} else if !known && len(src) == 0 {
			r.found.Add(finding.Finding{Rule: RuleUnreasoned, At: h.At,
				Text: quote(h.Name.V) + " does not say from whom it is known", Write: "source = [\"…\"]: a page, a person, your own records"})
		}
	}
	for _, f := range s.Figures {
		known := base != nil && slices.ContainsFunc(base.Figures, func(b *Figure) bool { return b.What == f.What && b.OfType == "" })
		find(&f.Head, known, f.Because, f.Review, f.Source)
	}
	for _, n := range s.Needs {
		known := base != nil && slices.ContainsFunc(base.Needs, func(b *Need) bool { return b.What == n.What && b.OfType == "" })
		find(&n.Head, known, n.Because, n.Review, n.Source)
	}
}

// allowed finds a state block of the collection's own that allows more than what the
// sheet is laid over, and does not say why.
func (r *resolver) allowed(s *SpeciesSheet) {
	if len(s.States) == 0 {
		return
	}
	base := r.c.Library.Beneath(s.Name.V)
	for _, b := range s.States {
		rows, lacks := b.Weaker(base), unreasoned(b.Because, b.Review, b.Source)
		if rows == nil || lacks == "" {
			continue
		}
		r.found.Add(finding.Finding{Rule: RuleUnreasoned, At: b.At,
			Text:  "state " + quote(b.Name.V) + " allows more than is known to be safe, but has " + lacks,
			Limit: rows[0].String() + ": " + base.State(b.What).May[rows[0]].String(),
			Write: writeReason})
	}
}

// like finds a sheet that is like one that does not exist, or in the end like itself.
func (r *resolver) like(s *SpeciesSheet) {
	lib := r.c.Library
	seen := map[*SpeciesSheet]bool{}
	for at := s; at != nil && at.Like.Set(); at = lib.own.species[at.Like.V] {
		if seen[at] {
			if at == s {
				r.found.Add(finding.Finding{Rule: ruleValue, At: s.Like.At, Text: "like leads back to " + quote(s.Name.V), Write: "like = another species"})
			}
			return
		}
		seen[at] = true
	}
	if names := lib.TypeNames(); s.Type.Set() && !slices.Contains(names, s.Type.V) {
		f := finding.Finding{Rule: ruleUnknownName, At: s.Type.At, Text: "there is no care type " + quote(s.Type.V), Write: "type = one of: " + strings.Join(names, ", ")}
		if near := finding.Near(s.Type.V, names); near != "" {
			f.Text += ": did you mean " + quote(near) + "?"
			f.Write, f.Edits = "type = "+quote(near), finding.Instead(s.Type.At, s.Type.V, near)
		}
		r.found.Add(f)
	}
	if names := lib.SpeciesNames(); s.Like.Set() && !slices.Contains(names, s.Like.V) {
		r.unknownName(s.Like, "species sheet", names)
	}
}

// enclosure puts an enclosure together from its own block, its template, its sheet
// and its room. Where all of these are those of the load before, so is the enclosure.
func (r *resolver) enclosure(own *Enclosure, templates map[string]*Template) *Enclosure {
	t := templates[own.Template.V]
	before := r.before[own.Name.V]
	e := before
	if e == nil || e.block != own || e.template != t {
		e = filled(own, t)
	}
	if e.Template.Set() && t == nil {
		r.unknownName(e.Template, "template", keys(templates)) // which may hold what seems missing
	} else {
		r.complete(e)
	}
	sheet, place := r.species(e), r.place(e)
	r.inner(e)
	if e == before {
		if e.Sheet == sheet && e.Place == place {
			return e
		}
		again := *e
		e = &again
	}
	e.Sheet, e.Place = sheet, place
	return e
}

// filled returns a copy of an enclosure's block with what its template says and it
// does not.
func filled(own *Enclosure, t *Template) *Enclosure {
	e := *own
	e.block, e.template = own, t
	if t != nil {
		merge(reflect.ValueOf(&e).Elem(), reflect.ValueOf(t).Elem())
	}
	e.Animals, e.crew = withoutCrew(e.Animals)
	if slices.ContainsFunc(e.Seasons, (*Season).leftOut) {
		e.Seasons = slices.DeleteFunc(slices.Clone(e.Seasons), (*Season).leftOut)
	}
	return &e
}

// place returns the room in which an enclosure stands, or nil.
func (r *resolver) place(e *Enclosure) *Room {
	rooms := r.c.Rooms
	switch {
	case e.Room.Set():
		room := r.c.rooms[e.Room.V]
		if room == nil {
			r.unknownName(e.Room, "room", keys(r.c.rooms))
		}
		return room
	case len(rooms) == 1:
		return rooms[0]
	case len(rooms) > 1:
		r.found.Add(finding.Finding{Rule: ruleMissing, At: e.At, Text: "enclosure" + named(&e.Head) + " has no room, and there is more than one",
			Write: "room = " + quote(rooms[0].Name.V)})
	}
	return nil
}

// inner looks at the blocks in an enclosure that speak of others in it.
func (r *resolver) inner(e *Enclosure) {
	for _, a := range e.crew {
		r.found.Add(finding.Finding{Rule: ruleCrew, At: a.At, In: e.Whole, Text: a.Name.V + " are a clean-up crew: they are not counted, and nothing is proved for them",
			Write: "substrate = \"…, with " + a.Name.V + "\" in housing, in place of this block; where you breed them, an enclosure of their own with culture = true"})
	}
	for _, c := range e.Care {
		r.noStages(c.Stages, "a care of its own, with a name that says for whom")
	}
	for _, f := range e.Feeding {
		r.noStages(f.Stages, "feeding \"adults\", with the name of the animals that it is for")
		if f.Name.Set() && e.Group(f.Name.V) == nil {
			r.unknownName(f.Name, "animals block in this enclosure", e.groups())
		}
	}
}

// noStages refuses stages outside a species sheet, where an enclosure's own animals
// are the ones that are meant: passed over, they would promise what is not done.
func (r *resolver) noStages(stages []Written[string], write string) {
	if len(stages) > 0 {
		r.found.Add(finding.Finding{Rule: ruleValue, At: stages[0].At, Text: "stages is for species sheets: an enclosure's own care is for the animals in it", Write: write})
	}
}

// complete looks for attributes that must be there once templates are taken in.
func (r *resolver) complete(e *Enclosure) {
	walk := func(block any) {
		v := reflect.ValueOf(block)
		h := headOf(v)
		v = v.Elem()
		b := bindings[v.Type()]
		for _, a := range b.order {
			if a.attr.Required && !tried(v.FieldByIndex(a.field)) {
				r.found.Add(missing(b.block, a.attr, h))
			}
		}
	}
	walk(e)
	if e.Housing == nil {
		r.found.Add(finding.Finding{Rule: ruleMissing, At: e.At, Text: "enclosure" + named(&e.Head) + " has no housing block: the box itself",
			Write: "a block housing with inside = \"60 x 40 x 40 cm\" and lid = \"solid, latched\" in it"})
	} else {
		walk(e.Housing)
	}
	if len(e.Animals) == 0 && !(e.Housing != nil && e.Housing.Places.Set()) {
		r.found.Add(finding.Finding{Rule: ruleMissing, At: e.At, Text: "enclosure" + named(&e.Head) + " has no animals block",
			Write: "a block animals \"adult\" with count = 1 and stage = \"adult\" in it"})
	}
	for _, a := range e.Animals {
		walk(a)
	}
	if e.Climate != nil {
		for _, h := range e.Climate.Heaters {
			walk(h)
		}
	}
}

// species returns the sheet of an enclosure's species, or nil.
func (r *resolver) species(e *Enclosure) *SpeciesSheet {
	if !e.Species.Set() {
		return nil
	}
	lib := r.c.Library
	if sheet := lib.Species(e.Species.V); sheet != nil {
		return sheet
	}
	sheet, how := lib.ByOtherName(e.Species.V)
	if sheet == nil {
		r.unknownSpecies(e.Species)
		return nil
	}
	f := finding.Finding{Rule: ruleOldName, At: e.Species.At, Write: "species = " + quote(sheet.Name.V),
		Edits: finding.Instead(e.Species.At, e.Species.V, sheet.Name.V)}
	switch how {
	case "mistaken":
		f.Text = quote(e.Species.V) + " is a name under which " + sheet.Name.V + " is sold by mistake; it means another animal"
		f.Rule, f.Edits = ruleUnknownName, nil // which of the two is meant is for the keeper to say
		sheet = nil
	case "former":
		f.Text = quote(e.Species.V) + " is a former name; the sheet " + sheet.Name.V + " is used"
	default:
		f.Text = quote(e.Species.V) + " is another name; the sheet " + sheet.Name.V + " is used"
	}
	r.found.Add(f)
	return sheet
}

// unknownSpecies finds a species of which there is no sheet. Where the name is no slip of
// the pen it says which of the same genus there are, and how to write one: of a care type,
// those first that have its genus.
func (r *resolver) unknownSpecies(w Written[string]) {
	lib := r.c.Library
	names := lib.SpeciesNames()
	genus, epithet, _ := strings.Cut(slug(w.V), "-")
	meant, of, _ := strings.Cut(finding.Near(w.V, names), "-")
	// Another species of the genus is no slip.
	slip := meant != "" && (meant != genus || epithet == "" || finding.Near(epithet, []string{of}) != "")
	if r.silent || slip {
		r.unknownName(w, "species sheet", names)
		return
	}
	kin := slices.DeleteFunc(slices.Clone(names), func(n string) bool {
		of, _, _ := strings.Cut(n, "-")
		return of != genus
	})
	types := lib.TypeNames()
	if of := slices.DeleteFunc(slices.Clone(types), func(n string) bool {
		return !slices.ContainsFunc(lib.Type(n).Genera, func(g Written[string]) bool { return slug(g.V) == genus })
	}); len(of) > 0 {
		types = of
	}
	f := finding.Finding{Rule: ruleUnknownName, At: w.At, Text: "there is no species sheet " + quote(w.V),
		Write: "species " + quote(slug(w.V)) + " { … } of type " + quoted(types) + ": vivary start --sheet " + slug(w.V) + " begins one"}
	if len(kin) > 0 {
		f.Text += "; of its genus there is " + strings.Join(kin, ", ") + ", which is another animal"
	}
	r.found.Add(f)
}

// quoted names several, one of which is to be chosen.
func quoted(names []string) string {
	var out []string
	for _, n := range names {
		out = append(out, quote(n))
	}
	return strings.Join(out, " or ")
}
