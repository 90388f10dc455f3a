package schema

import "vivary/schema/quantity"

// Attributes that several blocks have in common.
var (
	titleAttr    = Attr{Name: "title", Kind: Text, Default: "the name, its hyphens read as spaces", Doc: "The name that people see.", Example: `"Burrow A"`}
	formerlyAttr = Attr{Name: "formerly", Kind: Text, Doc: "The name it had first, however often that changed. Entries already on people's phones keep their identity, and lines of the log their meaning.", Example: `"burrow-1"`}
	noteAttr     = Attr{Name: "note", Kind: Text, Doc: "A remark for whoever reads the plan.", Example: `"shares a shelf with burrow-b"`}
)

// keptAt is the band of temperatures of rooms and enclosures. Judgement; far beyond what is
// usual, since nothing is refused by it but what the other scale would bring into it.
var keptAt = quantity.Range{Low: 0, High: 50, Unit: quantity.Celsius}

// inADay is the band of work on one day.
var inADay = quantity.Range{Low: 1, High: 16 * 60, Unit: quantity.Minutes}

// inAWeek, aBreak and aRest are the bands of work in a week, of a break and of rest in a day.
var (
	inAWeek = quantity.Range{Low: 1, High: 7 * 16 * 60, Unit: quantity.Minutes}
	aBreak  = quantity.Range{Low: 5, High: 4 * 60, Unit: quantity.Minutes}
	aRest   = quantity.Range{Low: 1, High: 24, Unit: quantity.Hours}
)

// Collection is the one block that every plan needs.
var Collection = &Block{
	Name: "collection", Label: "name", Once: true,
	Doc:     "The collection as a whole. There is one in a plan, in any of its files.",
	Example: "collection \"quillmoor\" {\n  title     = \"Quillmoor Field Centre\"\n  time_zone = \"Europe/London\"\n}",
	Attrs: []Attr{
		titleAttr,
		{Name: "time_zone", Kind: Zone, Required: true, Doc: "Where the animals are. Every time in the plan is the time on the wall there, through changes to and from summer time.", Example: `"Europe/London"`},
		{Name: "hemisphere", Kind: Word, Choices: choices("north", "summer is in June to August", "south", "summer is in December to February"), Default: "that of the time zone's place; none near the equator", Doc: "Which half of the year is summer. A cool rest in the local summer is said.", Example: `"south"`},
		{Name: "altitude", Kind: Quantity, Dimension: quantity.Length, In: []quantity.Unit{quantity.Metre, quantity.Foot}, Default: "0 m", Doc: "Height above the sea. Thinner air carries less heat and more water.", Example: `"240 m"`},
		{Name: "units", Kind: Word, Choices: choices(UnitsMetric, "C, cm, ml and g", UnitsUS+" | american | us customary", "F, in, fl oz and oz"), Default: "for each sort of value that in which the plan mostly writes it; for what it writes nowhere, that of all else, or of the time zone's place", Doc: "In which units findings, rounds and explanations tell what the plan did not write so itself. A plan may be written in either, or in both.", Example: `"US"`},
		{Name: "clock", Kind: Word, Choices: choices(Clock24+" | 24 h | 24", "as in 19:30", Clock12+" | 12 h | 12", "as in 7:30 pm"), Default: "that in which the plan mostly writes times; where it writes none, that of the time zone's place", Doc: "By which clock times of day are told.", Example: `"12 hours"`},
		{Name: "week", Kind: Word, Choices: choices(WeekMonday+" | monday", "from Monday on", WeekSunday+" | sunday", "from Sunday on"), Default: "that of the time zone's place", Doc: "With which day a week is told to begin, where days of the week are listed. What is done every other week goes by weeks from Monday on in either.", Example: `"sun"`},
		{Name: "paper_size", Kind: Word, Choices: choices(PaperA4+" | din a4", "210 x 297 mm", PaperLetter+" | us letter", "8.5 x 11 in"), Default: "that of the time zone's place; letter where units are US", Doc: "On sheets of which size everything is printed: the sheet of a stand-in, rounds, care sheets, cards, labels.", Example: `"letter"`},
		{Name: "web", Kind: Link, Doc: "The folder on the web from which the feeds are served. It goes into each feed as its own address.", Example: `"https://care.quillmoor.example/feeds"`},
		{Name: "quarantine", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Days}, Default: "that of the species sheet, and quarantine-wild for one caught in the wild", Beside: []string{"quarantine", "quarantine-wild"}, Doc: "How long an animal that arrives is kept apart, whatever its species. There is no good source for a length: the sheets have what is in use.", Example: `"60 days"`},
		{Name: "records_kept", Kind: Every, Doc: "For how long a record is kept from its making, as you have looked it up for where you live: three years for those who sell in England, five for the bound book in Germany, to name two. The register says of each animal until when that is, and concludes nothing.", Example: `"3 years"`},
		noteAttr,
	},
}

