package schema

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

var manners = [...]string{"as usual", "through the hatch, lift nothing", "from outside, open nothing", "not now"}

// String says it for a keeper.
func (m Manner) String() string { return manners[m] }

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

var rowNames = [Rows]string{"", "look", "reading", "water", "scrub the dish", "mist", "spot clean", "live meal", "killed meal",
	"leftovers", "test of devices", "new substrate", "full count", "handle, weigh, pair", "rehouse, separate"}

// String is the row's name as it stands at the table.
func (r Row) String() string { return rowNames[r] }

// May is a cell of the table: how what is in one row may be done in one state.
type May struct {
	Manner Manner
	Words  string // what to mind, for the person in front of the tank: "far end only"; often empty
	Every  int    // at most once in so many days; 0 for as often as planned
	From   int    // Held before so many days of the state have gone by
	Source string // on whose word: codes of sources; "" for common practice, no source
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

// The states. In each table what is not named is as usual.
var (
	StateIll        = listed(&States, State{Name: "ill", Is: "ill", Rule: "as the veterinarian says; do not handle more than needed", Doc: "It is ill, or hurt in a way that needs watching.", May: [Rows]May{}})
	StateInjured    = listed(&States, State{Name: "injured", Is: "injured", Rule: "killed prey only, do not handle", Doc: "It has lost a limb, bleeds or has fallen.", May: [Rows]May{RowLive: {Manner: Held}, RowHandle: {Manner: Held}}})
	StateTreated    = listed(&States, State{Name: "treated", Is: "under treatment", Rule: "as the veterinarian says", Doc: "A veterinarian's course of treatment.", May: [Rows]May{}})
	StateRefused    = listed(&States, State{Name: "refused", Is: "meals refused", Rule: "no food for now", Doc: "It refused its last meals.", May: [Rows]May{RowLive: {Manner: Held}, RowKilled: {Manner: Held}}})
	StatePremoult   = listed(&States, State{Name: "premoult", Is: "before a moult", Rule: "water through the hatch, no food, do not dig", Doc: "It is about to moult.", May: [Rows]May{RowLive: {Manner: Held}, RowKilled: {Manner: Held}, RowDeep: {Manner: Held}, RowCount: {Manner: Held}, RowHandle: {Manner: Held}, RowRehouse: {Manner: Held}}})
	StateMoulting   = listed(&States, State{Name: "moulting", Is: "moulting", Rule: "open nothing", Doc: "It hangs, or lies on its back, and is moulting.", May: [Rows]May{RowMist: {Manner: Held}, RowLive: {Manner: Held}, RowKilled: {Manner: Held}, RowDeep: {Manner: Held}, RowCount: {Manner: Held}, RowHandle: {Manner: Held}, RowRehouse: {Manner: Held}}})
	StateSoft       = listed(&States, State{Name: "soft", Is: "soft after a moult", Rule: "water only, lift nothing", Doc: "It has moulted and its fangs or sting are soft.", May: [Rows]May{RowLive: {Manner: Held}, RowKilled: {Manner: Held}}})
	StateHardening  = listed(&States, State{Name: "hardening", Is: "hardening after a moult", Rule: "do not dig, do not handle", Doc: "It eats again, but is not yet hard enough to be handled.", May: [Rows]May{RowDeep: {Manner: Held}, RowCount: {Manner: Held}, RowHandle: {Manner: Held}, RowRehouse: {Manner: Held}}})
	StateGravid     = listed(&States, State{Name: "gravid", Is: "may be gravid", Rule: "do not dig, do not handle; look first", Doc: "Mated, or thought to carry young; no signs of a birth near.", May: [Rows]May{RowDeep: {Manner: Held}, RowCount: {Manner: Held}, RowHandle: {Manner: Held}, RowRehouse: {Manner: Held}}})
	StateGravidLate = listed(&States, State{Name: "gravid-late", Is: "birth near", Rule: "water through the hatch, lift nothing", Doc: "She refuses, is sealed in or shows signs: a birth is near.", May: [Rows]May{RowDeep: {Manner: Held}, RowCount: {Manner: Held}, RowHandle: {Manner: Held}, RowRehouse: {Manner: Held}}})
	StateBirth      = listed(&States, State{Name: "birth", Is: "giving birth", Rule: "leave alone", Doc: "The first two days of a birth.", May: [Rows]May{RowDeep: {Manner: Held}, RowCount: {Manner: Held}, RowHandle: {Manner: Held}, RowRehouse: {Manner: Held}}})
	StateBrood      = listed(&States, State{Name: "brood", Is: "young on her", Rule: "water through the hatch, lift nothing", Doc: "Young ride on her, before their first moult.", May: [Rows]May{RowDeep: {Manner: Held}, RowCount: {Manner: Held}, RowHandle: {Manner: Held}, RowRehouse: {Manner: Held}}})
	StateSac        = listed(&States, State{Name: "sac", Is: "with an egg sac", Rule: "water through the hatch, no food, lift nothing", Doc: "She carries or guards an egg sac or ootheca.", May: [Rows]May{RowLive: {Manner: Held}, RowKilled: {Manner: Held}, RowDeep: {Manner: Held}, RowCount: {Manner: Held}, RowHandle: {Manner: Held}, RowRehouse: {Manner: Held}}})
	StateYoungRound = listed(&States, State{Name: "young-round", Is: "young round her", Rule: "killed prey only, lift nothing", Doc: "The young have moulted and are off her or round her.", May: [Rows]May{RowLive: {Manner: Held}, RowDeep: {Manner: Held}, RowCount: {Manner: Held}, RowHandle: {Manner: Held}}})
	StateNewborn    = listed(&States, State{Name: "newborn", Is: "on their mother", Rule: "no food: they live on their reserves", Doc: "Young before their first moult. They cannot feed.", May: [Rows]May{RowLive: {Manner: Held}, RowKilled: {Manner: Held}, RowDeep: {Manner: Held}, RowCount: {Manner: Held}, RowHandle: {Manner: Held}, RowRehouse: {Manner: Held}}})
	StateAfterBrood = listed(&States, State{Name: "after-brood", Is: "after her brood", Rule: "do not handle, do not dig", Doc: "A mother whose young are out, for two weeks.", May: [Rows]May{RowDeep: {Manner: Held}, RowHandle: {Manner: Held}, RowRehouse: {Manner: Held}}})
	StateQuarantine = listed(&States, State{Name: "quarantine", Is: "in quarantine", Rule: "last in the round, tools of its own", Doc: "Kept apart after it came.", May: [Rows]May{}})
	StateMites      = listed(&States, State{Name: "mites", Is: "mites", Rule: "last in the round, tools of its own", Box: true, Doc: "Mites were seen, and the clean weeks are not over.", May: [Rows]May{}})
	StateRest       = listed(&States, State{Name: "rest", Is: "cool rest", Rule: "water and a look, no food, do not dig", Box: true, Doc: "A cool rest, with heaters off or down.", May: [Rows]May{RowDeep: {Manner: Held}, RowHandle: {Manner: Held}, RowRehouse: {Manner: Held}, RowCount: {Manner: Held}}})
	StateSettling   = listed(&States, State{Name: "settling", Is: "settling in", Rule: "water only for now, do not handle", Doc: "It came a few days ago.", May: [Rows]May{RowLive: {Manner: Held}, RowKilled: {Manner: Held}, RowHandle: {Manner: Held}}})
)
