package schema

import "vivary/schema/quantity"

// This is the table of the dates of a house: papers that end, devices that are tested, stock
// that goes off. The program knows when, and nothing of what the law asks: that is for whoever
// answers for the house to look up. Tests and service of electrical and fire-fighting devices
// defer to local codes, to the maker's instructions and to licensed practice.

// DeadlineKind is a sort of date of a house, with what is usual for it.
type DeadlineKind struct {
	Name string
	Also string // what it is called otherwise, each after " | "
	Doc  string
	// Does is what is done, one thing after another. It begins without a capital.
	Does string
	Lead int // how many days before it is told first
	// Every is after how long it comes again where the plan does not say; none for once.
	Every quantity.Interval
	// Counted says that it comes again so long after it was last done, and not on a fixed day.
	Counted bool
	Source  string // on whose word lead and interval are
}

func (k *DeadlineKind) name() string { return k.Name }

// DeadlineKinds are the kinds of dates of a house.
var DeadlineKinds []*DeadlineKind

func months(n int) quantity.Interval { return quantity.Interval{N: n, Unit: quantity.Month} }
func years(n int) quantity.Interval  { return quantity.Interval{N: n, Unit: quantity.Year} }

// Sources of the table.
const (
	practice      = "common practice, no source"
	councils      = "a council's booklet on licences for dangerous animals of 2014 (docslib.org/doc/1674651) asks for a vet's inspection and insurance with the application; how many days before is common practice, no source"
	rcds          = "notices at consumer units: the button every six months, older ones every three (sadlerelectrical, ivanfairless and andrewbooth, pages of electricians)"
	extinguishers = "iosh.com 93698, on extinguishers: a look each month, service each year, an extended service after 5 years and of carbon dioxide after 10, out of use at 20"
)

