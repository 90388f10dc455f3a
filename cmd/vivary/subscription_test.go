package main

import (
	"bytes"
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/internal/feedoracle"
	"vivary/internal/oracles"
	"vivary/schema/civil"
)

// subscribedPlan has a calendar by round and one by care.
const subscribedPlan = `collection "c" {
  time_zone = "Europe/London"
}
room "east" {
  temperature = "24 to 26 C"
  humidity    = "50 to 60 %"
}
keeper "lead" {
}
round "evening" {
  at     = "19:30"
  keeper = "lead"
}
calendar "rounds" {
}
calendar "care" {
  entry = "per care"
}
enclosure "box" {
  species = "pandinus-imperator"
  room    = "east"
  housing {
    kind      = "glass"
    inside    = "76 x 46 x 41 cm"
    lid       = "solid, latched"
    substrate = "coir and topsoil"
    depth     = "16 cm"
    hides     = 4
  }
  animals "fern" {
    count = 1
    stage = "juvenile"
  }
  feeding "fern" {
    on         = ["mon", "thu"]
    per_animal = 2
    prey       = "cricket small"
  }
}
`

// subscriber is somebody who subscribed to the calendars of a plan when they were new and
// fetches them after each build, by programs that share no code with ours.
type subscriber struct {
	*testing.T
	files, out string // folders of the plan and of its calendars
	web        string // where calendars are served
	*oracles.Subscription
	names map[string]string // of calendars now, by the names they had
	shown map[string][]oracles.Line
}

// the days on which the subscriber looks, from the first build on.
var looked = [2]civil.Date{civil.Must(2026, 11, 25), civil.Must(2027, 1, 31)}

// changed builds the plan with a change, fetches, and holds that each entry is there
// once, on the days on which the feed has it.
func (s *subscriber) changed(on time.Time, plan, log string) {
	s.Helper()
	for name, text := range map[string]string{"plan.care.hcl": plan, "2026.care.log": log} {
		if err := os.WriteFile(filepath.Join(s.files, name), []byte(text), 0o600); err != nil {
			s.Fatal(err)
		}
	}
	if status, out, wrong := at(afero.NewOsFs(), on, "build", s.files, "--out", s.out); status != fine {
		s.Fatalf("status %d: %s%s", status, out, wrong)
	}
	addresses := map[string]string{}
	for here, name := range s.names {
		addresses[here] = s.web + "/" + name + ".ics"
	}
	s.Sync(s.T, addresses)
	s.shown = s.Shown(s.T, looked[0].String(), looked[1].String())
	for here, name := range s.names {
		feed, err := os.ReadFile(filepath.Join(s.out, name+".ics"))
		if err != nil {
			s.Fatal(err)
		}
		if n := bytes.Count(feed, []byte("BEGIN:VEVENT")); s.Entries(s.T, here) != n || n == 0 {
			s.Errorf("%s on %s: the feed has %d entries, and %d are here", name, on.Format(time.DateOnly), n, s.Entries(s.T, here))
		}
		told, _, err := feedoracle.Read(name, feed, looked[0], looked[1]+1)
		if err != nil {
			s.Fatal(err)
		}
		var want []oracles.Line
		for _, o := range told {
			want = append(want, oracles.Line{Day: o.Day.String(), At: o.At, Title: o.Summary})
		}
		oracles.SortLines(want)
		if d := firstDifference(linesOf(want), linesOf(s.shown[here])); d != "" || len(want) == 0 {
			s.Errorf("%s on %s: khal shows something else than the feed has: %s", name, on.Format(time.DateOnly), d)
		}
	}
}

func linesOf(all []oracles.Line) (out []string) {
	for _, l := range all {
		out = append(out, fmt.Sprintf("%s %s %s", l.Day, l.At, l.Title))
	}
	return out
}

// meals are the days after one on which a calendar has a meal.
func (s *subscriber) meals(calendar string, after civil.Date) map[time.Weekday]bool {
	days := map[time.Weekday]bool{}
	for _, l := range s.shown[calendar] {
		if day, err := civil.Parse(l.Day); err == nil && day > after && strings.Contains(strings.ToLower(l.Title), "feed ") {
			days[day.Weekday()] = true
		}
	}
	return days
}

// Somebody who subscribed with vdirsyncer and reads with khal sees, whatever is changed
// in the plan, what the feed has: entries move, none is there twice and none is lost.
func TestSubscriptionFollows(t *testing.T) {
	t.Parallel() // most of the time others run
	s := &subscriber{T: t, files: t.TempDir(), out: t.TempDir(), Subscription: oracles.Subscribe(t, "Europe/London"),
		names: map[string]string{"rounds": "rounds", "care": "care"}}
	server := httptest.NewServer(http.FileServer(http.Dir(s.out)))
	defer server.Close()
	s.web = server.URL
	day := func(n int) time.Time { return noon.AddDate(0, 0, n) }
	hold := func(what string, ok bool) {
		if !ok {
			t.Errorf("%s: meals on %v and %v", what, s.meals("rounds", looked[0]+10), s.meals("care", looked[0]+10))
		}
	}

	plan := subscribedPlan
	s.changed(noon, plan, "")
	for _, name := range []string{"rounds", "care"} {
		m := s.meals(name, looked[0])
		hold("new", len(m) == 2 && m[time.Monday] && m[time.Thursday])
	}

	plan = strings.Replace(plan, `["mon", "thu"]`, `["tue", "fri"]`, 1)
	s.changed(day(1), plan, "")
	for _, name := range []string{"rounds", "care"} {
		m := s.meals(name, looked[0]+1)
		hold("moved", len(m) == 2 && m[time.Tuesday] && m[time.Friday])
	}

	before := s.shown
	plan = strings.NewReplacer(`animals "fern" {`, "animals \"moss\" {\n    formerly = \"fern\"", `feeding "fern"`, `feeding "moss"`,
		`calendar "rounds" {`, "calendar \"daily\" {\n  formerly = \"rounds\"", `calendar "care" {`, "calendar \"chores\" {\n  formerly = \"care\"").Replace(plan)
	s.names = map[string]string{"rounds": "daily", "care": "chores"}
	s.changed(day(1), plan, "")
	for name, lines := range before {
		if d := firstDifference(linesOf(lines), linesOf(s.shown[name])); d != "" {
			t.Errorf("renamed: %s shows something else than before: %s", name, d)
		}
	}

	s.changed(day(8), plan, "2026-12-03 box moult\n")
	for name, lines := range before {
		if firstDifference(linesOf(lines), linesOf(s.shown[name])) == "" {
			t.Errorf("a moult changes nothing in %s", name)
		}
	}
}
