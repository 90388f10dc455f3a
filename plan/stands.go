package plan

import "maps"

// Most of what is typed changes one enclosure. Of the others nothing is looked up again where
// all that they can name is as it was in the load before, and nothing was found in them.

// compare finds out whether what enclosures can name is as it was. Where something could not be
// read, or the collection has sheets of its own, all is looked up.
func (r *resolver) compare() {
	r.said, r.c.said = map[*Enclosure]bool{}, nil
	l := r.last
	r.last = nil
	own := func(c *Collection) bool {
		return len(c.Library.own.species)+len(c.Library.own.types)+len(c.Library.own.feeders) > 0
	}
	unread := func(c *Collection) bool { return c.unread == nil || c.unread.whole || len(c.unread.blocks) > 0 }
	if l != nil && l.said != nil && !own(l) && !own(r.c) && !unread(l) && !unread(r.c) &&
		maps.Equal(l.rooms, r.c.rooms) && maps.Equal(l.rounds, r.c.rounds) && maps.Equal(l.keepers, r.c.keepers) && maps.Equal(l.dates, r.c.dates) {
		r.last = l
	}
	r.c.said = r.said
}

// stands reports whether an enclosure is that of the load before, in which nothing was found.
func (r *resolver) stands(e *Enclosure) bool {
	return r.last != nil && e != nil && r.last.enclosures[e.Name.V] == e && !r.last.said[e]
}
