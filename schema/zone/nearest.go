package zone

import (
	"fmt"
	"strings"

	"github.com/agext/levenshtein"
)

// offered is the most names that one message suggests.
const offered = 3

// UnknownError is the error for a name that is not a zone.
type UnknownError struct {
	Near []string // the zones that may be meant
	text string
}

// Error says what is wrong with the name.
func (e *UnknownError) Error() string { return e.text }

func unknown(name string, names []string) error {
	switch near := nearest(name, names); {
	case strings.TrimSpace(name) == "":
		return fmt.Errorf(`no time zone is given: write region and city, for example "Europe/London"`)
	case name == "Local":
		return fmt.Errorf(`"Local" would mean a different time on each machine: write region and city, for example "Europe/London"`)
	case len(near) > 0:
		return &UnknownError{near, fmt.Sprintf(`there is no time zone %q: did you mean "%s"?`, name, strings.Join(near, `" or "`))}
	default:
		return fmt.Errorf(`there is no time zone %q: write region and city as the IANA database has them, for example "Europe/London"`, name)
	}
}

// nearest returns the names closest to what was written, in the order of names.
// The city alone will do, and case and spaces do not count.
func nearest(written string, names []string) []string {
	written = fold(written)
	// Short ones are abbreviations such as BST, near to everything and meaning
	// nothing. No zone's name is as long as 40.
	if len(written) < 2 || len(written) > 40 {
		return nil
	}
	best := 0
	if len(written) > 4 {
		best = max(1, len(written)/5)
	}
	var near []string
	for _, name := range names {
		full := fold(name)
		d := levenshtein.Distance(written, full, nil)
		if i := strings.IndexByte(full, '/'); i >= 0 {
			d = min(d, levenshtein.Distance(written, full[i+1:], nil))
			d = min(d, levenshtein.Distance(written, full[strings.LastIndexByte(full, '/')+1:], nil))
		}
		switch {
		case d < best:
			best, near = d, append(near[:0], name)
		case d == best && len(near) < offered:
			near = append(near, name)
		}
	}
	return near
}

func fold(s string) string {
	return strings.ToLower(strings.ReplaceAll(strings.TrimSpace(s), " ", "_"))
}
