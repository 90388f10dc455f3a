package feeds_test

import (
	"bytes"
	"testing"
	"time"

	"vivary/compile/feeds"
	"vivary/internal/oracles"
)

// zones have clock changes of every kind, and none.
var zones = []string{
	"Europe/London", "Europe/Dublin", "America/New_York", "America/Chicago", "America/Santiago", "America/Nuuk",
	"Australia/Sydney", "Australia/Lord_Howe", "Pacific/Auckland", "Africa/Casablanca", "Asia/Jerusalem", "Asia/Kolkata", "UTC",
}

// span is the days for which a calendar is made, in the collection's zone.
func span(loc *time.Location) (from, to time.Time) {
	return today.At(0, loc), (today + feeds.Days).At(0, loc)
}

// within leaves out what begins before a calendar's days, or after them: readers
// are asked about more, since days begin at different times in different zones.
func within(all []oracles.Occurrence, loc *time.Location) []oracles.Occurrence {
	from, to := span(loc)
	var out []oracles.Occurrence
	for _, o := range all {
		form, end := "20060102T150405Z", to
		if len(o.Start) == 8 {
			form, end = "20060102", to.Add(time.Second) // the last entry stands on the day after
		}
		in := loc
		if form != "20060102" {
			in = time.UTC
		}
		at, err := time.ParseInLocation(form, o.Start, in)
		if err == nil && (at.Before(from) || !at.Before(end)) {
			continue
		}
		out = append(out, o)
	}
	return out
}

// unnamed takes the names from entries of care and of states: which days are one series
// is for the tests of two builds.
func unnamed(all []oracles.Occurrence, perRound bool) []oracles.Occurrence {
	for i := range all {
		if !perRound {
			all[i].UID = ""
		}
	}
	oracles.Sort(all)
	return all
}

// TestReadersSeeTheSchedule: three calendar readers that share no code find in
// the calendars of a collection, whatever its zone, each day of each series and
// nothing else.
func TestReadersSeeTheSchedule(t *testing.T) {
	var all [][]byte
	var wants []*expected
	for _, zone := range zones {
		r := compiled(t, everyKind(zone), everyState, today)
		names := []string{"evening", "care"}
		if len(all) == 0 {
			names = []string{"all", "care", "relief"} // readers take their time: once is enough
		}
		for _, name := range names {
			keeper := ""
			if name == "relief" {
				keeper = name
			}
			x := expect(t, r, len(all), name, keeper)
			wants = append(wants, x)
			all = append(all, built(t, r, name, nil))
		}
	}
	from, to := today.At(0, time.UTC).AddDate(0, 0, -1), today.At(0, time.UTC).AddDate(0, 0, feeds.Days+2)
	answers := oracles.Expand(t, all, from, to)
	total := 0
	for reader, answer := range answers {
		for i, x := range wants {
			loc := x.r.Plan.Location
			perRound := x.calendar == "all" || x.calendar == "evening"
			want := unnamed(within(x.list, loc), perRound)
			total += len(want)
			if reason, refused := answer.Refused[i]; refused {
				t.Errorf("%s refuses %s of %s: %s", reader, x.calendar, loc, reason)
			} else if diff := oracles.Differences(want, unnamed(within(answer.Feed(i), loc), perRound)); diff != "" {
				t.Errorf("%s in %s of %s:\n%s", reader, x.calendar, loc, diff)
			}
		}
	}
	t.Logf("%d occurrences in %d calendars", total/len(answers), len(all))
}

// TestLostExdateIsNoticed: a comparison that lets a hold's EXDATE slip would
// prove nothing.
func TestLostExdateIsNoticed(t *testing.T) {
	r := compiled(t, everyKind("Europe/London"), everyState, today)
	x := expect(t, r, 0, "care", "")
	good := built(t, r, "care", nil)
	i := bytes.Index(good, []byte("EXDATE"))
	if i < 0 {
		t.Fatal("no EXDATE in the feed")
	}
	end := i + bytes.Index(good[i:], []byte("\r\n")) + 2
	bad := append(bytes.Clone(good[:i]), good[end:]...)
	loc := r.Plan.Location
	from, to := span(loc)
	for reader, answer := range oracles.Expand(t, [][]byte{bad}, from, to) {
		if oracles.Differences(unnamed(within(x.list, loc), false), unnamed(within(answer.Feed(0), loc), false)) == "" {
			t.Errorf("%s: nothing is missed", reader)
		}
	}
}