// The units, the clocks, the weeks and the paper in which a collection may be told what is told.
const (
	UnitsMetric = "metric"
	UnitsUS     = "US"
	Clock24     = "24 hours"
	Clock12     = "12 hours"
	WeekMonday  = "mon"
	PaperA4     = "A4"
	PaperLetter = "letter"
	WeekSunday  = "sun"
)

// Room is a place with a climate of its own, and a stop of the walk.
var Room = &Block{
	Name: "room", Label: "name", Once: true,
	Doc:     "A room in which enclosures stand.",
	Example: "room \"east\" {\n  temperature = \"18 to 22 C\"\n  humidity    = \"40 to 55 %\"\n}",
	Attrs: []Attr{
		titleAttr,
		{Name: "temperature", Kind: Range, Dimension: quantity.Temperature, Band: keptAt, Required: true, Doc: "The lowest and the highest that a thermometer in the room shows over the year, with its own heating as it is.", Example: `"18 to 22 C"`},
		{Name: "winter", Kind: Range, Dimension: quantity.Temperature, Band: keptAt, Doc: "What it shows in the three coldest months, where the animals are warmed by the room alone.", Example: `"18 to 20 C"`},
		{Name: "summer", Kind: Range, Dimension: quantity.Temperature, Band: keptAt, Doc: "What it shows in the three hottest months.", Example: `"23 to 27 C"`},
		{Name: "humidity", Kind: Range, Dimension: quantity.Humidity, Doc: "The driest and the dampest air of the room over the year.", Example: `"40 to 55 %"`},
		{Name: "order", Kind: Whole, Default: "after those that have one, by name", Doc: "The place in the walk: 1 is visited first.", Example: `1`},
		{Name: "round", Kind: Refs, Ref: "round", Default: "the collection's first round, or one at 19:30", Doc: "The round in which care in this room is done, where neither the care nor the enclosure says. Several take turns: no two of them on one day.", Example: `["weekday", "weekend"]`},
		{Name: "people", Kind: Whole, Default: "as the round", Doc: "How many people it takes to open an enclosure in this room, where that is more than the round takes.", Example: `2`},
		{Name: "locked", Kind: Truth, Default: "false", Doc: "Whether the room is kept locked, with no gap by which an animal could leave.", Example: `true`},
		formerlyAttr, noteAttr,
	},
	Blocks: []*Block{Gauge},
}

