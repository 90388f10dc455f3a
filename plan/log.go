package plan

import (
	"bytes"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
)

// Event is one line of a log.
type Event struct {
	At        source.Place
	Date      civil.Date
	Clock     Written[civil.Clock] // the time of day, where one is written
	By        Written[string]      // the keeper who wrote it, where one is named
	Enclosure Written[string]
	Group     Written[string] // empty for a line about the whole enclosure
	Word      *schema.LogWord
	WordAt    source.Place
	// Number is the number after the word, where there is one: animals, prey, a weight
	// without its unit, or the days of a treatment.
	Number Written[float64]
	// Args is what else stands after the word; of a move, the enclosure and then the
	// animals that were joined there.
	Args []Written[string]
	Note string
}

// parseLog reads the lines of a log. A line is a day, an enclosure, the animals
// where there are several, a word, what the word needs, and a note in quotes:
//
//	2026-11-02 burrow-a young moult "left alone"
//
// Empty lines and those that begin with # are passed over. Whether enclosure and
// animals exist is found later, when all files have been read.
func parseLog(id source.ID, text []byte) ([]Event, []finding.Finding) {
	var events []Event
	var found finding.List
	start := 0
	if bytes.HasPrefix(text, byteOrderMark) {
		start = len(byteOrderMark)
	}
	for start < len(text) {
		end := start
		for end < len(text) && text[end] != '\n' {
			end++
		}
		line := strings.TrimRight(string(text[start:end]), "\r")
		if e, ok := parseLogLine(id, start, line, &found); ok {
			events = append(events, e)
		}
		start = end + 1
	}
	return events, found.All
}

// byteOrderMark is what some editors begin a UTF-8 file with.
var byteOrderMark = []byte("\ufeff")

// ParseLogLine reads one line as the first of a file. The text of the finding says
// what is wrong with it.
func ParseLogLine(id source.ID, line string) (Event, []finding.Finding) {
	var found finding.List
	e, _ := parseLogLine(id, 0, line, &found)
	return e, found.All
}

const logForm = `day, enclosure, animals, word, note: 2026-11-02 burrow-a young moult "left alone"`

func parseLogLine(id source.ID, start int, line string, found *finding.List) (Event, bool) {
	words, note, noteAt := logWords(line)
	if len(words) == 0 && noteAt < 0 || len(words) > 0 && strings.HasPrefix(words[0].text, "#") {
		return Event{}, false
	}
	place := func(from, to int) source.Place {
		return source.Place{File: id, Start: int32(start + from), End: int32(start + to)}
	}
	whole := place(0, len(line))
	fail := func(at source.Place, text, write string) (Event, bool) {
		found.Add(finding.Finding{Rule: ruleLogLine, At: at, Text: text, Write: write})
		return Event{}, false
	}
	if strings.ContainsFunc(line, hidden) {
		return fail(whole, "the line holds a character that cannot be seen", "the line anew, with plain letters")
	}
	if noteAt == unclosed {
		return fail(whole, "the note is never closed: its \" is missing", logForm)
	}
	if len(words) < 3 {
		return fail(whole, "a line of the log needs a day, an enclosure and a word", logForm)
	}
	e := Event{At: whole, Note: note}
	var err error
	if e.Date, err = civil.Parse(words[0].text); err != nil {
		return fail(place(words[0].from, words[0].to()), err.Error(), "a day such as 2026-11-02")
	}
	written := func(w logWord) Written[string] { return wrote(w.text, place(w.from, w.to())) }
	e.Enclosure = written(words[1])
	at := 2
	if schema.FindLogWord(words[2].text) == nil && len(words) > 3 && schema.FindLogWord(words[3].text) != nil {
		e.Group = written(words[2])
		at = 3
	}
	e.Word = schema.FindLogWord(words[at].text)
	e.WordAt = place(words[at].from, words[at].to())
	if e.Word == nil {
		// Where two words could be the one meant, the nearer to a known one is.
		var known []string
		for _, w := range schema.LogWords {
			known = append(known, w.Name)
		}
		near := finding.Suggest(words[at].text, known)
		if len(words) > 3 {
			// The third word may be the animals, and the fourth the word that is meant.
			if n := finding.Suggest(words[3].text, known); n != "" {
				at, near = 3, n
			} else if slices.ContainsFunc(schema.Stages, func(c schema.Choice) bool { return c.Name == words[2].text }) {
				near = "" // animals are often named by their stage: "adult" is not meant as "moult"
			}
		}
		text := quote(words[at].text) + " is not a word of the log"
		write := "one of: " + strings.Join(known, ", ")
		if near == "" && len(words) > 3 {
			text = "neither " + quote(words[2].text) + " nor " + quote(words[3].text) + " is a word of the log"
		}
		if near != "" {
			text += ": did you mean " + near + "?"
			write = near
		}
		f := finding.Finding{Rule: ruleLogLine, At: place(words[at].from, words[at].to()), Text: text, Write: write}
		if near != "" {
			f.Edits = finding.Instead(f.At, words[at].text, near)
		}
		found.Add(f)
		return Event{}, false
	}
	for _, w := range words[at+1:] {
		if n, err := strconv.ParseFloat(w.text, 64); err == nil && !e.Number.Set() && len(e.Args) == 0 && n >= 0 && n <= 1e6 {
			e.Number = wrote(n, place(w.from, w.to()))
			continue
		}
		e.Args = append(e.Args, written(w))
	}
	if at, text := misread(&e); text != "" {
		return fail(at, text, logForm)
	}
	return e, true
}

