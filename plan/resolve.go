package plan

import (
	"cmp"
	"reflect"
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/slip"
	"vivary/schema/wording"
	"vivary/schema/zone"
)

// resolver puts the blocks of all files together: it joins names to what they
// name, takes in templates, and orders everything so that the order of files and
// lines does not matter.
type resolver struct {
	c         *Collection
	blocks    blocks
	events    []Event
	made      map[string]bool          // the enclosures where the log can have made animals that the plan does not have
	before    map[string]*Enclosure    // of the load before
	numbered  map[*Enclosure]*numbered // of the load before too
	several   map[string]*Enclosure    // the blocks with numbers, by name
	former    formerNames              // for the log
	found     finding.List
	unread    *unread
	logs      bool                // the logs are being read: what is wrong with them cuts nothing
	cut       bool                // it has been said that no more is looked for
	guessed   int                 // with how many names others were compared
	sorted    map[string][]string // names of blocks, by what they are
	quiet     int                 // how often nothing was said of a name for what could not be read
	racks     racks
	dated     map[string]bool // the dates blocks that are named somewhere
	marked    int             // how often they were
	last      *Collection     // that of the load before, where all that enclosures name is as it was there
	said      map[*Enclosure]bool
	stranger  map[string]int // places in strangers
	strangers []stranger
}

func (r *resolver) resolve() {
	c := r.c
	r.dated, r.stranger = map[string]bool{}, map[string]int{}
	r.bounds()
	r.about()
	if c.About != nil {
		c.Units = unitsOf(c.files, c.About)
	}
	c.Rooms, c.rooms = byName(r, r.blocks.rooms, "room")
	c.Keepers, c.keepers = byName(r, r.blocks.keepers, "keeper")
	c.Contacts, _ = byName(r, r.blocks.contacts, "contact")
	c.Rounds, c.rounds = byName(r, r.blocks.rounds, "round")
	c.Rotas, c.rotas = byName(r, r.blocks.rotas, "rota")
	c.Dates, c.dates = byName(r, r.blocks.dates, "dates block")
	c.Calendars, _ = byName(r, r.blocks.calendars, "calendar")
	c.Deadlines, c.deadlines = byName(r, r.blocks.deadlines, "deadline")
	r.ofHouse()
	c.Sellers, c.sellers = byName(r, r.blocks.sellers, "seller")
	r.number()
	var templates map[string]*Template
	c.Templates, templates = byName(r, r.blocks.templates, "template")
	c.Enclosures, c.enclosures = byName(r, r.blocks.enclosures, "enclosure")
	c.Aways = r.blocks.aways
	r.library()

	slices.SortStableFunc(c.Rooms, func(a, b *Room) int { return walks(a.Order, b.Order, a.Name.V, b.Name.V) })
	slices.SortStableFunc(c.Rounds, func(a, b *Round) int {
		return cmp.Or(cmp.Compare(a.Clock.V, b.Clock.V), cmp.Compare(a.Name.V, b.Name.V))
	})
	r.rotas()
	slices.SortStableFunc(c.Aways, func(a, b *Away) int {
		return cmp.Or(cmp.Compare(a.From.V, b.From.V), cmp.Compare(a.Name.V, b.Name.V))
	})
	bounded(r, &c.Enclosures, "enclosures", MaxEnclosures)
	r.gatherRacks(templates)
	doubtful := map[string]bool{}
	r.compare()
	for i, e := range c.Enclosures {
		if r.full() {
			break
		}
		found := len(r.found.All)
		r.doubt(e, doubtful, func() { c.Enclosures[i] = r.enclosure(e, templates) })
		if len(r.found.All) > found {
			r.said[c.Enclosures[i]] = true
		}
		c.enclosures[e.Name.V] = c.Enclosures[i]
		if r.depends(c.Enclosures[i]) {
			doubtful[e.Name.V] = true
		}
	}
	r.references(doubtful)
	r.setAside(doubtful)
	order := map[*Room]int{}
	for i, room := range c.Rooms {
		order[room] = i + 1
	}
	slices.SortStableFunc(c.Enclosures, func(a, b *Enclosure) int {
		if a.Place != b.Place {
			return order[a.Place] - order[b.Place]
		}
		return walks(a.Order, b.Order, a.Name.V, b.Name.V)
	})
	r.joinRacks()
	r.joinStores()
	for _, e := range c.Enclosures {
		r.share(e)
	}
	r.namesElsewhere()
	r.goneBlocks()
	r.log()
}

