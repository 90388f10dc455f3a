package zone

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"vivary/schema/slip"
)

// UnknownError is the error for a name that is not a zone.
type UnknownError struct {
	// Is is the one zone that is written so but for capitals, blanks or its region: "" for
	// none. Only this can be put in the place of what was written.
	Is string
	// Offered are zones to choose from, never more than a few.
	Offered []string
	text    string
}

// Error says what is wrong with the name.
func (e *UnknownError) Error() string { return e.text }

// offered is the most names that one message lists.
const offered = 6

func unknown(name string, names []string) error {
	switch {
	case strings.TrimSpace(name) == "":
		return &UnknownError{Offered: principal[:offered], text: "no time zone is given"}
	case name == "Local":
		return &UnknownError{Offered: principal[:offered], text: `"Local" would mean a different time on each machine`}
	}
	e := &UnknownError{text: fmt.Sprintf("there is no time zone %q", name)}
	if len(name) > longest {
		e.Offered = principal[:offered]
		return e
	}
	if n := NoPlace(name); n != nil {
		e.text += ": " + n.Says
		e.Offered = n.Zones
		return e
	}
	same, near := alike(name, names)
	switch {
	case len(same) == 1:
		e.Is, e.Offered = same[0], same
		e.text += fmt.Sprintf("; %s is written %q", said(name, same[0]), same[0])
	case len(same) > 1:
		e.Offered = same[:min(offered, len(same))]
		e.text += "; of that name there are several"
	case len(near) > 0:
		e.Offered = near[:min(offered, len(near))]
		e.text += fmt.Sprintf(`; a slip of the keyboard from it %s "%s"`, map[bool]string{true: "is", false: "are"}[len(e.Offered) == 1], strings.Join(e.Offered, `" and "`))
	default:
		e.Offered = inRegion(name)
		e.text += ": the IANA database has the large cities of each country, not every town"
	}
	return e
}

// longest is more than any zone's name has.
const longest = 40

// said is what of a zone was written: the city alone, or all of it.
func said(written, name string) string {
	if fold(written) == fold(name) {
		return "it"
	}
	return "the city's"
}

// alike returns the zones of a name that is written in other capitals, with blanks or
// without its region, and those that are a slip of the keyboard from it. The slip is looked
// for in the city, whatever stands before it: Munich is not Zurich, though most letters of
// the whole are the same.
func alike(written string, names []string) (same, near []string) {
	region, city := parted(written)
	least := slip.Most(city) + 1
	for _, name := range names {
		in, its := parted(name)
		d, off := slip.Between(city, its), slip.Between(region, in)
		switch {
		case region == "" || in == "":
			off = 0
		case off > slip.Most(region):
			continue
		}
		switch d += off; {
		case d == 0:
			same = append(same, name)
		case d < least:
			least, near = d, append(near[:0], name)
		case d == least && len(near) > 0:
			near = append(near, name)
		}
	}
	return same, near
}

// parted returns region and city of a name; what stands between is part of the region.
func parted(name string) (region, city string) {
	name = fold(name)
	i := strings.LastIndexByte(name, '/')
	return name[:max(i, 0)], name[i+1:]
}

// inRegion returns principal zones of the region with which a name begins, or of all.
func inRegion(name string) []string {
	region, _, ok := strings.Cut(fold(name), "/")
	if region == "us" || region == "usa" || region == "canada" {
		region = "america"
	}
	here := slices.DeleteFunc(slices.Clone(principal), func(p string) bool { return !ok || !strings.HasPrefix(fold(p), region+"/") })
	if len(here) == 0 {
		here = []string{"Europe/London", "Europe/Berlin", "America/New_York", "America/Chicago", "America/Los_Angeles", "Australia/Sydney"}
	}
	return here[:min(offered, len(here))]
}

// fold leaves out of a name what nobody hears: capitals, and how its words are parted.
func fold(s string) string {
	return strings.NewReplacer(" ", "", "_", "", "-", "").Replace(strings.ToLower(strings.TrimSpace(s)))
}

// at is the clock of a zone in the middle of a month, in minutes ahead of Greenwich.
func at(loc *time.Location, m time.Month) int {
	_, s := time.Date(2026, m, 15, 12, 0, 0, 0, time.UTC).In(loc).Zone()
	return s / 60
}
