package rounds_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"testing"

	"vivary/compile/rounds"
	"vivary/schema"
)

// reader reads the text of a round as a person does who knows the enclosures and
// what may be asked for.
type reader struct {
	all             []string          // the enclosures by their names in the plan, in walking order
	known           map[string]string // those by what they are called, in the whole round
	inRoom          map[string]string // and in a room, behind its title and a bar
	rooms           map[string]bool
	within, outside map[string]string // a task within a line and at its beginning
	apart           map[string]bool
	room, alone     string
	out             []string
}

// newReader knows the enclosures and what may be asked for, on a day.
func newReader(places []rounds.Place, items []rounds.Item, day int) *reader {
	r := &reader{known: map[string]string{}, inRoom: map[string]string{}, rooms: map[string]bool{}, within: map[string]string{}, outside: map[string]string{}, apart: map[string]bool{}}
	times := map[string]int{}
	for _, p := range places {
		times[called(p.Title)]++
		r.rooms[p.Room] = true
	}
	for _, p := range places {
		r.all = append(r.all, p.Name)
		r.apart[p.Name] = day < p.Apart
		name := called(p.Title)
		r.inRoom[p.Room+"|"+name] = p.Name
		if times[name] > 1 {
			name = p.Room + " " + name
		}
		r.known[name] = p.Name
	}
	for k := range items {
		task := items[k].Task.String()
		r.within[task], r.outside[items[k].Task.Sentence()] = task, task
	}
	return r
}

// called is what an enclosure is called where its title is only a number.
func called(title string) string {
	if _, err := strconv.Atoi(title); err == nil {
		return "No. " + title
	}
	return title
}

// read lists what a text says: where in the round, at which enclosure, what.
func (r *reader) read(text string) []string {
	part := "round"
	for l := range strings.Lines(text) {
		l = strings.TrimSuffix(l, "\n")
		switch first, isFirst := strings.CutPrefix(l, "FIRST: "); {
		case l == "Last, with tools of their own:":
			part, r.room = "last", ""
		case isFirst:
			i := strings.Index(first, "): ") + 1
			r.say(part+" first", r.list(part, first[i+2:]), r.within[first[:i]])
		case strings.HasPrefix(l, "Before leaving"):
			i, k := strings.Index(l, ": "), strings.LastIndex(l, " (")
			r.say(part+" leaving", r.list(part, l[i+2:k]), r.within[strings.ToLower(l[:1])+l[1:i]+l[k:]])
		case strings.HasPrefix(l, "- "):
			r.line(part, l[2:])
		case r.known[l] != "":
			r.alone = r.known[l]
		case r.rooms[l]:
			r.room = l
		}
	}
	slices.Sort(r.out)
	return r.out
}

func (r *reader) line(part, l string) {
	if task := r.outside[l]; task != "" && r.alone != "" {
		r.say(part, []string{r.alone}, task)
		return
	}
	if what, who, _ := strings.Cut(l, ": "); r.outside[what] != "" {
		r.say(part, r.list(part, who), r.outside[what])
		return
	}
	who, what, _ := strings.Cut(l, ": ")
	for _, t := range strings.Split(what, "; ") {
		r.say(part, r.list(part, who), r.within[t])
	}
}

// say notes a task of some enclosures.
func (r *reader) say(part string, who []string, task string) {
	if len(who) == 0 {
		r.out = append(r.out, "nobody: "+task)
	}
	for _, n := range who {
		r.out = append(r.out, part+" | "+n+" | "+task)
	}
}

// list lists enclosures: all, all but some, or those named, by room or not.
func (r *reader) list(part, who string) (out []string) {
	here := " here"
	if !slices.ContainsFunc(r.all, func(n string) bool { return r.apart[n] != strings.HasPrefix(part, "last") }) {
		here = ""
	}
	if but, some := strings.CutPrefix(who, "All"+here+" but "); some {
		return r.but(part, r.expand(but, ""))
	}
	if n, all := strings.CutPrefix(who, "All "); all {
		if out = r.but(part, nil); strconv.Itoa(len(out))+here != n {
			return nil
		}
		return out
	}
	if !strings.Contains(who, ": ") {
		return r.expand(who, r.room)
	}
	for _, of := range strings.Split(who, "; ") {
		room, names, _ := strings.Cut(of, ": ")
		out = append(out, r.expand(names, room)...)
	}
	return out
}

// but lists the enclosures of a part of the round but some.
func (r *reader) but(part string, not []string) (out []string) {
	for _, n := range r.all {
		if r.apart[n] == strings.HasPrefix(part, "last") && !slices.Contains(not, n) {
			out = append(out, n)
		}
	}
	return out
}

// expand lists the enclosures of a list, in a room or in the whole round; nil where it
// is none.
func (r *reader) expand(list, room string) (out []string) {
	stem := ""
	for _, x := range strings.Split(strings.ReplaceAll(list, " and ", ", "), ", ") {
		from, to, isRange := strings.Cut(x, " to ")
		if digits(from) == 0 {
			from = stem + from
		}
		stem = from[:digits(from)]
		if !isRange {
			to = from[len(stem):]
		}
		first, last := from[len(stem):], to
		a, _ := strconv.Atoi(first)
		b, _ := strconv.Atoi(last)
		for n := a; n <= b; n++ {
			name := stem + fmt.Sprintf("%0*d", len(first), n)
			if first == "" {
				name = from
			}
			is := r.known[name]
			if room != "" {
				is = r.inRoom[room+"|"+name]
			}
			if is == "" {
				return nil
			}
			out = append(out, is)
		}
	}
	return out
}