// Rack is a shelf of boxes with one heater, one thermostat and one thermometer.
var Rack = &Block{
	Name: "rack", Label: "name", Once: true,
	Doc:     "A rack of boxes that share a heater, its thermostat and a thermometer, said once. An enclosure that names it takes from it what it does not say itself, after its template: the room, the heaters with their part of the power, the thermometer, `shelf_rise`, `stands_on` and what was measured. Power, size and length of a heater are those of the whole rack: each box has its part of them. Where the rack has a thermometer it is read once in a round, for all who stand there, and its heaters are tested once for all.",
	Example: "rack \"baby-rack\" {\n  room        = \"east\"\n  thermometer = true\n  places      = 20\n\n  heater \"cable\" {\n    power      = \"60 W\"\n    place      = \"back\"\n    contact    = \"gap\"\n    thermostat = \"29 C\"\n  }\n}",
	Attrs: []Attr{
		titleAttr,
		{Name: "room", Kind: Ref, Ref: "room", Default: "that of its enclosures", Doc: "Where it stands, and with it all that stand in it.", Example: `"east"`},
		{Name: "round", Kind: Refs, Ref: "round", Default: "the round of its first enclosure; else that of its room", Doc: "The round in which its thermometer is read and its heaters are tested. Several take turns: no two of them on one day.", Example: `"evening"`},
		{Name: "thermometer", Kind: Truth, Default: "false", Doc: "Whether there is a thermometer, one for all, that does not belong to the thermostat.", Example: `true`},
		{Name: "places", Kind: Whole, Default: "as many as name it", Doc: "How many boxes it holds. The power of its heaters is shared by so many.", Example: `20`},
		housingAttr("stands_on"), housingAttr("shelf_rise"),
		formerlyAttr, noteAttr,
	},
	Blocks: []*Block{Heater, Measured, Gauge},
}

// housingAttr is what a rack says in place of the housing of each box.
func housingAttr(name string) Attr {
	a := *Housing.Attr(name)
	a.Default = "as each box says"
	return a
}

// Keeper is a person who does care.
var Keeper = &Block{
	Name: "keeper", Label: "name", Once: true,
	Doc:     "A person who looks after animals.",
	Example: "keeper \"lead\" {\n  title   = \"Lead keeper\"\n  trained = \"venom, breeding\"\n}",
	Attrs: []Attr{
		titleAttr,
		{Name: "phone", Kind: Text, Doc: "How to reach this person. It is printed for stand-ins and never put into a feed.", Example: `"ring the office"`},
		{Name: "trained", Kind: Words, Choices: Skills, Default: "nothing special", Doc: "What this person has been shown and may do.", Example: `"venom, breeding"`},
		{Name: "budget", Kind: Quantity, Dimension: quantity.Duration, Band: inADay, Doc: "The time this person has for care on one day.", Example: `"60 min"`},
		{Name: "week", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Hours, quantity.Minutes}, Band: inAWeek, Doc: "The time this person has for care in a week. A week that asks for more is said. It is your figure, and no legal one.", Example: `"10 h"`},
		{Name: "rest", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Hours}, Band: aRest, Doc: "The rest this person has from the last round of a day to the first of the next. Less is said. It is your figure, and no legal one.", Example: `"11 h"`},
		{Name: "off", Kind: On, Ref: "dates", Doc: "Rest days of this person, on which nobody counts on them as a second person or for somebody who is ill. Work of their own on such a day is said.", Example: `["sun"]`},
		{Name: "break", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Minutes, quantity.Hours}, Band: aBreak, Doc: "How long a time between two rounds has to be to be a break. With it a day is said on which they work for longer than `break_after` without one. It is your figure, and no legal one.", Example: `"20 min"`},
		{Name: "break_after", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Hours, quantity.Minutes}, Band: inADay, Default: "6 h", Doc: "For how long they may work without a break.", Example: `"6 h"`},
		{Name: "mean_week", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Hours, quantity.Minutes}, Band: inAWeek, Doc: "The time this person has for care in a week, on average over the weeks of `mean_over`. More is said. It is your figure, and no legal one.", Example: `"30 h"`},
		{Name: "mean_over", Kind: Whole, Default: "17", Doc: "Over how many weeks that average is taken. 17 are usual in the law of some countries, four months in that of others, from memory: look it up.", Example: `17`},
		{Name: "rooms", Kind: Refs, Ref: "room", Default: "all", Doc: "Where this person may stand in for others: only in these rooms, or in `enclosures`. Elsewhere a stand-in looks from outside. Their own rounds are not bound by it.", Example: `["east"]`},
		{Name: "enclosures", Kind: Refs, Ref: "enclosure", Default: "all", Doc: "Where this person may stand in for others, beside `rooms`.", Example: `["burrow-a"]`},
		formerlyAttr, noteAttr,
	},
	Blocks: []*Block{Training},
}

