package plan

import (
	"cmp"
	"math"
	"slices"
	"strconv"

	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
	"vivary/schema/zone"
)

// Seller is a seller block: somebody who sells feeder animals.
type Seller struct {
	Head
	Title     Written[string]            `care:"title"`
	Delivers  []Written[Day]             `care:"delivers"`
	Fetched   Written[bool]              `care:"fetched"`
	Lead      Written[int]               `care:"lead"`
	Closed    []Written[Day]             `care:"closed"`
	Frost     []Written[Day]             `care:"frost"`
	Heat      []Written[Day]             `care:"heat"`
	HeldBelow Written[quantity.Quantity] `care:"held_below"`
	HeldAbove Written[quantity.Quantity] `care:"held_above"`
	Depot     Written[bool]              `care:"depot"`
	Formerly  Written[string]            `care:"formerly"`
	Note      Written[string]            `care:"note"`
}

// Shown returns the title that people see.
func (s *Seller) Shown() string { return title(s.Title, s.Name.V) }

// StoreBody is what cultures, tubs and supplies have in common.
type StoreBody struct {
	Title       Written[string]            `care:"title"`
	Prey        Written[Prey]              `care:"prey"`
	GutLoad     Written[quantity.Quantity] `care:"gut_load"`
	Loss        Written[quantity.Quantity] `care:"loss"`
	AllowedHere Written[bool]              `care:"allowed_here"`
	Room        Written[string]            `care:"room"`
	Round       []Written[string]          `care:"round"`
	Formerly    Written[string]            `care:"formerly"`
	Note        Written[string]            `care:"note"`
}

// Tending is what tubs and cultures say of the care of the feeders in them.
type Tending struct {
	Tend    Written[quantity.Interval] `care:"tend"`
	WetFood Written[bool]              `care:"wet_food"`
}

// Supply is a supply block: feeder animals that are bought again and again.
type Supply struct {
	Head
	StoreBody
	Seller  Written[string]            `care:"seller"`
	Packs   []Written[int]             `care:"packs"`
	Every   Written[quantity.Interval] `care:"every"`
	Weekly  Written[int]               `care:"weekly"`
	Margin  Written[quantity.Quantity] `care:"margin"`
	Besides Written[quantity.Range]    `care:"besides"`
}

// Tub is a tub block: a box of feeder animals.
type Tub struct {
	Head
	StoreBody
	Tending
	Count       Written[int]            `care:"count"`
	Counted     Written[civil.Date]     `care:"counted"`
	Temperature Written[quantity.Range] `care:"temperature"`
	Frozen      Written[bool]           `care:"frozen"`
}

// Culture is a culture block: feeder animals that breed.
type Culture struct {
	Head
	StoreBody
	Tending
	Temperature Written[quantity.Range]    `care:"temperature"`
	Night       Written[quantity.Quantity] `care:"night"`
	Lead        Written[quantity.Quantity] `care:"lead"`
	Lasts       Written[quantity.Quantity] `care:"lasts"`
	AtOnce      Written[int]               `care:"at_once"`
	Yields      Written[quantity.Range]    `care:"yields"`
	From        Written[civil.Date]        `care:"from"`
}

// Store is a culture, a tub or a supply, whichever of the three is not nil, joined to what it
// names.
type Store struct {
	*Head
	*StoreBody
	Supply  *Supply
	Tub     *Tub
	Culture *Culture
	Of      Prey         // the prey by the names of the sheets; no feeder where there is none
	Sheet   *FeederSheet // of the feeder, or nil
	From    *Seller      // of a supply, or nil
	// Stop is the store as rounds pass it: a place with its name, title, room and round, and
	// no animals.
	Stop *Enclosure
}

// Shown returns the title that people see.
func (s *Store) Shown() string { return title(s.Title, s.Name.V) }

// Kind is what type of block it is.
func (s *Store) Kind() *schema.Block {
	switch {
	case s.Supply != nil:
		return schema.Supply
	case s.Tub != nil:
		return schema.Tub
	}
	return schema.Culture
}

// tropics is the latitude, in degrees, nearer to the equator than which no half of the
// year is called summer.
const tropics = 10

// South reports whether the collection has its summer in December; false, false where
// nobody can say.
func (c *Collection) South() (is, known bool) {
	if c.About == nil {
		return false, false
	}
	if h := c.About.Hemisphere; h.Set() {
		return h.V == "south", !h.Bad
	}
	at, ok := zone.Latitude(c.About.TimeZone.V)
	return at < 0, ok && math.Abs(at) >= tropics
}

// Store returns the culture, tub or supply of that name, or nil.
func (c *Collection) Store(name string) *Store { return c.stores[name] }

