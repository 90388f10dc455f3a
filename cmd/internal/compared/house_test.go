package compared_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"vivary/compile/compare"
	"vivary/schema/civil"
)

// stocked is the house of twelve tanks with feeder animals, dates and figures of its people.
func stocked() map[string]string {
	files := house()
	files["shared.care.hcl"] = strings.Replace(files["shared.care.hcl"], "keeper \"ann\" {\n", "keeper \"ann\" {\n  budget = \"3 h\"\n  week   = \"20 h\"\n  rest   = \"11 h\"\n", 1)
	files["stock.care.hcl"] = `seller "fen" {
  delivers = ["tue", "thu"]
}

supply "crickets" {
  prey   = "cricket adult"
  seller = "fen"
  packs  = [10, 50]
  margin = "15 %"
}

tub "cricket-tub" {
  prey    = "cricket adult"
  count   = 100
  counted = "2026-11-29"
}

culture "roaches" {
  prey         = "roach medium"
  lead         = "60 days"
  lasts        = "28 days"
  allowed_here = true
}
`
	files["dates.care.hcl"] = `deadline "licence" {
  kind   = "licence"
  by     = "2027-06-30"
  keeper = "ann"
}

deadline "thermostats" {
  kind = "thermostat-test"
  last = "2026-11-20"
}
`
	files[tank(0)+".care.hcl"] = strings.Replace(files[tank(0)+".care.hcl"], `rotate     = ["cricket adult"]`, `rotate     = ["cricket adult", "roach medium"]`, 1)
	return files
}

// houseEdit is an edit of the house of which it is known what it says of which block.
type houseEdit struct {
	name, file, old, now string
	// says are parts of lines, "block: name: … → …", each of which a line of the house has;
	// nothing else is said than of those blocks. None where nothing is.
	says []string
	// food is what is said for the animals, "" for nothing.
	food string
	way  compare.Way
}

var houseEdits = []houseEdit{
	{name: "half as much", file: "stock", old: `margin = "15 %"`, now: "margin = \"15 %\"\n  weekly = 90", says: []string{"crickets: orders: "}, food: "cricket adult", way: compare.Worse},
	{name: "other days", file: "stock", old: `["tue", "thu"]`, now: `["wed", "fri"]`, says: []string{"crickets: orders: ", "by Wed 2 Dec, for Fri 4 Dec"}},
	{name: "a longer way", file: "stock", old: "delivers =", now: "lead     = 5\n  delivers =", says: []string{"crickets: orders: "}},
	{name: "held in milder frost", file: "stock", old: "delivers =", now: "held_below = \"1 C\"\n  delivers =", says: []string{"nothing travels below 1 C"}},
	{name: "closed", file: "stock", old: "delivers =", now: "closed   = [\"20 dec to 6 jan\"]\n  delivers =", says: []string{"crickets: orders: "}},
	{name: "larger packs", file: "stock", old: "[10, 50]", now: "[250]", says: []string{"of 250"}},
	{name: "no tub", file: "stock", old: "tub \"cricket-tub\" {\n  prey    = \"cricket adult\"\n  count   = 100\n  counted = \"2026-11-29\"\n}\n", now: "", says: []string{"cricket adult: there today: about 100 → not counted", "cricket-tub: care: ", "→ nothing", "crickets: orders: "}},
	{name: "fewer counted", file: "stock", old: "count   = 100", now: "count   = 10", says: []string{"about 100 → about 10", "crickets: orders: "}},
	{name: "tended each day", file: "stock", old: "count   = 100", now: "tend    = \"day\"\n  count   = 100", says: []string{"cricket-tub: care: feeder-care every 2 days"}},
	{name: "another lead", file: "stock", old: `"60 days"`, now: `"90 days"`, says: []string{"roaches: yields: 60 days after it is set up"}},
	{name: "set up from a day on", file: "stock", old: "lasts        =", now: "from         = \"2027-02-01\"\n  lasts        =", says: []string{"roaches: set up: ", "one on Mon 1 Feb 2027"}},
	{name: "no supply", file: "stock", old: "supply \"crickets\" {\n  prey   = \"cricket adult\"\n  seller = \"fen\"\n  packs  = [10, 50]\n  margin = \"15 %\"\n}\n", now: "", says: []string{"crickets: orders: ", "→ nothing"}, food: "cricket adult", way: compare.Worse},
	{name: "titles of feeders", file: "stock", old: "supply \"crickets\" {", now: "supply \"crickets\" {\n  title = \"The large ones\"\n  note  = \"in the shed\""},
	{name: "a title of a seller", file: "stock", old: "delivers =", now: "title    = \"Fen and Sons\"\n  delivers ="},
	{name: "looked up", file: "stock", old: "  count   = 100", now: "  allowed_here = true\n  count   = 100"},
	{name: "a date moved", file: "dates", old: "2027-06-30", now: "2027-07-31", says: []string{"licence: told: from Thu 1 Apr 2027 on, by Wed 30 Jun 2027 → from Sun 2 May 2027 on, by Sat 31 Jul 2027"}},
	{name: "a date taken out", file: "dates", old: "deadline \"licence\" {\n  kind   = \"licence\"\n  by     = \"2027-06-30\"\n  keeper = \"ann\"\n}\n", now: "", says: []string{"licence: told: from Thu 1 Apr 2027 on, by Wed 30 Jun 2027 → nothing", "licence: is for: Ann → nothing"}},
	{name: "a shorter lead", file: "dates", old: "  by     =", now: "  lead   = \"30 days\"\n  by     =", says: []string{"licence: told: from Thu 1 Apr 2027 on, by Wed 30 Jun 2027 → from Mon 31 May 2027 on, by Wed 30 Jun 2027"}},
	{name: "somebody else's", file: "dates", old: `keeper = "ann"`, now: `keeper = "bo"`, says: []string{"licence: is for: Ann → Bo"}},
	{name: "another kind", file: "dates", old: `"licence"` + "\n  by", now: `"insurance"` + "\n  by", says: []string{"licence: told: ", "licence: what is done: apply, book vet, check insurance → renew it"}},
	{name: "in its own words", file: "dates", old: "  by     =", now: "  does   = \"ring the council\"\n  by     =", says: []string{"licence: what is done: apply, book vet, check insurance → ring the council"}},
	{name: "tested later", file: "dates", old: "2026-11-20", now: "2026-11-28", says: []string{"thermostats: told: ", "on Sun 20 Dec 2026 → on Mon 28 Dec 2026"}},
	{name: "a title of a date", file: "dates", old: "  by     =", now: "  title  = \"The licence\"\n  note   = \"in the drawer\"\n  by     ="},
	{name: "a day kept", file: "shared", old: `"3 h"`, now: `"10 min"`, says: []string{"ann: budget of a day: 3 h, and the plan has up to about ", "not kept"}},
	{name: "a week kept", file: "shared", old: `"20 h"`, now: `"1 h"`, says: []string{"ann: time in a week: 20 h, and the plan has up to about ", "not kept"}},
	{name: "a rest", file: "shared", old: `"11 h"`, now: `"12 h"`, says: []string{"ann: rest from day to day: 11 h"}},
	{name: "no figure", file: "shared", old: "  week   = \"20 h\"\n", now: "", says: []string{"ann: time in a week: 20 h, and the plan has up to about ", "→ no figure"}},
}

