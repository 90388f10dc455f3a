package plan

import (
	"slices"

	"vivary/schema"
)

// formerNames are the names that enclosures, racks, keepers and deadlines had first, where nothing is called
// so now.
type formerNames struct{ enclosures, keepers, deadlines map[string]string }

func (r *resolver) formerNames() formerNames {
	out := formerNames{map[string]string{}, map[string]string{}, map[string]string{}}
	for _, e := range r.c.Enclosures {
		if e.Formerly.Set() && r.c.enclosures[e.Formerly.V] == nil {
			out.enclosures[e.Formerly.V] = e.Name.V
		}
	}
	for _, s := range r.c.Stores {
		if f := s.Stop.Formerly; f.Set() && r.c.enclosures[f.V] == nil && r.c.stores[f.V] == nil {
			out.enclosures[f.V] = s.Name.V
		}
	}
	for _, k := range r.c.Racks {
		if k.Formerly.Set() && r.c.enclosures[k.Formerly.V] == nil && r.c.racks[k.Formerly.V] == nil {
			out.enclosures[k.Formerly.V] = k.Name.V
		}
	}
	for _, k := range r.c.Keepers {
		if k.Formerly.Set() && r.c.keepers[k.Formerly.V] == nil {
			out.keepers[k.Formerly.V] = k.Name.V
		}
	}
	for _, d := range r.c.Deadlines {
		if d.Formerly.Set() && r.c.deadlines[d.Formerly.V] == nil {
			out.deadlines[d.Formerly.V] = d.Name.V
		}
	}
	return out
}

// nowCalled puts the names that things have now in place of those in a line of the log: what
// was written before a change of name is still true of the same animals, and a moult of
// yesterday holds their meals today.
func (r *resolver) nowCalled(e *Event) {
	rename(&e.Enclosure, r.former.enclosures)
	rename(&e.Keeper, r.former.keepers)
	rename(&e.By, r.former.keepers)
	rename(&e.Deadline, r.former.deadlines)
	if e.Word == nil || e.Word.After != schema.AfterEnclosure || len(e.Args) == 0 {
		return
	}
	e.Args = slices.Clone(e.Args) // the line as it was read is shared
	rename(&e.Args[0], r.former.enclosures)
	if to := r.c.enclosures[e.Args[0].V]; to != nil && len(e.Args) > 1 {
		if g := to.called(e.Args[1].V); g != nil {
			e.Args[1].V = g.Name.V
		}
	}
}

func rename(w *Written[string], now map[string]string) {
	if name, ok := now[w.V]; ok {
		w.V = name
	}
}

// called returns the animals of a name, or those that had it first, or nil.
func (e *Enclosure) called(name string) *Animals {
	if g := e.Group(name); g != nil {
		return g
	}
	for _, a := range e.Animals {
		if a.Formerly.Set() && a.Formerly.V == name {
			return a
		}
	}
	return nil
}
