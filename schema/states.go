package schema

import (
	"strconv"
	"strings"
)

// Manner says how a kind of care may be done while animals are in a state. Higher is
// stricter: of two states the higher one decides.
type Manner uint8

const (
	// AsUsual is without a restriction.
	AsUsual Manner = iota
	// Hatch is through the hatch or a gap of the lid, with tongs or a bottle; nothing is
	// lifted, nothing is dug.
	Hatch
	// Outside is from outside: nothing is opened.
	Outside
	// Held is not at all.
	Held
)

// Manners are the words for the manners in a species sheet, in their order.
var Manners = choices(
	"usual", "as usual",
	"hatch", "through the hatch, lift nothing",
	"outside", "from outside, open nothing",
	"held", "not now")

// String says it for a keeper.
func (m Manner) String() string { return Manners[m].Doc }

// FindManner returns the manner that a sheet calls by that word.
func FindManner(word string) (Manner, bool) {
	for i, m := range Manners {
		if m.Name == word {
			return Manner(i), true
		}
	}
	return 0, false
}

// Row is a row of the table of states: what kinds of care have in common when it is
// asked whether they may be done.
type Row uint8

// The rows of the table.
const (
	RowFree    Row = iota // nothing at the animals: always as usual
	RowLook               // seeing lid and animals
	RowReading            // temperature, humidity, the feel of the substrate
	RowWater              // drinking water: never Held by anything
	RowDish               // scrubbing the dish
	RowMist               // misting, watering of the substrate
	RowClean              // spot cleaning, topping up litter
	RowLive               // a meal of live prey
	RowKilled             // a meal of killed prey, or of what does not move
	RowRemains            // taking out what was not eaten
	RowDevice             // tests of heaters and gauges, from outside
	RowDeep               // change of substrate
	RowCount              // digging for a head count
	RowHandle             // handling, weighing, pairing
	RowRehouse            // moving, separating
	Rows
)

// RowWords are the words for the rows in a species sheet, in their order, RowLook
// first. They do not change: sheets are written with them.
var RowWords = choices(
	"look", "look",
	"reading", "reading",
	"water", "water",
	"dish", "scrub the dish",
	"mist", "mist",
	"clean", "spot clean",
	"live", "live meal",
	"killed", "killed meal",
	"leftovers", "leftovers",
	"devices", "test of devices",
	"substrate", "new substrate",
	"count", "full count",
	"handle", "handle, weigh, pair",
	"rehouse", "rehouse, separate")

// AllRows is the word for every row in a species sheet.
const AllRows = "all"

// Word is the row's word in a species sheet; empty for RowFree.
func (r Row) Word() string {
	if r == RowFree {
		return ""
	}
	return RowWords[r-1].Name
}

// String is the row's name as it stands at the table.
func (r Row) String() string {
	if r == RowFree {
		return ""
	}
	return RowWords[r-1].Doc
}

// FindRows returns the rows that a sheet means by a word; none where it is not known.
func FindRows(word string) (rows []Row) {
	for i, w := range RowWords {
		if w.Name == word || word == AllRows {
			rows = append(rows, Row(i+1))
		}
	}
	return rows
}

// May is a cell of the table: how what is in one row may be done in one state.
type May struct {
	Manner Manner
	Words  string // what to mind, for the person in front of the tank: "far end only"; often empty
	Every  int    // at most once in so many days; 0 for as often as planned
	From   int    // Held before so many days of the state have gone by
	Source string // on whose word: codes of sources; "" for common practice, no source
}

// String says the cell in a few words: "through the hatch, lift nothing; at most every
// 7 days; far end only".
func (m May) String() string {
	parts := []string{m.Manner.String()}
	if m.From > 0 {
		parts = append(parts, "not before day "+strconv.Itoa(m.From))
	}
	if m.Every > 0 {
		parts = append(parts, "at most every "+strconv.Itoa(m.Every)+" days")
	}
	if m.Words != "" {
		parts = append(parts, m.Words)
	}
	return strings.Join(parts, "; ")
}

// Weaker reports whether it allows what another does not: a milder manner, more often,
// or sooner.
func (m May) Weaker(than May) bool {
	switch {
	case m.Manner != than.Manner:
		return m.Manner < than.Manner
	case m.Manner == Held:
		return false
	}
	return m.From < than.From || than.Every > 0 && (m.Every == 0 || m.Every < than.Every)
}

// State is a state that animals are in, and what may be done with their enclosure
// meanwhile.
type State struct {
	Name string
	// Is is the state in a few words, as it stands in an entry: "young on her back".
	Is string
	// Rule is what may be done, in one short line for the person in front of the tank:
	// "water only, lift nothing". It begins without a capital.
	Rule string
	// Box says that it is the whole box's: what is held for one is held for all who live
	// there. Where it is not set, companions keep their care, but no loose live prey is
	// given while the state holds live meals, and nobody digs.
	Box bool
	Doc string
	May [Rows]May
}

func (s *State) name() string { return s.Name }

// Of returns the cell of a kind of care. A meal has two rows: of live prey, and of
// killed prey.
func (s *State) Of(k *CareKind, killed bool) May {
	row := k.Row
	if row == RowLive && killed {
		row = RowKilled
	}
	return s.May[row]
}

// Usual reports whether care of a kind is done in the state as ever, with nothing to mind.
func (s *State) Usual(k *CareKind) bool {
	for _, killed := range []bool{false, true} {
		m := s.Of(k, killed)
		if m.Source = ""; m != (May{}) {
			return false
		}
	}
	return true
}

// States are the states that animals may be in.
var States []*State

// FindState returns the state of that name, or nil.
func FindState(name string) *State {
	for _, s := range States {
		if s.Name == name {
			return s
		}
	}
	return nil
}

// cells are what several rows of a state have in common.
type cells struct {
	may  May
	rows []Row
}

// In a state usual, hatch, outside and held say how what stands in some rows may be
// done, with what to mind.
func usual(words string, rows ...Row) cells   { return cells{May{Manner: AsUsual, Words: words}, rows} }
func hatch(words string, rows ...Row) cells   { return cells{May{Manner: Hatch, Words: words}, rows} }
func outside(words string, rows ...Row) cells { return cells{May{Manner: Outside, Words: words}, rows} }
func held(rows ...Row) cells                  { return cells{May{Manner: Held}, rows} }

// mind gives cells their words, by their sources; from and every their days.
func (c cells) mind(words string) cells { c.may.Words = words; return c }
func (c cells) by(source string) cells  { c.may.Source = source; return c }
func (c cells) from(days int) cells     { c.may.From = days; return c }
func (c cells) every(days int) cells    { c.may.Every = days; return c }

// state lists a state with its cells. What no cell names is as usual.
func state(s State, table ...cells) *State {
	for _, c := range table {
		for _, r := range c.rows {
			s.May[r] = c.may
		}
	}
	return listed(&States, s)
}
