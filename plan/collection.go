// Package plan turns the text of care plans and logs into a typed collection in
// which every value keeps its place. It knows what the words mean, not whether
// they are good for the animals: that is the business of package compile.
package plan

import (
	"maps"
	"slices"
	"time"

	"vivary/plan/source"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// Written is a value and the place where it was written. A value that nobody
// wrote has no place.
type Written[T any] struct {
	V  T
	At source.Place
	// Bad marks a value that was written but could not be read. It counts as not
	// set; that it cannot be read has been said already.
	Bad bool
}

// Set reports whether the value was written, and could be read.
func (w Written[T]) Set() bool { return w.At.Written() && !w.Bad }

func (w Written[T]) tried() bool { return w.At.Written() }

func (w Written[T]) place() source.Place { return w.At }

func (w *Written[T]) spoil(at source.Place) {
	if !w.At.Written() {
		w.At, w.Bad = at, true
	}
}

func wrote[T any](v T, p source.Place) Written[T] { return Written[T]{V: v, At: p} }

// Or returns the value, or other where none was written.
func (w Written[T]) Or(other T) T {
	if w.Set() {
		return w.V
	}
	return other
}

// Head is what every block has: its name, where it has a label, and its place.
type Head struct {
	Name  Written[string]
	At    source.Place // the block's first line, without its brace
	Whole source.Place // the block from its first word to its closing brace
	// Unread says that a value in it could not be read: that has been said, and what is
	// reckoned from the others would follow from it.
	Unread bool
}

func (h *Head) head() *Head { return h }

// Collection is everything that a collection's files say. It is not changed once
// Load has returned it.
type Collection struct {
	Files      *source.Set
	About      *About // nil where the collection block is missing
	Location   *time.Location
	Units      quantity.Units // in which its keepers are told what is told
	Rooms      []*Room        // in walking order
	Racks      []*Rack        // by name
	Keepers    []*Keeper      // by name
	Contacts   []*Contact     // by name
	Rounds     []*Round       // by time of day, then name; behind one with a rota its parts
	Rotas      []*Rota        // by name
	Dates      []*Dates       // by name
	Aways      []*Away        // by first day
	Calendars  []*Calendar    // by name
	Deadlines  []*Deadline    // by name
	Templates  []*Template    // by name
	Enclosures []*Enclosure   // in walking order
	Gone       []*Gone        // in the order of files and lines
	Sellers    []*Seller      // by name
	Stores     []*Store       // by name: cultures, tubs and supplies of feeder animals
	Log        []Event        // by day
	Sudden     []Sudden       // absences of which the log tells, by first day
	Library    *Library

	unread     *unread
	said       map[*Enclosure]bool // those of which something was found, or that name dates
	files      []*file             // in the order of their names
	enclosures map[string]*Enclosure
	rounds     map[string]*Round
	rotas      map[string]*Rota
	parted     map[parting][]*Round
	keepers    map[string]*Keeper
	rooms      map[string]*Room
	racks      map[string]*Rack
	tests      map[gaugeAt][]*GaugeTest // of the log
	sellers    map[string]*Seller
	stores     map[string]*Store
	numbered   map[*Enclosure]*numbered // by the block with numbers
	dates      map[string]*Dates
	deadlines  map[string]*Deadline
	outlets    map[string]Written[quantity.Quantity]
	gone       map[string]*Gone // those of enclosures that are not there, by name
	departed   map[string]Departures
	learnt     map[timed]Learnt // how long care takes, by the log
}

// Outlets are the settings of the thermostats that several heaters share, by outlet.
func (c *Collection) Outlets() map[string]Written[quantity.Quantity] { return c.outlets }

// Setting returns the temperature at which a heater is switched off: that of its own
// thermostat, or of the one whose outlet it shares.
func (c *Collection) Setting(h *Heater) Written[quantity.Quantity] {
	if h.Thermostat.At.Written() || !h.Channel.Set() {
		return h.Thermostat
	}
	return c.outlets[h.Channel.V]
}

// WithoutLog returns the collection as if nothing had been logged. All else is shared.
func (c *Collection) WithoutLog() *Collection {
	out := *c
	out.Log, out.Sudden, out.learnt = nil, nil, nil
	return &out
}

// Only returns the collection as if it had some of its enclosures alone. Those of a rack belong
// together, and so do those between which animals were moved: what is said of one of them needs
// the others. All else is shared.
func (c *Collection) Only(some func(*Enclosure) bool) *Collection {
	out := *c
	out.Enclosures = nil
	for _, e := range c.Enclosures {
		if some(e) {
			out.Enclosures = append(out.Enclosures, e)
		}
	}
	out.Racks = nil
	for _, k := range c.Racks {
		if len(k.Enclosures) > 0 && !slices.ContainsFunc(k.Enclosures, func(e *Enclosure) bool { return !some(e) }) {
			out.Racks = append(out.Racks, k)
		}
	}
	return &out
}

// Enclosure returns the enclosure of that name, or nil.
func (c *Collection) Enclosure(name string) *Enclosure { return c.enclosures[name] }

// DatesOf returns the dates block of that name, or nil.
func (c *Collection) DatesOf(name string) *Dates { return c.dates[name] }

// Days returns a list of days with those of dates blocks in the place of their names.
func (c *Collection) Days(list []Written[Day]) []Written[Day] {
	if !slices.ContainsFunc(list, func(d Written[Day]) bool { return d.V.Kind == NamedDays }) {
		return list
	}
	var out []Written[Day]
	for _, d := range list {
		switch of := c.dates[d.V.Name]; {
		case d.V.Kind != NamedDays:
			out = append(out, d)
		case of != nil:
			out = append(out, of.On...)
		}
	}
	return out
}

// Keeper returns the keeper of that name, or nil.
func (c *Collection) Keeper(name string) *Keeper { return c.keepers[name] }

// SharesWith reports whether what enclosures have in common is in two collections of
// one Reader the very same: the collection block, rooms, keepers, rounds, absences,
// calendars, and the feeders and sources of its own. Species sheets belong to the
// enclosures.
func (c *Collection) SharesWith(o *Collection) bool {
	l, m := &c.Library.own, &o.Library.own
	return c.About == o.About && c.Units == o.Units && slices.Equal(c.Rooms, o.Rooms) && slices.Equal(c.Keepers, o.Keepers) && slices.Equal(c.Contacts, o.Contacts) &&
		slices.Equal(c.Rounds, o.Rounds) && slices.Equal(c.Dates, o.Dates) && slices.Equal(c.Aways, o.Aways) && slices.Equal(c.Sudden, o.Sudden) && slices.Equal(c.Calendars, o.Calendars) && slices.Equal(c.Deadlines, o.Deadlines) &&
		maps.Equal(c.learnt, o.learnt) && maps.Equal(l.feeders, m.feeders) && maps.Equal(l.sources, m.sources)
}

// Title returns the title of the collection.
func (c *Collection) Title() string {
	if c.About == nil {
		return "collection"
	}
	return title(c.About.Title, c.About.Name.V)
}

// About is the collection block.
type About struct {
	Head
	Title      Written[string]            `care:"title"`
	TimeZone   Written[string]            `care:"time_zone"`
	Hemisphere Written[string]            `care:"hemisphere"`
	Altitude   Written[quantity.Quantity] `care:"altitude"`
	Units      Written[string]            `care:"units"`
	PaperSize  Written[string]            `care:"paper_size"`
	Clock      Written[string]            `care:"clock"`
	Week       Written[string]            `care:"week"`
	Web        Written[string]            `care:"web"`
	Quarantine Written[quantity.Quantity] `care:"quarantine"`
	Kept       Written[quantity.Interval] `care:"records_kept"`
	Note       Written[string]            `care:"note"`
}

// Room is a room block.
type Room struct {
	Head
	Title       Written[string]         `care:"title"`
	Temperature Written[quantity.Range] `care:"temperature"`
	Winter      Written[quantity.Range] `care:"winter"`
	Summer      Written[quantity.Range] `care:"summer"`
	Humidity    Written[quantity.Range] `care:"humidity"`
	Order       Written[int]            `care:"order"`
	Round       []Written[string]       `care:"round"`
	People      Written[int]            `care:"people"`
	Locked      Written[bool]           `care:"locked"`
	Formerly    Written[string]         `care:"formerly"`
	Note        Written[string]         `care:"note"`
	Gauges      []*Gauge                `care:"gauge"`
}

// Shown returns the title that people see.
func (r *Room) Shown() string { return title(r.Title, r.Name.V) }

// Keeper is a keeper block.
type Keeper struct {
	Head
	Title   Written[string]            `care:"title"`
	Phone   Written[string]            `care:"phone"`
	Trained Written[[]string]          `care:"trained"`
	Budget  Written[quantity.Quantity] `care:"budget"`
	Week    Written[quantity.Quantity] `care:"week"`
	Rest    Written[quantity.Quantity] `care:"rest"`

	Off        []Written[Day]             `care:"off"`
	Break      Written[quantity.Quantity] `care:"break"`
	BreakAfter Written[quantity.Quantity] `care:"break_after"`
	MeanWeek   Written[quantity.Quantity] `care:"mean_week"`
	MeanOver   Written[int]               `care:"mean_over"`
	Rooms      []Written[string]          `care:"rooms"`
	Enclosures []Written[string]          `care:"enclosures"`
	Training   []*Training                `care:"training"`

	Formerly Written[string] `care:"formerly"`
	Note     Written[string] `care:"note"`
}

// Shown returns the title that people see.
func (k *Keeper) Shown() string { return title(k.Title, k.Name.V) }

// Contact is a contact block: somebody to ring who does no care.
type Contact struct {
	Head
	Title Written[string] `care:"title"`
	Phone Written[string] `care:"phone"`
	Role  Written[string] `care:"role"`
	Note  Written[string] `care:"note"`
}

// Shown returns the title that people see.
func (c *Contact) Shown() string { return title(c.Title, c.Name.V) }

// Round is a round block. The round that is used where a plan has none has no
// place and is named "daily".
type Round struct {
	Head
	Title    Written[string]            `care:"title"`
	Clock    Written[civil.Clock]       `care:"at"`
	Keeper   Written[string]            `care:"keeper"`
	Rota     Written[string]            `care:"rota"`
	Within   Written[quantity.Quantity] `care:"within"`
	Start    Written[quantity.Quantity] `care:"start"`
	On       []Written[Day]             `care:"on"`
	NotOn    []Written[Day]             `care:"not_on"`
	AlsoOn   []Written[Day]             `care:"also_on"`
	People   Written[int]               `care:"people"`
	List     Written[string]            `care:"list"`
	Ticked   Written[bool]              `care:"ticked"`
	Formerly Written[string]            `care:"formerly"`
	Note     Written[string]            `care:"note"`

	// Turns is the rota that it names, nil for none.
	Turns *Rota
	// Of is the round of which this is the part that the rota gives to Keeper, nil for a round
	// itself: that has the days of its own keeper. By is then this keeper.
	Of *Round
	By *Keeper
}

// Whole returns the round as the plan writes it: of a part that of which it is one.
func (r *Round) Whole() *Round {
	if r.Of != nil {
		return r.Of
	}
	return r
}

// Shown returns the title that people see.
func (r *Round) Shown() string {
	if r.Title.Set() || !r.At.Written() && r.Title.V != "" { // one that was made has its title
		return r.Title.V
	}
	return title(r.Title, r.Name.V) + " round"
}

// Starts is how many minutes go by before anything is done in it.
func (r *Round) Starts() int { return int(r.Start.V.Value) }

// Daily reports whether the round is held every day, whoever does it.
func (r *Round) Daily() bool { return len(r.On) == 0 && len(r.NotOn) == 0 }

// ListedElsewhere reports whether the round is worked from paper or at the terminal,
// whatever calendars show.
func (r *Round) ListedElsewhere() bool { return r.List.Set() && r.List.V != "calendar" }

// Dates is a dates block: days that several others name.
type Dates struct {
	Head
	Title Written[string] `care:"title"`
	On    []Written[Day]  `care:"on"`
	Note  Written[string] `care:"note"`
}

// Shown returns the title that people see.
func (d *Dates) Shown() string { return title(d.Title, d.Name.V) }

// Away is an away block. Its name is the keeper's.
type Away struct {
	Head
	From   Written[civil.Date] `care:"from"`
	To     Written[civil.Date] `care:"to"`
	Cover  Written[string]     `care:"cover"`
	Visits []Written[Day]      `care:"visits"`
	Note   Written[string]     `care:"note"`

	// Logged says that the log tells of it, and Open that it does not say yet when it ends:
	// To is then as far as is looked.
	Logged, Open bool
}

// Calendar is a calendar block.
type Calendar struct {
	Head
	Title      Written[string]            `care:"title"`
	Rounds     []Written[string]          `care:"rounds"`
	Keepers    []Written[string]          `care:"keepers"`
	Rooms      []Written[string]          `care:"rooms"`
	Enclosures []Written[string]          `care:"enclosures"`
	Kinds      []Written[string]          `care:"kinds"`
	Entry      Written[string]            `care:"entry"`
	Remind     Written[quantity.Quantity] `care:"remind"`
	Color      Written[string]            `care:"color"`
	Formerly   Written[string]            `care:"formerly"`
	Note       Written[string]            `care:"note"`
}

// Shown returns the title that people see.
func (c *Calendar) Shown() string { return title(c.Title, c.Name.V) }

// title returns what people see: the title, or the name with its hyphens read as
// spaces and a capital letter.
func title(written Written[string], name string) string {
	if written.Set() && written.V != "" {
		return written.V
	}
	b := []byte(name)
	for i, c := range b {
		if c == '-' || c == '_' {
			b[i] = ' '
		}
	}
	if len(b) > 0 && b[0] >= 'a' && b[0] <= 'z' {
		b[0] -= 'a' - 'A'
	}
	return string(b)
}
