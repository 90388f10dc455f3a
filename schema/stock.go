package schema

import "vivary/schema/quantity"

// storeAttrs are what cultures, tubs and supplies have in common.
var storeAttrs = []Attr{
	titleAttr,
	{Name: "prey", Kind: Prey, Required: true, Doc: "The feeder and its size, as meals name it.", Example: `"cricket small"`},
	{Name: "gut_load", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Hours}, Default: "not, but where a meal says so itself", Doc: "How long before a meal they are fed well. No more is gained after 48 hours, and the gain is gone a day after the food is.", Example: `"48 h"`},
	{Name: "loss", Kind: Quantity, Dimension: quantity.Ratio, Default: "the greatest of the feeder's sheet; with a margin none, since that is for it too", Doc: "How many die in a week.", Example: `"15 %"`},
	{Name: "allowed_here", Kind: Truth, Default: "not said", Doc: "Whether you have looked up that it may be kept where you are. No conclusion is drawn from it.", Example: `true`},
	{Name: "room", Kind: Ref, Ref: "room", Default: "none, or the only one", Doc: "Where it stands.", Example: `"east"`},
	{Name: "round", Kind: Refs, Ref: "round", Default: "that of its room; else the collection's first round", Doc: "The round in which it is looked after, and by whose keeper orders are made.", Example: `"evening"`},
}

// tendAttrs are what tubs and cultures have in common beside that.
var tendAttrs = []Attr{
	{Name: "tend", Kind: Every, Default: "as the feeder's sheet says, else 2 days", Doc: "How often they get food and water.", Example: `"2 days"`},
	{Name: "wet_food", Kind: Truth, Default: "as the feeder's sheet says, else true", Doc: "Whether they get wet food, which is taken out after a day.", Example: `false`},
}

// Seller is somebody who sells feeder animals.
var Seller = &Block{
	Name: "seller", Label: "name", Once: true,
	Doc:     "Somebody who sells feeder animals: when they deliver, and when the weather holds a delivery back.",
	Example: "seller \"fen\" {\n  title    = \"Fen Feeders\"\n  delivers = [\"tue to fri\"]\n  lead     = 2\n}",
	Attrs: []Attr{
		titleAttr,
		{Name: "delivers", Kind: On, Required: true, Doc: "The days on which a delivery arrives. What waits in a depot over a weekend dies.", Example: `["tue to fri"]`},
		{Name: "fetched", Kind: Truth, Default: "false", Doc: "Whether you fetch them there yourself, on the days of delivers: then no parcel travels, and no weather holds it back. What you collect outdoors is fetched too.", Example: `true`},
		{Name: "lead", Kind: Whole, Default: "2; where you fetch them 0", Doc: "How many working days, from Monday to Friday, lie between an order and its delivery.", Example: `2`},
		{Name: "closed", Kind: On, Doc: "Days on which nothing is sent, taken or delivered.", Example: `["24 dec to 2 jan"]`},
		{Name: "frost", Kind: On, Default: "the three coldest months", Doc: "The part of the year in which the night's forecast is looked at before an order.", Example: `["1 dec to 28 feb"]`},
		{Name: "heat", Kind: On, Default: "the three hottest months", Doc: "The part of the year in which the day's forecast is looked at before an order.", Example: `["1 jun to 31 aug"]`},
		{Name: "held_below", Kind: Quantity, Dimension: quantity.Temperature, Default: "-4 C", Doc: "The forecast for the night below which nothing is sent. Sellers differ.", Example: `"-4 C"`},
		{Name: "held_above", Kind: Quantity, Dimension: quantity.Temperature, Default: "30 C", Doc: "The forecast for the day above which nothing is sent.", Example: `"30 C"`},
		{Name: "depot", Kind: Truth, Default: "true", Doc: "Whether a parcel can be held at a depot and fetched there, in frost and in heat.", Example: `false`},
		formerlyAttr, noteAttr,
	},
}

