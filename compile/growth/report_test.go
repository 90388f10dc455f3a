package growth_test

import (
	"fmt"
	"strings"
	"testing"

	"vivary/compile/growth"
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/internal/planned"
	"vivary/plan"
)

const head = "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"r\" {\n  temperature = \"22 to 25 C\"\n}\n"

// box is an enclosure of that inside with what else stands in it.
func box(species, inside, rest string) string {
	return fmt.Sprintf("enclosure \"box\" {\n  species = %q\n  housing {\n    inside = %q\n    lid = \"solid, latched\"\n  }\n%s\n}\n", species, inside, rest)
}

func herd(name, count, rest string) string {
	return fmt.Sprintf("  animals %q {\n    count = %q\n    %s\n  }\n", name, count, rest)
}

// lives reads a plan and a log as of a day.
func lives(t testing.TB, text, log, today string) (*life.Enclosure, *plan.Collection) {
	t.Helper()
	c, _ := planned.Sound(t, planned.With(head+text, log))
	lives, _ := life.Read(c, life.Households(c)[0], horizon.Horizon{From: planned.Day(today), Days: 400})
	l := lives[0]
	return l, c
}

func report(t testing.TB, text, log, today string) growth.Report {
	t.Helper()
	l, c := lives(t, text, log, today)
	r, ok := growth.Of(l, c, planned.Day(today))
	if !ok {
		t.Fatal("no report")
	}
	return r
}

const (
	grownUp = "stage = \"adult\""
	today   = "2026-11-25"
)

// The floors are those of the sheet, added by hand: 1,200 cm² for the first emperor
// and 600 for each further (keepers; tropic-shop.de). "Room" is common practice, no
// source: 10 US gallons, 20 x 10 x 12 in, are enough for one adult.
func TestStockNow(t *testing.T) {
	for _, x := range []struct {
		name, species, inside, animals string
		floor                          float64
		fits                           bool
	}{
		{"room", "pandinus-imperator", "20 x 10 x 12 in", herd("a", "1", grownUp), 1200, true},
		{"a pair in the same", "pandinus-imperator", "20 x 10 x 12 in", herd("a", "1.1", grownUp), 1800, false},
		{"a trio", "pandinus-imperator", "80 x 30 x 30 cm", herd("a", "1.2", grownUp), 2400, true},
		{"floor enough, volume not", "pandinus-imperator", "50 x 30 x 18 cm", herd("a", "1", grownUp), 1200, false},
		{"largest first: 1200 and half of 550", "pandinus-imperator", "50 x 30 x 30 cm", herd("a", "1", grownUp) + herd("b", "1", "stage = \"juvenile\""), 1475, true},
		{"strictest where the stage is not known", "pandinus-imperator", "30 x 30 x 36 cm", herd("a", "1", ""), 1200, false},
		{"young with their mother are not counted", "pandinus-imperator", "50 x 30 x 30 cm", herd("a", "0.1", grownUp+"\nstate = \"with brood\"") + herd("b", "20", "stage = \"young\""), 1200, true},
		{"young without her are", "pandinus-imperator", "50 x 30 x 30 cm", herd("b", "20", "stage = \"young\""), 220 + 19*110, false},
	} {
		r := report(t, box(x.species, x.inside, x.animals), "", today)
		if near(t, x.name, r.Now.Floor, x.floor, 1e-9); r.Now.Fits() != x.fits {
			t.Errorf("%s: fits is %v", x.name, !x.fits)
		}
		if (r.TooSmall.When == growth.Now) == x.fits {
			t.Errorf("%s: too small %v", x.name, r.TooSmall)
		}
	}
}

// Young that nobody has seen do not live here yet, however long ago they may have been
// born: a female mated 389 days ago, gestation 7 to 18 months, may have juveniles of
// 129 days by now, and needs the room of one. That they may come is said, and they are
// counted once.
func TestUnseenYoung(t *testing.T) {
	r := report(t, box("pandinus-imperator", "90 x 45 x 45 cm", herd("a", "0.1", grownUp)), "2025-11-01 box a mated\n", today)
	if r.Now.Animals != 1 || r.Now.Floor != 1200 || !r.Now.Fits() {
		t.Errorf("now %+v", r.Now)
	}
	if d := r.TooSmall; d.When != growth.Never {
		t.Errorf("too small %v from %s for young that nobody has seen", d.When, d.From)
	}
	if b := r.Brood; b.Total.High != 36 || b.Reared != 1200+35*275 {
		t.Errorf("reared %+v", b)
	}
}

