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
	// Care is the kind of care that it says was done, of a Spelling of done: "misted".
	Care *CareKind
	// May is what it may mean, as it is written, where that is not one thing alone. It is
	// never guessed: the keeper is asked, and until then it is a remark.
	May []string
	// Hint is what the keeper is asked.
	Hint string
}

// Asked reports whether a keeper has to say what is meant.
func (s *Spelling) Asked() bool { return s.Word == nil }

// Same reports whether two spellings mean the same.
func (s *Spelling) Same(o *Spelling) bool {
	return s.Word == o.Word && s.Leaves == o.Leaves && s.Care == o.Care && slices.Equal(s.May, o.May)
}

// Means is what a spelling means, as our words write it.
func (s *Spelling) Means() string {
	if s.Care != nil {
		return s.Word.Name + " " + s.Care.Name
	}
	return s.Word.Name
}

// Spellings are all ways of writing the words of the log: each word's own name, the
// usual words of keepers, and those that are asked back. Which mean what is general
// usage of keepers, from their glossaries and from memory.
var Spellings = slices.Concat(names(),
	spelled(WordArrived, "unboxed", "bought", "acquired", "purchased", "received", "came in"),
	spelled(WordMoult, "moulted", "molt", "molted", "shed", "sheds", "has shed", "sloughed", "popped a moult", "popped a molt", "exo", "exuvia",
		"exo found", "exuvia found", "skin found", "found exo", "found exuvia", "found skin", "new skin", "found moult", "found molt", "moult found", "molt found"),
	spelled(WordMatured, "hooked out", "mm", "mature male", "ultimate", "ultimate moult", "ultimate molt", "last moult", "last molt"),
	spelled(WordPremoult, "premolt", "pre moult", "pre molt", "in pre", "in premoult", "in premolt", "fat and dull", "dark bald spot",
		"off food + sealed", "off food and sealed"),
	spelled(WordSealed, "sealed in", "sealed up", "webbed in", "webbed up", "plugged", "bulldozed shut", "buried itself", "buried herself",
		"buried himself", "walled in"),
	spelled(WordHanging, "on its back", "on her back", "on his back", "upside down", "moulting", "molting", "shedding", "in moult", "in molt"),
	spelled(WordPaired, "introduced", "breeding loan"),
	spelled(WordMated, "inserted", "connected", "spermatophore found"),
	spelled(WordGravid, "gravid?", "heavy", "plump", "huge", "pregnant"),
	spelled(WordLaid, "sacked", "double clutched", "ooth", "ootheca", "clutch", "egg sac", "laid eggs", "laid a sac", "dropped a sac", "dropped a clutch", "made a sac"),
	spelled(WordSacTaken, "sac pulled", "pulled sac", "pulled the sac"),
	spelled(WordHatched, "hatched out", "eggs hatched"),
	spelled(WordBorn, "had babies", "babies", "gave birth", "scorplings", "dropped scorplings", "slings on mom", "slings on mum", "white on back", "white on her back"),
	spelled(WordFirstMoult, "first molt"),
	spelled(WordDispersed, "off mom", "off mum", "off her", "off her back", "scattered", "wandering"),
	spelled(WordSeparated, "pulled", "split", "cupped", "deli'd", "potted"),
	spelled(WordFed, "ate", "took", "pounced", "munched", "downed", "crix", "killed in seconds", "eaten", "eats", "eating", "took prey"),
	spelled(WordRefused, "ignored", "ran from it", "no interest", "ne", "didn't take", "left", "fasting", "not eaten", "uneaten", "did not eat", "didn't eat",
		"not eating", "won't eat", "declined", "rejected", "refuses", "refusing", "fasts"),
	spelled(WordSeen, "saw", "seen out"),
	[]Spelling{
		{Text: "shipped", Word: WordMoved, Leaves: true}, {Text: "sold", Word: WordMoved, Leaves: true}, {Text: "traded", Word: WordMoved, Leaves: true},
		{Text: "50/50", Word: WordMoved, Leaves: true}, {Text: "loan", Word: WordMoved, Leaves: true}, {Text: "moved out", Word: WordMoved, Leaves: true},
		{Text: "gave away", Word: WordMoved, Leaves: true}, {Text: "given away", Word: WordMoved, Leaves: true}, {Text: "rehomed", Word: WordMoved, Leaves: true},
	},
	spelled(WordEscaped, "got out", "on the loose"),
	spelled(WordFound, "recaptured", "caught again"),
	spelled(WordWeighed, "weight", "weighs"),
	spelled(WordInjured, "dropped a leg", "lost a leg", "missing leg", "dropped its tail", "dropped tail"),
	spelled(WordDied, "doa", "rip", "passed", "passed away", "dead", "found dead", "deceased"),
	spelled(WordIll, "dks", "death curl", "threw up", "regurgitated", "sick"),
	spelled(WordRecovered, "recovering", "well again"),
	spelled(WordQuarantined, "quarantine", "qt", "iso"),
	spelled(WordMeasured, "temp", "temps", "temperature", "humidity"),
	does(KindMist, "mist", "misted", "sprayed", "spritzed"),
	does(KindMoisten, "moisten", "watered the substrate", "wet the substrate", "moistened"),
	does(KindWater, "fresh water", "new water", "water changed", "changed water", "changed the water", "filled the dish", "refilled", "topped up", "topped up water"),
	does(KindLeftovers, "leftovers", "took out leftovers", "leftovers removed", "removed leftovers"),
	does(KindSpotClean, "spot clean", "spot cleaned"),
	does(KindDish, "dish", "scrubbed the dish", "dish scrubbed", "dish cleaned", "cleaned the dish"),
	does(KindDeepClean, "deep clean", "deep cleaned", "substrate changed", "changed substrate", "changed the substrate", "new substrate"),
	does(KindGutLoad, "gut load", "gut loaded"),
	does(KindDeviceTest, "device test", "tested heater", "tested the heater"),
	does(KindHandle, "handled"),

	spelled(WordRemark, "kicked hairs", "flicked", "flicked hairs", "bald", "springs", "cuc", "ewl", "eggs with legs", "prelarva",
		"1st instar in sac", "brumating", "cooled",
		"asleep", "sleeping", "resting", "inactive"), // young in a sac are not free yet; a rest stands in the plan, as a season

	asked("young, eggs, a tail, a leg, weight, or did it fall?", among(WordBorn, WordLaid, WordInjured, WordWeighed, WordRemark), "dropped"),
	asked("born alive, or out of the sac or the eggs?", among(WordBorn, WordHatched), "dropped slings", "had slings", "dropped young"),
	asked("prey, hairs, its food or young?", among(WordFed, WordIll, WordBorn, WordRemark), "threw"),
	asked("young, a sac or its skin?", among(WordBorn, WordHatched, WordMoult), "popped"),
	asked("dead, sold, or only not seen?", among(WordDied, WordEscaped, WordMoved, WordRemark), "gone", "lost", "mia", "missing"),
	asked("before a moult, or a male before his last one? (a stage stands in the plan)", among(WordPremoult, WordMoult, WordRemark), "pm"),
	asked("did it moult into that stage just now? (a stage stands in the plan)", among(WordMoult, WordRemark), "pen", "penult", "pm male"),
	asked("which event brought it to that instar? (people count differently)", among(WordFirstMoult, WordMoult, WordHatched, WordRemark),
		"l1", "l2", "i2", "2i", "n1", "2nd instar", "fh"),
	asked("whole and put back, hurt, or has it moulted?", among(WordSealed, WordInjured, WordMoult, WordRemark), "dug", "dug up", "unearthed", "uncovered", "disturbed"),
	asked("to moult, or is something wrong?", among(WordHanging, WordIll, WordRemark), "flipped"),
	asked("in sight, out of its box, or taken out?", among(WordSeen, WordEscaped, WordSeparated), "out"),
	asked("made, opened or taken?", among(WordLaid, WordHatched, WordSacTaken), "sac"),
	asked("not taken once, or about to moult?", among(WordRefused, WordPremoult), "off food"),
	asked("was it taken?", among(WordFed, WordRefused), "offered", "feeding", "feed"),
	asked("mites, or the tiny animals that clean up?", among(WordMites, WordRemark), "mites?", "springs?", "tiny white bugs"),
	asked("to which enclosure of the plan? (a new box under the old name is done rehouse)", among(WordMoved, WordDone, WordSeparated),
		"rehoused", "upgraded", "kk", "kritty", "kritter keeper", "tub", "cup", "deli"),
	asked("the dish, or the substrate?", doing(KindWater, KindMoisten), "watered", "water", "watering"),
	asked("waste taken out, the dish scrubbed, or all of the substrate changed?", doing(KindSpotClean, KindDish, KindDeepClean), "cleaned", "clean", "cleaning"),
	asked("brought together, or was a mating seen?", among(WordPaired, WordMated), "bred", "mating"),
	asked("the temperature read, or the heater tested?", doing(KindHeat, KindDeviceTest), "heat", "heating"),
	asked("all seen or hidden, or each one counted?", append(doing(KindLook), among(WordSeen, WordCounted)...), "checked", "check", "look", "looked"),
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

// does are spellings of done that say which care.
func does(k *CareKind, texts ...string) []Spelling {
	all := spelled(WordDone, texts...)
	for i := range all {
		all[i].Care = k
	}
	return all
}

func asked(hint string, may []string, texts ...string) (all []Spelling) {
	for _, t := range texts {
		all = append(all, Spelling{Text: t, May: may, Hint: hint})
	}
	return all
}

func among(words ...*LogWord) (may []string) {
	for _, w := range words {
		may = append(may, w.Name)
	}
	return may
}

func doing(kinds ...*CareKind) (may []string) {
	for _, k := range kinds {
		may = append(may, WordDone.Name+" "+k.Name)
	}
	return may
}

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

// Also returns the other spellings of a word; of done those behind which it stands which
// care that is.
func (w *LogWord) Also() (all []string) {
	for _, s := range Spellings {
		switch {
		case s.Word != w || s.Text == w.Name:
		case s.Care != nil && s.Text != s.Care.Name:
			all = append(all, s.Text+" ("+s.Care.Name+")")
		default:
			all = append(all, s.Text)
		}
	}
	return all
}