// Training is what a keeper was shown, and until when that holds.
var Training = &Block{
	Name: "training", Label: "name", Once: true,
	Doc:     "A training: in what, by whom, and until when it holds. It counts as `trained` does. When it ends it refuses nothing: it is told 30 days before among the dates of the house, and from the day on as urgent where their own rounds need it, and who stands in for others then does only what somebody may who is not trained.",
	Example: "training \"venom-course\" {\n  in    = \"venom\"\n  on    = \"2026-09-12\"\n  by    = \"the safety officer\"\n  until = \"2027-09-12\"\n}",
	Attrs: []Attr{
		{Name: "in", Kind: Words, Choices: Skills, Required: true, Doc: "What was shown.", Example: `"venom"`},
		{Name: "on", Kind: Date, Doc: "The day of it.", Example: `"2026-09-12"`},
		{Name: "by", Kind: Text, Doc: "By whom.", Example: `"the safety officer"`},
		{Name: "until", Kind: Date, Default: "for good", Doc: "The last day on which it holds, by what your house or your insurer asks for.", Example: `"2027-09-12"`},
		noteAttr,
	},
}

// Contact is somebody to ring who does no care.
var Contact = &Block{
	Name: "contact", Label: "name", Once: true,
	Doc:     "Somebody to ring who does no care here: a veterinarian, a mentor. The lists of those who stand in have the number; a feed never has.",
	Example: "contact \"vet\" {\n  title = \"Veterinarian\"\n  phone = \"on the door\"\n}",
	Attrs: []Attr{
		titleAttr,
		{Name: "phone", Kind: Text, Required: true, Doc: "How to reach them. It is printed for stand-ins and on the cards for emergencies, and never put into a feed.", Example: `"on the door"`},
		{Name: "role", Kind: Word, Choices: Roles, Default: "none of these", Doc: "What they are rung for. The cards for emergencies and the sheet of a stand-in have a frame for the first two, which is empty where nobody has the role.", Example: `"vet"`},
		noteAttr,
	},
}

// Roles are what somebody is rung for.
var Roles = choices(
	RoleEmergency, "the emergency number where the animals are",
	RolePoison, "the poison centre",
	RoleVet, "a veterinarian who treats such animals",
)

// The roles.
const (
	RoleEmergency = "emergency"
	RolePoison    = "poison-centre"
	RoleVet       = "vet"
)

// Skills are what a keeper may be trained in.
var Skills = choices(
	SkillVenom, "work with species whose venom is medically significant",
	SkillHairs, "work with spiders that throw off hairs",
	SkillBreeding, "work with gravid females and broods",
	SkillFeeding, "feed live prey",
)

// The skills. Which of them work with a species or a state asks for, package roster says.
const (
	SkillVenom    = "venom"
	SkillHairs    = "hairs"
	SkillBreeding = "breeding"
	SkillFeeding  = "feeding"
)

