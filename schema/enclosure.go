package schema

import (
	"slices"

	"vivary/schema/quantity"
)

// Housing is the box and what is in it.
var Housing = &Block{
	Name: "housing", Once: true,
	Doc:     "The box itself.",
	Example: "housing {\n  kind      = \"glass\"\n  inside    = \"76 x 46 x 41 cm\"\n  lid       = \"solid, latched\"\n  substrate = \"coir and topsoil\"\n  depth     = \"16 cm\"\n  hides     = 5\n}",
	Attrs: []Attr{
		{Name: "kind", Kind: Word, Choices: HousingKinds, Unclear: UnclearHousings, Default: "glass", Doc: "What the walls are made of.", Example: `"glass"`},
		{Name: "inside", Kind: Size, Required: true, Beside: []string{"floor-first", "floor-further", "height-min", "volume-first"}, Doc: "Length, width and height inside.", Example: `"76 x 46 x 41 cm"`},
		{Name: "wall", Kind: Quantity, Dimension: quantity.Length, In: []quantity.Unit{quantity.Millimetre, quantity.Inch}, Default: "by kind: 5 mm glass, 4 mm acrylic, 2 mm tub, 10 mm PVC, 18 mm wood", Doc: "How thick the walls are.", Example: `"6 mm"`},
		{Name: "lid", Kind: Words, Required: true, Choices: Lids, Beside: []string{"lid"}, Doc: "What the lid is and how it is held.", Example: `"solid, latched"`},
		{Name: "gap", Kind: Quantity, Dimension: quantity.Length, In: []quantity.Unit{quantity.Millimetre, quantity.Inch}, Beside: []string{"gap-max"}, Doc: "The widest opening in mesh or vents.", Example: `"1.5 mm"`},
		{Name: "vents", Kind: Word, Choices: Vents, Beside: []string{"ventilation"}, Doc: "How air gets through.", Example: `"cross"`},
		{Name: "vents_at", Kind: Words, Choices: choices("side", "in the sides", "top", "in the lid"), Doc: "Where the openings are.", Example: `"top"`},
		{Name: "substrate", Kind: Text, Doc: "What the floor is covered with.", Example: `"coir and topsoil"`},
		{Name: "moisture", Kind: Word, Choices: Moistures, Beside: []string{"moisture"}, Doc: "How damp the substrate is kept.", Example: `"damp"`},
		{Name: "depth", Kind: Quantity, Dimension: quantity.Length, Beside: []string{"substrate-depth-min", "substrate-depth-advised"}, Doc: "How deep the substrate is.", Example: `"16 cm"`},
		{Name: "hides", Kind: Whole, Doc: "How many places to hide there are.", Example: `5`},
		{Name: "perches", Kind: Truth, Default: "false", Beside: []string{"hangs-to-moult"}, Doc: "Whether there is upright bark or a roof from which an animal can hang free.", Example: `true`},
		{Name: "water", Kind: Word, Choices: Waters, Default: "dish", Doc: "Where the animals drink.", Example: `"dish"`},
		{Name: "dish_depth", Kind: Quantity, Dimension: quantity.Length, In: []quantity.Unit{quantity.Millimetre, quantity.Centimetre, quantity.Inch}, Doc: "How deep the water dish is.", Example: `"15 mm"`},
		{Name: "places", Kind: Whole, Doc: "Free places for young, where this is a nursery.", Example: `30`},
		{Name: "stands_on", Kind: Word, Choices: Stands, Default: "board", Doc: "What is beneath it. It decides how much heat of a mat beneath goes in, and how hot the floor gets.", Example: `"feet"`},
		{Name: "shelf_rise", Kind: Range, Dimension: quantity.TemperatureStep, Default: "0 C", Doc: "How much warmer the air is where it stands than at the room's thermometer: a high shelf, lamps or mats of other boxes beneath.", Example: `"1 to 3 C"`},
	},
	Blocks: []*Block{Face},
}

