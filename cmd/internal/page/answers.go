package page

import (
	"regexp"

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

// toLog finds the word that a task asks to be logged: "log first_moult".
var toLog = regexp.MustCompile(`\blog ([a-z]+(?:[_-][a-z]+)*)\b`)

// answers are the words that a question, or what is looked for, asks for.
func answers(s *rounds.Stop) (out []answer) {
	text := s.Item.Answer
	if m := toLog.FindStringSubmatch(s.Item.Phrase); m != nil && text == "" {
		text = m[1]
	}
	for _, w := range schema.LogWordsIn(text) {
		if w != schema.WordWithdrawn {
			out = append(out, answer{w.Name, w.Doc, s.Place.Name, s.Item.Animals})
		}
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