func (e *houseEdit) made(t *testing.T, base map[string]string) map[string]string {
	t.Helper()
	is := maps.Clone(base)
	name := e.file + ".care.hcl"
	if !strings.Contains(is[name], e.old) {
		t.Fatalf("%s: %q does not stand there", e.name, e.old)
	}
	is[name] = strings.Replace(is[name], e.old, e.now, 1)
	return is
}

// ofHouse are the lines of a report about the house, turned round where that is asked.
func ofHouse(r *compare.Report, turn bool) (out []string) {
	for _, e := range r.House {
		was, is := e.Was, e.Is
		if turn {
			was, is = is, was
		}
		if was == "" {
			was = "nothing"
		}
		if is == "" {
			is = "nothing"
		}
		out = append(out, e.Of[0]+": "+e.Name+": "+was+" → "+is)
	}
	slices.Sort(out)
	return out
}

// lackOf is the effect on the food of the animals that lacks, or nil.
func lackOf(r *compare.Report) *compare.Effect {
	for i := range r.Effects {
		if e := &r.Effects[i]; e.Found == nil && e.Topic == compare.Food && len(e.Of) == 0 {
			return e
		}
	}
	return nil
}

// TestHouse: each edit of the house is told of with the line that did it, and what says nothing of
// what is ordered, told or worked is not. It is the same read the other way round.
func TestHouse(t *testing.T) {
	day := civil.Must(2026, 11, 30)
	base := stocked()
	if r := between(t, base, base, day); r.Is.Refused() || len(r.House)+len(r.Effects) > 0 {
		t.Fatalf("%+v %+v", r.House, r.Is.Findings)
	}
	for i := range houseEdits {
		e := &houseEdits[i]
		is := e.made(t, base)
		r := between(t, base, is, day)
		all := strings.Join(ofHouse(r, false), "\n")
		if (len(e.says) == 0) != (all == "") {
			t.Errorf("%s: %s", e.name, all)
		}
		for _, s := range e.says {
			if !strings.Contains(all, s) {
				t.Errorf("%s: %q does not stand in\n%s", e.name, s, all)
			}
		}
		if idle := len(r.Idle) == len(r.Pieces); idle != (len(e.says) == 0) {
			t.Errorf("%s: %d of %d pieces have no effect", e.name, len(r.Idle), len(r.Pieces))
		}
		for _, x := range r.House {
			if len(x.Cause) == 0 || slices.ContainsFunc(x.Cause, func(i int) bool { return i >= len(r.Pieces) }) {
				t.Errorf("%s: %s %s has the causes %v", e.name, x.Of, x.Name, x.Cause)
			}
		}
		switch lack := lackOf(r); {
		case e.food == "" && lack != nil:
			t.Errorf("%s: %s %s → %s", e.name, lack.Name, lack.Was, lack.Is)
		case e.food != "" && (lack == nil || lack.Way != e.way || len(lack.Cause) == 0 || !r.Changed()):
			t.Errorf("%s: no lack of %s: %+v", e.name, e.food, lack)
		}
		back := between(t, is, base, day)
		if a, b := ofHouse(r, false), ofHouse(back, true); !slices.Equal(a, b) {
			t.Errorf("%s: the other way round it is\n%s\nand not\n%s", e.name, strings.Join(b, "\n"), strings.Join(a, "\n"))
		}
		if a, b := lines(r, false), lines(back, true); !slices.Equal(a, b) {
			t.Errorf("%s:\n%s", e.name, differ(a, b))
		}
	}
}

