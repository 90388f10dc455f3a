package main

import (
	"flag"
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/compile/ical"
	"vivary/internal/feedoracle"
	"vivary/internal/house"
	"vivary/plan"
	"vivary/schema/civil"
)

var (
	houses = flag.Int("houses", 1, "how many houses live through a year")
	days   = flag.Int("days", 365, "how many days of it")
	step   = flag.Int("step", 3, "how many days lie between two builds")
	from   = flag.Uint64("house", 0, "the seed of the first house")
	silly  = flag.Bool("slips", true, "whether some lines of the log cannot be so")
	entry  = flag.Int("entries", 0, "how many entries of each house's year are printed, to be read as the person in front of the boxes")
)

// TestYearOfAHouse lets a house of sixty boxes live through a year: animals moult, mate,
// give birth, move, come and go, a keeper is away twice, and now and then a line of the
// log is wrong. Every few days all is built, with what was published before. What the
// feeds show, read back by other libraries, is held against the truth of the day.
func TestYearOfAHouse(t *testing.T) {
	for i := range *houses {
		seed := *from + uint64(i)
		t.Run(fmt.Sprint(seed), func(t *testing.T) {
			j := &judge{T: t, w: house.New(seed), last: map[string][]byte{}, fast: map[*house.Lot]int{}, dry: map[*house.Box]int{}, told: map[*house.Box][]string{}, broken: map[string]*breach{}}
			j.w.Careful = !*silly
			began := time.Now()
			builds := 0
			for end := j.w.Today + civil.Date(*days); j.w.Today < end; j.w.Pass(*step) {
				j.day()
				builds++
			}
			t.Logf("%d builds, %.0f ms each; %d lines of log; %d came, %d here, %d went", builds,
				float64(time.Since(began).Milliseconds())/float64(builds), len(j.w.Log), j.w.Came, j.w.Here(), j.w.Went)
			j.report()
			j.readers()
		})
	}
}

// judge holds what was published against the truth.
type judge struct {
	*testing.T
	w     *house.World
	r     *compile.Result
	last  map[string][]byte
	shown []feedoracle.Occurrence // from today until the next build
	fast  map[*house.Lot]int      // days without a meal offered, of those on which one should be
	dry   map[*house.Box]int      // days without water
	told  map[*house.Box][]string // the last entries of each box
	// broken are the ways in which the promise was broken.
	broken map[string]*breach
}

// breach is one way in which it was broken, told by the first time.
type breach struct {
	times int
	first string
	boxes map[string]bool
}

// remembers is how many of the last entries of a box are told with a breach.
const remembers = 25

// wrong notes that something is wrong with a box on a day; entry is what was shown.
func (j *judge) wrong(what string, b *house.Box, on civil.Date, entry string) {
	x := j.broken[what]
	if x == nil {
		x = &breach{boxes: map[string]bool{}}
		j.broken[what] = x
	}
	x.times++
	name := ""
	if b != nil {
		name = b.Name
		x.boxes[b.Name] = true
	}
	if x.first == "" {
		x.first = fmt.Sprintf("first in %s on %s, built on %s\n%s", name, on, j.w.Today, entry)
		if b != nil {
			x.first += fmt.Sprintf("\nthe log, at its end:\n%s\nthe truth:\n%s\nthe last entries:\n%s", j.w.Last(b.Name, 8), b.Truth(on), strings.Join(j.told[b], "\n"))
		}
	}
}

func (j *judge) report() {
	for _, what := range slices.Sorted(maps.Keys(j.broken)) {
		x := j.broken[what]
		j.Errorf("-house %d: %s: %d times in %d boxes, %s\n", j.w.Seed, what, x.times, len(x.boxes), x.first)
	}
}

// day builds on a day, and judges the days until the next build.
func (j *judge) day() {
	if !j.build() {
		return
	}
	j.conserved()
	j.print()
	for d := j.w.Today; d < j.w.Today+civil.Date(*step); d++ {
		var today []stop
		for i := range j.shown {
			if o := &j.shown[i]; o.Day == d && o.Calendar == "care" && o.At != "" {
				today = append(today, j.stop(o))
			}
		}
		for _, b := range j.w.Boxes {
			mine := slices.DeleteFunc(slices.Clone(today), func(s stop) bool { return s.box != b })
			for _, s := range mine {
				j.told[b] = append(j.told[b], fmt.Sprintf("  %s %s", d, s.text))
			}
			j.told[b] = j.told[b][max(0, len(j.told[b])-remembers):]
			j.forbidden(b, d, mine)
			j.fed(b, d, mine)
			j.watered(b, d, mine)
			j.where(b, d, len(mine) > 0)
		}
	}
}

