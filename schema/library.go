package schema

import "vivary/schema/quantity"

// Source is something that figures are taken from.
var Source = &Block{
	Name: "source", Label: "name", Once: true,
	Doc:     "A paper, page or person that figures are taken from.",
	Example: "source \"K20\" {\n  cite = \"Titan Scorpions, 17 Mar 2022\"\n  at   = \"voofla.com\"\n  kind = \"keeper\"\n}",
	Attrs: []Attr{
		{Name: "cite", Kind: Text, Required: true, Doc: "Who, when, what.", Example: `"Mahsberg D. 1990, Acta Zool. Fennica 190:267-272"`},
		{Name: "at", Kind: Text, Doc: "Where it can be found.", Example: `"docslib.org/doc/4763321"`},
		{Name: "kind", Kind: Word, Required: true, Choices: Qualities, Doc: "What kind of source it is.", Example: `"paper"`},
		{Name: "part", Kind: Text, Doc: "How much of it was seen.", Example: `"abstract"`},
	},
}

// Stage says which instars make up a stage of life.
var Stage = &Block{
	Name: "stage", Label: "stage", Once: true,
	Doc:     "Which instars make up a stage of life in this species.",
	Example: "stage \"young\" {\n  instars = \"2 to 3\"\n}",
	Attrs: join([]Attr{
		{Name: "instars", Kind: Numbers, Doc: "The first and the last instar of the stage.", Example: `"2 to 3"`},
		noteAttr,
	}, sourceAttrs),
}

// FigureBlock is one known fact of a species, with its source.
var FigureBlock = &Block{
	Name: "figure", Label: "figure",
	Doc:     "One fact of a species, with where it is from. The label is one of the known figures. A collection's own figure takes the place of the library's of the same name and stages, and then says why and until when that was last looked at.",
	Example: "figure \"temperature-hard\" {\n  value    = \"15 to 35 C\"\n  source   = [\"K20\"]\n  quality  = \"keeper\"\n  seen     = \"2026-11-25\"\n  disputed = \"no lethal temperature has been measured for this species\"\n  because  = \"kept like this here for nine years\"\n  review   = \"2027-11-01\"\n}",
	Attrs: join([]Attr{
		{Name: "value", Kind: Text, Required: true, Doc: "The figure, with its unit. In a type also a multiple of the animal: of its length as the sheet has it, or of its leg span.", Example: `"15 to 35 C"`},
		{Name: "wrong", Kind: Text, Doc: "In a type: from where on it is wrong for every member. The value suits every member; between them it is not known for a species.", Example: `"2 x 1.5 length"`},
		{Name: "harm", Kind: Word, Choices: choices("kills", "beyond wrong the plan is refused, between it is cautioned", "harms", "beyond wrong it is cautioned, between it is advised", "comfort", "beyond wrong it is advised"), Default: "kills", Doc: "In a type: what comes of it.", Example: `"comfort"`},
		{Name: "stages", Kind: Texts, Choices: Stages, Default: "all", Doc: "The stages it holds for.", Example: `["adult", "subadult"]`},
		{Name: "instar", Kind: Whole, Doc: "The instar it holds for.", Example: `2`},
	}, sourceAttrs, []Attr{
		{Name: "disputed", Kind: Text, Doc: "What others say.", Example: `"24 to 28 C (K4), 27 to 37 C (K1)"`},
		noteAttr,
		{Name: "because", Kind: Text, Doc: "In a collection's own sheet: the reason for a figure of its own.", Example: `"measured in this building for three years"`},
		{Name: "review", Kind: Date, Doc: "In a collection's own sheet: when the reason is looked at again.", Example: `"2027-09-01"`},
	}),
}

// UsualSurfaceMax is how hot a surface that animals can touch may get where their sheet does
// not say, in °C: a precaution, 4 to 5 below the lowest that was published for an arachnid
// (half of Dugesiella echina died at 39.8 to 44.3 C, of Centruroides hentzi at 43.7 to
// 45.1 C: Punzo 1991).
const UsualSurfaceMax = 40.0

// Need is something an animal must not go without for longer than so long.
var Need = &Block{
	Name: "need", Label: "need",
	Doc:     "Something that an animal must not go without for longer than a stated time. Only a need has the force of the proof: on every day of the horizon somebody who is there has met it in time.",
	Example: "need \"water\" {\n  longest = \"2 days\"\n  source  = [\"R18\"]\n  quality = \"practice\"\n  seen    = \"2026-11-25\"\n  because = \"the room is dry and warm\"\n  review  = \"2027-11-01\"\n}",
	Attrs: join([]Attr{
		{Name: "longest", Kind: Quantity, Dimension: quantity.Duration, Required: true, Doc: "The longest time between two occasions.", Example: `"2 days"`},
		{Name: "wrong", Kind: Quantity, Dimension: quantity.Duration, Doc: "In a type: what is too long for every member. The longest suits every member; between them it is not known for a species.", Example: `"30 days"`},
		{Name: "stages", Kind: Texts, Choices: Stages, Default: "all", Doc: "The stages it holds for.", Example: `["young"]`},
		{Name: "shortest", Kind: Quantity, Dimension: quantity.Duration, Doc: "The shortest sensible time between two occasions.", Example: `"3 days"`},
		{Name: "severity", Kind: Word, Choices: choices("error", "the plan is refused", "caution", "the plan is built, with a warning"), Default: "error", Doc: "What a breach is.", Example: `"caution"`},
	}, sourceAttrs, []Attr{
		{Name: "disputed", Kind: Text, Doc: "What others say."},
		noteAttr,
		{Name: "because", Kind: Text, Doc: "In a collection's own sheet: the reason for a need of its own.", Example: `"this locality drinks daily"`},
		{Name: "review", Kind: Date, Doc: "In a collection's own sheet: when the reason is looked at again.", Example: `"2027-09-01"`},
	}),
}