func digits(s string) int {
	return len(strings.TrimRight(s, "0123456789"))
}

// TestTextSaysWhatIsDue: whatever falls on a day is read from its text, for every
// enclosure, and nothing else is.
func TestTextSaysWhatIsDue(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	lines := 0
	for range 300 {
		places, items := random(rng)
		r := rounds.Make(evening(), year, places, items, nil)
		longest := 0
		for i := range last {
			sheet := r.On(i)
			text := strings.Join(sheet.Lines, "\n")
			body := string(r.Text(nil, i))
			if text != "" {
				whole := text + fmt.Sprintf("\n\nAbout %d min", sheet.Minutes)
				longest = max(longest, len(whole))
				if len(whole) <= rounds.MaxText && body != whole {
					t.Fatalf("day %d: the entry has\n%s\nthe sheet\n%s", i, body, whole)
				}
			}
			got, want := newReader(places, items, i).read(text), due(places, items, i)
			if !slices.Equal(got, want) {
				t.Fatalf("day %d:\n%s\nis read as\n%s\nis due\n%s", i, text, strings.Join(got, "\n"), strings.Join(want, "\n"))
			}
			if sheet := listed(sheet); !slices.Equal(sheet, want) {
				t.Fatalf("day %d: the sheet has\n%s\nis due\n%s", i, strings.Join(sheet, "\n"), strings.Join(want, "\n"))
			}
			lines += len(want)
		}
		if _, length, ok := r.TooLong(); ok != (longest > rounds.MaxText) || ok && length != longest {
			t.Fatalf("the longest text has %d bytes, and is told of as %d: %v", longest, length, ok)
		}
	}
	if lines < 50_000 {
		t.Errorf("only %d tasks were read", lines)
	}
}

// last is the first day on which nothing falls in a random round.
const last = 30

// random is a round of any size: of one room or several, of some kinds of tubs and
// others with names, some of them alike in several rooms, with tasks that most have
// and tasks of a few.
func random(rng *rand.Rand) (places []rounds.Place, items []rounds.Item) {
	n := 1 + rng.IntN([]int{1, 6, 12, 70}[rng.IntN(4)])
	rooms, alike := 1+rng.IntN(3), rng.IntN(3) == 0
	taken := map[string]bool{}
	for i := range n {
		p := rounds.Place{Name: fmt.Sprint("p", i), Room: fmt.Sprint("Room ", string(rune('A'+i*rooms/n)))}
		number := 1 + i + rng.IntN(2)*100
		if alike {
			number = 1 + i%max(1, n/rooms)
		}
		switch rng.IntN(6) {
		case 0:
			p.Title = fmt.Sprintf("Box %s%s", string(rune('A'+i%26)), string(rune('a'+i/26)))
		case 1:
			p.Title = fmt.Sprintf("Shelf%03d", number)
		case 2:
			p.Title = fmt.Sprint(number)
		default:
			p.Title = fmt.Sprint("Tub ", number)
		}
		if taken[p.Room+p.Title] {
			p.Title = fmt.Sprint("Spare ", 1+i)
		}
		taken[p.Room+p.Title] = true
		if rng.IntN(8) == 0 {
			p.Apart = rng.IntN(20)
		}
		places = append(places, p)
	}
	for i := range n {
		for k := range 2 + rng.IntN(10) {
			kind := schema.CareKinds[(k*5)%len(schema.CareKinds)]
			it := do(kind, i)
			if kind == schema.KindOther {
				it.Phrase = "Wipe the glass"
			}
			it.Days = year.New()
			for d := rng.IntN(3); d < last; d += 1 + k%4 {
				it.Days.Add(d)
			}
			switch rng.IntN(12) {
			case 0:
				it.High, it.Note, it.Rank = true, "last done 3 Nov", it.Rank-1000
			case 1:
				it.Group = "adults"
			case 4:
				it.Leaving, it.Passing, it.Rank, it.Phrase, it.Note = true, true, 0, "Before leaving, fill up", "nobody comes until Sat 10 Jul"
			case 2, 3:
				it = feed(i, 1+float64(rng.IntN(4))/2, 1+rng.IntN(3))
			}
			items = append(items, it)
		}
	}
	return places, items
}

// due lists what falls on a day, as the reader does.
func due(places []rounds.Place, items []rounds.Item, i int) []string {
	said := map[string]bool{}
	var out []string
	for k := range items {
		it := &items[k]
		if !it.Days.Has(i) {
			continue
		}
		part := "round"
		if i < places[it.Place].Apart {
			part = "last"
		}
		if it.High {
			part += " first"
		}
		if it.Leaving {
			part += " leaving"
		}
		x := part + " | " + places[it.Place].Name + " | " + it.Task.String()
		if !said[x] {
			said[x] = true
			out = append(out, x)
		}
	}
	slices.Sort(out)
	return out
}

// listed lists what a sheet has, as the reader does.
func listed(s rounds.Sheet) []string {
	var out []string
	for _, d := range s.Due {
		part := "round"
		if d.Last {
			part = "last"
		}
		if d.First {
			part += " first"
		}
		for _, x := range d.Stops {
			part := part
			if x.Item.Leaving {
				part += " leaving"
			}
			out = append(out, part+" | "+x.Place.Name+" | "+x.Item.Task.String())
		}
	}
	slices.Sort(out)
	return out
}