// Face is what lies outside on some of the walls, on the lid or beneath the floor.
var Face = &Block{
	Name: "face", Label: "face", Once: true,
	Doc:     "What lies outside on a wall, on all walls, on the lid or beneath the floor: `back`, `front`, `left`, `right`, `walls`, `lid` or `base`. Foam or foil behind a mat sends more of its heat in and makes it hotter when its thermostat fails.",
	Example: "face \"back\" {\n  backing = \"foam\"\n  thick   = \"10 mm\"\n}",
	Attrs: []Attr{
		{Name: "backing", Kind: Word, Choices: choices("bare", "nothing", "foam", "insulating foam", "cork", "a sheet of cork", "board", "a wooden board or a wall", "foil", "reflecting foil"), Default: "bare", Doc: "What lies on it, behind a mat where there is one.", Example: `"foam"`},
		{Name: "thick", Kind: Quantity, Dimension: quantity.Length, In: []quantity.Unit{quantity.Millimetre, quantity.Centimetre, quantity.Inch}, Default: "20 mm of foam, 10 mm of cork, 18 mm of board", Doc: "How thick that is.", Example: `"10 mm"`},
		{Name: "beside", Kind: Word, Choices: choices("room", "the air of the room", "warm box", "another box that is as warm: nothing is lost there"), Default: "room", Doc: "What it faces.", Example: `"warm box"`},
	},
}

// Animals is one animal, or a group of one stage.
var Animals = &Block{
	Name: "animals", Label: "name", Once: true,
	Doc:     "One animal, or several of one stage.",
	Example: "animals \"adults\" {\n  count  = \"1.2.0\"\n  stage  = \"adult\"\n  origin = \"captive bred\"\n}",
	Attrs: []Attr{
		titleAttr,
		{Name: "count", Kind: Count, Required: true, Beside: []string{"keeping", "group-max"}, Doc: "How many: a number, or males.females.unsexed.", Example: `"1.2.0"`},
		{Name: "stage", Kind: Word, Choices: Stages, Unclear: UnclearStages, Default: "from the instar; unknown otherwise, and then the strictest limits hold", Doc: "The stage of life.", Example: `"adult"`},
		{Name: "instar", Kind: Whole, Doc: "The number of the instar. The first is the one on the mother's back; the second begins with the first moult.", Example: `4`},
		{Name: "length", Kind: Quantity, Dimension: quantity.Length, Beside: []string{"length", "span"}, Doc: "Body length without tail or legs.", Example: `"55 mm"`},
		{Name: "mass", Kind: Quantity, Dimension: quantity.Mass, Beside: []string{"mass"}, Doc: "The weight of one animal.", Example: `"24 g"`},
		{Name: "state", Kind: Word, Choices: FemaleStates, Doc: "What the log does not say yet, of a female.", Example: `"gravid"`},
		{Name: "origin", Kind: Word, Choices: Origins, Doc: "Where the animal is from.", Example: `"captive bred"`},
		{Name: "paper", Kind: Text, Doc: "The number of the paper that proves the origin.", Example: `"invoice 2026-118"`},
		{Name: "paper_species", Kind: Text, Doc: "The name of the species as it stands on that paper, where that is another than today's. Names move, and a paper does not.", Example: `"Pandinus imperator (Koch)"`},
		{Name: "list_checked", Kind: Date, Doc: "The day on which somebody looked up whether, and where, the species is listed.", Example: `"2026-09-01"`},
		{Name: "arrived", Kind: Date, Doc: "When it came.", Example: `"2026-03-14"`},
		{Name: "born", Kind: Date, Doc: "When it was born, or hatched.", Example: `"2025-06-02"`},
		{Name: "brood", Kind: Text, Doc: "A name for its brood, so that kin are not paired.", Example: `"2025-06 fern"`},
		{Name: "hidden", Kind: Whole, Doc: "How many of the group may stay out of sight at a count.", Example: `5`},
		formerlyAttr, noteAttr,
	},
}

