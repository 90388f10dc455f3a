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
	names           []string
	known           map[string]bool
	within, outside map[string]string // a task within a line and at its beginning
	apart           map[string]bool
	alone           string
	out             []string
}

// read lists what a text says: where in the round, at which enclosure, what.
func (r *reader) read(text string) []string {
	part := "round"
	for l := range strings.Lines(text) {
		l = strings.TrimSuffix(l, "\n")
		switch first, isFirst := strings.CutPrefix(l, "FIRST: "); {
		case l == "Last, with tools of their own:":
			part = "last"
		case isFirst:
			i := strings.LastIndex(first, ": ")
			r.say(part+" first", first[i+2:], []string{r.within[first[:i]]})
		case strings.HasPrefix(l, "- "):
			r.line(part, l[2:])
		default:
			if r.known[l] {
				r.alone = l
			}
		}
	}
	slices.Sort(r.out)
	return r.out
}

func (r *reader) line(part, l string) {
	if task := r.outside[l]; task != "" && r.alone != "" {
		r.say(part, r.alone, []string{task})
		return
	}
	who, what, _ := strings.Cut(l, ": ")
	if strings.HasPrefix(who, "All ") || r.expand(who) != nil {
		var tasks []string
		for _, t := range strings.Split(what, "; ") {
			tasks = append(tasks, r.within[t])
		}
		r.say(part, who, tasks)
		return
	}
	i := strings.LastIndex(l, ": ")
	r.say(part, l[i+2:], []string{r.outside[l[:i]]})
}

// say notes the tasks of some enclosures.
func (r *reader) say(part, who string, tasks []string) {
	var names []string
	if but, some := strings.CutPrefix(who, "All but "); some {
		names = r.all(part, r.expand(but))
	} else if n, all := strings.CutPrefix(who, "All "); all {
		if names = r.all(part, nil); strconv.Itoa(len(names)) != n {
			r.out = append(r.out, "not "+who)
		}
	} else {
		names = r.expand(who)
	}
	if len(names) == 0 {
		r.out = append(r.out, "nobody: "+who)
	}
	for _, n := range names {
		for _, t := range tasks {
			r.out = append(r.out, part+" | "+n+" | "+t)
		}
	}
}

// all lists the enclosures of a part of the round but some.
func (r *reader) all(part string, but []string) (out []string) {
	for _, n := range r.names {
		if r.apart[n] == strings.HasPrefix(part, "last") && !slices.Contains(but, n) {
			out = append(out, n)
		}
	}
	return out
}

// expand lists the enclosures of a list, nil where it is none.
func (r *reader) expand(list string) (out []string) {
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
			if !r.known[name] {
				return nil
			}
			out = append(out, name)
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
			rd := &reader{known: map[string]bool{}, within: map[string]string{}, outside: map[string]string{}, apart: map[string]bool{}}
			for _, p := range places {
				rd.names = append(rd.names, p.Title)
				rd.known[p.Title], rd.apart[p.Title] = true, i < p.Apart
			}
			for k := range items {
				task := items[k].Task.String()
				rd.within[task], rd.outside[items[k].Task.Sentence()] = task, task
			}
			got, want := rd.read(text), due(places, items, i)
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
// others with names, with tasks that most have and tasks of a few.
func random(rng *rand.Rand) (places []rounds.Place, items []rounds.Item) {
	n := 1 + rng.IntN([]int{1, 6, 12, 70}[rng.IntN(4)])
	rooms := 1 + rng.IntN(3)
	for i := range n {
		p := rounds.Place{Name: fmt.Sprint("p", i), Room: fmt.Sprint("Room ", string(rune('A'+i*rooms/n)))}
		switch number := 1 + i + rng.IntN(2)*100; rng.IntN(5) {
		case 0:
			p.Title = fmt.Sprintf("Box %s%s", string(rune('A'+i%26)), string(rune('a'+i/26)))
		case 1:
			p.Title = fmt.Sprintf("Shelf%03d", number)
		default:
			p.Title = fmt.Sprint("Tub ", number)
		}
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
		x := part + " | " + places[it.Place].Title + " | " + it.Task.String()
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
			out = append(out, part+" | "+x.Shown+" | "+x.Item.Task.String())
		}
	}
	slices.Sort(out)
	return out
}
