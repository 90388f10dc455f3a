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

// The words of the log.
var (
	WordArrived    = &LogWord{Name: "arrived", After: AfterNumber, Subject: OfAnimals, Doc: "It came into the collection. Quarantine runs from here."}
	WordMoult      = &LogWord{Name: "moult", Also: []string{"moulted", "molt", "molted"}, After: AfterNumber, Subject: OfAnimals, Doc: "A moult was found. Meals wait; stage and instar move on."}
	WordPremoult   = &LogWord{Name: "premoult", Also: []string{"premolt", "pre-moult"}, Subject: OfAnimals, Doc: "It is about to moult: dull, fat, hiding. Meals stop."}
	WordHanging    = &LogWord{Name: "hanging", Subject: OfAnimals, Doc: "It hangs to moult. Nothing is opened."}
	WordMated      = &LogWord{Name: "mated", Also: []string{"paired"}, Subject: OfAnimals, Doc: "A mating was seen. The window for a birth is counted from here."}
	WordGravid     = &LogWord{Name: "gravid", Also: []string{"gravid?"}, Subject: OfAnimals, Doc: "It carries young, or seems to. Without a mating in the log no window is made up."}
	WordBorn       = &LogWord{Name: "born", After: AfterNumber, Subject: OfAnimals, Doc: "Young were born, or an egg sac was made. Nothing is disturbed."}
	WordFirstMoult = &LogWord{Name: "first_moult", Also: []string{"first-moult", "first_molt"}, Subject: OfAnimals, Doc: "The brood moulted for the first time. Only now does a separation exist."}
	WordSeparated  = &LogWord{Name: "separated", After: AfterNumber, Subject: OfAnimals, Doc: "The young were taken out."}
	WordFed        = &LogWord{Name: "fed", After: AfterPrey, Subject: OfAnimals, Doc: "A meal was taken on a day of its own. Meals that run from the last one count from here."}
	WordRefused    = &LogWord{Name: "refused", Subject: OfAnimals, Doc: "A meal was refused."}
	WordCounted    = &LogWord{Name: "counted", Also: []string{"seen"}, After: AfterNumber, Subject: OfAnimals, Doc: "A head count. Some may be hidden."}
	WordMoved      = &LogWord{Name: "moved", After: AfterEnclosure, Subject: OfAnimals, Doc: "It went to another enclosure, or out of the collection where none is named."}
	WordWeighed    = &LogWord{Name: "weighed", After: AfterWeight, Subject: OfAnimals, Doc: "Its weight."}
	WordTreated    = &LogWord{Name: "treated", Subject: OfAnimals, Doc: "A treatment, described in the note."}
	WordMites      = &LogWord{Name: "mites", Subject: OfEnclosure, Doc: "Mites were found. Tools are kept apart and the enclosure is visited last."}
	WordDied       = &LogWord{Name: "died", After: AfterNumber, Subject: OfAnimals, Doc: "It died. Its tasks end, and shared causes are looked for."}
	WordDone       = &LogWord{Name: "done", After: AfterCare, Subject: OfCare, Doc: "A care was done on a day of its own. What runs from the last time counts from here."}
	WordSkipped    = &LogWord{Name: "skipped", After: AfterCare, Subject: OfCare, Doc: "A care was not done."}
)

// LogWords are the words of the log.
var LogWords = []*LogWord{
	WordArrived, WordMoult, WordPremoult, WordHanging, WordMated, WordGravid, WordBorn,
	WordFirstMoult, WordSeparated, WordFed, WordRefused, WordCounted, WordMoved, WordWeighed,
	WordTreated, WordMites, WordDied, WordDone, WordSkipped,
}

// FindLogWord returns the log word written as name, or nil.
func FindLogWord(name string) *LogWord {
	for _, w := range LogWords {
		if w.Name == name || slices.Contains(w.Also, name) {
			return w
		}
	}
	return nil
}