// StateBlock is how a species differs from the table of states.
var StateBlock = &Block{
	Name: "state", Label: "state",
	Doc:     "What may be done with this species in a state, where it differs from the table of states (STATES.md). The label is one of the states. Several blocks of one state may stand in a sheet, each for some care; of two that speak of the same care the later one holds. Drinking water is never held. A collection's own sheet may be stricter than what it is laid over; where it is weaker it says why, on whose word and until when.",
	Example: "state \"sac\" {\n  care    = \"killed\"\n  manner  = \"hatch\"\n  words   = \"one small item\"\n  every   = \"14 days\"\n  source  = [\"practice\"]\n  quality = \"practice\"\n  seen    = \"2026-11-28\"\n  because = \"ours take it, and are left alone else\"\n  review  = \"2027-11-01\"\n}",
	Attrs: join([]Attr{
		{Name: "care", Kind: Words, Choices: append(choices(AllRows, "every kind of care"), RowWords...), Required: true, Doc: "The care it is about: rows of the table.", Example: `"live, killed"`},
		{Name: "manner", Kind: Word, Choices: Manners, Required: true, Doc: "How that may be done.", Example: `"hatch"`},
		{Name: "words", Kind: Text, Doc: "What to mind, for the person in front of the tank, in a few words.", Example: `"far end only"`},
		{Name: "every", Kind: Quantity, Dimension: quantity.Duration, Default: "as often as planned", Doc: "At most once in so long.", Example: `"14 days"`},
		{Name: "from", Kind: Quantity, Dimension: quantity.Duration, Default: "from the first day", Doc: "Not before the state has lasted so long.", Example: `"3 days"`},
		{Name: "is", Kind: Text, Doc: "What the animals are in, as it is said for this species.", Example: `"eggs in the soil"`},
		{Name: "rule", Kind: Text, Doc: "What may be done in this state, in one short line that begins without a capital.", Example: `"look first: a sac? do nothing, log laid"`},
	}, sourceAttrs, []Attr{
		{Name: "disputed", Kind: Text, Doc: "What others say.", Example: `"others go on feeding her"`},
		noteAttr,
		{Name: "because", Kind: Text, Doc: "In a collection's own sheet: the reason for allowing more.", Example: `"each of nine females here kept her sac when fed"`},
		{Name: "review", Kind: Date, Doc: "In a collection's own sheet: when the reason is looked at again.", Example: `"2027-09-01"`},
	}),
}

// Species is a species sheet.
var Species = &Block{
	Name: "species", Label: "name",
	Doc:     "What is known of a species: figures, needs and the care that is usual. The built-in sheets are written in the same language; a sheet of the same name in a collection adds to the built-in one and takes the place of what it writes itself. A figure for all stages may be written as an attribute, with underscores for the hyphens of its name: temperature_target = \"28 to 32 C\".",
	Example: "species \"pandinus-imperator\" {\n  figure \"humidity-target\" {\n    value   = \"75 to 85 %\"\n    source  = [\"own records\"]\n    quality = \"own\"\n    seen    = \"2026-10-01\"\n    because = \"measured here for three years\"\n    review  = \"2027-10-01\"\n  }\n}",
	Attrs: join([]Attr{
		{Name: "title", Kind: Text, Doc: "The common name.", Example: `"emperor scorpion"`},
		{Name: "latin", Kind: Text, Doc: "The scientific name with its author.", Example: `"Pandinus imperator (C. L. Koch, 1841)"`},
		{Name: "family", Kind: Text, Doc: "The family.", Example: `"Scorpionidae"`},
		{Name: "type", Kind: Ref, Ref: "type", Doc: "The care type that it belongs to: what is common practice for all of its members holds where this sheet says nothing. What only the species itself can state is asked for.", Example: `"desert-burrowing-scorpion"`},
		{Name: "like", Kind: Ref, Ref: "species", Doc: "A species whose sheet lends what this one does not say itself: needs, care, meals, moults, broods. Names, size, heat, company, danger and law are lent by none; what follows from size is lent by animals of that size.", Example: `"pandinus-imperator"`},
		{Name: "also", Kind: Texts, Doc: "Other names that mean this species.", Example: `["imperial scorpion"]`},
		{Name: "former", Kind: Texts, Doc: "Names it had before, which older texts use.", Example: `["Buthus imperator"]`},
		{Name: "mistaken", Kind: Texts, Doc: "Names of other animals that it is sold as or taken for, or that are sold as it.", Example: `["Heterometrus"]`},
		noteAttr,
	}, sheetSourceAttrs),
	Blocks: []*Block{Stage, FigureBlock, StateBlock, Need, Care, Feeding},
	Short:  func() []*Figure { return Figures },
}

// Type is a care type: what is common practice for all species that live alike.
var Type = &Block{
	Name: "type", Label: "name",
	Doc:     "A care type: needs, care, meals and figures that are common practice for all species that live alike. A figure has two values: what suits every member, and what is wrong for every member. A type states nothing that only a species can state: size, heat to aim for, company, danger, law.",
	Example: "type \"desert-burrowing-scorpion\" {\n  title = \"burrowing desert scorpions\"\n\n  figure \"floor-first\" {\n    value = \"3 x 2 length\"\n    wrong = \"2 x 1.5 length\"\n    harm  = \"comfort\"\n  }\n}",
	Attrs: join([]Attr{
		{Name: "title", Kind: Text, Required: true, Doc: "What its members are called, all of them.", Example: `"burrowing desert scorpions"`},
		{Name: "of", Kind: Ref, Ref: "type", Doc: "A wider type, whose blocks it takes that it does not have itself.", Example: `"scorpion"`},
		{Name: "genera", Kind: Texts, Doc: "The genera whose species belong to it.", Example: `["Hadrurus", "Parabuthus"]`},
		{Name: "grown", Kind: Range, Dimension: quantity.Length, Doc: "How long the grown members are, as far as the library has them. A species far outside is asked about: a body length may stand for a leg span, or mm for cm.", Example: `"5 to 15 cm"`},
		{Name: "venomous", Kind: Truth, Default: "false", Doc: "Whether every member has venom. A species that calls it none is refused.", Example: `true`},
		noteAttr,
	}, sheetSourceAttrs),
	Blocks: []*Block{Stage, FigureBlock, StateBlock, Need, Care, Feeding, Except},
}

