package compile

import (
	"fmt"
	"strings"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/wording"
)

// Sure counts how well the figures and needs of a species are known. Each is counted once,
// by the quality of what it rests on.
type Sure struct {
	Own     map[string]int // its own, by quality
	Lent    int            // known of its type or of a kin only
	Unknown []string       // what only it can state, or every species needs, and it does not
}

// SureOf counts what a sheet states.
func SureOf(s *plan.SpeciesSheet) Sure {
	sure := Sure{Own: map[string]int{}, Unknown: s.Unsaid()}
	count := func(c plan.Cited) {
		if c.Lent() {
			sure.Lent++
		} else {
			sure.Own[c.Quality.V]++
		}
	}
	for _, f := range s.Figures {
		count(f.Cited)
	}
	for _, n := range s.Needs {
		count(n.Cited)
	}
	return sure
}

// Total is how many of its own it has.
func (s Sure) Total() (n int) {
	for _, of := range s.Own {
		n += of
	}
	return n
}

// qualitiesInWords are how figures of a quality are counted in a sentence.
var qualitiesInWords = map[string]string{
	"paper": "from papers", "guideline": "from institutions", "society": "from zoos, societies and experts", "keeper": "from keepers",
	"own": "from own records", "practice": "common practice", "memory": "from memory",
}

// Line says in one line how sure a species is.
func (s Sure) Line() string {
	var parts []string
	for _, q := range schema.Qualities {
		if n := s.Own[q.Name]; n > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", n, qualitiesInWords[q.Name]))
		}
	}
	line := fmt.Sprintf("How sure: %s of its own", wording.Count(s.Total(), "figure", "figures"))
	if len(parts) > 0 {
		line += " (" + strings.Join(parts, ", ") + ")"
	}
	if s.Lent > 0 {
		line += fmt.Sprintf(", %d known of those that live alike", s.Lent)
	}
	if len(s.Unknown) > 0 {
		line += fmt.Sprintf(", %d not known", len(s.Unknown))
	}
	return line + "."
}
