package schema

// What keepers call the things of an enclosure is from their glossaries and shops, and from
// memory: common practice, no source. What is called the same by two keepers and means two
// things is a Question.

// HousingKinds are what walls are made of.
var HousingKinds = choices(
	"glass | tank | glass tank | aquarium | glass terrarium", "glass panes",
	"acrylic | acrylic glass | acrylic box", "acrylic panes",
	"tub | plastic | plastic tub | plastic box | storage box | storage tub | deli cup | cup", "a plastic tub",
	"pvc | PVC box | PVC cage", "PVC boards",
	"wood | wooden | wooden vivarium | plywood", "wooden boards",
	"mesh | mesh cage | screen | screen cage | net cage", "mesh on all sides",
)

// UnclearHousings are the words for a box that do not say of what it is.
var UnclearHousings = []Question{
	{[]string{"vivarium", "terrarium", "viv", "terra", "cage", "box", "enclosure"}, "it does not say what the walls are made of, and each lets heat through in its own way", "one of: glass, acrylic, tub, pvc, wood, mesh"},
}

// Lids say what a lid is and how it is held.
var Lids = choices(
	"solid | closed | full | solid lid", "a closed lid",
	"mesh | screen | screen lid | screen top | mesh lid | wire mesh", "a mesh lid",
	"part mesh | half mesh | partly mesh | part screen | half screen", "a lid partly of mesh",
	"latched | latch | latches | clip | clips | clipped | clamped | snap lid", "held by a latch or clip",
	"locked | lock | padlock | padlocked", "held by a lock",
	"loose | not held | lies on top | unlatched", "lies on top",
)

// Vents say how air gets through.
var Vents = choices(
	"none | no | sealed | airtight", "sealed or gasketed",
	"few | little | a few holes", "loose lid or a few small holes",
	"some | holes | normal", "holes or mesh of about 1 to 3 % of the lid",
	"cross | cross ventilation | cross-ventilated | crossflow | both sides | opposite sides", "openings on opposite sides",
	"top | mesh top | whole top", "the whole top is mesh",
	"all | all round | all sides", "mesh all round",
)

// Moistures say how damp a substrate is kept.
var Moistures = choices(
	"dry | bone dry | dry through", "dry through",
	"damp below | moist below | damp underneath | dry on top", "dry on top, damp below",
	"damp | moist | damp through", "damp through",
	"wet | soaked | soaking | swampy", "wet through",
)

// Waters say where the animals drink.
var Waters = choices(
	"dish | water dish | bowl | water bowl | water cup", "a dish that always holds water",
	"none | no | no dish", "no dish",
)

// Stands are what is beneath a box.
var Stands = choices(
	"board | shelf | wooden shelf | wood | table", "a wooden shelf",
	"feet | spacers | on feet", "feet or spacers, with air beneath",
	"foam | polystyrene | foam board", "a sheet of foam",
	"wire | wire rack | wire shelf | open shelf", "an open shelf",
)

// Faces are the words for a face of an enclosure.
var Faces = choices("back | rear", "the back wall", "front", "the front", "left", "the left wall", "right", "the right wall", "walls | all walls", "all four walls", "lid | top", "the lid", "base | floor | bottom", "the floor")

// Stages are the stages of life, youngest first.
var Stages = choices(
	"newborn | on the mother | on her back", "on the mother, before the first moult",
	"young | sling | slings | spiderling | spiderlings | small", "small, after leaving the mother",
	"juvenile | juvie | juvi | juv | half grown", "half grown",
	"subadult | sub | penultimate | penult | pen", "one moult before maturity",
	"adult | adults | mature | matured | grown | full grown | fully grown | mature male | mature female | adult male | adult female | MM | MF | AF | ultimate", "mature",
)

