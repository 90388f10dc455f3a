package schema

import "slices"

// LogWord is one word of the log: something that was seen or done on a day.
type LogWord struct {
	Name    string
	Also    []string // other spellings that mean the same
	After   After
	Subject Subject
	Doc     string
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
)

var afterWords = [...]string{
	AfterNumber:    "how many",
	AfterPrey:      "how many of what",
	AfterEnclosure: "the enclosure it went to",
	AfterWeight:    "the weight",
	AfterCare:      "the care",
}

// String says it for a keeper; it is empty for AfterNothing.
func (a After) String() string { return afterWords[a] }

// LogWords are the words of the log.
var LogWords []*LogWord

// The words of the log, in the order in which they are listed.
var (
	WordArrived    = listed(&LogWords, LogWord{Name: "arrived", After: AfterNumber, Subject: OfAnimals, Doc: "It came into the collection. Quarantine runs from here."})
	WordMoult      = listed(&LogWords, LogWord{Name: "moult", Also: []string{"moulted", "molt", "molted"}, After: AfterNumber, Subject: OfAnimals, Doc: "A moult was found. Meals wait; stage and instar move on."})
	WordPremoult   = listed(&LogWords, LogWord{Name: "premoult", Also: []string{"premolt", "pre-moult"}, Subject: OfAnimals, Doc: "It is about to moult: dull, fat, hiding. Meals stop."})
	WordHanging    = listed(&LogWords, LogWord{Name: "hanging", Subject: OfAnimals, Doc: "It hangs to moult. Nothing is opened."})
	WordMated      = listed(&LogWords, LogWord{Name: "mated", Also: []string{"paired"}, Subject: OfAnimals, Doc: "A mating was seen. The window for a birth is counted from here."})
	WordGravid     = listed(&LogWords, LogWord{Name: "gravid", Also: []string{"gravid?"}, Subject: OfAnimals, Doc: "It carries young, or seems to. Without a mating in the log no window is made up."})
	WordBorn       = listed(&LogWords, LogWord{Name: "born", After: AfterNumber, Subject: OfAnimals, Doc: "Young were born, or an egg sac was made. Nothing is disturbed."})
	WordFirstMoult = listed(&LogWords, LogWord{Name: "first_moult", Also: []string{"first-moult", "first_molt"}, Subject: OfAnimals, Doc: "The brood moulted for the first time. Only now does a separation exist."})
	WordSeparated  = listed(&LogWords, LogWord{Name: "separated", After: AfterNumber, Subject: OfAnimals, Doc: "The young were taken out."})
	WordFed        = listed(&LogWords, LogWord{Name: "fed", After: AfterPrey, Subject: OfAnimals, Doc: "A meal was taken on a day of its own. Meals that run from the last one count from here."})
	WordRefused    = listed(&LogWords, LogWord{Name: "refused", Subject: OfAnimals, Doc: "A meal was refused."})
	WordCounted    = listed(&LogWords, LogWord{Name: "counted", Also: []string{"seen"}, After: AfterNumber, Subject: OfAnimals, Doc: "A head count. Some may be hidden."})
	WordMoved      = listed(&LogWords, LogWord{Name: "moved", After: AfterEnclosure, Subject: OfAnimals, Doc: "It went to another enclosure, or out of the collection where none is named."})
	WordWeighed    = listed(&LogWords, LogWord{Name: "weighed", After: AfterWeight, Subject: OfAnimals, Doc: "Its weight."})
	WordTreated    = listed(&LogWords, LogWord{Name: "treated", Subject: OfAnimals, Doc: "A treatment, described in the note."})
	WordMites      = listed(&LogWords, LogWord{Name: "mites", Subject: OfEnclosure, Doc: "Mites were found. Tools are kept apart and the enclosure is visited last."})
	WordDied       = listed(&LogWords, LogWord{Name: "died", After: AfterNumber, Subject: OfAnimals, Doc: "It died. Its tasks end, and shared causes are looked for."})
	WordDone       = listed(&LogWords, LogWord{Name: "done", After: AfterCare, Subject: OfCare, Doc: "A care was done on a day of its own. What runs from the last time counts from here."})
	WordSkipped    = listed(&LogWords, LogWord{Name: "skipped", After: AfterCare, Subject: OfCare, Doc: "A care was not done."})
)

// FindLogWord returns the log word written as name, or nil.
func FindLogWord(name string) *LogWord {
	for _, w := range LogWords {
		if w.Name == name || slices.Contains(w.Also, name) {
			return w
		}
	}
	return nil
}