// misread says what is wrong with what stands after the word of a line, or "". A
// count that is passed over would leave animals in the plan that are dead.
func misread(e *Event) (at source.Place, text string) {
	switch e.Word.After {
	case schema.AfterNothing:
		if at, ok := first(e); ok {
			return at, "something stands after " + e.Word.Name + ", which takes nothing but a note in quotes"
		}
	case schema.AfterNumber:
		if len(e.Args) > 0 {
			return e.Args[0].At, "after " + e.Word.Name + " stands how many, such as 3, and nothing else but a note in quotes"
		}
		if e.Number.V != math.Trunc(e.Number.V) {
			return e.Number.At, "animals come whole: after " + e.Word.Name + " stands how many, such as 3"
		}
	case schema.AfterCare:
		if len(e.Args) == 0 {
			return e.WordAt, "after " + e.Word.Name + " stands " + e.Word.After.String()
		}
	}
	return source.Place{}, ""
}

// first returns where the first thing after the word of a line is.
func first(e *Event) (source.Place, bool) {
	if e.Number.Set() {
		return e.Number.At, true
	}
	if len(e.Args) > 0 {
		return e.Args[0].At, true
	}
	return source.Place{}, false
}

type logWord struct {
	text string
	from int
}

func (w logWord) to() int { return w.from + len(w.text) }

// unclosed is the place of a note whose last quote is missing.
const unclosed = -2

// logWords splits a line into its words and the note at its end. The note's place
// is -1 where there is none.
func logWords(line string) (words []logWord, note string, noteAt int) {
	for i := 0; i < len(line); {
		r, n := utf8.DecodeRuneInString(line[i:])
		if r == ' ' || r == '\t' {
			i += n
			continue
		}
		if r == '"' {
			rest := line[i+1:]
			end := strings.LastIndexByte(rest, '"')
			if end < 0 {
				return words, "", unclosed
			}
			if strings.TrimSpace(rest[end+1:]) != "" {
				return words, "", unclosed
			}
			return words, strings.ReplaceAll(rest[:end], `\"`, `"`), i
		}
		j := i
		for j < len(line) && line[j] != ' ' && line[j] != '\t' && line[j] != '"' {
			j++
		}
		words = append(words, logWord{line[i:j], i})
		i = j
	}
	return words, "", -1
}
