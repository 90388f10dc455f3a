package schema

// LogWord is one word of the log: something that was seen or done on a day.
type LogWord struct {
	Name    string
	Also    []string // other spellings that mean the same
	After   string   // what may follow the word, in words
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

// LogWords are the words of the log.
var LogWords = []LogWord{
	{Name: "arrived", After: "how many", Subject: OfAnimals, Doc: "It came into the collection. Quarantine runs from here."},
	{Name: "moult", Also: []string{"moulted", "molt", "molted"}, After: "how many", Subject: OfAnimals, Doc: "A moult was found. Meals wait; stage and instar move on."},
	{Name: "premoult", Also: []string{"premolt", "pre-moult"}, Subject: OfAnimals, Doc: "It is about to moult: dull, fat, hiding. Meals stop."},
	{Name: "hanging", Subject: OfAnimals, Doc: "It hangs to moult. Nothing is opened."},
	{Name: "mated", Also: []string{"paired"}, Subject: OfAnimals, Doc: "A mating was seen. The window for a birth is counted from here."},
	{Name: "gravid", Also: []string{"gravid?"}, Subject: OfAnimals, Doc: "It carries young, or seems to. Without a mating in the log no window is made up."},
	{Name: "born", After: "how many", Subject: OfAnimals, Doc: "Young were born, or an egg sac was made. Nothing is disturbed."},
	{Name: "first_moult", Also: []string{"first-moult", "first_molt"}, Subject: OfAnimals, Doc: "The brood moulted for the first time. Only now does a separation exist."},
	{Name: "separated", After: "how many", Subject: OfAnimals, Doc: "The young were taken out."},
	{Name: "fed", After: "how many of what", Subject: OfAnimals, Doc: "A meal was taken on a day of its own. Meals that run from the last one count from here."},
	{Name: "refused", Subject: OfAnimals, Doc: "A meal was refused."},
	{Name: "counted", Also: []string{"seen"}, After: "how many", Subject: OfAnimals, Doc: "A head count. Some may be hidden."},
	{Name: "moved", After: "the enclosure it went to", Subject: OfAnimals, Doc: "It went to another enclosure, or out of the collection where none is named."},
	{Name: "weighed", After: "the weight", Subject: OfAnimals, Doc: "Its weight."},
	{Name: "treated", Subject: OfAnimals, Doc: "A treatment, described in the note."},
	{Name: "mites", Subject: OfEnclosure, Doc: "Mites were found. Tools are kept apart and the enclosure is visited last."},
	{Name: "died", After: "how many", Subject: OfAnimals, Doc: "It died. Its tasks end, and shared causes are looked for."},
	{Name: "done", After: "the care", Subject: OfCare, Doc: "A care was done on a day of its own. What runs from the last time counts from here."},
	{Name: "skipped", After: "the care", Subject: OfCare, Doc: "A care was not done."},
}

// FindLogWord returns the log word written as name, or nil.
func FindLogWord(name string) *LogWord {
	for i := range LogWords {
		w := &LogWords[i]
		if w.Name == name {
			return w
		}
		for _, a := range w.Also {
			if a == name {
				return w
			}
		}
	}
	return nil
}
