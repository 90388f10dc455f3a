package horizon_test

import (
	"testing"

	"vivary/compile/horizon"
	"vivary/schema/civil"
)

// On which days something comes is said in words that are the same tomorrow.
func TestOften(t *testing.T) {
	today := civil.Must(2027, 3, 2) // a Tuesday
	all := func(civil.Date) bool { return true }
	for _, c := range []struct {
		name string
		on   func(civil.Date) bool
		want string
	}{
		{"never", func(civil.Date) bool { return false }, ""},
		{"every day", all, ""},
		{"once", func(d civil.Date) bool { return d == today+30 }, "on Thu 1 Apr 2027"},
		{"on a weekday", func(d civil.Date) bool { return d.Weekday() == 1 }, "on Mondays"},
		{"on two", func(d civil.Date) bool { return d.Weekday()%3 == 1 && d.Weekday() < 5 }, "on Mondays and Thursdays"},
		{"on every second", func(d civil.Date) bool { return d.Weekday() == 0 && int(d)/7%2 == 0 }, "on some Sundays"},
		{"every third day", func(d civil.Date) bool { return int(d)%3 == 0 }, "on some days"},
		{"all but Sunday", func(d civil.Date) bool { return d.Weekday() != 0 }, "on most days"},
		{"an absence", func(d civil.Date) bool { return d >= today+10 && d < today+20 }, "from Fri 12 Mar 2027 to Sun 21 Mar 2027"},
		{"one that goes on", func(d civil.Date) bool { return d < today+20 }, "until Sun 21 Mar 2027"},
	} {
		for k := range civil.Date(19) {
			h := horizon.Around(today+k, 400)
			days := h.New()
			for i := range h.Days {
				if c.on(h.Date(i)) {
					days.Add(i)
				}
			}
			if got := h.Often(days); got != c.want && (k < 10 || c.name != "an absence") {
				t.Errorf("%s, %d days later: %q, want %q", c.name, k, got, c.want)
			}
		}
	}
}