// Heater is one device that warms an enclosure.
var Heater = &Block{
	Name: "heater", Label: "name", Once: true,
	Doc:     "A device that warms the enclosure. Its name is what it is (mat, cable, lamp, ceramic or panel); any other name needs `kind`. Mains and water are close together here. The usual care: " + Mains + ".",
	Example: "heater \"mat\" {\n  power      = \"28 W\"\n  place      = \"side\"\n  thermostat = \"30 C\"\n}",
	Attrs: []Attr{
		{Name: "kind", Kind: Word, Choices: HeaterKinds, Unclear: UnclearHeaters, Default: "the name", Beside: []string{"heater-not"}, Doc: "What it is.", Example: `"mat"`},
		{Name: "power", Kind: Quantity, Dimension: quantity.Power, Required: true, Doc: "The rated power.", Example: `"28 W"`},
		{Name: "size", Kind: Face2D, Doc: "Length and width of a mat or panel. With the power it decides how hot it gets.", Example: `"28 x 43 cm"`},
		{Name: "length", Kind: Quantity, Dimension: quantity.Length, Doc: "How much of a cable lies at the enclosure.", Example: `"40 cm"`},
		{Name: "place", Kind: Word, Required: true, Choices: HeaterPlaces, Doc: "Where it is.", Example: `"side"`},
		{Name: "covers", Kind: Quantity, Dimension: quantity.Ratio, Doc: "How much of the wall or floor it covers, where its size is not written.", Example: `"30 %"`},
		{Name: "contact", Kind: Word, Choices: Contacts, Default: "not known", Doc: "How a mat or cable lies on the wall or beneath the floor.", Example: `"full"`},
		{Name: "hours", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Hours}, Default: "24 h", Doc: "How long it is on in a day, where a timer switches it.", Example: `"12 h"`},
		{Name: "thermostat", Kind: Quantity, Dimension: quantity.Temperature, Band: keptAt, Beside: []string{"temperature-hard", "warm-spot"}, Doc: "The temperature at which its thermostat switches it off.", Example: `"30 C"`},
		{Name: "probe", Kind: Word, Choices: Probes, Default: "spot", Doc: "Where the thermostat's probe is: it holds the temperature of that place and of no other.", Example: `"spot"`},
		{Name: "swing", Kind: Quantity, Dimension: quantity.TemperatureStep, Default: "1 C", Doc: "How far past its setting the thermostat lets the temperature go.", Example: `"2 C"`},
		{Name: "channel", Kind: Text, Doc: "The outlet of a thermostat that several heaters share.", Example: `"rack 1"`},
		{Name: "guarded", Kind: Truth, Default: "false", Doc: "Whether a guard keeps animals off its surface.", Example: `true`},
		{Name: "uv", Kind: Truth, Default: "false", Beside: []string{"uv-not"}, Doc: "Whether it gives off ultraviolet light. A lamp for it of up to 26 W hardly warms, and is asked for no thermostat.", Example: `true`},
	},
}

// Climate is what the enclosure is held at, and by what.
var Climate = &Block{
	Name: "climate", Once: true,
	Doc:     "What the inside is held at, and the devices that do it.",
	Example: "climate {\n  warm_end = \"30 C\"\n  cool_end = \"26 C\"\n  humidity = \"75 to 85 %\"\n}",
	Attrs: []Attr{
		{Name: "warm_end", Kind: Range, Dimension: quantity.Temperature, Band: keptAt, Default: "the species' range, as far as the room reaches it", Beside: []string{"warm-spot", "temperature-target"}, Doc: "The temperature at the warm end by day.", Example: `"30 C"`},
		{Name: "cool_end", Kind: Range, Dimension: quantity.Temperature, Band: keptAt, Beside: []string{"air", "temperature-target"}, Doc: "The temperature at the cool end by day.", Example: `"26 C"`},
		{Name: "night", Kind: Range, Dimension: quantity.Temperature, Band: keptAt, Beside: []string{"night", "night-drop"}, Doc: "The temperature by night.", Example: `"22 to 24 C"`},
		{Name: "humidity", Kind: Range, Dimension: quantity.Humidity, Default: "the species' range", Beside: []string{"humidity-target", "humidity-soft"}, Doc: "Relative humidity inside. Give a band: one exact figure promises what no gauge can show.", Example: `"75 to 85 %"`},
		{Name: "thermometer", Kind: Truth, Default: "false", Doc: "Whether there is a thermometer that does not belong to the thermostat.", Example: `true`},
		{Name: "gauge_tested", Kind: Date, Doc: "When the gauges were last tested.", Example: `"2026-09-01"`},
	},
	Blocks: []*Block{Heater, Measured, Gauge},
}