// Except is what differs for a genus of a type.
var Except = &Block{
	Name: "except", Label: "genus",
	Doc:     "A genus for which a type does not hold as it stands, and what holds for it. Without figures or needs it says that a species of that genus must state its own.",
	Example: "except \"Scorpio\" {\n  because = \"it loses water faster than the Buthidae beside it\"\n\n  need \"water\" {\n    longest = \"3 days\"\n  }\n}",
	Attrs: join([]Attr{
		{Name: "because", Kind: Text, Required: true, Doc: "Why.", Example: `"it loses water faster than the Buthidae beside it"`},
	}, sheetSourceAttrs),
	Blocks: []*Block{FigureBlock, Need},
}

// sheetSourceAttrs are what the figures, needs and stages of a sheet have that do not say
// it themselves.
var sheetSourceAttrs = []Attr{
	{Name: "source", Kind: Texts, Ref: "source", Doc: "Where all that is in the sheet is from, as far as a block does not say it itself.", Example: `["own records"]`},
	{Name: "quality", Kind: Word, Choices: Qualities, Doc: "How good that is.", Example: `"own"`},
	{Name: "seen", Kind: Date, Doc: "When it was looked at.", Example: `"2026-11-25"`},
}

// FeederSize is one size class of a feeder animal.
var FeederSize = &Block{
	Name: "size", Label: "size", Once: true,
	Doc:     "One size of a feeder animal.",
	Example: "size \"adult\" {\n  mass   = \"465 mg\"\n  length = \"25 mm\"\n}",
	Attrs: join([]Attr{
		{Name: "also", Kind: Texts, Doc: "Other names of the size, as sellers have them.", Example: `["2nd", "klein"]`},
		{Name: "alone", Kind: Texts, Doc: "What it is called without the feeder's name, where no other is called so.", Example: `["hydei"]`},
		{Name: "mass", Kind: Range, Dimension: quantity.Mass, Doc: "The weight of one.", Example: `"465 mg"`},
		{Name: "length", Kind: Range, Dimension: quantity.Length, Doc: "The length of one, without feelers.", Example: `"20 to 25 mm"`},
		{Name: "energy", Kind: Range, Dimension: quantity.EnergyDensity, Default: "the feeder's figure energy", Doc: "Energy in the wet animal of this size, where it is not that of the others.", Example: `"0.95 kcal/g"`},
		noteAttr,
	}, sourceAttrs),
}

// FeederFact is one known fact of a feeder, with its source.
var FeederFact = &Block{
	Name: "figure", Label: "figure",
	Doc:     "One fact of a feeder animal, with where it is from.",
	Example: "figure \"energy\" {\n  value   = \"5.86 kJ/g\"\n  source  = [\"P36\"]\n  quality = \"paper\"\n  seen    = \"2026-11-25\"\n}",
	Attrs:   FigureBlock.Attrs,
}

// Development is how long a stage of a feeder takes by the warmth.
var Development = &Block{
	Name: "development", Label: "stage",
	Doc:     "How long a stage of a feeder takes by the warmth. Where the lower limit and the degree-days are known, the days are the degree-days over the degrees above that limit, between the temperatures at which it was measured and nowhere else; with two or more observed times and neither of the two, a straight line through their rates stands for them. An observed time goes before what is reckoned. Where only one time was observed nothing is reckoned for other temperatures.",
	Example: "development \"egg\" {\n  base        = \"15.9 C\"\n  degree_days = 108.7\n  between     = \"20 to 37 C\"\n  source      = [\"own records\"]\n  quality     = \"own\"\n  seen        = \"2026-11-30\"\n}",
	Attrs: join([]Attr{
		{Name: "size", Kind: Text, Default: "all of them", Doc: "The size that it is of, where the sizes of a feeder are several animals.", Example: `"hydei"`},
		{Name: "base", Kind: Quantity, Dimension: quantity.Temperature, Default: "not known, and nothing is reckoned by it", Doc: "The temperature below which nothing develops.", Example: `"15.9 C"`},
		{Name: "degree_days", Kind: Number, Doc: "The days times the degrees above the base that the stage takes.", Example: `108.7`},
		{Name: "between", Kind: Range, Dimension: quantity.Temperature, Default: "the temperatures of the observed times", Doc: "The temperatures between which that was measured.", Example: `"20 to 37 C"`},
		{Name: "observed", Kind: Texts, Doc: "Times that were observed, each with its temperature.", Example: `["9 days at 25 C", "19 days at 18 C"]`},
		noteAttr,
	}, sourceAttrs),
}

// The stages of a feeder of which a development is told by their own names. Any other label
// is a stage that is told, and from which nothing follows.
const (
	DevelopsEgg   = "egg"          // from laying to hatching
	DevelopsYoung = "young"        // from hatching to the grown: nymphs, hoppers, larvae
	DevelopsAll   = "egg-to-adult" // from laying to the grown
)

