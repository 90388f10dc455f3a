package schema

import "strings"

// LogWord is one word of the log: something that was seen or done on a day. How else
// keepers write it stands in Spellings.
type LogWord struct {
	Name    string
	After   After
	Subject Subject
	// Does are the kinds of care that such a line shows to have been done; Feeds says that it
	// shows a meal to have been offered.
	Does  []*CareKind
	Feeds bool
	Doc   string
}

// Subject says of what a log line speaks.
type Subject uint8

const (
	// OfAnimals is a line about the animals of one block; its name may be left out
	// where the enclosure has only one.
	OfAnimals Subject = iota
	// OfEnclosure is a line about the whole enclosure.
	OfEnclosure
	// OfCare is a line about one care, named after the word.
	OfCare
	// OfKeeper is a line about one of the people, named before the word.
	OfKeeper
	// OfDeadline is a line about a date of the house, named before the word.
	OfDeadline
	// OfStock is a line about feeder animals: a culture, a tub or a supply, by its name.
	OfStock
)

// After says what may stand after a word of the log, before the note.
type After uint8

// What may stand after a word.
const (
	AfterNothing After = iota
	AfterNumber
	AfterPrey
	AfterEnclosure
	AfterWeight
	AfterCare
	AfterDays
	AfterMeasure
	AfterWord
	AfterText
	AfterTest
)

var afterWords = [...]string{
	AfterNumber:    "how many",
	AfterPrey:      "how many of what",
	AfterEnclosure: "how many, the enclosure they went to, the animals they joined there",
	AfterWeight:    "the weight",
	AfterCare:      "the care",
	AfterDays:      "how long, such as 10 days",
	AfterMeasure:   "a temperature, a humidity or both, such as 29 C 70 %, or spot 31 C air 23 C room 20 C",
	AfterText:      "what was observed, here or in the note",
	AfterTest:      "the gauge, where there are several, the salt, the temperature there and what it showed, such as logger-3 NaCl 22 C 71 %, or logger-3 22 C shows 22.4 C",
	AfterWord:      "the word that is taken back, what stood after it, and its day",
}

// String says it for a keeper; it is empty for AfterNothing.
func (a After) String() string { return afterWords[a] }

// LogWords are the words of the log.
var LogWords []*LogWord