// Measured is what the keeper measured in the enclosure.
var Measured = &Block{
	Name: "measured", Once: true,
	Doc:     "What was measured in the enclosure with everything on as usual, hours after it was last opened. It narrows what is reckoned of the heat. More measurements stand in the log.",
	Example: "measured {\n  on   = \"2026-11-20\"\n  spot = \"31 C\"\n  air  = \"23 C\"\n  room = \"20 C\"\n}",
	Attrs: []Attr{
		{Name: "on", Kind: Date, Doc: "The day of it.", Example: `"2026-11-20"`},
		{Name: "spot", Kind: Quantity, Dimension: quantity.Temperature, Beside: []string{"warm-spot", "surface-max"}, Doc: "The warmest surface that the animals can reach, at the heater.", Example: `"31 C"`},
		{Name: "air", Kind: Quantity, Dimension: quantity.Temperature, Beside: []string{"air", "temperature-target"}, Doc: "The air away from the heater.", Example: `"23 C"`},
		{Name: "room", Kind: Quantity, Dimension: quantity.Temperature, Doc: "The room at the same time.", Example: `"20 C"`},
		{Name: "humidity", Kind: Quantity, Dimension: quantity.Humidity, Beside: []string{"humidity-target"}, Doc: "The relative humidity of the air inside.", Example: `"78 %"`},
		{Name: "power", Kind: Quantity, Dimension: quantity.Power, Default: "the rated power, if no thermostat switched it; else what the spot takes", Doc: "What the heaters drew on average, by a power meter.", Example: `"16 W"`},
	},
}

var scheduleAttrs = []Attr{
	{Name: "every", Kind: Every, Doc: "How often, by the calendar: every so many days, weeks or months.", Example: `"3 days"`},
	{Name: "on", Kind: On, Ref: "dates", Doc: "On which days: weekdays, days of the month or of the year; or once, on a date.", Example: `["tue", "fri"]`},
	{Name: "not_on", Kind: On, Ref: "dates", Doc: "Days on which it is not done all the same, and not moved either. The proof counts the longer time between, and refuses where a need is broken.", Example: `["2027-03-02", "school-holidays"]`},
	{Name: "also_on", Kind: On, Ref: "dates", Doc: "Days on which it is done besides, those of not_on among them. Once Wednesday instead of Tuesday is not_on that Tuesday and also_on that Wednesday.", Example: `["2027-03-03"]`},
	{Name: "cron", Kind: Cron, Doc: "Times and days as a cron line of five fields. A line that names both a day of the month and a weekday means either.", Example: `"30 19 * * 1,4"`},
	{Name: "after_last", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Days, quantity.Weeks}, Doc: "So long after it was last done. Counted from the log; where the log is silent it counts as done when planned.", Example: `"7 days"`},
	{Name: "window", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Days, quantity.Weeks}, Default: "0 days; for care that a species sheet brings, 3 days", Doc: "How far it may be moved either way to fall on a day with a round. Whole days, 32 at the most.", Example: `"2 days"`},
	{Name: "from", Kind: Date, Doc: "The first day; for an interval also the day it is counted from.", Example: `"2027-01-04"`},
	{Name: "until", Kind: Date, Doc: "The last day.", Example: `"2027-03-31"`},
	{Name: "round", Kind: Refs, Ref: "round", Default: "the round of the enclosure or its room; else the collection's first round, or one at 19:30", Doc: "The round in which it is done; of several, on each day all that are held. So rounds of different days take turns, and what is named in a morning and an evening round is done twice a day, with amount or per_animal each time.", Example: `["morning", "evening"]`},
	{Name: "at", Kind: Clocks, Default: "the time of its round", Doc: "A time of its own, or several.", Example: `"08:00"`},
	{Name: "minutes", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Minutes}, Doc: "How long it takes.", Example: `"4 min"`},
	{Name: "keeper", Kind: Ref, Ref: "keeper", Default: "the keeper of its round", Doc: "Who does it.", Example: `"lead"`},
}

