// Package plan turns the text of care plans and logs into a typed collection in
// which every value keeps its place. It knows what the words mean, not whether
// they are good for the animals: that is the business of package compile.
package plan

import (
	"time"

	"vivary/plan/source"
	"vivary/schema"
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
}

func (h *Head) head() *Head { return h }

// Collection is everything that a collection's files say. It is not changed once
// Load has returned it.
type Collection struct {
	Files      *source.Set
	About      *About // nil where the collection block is missing
	Location   *time.Location
	Rooms      []*Room      // in walking order
	Keepers    []*Keeper    // by name
	Rounds     []*Round     // by time of day, then name
	Aways      []*Away      // by first day
	Calendars  []*Calendar  // by name
	Enclosures []*Enclosure // in walking order
	Templates  []*Template  // by name
	Log        []Event      // by day
	Library    *Library

	enclosures map[string]*Enclosure
	rounds     map[string]*Round
	keepers    map[string]*Keeper
	rooms      map[string]*Room
}

// Enclosure returns the enclosure of that name, or nil.
func (c *Collection) Enclosure(name string) *Enclosure { return c.enclosures[name] }

// Round returns the round of that name, or nil.
func (c *Collection) Round(name string) *Round { return c.rounds[name] }

// Keeper returns the keeper of that name, or nil.
func (c *Collection) Keeper(name string) *Keeper { return c.keepers[name] }

// Room returns the room of that name, or nil.
func (c *Collection) Room(name string) *Room { return c.rooms[name] }

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
	Web        Written[string]            `care:"web"`
	Quarantine Written[quantity.Quantity] `care:"quarantine"`
	Note       Written[string]            `care:"note"`
}

// Room is a room block.
type Room struct {
	Head
	Title       Written[string]         `care:"title"`
	Temperature Written[quantity.Range] `care:"temperature"`
	Humidity    Written[quantity.Range] `care:"humidity"`
	Order       Written[int]            `care:"order"`
	Round       Written[string]         `care:"round"`
	Locked      Written[bool]           `care:"locked"`
	Formerly    Written[string]         `care:"formerly"`
	Note        Written[string]         `care:"note"`
}

// Shown returns the title that people see.
func (r *Room) Shown() string { return title(r.Title, r.Name.V) }

// Keeper is a keeper block.
type Keeper struct {
	Head
	Title    Written[string]            `care:"title"`
	Phone    Written[string]            `care:"phone"`
	Trained  Written[[]string]          `care:"trained"`
	Budget   Written[quantity.Quantity] `care:"budget"`
	Formerly Written[string]            `care:"formerly"`
	Note     Written[string]            `care:"note"`
}

// Shown returns the title that people see.
func (k *Keeper) Shown() string { return title(k.Title, k.Name.V) }

// Round is a round block. The round that is used where a plan has none has no
// place and is named "daily".
type Round struct {
	Head
	Title    Written[string]            `care:"title"`
	Clock    Written[civil.Clock]       `care:"at"`
	Keeper   Written[string]            `care:"keeper"`
	Within   Written[quantity.Quantity] `care:"within"`
	On       []Written[Day]             `care:"on"`
	People   Written[int]               `care:"people"`
	Formerly Written[string]            `care:"formerly"`
	Note     Written[string]            `care:"note"`
}

// Shown returns the title that people see.
func (r *Round) Shown() string {
	if r.Title.Set() {
		return r.Title.V
	}
	return title(r.Title, r.Name.V) + " round"
}

