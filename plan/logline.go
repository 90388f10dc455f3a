package plan

import (
	"slices"
	"strings"
	"unicode/utf8"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/syntax"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/slip"
)

const logForm = `day, enclosure, animals, word, note: 2026-11-02 burrow-a young moult "left alone"`

// lineReader reads one line.
type lineReader struct {
	id    source.ID
	start int // of the line in its file
	line  string
	words []logWord
	// brief says that enough has been told of the log: what is meant by a word is not looked for.
	brief bool
	// animals reports whether the enclosure has animals of that name; nil where that is
	// not known yet.
	animals func(string) bool
}

// readLine reads a line that begins at start. It returns nothing for a line that says
// nothing, and what is wrong for one that cannot be used. brief says that nobody will be told
// what is said of it.
func readLine(id source.ID, start int, line string, brief bool, animals func(string) bool) (*Event, *finding.Finding) {
	if Blank(line) {
		return nil, nil
	}
	l := &lineReader{id: id, start: start, line: line, brief: brief, animals: animals}
	words, note, noteAt := logWords(line)
	l.words = words
	whole := l.place(0, len(line))
	switch {
	case !utf8.ValidString(line):
		return nil, wrongLine(whole, "the line holds bytes that are not UTF-8 text", "the line anew, saved as UTF-8")
	case strings.ContainsFunc(line, hidden):
		return nil, wrongLine(whole, "the line holds a character that cannot be seen", "the line anew, with plain letters")
	case noteAt == unclosed:
		return nil, wrongLine(whole, "the note is never closed: its \" is missing", logForm)
	case noteAt == followed:
		return nil, wrongLine(whole, "something stands after the note, which is the last in a line", logForm)
	}
	e := &Event{At: whole, Note: note}
	at, wrong := l.head(e)
	if wrong == nil && !l.keeper(e, at) && !l.deadline(e, at) {
		wrong = l.rest(e, at, noteAt >= 0)
	}
	if wrong != nil {
		return nil, wrong
	}
	return e, nil
}

func wrongLine(at source.Place, text, write string) *finding.Finding {
	return &finding.Finding{Rule: ruleLogLine, At: at, Text: text, Write: write}
}

func (l *lineReader) place(from, to int) source.Place {
	return source.Place{File: l.id, Start: int32(l.start + from), End: int32(l.start + to)}
}

// span is the place of the words from one to the one before another.
func (l *lineReader) span(from, to int) source.Place {
	return l.place(l.words[from].from, l.words[to-1].to())
}

func (l *lineReader) written(i int) Written[string] {
	return wrote(l.words[i].text, l.span(i, i+1))
}

// head reads day, time, keeper and enclosure, and returns where the rest begins.
func (l *lineReader) head(e *Event) (at int, wrong *finding.Finding) {
	short := wrongLine(e.At, "a line of the log needs a day, an enclosure and a word", logForm)
	if len(l.words) == 0 {
		return 0, short
	}
	var err error
	if e.Date, err = civil.Parse(l.words[0].text); err != nil {
		if syntax.IsConflict([]byte(l.line)) {
			return 0, wrongLine(e.At, "git could not merge this log, and left both sides here, between such lines: those of both count", "the log without this line; where git is to merge logs by itself, *.care.log merge=union in .gitattributes")
		}
		return 0, wrongLine(l.span(0, 1), err.Error(), "a day such as 2026-11-02")
	}
	at = 1
	if at < len(l.words) && strings.Contains(l.words[at].text, ":") {
		clock, err := civil.ParseClock(l.words[at].text)
		if err != nil {
			return 0, wrongLine(l.span(at, at+1), err.Error(), "a time such as 19:42, or none")
		}
		e.Clock = wrote(clock, l.span(at, at+1))
		at++
	}
	if at < len(l.words) && l.words[at].text == "by" {
		if at+2 >= len(l.words) {
			return 0, wrongLine(e.At, "after by stands the keeper who wrote the line, and then the enclosure", logForm)
		}
		e.By = l.written(at + 1)
		at += 2
	}
	if at >= len(l.words) {
		return 0, short
	}
	e.Enclosure = l.written(at)
	return at + 1, nil
}

// rest reads animals, word and what stands after it. The first word may be the
// animals: it is where only the second is a word of the log, or where the enclosure
// has animals of that name.
func (l *lineReader) rest(e *Event, at int, noted bool) *finding.Finding {
	if at == len(l.words) {
		if !noted {
			return wrongLine(e.At, "a line of the log needs a day, an enclosure and a word", logForm)
		}
		return l.wordless(e)
	}
	spelled, n := l.spelled(at)
	second, m := l.spelled(at + 1)
	if at+1 < len(l.words) || noted {
		e.either = l.written(at)
	}
	animals := spelled == nil && second != nil
	if l.animals != nil && e.either.Set() && l.animals(e.either.V) {
		animals = true
	}
	if animals {
		e.Group = l.written(at)
		at, spelled, n = at+1, second, m
	}
	switch {
	case at == len(l.words) && noted:
		return l.wordless(e)
	case at == len(l.words):
		return wrongLine(e.At, "a line of the log needs a word: what was seen or done", logForm)
	case spelled == nil:
		l.unknown(e, at)
		return nil
	}
	e.WordAt = l.span(at, at+n)
	if spelled.Asked() {
		l.asked(e, spelled)
		return nil
	}
	e.Word = spelled.Word
	if spelled.Care != nil {
		e.Args = []Written[string]{wrote(spelled.Care.Name, e.WordAt)}
	}
	l.after(e, at+n)
	text, where := misread(e, spelled)
	if text != "" {
		e.remark(*wrongLine(where, text, l.quoted(at+n)))
	}
	if e.Word == schema.WordSeen && e.Number.Set() {
		e.Word = schema.WordCounted
	}
	return nil
}