// The kinds of dates of a house, in the order in which they are listed.
var (
	DeadlineLicence     = listed(&DeadlineKinds, DeadlineKind{Name: "licence", Also: "license", Doc: "a licence that ends", Does: "apply, book vet, check insurance", Lead: 90, Source: councils})
	DeadlinePermit      = listed(&DeadlineKinds, DeadlineKind{Name: "permit", Also: "certificate", Doc: "a permit or a certificate that ends, such as one for animals that cross a border", Does: "apply for a new one, or send back the old one", Lead: 30, Source: "865/2006, annex I: an export permit lives six months, one for import twelve; how many days before is common practice, no source"})
	DeadlineInsurance   = listed(&DeadlineKinds, DeadlineKind{Name: "insurance", Doc: "an insurance that ends", Does: "renew it, tell what has changed, file the new policy", Lead: 30, Every: years(1), Source: practice})
	DeadlineVet         = listed(&DeadlineKinds, DeadlineKind{Name: "vet-contract", Also: "veterinary contract", Doc: "a contract with a veterinarian that ends", Does: "renew it, check the number on the cards", Lead: 30, Every: years(1), Source: practice})
	DeadlineVisit       = listed(&DeadlineKinds, DeadlineKind{Name: "vet-visit", Also: "inspection", Doc: "a visit of a veterinarian or an inspector", Does: "lay out register, log and papers; keys and a second person for locked boxes", Lead: 14, Source: practice})
	DeadlineTraining    = listed(&DeadlineKinds, DeadlineKind{Name: "training", Doc: "what somebody was trained in is to be trained again", Does: "book the training, write down who was trained by whom", Lead: 30, Every: years(1), Source: practice})
	DeadlineInventory   = listed(&DeadlineKinds, DeadlineKind{Name: "inventory", Also: "stocktake | stock-take | census", Doc: "all animals are counted through, in British zoos by 1 April", Does: "count every box, print vivary register, sign it", Lead: 30, Every: years(1), Source: "a zoo's answer about its stocklist by 1 April (rbwm FOI 196501); how many days before is common practice, no source"})
	DeadlineDrill       = listed(&DeadlineKinds, DeadlineKind{Name: "drill", Also: "exercise", Doc: "what the cards for emergencies say is tried: power cut, escape, fire", Does: "take the cards off the wall, do what they say, write down what was lacking, print them anew", Lead: 7, Every: months(6), Source: practice})
	DeadlineRCD         = listed(&DeadlineKinds, DeadlineKind{Name: "rcd-test", Also: "gfci-test | rcd | gfci", Doc: "the test button of a residual current device", Does: "animals seen to first, then press the button: it has to go off; switch it on again, look that every heater is warm. One that does not go off: an electrician, at once", Lead: 7, Every: months(6), Counted: true, Source: rcds})
	DeadlineThermostat  = listed(&DeadlineKinds, DeadlineKind{Name: "thermostat-test", Also: "thermostat", Doc: "whether a thermostat switches off", Does: "warm the probe in a hand: the heater has to go off; probe back in its place, and fast", Every: months(1), Counted: true, Source: practice})
	DeadlineThermostats = listed(&DeadlineKinds, DeadlineKind{Name: "thermostat-replaced", Also: "thermostat-age", Doc: "a thermostat is old", Does: "put in a new one, test it, write its setting into the plan", Lead: 30, Every: years(5), Counted: true, Source: practice})
	DeadlineSmoke       = listed(&DeadlineKinds, DeadlineKind{Name: "smoke-alarm-test", Also: "smoke-alarm | smoke-detector | smoke-detector-test", Doc: "the button of a smoke alarm", Does: "press the button: everybody has to hear it; a new battery where it is weak", Every: months(1), Counted: true, Source: "from memory"})
	DeadlineSmokes      = listed(&DeadlineKinds, DeadlineKind{Name: "smoke-alarm-replaced", Also: "smoke-alarm-age", Doc: "a smoke alarm is old", Does: "put up a new one, and test it", Lead: 30, Every: years(10), Counted: true, Source: "from memory"})
	DeadlineExtLook     = listed(&DeadlineKinds, DeadlineKind{Name: "extinguisher-look", Also: "extinguisher", Doc: "a look at a fire extinguisher", Does: "in its place, free to reach, needle in the green, seal whole", Every: months(1), Counted: true, Source: extinguishers})
	DeadlineExtService  = listed(&DeadlineKinds, DeadlineKind{Name: "extinguisher-service", Doc: "the service of a fire extinguisher", Does: "have it serviced by whoever is licensed for it", Lead: 30, Every: years(1), Counted: true, Source: extinguishers})
	DeadlineExtExtended = listed(&DeadlineKinds, DeadlineKind{Name: "extinguisher-extended", Doc: "the extended service of a fire extinguisher", Does: "have its extended service done by whoever is licensed for it", Lead: 60, Every: years(5), Counted: true, Source: extinguishers})
	DeadlineExtCO2      = listed(&DeadlineKinds, DeadlineKind{Name: "extinguisher-extended-co2", Doc: "the extended service of one with carbon dioxide", Does: "have its extended service done by whoever is licensed for it", Lead: 60, Every: years(10), Counted: true, Source: extinguishers})
	DeadlineExtOut      = listed(&DeadlineKinds, DeadlineKind{Name: "extinguisher-out", Also: "extinguisher-replaced", Doc: "a fire extinguisher is too old to be used", Does: "put up a new one, hand in the old one", Lead: 60, Every: years(20), Counted: true, Source: extinguishers})
	DeadlineSalt        = listed(&DeadlineKinds, DeadlineKind{Name: "salt-test", Also: "hygrometer-test | calibration", Doc: "a hygrometer is tested with salt", Does: "damp salt, a sealed box, 12 to 24 hours at one warmth: it has to show 75 %; write down by how much it is off", Lead: 7, Every: quantity.Interval{N: 90, Unit: quantity.Day}, Counted: true, Source: "Greenspan 1977, J. Res. NBS 81A:89-96, for the 75 %; how often is common practice, no source"})
	DeadlineHeatPacks   = listed(&DeadlineKinds, DeadlineKind{Name: "heat-packs", Also: "heat-pack", Doc: "heat packs go off", Does: "buy new ones, throw away the old ones, write the new day into the plan", Lead: 30, Source: practice})
	DeadlineAntivenom   = listed(&DeadlineKinds, DeadlineKind{Name: "antivenom", Also: "antivenin", Doc: "antivenom that is kept goes off", Does: "ask who holds it for a new batch, tell the hospital", Lead: 90, Source: practice})
	DeadlineReview      = listed(&DeadlineKinds, DeadlineKind{Name: "review", Also: "sheet", Doc: "something is to be looked at again: a sheet, a plan, a figure", Does: "look at it again, and write a new day", Lead: 14, Source: practice})
	DeadlineRecords     = listed(&DeadlineKinds, DeadlineKind{Name: "records", Also: "record", Doc: "records need not be kept any longer, by what the keeper has looked up", Does: "look up whether they may go", Source: practice})
)

