package plan

import (
	"slices"

	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

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
	Numbers  Written[Spans]  `care:"numbers"`
	Formerly Written[string] `care:"formerly"`
	Body
	Apart []*Apart `care:"number"`

	// Of is the name of the block with numbers that it is one of; "" for one that is written
	// out.
	Of string

	Sheet *SpeciesSheet  // of Species; nil where there is none of that name
	Place *Room          // of Room; nil where none is named and there is not just one
	Units quantity.Units // those of the collection

	// What it was made from, besides its sheet and its room.
	block    *Enclosure
	template *Template
	rack     *Rack // as it stands in the file
	share    int   // by how many the power of its heaters is divided

	number int               // of that block
	apart  []*Apart          // those of its block with numbers that are about it
	found  []finding.Finding // what was found when it was put together

	crew []*Animals // blocks named for a clean-up crew, which are none of its animals
}

// SameAs reports whether two enclosures of one Reader's collections are made from
// the very same blocks: their own, the template's, the rack's, the room's and the sheet, and name the
// same prey. Then they mean the same, and every place in them is the same. The log, and what
// enclosures have in common, stand apart.
func (e *Enclosure) SameAs(o *Enclosure) bool {
	if e == o || e == nil || o == nil {
		return e == o
	}
	return e.block != nil && e.block == o.block && e.template == o.template && e.rack == o.rack && e.share == o.share && e.Sheet == o.Sheet && e.Place == o.Place && e.Units == o.Units &&
		slices.Equal(e.Feeding, o.Feeding)
}

// Shown returns the title that people see.
func (e *Enclosure) Shown() string { return title(e.Title, e.Name.V) }

// Differs returns the number blocks that say something of it, of one of several
// enclosures with numbers.
func (e *Enclosure) Differs() []*Apart { return e.apart }

// In reports whether a list of names has it: by its own name, or by that of its block
// with numbers.
func (e *Enclosure) In(names []Written[string]) bool {
	return Lists(names, e.Name.V) || e.Of != "" && Lists(names, e.Of)
}

// Box is the enclosure as findings name it.
func (e *Enclosure) Box() finding.Box { return finding.Box{Whole: e.Whole, Name: e.Name.V} }

// Heated reports whether the enclosure has a heater; a lamp for ultraviolet light is none.
func (e *Enclosure) Heated() bool {
	return e.Climate != nil && slices.ContainsFunc(e.Climate.Heaters, func(h *Heater) bool { return !h.Tube() })
}

// Degrees is the unit in which the keeper reads temperatures.
func (e *Enclosure) Degrees() quantity.Unit { return e.Units.Of(quantity.Celsius) }

// Group returns the animals of that name, or nil.
func (e *Enclosure) Group(name string) *Animals {
	for _, a := range e.Animals {
		if a.Name.V == name {
			return a
		}
	}
	return nil
}

// FeedingOf returns what is written of the meals of some animals, or nil.
func (e *Enclosure) FeedingOf(a *Animals) *Feeding {
	for _, f := range e.Feeding {
		if f.Name.V == a.Name.V {
			return f
		}
	}
	return nil
}

// groups returns the names of the animals blocks, in the order of their lines.
func (e *Enclosure) groups() (names []string) {
	for _, a := range e.Animals {
		names = append(names, a.Name.V)
	}
	return names
}

// Body is what enclosures and templates have in common.
type Body struct {
	Species Written[string]   `care:"species"`
	Room    Written[string]   `care:"room"`
	Rack    Written[string]   `care:"rack"`
	Order   Written[int]      `care:"order"`
	Round   []Written[string] `care:"round"`
	People  Written[int]      `care:"people"`
	Culture Written[bool]     `care:"culture"`
	Note    Written[string]   `care:"note"`

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
	Kind      Written[string]            `care:"kind"`
	Inside    Written[quantity.Size]     `care:"inside"`
	Wall      Written[quantity.Quantity] `care:"wall"`
	Lid       Written[[]string]          `care:"lid"`
	Gap       Written[quantity.Quantity] `care:"gap"`
	Vents     Written[string]            `care:"vents"`
	VentsAt   Written[[]string]          `care:"vents_at"`
	Substrate Written[string]            `care:"substrate"`
	Moisture  Written[string]            `care:"moisture"`
	Depth     Written[quantity.Quantity] `care:"depth"`
	Hides     Written[int]               `care:"hides"`
	Perches   Written[bool]              `care:"perches"`
	Water     Written[string]            `care:"water"`
	DishDepth Written[quantity.Quantity] `care:"dish_depth"`
	Places    Written[int]               `care:"places"`
	StandsOn  Written[string]            `care:"stands_on"`
	ShelfRise Written[quantity.Range]    `care:"shelf_rise"`
	Faces     []*Face                    `care:"face"`
}

// Face is a face block: what lies outside on a wall, on the lid or beneath the floor.
type Face struct {
	Head
	Backing Written[string]            `care:"backing"`
	Thick   Written[quantity.Quantity] `care:"thick"`
	Beside  Written[string]            `care:"beside"`
}