// TestHouseTogether: of several edits at once each is told of with its own line alone.
func TestHouseTogether(t *testing.T) {
	base := stocked()
	is := maps.Clone(base)
	for _, name := range []string{"a date moved", "tended each day", "another lead", "a week kept", "a title of a date"} {
		i := slices.IndexFunc(houseEdits, func(e houseEdit) bool { return e.name == name })
		is = houseEdits[i].made(t, is)
	}
	put(`every  = "day"`, `every  = "2 days"`)(is, tank(4)) // which is about no feeder animals
	r := between(t, base, is, civil.Must(2026, 11, 30))
	want := map[string]string{"licence/told": "by", "cricket-tub/care": "tend", "roaches/yields": "lead", "ann/time in a week": "week"}
	for _, e := range r.House {
		attr, known := want[e.Of[0]+"/"+e.Name]
		if !known {
			continue
		}
		delete(want, e.Of[0]+"/"+e.Name)
		// The misting is part of what a keeper does in a week.
		alone := len(e.Cause) == 1 || attr == "week" && len(e.Cause) == 2 && r.Pieces[e.Cause[1]].Attr == "every"
		if !alone || r.Pieces[e.Cause[0]].Attr != attr {
			t.Errorf("%s, %s: %v", e.Of[0], e.Name, piecesOf(r, e.Cause))
		}
	}
	if len(want) > 0 {
		t.Errorf("nothing is said of %v", want)
	}
	var idle []string
	for _, i := range r.Idle {
		idle = append(idle, r.Pieces[i].Path())
	}
	if got := fmt.Sprint(idle); got != "[deadline licence, title deadline licence, note]" {
		t.Error(got)
	}
}

func piecesOf(r *compare.Report, all []int) (out []string) {
	for _, i := range all {
		out = append(out, r.Pieces[i].Path())
	}
	return out
}

// TestDemand: what is fed otherwise is ordered otherwise, and the line of the meals is why; so does
// what the log says that came.
func TestDemand(t *testing.T) {
	base := stocked()
	is := maps.Clone(base)
	put("per_animal = 2", "per_animal = 3")(is, tank(5))
	put("  species =", "  note    = \"by the door\"\n  species =")(is, tank(5))
	r := between(t, base, is, civil.Must(2026, 11, 30))
	if len(r.House) != 1 || r.House[0].Name != "orders" || fmt.Sprint(piecesOf(r, r.House[0].Cause)) != "[tank-05, feeding adults, per_animal]" {
		t.Errorf("%q: %+v", ofHouse(r, false), r.House)
	}
	is = maps.Clone(base)
	is["a.care.log"] = "2026-11-30 crickets delivered 200\n2026-11-29 deadline thermostats done\n"
	r = between(t, base, is, civil.Must(2026, 11, 30))
	got := map[string]string{}
	for _, e := range r.House {
		got[e.Of[0]+" "+e.Name] = fmt.Sprint(piecesOf(r, e.Cause))
	}
	for what, cause := range map[string]string{"crickets orders": "[the log of crickets]", "cricket adult there today": "[the log of crickets]", "thermostats told": "[the log of deadline thermostats]"} {
		if got[what] != cause {
			t.Errorf("%s: %s, and not %s", what, got[what], cause)
		}
	}
}

