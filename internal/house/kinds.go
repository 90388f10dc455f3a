package house

// State is a state that animals can be in, as the house knows it.
type State string

// The states of the house. They are told apart by what happened, not by how the program
// calls them.
const (
	Premoult State = "before a moult"
	Moulting State = "moulting"
	Soft     State = "soft"
	Mated    State = "mated"
	Near     State = "two months before a birth is possible"
	Late     State = "birth near"
	Birth    State = "birth"
	Brood    State = "young on her"
	Round    State = "young round her"
	Parted   State = "young just taken out"
	After    State = "after her brood"
	Sac      State = "egg sac"
	Newborn  State = "newborn"
	Settling State = "settling in"
	Paused   State = "meals refused"
	Empty    State = "empty before a cool rest"
	Rest     State = "cool rest"
	Warming  State = "warming up after a cool rest"
)

// Kind is the figures of a species that the house lives by: how its animals live, and
// what they bear at the longest.
type Kind struct {
	Species string
	// Food and Water are the longest without, in days, by stage; no water is no dish.
	Food  map[string]int
	Water int
	// Soft is for how many days after a moult nothing is eaten, by stage.
	Soft  map[string]int
	Prey  bool     // it eats prey, live or killed
	Grown bool     // adults moult too
	Stage []string // by instar, from 1; nil where moults do not change the stage
	// Carry is how many days she carries, OnHer for how many the young ride on her, and
	// Young how many there are. The zero Carry is a species that the house does not breed.
	Carry, OnHer, Young [2]int
	// Sits is how many days she carries a sac before young come out of it; none for a
	// species whose sacs are taken from her.
	Sits [2]int
	// Soonest is the earliest birth after a mating that a keeper reckons with, in days.
	Soonest int
	Alone   bool // she eats her young: they are taken out
}

var (
	scorpion = []string{"newborn", "young", "young", "juvenile", "juvenile", "subadult", "adult"}
	whip     = []string{"newborn", "young", "young", "juvenile", "juvenile", "juvenile", "subadult", "adult"}
	hardens  = map[string]int{"young": 5, "juvenile": 7, "subadult": 10, "adult": 10}
	often    = map[string]int{"young": 7, "juvenile": 14, "subadult": 14, "adult": 14}
)

// kinds are the figures by template. Food and water are what the sheets promise; young
// scorpions at the longest seven days (P11: unfed, all die from the 11th to the 30th
// day); the rest is common practice, no source.
var kinds = map[string]*Kind{
	"emperor":     {Species: "pandinus-imperator", Food: often, Water: 2, Soft: hardens, Prey: true, Stage: scorpion, Carry: [2]int{215, 500}, Soonest: 213, OnHer: [2]int{14, 21}, Young: [2]int{8, 30}},
	"emperors":    {Species: "pandinus-imperator", Food: often, Water: 2, Soft: hardens, Prey: true, Stage: scorpion},
	"emperor-tub": {Species: "pandinus-imperator", Food: often, Water: 2, Soft: hardens, Prey: true, Stage: scorpion},
	"forest":      {Species: "heterometrus", Food: often, Water: 2, Soft: hardens, Prey: true, Stage: scorpion, Carry: [2]int{245, 360}, Soonest: 150, OnHer: [2]int{14, 20}, Young: [2]int{15, 35}},
	"desert": {Species: "hadrurus-arizonensis", Food: map[string]int{"young": 7, "juvenile": 14, "subadult": 21, "adult": 21}, Water: 7, Soft: hardens, Prey: true, Stage: scorpion,
		Carry: [2]int{190, 350}, Soonest: 180, OnHer: [2]int{8, 20}, Young: [2]int{10, 30}, Alone: true},
	"redknee": {Species: "brachypelma-hamorii", Food: map[string]int{"young": 7, "juvenile": 14, "subadult": 21, "adult": 21}, Water: 2, Prey: true, Grown: true,
		Soft: map[string]int{"young": 4, "juvenile": 7, "subadult": 14, "adult": 14}},
	"redknee-tub": {Species: "brachypelma-hamorii", Food: map[string]int{"young": 7, "juvenile": 14, "subadult": 21, "adult": 21}, Water: 2, Prey: true, Grown: true,
		Soft: map[string]int{"young": 4, "juvenile": 7, "subadult": 14, "adult": 14}},
	"vinegaroon": {Species: "mastigoproctus-giganteus", Food: map[string]int{"young": 14, "juvenile": 14, "subadult": 21, "adult": 21}, Water: 2, Prey: true,
		Soft: map[string]int{"young": 7, "juvenile": 7, "subadult": 14, "adult": 14}},
	"whip": {Species: "damon-diadema", Food: map[string]int{"young": 7, "juvenile": 10, "subadult": 21, "adult": 21}, Water: 2, Prey: true, Grown: true, Stage: whip,
		Soft: map[string]int{"young": 5, "juvenile": 5, "subadult": 7, "adult": 7}, Sits: [2]int{60, 98}, OnHer: [2]int{7, 14}, Young: [2]int{20, 50}},
	"millipedes": {Species: "archispirostreptus-gigas", Food: map[string]int{"adult": 31}},
	"woodlice":   {Species: "porcellio-scaber", Food: map[string]int{"adult": 31}},
}

// Pause is for how many days meals wait after two were refused, by stage: young that
// starve die. Common practice, no source.
var Pause = map[string]int{"young": 3, "juvenile": 7, "subadult": 14}

// Never are the kinds of care that a state forbids, and "live" for live prey. They stand
// here once more, by hand, so that a slip in the program's own table is seen. N5, N7 and
// K62 for what disturbs a brood and a moult; the rest is common practice, no source.
var Never = map[State][]string{
	Birth:    {"feed", "dish", "spot-clean", "mist", "moisten", "deep-clean", "weigh", "handle", "rehouse", "count"},
	Brood:    {"live", "dish", "spot-clean", "deep-clean", "weigh", "handle", "rehouse", "count"},
	Round:    {"live", "dish", "deep-clean", "weigh", "handle", "count"},
	Parted:   {"live"},
	After:    {"deep-clean", "weigh", "handle"},
	Newborn:  {"live"},
	Premoult: {"live", "deep-clean", "weigh", "handle", "rehouse"},
	Moulting: {"feed", "dish", "spot-clean", "mist", "moisten", "deep-clean", "weigh", "handle", "rehouse"},
	Soft:     {"live", "deep-clean", "weigh", "handle", "rehouse"},
	Mated:    {"weigh", "handle"},
	Near:     {"deep-clean"},
	Late:     {"live", "dish", "deep-clean", "weigh", "handle", "rehouse"},
	Sac:      {"live", "dish", "spot-clean", "deep-clean", "weigh", "handle", "rehouse"},
	Settling: {"feed", "handle", "weigh"},
	Empty:    {"feed"},
	Rest:     {"feed", "deep-clean", "weigh", "handle", "rehouse"},
	Warming:  {"live"},
}

// Fasts are the states in which no meal need be offered.
var Fasts = []State{Newborn, Premoult, Moulting, Soft, Birth, Brood, Late, Sac, Settling, Paused, Empty, Rest, Warming}
