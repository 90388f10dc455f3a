package plan

import (
	"strings"

	"vivary/schema"
	"vivary/schema/quantity"
)

// Taken returns how many of the words that stand behind a word of the log belong to what it
// says: how many, of what, where to. What stands behind those is a note that has lost its
// quotes, as a shell takes them off. Where a note cannot be told from what is said, all of
// them are taken: "moved 2 to tab-7" is a slip and no note.
func (c *Collection) Taken(s *schema.Spelling, words []string) int {
	l, e := &lineReader{}, &Event{Word: s.Word}
	for _, w := range words {
		l.words = append(l.words, logWord{text: w})
	}
	switch s.Word.After {
	case schema.AfterNothing:
		return 0
	case schema.AfterNumber:
		return l.number(e, 0)
	case schema.AfterPrey:
		n := l.number(e, 0)
		return n + c.prey(words[n:])
	case schema.AfterWeight:
		for n := min(2, len(words)); n > 0; n-- {
			if _, err := quantity.Parse(l.text(0, n), quantity.Mass); err == nil {
				return n
			}
		}
	case schema.AfterCare:
		named := 1
		if s.Care != nil {
			named, e.Args = 0, make([]Written[string], 1)
		}
		for n := min(named+2, len(words)); n > named; n-- { // "deep-clean 35 min"
			l.words = l.words[:n]
			if l.took(e, 0) == named && e.Took.Set() {
				return n
			}
		}
		return min(1, len(words))
	case schema.AfterDays:
		return l.days(e, 0)
	case schema.AfterMeasure:
		return l.measured(e, 0)
	case schema.AfterTest:
		return l.tested(e, 0)
	case schema.AfterEnclosure:
		if s.Leaves {
			return l.number(e, 0)
		}
	}
	return len(words)
}

// prey returns with how many words the prey is told that some words begin with.
func (c *Collection) prey(words []string) int {
	for n := len(words); n > 0; n-- {
		if p := c.Library.ByOtherPrey(Prey{Feeder: strings.Join(words[:n], " ")}); len(p.Feeders) > 0 && p.Rest == "" || p.Prey.Feeder != "" {
			return n
		}
	}
	return 0
}
