package life_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/schema"
	"vivary/schema/civil"
)

// resting is a plan with one enclosure in which one animal takes a cool rest. Each pair
// of edits replaces a text by another.
func resting(edits ...string) string {
	text := `collection "c" {
  time_zone  = "Europe/London"
  quarantine = "30 days"
}
room "r" {
  temperature = "14 to 26 C"
}
enclosure "box" {
  species = "hadrurus-arizonensis"
  housing {
    inside = "40 x 30 x 40 cm"
    lid    = "solid, latched"
  }
  animals "one" {
    count = 1
    stage = "adult"
  }
  climate {
    warm_end = "30 C"
    heater "mat" {
      power      = "25 W"
      size       = "28 x 43 cm"
      place      = "side"
      thermostat = "30 C"
    }
  }
  season "rest" {
    from    = "1 nov"
    to      = "28 feb"
    ramp    = "2.5 C"
    feeding = "none"
    heating = "off"
    climate {
      warm_end = "14 C"
    }
  }
}
`
	for i := 0; i < len(edits); i += 2 {
		if !strings.Contains(text, edits[i]) {
			panic("no " + edits[i])
		}
		text = strings.Replace(text, edits[i], edits[i+1], 1)
	}
	return text
}

// lived reads the only enclosure of a plan.
func lived(t testing.TB, text, log string, h horizon.Horizon) *life.Enclosure {
	t.Helper()
	c := load(t, text, log)
	got, _ := lifeOf(c, c.Enclosures[0], c.Log, h)
	return got
}

// said lists what there is to do about the season, a line for each occasion, by day.
func said(e *life.Enclosure) (out []string) {
	all := slices.Clone(e.Tasks)
	for _, g := range e.Groups {
		all = append(all, g.Tasks...)
	}
	for _, x := range all {
		if strings.HasPrefix(x.Name, "season/") {
			for k := range x.Times {
				out = append(out, fmt.Sprint(x.On+civil.Date(k*x.Interval), " ", x.Text))
			}
		}
	}
	slices.Sort(out)
	return out
}

func same(t *testing.T, got []string, want string) {
	t.Helper()
	if w := strings.Split(strings.TrimSpace(want), "\n"); !slices.Equal(got, w) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(w, "\n"))
	}
}