// Attributes by which the built-in library says where a value is from.
var sourceAttrs = []Attr{
	{Name: "source", Kind: Texts, Ref: "source", Doc: "The names of the sources it is from.", Example: `["K20"]`},
	{Name: "quality", Kind: Word, Choices: Qualities, Doc: "How good the source is.", Example: `"keeper"`},
	{Name: "seen", Kind: Date, Doc: "When the source was looked at.", Example: `"2026-11-25"`},
}

// Qualities say how good a source is, best first.
var Qualities = choices(
	"paper", "peer-reviewed, a thesis or a conference paper",
	"guideline", "an institution or a government",
	"society", "a zoo or museum, a veterinarian or expert, a society",
	"keeper", "a care sheet, shop, forum or encyclopedia",
	"own", "the keeper's own records",
	"practice", "common practice, no source",
	"memory", "from memory, not seen in a source: verify before use",
)

func join(lists ...[]Attr) []Attr {
	var all []Attr
	for _, l := range lists {
		all = append(all, l...)
	}
	return all
}

// Care is one thing done again and again.
var Care = &Block{
	Name: "care", Label: "name", Once: true,
	Doc:     "One thing that is done again and again. A name that is a kind of care says what is done; any other name needs `kind`. It takes the place of the species sheet's care of the same name or kind; where it does not say how often, the sheet's care of that kind does.",
	Example: "care \"mist\" {\n  every  = \"day\"\n  round  = \"evening\"\n  amount = \"150 ml\"\n}",
	Attrs: join([]Attr{
		{Name: "kind", Kind: Text, Ref: NamesKind, Default: "the name", Doc: "What is done: one of the kinds of care.", Example: `"mist"`},
		{Name: "task", Kind: Text, Default: "the words of its kind", Doc: "What to do, in the keeper's words.", Example: `"mist the left half"`},
		{Name: "stages", Kind: Texts, Choices: Stages, Doc: "In a species sheet: the stages it is for.", Example: `["adult"]`},
		{Name: "off", Kind: Truth, Default: "false", Doc: "Leaves out a care that the species sheet brings.", Example: `true`},
	}, scheduleAttrs, []Attr{
		{Name: "amount", Kind: Quantity, Dimension: quantity.Volume, Positive: true, Doc: "How much water, each time. Left out, it is watered until the substrate is damp.", Example: `"150 ml"`},
		{Name: "because", Kind: Text, Doc: "Why it is done, where somebody may ask.", Example: `"measured 62 % at noon"`},
		formerlyAttr,
	}, sourceAttrs),
}

// Feeding is a meal for one group of animals.
var Feeding = &Block{
	Name: "feeding", Label: "animals", Names: "animals", Once: true,
	Doc:     "Meals for the animals named by the label. Each live meal brings a look for leftovers. It takes the place of the species sheet's feeding for those animals; what it does not say of how often, how many and which prey is taken from there.",
	Example: "feeding \"adults\" {\n  on         = [\"tue\", \"fri\"]\n  round      = \"evening\"\n  per_animal = 4\n  rotate     = [\"cricket adult\", \"roach medium\"]\n}",
	Attrs: join([]Attr{
		{Name: "stages", Kind: Texts, Choices: Stages, Doc: "In a species sheet: the stages it is for.", Example: `["adult"]`},
		{Name: "off", Kind: Truth, Default: "false", Doc: "Leaves out the meals that the species sheet brings.", Example: `true`},
	}, scheduleAttrs, []Attr{
		{Name: "per_animal", Kind: Number, Beside: []string{"items-a-week"}, Doc: "Prey items for each animal at each meal.", Example: `4`},
		{Name: "prey", Kind: Prey, Beside: []string{"prey-length-share", "prey-mass-share"}, Doc: "The prey: a feeder and its size.", Example: `"cricket adult"`},
		{Name: "rotate", Kind: Menu, Beside: []string{"prey-length-share", "prey-mass-share"}, Doc: "Prey taken in turn, one after another.", Example: `["cricket adult", "roach medium"]`},
		{Name: "killed", Kind: Truth, Default: "false", Doc: "Whether the prey is killed first.", Example: `true`},
		{Name: "leftovers", Kind: Quantity, Dimension: quantity.Duration, Default: "1 day", Doc: "How long after a live meal leftovers are taken out.", Example: `"1 day"`},
		{Name: "leftovers_round", Kind: Refs, Ref: "round", Default: "the round of the meal", Doc: "The round in which leftovers are taken out; several take turns.", Example: `"morning"`},
		{Name: "gut_load", Kind: Truth, Default: "false", Doc: "Whether the prey is fed well for a day before.", Example: `true`},
		{Name: "dusted", Kind: Truth, Default: "false", Doc: "Whether the prey is dusted with minerals.", Example: `true`},
		{Name: "wild", Kind: Truth, Default: "false", Doc: "Whether the prey was caught outdoors.", Example: `true`},
		{Name: "because", Kind: Text, Doc: "Why, where somebody may ask.", Example: `"regaining weight"`},
		formerlyAttr,
	}, sourceAttrs),
}

