package tasks_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/ical"
	"vivary/compile/tasks"
	"vivary/internal/planned"
	"vivary/internal/randomplan"
	"vivary/schema/civil"
)

const house = `collection "c" {
  time_zone = "Europe/London"
}

keeper "lead" {
}

keeper "relief" {
}

round "morning" {
  at = "08:00"
}

round "evening" {
  at     = "19:30"
  keeper = "lead"
}

room "east" {
  temperature = "22 to 25 C"
}

enclosure "tub" {
  title   = "Tub"
  numbers = "1 to 3"
  species = "pandinus-imperator"
  room    = "east"

  housing {
    inside = "60 x 45 x 40 cm"
    lid    = "solid, latched"
    vents  = "some"
    depth  = "16 cm"
    hides  = 1
  }

  care "water" {
    every = "1 day"
    round = ["morning", "evening"]
  }

  care "spot-clean" {
    every = "1 day"
    round = "evening"
  }

  feeding "adult" {
    on         = ["wed"]
    prey       = "cricket adult"
    per_animal = 2
    round      = "evening"
  }

  animals "adult" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 118"
  }
}
`

var evening = time.Date(2026, 11, 25, 20, 0, 0, 0, time.UTC)

func compiled(t *testing.T, text, log string, now time.Time) *compile.Result {
	t.Helper()
	c, found := planned.Files(t, planned.With(text, log))
	r := compile.Compile(c, found, now)
	if r.Roster == nil {
		t.Fatal("the plan is not understood:", found)
	}
	return r
}

// ticked is the task of a title as an app returns it: done at a moment.
func ticked(t *testing.T, all []ical.Todo, title string, at time.Time) ical.Seen {
	t.Helper()
	for _, x := range all {
		if strings.Contains(x.Summary, title) {
			return ical.Seen{UID: x.UID, Summary: x.Summary, Description: x.Description, Start: x.Start, Done: true, At: at}
		}
	}
	var have []string
	for _, x := range all {
		have = append(have, x.Summary)
	}
	t.Fatalf("no task %q: %q", title, have)
	return ical.Seen{}
}

// said are the lines that facts are.
func said(facts []tasks.Fact) (all []string) {
	for _, f := range facts {
		s := f.Day.String()
		if f.Clock != nil {
			s += " " + f.Clock.String()
		}
		if f.By != "" {
			s += " by " + f.By
		}
		s += " " + f.Enclosure
		if f.Group != "" {
			s += " " + f.Group
		}
		all = append(all, strings.Join(append([]string{s, f.Word.Name}, f.Args...), " "))
	}
	return all
}

