package plan

import (
	"slices"
	"strconv"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Rack is a rack block: boxes that share a heater, its thermostat and a thermometer.
type Rack struct {
	Head
	Title       Written[string]         `care:"title"`
	Room        Written[string]         `care:"room"`
	Round       []Written[string]       `care:"round"`
	Places      Written[int]            `care:"places"`
	Thermometer Written[bool]           `care:"thermometer"`
	StandsOn    Written[string]         `care:"stands_on"`
	ShelfRise   Written[quantity.Range] `care:"shelf_rise"`
	Formerly    Written[string]         `care:"formerly"`
	Note        Written[string]         `care:"note"`
	Heaters     []*Heater               `care:"heater"`
	Measured    *Measured               `care:"measured"`
	Gauges      []*Gauge                `care:"gauge"`

	Place      *Room        // where it stands; nil where that is not known
	Enclosures []*Enclosure // that stand in it, in walking order
	Share      int          // by how many the power of its heaters is divided
	// Stop is the rack as rounds pass it: a place with its name, title, room and round, and
	// no animals.
	Stop *Enclosure
}

// Shown returns the title that people see.
func (k *Rack) Shown() string { return title(k.Title, k.Name.V) }

// Does reports whether care of a kind is done once for all that stand in it: its
// thermometer is read, its heaters are tested.
func (k *Rack) Does(kind *schema.CareKind) bool {
	switch {
	case kind == nil || kind.OfRack == "":
		return false
	case kind.Needs.Heated:
		return slices.ContainsFunc(k.Heaters, func(h *Heater) bool { return !h.Tube() })
	}
	return k.Thermometer.V
}

// DoesFor reports whether it is one enclosure's too: who has a heater that is not the
// rack's has that tested.
func (k *Rack) DoesFor(e *Enclosure, kind *schema.CareKind) bool {
	return k.Does(kind) && (!kind.Needs.Heated || e.Heated() && !slices.ContainsFunc(e.Climate.Heaters, func(h *Heater) bool { return !h.Tube() && !k.Says(h.At) }))
}

// Says reports whether a place is in the rack's block: what stands there is said of all
// that stand in it.
func (k *Rack) Says(at source.Place) bool {
	return at.Written() && at.File == k.Whole.File && k.Whole.Start <= at.Start && at.End <= k.Whole.End
}

// Rack returns the rack of that name, or nil.
func (c *Collection) Rack(name string) *Rack { return c.racks[name] }

// RackOf returns the rack in which an enclosure stands, or nil.
func (c *Collection) RackOf(e *Enclosure) *Rack {
	if !e.Rack.Set() {
		return nil
	}
	return c.Rack(e.Rack.V)
}

// lends returns what a rack says in place of one of its enclosures, as a template of it:
// only what the enclosure has room for, and of its heaters the enclosure's part.
func (k *Rack) lends(e *Enclosure) *Template {
	t := &Template{Body: Body{Room: k.Room}}
	if e.Housing != nil { // a box that is not described is still found
		t.Housing = &Housing{StandsOn: k.StandsOn, ShelfRise: k.ShelfRise}
	}
	measured := k.measured(e.share)
	if e.Climate != nil && e.Climate.Measured != nil {
		measured = nil // two measurements are never mixed
	}
	if k.Thermometer.tried() || len(k.Heaters) > 0 || measured != nil {
		t.Climate = &Climate{Head: Head{At: k.At, Whole: k.Whole}, Thermometer: k.Thermometer, Measured: measured}
		for _, h := range k.Heaters {
			t.Climate.Heaters = append(t.Climate.Heaters, h.part(e.share))
		}
	}
	return t
}

// part is one of n equal parts of a heater.
func (h *Heater) part(n int) *Heater {
	out := *h
	out.Power.V.Value /= float64(n)
	out.Length.V.Value /= float64(n)
	if f := &out.Size.V; f.Length >= f.Width {
		f.Length /= float64(n)
	} else {
		f.Width /= float64(n)
	}
	return &out
}

// measured is what was measured in the rack, with one of n equal parts of the power.
func (k *Rack) measured(n int) *Measured {
	if k.Measured == nil {
		return nil
	}
	out := *k.Measured
	out.Power.V.Value /= float64(n)
	return &out
}

// racks are the racks while files are put together.
type racks struct {
	named map[string]*Rack // as they stand in the files
	boxes map[string]int   // how many enclosures name each
}

// rackOf is the rack that an enclosure names, or its template.
func rackOf(own *Enclosure, t *Template) Written[string] {
	if own.Rack.Set() || t == nil {
		return own.Rack
	}
	return t.Rack
}

// share is by how many the power of a rack's heaters is divided.
func (r *racks) share(k *Rack) int {
	if k == nil {
		return 0
	}
	return max(1, k.Places.V, r.boxes[k.Name.V])
}

// gatherRacks counts what stands in each rack, and looks at the racks themselves.
func (r *resolver) gatherRacks(templates map[string]*Template) {
	c := r.c
	r.racks.boxes = map[string]int{}
	c.Racks, r.racks.named = byName(r, r.blocks.racks, "rack")
	for _, e := range c.Enclosures {
		name := rackOf(e, templates[e.Template.V])
		r.racks.boxes[name.V]++
		if name.Set() && r.racks.named[name.V] == nil {
			r.unknownName(name, "rack", keysOf(r, "rack", r.racks.named))
		}
	}
	for _, k := range c.Racks {
		if e := c.enclosures[k.Name.V]; e != nil {
			r.found.Add(finding.Finding{Rule: ruleTwice, At: k.At, Text: "rack" + named(&k.Head) + " has the name of an enclosure: the log could mean either",
				Write: "give one of them another name", Also: []finding.Related{{At: e.At, Text: "the enclosure"}}})
		}
		if k.Room.Set() && c.rooms[k.Room.V] == nil {
			r.unknownName(k.Room, "room", keysOf(r, "room", c.rooms))
		}
		for _, h := range k.Heaters {
			r.device(h, k.Heaters)
		}
		n := r.racks.boxes[k.Name.V]
		switch {
		case k.Places.Set() && k.Places.V < 1:
			f := finding.Finding{Rule: ruleValue, At: k.Places.At, Text: "a rack has one place at the least", Write: "how many boxes it holds"}
			if n > 0 {
				f.Write, f.Edits = strconv.Itoa(n)+", or more", finding.Plain(k.Places.At, strconv.Itoa(n))
			}
			r.found.Add(f)
		case k.Places.Set() && k.Places.V < n:
			r.found.Soft(finding.Finding{Rule: ruleValue, At: k.Places.At, Text: "rack" + named(&k.Head) + " holds " + strconv.Itoa(k.Places.V) + " boxes, and " + strconv.Itoa(n) + " stand in it: the power of its heaters is shared by these",
				Write: strconv.Itoa(n) + ", or more", Edits: finding.Instead(k.Places.At, strconv.Itoa(k.Places.V), strconv.Itoa(n))}, finding.Caution)
		}
	}
}

// joinRacks joins racks to their room and to what stands in them. The blocks in the files
// are shared with other collections: what is joined are copies.
func (r *resolver) joinRacks() {
	c := r.c
	c.racks = make(map[string]*Rack, len(c.Racks))
	for i, raw := range c.Racks {
		k := *raw
		k.Share = r.racks.share(raw)
		c.Racks[i], c.racks[k.Name.V] = &k, &k
	}
	for _, e := range c.Enclosures {
		if k := c.RackOf(e); k != nil {
			k.Enclosures = append(k.Enclosures, e)
		}
	}
	for _, k := range c.Racks {
		k.Place = r.rackPlace(k)
		k.Stop = &Enclosure{Head: k.Head, Title: k.Title, Formerly: k.Formerly, Body: Body{Room: k.Room, Round: k.Round}, Place: k.Place, Units: r.c.Units}
		if len(k.Round) == 0 && len(k.Enclosures) > 0 {
			k.Stop.Round = k.Enclosures[0].Round
		}
	}
}

// rackPlace returns the room of a rack: its own, or that in which its enclosures are.
func (r *resolver) rackPlace(k *Rack) *Room {
	switch {
	case k.Room.Set():
		return r.c.rooms[k.Room.V]
	case len(r.c.Rooms) == 1:
		return r.c.Rooms[0]
	}
	var in []*Room
	lacking := false
	for _, e := range k.Enclosures {
		if e.Place == nil {
			lacking = lacking || !e.Room.Set()
		} else if !slices.Contains(in, e.Place) {
			in = append(in, e.Place)
		}
	}
	switch {
	case len(in) > 1:
		r.found.Add(finding.Finding{Rule: ruleTwice, At: k.At, Text: "rack" + named(&k.Head) + " has enclosures in the rooms " + wording.And(roomNames(in)) + ": it cannot stand in all of them",
			Write: "one of these rooms as room, and a rack for each of the others"})
	case lacking && len(r.c.Rooms) > 1:
		r.found.Add(finding.Finding{Rule: ruleMissing, At: k.At, Text: "rack" + named(&k.Head) + " has no room, and there is more than one", Write: "the room in which it stands, as room: " + wording.Or(roomNames(r.c.Rooms))})
	}
	if len(in) == 0 {
		return nil
	}
	return in[0]
}

// roomOfRack finds an enclosure that says it stands in another room than its rack, and
// reports whether it does.
func (r *resolver) roomOfRack(e *Enclosure) bool {
	k := e.rack
	if k == nil || !k.Room.Set() || !e.Room.Set() || e.Room.V == k.Room.V || r.c.rooms[e.Room.V] == nil {
		return false
	}
	r.found.Add(finding.Finding{Rule: ruleTwice, At: e.Room.At, Text: "this says room " + quote(e.Room.V) + ", and its rack" + named(&k.Head) + " stands in room " + quote(k.Room.V) + ": it cannot stand in both",
		Write: "no room here, or no rack", Also: []finding.Related{{At: k.Room.At, Text: "the rack"}}})
	return true
}

// OfRack reports whether a line of that word may be about a rack.
func OfRack(w *schema.LogWord) bool { return slices.Contains(ofRack, w) }

// ofRack are the words of the log that may be about a rack.
var ofRack = []*schema.LogWord{schema.WordDone, schema.WordSkipped, schema.WordMeasured, schema.WordTested, schema.WordRemark, schema.WordWithdrawn}

// joinedRack looks at a line of the log that names a rack. What it says of animals is kept
// as a remark: in which of the boxes they are is not said.
func (r *resolver) joinedRack(e *Event, k *Rack) {
	if e.Group.Set() || !slices.Contains(ofRack, e.Word) {
		word := "this"
		if e.Word != nil {
			word = quote(e.Word.Name)
		}
		e.remark(finding.Finding{Rule: ruleLogLine, At: e.WordAt, Text: quote(k.Name.V) + " is a rack, and of a rack the log takes what was done, skipped, measured or tested: of which enclosure is " + word + "? Until then it is a remark, from which nothing follows",
			Write: "the enclosure in place of the rack"})
	}
}

// maxSpread is how many lines are made of measurements in racks, for each enclosure that
// stands there: those of more than a year in a rack of 400, read every day.
const maxSpread = 200_000

// measuredRack returns the rack in which a line is a measurement, or nil.
func (r *resolver) measuredRack(e *Event) *Rack {
	if e.Word != schema.WordMeasured || r.c.enclosures[e.Enclosure.V] != nil {
		return nil
	}
	return r.c.racks[e.Enclosure.V]
}

// spreadFrom returns the place in the log, which is in order, from which on measurements in
// racks are those of every enclosure there: of more than are spread the youngest tell most.
func (r *resolver) spreadFrom(all []Event) int {
	n, older, first := 0, 0, 0
	for i := range slices.Backward(all) {
		k := r.measuredRack(&all[i])
		if k == nil {
			continue
		}
		if n += len(k.Enclosures); n > maxSpread {
			if older++; older == 1 {
				first = i + 1
			}
		}
	}
	if older > 0 {
		r.found.Add(*wrongLine(all[first-1].At, "this and "+strconv.Itoa(older-1)+" older measurements in racks are not taken for those of every enclosure there: there are more than are read so", "older logs out of the folder"))
	}
	return first
}

// forRacks adds to each measurement in a rack one for every enclosure that stands there.
func (r *resolver) forRacks(all []Event) []Event {
	var out []Event
	from := r.spreadFrom(all)
	for i, e := range all {
		k := r.measuredRack(&e)
		if k == nil || i < from {
			if out != nil {
				out = append(out, e)
			}
			continue
		}
		if out == nil {
			out = append(out, all[:i]...)
		}
		for _, x := range k.Enclosures {
			of := e
			of.Enclosure.V = x.Name.V
			of.said = nil
			out = append(out, of)
		}
		out = append(out, e)
	}
	if out == nil {
		return all
	}
	return out
}
