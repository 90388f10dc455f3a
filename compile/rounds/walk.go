package rounds

import "bytes"

// Sort is what a line of a round is.
type Sort uint8

// The sorts of lines, in the order in which they stand.
const (
	Pressing Sort = iota // what is done before everything else
	States               // what may be done in which state
	Leaving              // what is filled before days when nobody comes
	Ready                // what to put on, have ready or switch off
	Heading              // a room, what is kept apart, or the only enclosure
	Todo                 // what is to be done, below the last heading
	Amiss                // what is done first where a gauge shows something else
)

// Line is a line of a sheet in its parts, for whoever ticks it off.
type Line struct {
	Sort  Sort
	Text  string   // the whole line, as it is printed
	Names string   // of what is to be done: where, as the line says it; "" where it says so with each job, or a heading does
	Jobs  []Job    // what is to be done there, in order
	Of    []string // of a state: the enclosures that are in it, by name
}

// Job is one thing to be done at the places of a line.
type Job struct {
	Text  string // as it begins a line
	Stops []Stop
}

// asks keeps that the line which is being written asks for a task at some places.
func (r *Round) asks(sort Sort, task int, places []int32) {
	d := &r.day
	if d.walk == nil {
		return
	}
	d.next.Sort = sort
	j := Job{Text: r.tasks[task].first}
	k := 0
	for i := range r.tasks[task].lines {
		r.tasks[task].lines[i].each(d.on, func(c *cell) {
			if k < len(places) && places[k] == c.place {
				j.Stops = append(j.Stops, r.stop(c, d.on))
				k++
			}
		})
	}
	d.next.Jobs = append(d.next.Jobs, j)
}

// of are the names of some places.
func (r *Round) of(places []int32) (names []string) {
	if r.day.walk == nil {
		return nil
	}
	for _, p := range places {
		names = append(names, r.places[p].Name)
	}
	return names
}

// named keeps what was written from a byte on as the names of the line.
func (d *day) named(from int) {
	if d.walk != nil {
		d.next.Names = string(d.dst[from:])
	}
}

// keep keeps the line that is being written.
func (d *day) keep() {
	if d.walk == nil {
		return
	}
	d.next.Text = string(d.dst[max(d.start, bytes.LastIndexByte(d.dst, '\n')+1):])
	*d.walk = append(*d.walk, d.next)
	d.next = Line{}
}
