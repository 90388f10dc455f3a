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
		if d := levenshtein.Distance(low, strings.ToLower(k), nil); d < least {
			best, least = k, d
		}
	}
	return best
}

// Near is Suggest for what is written into a log, where a wrong guess that is taken
// changes calendars for months: a third of the letters may differ at the most, or two of
// them stand in each other's place.
func Near(written string, known []string) string {
	near := Suggest(written, known)
	low, other := []rune(strings.ToLower(written)), []rune(strings.ToLower(near))
	d := levenshtein.Distance(string(low), string(other), nil)
	if d <= len(low)/3 {
		return near
	}
	slices.Sort(low)
	slices.Sort(other)
	if d == 2 && slices.Equal(low, other) {
		return near
	}
	return ""
}