// From 30 to 14 C at 2.5 C a week is seven steps each way, reckoned by hand. Two weeks
// without food at full heat before it are from reptifiles.com on brumation; that the
// first meal comes three to seven days after the heat is back is common practice.
func TestStepsOfARest(t *testing.T) {
	for _, c := range []struct {
		name, text, log, today, want string
		days                         int
	}{
		{"seven steps each way", resting(), "", "2026-10-01", `
2026-10-18 no meals from today, rest from Sun 1 Nov: take out leftovers, leave the heat as it is
2026-11-01 set the thermostat to 27.5 C: rest, step 1
2026-11-08 set the thermostat to 25 C: rest, step 2
2026-11-15 set the thermostat to 22.5 C: rest, step 3
2026-11-22 set the thermostat to 20 C: rest, step 4
2026-11-29 set the thermostat to 17.5 C: rest, step 5
2026-12-06 set the thermostat to 15 C: rest, step 6
2026-12-13 switch the heater off: rest, at about 14 C from here
2027-01-18 switch the heater on, set the thermostat to 16.5 C: rest ends by steps
2027-01-18 the heater is on again after rest: test that its thermostat switches it off
2027-01-25 set the thermostat to 19 C: rest ends by steps
2027-02-01 set the thermostat to 21.5 C: rest ends by steps
2027-02-08 set the thermostat to 24 C: rest ends by steps
2027-02-15 set the thermostat to 26.5 C: rest ends by steps
2027-02-22 set the thermostat to 29 C: rest ends by steps
2027-03-01 set the thermostat to 30 C: rest is over
2027-03-06 first meal after rest: one small killed item; out next day if it is left`, 200},
		{"a heater that stays on, in Fahrenheit", resting(`thermostat = "30 C"`, `thermostat = "86 F"`, `"2.5 C"`, `"5 F"`, `"14 C"
    }`, `"57 F"
    }`, `heating = "off"`, `note    = "dish full"`, `14 to 26 C`, `57 to 79 F`, `"30 C"`, `"86 F"`), "", "2026-10-20", `
2026-11-01 set the thermostat to 81 F: rest, step 1; dish full
2026-11-08 set the thermostat to 76 F: rest, step 2; dish full
2026-11-15 set the thermostat to 71 F: rest, step 3; dish full
2026-11-22 set the thermostat to 66 F: rest, step 4; dish full
2026-11-29 set the thermostat to 61 F: rest, step 5; dish full
2026-12-06 set the thermostat to 57 F: rest, step 6; dish full
2027-01-25 set the thermostat to 62 F: rest ends by steps; dish full
2027-02-01 set the thermostat to 67 F: rest ends by steps; dish full
2027-02-08 set the thermostat to 72 F: rest ends by steps; dish full
2027-02-15 set the thermostat to 77 F: rest ends by steps; dish full
2027-02-22 set the thermostat to 82 F: rest ends by steps; dish full
2027-03-01 set the thermostat to 86 F: rest is over; dish full`, 134},
		{"in a leap year, to the last of February", resting(`"28 feb"`, `"29 feb"`, `"2.5 C"`, `"8 C"`), "", "2027-12-20", `
2028-02-23 switch the heater on, set the thermostat to 22 C: rest ends by steps
2028-02-23 the heater is on again after rest: test that its thermostat switches it off
2028-03-01 set the thermostat to 30 C: rest is over
2028-03-06 first meal after rest: one small killed item; out next day if it is left`, 120},
		{"too short to get there: the heater stays on", resting(`"28 feb"`, `"25 nov"`), "", "2026-10-30", `
2026-11-01 set the thermostat to 27.5 C: rest, step 1
2026-11-08 set the thermostat to 25 C: rest, step 2
2026-11-19 set the thermostat to 27.5 C: rest ends by steps
2026-11-26 set the thermostat to 30 C: rest is over
2026-12-01 first meal after rest: one small killed item; out next day if it is left`, 60},
		{"ended by what was seen in it", resting(), "2026-11-18 box one hanging\n", "2026-11-19", `
2026-11-19 end rest, moulting since 18 Nov 2026: heat up by steps
2026-11-19 set the thermostat to 25 C: rest ends by steps
2026-11-20 end rest, moulting since 18 Nov 2026: heat up by steps
2026-11-21 end rest, moulting since 18 Nov 2026: heat up by steps
2026-11-22 end rest, moulting since 18 Nov 2026: heat up by steps
2026-11-23 end rest, moulting since 18 Nov 2026: heat up by steps
2026-11-24 end rest, moulting since 18 Nov 2026: heat up by steps
2026-11-25 end rest, moulting since 18 Nov 2026: heat up by steps
2026-11-26 set the thermostat to 27.5 C: rest ends by steps
2026-12-03 set the thermostat to 30 C: rest is over`, 60},
		{"weighed weekly, where the plan weighs", resting(`species = "hadrurus-arizonensis"`, `species = "hadrurus-arizonensis"
  care "weigh" {
    every = "month"
  }`, `"28 feb"`, `"12 nov"`), "", "2026-10-30", `
2026-11-01 set the thermostat to 27.5 C: rest, step 1
2026-11-01 weigh: more than 10 % lost since rest began? end it
2026-11-08 weigh: more than 10 % lost since rest began? end it
2026-11-13 set the thermostat to 30 C: rest is over
2026-11-18 first meal after rest: one small killed item; out next day if it is left`, 60},
	} {
		t.Run(c.name, func(t *testing.T) {
			same(t, said(lived(t, c.text, c.log, horizon.Horizon{From: day(c.today), Days: c.days})), c.want)
		})
	}
}

// The same days are told whenever it is read: before the rest, in the middle of it, and
// a year later; what is over stays as it was.
func TestARestIsTheSameEachDay(t *testing.T) {
	all := said(lived(t, resting(), "", horizon.Horizon{From: day("2026-09-01"), Days: 1200}))
	if len(all) < 2*17 {
		t.Fatalf("two winters have %d lines", len(all))
	}
	for from := day("2026-09-02"); from < day("2027-12-01"); from++ {
		h := horizon.Horizon{From: from, Days: 500}
		got := said(lived(t, resting(), "", h))
		var want []string
		for _, line := range all {
			if on := day(line[:10]); on >= from && on <= h.Last() {
				want = append(want, line)
			}
		}
		if !slices.Equal(got, want) {
			t.Fatalf("from %s:\n%s\nwant\n%s", from, strings.Join(got, "\n"), strings.Join(want, "\n"))
		}
	}
}

// What a rest takes out, and from when: meals from two weeks before until a week after
// the first, digging and handling in it, tests of the heater while it is off.
func TestHoldsOfARest(t *testing.T) {
	e := lived(t, resting(), "", horizon.Horizon{From: day("2026-12-20"), Days: 400})
	held := func(on string, row schema.Row) bool {
		return slices.ContainsFunc(e.Holds, func(h life.Hold) bool {
			return h.Out(row) && h.From <= day(on) && day(on) < h.Until && h.Cool
		})
	}
	for _, c := range []struct {
		row         schema.Row
		from, until string // the first day held, and the first after it
	}{
		{schema.RowDeep, "2026-11-01", "2027-03-01"}, {schema.RowHandle, "2026-11-01", "2027-03-01"},
		{schema.RowRehouse, "2026-11-01", "2027-03-01"}, {schema.RowCount, "2026-11-01", "2027-03-01"},
		{schema.RowDevice, "2026-12-13", "2027-01-18"},
		{schema.RowLive, "2026-10-18", "2027-03-06"}, {schema.RowKilled, "2027-03-07", "2027-03-13"},
	} {
		for d := day(c.from) - 3; d <= day(c.until)+3; d++ {
			if d == day("2027-03-06") || c.row == schema.RowLive && d > day("2027-03-06") || c.row == schema.RowKilled && d < day("2027-03-06") {
				continue // the days of the other of the two meals
			}
			if got, want := held(d.String(), c.row), day(c.from) <= d && d < day(c.until); got != want {
				t.Errorf("%s on %s is held: %v", c.row, d, got)
			}
		}
	}
	for _, row := range []schema.Row{schema.RowLook, schema.RowReading, schema.RowWater, schema.RowDish, schema.RowClean} {
		if held("2027-01-01", row) {
			t.Errorf("%s is held", row)
		}
	}
}