// Accept silences one rule for a while.
var Accept = &Block{
	Name: "accept", Label: "rule", Names: NamesRule, Once: true,
	Doc:     "Silences one rule in this enclosure, with a reason, until a date. It shows in review, and the finding comes back on that date. What can kill is never silenced.",
	Example: "accept \"substrate-shallow\" {\n  because = \"deeper tank arrives in January\"\n  until   = \"2027-01-15\"\n}",
	Attrs: []Attr{
		{Name: "because", Kind: Text, Required: true, Doc: "The reason, for whoever reviews the plan.", Example: `"deeper tank arrives in January"`},
		{Name: "until", Kind: Date, Required: true, Doc: "The day on which the finding comes back.", Example: `"2027-01-15"`},
		{Name: "source", Kind: Texts, Ref: "source", Doc: "On whose word.", Example: `["curator, 2 Nov 2026"]`},
	},
}

// Season changes limits, climate and care for a part of every year.
var Season = &Block{
	Name: "season", Label: "name", Once: true,
	Doc:     "A part of the year with a climate and care of its own, such as a cool rest. Where it is cooler than usual the days on which the thermostat is set, the heater goes off and on, the last and the first meal are worked out and stand in the rounds. A season excuses meals only where it is cool, and only for animals that may rest: the young, gravid, ill, and those before or after a moult stay warm.",
	Example: "season \"cool rest\" {\n  from    = \"1 nov\"\n  to      = \"28 feb\"\n  ramp    = \"2.5 C\"\n  feeding = \"none\"\n  heating = \"off\"\n\n  climate {\n    warm_end = \"14 C\"\n  }\n}",
	Attrs: []Attr{
		{Name: "from", Kind: DayOfYear, Required: true, Doc: "The first day, every year: the thermostat goes down its first step. Where there are no meals in a cool rest, they end two weeks before, with the heat as it was.", Example: `"1 nov"`},
		{Name: "to", Kind: DayOfYear, Required: true, Doc: "The last day, every year: on the day after it the thermostat is back where it was. The first meal follows some days later.", Example: `"28 feb"`},
		{Name: "ramp", Kind: Quantity, Dimension: quantity.TemperatureStep, Default: "3 C", Beside: []string{"rest-step"}, Doc: "How fast the temperature may change in a week, going in and coming out: each step of the thermostat.", Example: `"2.5 C"`},
		{Name: "feeding", Kind: Word, Choices: choices("as usual", "meals go on", "none", "no meals", "half", "every second meal"), Default: "as usual; where the heaters are off and it is cool, none", Doc: "What becomes of the meals.", Example: `"none"`},
		{Name: "misting", Kind: Word, Choices: choices("as usual", "misting goes on", "none", "no misting", "half", "every second misting"), Default: "as usual", Doc: "What becomes of misting and watering the substrate. Drinking water is never taken away.", Example: `"half"`},
		{Name: "heating", Kind: Word, Choices: choices("on", "heaters work", "off", "heaters are off once the last step is done"), Default: "on", Doc: "Whether heaters are on.", Example: `"off"`},
		{Name: "off", Kind: Truth, Default: "false", Doc: "Leaves out a season that the template brings.", Example: `true`},
		{Name: "note", Kind: Text, Doc: "A remark for whoever is in front of the tank. It stands in the round on the first day and at each step.", Example: `"dish stays full"`},
	},
	Blocks: []*Block{{
		Name: "climate", Once: true, Doc: "What the inside is held at in this season.",
		Attrs: Climate.Attrs[:4:4],
	}},
}