// Supply is feeder animals that are bought again and again.
var Supply = &Block{
	Name: "supply", Label: "name", Once: true,
	Doc:     "Feeder animals that are bought again and again. How many are ordered follows from the meals of the plan, day by day; orders and deliveries stand in the rounds. The log tells of it by its name: `delivered 500`, `counted 340`, `done order`.",
	Example: "supply \"small-crickets\" {\n  prey   = \"cricket small\"\n  seller = \"fen\"\n  packs  = [50, 250]\n  margin = \"15 %\"\n}",
	Attrs: join(storeAttrs, []Attr{
		{Name: "seller", Kind: Ref, Ref: "seller", Required: true, Doc: "Where they are bought.", Example: `"fen"`},
		{Name: "packs", Kind: Wholes, Default: "any number", Doc: "How many are in a pack, of each size of pack that there is.", Example: `[50, 250, 1000]`},
		{Name: "every", Kind: Every, Default: "week", Doc: "For how many weeks an order is.", Example: `"2 weeks"`},
		{Name: "weekly", Kind: Whole, Default: "as many as are asked for", Doc: "How many the seller gives in a week at the most.", Example: `300`},
		{Name: "margin", Kind: Quantity, Dimension: quantity.Ratio, Default: "none", Doc: "How many more than the meals take are ordered. Where no loss is written it is for that too.", Example: `"15 %"`},
		{Name: "besides", Kind: Numbers, Default: "none", Doc: "How many a week are used besides the meals of the plan, from few to many. So many are ordered that it is enough in 19 of 20 orders.", Example: `"20 to 40"`},
		formerlyAttr, noteAttr,
	}),
}

// Tub is a box of feeder animals.
var Tub = &Block{
	Name: "tub", Label: "name", Once: true,
	Doc:     "A box in which feeder animals are kept until they are fed out, or grow. Its own care stands in the rounds, as the feeder's sheet has it: food and water, wet food out the next day, the dead out once a week. The log tells of it by its name: `counted 340`, `delivered 500`, `harvested 60`, `crashed`.",
	Example: "tub \"cricket-tub\" {\n  prey        = \"cricket small\"\n  count       = 300\n  counted     = \"2026-11-28\"\n  temperature = \"26 to 30 C\"\n}",
	Attrs: join(storeAttrs, []Attr{
		{Name: "count", Kind: Whole, Default: "not known until the log says", Doc: "How many there were on the day of `counted`.", Example: `300`},
		{Name: "counted", Kind: Date, Doc: "When that was.", Example: `"2026-11-28"`},
		{Name: "temperature", Kind: Range, Dimension: quantity.Temperature, Band: keptAt, Doc: "How warm it stands.", Example: `"26 to 30 C"`},
		{Name: "frozen", Kind: Truth, Default: "false", Doc: "Whether they are dead and frozen: then none die, nothing is done for them, and once a month the freezer and the dates of the packs are looked at.", Example: `true`},
	}, tendAttrs, []Attr{formerlyAttr, noteAttr}),
}

// Culture is feeder animals that breed.
var Culture = &Block{
	Name: "culture", Label: "name", Once: true,
	Doc:     "Feeder animals that breed here, in jars or boxes of which a new one is set up again and again, so that some always yield. When that is follows from how long one takes until it yields, as it is written or as the sheet of the feeder has it for that warmth, and from how long it yields. Its own care stands in the rounds too: food and moisture as the feeder's sheet has them, the look for mites, mould and dead, and the day on which one is too old and is thrown out. The log tells of it by its name: `started 2`, `harvested 60`, `crashed`.",
	Example: "culture \"flies\" {\n  prey        = \"fruit-fly melanogaster\"\n  temperature = \"25 C\"\n  lasts       = \"14 days\"\n  at_once     = 2\n}",
	Attrs: join(storeAttrs, []Attr{
		{Name: "temperature", Kind: Range, Dimension: quantity.Temperature, Band: keptAt, Default: "how warm the feeder's sheet has it kept", Doc: "How warm it stands, from the coolest to the warmest it may be on a day.", Example: `"25 C"`},
		{Name: "night", Kind: Quantity, Dimension: quantity.Temperature, Band: keptAt, Default: "as by day", Doc: "How warm it is by night, for half of the day.", Example: `"20 C"`},
		{Name: "lead", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Days}, Positive: true, Default: "reckoned by the warmth, where the feeder's sheet knows how", Doc: "How long it takes from setting one up until it yields. What you saw yourself goes before what is reckoned.", Example: `"19 days"`},
		{Name: "lasts", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Days}, Positive: true, Default: "as the feeder's sheet says, else 14 days", Doc: "For how long one yields. From a year on it is a colony that goes on by itself: no other is set up in turn.", Example: `"14 days"`},
		{Name: "at_once", Kind: Whole, Default: "2; of a colony that goes on by itself 1", Doc: "How many yield at once.", Example: `2`},
		{Name: "yields", Kind: Numbers, Default: "that of the feeder's sheet", Doc: "How many one yields in a week.", Example: `"150 to 300"`},
		{Name: "from", Kind: Date, Default: "a day by its name; a colony that goes on by itself is there", Doc: "When the first of the row is set up, where the log does not say when one was.", Example: `"2026-12-01"`},
	}, tendAttrs, []Attr{formerlyAttr, noteAttr}),
}