// TestSaid: what a tick says is what was done, when, and by whom, as far as that can be so.
func TestSaid(t *testing.T) {
	const day = 24 * time.Hour
	for name, x := range map[string]struct {
		title string
		at    time.Time // of the tick
		now   time.Time // when it is read
		log   string
		want  string
	}{
		"in time":                     {"Spot clean", evening.Add(-18 * time.Minute), evening, "", "2026-11-25 19:42 by lead tub-N done spot-clean"},
		"a meal":                      {"Feed", evening.Add(-18 * time.Minute), evening, "", "2026-11-25 19:42 by lead tub-N adult fed"},
		"without a time":              {"Spot clean", time.Time{}, evening, "", "2026-11-25 by lead tub-N done spot-clean"},
		"after midnight":              {"Spot clean", evening.Add(5 * time.Hour), evening.Add(6 * time.Hour), "", "2026-11-25 by lead tub-N done spot-clean"},
		"a phone that is years ahead": {"Spot clean", evening.Add(2000 * day), evening, "", "2026-11-25 by lead tub-N done spot-clean"},
		"a phone that is years back":  {"Spot clean", evening.Add(-2000 * day), evening, "", "2026-11-25 by lead tub-N done spot-clean"},
		"a phone that is ahead":       {"Spot clean", evening.Add(time.Hour), evening, "", "2026-11-25 by lead tub-N done spot-clean"},
		"called off":                  {"-Spot clean", evening, evening, "", "2026-11-25 by lead tub-N skipped spot-clean"},
		"a meal called off":           {"-Feed", evening, evening, "", "2026-11-25 by lead tub-N adult skipped feed"},
		"called off, and noted":       {"-Spot clean", evening, evening, "2026-11-25 tub-1 done spot-clean\n2026-11-25 tub-2 done spot-clean\n2026-11-25 tub-3 done spot-clean\n", ""},
		"done before its day":         {"Spot clean", evening.Add(-day), evening, "", "2026-11-24 20:00 by lead tub-N done spot-clean"},
		"long before its day":         {"Spot clean", evening.Add(-60 * day), evening.Add(7 * day), "", "2026-09-26 21:00 by lead tub-N done spot-clean"},
		"read in the morning":         {"Spot clean", evening.Add(-18 * time.Minute), evening.Add(12 * time.Hour), "", "2026-11-25 19:42 by lead tub-N done spot-clean"},
		"of two rounds":               {"25 19:30 Fresh water", evening.Add(-18 * time.Minute), evening, "", "2026-11-25 19:42 by lead tub-N done water"},
		"of two rounds, late":         {"25 08:00 Fresh water", evening.Add(-18 * time.Minute), evening, "", "2026-11-25 08:00 tub-N done water"},
		"of two rounds, no time":      {"25 08:00 Fresh water", time.Time{}, evening, "", "2026-11-25 08:00 tub-N done water"},
		"noted already":               {"Spot clean", evening, evening, "2026-11-25 tub-1 done spot-clean\n2026-11-25 tub-2 done spot-clean\n2026-11-25 tub-3 done spot-clean\n", ""},
		"one noted":                   {"Spot clean", evening, evening, "2026-11-25 tub-1 done spot-clean\n2026-11-25 tub-3 done spot-clean\n", "2026-11-25 20:00 by lead tub-2 done spot-clean"},
		"refused, then ticked":        {"Feed", evening, evening, "2026-11-25 tub-1 refused\n2026-11-25 tub-2 fed 1 cricket\n2026-11-25 tub-3 refused\n", ""},
		"held, and done all the same": {"Feed", evening, evening, "2026-11-25 tub-1 moult\n2026-11-25 tub-2 refused\n2026-11-25 tub-3 refused\n", "2026-11-25 20:00 by lead tub-1 adult fed"},
		"of who was away":             {"Spot clean", evening, evening, "2026-11-25 keeper lead away\n", "2026-11-25 20:00 by relief tub-N done spot-clean"},
	} {
		t.Run(name, func(t *testing.T) {
			put := tasks.Of(compiled(t, house, "", evening.Add(-time.Hour)), "").Wanted(1)
			for i := range put {
				put[i].Summary = put[i].Start.Format("02 15:04 ") + put[i].Summary
			}
			title, off := strings.CutPrefix(x.title, "-")
			tick := ticked(t, put, title, x.at)
			tick.Done, tick.Cancelled = !off, off
			facts, untold := tasks.Of(compiled(t, house, x.log, x.now), "").Said([]ical.Seen{tick}, "")
			var want []string
			for _, n := range []string{"1", "2", "3"} {
				if line := strings.ReplaceAll(x.want, "-N", "-"+n); line != "" && !slices.Contains(want, line) {
					want = append(want, line)
				}
			}
			if got := said(facts); !slices.Equal(got, want) || len(untold) > 0 {
				t.Errorf("it says %q, not %q; untold %+v", got, want, untold)
			}
		})
	}
}

// TestSameTask: what changes while a task is on a phone does not change its identity, and a
// tick is of the enclosures that stood in its text, no others.
func TestSameTask(t *testing.T) {
	before := tasks.Of(compiled(t, house, "", evening), "").Wanted(1)
	for name, x := range map[string]struct{ text, log, want, untold string }{
		"one more":                 {strings.Replace(house, "1 to 3", "1 to 4", 1), "", "tub-1 tub-2 tub-3", ""},
		"one less":                 {strings.Replace(house, "1 to 3", "1 to 2", 1), "", "tub-1 tub-2", "Tub 3, adult"},
		"another meal":             {strings.Replace(house, "per_animal = 2", "per_animal = 1", 1), "", "tub-1 tub-2 tub-3", ""},
		"held":                     {house, "2026-11-25 tub-2 moult\n", "tub-1 tub-2 tub-3", ""},
		"another hour":             {strings.Replace(house, "19:30", "18:00", 1), "", "tub-1 tub-2 tub-3", ""},
		"another title":            {strings.Replace(house, `"Tub"`, `"Sling box"`, 1), "", "tub-1 tub-2 tub-3", ""},
		"a title that another had": {strings.Replace(house, `"1 to 3"`, "\"1 to 3\"\n  number \"1\" {\n    title = \"Tub 2\"\n  }\n  number \"2\" {\n    title = \"Tub 1\"\n  }", 1), "", "tub-1 tub-2 tub-3", ""},
		"another name":             {strings.Replace(house, "enclosure \"tub\" {", "enclosure \"box\" {\n  formerly = \"tub\"", 1), "", "box-1 box-2 box-3", ""},
		"a name that another has by now": {strings.Replace(house, "enclosure \"tub\" {", "enclosure \"box\" {\n  formerly = \"tub\"", 1) +
			strings.Replace(house[strings.Index(house, "enclosure"):], "feeding", "  feeding", 1), "", "tub-1 tub-2 tub-3", ""},
		"animals of another name": {strings.NewReplacer("feeding \"adult\" {", "feeding \"grown\" {\n    formerly = \"adult\"", "animals \"adult\" {", "animals \"grown\" {\n    formerly = \"adult\"").Replace(house), "", "tub-1 tub-2 tub-3", ""},
		"more animals":            {house[:strings.LastIndex(house, "}")] + "  animals \"other\" {\n    count = 1\n    stage = \"adult\"\n    origin = \"captive bred\"\n    paper = \"invoice 119\"\n  }\n}\n", "", "", "Tub 1 Tub 2 Tub 3"},
		"a new keeper":            {strings.Replace(house, `= "lead"`, `= "relief"`, 1), "", "tub-1 tub-2 tub-3", ""},
	} {
		r := compiled(t, x.text, x.log, evening)
		facts, untold := tasks.Of(r, "").Said([]ical.Seen{ticked(t, before, "Feed", evening)}, "")
		var at []string
		for _, f := range facts {
			at = append(at, f.Enclosure)
		}
		var not []string
		for _, u := range untold {
			not = append(not, u.Places...)
		}
		if strings.Join(at, " ") != x.want || strings.Join(not, " ") != strings.ReplaceAll(x.untold, ", adult", "") {
			t.Errorf("%s: %q, untold %q", name, at, not)
		}
	}
}