// common are the attributes of an enclosure that a template has too, the note last.
var common = []Attr{
	{Name: "species", Kind: Ref, Ref: "species", Required: true, Doc: "The species sheet.", Example: `"pandinus-imperator"`},
	{Name: "room", Kind: Ref, Ref: "room", Default: "that of its rack; else the only room, where there is one", Doc: "Where it stands.", Example: `"east"`},
	{Name: "rack", Kind: Ref, Ref: "rack", Doc: "The rack in which it stands, and from which it takes what neither it nor its template says.", Example: `"baby-rack"`},
	{Name: "order", Kind: Whole, Default: "after those that have one, by name", Doc: "The place in the walk through the room: 1 is visited first.", Example: `1`},
	{Name: "round", Kind: Refs, Ref: "round", Default: "the round of its room", Doc: "The round in which its care is done, where the care does not say. Several take turns: no two of them on one day.", Example: `["weekday", "weekend"]`},
	{Name: "people", Kind: Whole, Default: "as its room says, or the round", Doc: "How many people it takes to open it, where that is more than the round takes. For a species of dangerous venom or thrown hairs only those count who are trained for it.", Example: `2`},
	{Name: "culture", Kind: Truth, Default: "false", Doc: "Whether it is a feeder culture, not animals on show.", Example: `true`},
	noteAttr,
}

// inBox are the blocks of an enclosure.
var inBox = []*Block{Housing, Animals, Climate, Care, Feeding, Season, Accept}

// Enclosure is one box with its animals and their care, or several that differ little.
var Enclosure = &Block{
	Name: "enclosure", Label: "name", Once: true,
	Doc:     "One enclosure: the animals, the box, the climate and the care. A species, a housing and animals are enough; the species sheet brings the care that is usual. With `numbers` one block stands for several that differ little.",
	Example: "enclosure \"burrow-a\" {\n  species = \"pandinus-imperator\"\n  room    = \"east\"\n\n  housing {\n    inside = \"76 x 46 x 41 cm\"\n    lid    = \"solid, latched\"\n    depth  = \"16 cm\"\n    hides  = 3\n  }\n\n  animals \"adults\" {\n    count = 3\n    stage = \"adult\"\n  }\n}",
	Attrs: join([]Attr{
		titleAttr,
		formerlyAttr,
		{Name: "numbers", Kind: Spans, Default: "it is one enclosure", Doc: "Which enclosures of this kind there are: each of them is one of its own, named for the block and its number, `tub-1` and `tub-2`, as if it were written out. What differs in one stands in a `number` block.", Example: `"1 to 40"`},
		templateAttr,
	}, common),
	Blocks: append(slices.Clone(inBox), NumberBlock),
}

// templateAttr names a template.
var templateAttr = Attr{Name: "template", Kind: Ref, Ref: "template", Doc: "The template from which it takes what it does not say itself.", Example: `"desert-tub"`}

// Template is an enclosure's text without an enclosure.
var Template = &Block{
	Name: "template", Label: "name", Once: true,
	Doc:     "What many enclosures have in common. An enclosure that names it takes every attribute and block that it does not write itself; a block of the same name is taken attribute by attribute. A care or feeding that says itself how often, or which prey, takes neither from the template.",
	Example: "template \"desert-tub\" {\n  species = \"hadrurus-arizonensis\"\n\n  housing {\n    kind   = \"tub\"\n    inside = \"40 x 30 x 30 cm\"\n    lid    = \"solid, latched\"\n    depth  = \"16 cm\"\n    hides  = 1\n  }\n}",
	Attrs:   common,
	Blocks:  inBox,
}