func (l *lineReader) spelled(at int) (*schema.Spelling, int) {
	if at >= len(l.words) {
		return nil, 0
	}
	var words []string
	for _, w := range l.words[at:min(at+schema.LongestSpelling, len(l.words))] {
		words = append(words, w.text)
	}
	return schema.Spelled(words)
}

// quoted is the form of a line; where plain words stand after the word, the same line
// with these in quotes.
func (l *lineReader) quoted(at int) string {
	if at >= len(l.words) || strings.Contains(l.line, `"`) {
		return logForm
	}
	return l.line[:l.words[at].from] + `"` + l.line[l.words[at].from:] + `", if that is a note`
}

// remark makes a remark of a line: it is kept, and nothing follows from it.
func (e *Event) remark(f finding.Finding) {
	e.Word = schema.WordRemark
	var found finding.List
	found.Add(f)
	e.said = append(e.said, found.All...)
}

func (l *lineReader) wordless(e *Event) *finding.Finding {
	e.WordAt = e.At
	e.remark(finding.Finding{Rule: ruleLogWord, At: e.At,
		Text: "the line has a note and no word of the log: it is a remark, from which nothing follows", Write: "remark, or the word that is meant, before the note"})
	return nil
}

func (l *lineReader) asked(e *Event, s *schema.Spelling) {
	e.remark(finding.Finding{Rule: ruleLogAsked, At: e.WordAt,
		Text:  quote(s.Text) + " may mean several things: " + s.Hint + " Until it is answered it is a remark, from which nothing follows",
		Write: "instead, one of: " + strings.Join(s.May, ", ")})
}

// unknown says of which word it is not known what it means: the third or the fourth, of
// which one may be the animals. What it may be a slip for is said in words, and never
// written in its place: a word that is taken changes calendars for months.
func (l *lineReader) unknown(e *Event, at int) {
	if l.brief {
		e.WordAt, e.Word = l.span(at, at+1), schema.WordRemark
		return
	}
	word := l.words[at].text
	near := nearWord(word)
	text := quote(word) + " is not a word of the log"
	if !e.Group.Set() && at+1 < len(l.words) {
		next := l.words[at+1].text
		stage := slices.ContainsFunc(schema.Stages, func(c schema.Choice) bool { return c.Name == word })
		if n := nearWord(next); n != nil {
			at, word, near = at+1, next, n
			text = quote(word) + " is not a word of the log"
		} else if stage {
			near = nil // animals are often named by their stage: "adult" is not meant as "moult"
		}
		if near == nil {
			text = "neither " + quote(l.words[at].text) + " nor " + quote(next) + " is a word of the log"
		}
	}
	e.WordAt = l.span(at, at+1)
	f := finding.Finding{Rule: ruleLogWord, At: e.WordAt, Text: text, Write: "the word that is meant: " + logWordList}
	if near == nil {
		f.Text += "."
	} else {
		f.Text += ": did you mean " + near.Text
		if !strings.EqualFold(near.Text, near.Means()) {
			f.Text += ", which is " + near.Means()
		}
		f.Text += "?"
		f.Write = near.Means() + ", if that was seen or done; else one of the others: " + logWordList
	}
	f.Text += " Until then it is a remark, from which nothing follows"
	e.remark(f)
}

// adds are ends of a word that change nothing of what was seen. Others do: a moult-soon is
// no moult, and a left-claw is no meal left.
var adds = []string{"-again", "-today", "-now", "-well", "-ok"}

// nearWord returns the spelling that a slip of the keyboard is meant for, or nil where
// there is none, or there are several that do not mean the same.
func nearWord(word string) *schema.Spelling {
	for _, end := range adds {
		if begin, cut := strings.CutSuffix(strings.ToLower(word), end); cut && begin != "" {
			word = begin
		}
	}
	if len(word) < 4 {
		return nil // of three letters another is mostly another word
	}
	meaning := func(text string) *schema.Spelling {
		s, _ := schema.Spelled(strings.Fields(text))
		return s
	}
	near := slip.Among(word, spellings, func(a, b string) bool { return meaning(a).Same(meaning(b)) })
	if s := meaning(near); s != nil && !s.Asked() {
		return s
	}
	return nil
}

// spellings are the texts of schema.Spellings.
var spellings = func() (all []string) {
	for i := range schema.Spellings {
		all = append(all, schema.Spellings[i].Text)
	}
	return all
}()

// logWordList are the words of the log, in the order in which the schema lists them: what
// is alike stands together there.
var logWordList = strings.Join(logWordNames(), ", ")

func logWordNames() (all []string) {
	for _, w := range schema.LogWords {
		all = append(all, w.Name)
	}
	return all
}

type logWord struct {
	text string
	from int
}

func (w logWord) to() int { return w.from + len(w.text) }

// The places of notes that cannot be read.
const (
	unclosed = -2 // the last quote is missing
	followed = -3 // something stands after it
)

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
				return words, "", followed
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
