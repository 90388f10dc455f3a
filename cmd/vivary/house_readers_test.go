package main

import (
	"slices"
	"strings"
	"time"

	"vivary/internal/feedoracle"
	"vivary/internal/oracles"
	"vivary/schema/civil"
)

// readers holds that three calendar programs see in the last feeds what the test has
// judged by.
func (j *judge) readers() {
	const ahead = 21 // days; readers take their time
	var names []string
	var all [][]byte
	for name, text := range j.last {
		names, all = append(names, name), append(all, window(text, j.w.Today, j.w.Today+ahead+1))
	}
	if len(all) == 0 {
		return
	}
	loc := j.r.Plan.Location
	from, to := j.w.Today+1, j.w.Today+1+ahead
	for reader, answer := range oracles.Expand(j, all, from.At(0, loc), to.At(0, loc)) {
		for i, name := range names {
			shown, _, err := feedoracle.Read(name, all[i], from, to)
			if err != nil {
				j.Fatal(err)
			}
			if d := firstDifference(starts(shown, loc), timed(answer.Feed(i), loc, from, to)); d != "" {
				j.Errorf("-house %d: %s sees something else in %s: %s", j.w.Seed, reader, name, d)
			}
		}
	}
}

// starts are the starts of entries with a time, in UTC, each with its UID.
func starts(shown []feedoracle.Occurrence, loc *time.Location) (out []string) {
	for _, o := range shown {
		if o.At == "" {
			continue
		}
		at, err := time.ParseInLocation("2006-01-02 15:04", o.Day.String()+" "+o.At, loc)
		if err != nil {
			panic(err)
		}
		out = append(out, at.UTC().Format("20060102T150405Z")+" "+o.UID)
	}
	slices.Sort(out)
	return out
}

// timed are the same of what a reader saw, on the days from one until another.
func timed(seen []oracles.Occurrence, loc *time.Location, from, until civil.Date) (out []string) {
	for _, o := range seen {
		at, err := time.Parse("20060102T150405Z", o.Start)
		if err != nil {
			continue // a whole day
		}
		if day := civil.FromTime(at.In(loc)); strings.Contains(o.Start, "T") && day >= from && day < until {
			out = append(out, o.Start+" "+o.UID)
		}
	}
	slices.Sort(out)
	return out
}