// UnclearStages are the words for a stage that mean several.
var UnclearStages = []Question{
	{[]string{"scorpling", "scorplings", "baby", "babies", "hatchling", "hatchlings", "nymph", "nymphs", "larva", "mantling", "neonate", "pulli", "plings"},
		"it says small, and not whether they are with their mother still", "newborn while they are on the mother, young after that, juvenile when half grown"},
	{[]string{"i1", "i2", "i3", "i4", "i5", "i6", "i7", "i8", "i9", "1i", "2i", "3i", "4i", "5i", "6i", "7i", "8i", "9i",
		"L1", "L2", "L3", "L4", "L5", "L6", "L7", "L8", "L9", "F1", "F2", "F3", "FH1", "FH2", "FH3", "FH4", "N1", "N2",
		"instar 1", "instar 2", "instar 3", "instar 4", "instar 5", "instar 6", "instar 7", "instar 8", "instar 9",
		"1st instar", "2nd instar", "3rd instar", "4th instar", "5th instar", "6th instar", "7th instar", "8th instar"},
		"it is an instar, and keepers count these in two ways", "its number as instar, beside stage or in its place: 1 is the one on the mother's back or in the sac, and 2 begins with the first moult"},
	{[]string{"male", "female", "unsexed"}, "it is a sex", "as count 1.0 for a male, 0.1 for a female, 0.0.1 where it is not known; and here the stage"},
	{[]string{"PM", "PM male"}, "it may be penultimate or before a moult", "subadult; or the word premoult in the log"},
	{[]string{"gravid", "pregnant"}, "it is a state of a female", "gravid as state, and adult as stage"},
}

// FemaleStates are what a plan may say of a female and the log does not yet.
var FemaleStates = choices("gravid | pregnant", "carrying young", "with brood | with young | with babies | young on her back", "young on her back or around her")

// Origins say where an animal is from.
var Origins = choices(
	"captive bred | CB | CBB | captive born | bred in captivity", "bred in captivity",
	"captive farmed | CF | farmed | farm bred", "hatched or born in a farm of its country",
	"wild caught | WC | wild | imported from the wild", "taken from the wild",
	"long-term captive | LTC | long term captive", "wild caught long ago",
)

// HeaterKinds are the kinds of device that warm an enclosure.
var HeaterKinds = choices(
	"mat | heat mat | heating mat | heat pad | heating pad | pad | UTH | under tank heater | heat film | heating film", "a flat mat or film",
	"cable | heat cable | heating cable | heat tape | heating tape | heat cord | heat rope", "a heating cable or tape",
	"lamp | heat lamp | basking lamp | basking bulb | heat bulb | bulb | spot lamp | spotlight | halogen | halogen lamp", "a lamp that warms by its light",
	"ceramic | CHE | ceramic heater | ceramic emitter | ceramic heat emitter | ceramic bulb", "a ceramic emitter without light",
	"panel | heat panel | radiant panel | radiant heat panel | RHP", "a radiant panel below the lid",
	"rock | heat rock | hot rock | heated rock | heat stone | heated stone", "a heated stone or pad that animals lie on: it burns them, and is refused",
)

// UnclearHeaters are the words for a heater that do not say which kind it is.
var UnclearHeaters = []Question{
	{[]string{"heater", "heat", "heating", "heat source"}, "it does not say what kind of heater", "as kind one of: mat, cable, lamp, ceramic, panel"},
	{[]string{"DHP", "deep heat projector", "projector"}, "it is not a kind that is reckoned here: it warms like a lamp, and shows no light like a ceramic", "lamp as kind, which is reckoned the hotter"},
	{[]string{"uvb", "uvb lamp", "uv", "uv lamp", "uvb tube"}, "it is no heater of its own", "lamp as kind, and true as uv"},
}

// HeaterPlaces are where a heater is.
var HeaterPlaces = choices(
	"side | side wall | on the side | left | right | left side | right side", "on a side wall",
	"back | rear | back wall | on the back", "on the back wall",
	"under | underneath | beneath | below | bottom | floor | under tank | under the tank", "beneath the floor",
	"above | over | top | on top | overhead | over the lid | above the lid", "over the lid",
	"inside | in the box | within", "within the box",
)

// Probes are where the probe of a thermostat is.
var Probes = choices(
	"spot | warm spot | hot spot | basking spot | surface", "on the warmest surface that the animals can reach",
	"heater | on the heater | mat | on the mat", "on the mat, tape or cable itself",
	"air | in the air", "in the air",
	"cool end | cold end | far end | cool side", "at the far end",
)

// Contacts say how a mat or cable lies on a wall.
var Contacts = choices(
	"full | stuck | stuck on | stuck flat | adhesive", "stuck flat on it",
	"loose | leaning | taped", "leaning, or taped at its edges",
	"gap | air gap | with a gap", "with air between, as in a rack",
)
