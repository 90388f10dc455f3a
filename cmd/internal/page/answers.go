package page

import (
	"regexp"
	"slices"

	"vivary/compile/rounds"
	"vivary/schema"
)

// answer is a word of the log that answers a question, and where it is written.
type answer struct {
	Word  string
	Doc   string
	Tank  string
	Group string
}

// word finds what may be a word of the log in the words for what to write, with what stands
// before it: "when it is seen" is no answer.
var word = regexp.MustCompile(`(\bis |\bwhat |\bthe )?\b([a-z]+(?:[_-][a-z]+)*)\b`)

// toLog finds the word that a task asks to be logged: "log first_moult".
var toLog = regexp.MustCompile(`\blog ([a-z]+(?:[_-][a-z]+)*)\b`)

// answers are the words that a question, or what is looked for, asks for.
func answers(s *rounds.Stop) (out []answer) {
	text := s.Item.Answer
	if m := toLog.FindStringSubmatch(s.Item.Phrase); m != nil && text == "" {
		text = m[1]
	}
	for _, m := range word.FindAllStringSubmatch(text, -1) {
		w := logWord(m[2])
		if m[1] != "" || w == nil || slices.ContainsFunc(out, func(a answer) bool { return a.Word == w.Name }) {
			continue
		}
		out = append(out, answer{w.Name, w.Doc, s.Place.Name, s.Item.Animals})
	}
	return out
}

// logWord is the word of the log of that name that a form may write, or nil.
func logWord(name string) *schema.LogWord {
	for _, w := range schema.LogWords {
		if w.Name == name && w != schema.WordWithdrawn {
			return w
		}
	}
	return nil
}
