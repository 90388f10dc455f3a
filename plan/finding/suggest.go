package finding

import (
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