// The words of the log, in the order in which they are listed.
var (
	WordArrived     = listed(&LogWords, LogWord{Name: "arrived", After: AfterNumber, Subject: OfAnimals, Doc: "It came into the collection. Quarantine runs from here."})
	WordQuarantined = listed(&LogWords, LogWord{Name: "quarantined", Subject: OfAnimals, Doc: "It is kept apart from this day on: last in the round, tools of its own."})
	WordMoult       = listed(&LogWords, LogWord{Name: "moult", After: AfterNumber, Subject: OfAnimals, Doc: "A moult was found. Meals wait; stage and instar move on."})
	WordMatured     = listed(&LogWords, LogWord{Name: "matured", After: AfterNumber, Subject: OfAnimals, Doc: "Its last moult was found: it is adult from here. Meals wait."})
	WordPremoult    = listed(&LogWords, LogWord{Name: "premoult", After: AfterNumber, Subject: OfAnimals, Doc: "It is about to moult: dull, fat, hiding. Meals stop."})
	WordSealed      = listed(&LogWords, LogWord{Name: "sealed", After: AfterNumber, Subject: OfAnimals, Doc: "It has shut itself in: before a moult, before a birth, with a sac, or for a rest. Nothing is opened."})
	WordHanging     = listed(&LogWords, LogWord{Name: "hanging", After: AfterNumber, Subject: OfAnimals, Doc: "It moults now: it hangs, or lies on its back. Nothing is opened."})
	WordPaired      = listed(&LogWords, LogWord{Name: "paired", Subject: OfAnimals, Does: []*CareKind{KindPair}, Doc: "A pair was brought together. Whether they mated was not seen: from this day it is possible."})
	WordMated       = listed(&LogWords, LogWord{Name: "mated", Subject: OfAnimals, Doc: "A mating was seen. The window for a birth is counted from here."})
	WordGravid      = listed(&LogWords, LogWord{Name: "gravid", Subject: OfAnimals, Doc: "It carries young, or seems to. Without a mating in the log no window is made up."})
	WordNotGravid   = listed(&LogWords, LogWord{Name: "not-gravid", Subject: OfAnimals, Doc: "It carries no young after all. What was held for a birth ends."})
	WordLate        = listed(&LogWords, LogWord{Name: "late", Subject: OfAnimals, Doc: "A birth seems near: she refuses and is fat, digs in, shows white at the sides. Nothing is lifted."})
	WordLaid        = listed(&LogWords, LogWord{Name: "laid", After: AfterNumber, Subject: OfAnimals, Doc: "An egg sac, an ootheca or a clutch was made. Nothing is disturbed; young are not there yet."})
	WordSacTaken    = listed(&LogWords, LogWord{Name: "sac-taken", Subject: OfAnimals, Doc: "The egg sac or clutch was taken from her."})
	WordHatched     = listed(&LogWords, LogWord{Name: "hatched", After: AfterNumber, Subject: OfAnimals, Doc: "Young came out of what was laid."})
	WordBorn        = listed(&LogWords, LogWord{Name: "born", After: AfterNumber, Subject: OfAnimals, Doc: "Living young were born. Nothing is disturbed."})
	WordFirstMoult  = listed(&LogWords, LogWord{Name: "first_moult", Subject: OfAnimals, Doc: "The brood moulted for the first time. Only now does a separation exist."})
	WordDispersed   = listed(&LogWords, LogWord{Name: "dispersed", Subject: OfAnimals, Doc: "The young have left their mother's back and live round her."})
	WordSeparated   = listed(&LogWords, LogWord{Name: "separated", After: AfterEnclosure, Subject: OfAnimals, Does: []*CareKind{KindSeparate}, Doc: "The young were taken out."})
	WordFed         = listed(&LogWords, LogWord{Name: "fed", After: AfterPrey, Subject: OfAnimals, Feeds: true, Doc: "A meal was taken on a day of its own. Meals that run from the last one count from here."})
	WordRefused     = listed(&LogWords, LogWord{Name: "refused", Subject: OfAnimals, Feeds: true, Doc: "A meal was refused."})
	WordSeen        = listed(&LogWords, LogWord{Name: "seen", After: AfterNumber, Subject: OfAnimals, Does: []*CareKind{KindLook, KindWatch}, Doc: "It was seen. That is a look, and no head count; with a number it is `counted`."})
	WordCounted     = listed(&LogWords, LogWord{Name: "counted", After: AfterNumber, Subject: OfAnimals, Does: []*CareKind{KindLook, KindCount}, Doc: "A head count. Some may be hidden."})
	WordMoved       = listed(&LogWords, LogWord{Name: "moved", After: AfterEnclosure, Subject: OfAnimals, Doc: "It went to another enclosure, or out of the collection where none is named."})
	WordEscaped     = listed(&LogWords, LogWord{Name: "escaped", After: AfterNumber, Subject: OfAnimals, Doc: "It is not in its enclosure, and alive as far as is known."})
	WordFound       = listed(&LogWords, LogWord{Name: "found", After: AfterNumber, Subject: OfAnimals, Doc: "What had escaped is back in its enclosure."})
	WordWeighed     = listed(&LogWords, LogWord{Name: "weighed", After: AfterWeight, Subject: OfAnimals, Does: []*CareKind{KindLook, KindWeigh}, Doc: "Its weight."})
	WordIll         = listed(&LogWords, LogWord{Name: "ill", After: AfterNumber, Subject: OfAnimals, Doc: "It is ill."})
	WordInjured     = listed(&LogWords, LogWord{Name: "injured", After: AfterNumber, Subject: OfAnimals, Doc: "It has lost a limb, bleeds or has fallen. It is given killed prey."})
	WordRecovered   = listed(&LogWords, LogWord{Name: "recovered", After: AfterNumber, Subject: OfAnimals, Doc: "It is well again: not ill, not injured, no treatment."})
	WordTreated     = listed(&LogWords, LogWord{Name: "treated", After: AfterDays, Subject: OfAnimals, Does: []*CareKind{KindTreat}, Doc: "A treatment, described in the note; with a number of days the course that begins on this day."})
	WordMites       = listed(&LogWords, LogWord{Name: "mites", Subject: OfEnclosure, Doc: "Mites were found. Tools are kept apart and the enclosure is visited last."})
	WordDied        = listed(&LogWords, LogWord{Name: "died", After: AfterNumber, Subject: OfAnimals, Doc: "It died. Its tasks end, and shared causes are looked for."})
	WordMeasured    = listed(&LogWords, LogWord{Name: "measured", After: AfterMeasure, Subject: OfEnclosure, Doc: "What a thermometer or a hygrometer in the enclosure showed, each value after the word for where: spot, air, night, room."})
	WordTested      = listed(&LogWords, LogWord{Name: "tested", After: AfterTest, Subject: OfEnclosure, Does: []*CareKind{KindCalibrate}, Doc: "A gauge of the enclosure, the rack or the room was tested: sealed in over a slurry of salt for half a day to a day, or beside a thermometer that can be trusted. What it shows is corrected by its newest tests, of the log and of the plan."})
	WordStarted     = listed(&LogWords, LogWord{Name: "started", After: AfterNumber, Subject: OfStock, Does: []*CareKind{KindStart}, Doc: "A new culture of feeder animals was set up, or so many."})
	WordHarvested   = listed(&LogWords, LogWord{Name: "harvested", After: AfterNumber, Subject: OfStock, Doc: "Feeder animals were taken from a culture, so many."})
	WordCrashed     = listed(&LogWords, LogWord{Name: "crashed", Subject: OfStock, Doc: "A culture or a tub of feeder animals has died, or has to go: mites, mould, a virus. Nothing of it is fed out from here."})
	WordDelivered   = listed(&LogWords, LogWord{Name: "delivered", After: AfterNumber, Subject: OfStock, Does: []*CareKind{KindDelivery}, Doc: "Feeder animals came in, so many that live."})
	WordDone        = listed(&LogWords, LogWord{Name: "done", After: AfterCare, Subject: OfCare, Doc: "A care was done on a day of its own. What runs from the last time counts from here. How long it took may stand behind it, as in `done deep-clean 35 min`: from three such lines of an enclosure on, or five of all, their median is how long it takes where the plan does not say."})
	WordSkipped     = listed(&LogWords, LogWord{Name: "skipped", After: AfterCare, Subject: OfCare, Doc: "A care was not done."})
	WordRemark      = listed(&LogWords, LogWord{Name: "remark", After: AfterText, Subject: OfEnclosure, Doc: "What was observed and has no consequence. It is about the animals where they are named."})
	WordWithdrawn   = listed(&LogWords, LogWord{Name: "withdrawn", After: AfterWord, Subject: OfEnclosure, Doc: "An earlier line is taken back: the last one of that word, on that day where one is written. Neither line counts."})
)

// MeasuredAt are the words for where something was measured.
var MeasuredAt = choices(
	"spot", "the warmest surface that the animals can reach, at the heater",
	"air", "the air away from the heater",
	"night", "the air by night",
	"room", "the room at the same time: with it spot and air narrow what is reckoned",
	"power", "what the heaters drew on average, by a power meter",
)

// LogKeeper is what stands in a line of the log in place of an enclosure where it is about
// one of the people: "keeper lead away".
const LogKeeper = "keeper"

// KeeperWords are the words of lines about people.
var KeeperWords []*LogWord

// The words of lines about people, in the order in which they are listed.
var (
	WordAway = listed(&KeeperWords, LogWord{Name: "away", Subject: OfKeeper, Doc: "They cannot come from this day on, and nobody knew before: ill, or called away. Whoever else is there does their rounds."})
	WordBack = listed(&KeeperWords, LogWord{Name: "back", Subject: OfKeeper, Doc: "They are back. What was left out is caught up."})
)

// FindKeeperWord returns the word of that name, or nil.
func FindKeeperWord(name string) *LogWord {
	for _, w := range KeeperWords {
		if strings.EqualFold(w.Name, name) {
			return w
		}
	}
	return nil
}