// TestUntold: a tick that cannot be said is told, and none is made up.
func TestUntold(t *testing.T) {
	list := tasks.Of(compiled(t, house, "", evening), "")
	put := list.Wanted(1)
	change := func(title string, to func(*ical.Seen)) ical.Seen {
		s := ticked(t, put, title, evening)
		to(&s)
		return s
	}
	for name, x := range map[string]struct {
		seen ical.Seen
		why  tasks.Why
		none bool
	}{
		"no text":         {seen: change("Feed", func(s *ical.Seen) { s.Description = "" }), why: tasks.NoPlaces},
		"another text":    {seen: change("Feed", func(s *ical.Seen) { s.Description = "- Tub 9\n- Tub 1 to 3" }), why: tasks.NoSuchPlace},
		"no such care":    {seen: change("Feed", func(s *ical.Seen) { s.UID = s.UID[:len(s.UID)-3] + "xyz" }), why: tasks.NoCare},
		"long ago":        {seen: change("Feed", func(s *ical.Seen) { s.UID = strings.Replace(s.UID, "20261125", "20250101", 1) }), why: tasks.TooLongAgo},
		"one of several":  {seen: change("Fresh water", func(s *ical.Seen) { s.Done, s.Cancelled = false, true }), why: tasks.OneOfSeveral},
		"open":            {seen: change("Feed", func(s *ical.Seen) { s.Done = false }), none: true},
		"of another list": {seen: change("Feed", func(s *ical.Seen) { s.UID = "vivary-00000000" + s.UID[15:] }), none: true},
		"of somebody":     {seen: change("Feed", func(s *ical.Seen) { s.UID = "x" }), none: true},
		"no day":          {seen: change("Feed", func(s *ical.Seen) { s.UID = strings.Replace(s.UID, "20261125", "20261325", 1) }), none: true},
		"a date alone":    {seen: change("Feed", func(s *ical.Seen) { s.UID = "20261125-x" }), none: true},
		"cut short":       {seen: change("Feed", func(s *ical.Seen) { s.UID = s.UID[:len("vivary-00000000-2026")] }), none: true},
		"another sign":    {seen: change("Feed", func(s *ical.Seen) { s.UID = strings.Replace(s.UID, "20261125-", "20261125+", 1) }), none: true},
		"called off tomorrow": {seen: change("Feed", func(s *ical.Seen) {
			s.UID = strings.Replace(s.UID, "1125", "1126", 1)
			s.Done, s.Cancelled = false, true
		}), none: true},
	} {
		facts, untold := list.Said([]ical.Seen{x.seen}, "")
		if len(facts) > 0 || x.none != (len(untold) == 0) || !x.none && untold[0].Why != x.why {
			t.Errorf("%s: %q, %+v", name, said(facts), untold)
		}
	}
}