// Who must not rest keeps heat and meals, and is said first.
func TestWhoMustNotRest(t *testing.T) {
	for _, c := range []struct {
		name, text, log, why string
		written              bool
	}{
		{"adult", resting(), "", "", false},
		{"juvenile", resting(`stage = "adult"`, `stage = "juvenile"`), "", "one are juvenile", true},
		{"gravid in the plan", resting(`stage = "adult"`, `stage = "adult"
    state = "gravid"`), "", "one may be gravid", true},
		{"gravid in the log", resting(), "2026-09-20 box one gravid?\n", "one may be gravid since 20 Sep", false},
		{"less than a year old", resting(`stage = "adult"`, `stage = "adult"
    born  = "2026-01-10"`), "", "one are less than a year old", false},
		{"just over a year", resting(`stage = "adult"`, `stage = "adult"
    born  = "2025-10-30"`), "", "", false},
		{"wild caught in June", resting(`stage = "adult"`, `stage = "adult"
    origin = "wild caught"
    arrived = "2026-06-01"`), "", "one, wild caught, came on 1 Jun", false},
		{"in quarantine", resting(), "2026-10-12 box one arrived 0\n", "in quarantine until 11 Nov", false},
		{"mites", resting(), "2026-10-10 box mites\n", "mites were seen on 10 Oct", false},
		{"mites long ago", resting(), "2026-09-10 box mites\n", "", false},
		{"a moult is near", resting(), "2026-10-01 box one premoult\n", "before a moult since 1 Oct 2026", false},
		{"a tropical species", resting("hadrurus-arizonensis", "pandinus-imperator"), "", "pandinus-imperator takes no cool rest", true},
		{"a tropical species in a warm room", resting("hadrurus-arizonensis", "pandinus-imperator", `"14 C"`, `"24 C"`), "", "", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			e := lived(t, c.text, c.log, horizon.Horizon{From: day("2026-10-15"), Days: 250})
			why, written := "", false
			if len(e.Rests) > 0 && len(e.Rests[0].Unfit) > 0 {
				why, written = e.Rests[0].Unfit[0].Why, e.Rests[0].Unfit[0].Written
			}
			if why != c.why || written != c.written {
				t.Fatalf("unfit: %q, %v; want %q, %v", why, written, c.why, c.written)
			}
			if why == "" {
				return
			}
			if held := slices.ContainsFunc(e.Holds, func(h life.Hold) bool { return h.From < day("2027-04-01") && h.Until > day("2026-11-01") }); held {
				t.Error("the rest is held all the same")
			}
			for _, x := range e.Tasks {
				if strings.HasPrefix(x.Name, "season/") && !x.High {
					t.Errorf("and there is %q", x.Text)
				}
			}
		})
	}
}

// A template's season is left out where an enclosure says so, and only there.
func TestSeasonLeftOut(t *testing.T) {
	text := strings.Replace(resting(), `enclosure "box"`, `template "t"`, 1) + "enclosure \"box\" {\n  template = \"t\"\n  season \"rest\" {\n    off = true\n  }\n}\nenclosure \"other\" {\n  template = \"t\"\n}\n"
	c := load(t, text, "")
	for _, e := range c.Enclosures {
		got, _ := lifeOf(c, e, nil, year(day("2026-10-01")))
		if has := len(got.Rests) > 0; has != (e.Name.V == "other") {
			t.Errorf("%s has a rest: %v", e.Name.V, has)
		}
	}
}

// TestWhoComesIntoARest: one that arrives while its box is in a cool rest is in quarantine,
// and is not cooled and left without food on top of it (common practice, no source).
func TestWhoComesIntoARest(t *testing.T) {
	e := lived(t, resting(), "2026-11-10 box one arrived\n", horizon.Horizon{From: day("2026-11-20"), Days: 250})
	if len(e.Rests) == 0 || len(e.Rests[0].Unfit) != 1 || e.Rests[0].Unfit[0].Why != "in quarantine until 10 Dec" || e.Rests[0].Unfit[0].Written {
		t.Errorf("it rests: %+v", e.Rests)
	}
}