// Feeder is a feeder animal.
var Feeder = &Block{
	Name: "feeder", Label: "name",
	Doc:     "A feeder animal: its sizes, what is in it, and how long it keeps.",
	Example: "feeder \"cricket\" {\n  title = \"house cricket\"\n\n  size \"adult\" {\n    mass = \"465 mg\"\n  }\n}",
	Attrs: []Attr{
		{Name: "title", Kind: Text, Doc: "The common name of one.", Example: `"house cricket"`},
		{Name: "plural", Kind: Text, Default: "the name and an s", Doc: "The word for several, as it stands in a list of things to do.", Example: `"crickets"`},
		{Name: "latin", Kind: Text, Doc: "The scientific name.", Example: `"Acheta domesticus"`},
		{Name: "also", Kind: Texts, Doc: "Other names.", Example: `["brown cricket"]`},
		{Name: "hazards", Kind: Texts, Doc: "What it does to the animals or the people.", Example: `["gnaws a moulting animal"]`},
		noteAttr,
	},
	Blocks: []*Block{FeederSize, FeederFact, Development, Upkeep},
}

// Figure describes one fact that a species sheet or a feeder may state.
type Figure struct {
	Name      string
	Kind      Kind // Range, Numbers, Word, Words, Truth or Text
	Dimension quantity.Dimension
	Choices   []Choice
	Required  bool   // every built-in species sheet states it
	About     string // of one that is required: what is not judged without it
	ByStage   bool   // may differ between stages
	Asked     bool   // of one that is not required: where a sheet does not state it, that is named among what is not known
	Own       bool   // only the species itself can state it: no sheet that it is like lends it
	Warns     bool   // of an Own one: to state less than kin do is named
	Most      bool   // it is a limit that a value must not pass; others are what there must be
	Sized     bool   // follows from the size of the animal: lent by one of the same size only
	Doc       string
}

// Figures are the facts that a species sheet may state, and FeederFigures those that
// a feeder's may, in the order in which they are declared below.
var Figures, FeederFigures []*Figure

