package logger

import (
	"fmt"
	"math/rand/v2"
	"os/exec"
	"strings"
	"testing"
	"time"
)

// local writes instants as a logger does that knows no zone.
func local(from time.Time, until time.Time, step time.Duration, drop func(time.Time) bool, show func(time.Time) time.Time) (string, []int64) {
	var b strings.Builder
	b.WriteString("time,temp\n")
	var at []int64
	for t := from; t.Before(until); t = t.Add(step) {
		if drop != nil && drop(t) {
			continue
		}
		shown := t
		if show != nil {
			shown = show(t)
		}
		fmt.Fprintf(&b, "%s,%.1f\n", shown.Format("2006-01-02 15:04"), 20+float64(len(at)%50)/10)
		at = append(at, t.Unix())
	}
	return b.String(), at
}

// The days on which clocks change: how many lines of ten minutes they have, and how many times
// of day stand there twice. The facts are those of the tz database, asked of Python's zoneinfo:
// London, 31 October 2027, 150 lines and 6 twice; 28 March, 138; Melbourne, 4 April, 150.
func TestChangeOfClocks(t *testing.T) {
	for _, c := range []struct {
		zone          string
		year          int
		month         time.Month
		day           int
		lines, repeat int
	}{
		{"Europe/London", 2027, 10, 31, 150, 6},
		{"Europe/London", 2027, 3, 28, 138, 0},
		{"Australia/Melbourne", 2027, 4, 4, 150, 6},
		{"Europe/London", 2027, 6, 1, 144, 0},
		{"Australia/Lord_Howe", 2027, 4, 4, 147, 3}, // half an hour
		{"Asia/Kathmandu", 2027, 4, 4, 144, 0},
	} {
		zone, err := time.LoadLocation(c.zone)
		if err != nil {
			t.Fatal(err)
		}
		day := time.Date(c.year, c.month, c.day, 0, 0, 0, 0, zone)
		text, at := local(day.AddDate(0, 0, -2), day.AddDate(0, 0, 3), 10*time.Minute, nil, nil)
		s, err := Read(strings.NewReader(text), Options{Zone: zone})
		if err != nil {
			t.Fatal(c.zone, err)
		}
		n := 0
		for k, x := range s.Samples {
			if k < len(at) && x.At != at[k] {
				t.Fatalf("%s: line %d is %s, not %s", c.zone, k+2, time.Unix(x.At, 0).In(zone), time.Unix(at[k], 0).In(zone))
			}
			if d := time.Unix(x.At, 0).In(zone); d.Day() == c.day && d.Month() == c.month {
				n++
			}
		}
		if n != c.lines || s.Repeated != c.repeat || len(s.Samples) != len(at) || len(s.Problems) > 0 {
			t.Errorf("%s %d-%d-%d: %d lines of the day, %d twice, %d of %d, %v", c.zone, c.year, c.month, c.day, n, s.Repeated, len(s.Samples), len(at), s.Problems)
		}
		python := fmt.Sprintf(`
from datetime import *; from zoneinfo import ZoneInfo
z=ZoneInfo(%q); a=datetime(%d,%d,%d,tzinfo=z).timestamp(); b=(datetime(%d,%d,%d)+timedelta(days=1)).replace(tzinfo=z).timestamp()
l=[datetime.fromtimestamp(a+600*i,z).strftime("%%H:%%M") for i in range(int((b-a)//600))]
print(len(l), len(l)-len(set(l)))`, c.zone, c.year, c.month, c.day, c.year, c.month, c.day)
		out, err := exec.Command("/usr/bin/python3", "-c", python).CombinedOutput()
		if want := fmt.Sprintf("%d %d\n", c.lines, c.repeat); err != nil || string(out) != want {
			t.Errorf("%s: zoneinfo says %q, %v; the table %q", c.zone, out, err, want)
		}
	}
}

// A logger that drops the hour that comes twice, one that is changed by hand hours late, and
// one that is read while the hour repeats: every line is at its instant.
func TestOtherClocks(t *testing.T) {
	london, _ := time.LoadLocation("Europe/London")
	change := time.Date(2027, 10, 31, 1, 0, 0, 0, time.UTC)
	from, until := change.Add(-30*time.Hour), change.Add(30*time.Hour)
	summer := time.FixedZone("", 3600)
	for name, c := range map[string]struct {
		drop func(time.Time) bool
		show func(time.Time) time.Time
	}{
		"drops the second": {drop: func(t time.Time) bool { return !t.Before(change) && t.Before(change.Add(time.Hour)) }},
		"changed at nine": {show: func(t time.Time) time.Time {
			if t.Before(change.Add(8 * time.Hour)) {
				return t.In(summer)
			}
			return t.UTC()
		}},
		"changed the next evening": {show: func(t time.Time) time.Time {
			if t.Before(change.Add(18 * time.Hour)) {
				return t.In(summer)
			}
			return t.UTC()
		}},
	} {
		for _, step := range []time.Duration{time.Minute, 5 * time.Minute, 10 * time.Minute, 15 * time.Minute, 30 * time.Minute, time.Hour} {
			text, at := local(from.In(london), until, step, c.drop, func(t time.Time) time.Time {
				if c.show != nil {
					return c.show(t)
				}
				return t.In(london)
			})
			s, err := Read(strings.NewReader(text), Options{Zone: london})
			if err != nil {
				t.Fatal(name, err)
			}
			if len(s.Samples) != len(at) || len(s.Problems) > 0 {
				t.Errorf("%s, %s: %d of %d lines, %v", name, step, len(s.Samples), len(at), s.Problems)
				continue
			}
			for k, x := range s.Samples {
				if x.At != at[k] {
					t.Errorf("%s, %s: line %d is %s, not %s", name, step, k+2, time.Unix(x.At, 0).UTC(), time.Unix(at[k], 0).UTC())
					break
				}
			}
		}
	}
	// In spring one that is not changed until the next day shows an hour that there is not.
	change = time.Date(2027, 3, 28, 1, 0, 0, 0, time.UTC)
	text, at := local(change.Add(-5*time.Hour), change.Add(50*time.Minute), 10*time.Minute, nil, func(t time.Time) time.Time { return t.UTC() })
	s, err := Read(strings.NewReader(text), Options{Zone: london})
	if err != nil || len(s.Problems) > 0 || s.Samples[len(s.Samples)-1].At != at[len(at)-1] {
		t.Errorf("spring: %v %+v", err, s.Problems)
	}
}