// joinStores joins cultures, tubs and supplies to their prey, seller and room.
func (r *resolver) joinStores() {
	c := r.c
	c.stores, c.Stores = map[string]*Store{}, nil
	add := func(s Store) {
		if s.Name.V == "" {
			return // said already
		}
		name := s.Name.V
		if o := c.stores[name]; o != nil {
			r.found.Add(duplicate(s.Kind().Name+" "+quote(name)+", as a "+o.Kind().Name+",", s.Head, o.Head))
			return
		}
		if also := r.alsoCalled(name); also != nil {
			r.found.Add(finding.Finding{Rule: ruleTwice, At: s.At, Text: s.Kind().Name + named(s.Head) + " has the name of an enclosure or a rack: the log could mean either",
				Write: "give one of them another name", Also: []finding.Related{{At: also.At, Text: "the other"}}})
			return
		}
		c.stores[name] = &s
		c.Stores = append(c.Stores, &s)
	}
	for _, x := range r.blocks.supplies {
		add(Store{Head: &x.Head, StoreBody: &x.StoreBody, Supply: x})
	}
	for _, x := range r.blocks.tubs {
		add(Store{Head: &x.Head, StoreBody: &x.StoreBody, Tub: x})
	}
	for _, x := range r.blocks.cultures {
		add(Store{Head: &x.Head, StoreBody: &x.StoreBody, Culture: x})
	}
	bounded(r, &c.Stores, "cultures, tubs and supplies", maxStores)
	bounded(r, &c.Sellers, "sellers", maxStores)
	slices.SortStableFunc(c.Stores, func(a, b *Store) int { return cmp.Compare(a.Name.V, b.Name.V) })
	for _, s := range c.Stores {
		r.store(s)
	}
	for _, s := range c.Sellers {
		r.days(s.Delivers, s.Closed, s.Frost, s.Heat)
	}
}

// mostLoss is the greatest loss in a week, in percent, that is reckoned with.
const mostLoss = 90

// maxStores is how many cultures, tubs and supplies are read, and how many sellers.
const maxStores = 200

// alsoCalled returns the enclosure or the rack of a name, or nil.
func (r *resolver) alsoCalled(name string) *Head {
	if e := r.c.enclosures[name]; e != nil {
		return &e.Head
	}
	if k := r.c.racks[name]; k != nil {
		return &k.Head
	}
	return nil
}

// store joins one culture, tub or supply.
func (r *resolver) store(s *Store) {
	c := r.c
	if s.Prey.Set() {
		r.prey(s.Prey)
		if of := c.Library.asNamed(s.Prey).V; c.Library.has(of) {
			s.Of, s.Sheet = of, c.Library.Feeder(of.Feeder)
		}
	}
	for _, w := range s.Round {
		if c.rounds[w.V] == nil {
			r.unknownName(w, "round", keysOf(r, "round", c.rounds))
		}
	}
	place := c.rooms[s.Room.V]
	switch {
	case s.Room.Set() && place == nil:
		r.unknownName(s.Room, "room", keysOf(r, "room", c.rooms))
	case !s.Room.Set() && len(c.Rooms) == 1:
		place = c.Rooms[0]
	}
	s.Stop = &Enclosure{Head: *s.Head, Title: s.Title, Formerly: s.Formerly, Body: Body{Room: s.Room, Round: s.Round}, Place: place, Units: c.Units}
	if x := s.Supply; x != nil {
		if s.From = c.sellers[x.Seller.V]; x.Seller.Set() && s.From == nil {
			r.unknownName(x.Seller, "seller", keysOf(r, "seller", c.sellers))
		}
		if x.Every.Set() && (x.Every.V.Unit != quantity.Week || x.Every.V.N > 8) {
			r.found.Add(finding.Finding{Rule: ruleValue, At: x.Every.At, Text: "an order is for whole weeks, eight at the most", Write: "week, or 2 weeks"})
		}
	}
	if s.Loss.Set() && s.Loss.V.Value > mostLoss {
		r.found.Add(finding.Finding{Rule: ruleValue, At: s.Loss.At, Text: "where " + s.Loss.V.String() + " die in a week none are left to be fed", Write: "how many die in a week, as a share of those that there are"})
	}
	if x := s.Tub; x != nil && x.Count.Set() != x.Counted.Set() && !x.Unread {
		at, lack := x.Count.At, "counted, the day on which that was"
		if !x.Count.Set() {
			at, lack = x.Counted.At, "count, how many there were on that day"
		}
		r.found.Add(finding.Finding{Rule: ruleMissing, At: at, Text: "tub" + named(s.Head) + " says half of what was counted", Write: lack})
	}
	if x := s.Culture; x != nil && x.AtOnce.Set() && (x.AtOnce.V < 1 || x.AtOnce.V > 1000) {
		r.found.Add(finding.Finding{Rule: ruleValue, At: x.AtOnce.At, Text: strconv.Itoa(x.AtOnce.V) + " cultures cannot yield at once", Write: "from 1 to 1,000"})
	}
}

// OfStore reports whether a line of that word may be about a culture, a tub or a supply.
func OfStore(w *schema.LogWord) bool {
	return w.Subject == schema.OfStock || w == schema.WordCounted || w == schema.WordDone || w == schema.WordSkipped || w == schema.WordRemark || w == schema.WordWithdrawn
}

// joinedStore looks at a line of the log that names a culture, a tub or a supply. What it says
// of animals in enclosures is kept as a remark.
func (r *resolver) joinedStore(e *Event, s *Store) {
	if !e.Group.Set() && OfStore(e.Word) {
		return
	}
	word := "this"
	if e.Word != nil {
		word = quote(e.Word.Name)
	}
	e.remark(finding.Finding{Rule: ruleLogLine, At: e.WordAt, Text: quote(s.Name.V) + " is a " + s.Kind().Name + " of feeder animals, of which the log takes what came, was counted or was done: " + word + " is a remark, from which nothing follows",
		Write: wording.Or([]string{schema.WordStarted.Name, schema.WordHarvested.Name, schema.WordCrashed.Name, schema.WordDelivered.Name, schema.WordCounted.Name}) + "; or an enclosure in its place"})
}