// The facts that a species sheet may state.
var (
	FigureTemperatureHard       = listed(&Figures, Figure{Name: "temperature-hard", Kind: Range, Own: true, Dimension: quantity.Temperature, Required: true, About: "heat", Doc: "Outside this the animals are harmed. Nothing may be set beyond it."})
	FigureTemperatureSoft       = listed(&Figures, Figure{Name: "temperature-soft", Kind: Range, Own: true, Dimension: quantity.Temperature, Required: true, About: "heat", Doc: "Outside this a reason is asked for."})
	FigureTemperatureTarget     = listed(&Figures, Figure{Name: "temperature-target", Kind: Range, Own: true, Dimension: quantity.Temperature, Required: true, About: "heat", Doc: "What to aim for by day."})
	FigureWarmSpot              = listed(&Figures, Figure{Name: "warm-spot", Kind: Range, Asked: true, Own: true, Dimension: quantity.Temperature, Doc: "The warmest surface that it can lie on, at the heater: what a keeper means by the warm end."})
	FigureSpotNeeded            = listed(&Figures, Figure{Name: "spot-needed", Kind: Range, Own: true, Dimension: quantity.Temperature, Doc: "How warm a surface it must find by day to digest what it eats: without one it is not fed."})
	FigureSurfaceMax            = listed(&Figures, Figure{Name: "surface-max", Kind: Range, Most: true, Dimension: quantity.Temperature, Doc: "How hot a surface that it may touch can get, its heater stuck on. Where none is stated it is 40 C."})
	FigureAir                   = listed(&Figures, Figure{Name: "air", Kind: Range, Asked: true, Own: true, Dimension: quantity.Temperature, Doc: "The air of the enclosure by day, away from the heater: what a keeper means by the cool end."})
	FigureNight                 = listed(&Figures, Figure{Name: "night", Kind: Range, Own: true, Dimension: quantity.Temperature, Doc: "What to aim for by night."})
	FigureNightDrop             = listed(&Figures, Figure{Name: "night-drop", Kind: Range, Own: true, Dimension: quantity.TemperatureStep, Doc: "How much cooler the night should be."})
	FigureWinterRest            = listed(&Figures, Figure{Name: "winter-rest", Kind: Range, Own: true, Dimension: quantity.Temperature, Doc: "The temperature of a cool rest, for species that take one."})
	FigureRest                  = listed(&Figures, Figure{Name: "rest", Kind: Word, Own: true, Choices: choices("none", "it takes no rest: a plan must not write one", "optional", "it may rest, and need not", "needed", "it rests each year"), Doc: "Whether it takes a cool rest."})
	FigureRestLength            = listed(&Figures, Figure{Name: "rest-length", Kind: Range, Own: true, Dimension: quantity.Duration, Doc: "How long a cool rest lasts."})
	FigureRestFullHeat          = listed(&Figures, Figure{Name: "rest-full-heat", Kind: Range, Own: true, Dimension: quantity.Duration, Doc: "From the last meal at full heat until the heat goes down for a cool rest."})
	FigureRestStep              = listed(&Figures, Figure{Name: "rest-step", Kind: Range, Own: true, Dimension: quantity.TemperatureStep, Doc: "By how much the heat goes down or up in a week, into a cool rest and out of it."})
	FigureRestWater             = listed(&Figures, Figure{Name: "rest-water", Kind: Range, Own: true, Dimension: quantity.Duration, Doc: "How often it gets water in a cool rest."})
	FigureRestFirstMeal         = listed(&Figures, Figure{Name: "rest-first-meal", Kind: Range, Own: true, Dimension: quantity.Duration, Doc: "From the day on which the heat is back until the first meal, of one small item."})
	FigureRestFullMeals         = listed(&Figures, Figure{Name: "rest-full-meals", Kind: Range, Own: true, Dimension: quantity.Duration, Doc: "From the first meal taken after a cool rest until meals are as usual."})
	FigureRestAge               = listed(&Figures, Figure{Name: "rest-age", Kind: Range, Own: true, Dimension: quantity.Duration, Doc: "The least age for a cool rest."})
	FigureCooler                = listed(&Figures, Figure{Name: "cooler", Kind: Range, Own: true, Dimension: quantity.TemperatureStep, Doc: "By how much a season may be cooler for a species that takes no rest, inside the range that needs no reason."})
	FigureHumidityHard          = listed(&Figures, Figure{Name: "humidity-hard", Kind: Range, Dimension: quantity.Humidity, Doc: "Outside this the animals are harmed."})
	FigureHumiditySoft          = listed(&Figures, Figure{Name: "humidity-soft", Kind: Range, Dimension: quantity.Humidity, Required: true, About: "damp", Doc: "Outside this a reason is asked for."})
	FigureHumidityTarget        = listed(&Figures, Figure{Name: "humidity-target", Kind: Range, Dimension: quantity.Humidity, Required: true, About: "damp", Doc: "What to aim for."})
	FigureHumidityPremoult      = listed(&Figures, Figure{Name: "humidity-premoult", Kind: Range, Dimension: quantity.Humidity, Doc: "What to hold before and during a moult."})
	FigureMoisture              = listed(&Figures, Figure{Name: "moisture", Kind: Word, Choices: choices("arid", "kept dry on top: too much water kills", "damp", "depends on a damp substrate", "either", "takes both"), Required: true, About: "damp", Doc: "What kind of moisture the species lives in."})
	FigureMistIntervalMin       = listed(&Figures, Figure{Name: "mist-interval-min", Kind: Range, Dimension: quantity.Duration, Doc: "The shortest time between two mistings, for species of dry places."})
	FigureVentilation           = listed(&Figures, Figure{Name: "ventilation", Kind: Word, Choices: choices("any", "no special need", "cross", "openings on opposite sides"), Doc: "The air it needs."})
	FigureSubstrateDepthMin     = listed(&Figures, Figure{Name: "substrate-depth-min", Kind: Range, Sized: true, Dimension: quantity.Length, Required: true, About: "depth", Doc: "The least depth of substrate."})
	FigureSubstrateDepthAdvised = listed(&Figures, Figure{Name: "substrate-depth-advised", Kind: Range, Sized: true, Dimension: quantity.Length, Doc: "The depth advised."})
	FigureFloorFirst            = listed(&Figures, Figure{Name: "floor-first", Kind: Range, Sized: true, Dimension: quantity.Area, Required: true, About: "floor", Doc: "Floor for one animal, or for the first of a group.", ByStage: true})
	FigureFloorFurther          = listed(&Figures, Figure{Name: "floor-further", Kind: Range, Sized: true, Dimension: quantity.Area, Doc: "Floor for each further animal.", ByStage: true})
	FigureVolumeFirst           = listed(&Figures, Figure{Name: "volume-first", Kind: Range, Sized: true, Dimension: quantity.Volume, Doc: "Volume for one animal.", ByStage: true})
	FigureHeightMin             = listed(&Figures, Figure{Name: "height-min", Kind: Range, Sized: true, Dimension: quantity.Length, Doc: "The least height inside.", ByStage: true})
	FigureFallMax               = listed(&Figures, Figure{Name: "fall-max", Kind: Range, Sized: true, Most: true, Dimension: quantity.Length, Doc: "The greatest height between substrate and lid, for animals that a fall kills.", ByStage: true})
	FigureKeeping               = listed(&Figures, Figure{Name: "keeping", Kind: Word, Own: true, Warns: true, Choices: choices("alone", "one to a box", "alone, or mother with brood", "one to a box, or a mother with her young", "groups", "groups are possible", "groups of one male", "groups with one adult male at the most"), Required: true, About: "company", Doc: "How many may share a box."})
	FigureGroupMax              = listed(&Figures, Figure{Name: "group-max", Kind: Numbers, Own: true, Doc: "The largest group."})
	FigureLifestyle             = listed(&Figures, Figure{Name: "lifestyle", Kind: Word, Choices: choices("burrower", "digs and lives below", "ground", "lives on the ground", "bark", "lives on bark or rock", "crevice", "lives in cracks of rock, under and between flat stones", "tree", "lives above the ground"), Required: true, About: "where it lives", Doc: "Where it lives."})
	FigureEats                  = listed(&Figures, Figure{Name: "eats", Kind: Word, Choices: choices("prey", "prey, and nothing else is a meal", "both", "prey and other food, each of which is a meal", "plants first", "leaves, fruit, rotted wood or soil; killed prey is a little protein beside them, and no meal", "plants", "leaves, fruit, rotted wood or soil; prey is no food for it"), Doc: "What it lives on."})
	FigureLivesInFood           = listed(&Figures, Figure{Name: "lives-in-food", Kind: Truth, Doc: "Whether the soil is its food and its shelter: it is topped up, or changed in part, and never whole."})
	FigureClimbs                = listed(&Figures, Figure{Name: "climbs", Kind: Word, Choices: choices("no", "climbs nothing smooth", "seams", "climbs silicone seams and decor", "glass", "climbs glass"), Required: true, About: "climbing", Doc: "What it climbs."})
	FigureLid                   = listed(&Figures, Figure{Name: "lid", Kind: Word, Choices: choices("any", "any lid", "latched", "a lid that is held shut"), Required: true, About: "lid", Doc: "The lid it needs."})
	FigureGapMax                = listed(&Figures, Figure{Name: "gap-max", Kind: Range, Sized: true, Most: true, Dimension: quantity.Length, Doc: "The widest opening that still holds it.", ByStage: true})
	FigureHangsToMoult          = listed(&Figures, Figure{Name: "hangs-to-moult", Kind: Truth, Required: true, About: "moults", Doc: "Whether it must hang free to moult."})
	FigureMoultsAsAdult         = listed(&Figures, Figure{Name: "moults-as-adult", Kind: Truth, Required: true, About: "moults", Doc: "Whether adults go on moulting."})
	FigureDrinks                = listed(&Figures, Figure{Name: "drinks", Kind: Word, Choices: choices("dish", "from a dish", "droplets", "from droplets", "soil", "from damp soil and food"), Required: true, About: "how it drinks", Doc: "How it takes water."})
	FigureHeaterNot             = listed(&Figures, Figure{Name: "heater-not", Kind: Words, Choices: Heater.Attr("place").Choices, Doc: "Where a heater must not be."})
	FigureUVNot                 = listed(&Figures, Figure{Name: "uv-not", Kind: Truth, Doc: "Whether ultraviolet light is to be kept away."})
	FigureLight                 = listed(&Figures, Figure{Name: "light", Kind: Text, Doc: "The light it wants, or avoids."})
	FigureGlow                  = listed(&Figures, Figure{Name: "glow", Kind: Text, Doc: "How it shines under ultraviolet light, and when it does not."})
	FigureLooks                 = listed(&Figures, Figure{Name: "looks", Kind: Text, Own: true, Doc: "What it looks like, as far as that tells it from its look-alikes or shows its age.", ByStage: true})
	FigureDrying                = listed(&Figures, Figure{Name: "drying", Kind: Text, Doc: "How fast it dries without water.", ByStage: true})
	FigureLength                = listed(&Figures, Figure{Name: "length", Kind: Range, Own: true, Dimension: quantity.Length, Required: true, About: "size", Doc: "Body length.", ByStage: true})
	FigureSpan                  = listed(&Figures, Figure{Name: "span", Kind: Range, Own: true, Dimension: quantity.Length, Doc: "Leg span, of spiders and whip spiders.", ByStage: true})
	FigureMass                  = listed(&Figures, Figure{Name: "mass", Kind: Range, Own: true, Dimension: quantity.Mass, Required: true, About: "size", Doc: "Weight.", ByStage: true})
	FigureGrowthFactor          = listed(&Figures, Figure{Name: "growth-factor", Kind: Numbers, Doc: "By how much a length grows at a moult (Dyar's rule)."})
	FigureMoultsToAdult         = listed(&Figures, Figure{Name: "moults-to-adult", Kind: Numbers, Asked: true, Doc: "The number of moults to maturity."})
	FigureInstarLength          = listed(&Figures, Figure{Name: "instar-length", Kind: Range, Dimension: quantity.Duration, Doc: "How long an instar lasts. Stated for each instar."})
	FigureAgeAtMaturity         = listed(&Figures, Figure{Name: "age-at-maturity", Kind: Range, Asked: true, Dimension: quantity.Duration, Doc: "Age at maturity."})
	FigureLifespan              = listed(&Figures, Figure{Name: "lifespan", Kind: Range, Asked: true, Dimension: quantity.Duration, Doc: "How long it lives."})
	FigureOldAge                = listed(&Figures, Figure{Name: "old-age", Kind: Range, Own: true, Dimension: quantity.Duration, Doc: "From the last moult of a grown animal: from this day on weakness and refused meals are age, and no illness."})
	FigureOldAgeMale            = listed(&Figures, Figure{Name: "old-age-male", Kind: Range, Own: true, Dimension: quantity.Duration, Doc: "The same of males, where they age sooner."})
	FigureGestation             = listed(&Figures, Figure{Name: "gestation", Kind: Range, Dimension: quantity.Duration, Doc: "From mating to birth, or to the egg sac. Always a window, never a date."})
	FigureGestationLongest      = listed(&Figures, Figure{Name: "gestation-longest", Kind: Range, Dimension: quantity.Duration, Doc: "After so long a female that has not given birth is no longer held for gravid."})
	FigureSacTime               = listed(&Figures, Figure{Name: "sac-time", Kind: Range, Dimension: quantity.Duration, Doc: "From the laying of a sac, ootheca or clutch until the young are free."})
	FigureSacDecide             = listed(&Figures, Figure{Name: "sac-decide", Kind: Range, Dimension: quantity.Duration, Doc: "From the laying of a sac until it is decided whether it stays with her."})
	FigureAfterSac              = listed(&Figures, Figure{Name: "after-sac", Kind: Range, Dimension: quantity.Duration, Doc: "From the end of a sac, hatched or taken, until its mother is fed again."})
	FigureBroodSize             = listed(&Figures, Figure{Name: "brood-size", Kind: Numbers, Asked: true, Doc: "How many young at a time."})
	FigureOnMother              = listed(&Figures, Figure{Name: "on-mother", Kind: Range, Dimension: quantity.Duration, Doc: "From birth to the first moult."})
	FigureDispersal             = listed(&Figures, Figure{Name: "dispersal", Kind: Range, Dimension: quantity.Duration, Doc: "From the first moult until the young leave the mother."})
	FigureSeparation            = listed(&Figures, Figure{Name: "separation", Kind: Word, Choices: choices("keep with mother", "the young stay with the mother", "separate", "the young are taken out after dispersal"), Doc: "What to do with the young."})
	FigureSeparateWithin        = listed(&Figures, Figure{Name: "separate-within", Kind: Range, Dimension: quantity.Duration, Doc: "From the first moult, or from hatching, until young that are to be separated are out."})
	FigureFirstKilled           = listed(&Figures, Figure{Name: "first-killed", Kind: Range, Dimension: quantity.Duration, Doc: "From the first moult, or from hatching where the young hatch ready to feed, until they are first offered food that is killed or small."})
	FigureFirstMeal             = listed(&Figures, Figure{Name: "first-meal", Kind: Range, Dimension: quantity.Duration, Doc: "From the first moult, or from hatching where the young hatch ready to feed, until they must have eaten."})
	FigureIsolateBefore         = listed(&Figures, Figure{Name: "isolate-before", Kind: Range, Dimension: quantity.Duration, Doc: "How long before the earliest birth a gravid female is moved to a box of her own."})
	FigureUndisturbed           = listed(&Figures, Figure{Name: "undisturbed", Kind: Range, Dimension: quantity.Duration, Doc: "How long after a birth nothing is disturbed."})
	FigureWaitAfterMoult        = listed(&Figures, Figure{Name: "wait-after-moult", Kind: Range, Dimension: quantity.Duration, Required: true, About: "moults", Doc: "From a moult to the first meal.", ByStage: true})
	FigureHandlingWait          = listed(&Figures, Figure{Name: "handling-wait", Kind: Range, Dimension: quantity.Duration, Doc: "From a moult to the first time it may be moved.", ByStage: true})
	FigureMoultTakes            = listed(&Figures, Figure{Name: "moult-takes", Kind: Range, Dimension: quantity.Duration, Doc: "How long a moult takes."})
	FigurePremoultFast          = listed(&Figures, Figure{Name: "premoult-fast", Kind: Range, Dimension: quantity.Duration, Doc: "How long it usually fasts before a moult.", ByStage: true})
	FigurePremoultLook          = listed(&Figures, Figure{Name: "premoult-look", Kind: Range, Dimension: quantity.Duration, Doc: "From the beginning of pre-moult: on this day it is asked whether it has moulted.", ByStage: true})
	FigurePremoultTry           = listed(&Figures, Figure{Name: "premoult-try", Kind: Range, Dimension: quantity.Duration, Doc: "From the beginning of pre-moult: from this day a killed item is offered once a week, unless it is sealed in.", ByStage: true})
	FigurePremoultHelp          = listed(&Figures, Figure{Name: "premoult-help", Kind: Range, Dimension: quantity.Duration, Doc: "From the beginning of pre-moult: from this day somebody with experience is asked.", ByStage: true})
	FigureFastLook              = listed(&Figures, Figure{Name: "fast-look", Kind: Range, Dimension: quantity.Duration, Doc: "Since the last meal taken, heat and water right: from this day it is looked at: fat or thin, warm, gravid?", ByStage: true})
	FigureFastTry               = listed(&Figures, Figure{Name: "fast-try", Kind: Range, Dimension: quantity.Duration, Doc: "Since the last meal taken, heat and water right: from this day smaller food is offered, and killed.", ByStage: true})
	FigureFastAlarm             = listed(&Figures, Figure{Name: "fast-alarm", Kind: Range, Dimension: quantity.Duration, Doc: "Since the last meal taken, heat and water right: from this day the fast stands first in the round.", ByStage: true})
	FigureFastHelp              = listed(&Figures, Figure{Name: "fast-help", Kind: Range, Dimension: quantity.Duration, Doc: "Since the last meal taken, heat and water right: from this day help is got, from a veterinarian or somebody with experience.", ByStage: true})
	FigureWeightLoss            = listed(&Figures, Figure{Name: "weight-loss", Kind: Range, Dimension: quantity.Ratio, Doc: "The loss of weight, as a share, at which help is got at once and a cool rest is ended."})
	FigureRefusalsToPause       = listed(&Figures, Figure{Name: "refusals-to-pause", Kind: Numbers, Doc: "After so many refusals in a row meals pause.", ByStage: true})
	FigureRefusalPause          = listed(&Figures, Figure{Name: "refusal-pause", Kind: Range, Dimension: quantity.Duration, Doc: "How long meals pause after refusals.", ByStage: true})
	FigurePreyMassShare         = listed(&Figures, Figure{Name: "prey-mass-share", Kind: Range, Dimension: quantity.Ratio, Doc: "The greatest weight of one prey item, as a share of the animal's.", ByStage: true})
	FigurePreyLengthShare       = listed(&Figures, Figure{Name: "prey-length-share", Kind: Range, Dimension: quantity.Ratio, Doc: "The greatest length of one prey item, as a share of the animal's body.", ByStage: true})
	FigurePreyLengthLeast       = listed(&Figures, Figure{Name: "prey-length-least", Kind: Range, Dimension: quantity.Ratio, Doc: "The least length of one prey item, as a share of the animal's body: what is shorter is hardly hunted. What is longer only brings more or less.", ByStage: true})
	FigureItemsAWeek            = listed(&Figures, Figure{Name: "items-a-week", Kind: Numbers, Doc: "Prey items a week for one animal.", ByStage: true})
	FigureUnattended            = listed(&Figures, Figure{Name: "unattended", Kind: Range, Dimension: quantity.Duration, Doc: "The longest time it may be left with a full dish.", ByStage: true})
	FigureUnattendedSealed      = listed(&Figures, Figure{Name: "unattended-sealed", Kind: Range, Dimension: quantity.Duration, Doc: "The longest time a grown animal that is sealed in before a moult may be left with a full dish."})
	FigureUnattendedRest        = listed(&Figures, Figure{Name: "unattended-rest", Kind: Range, Dimension: quantity.Duration, Doc: "The longest time it may be left with a full dish in a cool rest."})
	FigureSettling              = listed(&Figures, Figure{Name: "settling", Kind: Range, Dimension: quantity.Duration, Doc: "From arrival to the first meal.", ByStage: true})
	FigureQuarantine            = listed(&Figures, Figure{Name: "quarantine", Kind: Range, Dimension: quantity.Duration, Doc: "How long one bred in captivity is kept apart after it came."})
	FigureQuarantineWild        = listed(&Figures, Figure{Name: "quarantine-wild", Kind: Range, Dimension: quantity.Duration, Doc: "How long one caught in the wild is kept apart after it came."})
	FigureMitesClear            = listed(&Figures, Figure{Name: "mites-clear", Kind: Range, Dimension: quantity.Duration, Doc: "From the day on which mites were last seen until the box counts as free of them."})
	FigureSubstrateChange       = listed(&Figures, Figure{Name: "substrate-change", Kind: Range, Dimension: quantity.Duration, Doc: "How often the substrate is renewed."})
	FigureVenom                 = listed(&Figures, Figure{Name: "venom", Kind: Word, Own: true, Warns: true, Choices: choices("none", "no venom", "mild", "as a bee or a wasp; dangerous to people with an allergy", "painful", "strong pain for hours or days, and signs away from the sting are not ruled out; children, the old and people with an allergy see a doctor", "medically significant", "a danger to life"), Required: true, About: "venom", Doc: "What its venom does to people."})
	FigureHairs                 = listed(&Figures, Figure{Name: "hairs", Kind: Word, Asked: true, Own: true, Warns: true, Choices: choices("none", "none", "contact", "hairs that irritate on contact", "thrown", "throws barbed hairs at eyes and airways"), Doc: "Hairs that hurt people."})
	FigureSpeed                 = listed(&Figures, Figure{Name: "speed", Kind: Word, Asked: true, Own: true, Choices: choices("slow", "walks away", "quick", "runs when it is disturbed", "very quick", "out of the box before a hand is closed"), Doc: "How fast it is when the box is opened."})
	FigureSpray                 = listed(&Figures, Figure{Name: "spray", Kind: Word, Own: true, Warns: true, Choices: choices("none", "sprays nothing", "venom", "sprays venom at the eyes", "acid", "sprays acid"), Doc: "What it sprays at whoever opens the box."})
	FigureTouch                 = listed(&Figures, Figure{Name: "touch", Kind: Word, Choices: choices("none", "nothing that harms", "germs", "carries germs that make people ill: hands are washed afterwards", "fluid", "gives off a fluid that harms eyes and mouth"), Doc: "What it leaves on hands that touched it or its box."})
	FigureDefence               = listed(&Figures, Figure{Name: "defence", Kind: Text, Own: true, Doc: "What else it does to people."})
	FigureCITES                 = listed(&Figures, Figure{Name: "cites", Kind: Word, Own: true, Choices: choices("none", "not listed", "I", "Appendix I", "II", "Appendix II", "III", "Appendix III"), Required: true, About: "law", Doc: "Its listing in CITES."})
	FigureLaw                   = listed(&Figures, Figure{Name: "law", Kind: Text, Own: true, Doc: "Other law to look up. No conclusion is drawn from it."})
	FigureClimateOrigin         = listed(&Figures, Figure{Name: "climate-origin", Kind: Text, Asked: true, Own: true, Doc: "Where it is from and how it lives there."})
	FigureSexing                = listed(&Figures, Figure{Name: "sexing", Kind: Text, Doc: "How males and females are told apart."})
	FigureMetabolicKin          = listed(&Figures, Figure{Name: "metabolic-kin", Kind: Word, Choices: choices("scorpion", "as the scorpions measured by Withers and Smith 1993", "tarantula", "as the tarantula measured by Nespolo and others 2011", "none", "no equation"), Doc: "Which measured animals stand for it in the energy check."})
)

