package compile

import (
	"fmt"
	"slices"
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

// Gap is a figure of which little is known over all species.
type Gap struct {
	Figure *schema.Figure
	By     map[string]int // how many species have it, by the best quality of theirs
	Lent   int            // how many have it of their type only
	None   int            // how many do not have it
}

// Weak is how many species have nothing better than practice or memory, or nothing.
func (g Gap) Weak() int { return g.By["practice"] + g.By["memory"] + g.Lent + g.None }

// Gaps counts, for each figure, how well it is known over the built-in species.
func Gaps(lib *plan.Library) []Gap {
	var all []Gap
	for _, what := range schema.Figures {
		g := Gap{Figure: what, By: map[string]int{}}
		for _, name := range lib.SpeciesNames() {
			best, lent := len(schema.Qualities), false
			lib.Species(name).Each(what, func(f *plan.Figure) {
				if f.Lent() {
					lent = true
					return
				}
				best = min(best, slices.IndexFunc(schema.Qualities, func(q schema.Choice) bool { return q.Name == f.Quality.V }))
			})
			switch {
			case best < len(schema.Qualities):
				g.By[schema.Qualities[best].Name]++
			case lent:
				g.Lent++
			default:
				g.None++
			}
		}
		all = append(all, g)
	}
	return all
}
