package schema

import (
	"regexp"
	"slices"
)

// askedWord finds what may be a word of the log in the words for what to write, with what
// stands before it: "when it is seen" asks for none.
var askedWord = regexp.MustCompile(`(\bis |\bwhat |\bthe )?\b([a-z]+(?:[_-][a-z]+)*)\b`)

// LogWordsIn returns the words of the log that a text asks for, each once: "born and how many;
// or not-gravid".
func LogWordsIn(text string) (all []*LogWord) {
	for _, m := range askedWord.FindAllStringSubmatch(text, -1) {
		i := slices.IndexFunc(LogWords, func(w *LogWord) bool { return w.Name == m[2] })
		if m[1] == "" && i >= 0 && !slices.Contains(all, LogWords[i]) {
			all = append(all, LogWords[i])
		}
	}
	return all
}