// Round is one pass past the enclosures at a time of day.
var Round = &Block{
	Name: "round", Label: "name", Once: true,
	Doc:     "One pass past the enclosures. A calendar shows one entry a round and day.",
	Example: "round \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n  within = \"60 min\"\n}",
	Attrs: []Attr{
		titleAttr,
		{Name: "at", Kind: Clock, Required: true, Doc: "When the round begins. Not between 00:00 and 03:59: calendars disagree about hours that a clock change leaves out or repeats.", Example: `"19:30"`},
		{Name: "keeper", Kind: Ref, Ref: "keeper", Doc: "Who does it.", Example: `"lead"`},
		{Name: "rota", Kind: Ref, Ref: "rota", Doc: "The rota by which others have some of its days. All other days are those of its keeper.", Example: `"weekends"`},
		{Name: "within", Kind: Quantity, Dimension: quantity.Duration, Band: inADay, Default: "60 min", Doc: "How long it may take; the length of the calendar entry.", Example: `"60 min"`},
		{Name: "start", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Minutes}, Band: inADay, Default: "none", Doc: "What it takes before anything is done: getting things ready, washing hands. It counts once a round and day, and for each who does some of it. 10 min are common practice, no source.", Example: `"10 min"`},
		{Name: "on", Kind: On, Ref: "dates", Default: "every day", Doc: "The days on which there is a round.", Example: `["mon to fri"]`},
		{Name: "not_on", Kind: On, Ref: "dates", Doc: "Days on which there is none all the same. Care that falls on them is done in the other round that it names, or moved as far as its window allows, or not done: the proof says whether that is too long.", Example: `["school-holidays"]`},
		{Name: "also_on", Kind: On, Ref: "dates", Doc: "Days on which there is one besides, those of not_on among them.", Example: `["2027-08-04"]`},
		{Name: "people", Kind: Whole, Default: "1", Doc: "How many people it takes. For a species of dangerous venom or thrown hairs only those count who are trained for it; for others any will do.", Example: `2`},
		{Name: "list", Kind: Word, Choices: choices("calendar", "in the calendars that show it", "paper", "on paper: printed before the round", "terminal", "at the terminal"), Default: "calendar", Doc: "Where whoever does the round reads what is to be done. The proof counts only care that somebody is shown: a round that no calendar shows is worked from paper, or at the terminal, or not at all.", Example: `"paper"`},
		{Name: "ticked", Kind: Truth, Default: "false", Doc: "Whether whoever does it ticks off what was done, on a page, on a list of tasks or with `vivary note`. Where `vivary serve` runs and sends mail, somebody is told when an hour after the end of the round nothing of it was ticked.", Example: `true`},
		formerlyAttr, noteAttr,
	},
}

// Rota says which days are whose.
var Rota = &Block{
	Name: "rota", Label: "name", Once: true,
	Doc:     "Which days are whose, said once for all rounds that go by it (`rota` in a round). Days that no turn has are those of the round's own keeper, so that none is nobody's. A turn with dates goes before one with days of the week, of two with dates the one that stands last: so a swap is one line.",
	Example: "rota \"weekends\" {\n  week_a = \"2026-11-30\"\n\n  turn \"relief\" {\n    on    = [\"sat\", \"sun\"]\n    weeks = \"b\"\n  }\n\n  turn \"relief\" { on = [\"2026-12-05\"] }\n}\n\nround \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n  rota   = \"weekends\"\n}",
	Attrs: []Attr{
		titleAttr,
		{Name: "week_a", Kind: Date, Doc: "Any day of a week a, where turns have weeks: the next one is b, and so on to the last letter that a turn has, and then a again. A week begins as the collection says.", Example: `"2026-11-30"`},
		noteAttr,
	},
	Blocks: []*Block{RotaTurn},
}

// RotaTurn is whose some days of a rota are.
var RotaTurn = &Block{
	Name: "turn", Label: "keeper", Names: "keeper",
	Doc:     "Days on which a keeper does the rounds of the rota, as their own. Whoever is away then has a stand-in by their `away` block, as ever.",
	Example: "turn \"relief\" {\n  on    = [\"sat\", \"sun\"]\n  weeks = \"b\"\n}",
	Attrs: []Attr{
		{Name: "on", Kind: On, Ref: "dates", Required: true, Doc: "The days.", Example: `["sat", "sun"]`},
		{Name: "weeks", Kind: Words, Choices: RotaWeeks, Default: "every week", Doc: "In which weeks of the rota.", Example: `"b"`},
		noteAttr,
	},
}

// RotaWeeks are the weeks of a rota, in their order.
var RotaWeeks = choices("a", "the week of week_a", "b", "the one after", "c", "the third", "d", "the fourth", "e", "the fifth", "f", "the sixth")

// Dates are days that are said once and named where they are needed.
var Dates = &Block{
	Name: "dates", Label: "name", Once: true,
	Doc:     "Days that are said once, such as school holidays, and named wherever days are listed: in `on`, `not_on` and `also_on` of a round or of care, in `visits` of an absence.",
	Example: "dates \"school-holidays\" {\n  on = [\"2027-07-20 to 2027-09-01\", \"24 dec to 2 jan\"]\n}\n\nround \"term\" {\n  at     = \"08:30\"\n  on     = [\"mon to fri\"]\n  not_on = [\"school-holidays\"]\n}\n\nround \"holiday\" {\n  at = \"10:00\"\n  on = [\"sat\", \"sun\", \"school-holidays\"]\n}\n\nroom \"east\" {\n  temperature = \"18 to 22 C\"\n  round       = [\"term\", \"holiday\"]\n}",
	Attrs: []Attr{
		titleAttr,
		{Name: "on", Kind: On, Required: true, Doc: "The days. Another dates block is none of them.", Example: `["2027-07-20 to 2027-09-01"]`},
		noteAttr,
	},
}