// TestSteps: what was ticked is never written over or taken away before it is settled and old;
// what is open goes when it is over, a day late; what is not ours stays.
func TestSteps(t *testing.T) {
	r := compiled(t, house, "", evening)
	list := tasks.Of(r, "")
	want := list.Wanted(2)
	day := func(uid string, back int) string {
		return strings.Replace(uid, "20261125", string((r.Today-civil.Date(back)).Append(nil, "")), 1)
	}
	first := ticked(t, want, "Feed", evening)
	for name, x := range map[string]struct {
		change  func(*tasks.Object)
		settled bool
		step    string // "" for none
	}{
		"as it is to be":         {func(o *tasks.Object) { o.Done = false }, true, ""},
		"another title":          {func(o *tasks.Object) { o.Done = false; o.Summary = "x" }, true, "put"},
		"another text":           {func(o *tasks.Object) { o.Done = false; o.Description = "x" }, true, "put"},
		"a note behind the text": {func(o *tasks.Object) { o.Done = false; o.Description += "\nask Jo" }, true, ""},
		"blanks": {func(o *tasks.Object) {
			o.Done = false
			o.Description = strings.ReplaceAll(o.Description, "\n", " \r\n")
		}, true, ""},
		"another time":          {func(o *tasks.Object) { o.Done = false; o.Start = o.Start.Add(time.Hour) }, true, "put"},
		"no time":               {func(o *tasks.Object) { o.Done = false; o.Start = time.Time{} }, true, ""},
		"ticked, another title": {func(o *tasks.Object) { o.Summary = "x" }, true, ""},
		"called off, another":   {func(o *tasks.Object) { o.Done, o.Cancelled, o.Summary = false, true, "x" }, true, ""},
		"open, of yesterday":    {func(o *tasks.Object) { o.Done, o.UID = false, day(o.UID, 1) }, true, ""},
		"open, older":           {func(o *tasks.Object) { o.Done, o.UID = false, day(o.UID, 2) }, true, "delete"},
		"ticked a week ago":     {func(o *tasks.Object) { o.UID = day(o.UID, 7) }, true, ""},
		"ticked, older":         {func(o *tasks.Object) { o.UID = day(o.UID, 8) }, true, "delete"},
		"ticked, older, not in": {func(o *tasks.Object) { o.UID = day(o.UID, 8) }, false, ""},
		"not due":               {func(o *tasks.Object) { o.Done = false; o.UID += "0" }, true, "delete"},
		"somebody's":            {func(o *tasks.Object) { o.Done, o.UID = false, "x" }, true, ""},
		"of another keeper":     {func(o *tasks.Object) { o.Done, o.UID = false, "vivary-00000000"+o.UID[15:] }, true, ""},
	} {
		o := tasks.Object{Seen: first, Path: "p", ETag: "e"}
		x.change(&o)
		var one []string
		for _, s := range list.Steps(want, []tasks.Object{o}, func(string) bool { return x.settled }) {
			switch {
			case s.Todo == nil:
				one = append(one, "delete")
			case s.Of != nil:
				one = append(one, "put")
			}
		}
		if got := strings.Join(one, " "); got != x.step {
			t.Errorf("%s: %q", name, got)
		}
	}
	if steps := list.Steps(want, nil, nil); len(steps) != len(want) {
		t.Errorf("of %d tasks %d are put up", len(want), len(steps))
	}
}

// TestTickedIsDone: of whatever plan, when all tasks of today are ticked, their lines are
// accepted, nothing of today is left but what is asked, and said again they say nothing.
func TestTickedIsDone(t *testing.T) {
	n := 0
	for seed := range uint64(200) {
		p := randomplan.New(seed)
		if seed%2 == 1 {
			p = p.Racked()
		}
		files := p.Files(p.Today - 1)
		load := func() *compile.Result {
			c, found := planned.Files(t, files)
			year, month, day := p.Today.YMD()
			zone := c.Location
			if zone == nil {
				zone = time.UTC
			}
			return compile.Compile(c, found, time.Date(year, month, day, 23, 0, 0, 0, zone))
		}
		r := load()
		if r.Roster == nil || r.Refused() {
			continue
		}
		list := tasks.Of(r, "")
		var seen []ical.Seen
		uids := map[string]bool{}
		for _, x := range list.Wanted(1) {
			if uids[x.UID] {
				t.Errorf("seed %d: two tasks have one identity: %s", seed, x.Summary)
			}
			uids[x.UID] = true
			seen = append(seen, ical.Seen{UID: x.UID, Summary: x.Summary, Description: x.Description, Done: true, At: x.Start})
		}
		facts, untold := list.Said(seen, "")
		if len(untold) > 0 {
			t.Errorf("seed %d: untold: %+v", seed, untold)
		}
		n += len(facts)
		files["zz-all.care.log"] = strings.Join(said(facts), "\n") + "\n"
		after := load()
		if after.Roster == nil || after.Refused() {
			t.Fatalf("seed %d: what was ticked refuses: %v", seed, after.Findings)
		}
		list = tasks.Of(after, "")
		for _, x := range list.Wanted(1) {
			if uids[x.UID] && !strings.Contains(x.Summary, "To be answered") {
				t.Errorf("seed %d: %s is ticked and not done", seed, x.Summary)
			}
		}
		if again, _ := list.Said(seen, ""); len(again) > 0 {
			t.Errorf("seed %d: said again: %q", seed, said(again))
		}
	}
	if n < 500 {
		t.Errorf("only %d lines were looked at", n)
	}
}
