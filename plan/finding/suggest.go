package finding

import (
	"slices"
	"strings"

	"github.com/agext/levenshtein"
)

// Suggest returns the name in known that is nearest to the one written, or ""
// where none is near: more than half of its letters would have to change. Every
// look-up of a name in a plan uses it. Zones and units have look-ups of their own,
// since for them more is known of what people mean.
func Suggest(written string, known []string) string {
	best, least := "", len([]rune(written))/2+1
	if least > 32 {
		return ""
	}
	low := strings.ToLower(written)
	for _, k := range known {
		if d := distance(low, strings.ToLower(k)); d < least {
			best, least = k, d
		}
	}
	return best
}

// distance is how many letters differ; two in each other's place are one slip.
func distance(a, b string) int {
	d := levenshtein.Distance(a, b, nil)
	if d != 2 {
		return d
	}
	x, y := []rune(a), []rune(b)
	slices.Sort(x)
	slices.Sort(y)
	if slices.Equal(x, y) {
		return 1
	}
	return d
}

// Near is Suggest for what is written into a log, where a wrong guess that is taken
// changes calendars for months: a third of the letters may differ at the most, or two of
// them stand in each other's place.
func Near(written string, known []string) string {
	near := Suggest(written, known)
	low, other := strings.ToLower(written), strings.ToLower(near)
	if d := distance(low, other); d <= len([]rune(low))/3 || d == 1 && levenshtein.Distance(low, other, nil) == 2 {
		return near
	}
	return ""
}
