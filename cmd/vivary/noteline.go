package main

import (
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// noted is what a note makes of what was typed.
type noted struct {
	day   civil.Date
	lines []string // of the log
	of    []string // the enclosures or racks that they are about
	taken []string // the lines that these take back
	word  *schema.LogWord
}

// noteLines makes the lines that are to be written, one for each enclosure.
func (w *world) noteLines(c *plan.Collection, today civil.Date, f *flags, args []string) (noted, error) {
	var head []string
	if f.at != "" {
		at, err := civil.ReadClock(f.at)
		if err != nil {
			return noted{}, fmt.Errorf("--at: %w", err)
		}
		head = append(head, at.String())
	}
	if f.by != "" {
		head = append(head, "by", f.by)
	}
	if f.undo {
		out, err := w.undo(c, strings.Join(append([]string{today.String()}, head...), " "), f.by, args)
		out.day = today
		return out, err
	}
	short := errors.New("write an enclosure, the animals where there are several, a word and a note, for example:\n  vivary note burrow-a young moult \"left alone\"\nSeveral enclosures: vivary note tub-1,tub-2,tub-7 to 12 fed")
	if len(args) < 2 {
		return noted{}, short
	}
	day, args, err := takeDay(c, today, args)
	if err != nil {
		return noted{}, err
	}
	if len(args) < 2 {
		return noted{}, short
	}
	begin := strings.Join(append([]string{day.String()}, head...), " ") + " "
	if (args[0] == schema.LogKeeper || args[0] == schema.LogDeadline) && called(c, args[0]) == "" {
		return noted{day: day, lines: []string{begin + asTyped(args)}}, nil
	}
	of, rest, err := takeWho(c, args)
	if err != nil {
		return noted{}, err
	}
	if len(rest) == 0 {
		return noted{}, short
	}
	t := takeWord(c, of.names[0], rest)
	if t.word != nil {
		if err := of.boxes(c, t.word, t.care); err != nil {
			return noted{}, err
		}
	}
	out := noted{day: day, word: t.word, of: of.names}
	for _, name := range of.names {
		out.lines = append(out.lines, begin+name+" "+t.text)
	}
	return out, nil
}

// typed is what was typed behind the enclosures.
type typed struct {
	text string          // as it stands in the line
	word *schema.LogWord // nil for none
	care string          // that was done or skipped
}

// takeWord reads animals, word, what the word takes, and the note, which has lost its quotes
// to the shell. Where there is no word of the log all is left as it was typed, so that the
// plan says what may be meant.
func takeWord(c *plan.Collection, enclosure string, args []string) typed {
	at := 0
	if e := c.Enclosure(enclosure); len(args) > 1 && (e != nil && e.Group(args[0]) != nil || spelledAt(args) == nil && spelledAt(args[1:]) != nil) {
		at = 1
	}
	s, n := spelledIn(args[at:])
	if s == nil || s.Asked() {
		return typed{text: asTyped(args)}
	}
	words := flat(args[at:])
	said, rest := words[:n], pastWords(args[at:], n)
	k := slices.IndexFunc(rest, func(a string) bool { return strings.ContainsAny(a, " \t\n\r\"") || a == "" })
	if k < 0 {
		k = len(rest)
	}
	plain := slices.Clone(rest[:k])
	if len(plain) > 0 && counts(s.Word.After) {
		plain[0] = inDigits(plain[0])
	}
	taken := c.Taken(s, plain)
	if over := plain[taken:]; len(over) > 0 && !loose(c, over) {
		taken = len(plain)
	}
	out := typed{word: s.Word}
	all := slices.Concat(args[:at], said, plain[:taken])
	out.text = strings.Join(all, " ")
	if s.Word.Subject == schema.OfCare && taken > 0 {
		out.care = plain[0]
	}
	if note := strings.Join(slices.Concat(plain[taken:], rest[k:]), " "); note != "" {
		out.text += " " + inQuotes(note)
	}
	return out
}

func spelledAt(args []string) *schema.Spelling {
	s, _ := spelledIn(args)
	return s
}

// spelledIn returns the word of the log at the beginning of what was typed, and how many
// words it has. It ends where an argument does: of a note in quotes it takes no part.
func spelledIn(args []string) (*schema.Spelling, int) {
	s, n := schema.Spelled(flat(args))
	for i, over := 0, n; i < len(args) && over > 0; i++ {
		words := len(strings.Fields(args[i]))
		if over < words && i > 0 {
			return schema.Spelled(flat(args[:i]))
		}
		over -= words
	}
	return s, n
}

// flat are the words of what was typed.
func flat(args []string) (words []string) {
	for _, a := range args {
		words = append(words, strings.Fields(a)...)
	}
	return words
}

// pastWords are the arguments behind their first n words. One that is cut leaves its rest.
func pastWords(args []string, n int) []string {
	for i, a := range args {
		words := strings.Fields(a)
		if len(words) > n {
			if n == 0 {
				return args[i:]
			}
			return append([]string{strings.Join(words[n:], " ")}, args[i+1:]...)
		}
		n -= len(words)
	}
	return nil
}

// loose reports whether words that nothing takes can be a note without its quotes: they
// begin with no number, word of the log or enclosure, which may be meant for more.
func loose(c *plan.Collection, words []string) bool {
	s, _ := schema.Spelled(words)
	return s == nil && (words[0][0] < '0' || words[0][0] > '9') && called(c, words[0]) == "" && inDigits(words[0]) == words[0] && !slices.Contains(vague, strings.ToLower(words[0]))
}

// vague are words for a number that say none.
var vague = []string{"all", "both", "some", "several", "many", "few", "couple", "most", "none", "half"}

// counts reports whether a number stands first behind a word.
func counts(a schema.After) bool {
	return a == schema.AfterNumber || a == schema.AfterPrey || a == schema.AfterEnclosure
}

var numberWords = []string{"zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"}

// inDigits is a number that was typed as a word, in digits.
func inDigits(word string) string {
	if n := slices.Index(numberWords, strings.ToLower(word)); n > 0 {
		return strconv.Itoa(n)
	}
	return word
}

// asTyped joins words and puts those that hold blanks in quotes. A phrase that is a word of
// the log is none: a shell takes the quotes off "gave birth".
func asTyped(args []string) string {
	var out []string
	worded := false
	for i, a := range args {
		words := strings.Fields(a)
		spelled, n := schema.Spelled(words)
		phrase := i > 0 && spelled != nil && n == len(words) && !worded
		worded = worded || phrase
		if a == "" || !phrase && strings.ContainsAny(a, " \t\"\n\r") {
			a = inQuotes(a)
		}
		out = append(out, a)
	}
	return strings.Join(out, " ")
}

// inQuotes is a note as it stands in a line. What cannot be seen stays, and is refused.
func inQuotes(note string) string { return `"` + onOneLine.Replace(note) + `"` }

var onOneLine = strings.NewReplacer("\n", " ", "\r", " ", "\t", " ", `"`, `\"`)