// LidIs reports whether the lid is described by that word.
func (h *Housing) LidIs(word string) bool { return slices.Contains(h.Lid.V, word) }

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
	OnPaper  Written[string]            `care:"paper_species"`
	Checked  Written[civil.Date]        `care:"list_checked"`
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
	Measured    *Measured               `care:"measured"`
	Gauges      []*Gauge                `care:"gauge"`
}

// Gauge is a gauge block: a data logger.
type Gauge struct {
	Head
	Place        Written[string]            `care:"place"`
	Files        []Written[string]          `care:"files"`
	Accuracy     Written[quantity.Quantity] `care:"accuracy"`
	DampAccuracy Written[quantity.Quantity] `care:"humidity_accuracy"`
	Note         Written[string]            `care:"note"`
	Tests        []*GaugeTest               `care:"test"`
}

// GaugeTest is one test of a gauge.
type GaugeTest struct {
	Head
	On          Written[civil.Date]        `care:"on"`
	Beside      Written[quantity.Quantity] `care:"at"`
	Temperature Written[quantity.Quantity] `care:"temperature"`
	Salt        Written[string]            `care:"salt"`
	Humidity    Written[quantity.Quantity] `care:"humidity"`
}

// Measured is a measured block: what thermometers showed.
type Measured struct {
	Head
	On       Written[civil.Date]        `care:"on"`
	Spot     Written[quantity.Quantity] `care:"spot"`
	Air      Written[quantity.Quantity] `care:"air"`
	Room     Written[quantity.Quantity] `care:"room"`
	Humidity Written[quantity.Quantity] `care:"humidity"`
	Power    Written[quantity.Quantity] `care:"power"`
}

// Heater is a heater block.
type Heater struct {
	Head
	Kind       Written[string]            `care:"kind"`
	Power      Written[quantity.Quantity] `care:"power"`
	Place      Written[string]            `care:"place"`
	Thermostat Written[quantity.Quantity] `care:"thermostat"`
	Probe      Written[string]            `care:"probe"`
	Swing      Written[quantity.Quantity] `care:"swing"`
	Channel    Written[string]            `care:"channel"`
	Size       Written[quantity.Face]     `care:"size"`
	Length     Written[quantity.Quantity] `care:"length"`
	Covers     Written[quantity.Quantity] `care:"covers"`
	Contact    Written[string]            `care:"contact"`
	Hours      Written[quantity.Quantity] `care:"hours"`
	Guarded    Written[bool]              `care:"guarded"`
	UV         Written[bool]              `care:"uv"`
}

// tube is the most power of a lamp for ultraviolet light that hardly warms, in W. Common
// practice, no source: tubes and compact lamps are sold with 5 to 26 W, those that heat as
// well from 50 W on.
const tube = 26

// What returns the kind of device: what is written as such, or the name.
func (h *Heater) What() string {
	if name := schema.Called(schema.HeaterKinds, h.Name.V); name != "" && !h.Kind.Set() {
		return name
	}
	return h.Kind.Or(h.Name.V)
}

// Tube reports whether it is a lamp for ultraviolet light and not for heat: a timer
// switches it, and no thermostat.
func (h *Heater) Tube() bool {
	return h.UV.V && h.What() == "lamp" && h.Power.Set() && h.Power.V.Value <= tube
}

// Timing is what care and feeding have in common: when, by whom, and on whose word.
type Timing struct {
	Every     Written[quantity.Interval] `care:"every"`
	On        []Written[Day]             `care:"on"`
	NotOn     []Written[Day]             `care:"not_on"`
	AlsoOn    []Written[Day]             `care:"also_on"`
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

	Unsure bool // a value beside it could not be read
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
func (c *Care) KindName() string {
	if c.Kind.Set() {
		return c.Kind.V
	}
	return kindCalled(c.Name.V)
}

// What returns the kind of care, or nil where there is none of that name.
func (c *Care) What() *schema.CareKind { return schema.FindKind(c.KindName()) }

// Feeding is a feeding block; its name is that of the animals.
type Feeding struct {
	Head
	Timing
	PerAnimal Written[float64]           `care:"per_animal"`
	Prey      Written[Prey]              `care:"prey"`
	Rotate    []Written[Prey]            `care:"rotate"`
	Killed    Written[bool]              `care:"killed"`
	Leftovers Written[quantity.Quantity] `care:"leftovers"`
	LookIn    []Written[string]          `care:"leftovers_round"`
	GutLoad   Written[bool]              `care:"gut_load"`
	Dusted    Written[bool]              `care:"dusted"`
	Wild      Written[bool]              `care:"wild"`

	typed *Feeding // as it stands in the file, where the prey is written by another name
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
	Off     Written[bool]              `care:"off"`
	Note    Written[string]            `care:"note"`
	Climate *SeasonClimate             `care:"climate"`
}

func (s *Season) leftOut() bool { return s.Off.V }

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