// DeadlineLead is how many days before a date of no kind is told first.
const DeadlineLead = 14

// FindDeadlineKind returns the kind of that name, or nil.
func FindDeadlineKind(name string) *DeadlineKind {
	for _, k := range DeadlineKinds {
		if k.Name == name {
			return k
		}
	}
	return nil
}

func deadlineKinds() (out []Choice) {
	for _, k := range DeadlineKinds {
		name := k.Name
		if k.Also != "" {
			name += " | " + k.Also
		}
		out = append(out, choices(name, k.Doc)...)
	}
	return out
}

// Deadline is a date of the house: by when something that is not done at a box has to be done.
var Deadline = &Block{
	Name: "deadline", Label: "name", Once: true,
	Doc:     "A date of the house: by when a licence is renewed, an insurance, a device tested. It is told from its lead on, then each week until the log says that it was done (`deadline NAME done`), by `vivary due` and in a calendar of its own, which no round shows: that of `entry = \"per date\"`, or one called dates where the plan has none such. Whoever stands in does not get it. What is overdue is urgent, and refuses nothing. These are dates and fields: what the law, a licence or a code asks for where you live is for you to look up, and what is electrical or puts out fires is for those who are licensed for it.",
	Example: "deadline \"dwa-licence\" {\n  kind = \"licence\"\n  by   = \"2028-02-28\"\n}\n\ndeadline \"rcd-animal-room\" {\n  kind   = \"rcd-test\"\n  last   = \"2026-09-01\"\n  keeper = \"lead\"\n}",
	Attrs: []Attr{
		titleAttr,
		{Name: "kind", Kind: Word, Choices: deadlineKinds(), Default: "none: what to do, and when again, is what the block says", Doc: "What it is. The kind has a lead, what to do, and after how long it comes again, each of which may be said otherwise.", Example: `"licence"`},
		{Name: "by", Kind: Date, Doc: "By when it has to be done for the first time, or once: the last day of the licence.", Example: `"2028-02-28"`},
		{Name: "last", Kind: Date, Doc: "When it was done last, where no line of the log says so: it comes again so long after that.", Example: `"2026-09-01"`},
		{Name: "every", Kind: Every, Default: "that of the kind; else once", Doc: "After how long it comes again: from `by` on, whenever it was done; where `last` is written, and for tests and service of devices, so long after it was done. The 29th of February is the 28th in other years, so that it is never late.", Example: `"6 months"`},
		{Name: "lead", Kind: Quantity, Dimension: quantity.Duration, In: []quantity.Unit{quantity.Days, quantity.Weeks}, Default: "that of the kind; else 14 days", Doc: "How long before it is told first.", Example: `"90 days"`},
		{Name: "does", Kind: Text, Default: "that of the kind", Doc: "What is done.", Example: `"apply, book vet, check insurance"`},
		{Name: "keeper", Kind: Ref, Ref: "keeper", Default: "whoever looks after the house", Doc: "Who does it.", Example: `"lead"`},
		formerlyAttr, noteAttr,
	},
}

// LogDeadline is what stands in a line of the log in place of an enclosure where it is about a
// date of the house: "deadline dwa-licence done".
const LogDeadline = "deadline"

// DeadlineWords are the words of lines about dates of the house.
var DeadlineWords []*LogWord

// WordSeenTo says that what a date of the house asks for was done.
var WordSeenTo = listed(&DeadlineWords, LogWord{Name: "done", Subject: OfDeadline, Doc: "It was done: applied for, renewed, tested, counted. It is told no more, until it comes again."})

// FindDeadlineWord returns the word of that name, or nil.
func FindDeadlineWord(name string) *LogWord {
	for _, w := range DeadlineWords {
		if w.Name == name {
			return w
		}
	}
	return nil
}