// share notes what thermostats of the enclosure hold on outlets that others may share.
func (r *resolver) share(e *Enclosure) {
	if e.Climate == nil {
		return
	}
	for _, h := range e.Climate.Heaters {
		if !h.Channel.Set() || !h.Thermostat.Set() {
			continue
		}
		if r.c.outlets == nil {
			r.c.outlets = map[string]Written[quantity.Quantity]{}
		}
		if _, ok := r.c.outlets[h.Channel.V]; !ok {
			r.c.outlets[h.Channel.V] = h.Thermostat
		}
	}
}

func (r *resolver) about() {
	all := r.blocks.abouts
	if len(all) == 0 {
		if !r.unread.whole && !r.unread.has("collection", "") && r.c.Files.Len() > 0 {
			r.found.Add(finding.Finding{Rule: ruleNoCollection, Text: "no file has a collection block",
				Write: "in any file a collection block: a name of your own, and in it the time zone of your place"})
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
	slices.SortStableFunc(out, func(a, b T) int { return cmp.Compare(a.head().Name.V, b.head().Name.V) })
	return out, named
}

// enclosure puts an enclosure together from its own block, its template, its rack, its
// sheet and its room. Where all of these are those of the load before, so is the enclosure.
func (r *resolver) enclosure(own *Enclosure, templates map[string]*Template) *Enclosure {
	t := templates[own.Template.V]
	k := r.racks.named[rackOf(own, t).V]
	share := r.racks.share(k)
	before := r.before[own.Name.V]
	if r.stands(before) && before.block == own && before.template == t && before.rack == k && before.share == share && before.Units == r.c.Units {
		return before
	}
	e := before
	if e == nil || e.block != own || e.template != t || e.rack != k || e.share != share {
		e = filled(own, t, k, share)
	}
	if e.Template.Set() && t == nil {
		r.unknownName(e.Template, "template", keysOf(r, "template", templates)) // which may hold what seems missing
	} else if e != before {
		e.complete()
	}
	r.found.All = append(r.found.All, e.found...)
	sheet, place := r.species(e), r.place(e)
	r.inner(e)
	feeding := r.c.Library.menus(e.Feeding)
	if e == before {
		if e.Sheet == sheet && e.Place == place && e.Units == r.c.Units && slices.Equal(feeding, e.Feeding) {
			return e
		}
		again := *e
		e = &again
	}
	e.Sheet, e.Place, e.Feeding, e.Units = sheet, place, feeding, r.c.Units
	return e
}

// filled returns a copy of an enclosure's block with what its template says and it
// does not, and then what its rack says and neither does.
func filled(own *Enclosure, t *Template, k *Rack, share int) *Enclosure {
	e := *own
	e.block, e.template, e.rack, e.share = own, t, k, share
	if t != nil {
		merge(reflect.ValueOf(&e).Elem(), reflect.ValueOf(t).Elem())
	}
	if k != nil {
		merge(reflect.ValueOf(&e).Elem(), reflect.ValueOf(k.lends(&e)).Elem())
	}
	e.Animals, e.crew = withoutCrew(e.Animals)
	e.unnamed()
	if e.Housing != nil && !e.Housing.At.Written() { // only number blocks say something of it
		h := *e.Housing
		h.At, h.Whole, e.Housing = e.At, e.Whole, &h
	}
	if slices.ContainsFunc(e.Seasons, (*Season).leftOut) {
		e.Seasons = slices.DeleteFunc(slices.Clone(e.Seasons), (*Season).leftOut)
	}
	return &e
}

// place returns the room in which an enclosure stands, or nil.
func (r *resolver) place(e *Enclosure) *Room {
	rooms := r.c.Rooms
	switch {
	case r.roomOfRack(e):
		return r.c.rooms[e.rack.Room.V]
	case e.Room.Set():
		room := r.c.rooms[e.Room.V]
		if room == nil {
			r.unknownName(e.Room, "room", keysOf(r, "room", r.c.rooms))
		}
		return room
	case len(rooms) == 1:
		return rooms[0]
	case len(rooms) > 1 && e.Rack.Set(): // that the rack is in no room, or is not there, is said once
	case e.Template.Set() && e.template == nil: // which may say it
	case len(rooms) > 1:
		r.found.Add(finding.Finding{Rule: ruleMissing, At: e.At, Text: "enclosure" + named(&e.Head) + " has no room, and there is more than one",
			Write: "the room in which it stands, as room: " + wording.Or(roomNames(rooms))})
	}
	return nil
}

func roomNames(rooms []*Room) (names []string) {
	for _, x := range rooms {
		names = append(names, x.Name.V)
	}
	return names
}

// inner looks at the blocks in an enclosure that speak of others in it.
func (r *resolver) inner(e *Enclosure) {
	for _, a := range e.crew {
		r.found.Add(finding.Finding{Rule: ruleCrew, At: a.At, In: e.Box(), Text: a.Name.V + " are a clean-up crew: they are not counted, and nothing is proved for them",
			Write: "in place of this block " + a.Name.V + " among the words of the substrate; where you breed them, an enclosure of their own that is said to be a culture"})
	}
	if e.Climate != nil {
		for _, h := range e.Climate.Heaters {
			r.device(h, e.Climate.Heaters)
		}
	}
	if e.Housing != nil {
		for _, f := range e.Housing.Faces {
			if f.Name.Set() && schema.Called(schema.Faces, f.Name.V) == "" {
				r.notListed(f.Name, "a face of a box", "one of: ", choiceNames(schema.Faces), func(better string) bool {
					return !slices.ContainsFunc(e.Housing.Faces, func(o *Face) bool { return o.Name.V == better })
				})
			}
		}
	}
	for _, c := range e.Care {
		r.noStages(c.Stages, "a care of its own, with a name that says for whom")
	}
	for _, f := range e.Feeding {
		r.noStages(f.Stages, "a feeding block with the name of the animals that it is for")
		if f.Name.Set() && e.Group(f.Name.V) == nil {
			r.unknownName(f.Name, "animals block in this enclosure", e.groups())
		}
	}
}

// device finds a heater of which it is not known what it is: taken for another, it would
// be reckoned with the heat of that one. others are those beside it, whose names are taken.
func (r *resolver) device(h *Heater, others []*Heater) {
	if h.Kind.At.Written() || !h.Name.Set() {
		return // what is written as a kind has been looked at
	}
	if schema.Called(schema.HeaterKinds, h.Name.V) != "" {
		return
	}
	if q := schema.AskedBack(schema.UnclearHeaters, h.Name.V); q != nil {
		r.found.Add(finding.Finding{Rule: ruleUnknownWord, At: h.Name.At, Text: quote(h.Name.V) + " is not a kind of heater: " + q.Ask, Write: q.Write})
		return
	}
	r.notListed(h.Name, "a kind of heater", "as kind one of: ", choiceNames(schema.HeaterKinds),
		func(better string) bool {
			return !slices.ContainsFunc(others, func(o *Heater) bool { return o.Name.V == better })
		})
}

// notListed finds a name that is none of those that are known. fits says whether another could
// stand in its place.
func (r *resolver) notListed(name Written[string], what, write string, known []string, fits func(better string) bool) {
	f := finding.Finding{Rule: ruleUnknownWord, At: name.At, Text: quote(name.V) + " is not " + what, Write: write + strings.Join(known, ", ")}
	if s := slip.Of(name.V, known); s != "" {
		f.Text += ": did you mean " + s + "?"
		if fits(s) {
			f.Edits = finding.Instead(name.At, name.V, s)
		}
	}
	r.found.Add(f)
}

// noStages refuses stages outside a species sheet, where an enclosure's own animals
// are the ones that are meant: passed over, they would promise what is not done.
func (r *resolver) noStages(stages []Written[string], write string) {
	if len(stages) > 0 {
		r.found.Add(finding.Finding{Rule: ruleValue, At: stages[0].At, Text: "stages is for species sheets: an enclosure's own care is for the animals in it", Write: write})
	}
}

// complete looks for attributes that must be there once templates are taken in.
func (e *Enclosure) complete() {
	found := finding.List{All: slices.Clip(e.found)}
	required(&found, reflect.ValueOf(e))
	if e.Housing == nil {
		found.Add(finding.Finding{Rule: ruleMissing, At: e.At, Text: "enclosure" + named(&e.Head) + " has no housing block: the box itself",
			Write: "a housing block in it, with the size inside and how the lid shuts"})
	}
	if len(e.Animals) == 0 && !(e.Housing != nil && e.Housing.Places.Set()) {
		found.Add(finding.Finding{Rule: ruleMissing, At: e.At, Text: "enclosure" + named(&e.Head) + " has no animals block",
			Write: "an animals block in it, with how many they are and their stage"})
	}
	e.found = found.All
}

// required finds attributes that must be written and are not, in a block and those in it.
func required(found *finding.List, block reflect.Value) {
	v := block.Elem()
	b := bindings[v.Type()]
	for _, a := range b.order {
		if a.attr.Required && !tried(v.FieldByIndex(a.field)) {
			found.Add(missing(b.block, a.attr, headOf(block)))
		}
	}
	for _, ib := range b.inner {
		if ib.binding.requires {
			for _, x := range each(v.FieldByIndex(ib.field)) {
				required(found, x.Addr())
			}
		}
	}
}