// The facts that a feeder's sheet may state.
var (
	FeederEnergy              = listed(&FeederFigures, Figure{Name: "energy", Kind: Range, Dimension: quantity.EnergyDensity, Required: true, Doc: "Energy in the wet animal."})
	FeederWater               = listed(&FeederFigures, Figure{Name: "water", Kind: Range, Dimension: quantity.Ratio, Doc: "Water in the wet animal."})
	FeederProtein             = listed(&FeederFigures, Figure{Name: "protein", Kind: Range, Dimension: quantity.Ratio, Doc: "Protein in the wet animal."})
	FeederFat                 = listed(&FeederFigures, Figure{Name: "fat", Kind: Range, Dimension: quantity.Ratio, Doc: "Fat in the wet animal."})
	FeederCalciumToPhosphorus = listed(&FeederFigures, Figure{Name: "calcium-to-phosphorus", Kind: Numbers, Doc: "Calcium to phosphorus."})
	FeederUsable              = listed(&FeederFigures, Figure{Name: "usable", Kind: Range, Dimension: quantity.Duration, Doc: "How long bought ones can be used."})
	FeederWeeklyLoss          = listed(&FeederFigures, Figure{Name: "weekly-loss", Kind: Range, Dimension: quantity.Ratio, Doc: "How many die in a week."})
	FeederTemperature         = listed(&FeederFigures, Figure{Name: "temperature", Kind: Range, Dimension: quantity.Temperature, Doc: "How warm they are kept."})
	FeederHumidity            = listed(&FeederFigures, Figure{Name: "humidity", Kind: Range, Dimension: quantity.Humidity, Doc: "How damp they are kept."})
	FeederGutLoadBefore       = listed(&FeederFigures, Figure{Name: "gut-load-before", Kind: Range, Dimension: quantity.Duration, Doc: "How long before the meal they are fed well."})
	FeederGutLoadLost         = listed(&FeederFigures, Figure{Name: "gut-load-lost", Kind: Range, Dimension: quantity.Duration, Doc: "When the gain is gone after the food is taken away."})
	FeederShareMax            = listed(&FeederFigures, Figure{Name: "share-max", Kind: Range, Dimension: quantity.Ratio, Doc: "The greatest share of meals it should make up."})
	FeederCultureAge          = listed(&FeederFigures, Figure{Name: "culture-age", Kind: Range, Dimension: quantity.Duration, Doc: "At what age of a culture the next one is set up at the latest, and the age at which it is thrown out: mites and mould."})
	FeederCultureYield        = listed(&FeederFigures, Figure{Name: "culture-yield", Kind: Numbers, Doc: "How many a culture of the usual size yields in a week."})
	FeederCultureLasts        = listed(&FeederFigures, Figure{Name: "culture-lasts", Kind: Range, Dimension: quantity.Duration, Doc: "For how long a culture yields. One that yields for a year and more is a colony: it goes on by itself, and no other is set up in turn."})
	FeederLaw                 = listed(&FeederFigures, Figure{Name: "law", Kind: Text, Doc: "Law to look up. No conclusion is drawn from it."})
)

// FindFigure returns the figure of that name in a list, or nil.
func FindFigure(list []*Figure, name string) *Figure {
	for _, f := range list {
		if f.Name == name {
			return f
		}
	}
	return nil
}