// build builds as the command does, with the last feeds for a memory.
func (j *judge) build() bool {
	c, found, err := plan.Load(disk(j, j.w.Files(j.w.Today)), "c")
	if err != nil {
		j.Fatal(err)
	}
	now := j.w.Today.At(12*60, time.UTC)
	j.r = compile.From(compile.Input{Plan: c, Loaded: found, Now: now, Told: feeds.ToldBy("house", feeds.ReadHeads(slices.Collect(maps.Values(j.last))))})
	if j.r.Refused() {
		for _, f := range j.r.Findings {
			if f.Severity.Refuses() {
				j.wrong("a build is refused: "+f.Rule.ID, nil, j.w.Today, f.Text+": "+c.Files.Of(f.At))
			}
		}
		j.listed()
		return false
	}
	is := map[string][]byte{}
	for _, f := range feeds.Of(j.r) {
		var memory *ical.Memory
		if b := j.last[f.Name]; b != nil {
			if memory, err = ical.Remember(b); err != nil {
				j.Fatal(err)
			}
		}
		if is[f.Name], err = f.Bytes(memory); err != nil {
			j.Fatal(err)
		}
	}
	j.changes(is)
	j.last, j.shown = is, nil
	seen := map[string]bool{}
	for name, text := range is {
		if j.w.Today%10 != 0 {
			text = window(text, j.w.Today, j.w.Today+civil.Date(*step))
		}
		shown, uids, err := feedoracle.Read(name, text, j.w.Today, j.w.Today+civil.Date(*step))
		if err != nil {
			j.Fatal(err)
		}
		j.shown = append(j.shown, shown...)
		for _, id := range uids {
			if seen[id] {
				j.wrong("two entries have one UID", nil, j.w.Today, id)
			}
			seen[id] = true
		}
	}
	if j.w.Today%10 == 0 {
		j.listed()
	}
	return true
}

// print prints the round of today, on so many days of the year as were asked for.
func (j *judge) print() {
	if *entry == 0 || int(j.w.Today) / *step % max(1, *days / *step / *entry) != 0 {
		return
	}
	for _, o := range j.shown {
		if o.Calendar == "rounds" && o.Day == j.w.Today && o.At != "" {
			j.Logf("%s %s: %s\n%s\n", o.Day, o.At, o.Summary, o.Description)
		}
	}
}

// listed holds that the day's list prints, whatever is wrong.
func (j *judge) listed() {
	d := disk(j, j.w.Files(j.w.Today))
	for name, text := range j.last {
		if err := afero.WriteFile(d, "c/feeds/"+name+".ics", text, 0o644); err != nil {
			j.Fatal(err)
		}
	}
	status, out, errs := at(d, j.w.Today.At(12*60, time.UTC), "due", "c")
	if status != fine || !strings.Contains(out, "Box") {
		j.wrong("the list of the day does not print", nil, j.w.Today, strings.Join(regexp.MustCompile("(?m)^.*(error|danger): .*$").FindAllString(errs, 5), "\n"))
	}
}

// conserved holds that the program knows of all that live, each once, each where it is.
func (j *judge) conserved() {
	for _, l := range j.r.Lives {
		n := 0
		var who []string
		for _, g := range l.Groups {
			n += g.Count(j.w.Today)
			who = append(who, fmt.Sprintf("%s: %d, %s", g.Animals.Name.V, g.Count(j.w.Today), g.Stage(j.w.Today)))
		}
		if b := j.w.Box(l.Plan.Name.V); n != b.Total() {
			j.wrong("the number of animals is wrong", b, j.w.Today, fmt.Sprintf("%d are known of, and %d are there\nknown: %s", n, b.Total(), strings.Join(who, "; ")))
		}
	}
	if j.w.Came != j.w.Here()+j.w.Loose+j.w.Went {
		j.Fatal("the house itself lost some")
	}
}