// A logger that is never changed shows in spring an hour that there is not: its zone is asked
// for, and with it every line is at its instant.
func TestClockNeverChanged(t *testing.T) {
	london, _ := time.LoadLocation("Europe/London")
	from := time.Date(2027, 3, 1, 0, 0, 0, 0, time.UTC)
	text, at := local(from, from.AddDate(0, 9, 0), 10*time.Minute, nil, nil)
	if _, err := Read(strings.NewReader(text), Options{Zone: london}); err == nil || !strings.Contains(err.Error(), "--zone UTC") {
		t.Errorf("%v", err)
	}
	s, err := Read(strings.NewReader(text), Options{Zone: time.UTC})
	if err != nil || len(s.Samples) != len(at) || s.Samples[len(at)-1].At != at[len(at)-1] {
		t.Errorf("%v", err)
	}
	oslo, _ := time.LoadLocation("Europe/Oslo")
	if _, err := Read(strings.NewReader(text), Options{Zone: oslo}); err == nil || !strings.Contains(err.Error(), "--zone Etc/GMT-1") {
		t.Errorf("%v", err)
	}
	if _, err := time.LoadLocation("Etc/GMT-1"); err != nil {
		t.Error(err)
	}
}

// A clock that falls back where none is changed is said, with its line, and what is later is
// read on.
func TestClockFallsBack(t *testing.T) {
	text := "time,temp\n2027-06-01 10:00,20\n2027-06-01 10:10,21\n2027-06-01 10:20,22\n2027-06-01 09:50,23\n2027-06-01 10:00,23\n2027-06-01 10:30,24\n2027-06-01 10:40,25\n"
	london, _ := time.LoadLocation("Europe/London")
	s, err := Read(strings.NewReader(text), Options{Zone: london})
	if err != nil {
		t.Fatal(err)
	}
	if len(s.Samples) != 5 || s.Passed != 2 || len(s.Problems) != 2 || s.Problems[0].Line != 5 || !strings.Contains(s.Problems[0].Text, "goes back") {
		t.Errorf("%d samples, %+v", len(s.Samples), s.Problems)
	}
	// Set after it began: what stands before is left out.
	text = "time,temp\n2010-01-01 00:00,20\n2010-01-01 00:10,20\n"
	for k := range 20 {
		text += time.Date(2027, 6, 1, 10, 10*k, 0, 0, time.UTC).Format("2006-01-02 15:04") + ",21\n"
	}
	s, err = Read(strings.NewReader(text), Options{})
	if err != nil || len(s.Samples) != 20 || len(s.Problems) != 1 || !strings.Contains(s.Problems[0].Text, "was set here") {
		t.Errorf("%v %+v", err, s)
	}
}

// Whatever year, zone and step, with lines lost at random: nothing is at another instant, but
// for the lines around an hour of which all of one of its times was lost.
func TestClocksAtRandom(t *testing.T) {
	zones := []string{"Europe/London", "America/New_York", "Australia/Melbourne", "America/Sao_Paulo", "Asia/Tokyo", "Pacific/Auckland", "America/St_Johns"}
	for seed := range uint64(60) {
		r := rand.New(rand.NewPCG(seed, 4))
		zone, _ := time.LoadLocation(zones[r.IntN(len(zones))])
		from := time.Date(2010+r.IntN(25), 1, 1+r.IntN(300), r.IntN(24), 0, 0, 0, zone)
		step := time.Duration(1+r.IntN(20)) * time.Minute
		text, at := local(from, from.AddDate(0, 4, 0), step, func(time.Time) bool { return r.IntN(40) == 0 }, nil)
		s, err := Read(strings.NewReader(text), Options{Zone: zone})
		if err != nil {
			t.Fatal(seed, err)
		}
		if len(s.Samples) != len(at) || len(s.Problems) > 0 {
			t.Errorf("seed %d, %s from %s: %d of %d, %v", seed, zone, from, len(s.Samples), len(at), s.Problems)
			continue
		}
		off := 0
		for k, x := range s.Samples {
			if x.At != at[k] {
				off++
			}
		}
		if off > 0 {
			t.Errorf("seed %d, %s from %s: %d lines are at another instant", seed, zone, from, off)
		}
	}
}
