package schema

// This is the table of emergencies: what somebody does who stands alone before the boxes, may
// be afraid, and has this on paper. Each step is one thing to do, in the order in which it is
// done; none has a number of a telephone or of a species, which stand in plan and sheets.

// Emergency is something that goes wrong, and what to do.
type Emergency struct {
	Title  string
	Steps  []string
	Source string // on whose word
}

// Escape is for an animal that is out of its box. EscapeDanger comes instead of it for
// species whose venom is a danger to life, and EscapeGlow after it for those that shine under
// ultraviolet light.
var (
	Escape = Emergency{
		Title: "An animal is out of its box",
		Steps: []string{
			"Shut the door of the room, and lay a towel along the gap beneath it",
			"Shoes on, light on; children and pets stay out",
			"Touch no animal with your hands",
			"You see it: set an empty box over it, slide a card beneath, and a weight on top. Leave it there",
			"You do not see it: along the walls, under and behind things, in dark and warm places",
			"Ring, and say which box it is from and when it was seen last",
		},
		Source: "common practice, no source",
	}
	EscapeDanger = Emergency{
		Title: "Out of its box, and a danger to life",
		Steps: []string{
			"Do not look for it, and do not catch it: everybody leaves the room",
			"Shut the door, and lay a towel along the gap beneath it",
			"Ring at once; nobody goes in before somebody who is trained has come",
		},
		Source: "common practice, no source",
	}
	EscapeGlow = "In the dark it shines under an ultraviolet torch"
)

// Outage is for heat or power that fails.
var Outage = Emergency{
	Title: "The heat or the power fails",
	Steps: []string{
		"Open no box: an open lid lets the warmth out",
		"Look at plug and switch of the heater, and at the light of the room. A switch in the fuse box that has gone off is not put up again before you have rung",
		"Give no food: in the cold nothing is digested",
		"Blankets round the boxes, and their holes left free",
		"Nothing hot into a box or against it: no hot-water bottle, no candle, no hand-warmer",
		"Ring. How long there is stands in the table, what is short of time first",
		"When the heat is back: read every thermometer and write it down. Do not feed until the box has been back in range for 24 hours",
	},
	Source: "S41b: a generator that did not start, hand-warmers that were too hot, animals that were fed while cold; the rest is common practice",
}

// Overheated is for a heater that does not switch off.
var Overheated = Emergency{
	Title: "A box is too hot",
	Steps: []string{
		"Heater off at the plug",
		"Open no lid. A window, if it is cooler outside",
		"Ring, and read the thermometer again after a quarter of an hour",
	},
	Source: "common practice, no source",
}

// HeatWave is for days on which the house gets too hot; Fire for fire and smoke, and Leaving for a
// house that has to be left and in which there is time.
var (
	HeatWave = Emergency{
		Title: "Hot days are coming",
		Steps: []string{
			"Heaters off at the plug by day, before it is hot",
			"Blinds down, windows shut by day and open at night",
			"Boxes down from the upper shelves, out of the sun, as they stand in the table: what has least to spare first",
			"A bottle from the freezer, wrapped in a cloth, on the outside of a box, never inside",
			"A fan into the room, not into a box",
			"Fresh water twice a day. No food while it is too hot",
			"Read every thermometer at noon, at four and at eight, and write it down",
			"A box above what harms: ring, and carry it into the coolest room, its lid shut",
		},
		Source: "enviroliteracy.org, on keeping animals cool in hot weather; the rest is common practice, no source",
	}
	Fire = Emergency{
		Title: "Fire or smoke",
		Steps: []string{
			"Raise the alarm, and ring the emergency number",
			"Everybody out. Shut doors behind you. Count who is out",
			"Do not go back for animals",
			"Tell those who come what lives where, what of it is a danger to life, where the keys are, and to cut the power",
			"Nobody but them goes in before they say so",
		},
		Source: "docslib.org/doc/13272853 and docslib.org/doc/249872, planning guides for keepings; East Devon's conditions for licences ask for a plan for fire and loss of services; the rest is common practice, no source",
	}
	Leaving = Emergency{
		Title: "The house has to be left, and there is time",
		Steps: []string{
			"Only when those in charge say that there is time",
			"Heaters and lamps off at the plug",
			"Boxes stay shut. Each is carried level, in both arms, with its lid held",
			"In the order of the table. What is a danger to life is carried by somebody trained, or stays",
			"Into a warm, dark car, nothing upon another. Count the boxes as they go in",
			"Ring whoever takes them, and write down where each has gone",
		},
		Source: "common practice, no source",
	}
)

// Operator ends every card: who answers an emergency call knows more than a card.
const Operator = "Whoever answers the emergency call knows more than this card: do what they say."

// Sign is something that somebody sees who does not know the animals.
type Sign struct {
	Seen string
	Does string // what they do
}

// NormalSigns look bad and are not; MoultSigns are the same of animals that harden for days
// after a moult, on whose words the table of states stands.
var (
	NormalSigns = []Sign{
		{"Nothing is seen of it", "it is in its hide. Look from outside; lift nothing, dig nothing"},
		{"It has not eaten", "take out what is left, if you may, and write it down"},
	}
	MoultSigns = []Sign{
		{"It lies on its back or hangs, and hardly moves", "it is moulting. Leave the box shut, and look again hours later"},
		{"It is pale, soft and still, with an empty skin beside it", "it has moulted. Give no food, and leave the skin where it is"},
		{"It has shut itself in with soil or web", "leave it shut"},
	}
)

// WrongSigns are not normal: whoever sees one rings. UprightSign is the same of animals that
// do not moult on their backs.
var (
	WrongSigns = []string{
		"A lid is open, or an animal is out",
		"A thermometer shows what harms",
		"Its legs are drawn in beneath it, or it cannot right itself",
		"It bleeds, hangs in its old skin, or has lost a leg",
		"It is much thinner than it was",
		"Many tiny pale things crawl on it, or the box smells",
		"Animals fight, or one eats another",
	}
	UprightSign = "It lies on its back"
)

// StandIn is how anybody stands in, and Never what they do not do whatever happens.
var (
	StandIn = []string{"Do what each round says, and no more", "Lift no animal; open no lid that need not be opened", "Write down what looks wrong, and ring"}
	Never   = []string{
		"Handle no animal, and put no hand where you do not see it",
		"Dig nothing, move nothing, and take out no skin and no young",
		"Give nothing that is not on the list, and not more than it says",
		"Change no thermostat",
		"Open no box of which the list says that it stays shut",
	}
)
