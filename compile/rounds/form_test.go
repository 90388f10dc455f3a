package rounds_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"vivary/compile/horizon"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

var year = horizon.Horizon{From: civil.Must(2027, 2, 15), Days: 400}

// always is every day, and on are some.
func always() horizon.Days {
	d := year.New()
	d.AddRun(0, year.Days, year.Days)
	return d
}

func on(days ...int) horizon.Days {
	d := year.New()
	for _, i := range days {
		d.Add(i)
	}
	return d
}

// evening is the round of every test.
func evening() *plan.Round {
	r := &plan.Round{}
	r.Name.V, r.Title.V = "evening", "Evening round"
	r.Title.At = r.At
	return r
}

// tubs are places that differ in their number.
func tubs(n int) (out []rounds.Place) {
	for i := range n {
		out = append(out, rounds.Place{Name: fmt.Sprint("tub-", i+1), Title: fmt.Sprint("Tub ", i+1)})
	}
	return out
}

func titled(titles ...string) (out []rounds.Place) {
	for i, t := range titles {
		out = append(out, rounds.Place{Name: fmt.Sprint("box-", i+1), Title: t})
	}
	return out
}

// do is a task of a kind on every day.
func do(k *schema.CareKind, place int) rounds.Item {
	return rounds.Item{Task: rounds.Task{Kind: k, Phrase: k.Phrase}, Place: place, Days: always(), Rank: k.Rank, Minutes: k.Minutes}
}

func feed(place int, each float64, animals int) rounds.Item {
	it := do(schema.KindFeed, place)
	it.Prey = rounds.Prey{One: "adult cricket", Many: "adult crickets", Each: each, Animals: animals}
	return it
}

// all is a task of a kind at each of n places but some.
func all(k *schema.CareKind, n int, but ...int) (out []rounds.Item) {
	for i := range n {
		if !slices.Contains(but, i) {
			out = append(out, do(k, i))
		}
	}
	return out
}

func TestRanges(t *testing.T) {
	for _, c := range []struct{ titles, want string }{
		{"Tub 1", "Tub 1"},
		{"Tub 1|Tub 2", "Tub 1 and 2"},
		{"Tub 1|Tub 2|Tub 3", "Tub 1 to 3"},
		{"Tub 1|Tub 3", "Tub 1 and 3"},
		{"Tub 1|Tub 2|Tub 3|Tub 7|Tub 9|Tub 10|Tub 11|Tub 12", "Tub 1 to 3, 7 and 9 to 12"},
		{"Tub 1|Tub 2|Tub 5|Tub 6", "Tub 1, 2, 5 and 6"},
		{"Tub 3|Tub 2|Tub 1", "Tub 3, 2 and 1"},
		{"Tub 008|Tub 009|Tub 010", "Tub 008 to 010"},
		{"Tub 9|Tub 010|Tub 011", "Tub 9, 010 and 011"},
		{"Tub 8|Tub 9|Tub 10", "Tub 8 to 10"},
		{"1|2|3|Burrow A", "No. 1 to 3, Burrow A"},
		{"Brood 2024|7|9|Case 1.2", "Brood 2024, No. 7 and 9, Case 1.2"},
		{"Brood 2024|Brood 2025|12b|7", "Brood 2024 and 2025, No. 12b, No. 7"},
		{"Case 1.2|Case 1.3|Rack 4-1|Rack 4-2", "Case 1.2, Case 1.3, Rack 4-1, Rack 4-2"},
		{"7|No. 7|8", "No. 7 (box-1), No. 7 (box-2), No. 8"},
		{"Burrow A|Burrow B", "Burrow A, Burrow B"},
		{"Tub 1|Dune 2|Tub 2", "Tub 1, Dune 2, Tub 2"},
		{"A1|A2|A3|B1", "A1 to 3, B1"},
		{"Tub 1999999999998|Tub 1999999999999", "Tub 1999999999998, Tub 1999999999999"},
		{"Tub|Tub|Tub 1", "Tub (box-1), Tub (box-2), Tub 1"},
		{"  Tub\n1|Tub 2", "Tub 1 and 2"},
		{"scorpion house, east wing, upper shelf, left 1|scorpion house, east wing, upper shelf, left 2", "scorpion house, east wing, upper shel… 1 and 2"},
		{strings.Repeat("🦂", 50), strings.Repeat("🦂", 39) + "…"},
	} {
		places := titled(strings.Split(c.titles, "|")...)
		n := len(places)
		// As many again have nothing to do, or all would be named by who is left out.
		for range n + 1 {
			places = append(places, rounds.Place{Name: fmt.Sprint("other-", len(places)), Title: fmt.Sprint("other", len(places), "x")})
		}
		r := rounds.Make(evening(), year, places, all(schema.KindWater, n), nil)
		want := "- Fresh water: " + c.want + "\n\nAbout " + fmt.Sprint(n) + " min"
		if got := string(r.Text(nil, 0)); got != want {
			t.Errorf("%s:\n%s\nwant:\n%s", c.titles, got, want)
		}
	}
}

