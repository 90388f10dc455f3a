package zone

import (
	"slices"
	"strings"
	"testing"
	"time"
)

// Every zone that is offered, or is said to be of the United States, is one of the archive.
func TestOfferedZonesLoad(t *testing.T) {
	all := append(slices.Clone(principal), strings.Fields(customary)...)
	for _, l := range letters {
		all = append(all, strings.Fields(l.zones)...)
	}
	for _, name := range all {
		if _, err := Load(name); err != nil {
			t.Error(err)
		}
	}
	for _, name := range Names() {
		if strings.HasPrefix(name, "US/") && !Customary(name) {
			t.Errorf("%s is not of the United States", name)
		}
	}
	for _, name := range []string{"Europe/London", "America/Toronto", "UTC", ""} {
		if Customary(name) {
			t.Errorf("%q is of the United States", name)
		}
	}
}

// What is offered for a distance from Greenwich has clocks at that distance in January or
// July, and never at the opposite one: the signs of Etc/GMT are turned round, and nothing is
// taken for another that is two hours off. The distances are the archive's own.
func TestOffsets(t *testing.T) {
	for _, c := range []struct {
		written string
		minutes int
		none    bool
	}{
		{"GMT+1", 60, false}, {"UTC+1", 60, false}, {"+1", 60, false}, {"+01:00", 60, false}, {"UTC+0100", 60, false}, {"gmt +1", 60, false}, {"GMT-1", -60, false},
		{"UTC−5", -300, false}, {"GMT-5", -300, false}, {"UTC+5:30", 330, false}, {"UTC+2h", 120, false}, {"Etc/GMT+1", -60, false}, {"Etc/GMT-1", 60, false}, {"UTC+13", 780, false},
		{"UTC+99", 0, true}, {"1", 0, true}, {"GMT1", 0, true}, {"Europe/London", 0, true}, {"", 0, true}, {"UTC", 0, true},
	} {
		o := NoPlace(c.written)
		if c.none != (o == nil) {
			t.Errorf("%s: %+v", c.written, o)
			continue
		}
		if c.none {
			continue
		}
		if len(o.Zones) == 0 || len(o.Zones) > offered || !o.Fixed {
			t.Errorf("%s: %+v", c.written, o)
		}
		for _, name := range o.Zones {
			loc, err := Load(name)
			if err != nil || at(loc, time.January) != c.minutes && at(loc, time.July) != c.minutes {
				t.Errorf("%s: %s is offered, %v", c.written, name, err)
			}
		}
	}
	if o := NoPlace("Etc/GMT+1"); !strings.Contains(o.Says, "one hour behind Greenwich") || !strings.Contains(o.Says, "turned round") {
		t.Error(o.Says)
	}
}

// Letters are said for what they are, and those that mean several countries offer each.
func TestLetters(t *testing.T) {
	for written, want := range map[string]string{
		"EST": "America/New_York Australia/Sydney", "CST": "America/Chicago Asia/Shanghai America/Havana", "IST": "Asia/Kolkata Asia/Jerusalem Europe/Dublin",
		"BST": "Europe/London", "CET": "Europe/Berlin", "cest": "Europe/Berlin", "PST": "America/Los_Angeles", "UK": "Europe/London", "AEST": "Australia/Sydney Australia/Brisbane",
		"GMT": "Europe/London Africa/Abidjan",
	} {
		o := NoPlace(written)
		if o == nil {
			t.Errorf("%s means nothing", written)
			continue
		}
		for _, name := range strings.Fields(want) {
			if !slices.Contains(o.Zones, name) {
				t.Errorf("%s: %v, want %s", written, o.Zones, name)
			}
		}
	}
	seen := map[string]bool{}
	for _, l := range letters {
		for _, n := range strings.Fields(l.names) {
			if seen[strings.ToLower(n)] {
				t.Errorf("%s stands twice", n)
			}
			seen[strings.ToLower(n)] = true
			loc, err := Load(n)
			if fixed := err == nil && at(loc, time.January) == at(loc, time.July); fixed != l.fixed && err == nil {
				t.Errorf("%s: changes its clock: %v", n, !fixed)
			}
		}
	}
}