// TestRoundBegins: what it takes to begin a round is work, of which the line is named.
func TestRoundBegins(t *testing.T) {
	base := stocked()
	is := maps.Clone(base)
	is["shared.care.hcl"] = strings.Replace(is["shared.care.hcl"], "at     = \"08:00\"\n", "at     = \"08:00\"\n  start  = \"10 min\"\n", 1)
	r := between(t, base, is, civil.Must(2026, 11, 30))
	if len(r.Rounds) != 1 || !strings.HasSuffix(r.Rounds[0].Is, "10 min to begin") || len(r.Idle) > 0 {
		t.Errorf("%+v %v", r.Rounds, r.Idle)
	}
	if len(r.People) != 1 || r.People[0].Keeper != "ann" || r.People[0].Is-r.People[0].Was != 70 || len(r.People[0].Cause) != 1 {
		t.Errorf("%+v", r.People)
	}
}

// TestCultureTooLate: of a culture that the plan sets up too late it is told from when on it lacks.
func TestCultureTooLate(t *testing.T) {
	base := stocked()
	base[tank(0)+".care.hcl"] = strings.Replace(base[tank(0)+".care.hcl"], `rotate     = ["cricket adult", "roach medium"]`, `rotate     = ["roach medium"]`+"\n    from       = \"2027-04-01\"", 1)
	base["stock.care.hcl"] = strings.Replace(base["stock.care.hcl"], "  lasts        =", "  from         = \"2027-01-10\"\n  lasts        =", 1)
	is := maps.Clone(base)
	is["stock.care.hcl"] = strings.Replace(is["stock.care.hcl"], "2027-01-10", "2027-03-01", 1)
	day := civil.Must(2026, 11, 30)
	r := between(t, base, is, day)
	lack := lackOf(r)
	// The first Friday from 1 April on is the 2nd; of 60 days from 1 March the last is 30 April.
	if lack == nil || lack.Way != compare.Worse || lack.Is != "needed from Fri 2 Apr 2027 on, and the first culture yields 28 days after that" || lack.From != civil.Must(2027, 4, 2) {
		t.Fatalf("%+v\n%q", lack, ofHouse(r, false))
	}
	found := false
	for i := range r.Effects {
		found = found || r.Effects[i].Found != nil && r.Effects[i].Found.Rule.ID == "culture-late"
	}
	if !found {
		t.Error("no rule says that it is too late")
	}
	if back := lackOf(between(t, is, base, day)); back == nil || back.Way != compare.Better || back.Was != lack.Is {
		t.Errorf("%+v", back)
	}
}

// TestSellerAndSupply: who comes together with what they sell is why it is ordered; and what is only
// called otherwise, with the name that it had, is no change, whatever the log calls it.
func TestSellerAndSupply(t *testing.T) {
	base := stocked()
	base["a.care.log"] = "2026-11-27 crickets delivered 20\n2026-11-25 deadline thermostats done\n"
	is := maps.Clone(base)
	is["moor.care.hcl"] = "seller \"moor\" {\n  delivers = [\"wed\"]\n}\n\nsupply \"bought-roaches\" {\n  prey         = \"roach medium\"\n  seller       = \"moor\"\n  allowed_here = true\n}\n"
	r := between(t, base, is, civil.Must(2026, 11, 30))
	if len(r.Idle) > 0 || !strings.Contains(strings.Join(ofHouse(r, false), "\n"), "bought-roaches: orders: nothing → ") {
		t.Errorf("%v\n%q", r.Idle, ofHouse(r, false))
	}
	is = maps.Clone(base)
	is["stock.care.hcl"] = strings.NewReplacer("supply \"crickets\" {", "supply \"large\" {\n  formerly = \"crickets\"", "seller \"fen\" {", "seller \"marsh\" {\n  formerly = \"fen\"", "\"fen\"", "\"marsh\"").Replace(base["stock.care.hcl"])
	is["dates.care.hcl"] = strings.Replace(base["dates.care.hcl"], "deadline \"thermostats\" {", "deadline \"heaters\" {\n  formerly = \"thermostats\"", 1)
	if r := between(t, base, is, civil.Must(2026, 11, 30)); len(r.House)+len(r.Effects) > 0 {
		t.Errorf("%q %+v", ofHouse(r, false), r.Effects)
	}
}

// TestPhonesOfDates: what is told of the dates of a house is in a calendar of its own, of which the
// rounds are no part.
func TestPhonesOfDates(t *testing.T) {
	base := stocked()
	i := slices.IndexFunc(houseEdits, func(e houseEdit) bool { return e.name == "a date taken out" })
	r := between(t, base, houseEdits[i].made(t, base), civil.Must(2026, 11, 30))
	if len(r.Phones) != 1 || r.Phones[0].Calendar != "dates" || r.Phones[0].Added+r.Phones[0].Changed > 0 || r.Phones[0].Gone == 0 {
		t.Errorf("%+v", r.Phones)
	}
}