func TestPrey(t *testing.T) {
	for _, c := range []struct {
		each         float64
		animals      int
		killed, dust bool
		want         string
	}{
		{2, 1, false, false, "Feed 2 adult crickets"},
		{1, 1, false, false, "Feed 1 adult cricket"},
		{2, 3, false, false, "Feed 2 adult crickets each (6 in all, for 3 animals)"},
		{1, 3, false, false, "Feed 1 adult cricket each (3 in all, for 3 animals)"},
		{0.5, 6, false, false, "Feed 3 adult crickets for 6 animals"},
		{0.5, 5, false, false, "Feed 3 adult crickets for 5 animals"},
		{0.5, 2, false, false, "Feed 1 adult cricket for 2 animals"},
		{0.5, 1, false, false, "Feed ½ adult cricket"},
		{1.5, 1, false, false, "Feed 1½ adult crickets"},
		{1.5, 2, false, false, "Feed 3 adult crickets for 2 animals"},
		{0.3, 1, false, false, "Feed 0.3 adult cricket"},
		{0.1, 30, false, false, "Feed 3 adult crickets for 30 animals"},
		{2, 3, true, false, "Feed 2 killed adult crickets each (6 in all, for 3 animals)"},
		{2, 1, true, true, "Feed 2 killed, dusted adult crickets"},
		{1, 1, false, true, "Feed 1 dusted adult cricket"},
	} {
		task := feed(0, c.each, c.animals).Task
		task.Prey.Killed, task.Prey.Dust = c.killed, c.dust
		if got := task.Sentence(); got != c.want {
			t.Errorf("%v for %d: %q, want %q", c.each, c.animals, got, c.want)
		}
	}
	task := feed(0, 2, 3).Task
	task.Group, task.Note = "adults", "last done 3 Nov"
	if got, want := task.String(), "feed 2 adult crickets each (adults, 6 in all, for 3 animals, last done 3 Nov)"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	own := rounds.Task{Phrase: "UV lamp\non? Note it", Own: true}
	if got, want := own.String()+"|"+own.Sentence(), "UV lamp on? Note it|UV lamp on? Note it"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// TestForms reads whole texts as the person in front of the tanks does.
func TestForms(t *testing.T) {
	rooms := tubs(6)
	for i := range rooms {
		rooms[i].Room = []string{"East", "West"}[i/3]
	}
	apart := tubs(6)
	apart[2].Apart = 5
	pressing := do(schema.KindWater, 1)
	pressing.High, pressing.Note, pressing.Rank = true, "last done 3 Nov", -10
	group := func(it rounds.Item, name string) rounds.Item { it.Group = name; return it }
	crowd := append(all(schema.KindLook, 60), all(schema.KindWater, 60, 2, 6)...)
	for i := range 12 {
		crowd = append(crowd, feed(20+i, 2, 1))
	}
	crowd = append(crowd, do(schema.KindSpotClean, 3), do(schema.KindSpotClean, 59))
	alike := tubs(8)
	for i := range alike {
		alike[i].Title, alike[i].Room = fmt.Sprint("Tub ", i%4+1), []string{"East", "West"}[i/4]
	}
	last := alike[7]
	last.Apart = 9
	twins := append(append(all(schema.KindLook, 8), all(schema.KindWater, 8, 1)...), all(schema.KindMist, 8, 3, 6, 7)...)
	twins = append(twins, do(schema.KindDish, 5), do(schema.KindWeigh, 2))
	numbers := titled("Brood 2024", "7", "8", "Case 1.2", "Case 1.3")
	fill := func(place int, until string) rounds.Item {
		it := do(schema.KindWater, place)
		it.Phrase, it.Note, it.Leaving, it.Passing = "Before leaving, fill to the brim", "nobody comes until "+until, true, true
		return it
	}
	own := func(place int, text string) rounds.Item {
		it := do(schema.KindOther, place)
		it.Phrase, it.Own = text, true
		return it
	}
	for _, c := range []struct {
		about  string
		places []rounds.Place
		items  []rounds.Item
		holds  []rounds.Hold
		want   string
	}{
		{"one enclosure", titled("Burrow A"), []rounds.Item{do(schema.KindLook, 0), feed(0, 4, 3)}, nil,
			"Feed 1 · Evening round\n" +
				"Burrow A\n- Lid shut? Animals seen or hidden\n- Feed 4 adult crickets each (12 in all, for 3 animals)\n\nAbout 3 min"},
		{"one enclosure apart", []rounds.Place{{Name: "new", Title: "Arrival", Apart: 9}}, []rounds.Item{do(schema.KindLook, 0)}, nil,
			"Look · Evening round\n" +
				"Last, with tools of their own:\n\nArrival\n- Lid shut? Animals seen or hidden\n\nAbout 1 min"},
		{"by enclosure, with neighbours", titled("Burrow A", "Tub 1", "Tub 2", "Tub 3"),
			append(all(schema.KindLook, 4), do(schema.KindMist, 0), feed(0, 4, 3), feed(1, 2, 1), feed(2, 2, 1), feed(3, 2, 1), do(schema.KindDish, 3)), nil,
			"Feed 4, dish 1 · Evening round\n" +
				"- All 4: lid shut? animals seen or hidden\n- Burrow A: mist; feed 4 adult crickets each (12 in all, for 3 animals)\n" +
				"- Tub 1 and 2: feed 2 adult crickets\n- Tub 3: feed 2 adult crickets; scrub, fill the dish\n\nAbout 15 min"},
		{"several groups", titled("Terrace", "Dune"), []rounds.Item{group(feed(0, 1, 2), "adults"), group(feed(0, 1, 1), "young"), do(schema.KindWater, 0), do(schema.KindWater, 1)}, nil,
			"Feed 1 · Evening round\n" +
				"- Terrace: fresh water; feed 1 adult cricket (young); feed 1 adult cricket each (adults, 2 in all, for 2 animals)\n- Dune: fresh water\n\nAbout 6 min"},
		{"sixty tubs", tubs(60), crowd, nil,
			"Feed 12, clean 2 · Evening round\n" +
				"- All 60: lid shut? animals seen or hidden\n- All but Tub 3 and 7: fresh water\n" +
				"- Feed 2 adult crickets: Tub 21 to 32\n- Spot clean, look for mould and mites: Tub 4 and 60\n\nAbout 148 min"},
		{"two rooms, one by enclosure and one by task", rooms, append(all(schema.KindLook, 6), do(schema.KindMist, 1), do(schema.KindWater, 1), feed(4, 1, 1)), nil,
			"Feed 1 · Evening round\n" +
				"- All 6: lid shut? animals seen or hidden\n\nEast\n- Tub 2: fresh water; mist\n\nWest\n- Feed 1 adult cricket: Tub 5\n\nAbout 10 min"},
		{"pressing, held and apart", apart, append(all(schema.KindLook, 6), pressing, do(schema.KindMist, 2), do(schema.KindDish, 4)),
			[]rounds.Hold{{0, -3, 9, "cool rest: no food (until Sat 21 Feb)", "", false}, {4, -3, 9, "moulted: open nothing", "young", false}, {1, -3, 9, "cool rest: no food (until Sat 21 Feb)", "", false}, {3, 1, 9, "cool rest: no food (until Sat 21 Feb)", "", false}},
			"1 FIRST, dish 1, 3 held · Evening round\n" +
				"FIRST: fresh water (last done 3 Nov): Tub 2\nTub 1 and 2: cool rest: no food (until Sat 21 Feb)\nTub 5 (young): moulted: open nothing\n\n" +
				"- All 5 here: lid shut? animals seen or hidden\n- Scrub, fill the dish: Tub 5\n\n" +
				"Last, with tools of their own:\n- Tub 3: lid shut? animals seen or hidden; mist\n\nAbout 10 min"},
		{"half are named by who they are", titled("A", "B", "C", "D", "Somebody else", "Nobody else", "Everybody else"), append(all(schema.KindWater, 4), do(schema.KindMist, 5)), nil,
			"Water, mist · Evening round\n" +
				"- Fresh water: A, B, C, D\n- Mist: Nobody else\n\nAbout 5 min"},
		{"titles alike in two rooms", append(slices.Clone(alike[:7]), last), append(twins, do(schema.KindWeigh, 7)),
			[]rounds.Hold{{0, -3, 9, "moulted: no food", "", false}, {4, -3, 9, "moulted: no food", "", false}, {5, -3, 9, "young: lift nothing", "", false}},
			"Dish 1, weigh 2, 3 held · Evening round\n" +
				"East Tub 1, West Tub 1: moulted: no food\nWest Tub 2: young: lift nothing\n\n" +
				"- All 7 here: lid shut? animals seen or hidden\n- All here but East Tub 2: fresh water\n- Mist: East: Tub 1 to 3; West: Tub 1 and 2\n\n" +
				"East\n- Tub 3: weigh\n\nWest\n- Tub 2: scrub, fill the dish\n\n" +
				"Last, with tools of their own:\n- West Tub 4: lid shut? animals seen or hidden; fresh water; weigh\n\nAbout 32 min"},
		{"all but a number", numbers, append(all(schema.KindLook, 5), all(schema.KindWater, 5, 2)...), nil,
			"Look, water · Evening round\n- All 5: lid shut? animals seen or hidden\n- All but No. 8: fresh water\n\nAbout 9 min"},
		{"the last water before leaving", apart, append(all(schema.KindLook, 6), fill(0, "Tue 13 Jul"), fill(1, "Tue 13 Jul"), fill(2, "Tue 13 Jul"), fill(3, "Sat 10 Jul"), pressing, do(schema.KindDish, 4)), nil,
			"1 FIRST, fill up 4, dish 1 · Evening round\nFIRST: fresh water (last done 3 Nov): Tub 2\n" +
				"Before leaving, fill to the brim: Tub 4 (nobody comes until Sat 10 Jul)\nBefore leaving, fill to the brim: Tub 1 and 2 (nobody comes until Tue 13 Jul)\n\n" +
				"- All 5 here: lid shut? animals seen or hidden\n- Scrub, fill the dish: Tub 5\n\nLast, with tools of their own:\n" +
				"Before leaving, fill to the brim: Tub 3 (nobody comes until Tue 13 Jul)\n- Tub 3: lid shut? animals seen or hidden\n\nAbout 13 min"},
		{"filled up on a day of routine", tubs(2), []rounds.Item{do(schema.KindLook, 0), fill(0, "Sat 10 Jul")}, nil,
			"Fill up 1 · Evening round\nBefore leaving, fill to the brim: Tub 1 (nobody comes until Sat 10 Jul)\n\n- Lid shut? Animals seen or hidden: Tub 1\n\nAbout 2 min"},
		{"a task of one's own", tubs(3), []rounds.Item{do(schema.KindDish, 0), own(1, "UV lamp on? Note it"), own(2, "UV lamp on? Note it")}, nil,
			"Dish 1, UV lamp on 2 · Evening round\n- Scrub, fill the dish: Tub 1\n- UV lamp on? Note it: Tub 2 and 3\n\nAbout 12 min"},
		{"several tasks of one's own", tubs(3), []rounds.Item{do(schema.KindDish, 0), own(1, "Wipe the glass of the long tank"), own(2, "Oil the lock")}, nil,
			"Dish 1, 2 more · Evening round\n- Tub 1: scrub, fill the dish\n- Tub 2: wipe the glass of the long tank\n- Tub 3: oil the lock\n\nAbout 12 min"},
		{"one of one's own", tubs(1), []rounds.Item{own(0, "Wipe the glass of the long tank")}, nil,
			"Wipe the glass 1 · Evening round\nTub 1\n- Wipe the glass of the long tank\n\nAbout 5 min"},
		{"some are in no room", []rounds.Place{{Name: "a", Title: "A", Room: "East"}, {Name: "b", Title: "B"}}, append(all(schema.KindMist, 2), do(schema.KindDish, 0), do(schema.KindDish, 1)), nil,
			"Dish 2 · Evening round\nEast\n- A: mist; scrub, fill the dish\n\nElsewhere\n- B: mist; scrub, fill the dish\n\nAbout 6 min"},
		{"the same twice is one", tubs(2), append(all(schema.KindWater, 2), do(schema.KindWater, 1)), nil,
			"Water · Evening round\n- Fresh water: Tub 1 and 2\n\nAbout 2 min"},
	} {
		r := rounds.Make(evening(), year, c.places, c.items, c.holds)
		got := string(r.Text(append(r.Summary(nil, 0), '\n'), 0))
		if got != c.want {
			t.Errorf("%s:\n%s\nwant:\n%s", c.about, got, c.want)
		}
		sheet := r.On(0)
		if text := strings.Join(sheet.Lines, "\n") + fmt.Sprintf("\n\nAbout %d min", sheet.Minutes); !strings.HasSuffix(got, "\n"+text) || sheet.Minutes != r.Minutes(0) {
			t.Errorf("%s: the sheet has\n%s", c.about, text)
		}
	}
}

// TestFormStays: how a round is worked does not change with the days on which its
// tasks fall, nor with what the log brings for a time.
func TestFormStays(t *testing.T) {
	places := tubs(5)
	var items []rounds.Item
	for k, kind := range []*schema.CareKind{schema.KindWater, schema.KindMist, schema.KindDish, schema.KindWeigh} {
		for i := range places {
			it := do(kind, i)
			it.Days = on((i+k)%5, (i+k)%5+5)
			items = append(items, it)
		}
	}
	for i := range places {
		it := do(schema.KindWatch, i)
		it.Days, it.Passing = on(i+5), true
		items = append(items, it)
	}
	r := rounds.Make(evening(), year, places, items, nil)
	for i := range 10 {
		for _, l := range r.On(i).Lines {
			if strings.HasPrefix(l, "- Tub") {
				t.Errorf("day %d: %s", i, l)
			}
		}
	}
}

// TestOrderStays: what most enclosures have stands before the rooms on every day, in
// one order, also when only a few have it.
func TestOrderStays(t *testing.T) {
	places := tubs(24)
	var items []rounds.Item
	for i := range places {
		places[i].Room = []string{"East", "West"}[i/12]
		for k, kind := range []*schema.CareKind{schema.KindWater, schema.KindMist} {
			it := do(kind, i)
			it.Days = year.New()
			for d := (i*i + k) % 7; d < 60; d += 2 + i%3 {
				it.Days.Add(d)
			}
			items = append(items, it)
		}
		items = append(items, feed(i, float64(1+i), 1))
	}
	r := rounds.Make(evening(), year, places, items, nil)
	for i := range 60 {
		text := string(r.Text(nil, i))
		common, rest, _ := strings.Cut(text, "\n\n")
		water, mist := strings.Index(common, "Fresh water: "), strings.Index(common, "Mist: ")
		if mist >= 0 && mist < water || strings.Contains(rest, "mist") || strings.Contains(rest, "water") {
			t.Errorf("day %d:\n%s", i, text)
		}
	}
}

// TestTextIsBounded: whatever enclosures are called and however many there are, no
// text grows past its bound; it ends between words, and whoever asks is told of it.
func TestTextIsBounded(t *testing.T) {
	for _, c := range []struct {
		n    int
		name func(int) string
		fits bool
	}{
		{300, func(i int) string { return fmt.Sprint("Tub ", i) }, true},
		{20_000, func(i int) string { return fmt.Sprint("Tub ", i) }, true},
		{3000, func(i int) string { return fmt.Sprint("🦂 ", i, "x") }, false},
		{900, func(i int) string { return fmt.Sprint(strings.Repeat("long", 20), i, "x") }, false},
	} {
		var places []rounds.Place
		var items []rounds.Item
		for i := range c.n {
			places = append(places, rounds.Place{Name: fmt.Sprint("tub-", i), Title: c.name(i)})
			items = append(items, do(schema.KindLook, i))
			if i%3 == 0 && !c.fits {
				w := do(schema.KindWater, i)
				w.Days = on(4, 7)
				items = append(items, w)
			}
		}
		r := rounds.Make(evening(), year, places, items, nil)
		for i := range 10 {
			text := r.Text([]byte("kept"), i)
			if len(text)-4 > rounds.MaxText || !utf8.Valid(text) || string(text[:4]) != "kept" || !strings.HasSuffix(string(text), " min") {
				t.Fatalf("%d enclosures: %d bytes, …%s", c.n, len(text)-4, text[max(0, len(text)-80):])
			}
			if whole := !strings.Contains(string(text), "split this round"); whole != (c.fits || i != 4 && i != 7) {
				t.Errorf("%d enclosures, day %d: whole %v", c.n, i, whole)
			}
		}
		day, length, ok := r.TooLong()
		if ok == c.fits || ok && (day != 4 || length <= rounds.MaxText) {
			t.Errorf("%d enclosures: too long on day %d with %d bytes: %v", c.n, day, length, ok)
		}
	}
}
