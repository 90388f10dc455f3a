package rounds

import (
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"vivary/schema"
	"vivary/schema/wording"
)

// Task is what is done, in the parts from which its words are made. Equal tasks of
// several enclosures share a line.
type Task struct {
	Kind   *schema.CareKind
	Phrase string // "Mist 150 ml"; of a meal what stands before the prey
	Own    bool   // the phrase is in the keeper's own words, and stands as it was written but for its first letter
	Whole  bool   // the phrase is a sentence, which may begin with a name
	Prey   Prey   // of a meal
	Group  string // whose it is, where several groups live in the enclosure
	Manner string // how, where the state of the animals does not let it be done as usual
	Note   string // what else there is to say: "last done 3 Nov"
}

// Dead is a meal that the log brought, with prey that is killed first.
func (t Task) Dead() Task {
	t.Phrase += ", killed"
	return t
}

// Prey is what is given to the animals of a group.
type Prey struct {
	One, Many    string // "adult cricket", "adult crickets"; empty for no prey
	Each         float64
	Animals      int
	Uncounted    bool // how many they are is not known
	Killed, Dust bool
}

// Total is how many items that are, a begun one counted whole.
func (p *Prey) Total() int { return int(math.Ceil(p.Each*float64(p.Animals) - 1e-9)) }

// String words a task as it stands within a line: "feed 2 adult crickets each (6
// for 3 animals)".
func (t *Task) String() string {
	if t.Whole {
		return t.worded(t.Phrase)
	}
	if t.Own {
		return t.worded(lower(t.Phrase))
	}
	return t.worded(small(t.Phrase))
}

// Sentence is String at the beginning of a line.
func (t *Task) Sentence() string {
	if t.Own {
		return t.worded(t.Phrase)
	}
	return t.worded(large(t.Phrase))
}

// worded puts the parts together.
func (t *Task) worded(text string) string {
	text = flat(text)
	notes := make([]string, 0, 4)
	if t.Group != "" {
		notes = append(notes, t.Group)
	}
	if p := &t.Prey; p.Many != "" {
		dish, total := p.words()
		if text += " " + dish; total != "" {
			notes = append(notes, total)
		}
	}
	if t.Manner != "" {
		notes = append(notes, t.Manner)
	}
	if t.Note != "" {
		notes = append(notes, t.Note)
	}
	if len(notes) > 0 {
		text += " (" + strings.Join(notes, ", ") + ")"
	}
	return text
}

// String is what is given, "2 adult crickets each".
func (p *Prey) String() string {
	dish, _ := p.words()
	return dish
}

// words returns what is given, and how many that is for how many animals where
// there are several. A bare number behind a name was read as one of animals; parts
// of an item can not be given to each, so that only the whole is said.
func (p *Prey) words() (dish, total string) {
	all := strconv.Itoa(p.Total())
	herd := " for " + wording.Animals(p.Animals)
	switch {
	case p.Uncounted && p.Animals > 1:
		return p.items("", false) + ", a little for each", ""
	case p.Animals <= 1:
		return p.items(wording.ByHand(p.Each), p.Each <= 1), ""
	case p.Each != math.Trunc(p.Each):
		return p.items(all, p.Total() == 1) + herd, ""
	}
	return p.items(wording.ByHand(p.Each), p.Each == 1) + " each", all + " in all," + herd
}

// items is a number of items: "2 killed adult crickets".
func (p *Prey) items(n string, one bool) string {
	switch {
	case p.Killed && p.Dust:
		n += " killed, dusted "
	case p.Killed:
		n += " killed "
	case p.Dust:
		n += " dusted "
	default:
		n += " "
	}
	if one {
		return n + p.One
	}
	return strings.TrimSpace(n + p.Many)
}

// small begins the sentences of a text with small letters, as they stand behind a
// name and a colon.
func small(text string) string {
	begins := true
	return strings.Map(func(r rune) rune {
		switch {
		case begins && r != ' ':
			begins = false
			return unicode.ToLower(r)
		case r == '?' || r == '.' || r == '!':
			begins = true
		}
		return r
	}, text)
}

// lower begins a keeper's words with a small letter, as they stand behind others, but
// not what is written in capitals: "UV lamp on".
func lower(text string) string {
	r, n := utf8.DecodeRuneInString(text)
	if next, _ := utf8.DecodeRuneInString(text[n:]); !unicode.IsLower(next) {
		return text
	}
	return string(unicode.ToLower(r)) + text[n:]
}

// large begins a text with a capital.
func large(text string) string {
	r, n := utf8.DecodeRuneInString(text)
	if u := unicode.ToUpper(r); u != r && r != utf8.RuneError {
		return string(u) + text[n:]
	}
	return text
}

// flat is a text on one line.
func flat(text string) string {
	for i := 0; i < len(text); i++ {
		if text[i] < ' ' || text[i] == 0x7f {
			return strings.Join(strings.FieldsFunc(text, func(r rune) bool { return r <= ' ' || r == 0x7f }), " ")
		}
	}
	return text
}
