package plan

import (
	"bytes"
	"strconv"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// Event is one line of a log.
type Event struct {
	At        source.Place
	Date      civil.Date
	Clock     Written[civil.Clock] // the time of day, where one is written
	By        Written[string]      // the keeper who wrote it, where one is named
	Enclosure Written[string]
	Keeper    Written[string] // of a line about one of the people, in place of an enclosure
	Deadline  Written[string] // of a line about a date of the house, in place of an enclosure
	Group     Written[string] // empty for a line about the whole enclosure
	Word      *schema.LogWord
	WordAt    source.Place // the word as it is written, which may be several
	// Number is the number after the word, where there is one: animals, prey, a weight
	// without its unit, or the days of a treatment.
	Number Written[float64]
	// Sexes is that number by sexes, where it is written so; else it is zero.
	Sexes quantity.Count
	// Args is what else stands after the word; of a move or a separation, the enclosure
	// and then the animals that were joined there; of a measurement, its quantities.
	Args []Written[string]
	// Test is what a line says of a test of a gauge; nil for any other line.
	Test *GaugeTest
	// Took is how long it took, where a line that care was done says so.
	Took Written[quantity.Quantity]
	Note string

	where []string // of the quantities of a measurement

	// either is the first word after the enclosure, where it can be the animals as well
	// as the word: which of them is known once the enclosure is.
	either Written[string]
	// said is what is wrong with the line though it is used; it is not said of a line
	// that is taken back.
	said []finding.Finding
	// quiet says that it is one of so many lines that nothing is said of it.
	quiet bool
}

// Where returns where the quantity at a place of Args was measured: one of
// schema.MeasuredAt, or "" where the line does not say.
func (e *Event) Where(i int) string {
	if i >= len(e.where) {
		return ""
	}
	return e.where[i]
}

// parseLog reads the lines of a log. A line is a day, a time and a keeper where they
// are written, an enclosure, the animals where there are several, a word, what the
// word needs, and a note in quotes:
//
//	2026-11-02 burrow-a young moult "left alone"
//	2026-11-02 19:42 by lead burrow-a young moved 2 to tub-7
//	2026-11-02 keeper lead away "ill"
//
// Empty lines and those that begin with # are passed over. A line that cannot be read
// is found as such and hides no other. Whether enclosure and animals exist is found
// later, when all files have been read.
func parseLog(id source.ID, text []byte) ([]Event, []finding.Finding) {
	var events []Event
	var found finding.List
	start, more, unsure := 0, 0, 0
	if bytes.HasPrefix(text, byteOrderMark) {
		start = len(byteOrderMark)
	}
	ends := "\n"
	if f := loneReturn(text); f != nil {
		ends = "\r\n" // either ends a line
		f.At.File = id
		f.Text, f.Write = "lines end in a carriage return alone from here on; they are read", ""
		found.Soft(*f, finding.Advice)
	}
	for start < len(text) {
		end := len(text)
		if i := bytes.IndexAny(text[start:], ends); i >= 0 {
			end = start + i
		}
		line := strings.TrimRight(string(text[start:end]), "\r")
		e, wrong := readLine(id, start, line, unsure > MaxFound, nil)
		switch {
		case wrong != nil:
			if more++; more <= MaxFound {
				found.Add(*wrong)
			}
		case e != nil && e.Word == schema.WordRemark && (unsure > MaxFound || e.said != nil):
			if unsure++; unsure > MaxFound {
				e.said, e.quiet = nil, true
			}
			events = append(events, *e)
		case e != nil:
			events = append(events, *e)
		}
		start = end + 1
	}
	if more > MaxFound {
		found.Add(*wrongLine(found.All[len(found.All)-1].At, strconv.Itoa(more-MaxFound)+" more lines of this log cannot be read; all others count", logForm))
	}
	if unsure > MaxFound {
		last := events[len(events)-1].At
		found.Add(finding.Finding{Rule: ruleLogWord, At: last, Text: "many more lines of this log are taken as remarks, from which nothing follows: put right those that are told, and look again", Write: logForm})
	}
	return events, found.All
}

// byteOrderMark is what some editors begin a UTF-8 file with.
var byteOrderMark = []byte("\ufeff")

// ParseLogLine reads one line as the first of a file. The text of the finding says
// what is wrong with it.
func ParseLogLine(id source.ID, line string) (Event, []finding.Finding) {
	e, wrong := readLine(id, 0, line, false, nil)
	switch {
	case wrong != nil:
		return Event{}, []finding.Finding{*wrong}
	case e == nil:
		return Event{}, nil
	}
	return *e, e.said
}

// Blank reports whether a line of a log says nothing: it is empty or a comment.
func Blank(line string) bool {
	line = strings.TrimSpace(line)
	return line == "" || line[0] == '#'
}
