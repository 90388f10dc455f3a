package schema

import (
	"slices"
	"strings"
)

// Spelling is one way in which keepers write a word of the log: a word, or a phrase
// of several. Capitals do not matter, and a hyphen or an underscore may stand for a
// blank.
type Spelling struct {
	Text string
	// Word is the word that it means; nil for one that is asked back.
	Word *LogWord
	// Leaves says of a move that it is out of the collection: no enclosure follows.
	Leaves bool
	// May are the words that it may mean, where it is not one alone. It is never
	// guessed: the keeper is asked, and until then it is a remark.
	May []*LogWord
	// Hint is what the keeper is asked.
	Hint string
}

// Asked reports whether a keeper has to say what is meant.
func (s *Spelling) Asked() bool { return s.Word == nil }

// Choices are the names of the words that it may mean.
func (s *Spelling) Choices() []string {
	var all []string
	for _, w := range s.May {
		all = append(all, w.Name)
	}
	return all
}

// Spellings are all ways of writing the words of the log: each word's own name, the
// usual words of keepers, and those that are asked back. Which mean what is general
// usage of keepers, from their glossaries and from memory.
var Spellings = slices.Concat(names(),
	spelled(WordMoult, "moulted", "molt", "molted", "shed", "sloughed", "popped a moult", "popped a molt", "exo", "exuvia",
		"exo found", "exuvia found", "skin found", "found exo", "found exuvia", "found skin", "new skin"),
	spelled(WordMatured, "hooked out", "mm", "ultimate", "ultimate moult", "ultimate molt", "last moult", "last molt"),
	spelled(WordPremoult, "premolt", "pre moult", "pre molt", "in pre", "in premoult", "in premolt", "fat and dull", "dark bald spot",
		"off food + sealed", "off food and sealed"),
	spelled(WordSealed, "sealed in", "sealed up", "webbed in", "webbed up", "plugged", "bulldozed shut", "buried itself", "buried herself",
		"buried himself", "walled in"),
	spelled(WordHanging, "on its back", "on her back", "on his back", "upside down"),
	spelled(WordPaired, "introduced", "breeding loan"),
	spelled(WordMated, "inserted", "connected", "spermatophore found"),
	spelled(WordGravid, "gravid?", "heavy", "plump", "huge"),
	spelled(WordLaid, "sacked", "double clutched", "ooth", "ootheca", "clutch", "egg sac"),
	spelled(WordSacTaken, "sac pulled", "pulled sac", "pulled the sac"),
	spelled(WordBorn, "had babies", "babies", "gave birth", "scorplings", "slings on mom", "slings on mum", "white on back", "white on her back"),
	spelled(WordFirstMoult, "first molt"),
	spelled(WordDispersed, "off mom", "off mum", "off her", "off her back", "scattered", "wandering"),
	spelled(WordSeparated, "pulled", "split", "cupped", "deli'd", "potted"),
	spelled(WordFed, "ate", "took", "pounced", "munched", "downed", "crix", "killed in seconds", "eaten", "eats", "eating"),
	spelled(WordRefused, "ignored", "ran from it", "no interest", "ne", "didn't take", "left", "fasting", "not eaten", "uneaten", "did not eat", "didn't eat", "not eating", "won't eat"),
	spelled(WordSeen, "saw", "seen out"),
	[]Spelling{
		{Text: "shipped", Word: WordMoved, Leaves: true}, {Text: "sold", Word: WordMoved, Leaves: true}, {Text: "traded", Word: WordMoved, Leaves: true},
		{Text: "50/50", Word: WordMoved, Leaves: true}, {Text: "loan", Word: WordMoved, Leaves: true}, {Text: "moved out", Word: WordMoved, Leaves: true},
	},
	spelled(WordDied, "doa", "rip", "passed", "dead"),
	spelled(WordIll, "dks", "death curl", "threw up", "regurgitated"),
	spelled(WordQuarantined, "quarantine", "qt", "iso"),

	spelled(WordRemark, "kicked hairs", "flicked", "flicked hairs", "bald", "springs", "cuc", "ewl", "eggs with legs", "prelarva",
		"1st instar in sac", "brumating", "cooled",
		"asleep", "sleeping", "resting", "inactive"), // young in a sac are not free yet; a rest stands in the plan, as a season

	asked("young, eggs, a tail, a leg, weight, or did it fall?", among(WordBorn, WordLaid, WordInjured, WordWeighed, WordRemark), "dropped"),
	asked("prey, hairs, its food or young?", among(WordFed, WordIll, WordBorn, WordRemark), "threw"),
	asked("young, a sac or its skin?", among(WordBorn, WordHatched, WordMoult), "popped"),
	asked("dead, sold, or only not seen?", among(WordDied, WordEscaped, WordMoved, WordRemark), "gone", "lost", "mia"),
	asked("before a moult, or a male before his last one? (a stage stands in the plan)", among(WordPremoult, WordMoult, WordRemark), "pm"),
	asked("did it moult into that stage just now? (a stage stands in the plan)", among(WordMoult, WordRemark), "pen", "penult", "pm male"),
	asked("which event brought it to that instar? (people count differently)", among(WordFirstMoult, WordMoult, WordHatched, WordRemark),
		"l1", "l2", "i2", "2i", "n1", "2nd instar", "fh"),
	asked("whole and put back, hurt, or has it moulted?", among(WordSealed, WordInjured, WordMoult, WordRemark), "dug", "dug up", "unearthed", "uncovered", "disturbed"),
	asked("to moult, or is something wrong?", among(WordHanging, WordIll, WordRemark), "flipped"),
	asked("in sight, out of its box, or taken out?", among(WordSeen, WordEscaped, WordSeparated), "out"),
	asked("made, opened or taken?", among(WordLaid, WordHatched, WordSacTaken), "sac"),
	asked("not taken once, or about to moult?", among(WordRefused, WordPremoult), "off food"),
	asked("mites, or the tiny animals that clean up?", among(WordMites, WordRemark), "mites?", "springs?", "tiny white bugs"),
	asked("to which enclosure of the plan? (a new box under the old name is done rehouse)", among(WordMoved, WordDone, WordSeparated),
		"rehoused", "upgraded", "kk", "kritty", "kritter keeper", "tub", "cup", "deli"),
)