// Away is a keeper's absence.
var Away = &Block{
	Name: "away", Label: "keeper", Names: "keeper",
	Doc:     "Days on which a keeper is not there. The proof takes these days out, unless somebody covers them.",
	Example: "away \"lead\" {\n  from   = \"2027-07-10\"\n  to     = \"2027-07-24\"\n  cover  = \"relief\"\n  visits = [\"tue\", \"sat\"]\n}",
	Attrs: []Attr{
		{Name: "from", Kind: Date, Required: true, Doc: "The first day away.", Example: `"2027-07-10"`},
		{Name: "to", Kind: Date, Required: true, Doc: "The day of return, on which this keeper does the rounds again.", Example: `"2027-07-24"`},
		{Name: "cover", Kind: Ref, Ref: "keeper", Default: "nobody", Doc: "Who stands in.", Example: `"relief"`},
		{Name: "visits", Kind: On, Ref: "dates", Default: "every day", Doc: "The days on which the stand-in comes.", Example: `["tue", "sat"]`},
		noteAttr,
	},
}

// Calendar is a feed that a calendar app subscribes to.
var Calendar = &Block{
	Name: "calendar", Label: "name", Once: true,
	Doc:     "One feed. Without any selection it holds every round. Where a plan has no calendar at all, one is made that holds everything.",
	Example: "calendar \"evening\" {\n  rounds = [\"evening\"]\n  remind = \"10 min\"\n}",
	Attrs: []Attr{
		titleAttr,
		{Name: "rounds", Kind: Refs, Ref: "round", Default: "all", Doc: "Only these rounds.", Example: `["evening"]`},
		{Name: "keepers", Kind: Refs, Ref: "keeper", Default: "all", Doc: "Only what these people do.", Example: `["lead"]`},
		{Name: "rooms", Kind: Refs, Ref: "room", Default: "all", Doc: "Only enclosures in these rooms.", Example: `["east"]`},
		{Name: "enclosures", Kind: Refs, Ref: "enclosure", Default: "all", Doc: "Only these enclosures.", Example: `["burrow-a"]`},
		{Name: "kinds", Kind: Texts, Ref: NamesKind, Default: "all", Doc: "Only these kinds of care.", Example: `["feed", "leftovers"]`},
		{Name: "entry", Kind: Word, Choices: choices("per round", "one entry a round and day, with its list inside, for the coming year; for less where that is more than apps read well, half a year at the least", "per care", "a repeating entry for each care, with its own time; the calendar says what may be done in which state on each of its days, and where it ends, some thirteen months ahead", "per date", "the dates of the house (`deadline`) and what is to be looked at again, and no round: whole days, from the lead of each on"), Default: "per round", Doc: "What one entry of the calendar is.", Example: `"per care"`},
		{Name: "remind", Kind: Quantity, Dimension: quantity.Duration, Default: "no reminder", Doc: "How long before the start to remind. Many apps ignore reminders of a subscribed calendar: set the app's own alert as well.", Example: `"10 min"`},
		{Name: "color", Kind: Word, Choices: Colors, Default: "the app's choice", Doc: "The colour at first subscription, by its CSS name.", Example: `"olive"`},
		formerlyAttr, noteAttr,
	},
}

// Colors are the CSS colour names that a calendar may have, with their values.
var Colors = choices("olive", "#808000", "teal", "#008080", "navy", "#000080", "maroon", "#800000",
	"purple", "#800080", "green", "#008000", "sienna", "#a0522d", "slategray", "#708090", "indigo", "#4b0082", "darkorange", "#ff8c00")