func TestNobodyThere(t *testing.T) {
	l, c := lives(t, box("pandinus-imperator", "20 x 10 x 12 in", herd("a", "1", grownUp)), "2026-11-01 box a died\n", today)
	if _, ok := growth.Of(l, c, planned.Day(today)); ok {
		t.Error("a report about nobody")
	}
}

// The windows are added by hand from the sheet's instar lengths, which are an
// estimate: no rearing of an emperor is published.
func TestTooSmall(t *testing.T) {
	for _, x := range []struct{ name, text, log, from, until string }{
		{"moulted on 2 November into instar 5 of 120 to 330 days, subadults need 1,800",
			box("pandinus-imperator", "20 x 10 x 12 in", herd("y", "2", "instar = 4")), "2026-11-02 box y moult 2\n", "2027-03-02", "2027-09-28"},
		{"mated: whether there will be young, and how many, nobody knows",
			box("pandinus-imperator", "90 x 45 x 45 cm", herd("a", "0.1", grownUp)), "2026-05-02 box a mated\n", "", ""},
		{"born, and how many was not said", box("pandinus-imperator", "90 x 45 x 45 cm", herd("a", "0.1", grownUp)), "2026-11-20 box a born\n", "", ""},
		{"as many as were counted", box("pandinus-imperator", "90 x 45 x 45 cm", herd("a", "0.1", grownUp)), "2026-09-01 box a born 30\n2026-09-20 box a first_moult\n", "*", ""},
		{"as large as grown ones need", box("pandinus-imperator", "90 x 45 x 45 cm", herd("y", "2", "instar = 4")), "", "", ""},
	} {
		r := report(t, x.text, x.log, today)
		d := r.TooSmall
		if x.from == "" {
			if d.When != growth.Never {
				t.Errorf("%s: %v", x.name, d)
			}
			continue
		}
		if d.When != growth.Between || x.from != "*" && d.From.String() != x.from || x.until != "" && d.Until.String() != x.until || d.Until != 0 && d.Until < d.From {
			t.Errorf("%s: %v %s to %s", x.name, d.When, d.From, d.Until)
		}
	}
	// What nobody has timed gets no day.
	r := report(t, box("brachypelma-hamorii", "15 x 15 x 15 cm", herd("a", "1", "stage = \"juvenile\"")), "", today)
	if r.TooSmall.When != growth.Undated {
		t.Errorf("undated: %v", r.TooSmall)
	}
}

const nurseryOf = "enclosure \"nursery\" {\n species = \"hadrurus-arizonensis\"\n housing {\n inside = \"40 x 30 x 20 cm\"\n lid = \"solid, latched\"\n places = %d\n }\n animals \"kept\" {\n count = 1\n stage = \"young\"\n }\n}\n"

// Hadrurus has broods of 10 to 35 that are taken out, 7 to 28 days and a week after
// the birth; the emperor's stay with their mother (Mahsberg 1990, Acta Zool. Fennica
// 190:267-272).
func TestBroods(t *testing.T) {
	hadrurus := box("hadrurus-arizonensis", "40 x 30 x 30 cm", herd("a", "0.1", grownUp))
	born := "2026-11-20 box a born 12\n"
	few := report(t, hadrurus+fmt.Sprintf(nurseryOf, 11), born, today)
	if b := few.Brood; !b.Leave || b.Stay || b.Places != 11 || b.Young.Low != 12 || b.Young.High != 12 {
		t.Errorf("%+v", b)
	}
	if d := few.Nursery; d.When != growth.Between || d.From != planned.Day("2026-11-20")+14 || d.Until != planned.Day("2026-11-20")+35 {
		t.Errorf("places run out %v %s to %s", d.When, d.From, d.Until)
	}
	if enough := report(t, hadrurus+fmt.Sprintf(nurseryOf, 12), born, today); enough.Nursery.When != growth.Never {
		t.Errorf("12 places are enough for 12: %v", enough.Nursery)
	}
	if bits := report(t, hadrurus, "2026-11-19 box a born 5\n"+born, today); bits.Brood.Young.High != 17 {
		t.Errorf("born on two days: %v", bits.Brood.Young)
	}
	if second := report(t, hadrurus, "2025-11-01 box a born 30\n2025-11-20 box a first_moult\n2025-12-10 box a separated\n"+born, today); second.Brood.Young.High != 12 {
		t.Errorf("last year's are counted too: %v", second.Brood.Young)
	}
	gravid := report(t, strings.Replace(hadrurus, grownUp, grownUp+"\nstate = \"gravid\"", 1), "", today)
	if b := gravid.Brood; b.Birth.When != growth.Undated || b.Young.Low != 10 || b.Young.High != 35 || gravid.Nursery.When != growth.Undated {
		t.Errorf("%+v %v", b, gravid.Nursery)
	}
	stay := report(t, box("pandinus-imperator", "90 x 45 x 45 cm", herd("a", "0.2", grownUp)), "2026-05-02 box a mated\n", today)
	if b := stay.Brood; !b.Stay || b.Mothers != 2 || b.Young.High != 70 || b.Total.High != 72 || b.Reared != 1800+70*275 || stay.Nursery.When != growth.Never {
		t.Errorf("%+v", b)
	}
}

