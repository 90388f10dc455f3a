package journal

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Line is a line of a log in its parts, for whoever has them apart. Empty parts are left out.
type Line struct {
	Day   civil.Date
	Clock *civil.Clock // the time of day, nil for none
	By    string       // the keeper who says so

	// Enclosure is an enclosure or a rack; in its place Keeper is one of the people of whom
	// the line is.
	Enclosure, Keeper string

	Group string // of the animals
	Word  *schema.LogWord
	Args  []string // what stands behind the word, such as "3", "crickets"
	Note  string   // in any words: it is brought onto one line
}

// Text returns the line as it stands in a log. Whatever its parts are it is one line, of that
// day and that enclosure; parts that are not words as a log has them are an error. Whether
// what it says can be so, Write finds.
func (l *Line) Text() (string, error) {
	words := []string{l.Day.String()}
	if l.Clock != nil {
		words = append(words, l.Clock.String())
	}
	if l.By != "" {
		words = append(words, "by", l.By)
	}
	if l.Keeper != "" {
		words = append(words, schema.LogKeeper, l.Keeper)
	} else {
		words = append(words, l.Enclosure)
	}
	if l.Group != "" {
		words = append(words, l.Group)
	}
	if l.Word == nil {
		return "", fmt.Errorf("a line of the log needs a word: what was seen or done")
	}
	words = append(append(words, l.Word.Name), l.Args...)
	for _, w := range words {
		if !isWord(w) {
			return "", fmt.Errorf("%q is no word of a log: it is empty, or has a blank, a quote or something that cannot be seen in it", w)
		}
	}
	text := strings.Join(words, " ")
	if note := OneLine(l.Note); note != "" {
		text += ` "` + strings.ReplaceAll(note, `"`, `\"`) + `"`
	}
	if e, wrong := plan.ParseLogLine(1, text); e.Date != l.Day || e.Enclosure.V != l.Enclosure && l.Keeper == "" || e.Keeper.V != l.Keeper || e.By.V != l.By {
		for _, f := range wrong {
			return "", fmt.Errorf("%q would not be read as it is meant: %s", text, f.Text)
		}
		return "", fmt.Errorf("%q would not be read as it is meant", text)
	}
	return text, nil
}

// isWord reports whether a log reads a text as one word.
func isWord(s string) bool {
	return s != "" && s[0] != '#' && utf8.ValidString(s) && !strings.ContainsFunc(s, func(r rune) bool { return r == '"' || unicode.IsSpace(r) || unseen(r) })
}

// OneLine is a note as a log has it: on one line, a blank between two words, without what
// cannot be seen.
func OneLine(note string) string {
	seen := strings.Map(func(r rune) rune {
		if unseen(r) && !unicode.IsSpace(r) {
			return -1
		}
		return r
	}, strings.ToValidUTF8(note, ""))
	return strings.Join(strings.Fields(seen), " ")
}

// unseen reports whether a character steers whatever shows it. Marks that join letters or turn
// the direction of writing are let through: scripts need them.
func unseen(r rune) bool { return unicode.IsControl(r) }