// Away is an away block. Its name is the keeper's.
type Away struct {
	Head
	From   Written[civil.Date] `care:"from"`
	To     Written[civil.Date] `care:"to"`
	Cover  Written[string]     `care:"cover"`
	Visits []Written[Day]      `care:"visits"`
	Note   Written[string]     `care:"note"`
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

// Template is a template block.
type Template struct {
	Head
	Body
}

// Enclosure is an enclosure block, with what it takes from its template.
type Enclosure struct {
	Head
	Title    Written[string] `care:"title"`
	Template Written[string] `care:"template"`
	Body

	Sheet *SpeciesSheet // of Species; nil where there is none of that name
	Place *Room         // of Room; nil where none is named and there is not just one
}

// Shown returns the title that people see.
func (e *Enclosure) Shown() string { return title(e.Title, e.Name.V) }

// Heated reports whether the enclosure has a heater.
func (e *Enclosure) Heated() bool { return e.Climate != nil && len(e.Climate.Heaters) > 0 }

// Group returns the animals of that name, or nil.
func (e *Enclosure) Group(name string) *Animals {
	for _, a := range e.Animals {
		if a.Name.V == name {
			return a
		}
	}
	return nil
}

// Body is what enclosures and templates have in common.
type Body struct {
	Species  Written[string] `care:"species"`
	Room     Written[string] `care:"room"`
	Order    Written[int]    `care:"order"`
	Round    Written[string] `care:"round"`
	Culture  Written[bool]   `care:"culture"`
	Formerly Written[string] `care:"formerly"`
	Note     Written[string] `care:"note"`

	Housing *Housing   `care:"housing"`
	Animals []*Animals `care:"animals"`
	Climate *Climate   `care:"climate"`
	Care    []*Care    `care:"care"`
	Feeding []*Feeding `care:"feeding"`
	Seasons []*Season  `care:"season"`
	Accepts []*Accept  `care:"accept"`
}

// Housing is a housing block.
type Housing struct {
	Head
	Kind        Written[string]            `care:"kind"`
	Inside      Written[quantity.Size]     `care:"inside"`
	Wall        Written[quantity.Quantity] `care:"wall"`
	Lid         Written[[]string]          `care:"lid"`
	Gap         Written[quantity.Quantity] `care:"gap"`
	Vents       Written[string]            `care:"vents"`
	VentsAt     Written[[]string]          `care:"vents_at"`
	Substrate   Written[string]            `care:"substrate"`
	Moisture    Written[string]            `care:"moisture"`
	Depth       Written[quantity.Quantity] `care:"depth"`
	Hides       Written[int]               `care:"hides"`
	Perches     Written[bool]              `care:"perches"`
	Water       Written[string]            `care:"water"`
	DishDepth   Written[quantity.Quantity] `care:"dish_depth"`
	CleanUpCrew Written[bool]              `care:"clean_up_crew"`
	Places      Written[int]               `care:"places"`
}

// LidIs reports whether the lid is described by that word.
func (h *Housing) LidIs(word string) bool {
	for _, w := range h.Lid.V {
		if w == word {
			return true
		}
	}
	return false
}

// Animals is an animals block.
type Animals struct {
	Head
	Title    Written[string]            `care:"title"`
	Count    Written[quantity.Count]    `care:"count"`
	Stage    Written[string]            `care:"stage"`
	Instar   Written[int]               `care:"instar"`
	Length   Written[quantity.Quantity] `care:"length"`
	Mass     Written[quantity.Quantity] `care:"mass"`
	State    Written[string]            `care:"state"`
	Origin   Written[string]            `care:"origin"`
	Paper    Written[string]            `care:"paper"`
	Arrived  Written[civil.Date]        `care:"arrived"`
	Born     Written[civil.Date]        `care:"born"`
	Brood    Written[string]            `care:"brood"`
	Hidden   Written[int]               `care:"hidden"`
	Formerly Written[string]            `care:"formerly"`
	Note     Written[string]            `care:"note"`
}

// Shown returns the title that people see.
func (a *Animals) Shown() string { return title(a.Title, a.Name.V) }

// Climate is a climate block.
type Climate struct {
	Head
	WarmEnd     Written[quantity.Range] `care:"warm_end"`
	CoolEnd     Written[quantity.Range] `care:"cool_end"`
	Night       Written[quantity.Range] `care:"night"`
	Humidity    Written[quantity.Range] `care:"humidity"`
	Thermometer Written[bool]           `care:"thermometer"`
	GaugeTested Written[civil.Date]     `care:"gauge_tested"`
	Heaters     []*Heater               `care:"heater"`
}

// Heater is a heater block; its name is the kind of device.
type Heater struct {
	Head
	Power      Written[quantity.Quantity] `care:"power"`
	Place      Written[string]            `care:"place"`
	Thermostat Written[quantity.Quantity] `care:"thermostat"`
	Swing      Written[quantity.Quantity] `care:"swing"`
	Channel    Written[string]            `care:"channel"`
	Covers     Written[quantity.Quantity] `care:"covers"`
	Hours      Written[quantity.Quantity] `care:"hours"`
	Guarded    Written[bool]              `care:"guarded"`
	UV         Written[bool]              `care:"uv"`
}

// Timing is what care and feeding have in common: when, by whom, and on whose word.
type Timing struct {
	Every     Written[quantity.Interval] `care:"every"`
	On        []Written[Day]             `care:"on"`
	Cron      Written[string]            `care:"cron"`
	AfterLast Written[quantity.Quantity] `care:"after_last"`
	Window    Written[quantity.Quantity] `care:"window"`
	From      Written[civil.Date]        `care:"from"`
	Until     Written[civil.Date]        `care:"until"`
	Round     []Written[string]          `care:"round"`
	Clocks    []Written[civil.Clock]     `care:"at"`
	Minutes   Written[quantity.Quantity] `care:"minutes"`
	Keeper    Written[string]            `care:"keeper"`
	Formerly  Written[string]            `care:"formerly"`
	Source    []Written[string]          `care:"source"`
	Quality   Written[string]            `care:"quality"`
	Seen      Written[civil.Date]        `care:"seen"`
	Off       Written[bool]              `care:"off"`
	Because   Written[string]            `care:"because"`
	Stages    []Written[string]          `care:"stages"`
}

// Care is a care block.
type Care struct {
	Head
	Timing
	Kind   Written[string]            `care:"kind"`
	Task   Written[string]            `care:"task"`
	Amount Written[quantity.Quantity] `care:"amount"`
}

// KindName returns the name of its kind: the one written, else its own name.
func (c *Care) KindName() string { return c.Kind.Or(c.Name.V) }

// Feeding is a feeding block; its name is that of the animals.
type Feeding struct {
	Head
	Timing
	PerAnimal Written[float64]           `care:"per_animal"`
	Prey      Written[Prey]              `care:"prey"`
	Rotate    []Written[Prey]            `care:"rotate"`
	Killed    Written[bool]              `care:"killed"`
	Leftovers Written[quantity.Quantity] `care:"leftovers"`
	GutLoad   Written[bool]              `care:"gut_load"`
	Dusted    Written[bool]              `care:"dusted"`
	Wild      Written[bool]              `care:"wild"`
}

// Menu returns the prey taken in turn, one item where it is always the same.
func (f *Feeding) Menu() []Written[Prey] {
	if len(f.Rotate) > 0 {
		return f.Rotate
	}
	if f.Prey.Set() {
		return []Written[Prey]{f.Prey}
	}
	return nil
}

// Season is a season block.
type Season struct {
	Head
	From    Written[Day]               `care:"from"`
	To      Written[Day]               `care:"to"`
	Ramp    Written[quantity.Quantity] `care:"ramp"`
	Feeding Written[string]            `care:"feeding"`
	Misting Written[string]            `care:"misting"`
	Heating Written[string]            `care:"heating"`
	Note    Written[string]            `care:"note"`
	Climate *SeasonClimate             `care:"climate"`
}

// SeasonClimate is the climate block of a season.
type SeasonClimate struct {
	Head
	WarmEnd  Written[quantity.Range] `care:"warm_end"`
	CoolEnd  Written[quantity.Range] `care:"cool_end"`
	Night    Written[quantity.Range] `care:"night"`
	Humidity Written[quantity.Range] `care:"humidity"`
}

// Accept is an accept block; its name is the rule's.
type Accept struct {
	Head
	Because Written[string]     `care:"because"`
	Until   Written[civil.Date] `care:"until"`
	Source  []Written[string]   `care:"source"`
}

// Prey is a feeder and its size.
type Prey struct{ Feeder, Size string }

// String returns the prey as it is written in a plan.
func (p Prey) String() string {
	if p.Size == "" {
		return p.Feeder
	}
	return p.Feeder + " " + p.Size
}

// Event is one line of a log.
type Event struct {
	At        source.Place
	Date      civil.Date
	Enclosure Written[string]
	Group     Written[string] // empty for a line about the whole enclosure
	Word      *schema.LogWord
	WordAt    source.Place
	Number    Written[float64]  // the number after the word, where there is one
	Args      []Written[string] // what else stands after the word
	Note      string
}

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