// A jumping spider took prey from 15.2 % of its length on (Huseynov 2005, as source P75 has
// it), which is 8 % of a scorpion with its tail: 6 mm for a juvenile of 7.5 cm, 10.6 mm for
// an adult of 13 cm. Pinheads have 5 mm, small crickets 10, mealworms 25 to 32: these are
// light beside a grown cricket, and longer. Nine tenths of a gram, 30 % of 3 g, is the most
// for a juvenile.
func TestPreyStopsFitting(t *testing.T) {
	for _, x := range []struct {
		name, instar, prey, stage string
		when                      growth.When
		big                       bool
	}{
		{"pinheads are nothing for a juvenile", "4", "cricket pinhead", "juvenile", growth.Now, false},
		{"medium ones fit until subadult and after", "4", "cricket medium", "", growth.Never, false},
		{"small ones fit until they are adult", "2", "cricket small", "adult", growth.Between, false},
		{"mealworms fit until they are adult and then", "4", "mealworm large", "", growth.Never, false},
		{"a grown roach of 3 g is as heavy as a juvenile", "4", "roach adult", "juvenile", growth.Now, true},
	} {
		text := box("pandinus-imperator", "90 x 45 x 45 cm", herd("a", "2", "instar = "+x.instar)+
			"  feeding \"a\" {\n    every = \"4 days\"\n    prey = \""+x.prey+"\"\n  }\n")
		m := report(t, text, "", today).Prey
		if m.When != x.when || m.Stage != x.stage || (m.Share != nil) != x.big {
			t.Errorf("%s: %+v", x.name, m)
		}
	}
}

// What a keeper reads, in the units of the plan.
func TestLines(t *testing.T) {
	r := report(t, box("pandinus-imperator", "20 x 10 x 12 in", herd("young", "2", "instar = 4\n length = \"1.6 in\"")), "2026-11-02 box young moult 2\n", today)
	got := strings.Join(r.Lines(), "\n")
	for _, want := range []string{"2 animals need 128 sq in", "there are 200 sq in: enough", "Once all are adult they need 280 sq in: too little",
		"instar 5, juvenile: 2 to 2.1 in, 6 g; now", "Tue 2 Mar 2027 and Tue 28 Sep 2027 (estimate)"} {
		if !strings.Contains(got, want) {
			t.Errorf("no %q in\n%s", want, got)
		}
	}
	if strings.Contains(got, " cm") || strings.Contains(got, "NaN") {
		t.Errorf("units:\n%s", got)
	}
}

func TestNoAllocation(t *testing.T) {
	l, c := lives(t, box("pandinus-imperator", "50 x 25 x 30 cm", herd("young", "2", "instar = 4")+
		"  feeding \"young\" {\n    every = \"4 days\"\n    prey = \"cricket small\"\n  }\n"), "", today)
	on := planned.Day(today)
	growth.Of(l, c, on) // reads the feeders
	if n := testing.AllocsPerRun(100, func() { growth.Of(l, c, on) }); n != 0 {
		t.Errorf("%v allocations", n)
	}
}