func names() (all []Spelling) {
	for _, w := range LogWords {
		all = append(all, Spelling{Text: w.Name, Word: w})
	}
	return all
}

func spelled(w *LogWord, texts ...string) (all []Spelling) {
	for _, t := range texts {
		all = append(all, Spelling{Text: t, Word: w})
	}
	return all
}

func asked(hint string, may []*LogWord, texts ...string) (all []Spelling) {
	for _, t := range texts {
		all = append(all, Spelling{Text: t, May: may, Hint: hint})
	}
	return all
}

func among(words ...*LogWord) []*LogWord { return words }

// byText finds a spelling by its key. LongestSpelling is how many words the longest has.
var byText, LongestSpelling = func() (map[string]*Spelling, int) {
	all, longest := make(map[string]*Spelling, len(Spellings)), 0
	for i := range Spellings {
		key := spellingKey(Spellings[i].Text)
		if all[key] != nil {
			panic("schema: two words of the log are spelled " + key)
		}
		all[key] = &Spellings[i]
		longest = max(longest, 1+strings.Count(key, " "))
	}
	return all, longest
}()

var sameLetters = strings.NewReplacer("-", " ", "_", " ", "’", "'")

func spellingKey(s string) string { return sameLetters.Replace(strings.ToLower(s)) }

// Spelled returns the spelling with which some words begin and how many of them it
// takes: the longest, so that "threw up" is not "threw". It is nil for none.
func Spelled(words []string) (*Spelling, int) {
	for n := min(len(words), LongestSpelling); n > 0; n-- {
		if s := byText[spellingKey(strings.Join(words[:n], " "))]; s != nil {
			return s, n
		}
	}
	return nil, 0
}

// Also returns the other spellings of a word.
func (w *LogWord) Also() (all []string) {
	for _, s := range Spellings {
		if s.Word == w && s.Text != w.Name {
			all = append(all, s.Text)
		}
	}
	return all
}
