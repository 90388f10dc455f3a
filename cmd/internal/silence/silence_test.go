package silence

import (
	"crypto/tls"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/builder"
	"vivary/cmd/internal/keys"
	"vivary/compile"
	"vivary/compile/roster"
	"vivary/internal/postbox"
	"vivary/internal/randomplan"
	"vivary/plan"
	"vivary/schema/civil"
)

var certified *tls.Config

func TestMain(m *testing.M) {
	dir, err := os.MkdirTemp("", "postbox")
	if err == nil {
		certified, err = postbox.Certificate(dir)
	}
	if err != nil {
		fmt.Println(err)
		os.Exit(1)
	}
	status := m.Run()
	_ = os.RemoveAll(dir)
	os.Exit(status)
}

const house = `collection "home" {
  title     = "Quillmoor"
  time_zone = "Europe/London"
}
keeper "lead" {
  phone = "01632 960157"
}
keeper "relief" {
  phone = "01632 960158"
}
keeper "never" {
}
round "evening" {
  at     = "19:30"
  keeper = "lead"
  ticked = true
}
room "east" {
  temperature = "22 to 25 C"
}
enclosure "tub-1" {
  species = "pandinus-imperator"
  room    = "east"
  housing {
    inside = "60 x 45 x 40 cm"
    lid    = "solid, latched"
    vents  = "some"
    depth  = "16 cm"
    hides  = 1
  }
  animals "adult" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 118"
  }
}
`

// compiled compiles a plan with its log at a moment of a day in London.
func compiled(t *testing.T, at time.Time, text, log string) *compile.Result {
	t.Helper()
	return compiledFiles(t, at, map[string]string{"home.care.hcl": text, "home.care.log": log})
}

func compiledFiles(t *testing.T, at time.Time, files map[string]string) *compile.Result {
	t.Helper()
	disk := afero.NewMemMapFs()
	for name, text := range files {
		if err := afero.WriteFile(disk, "c/"+name, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	b := builder.Builder{Root: "c", Out: "c/feeds", Now: func(loc *time.Location) (time.Time, error) {
		if loc == nil {
			loc = time.UTC
		}
		return at.In(loc), nil
	}}
	r, err := b.Compile(disk)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func london(t *testing.T, text string) time.Time {
	t.Helper()
	loc, err := time.LoadLocation("Europe/London")
	if err != nil {
		t.Fatal(err)
	}
	at, err := time.ParseInLocation("2006-01-02 15:04", text, loc)
	if err != nil {
		t.Fatal(err)
	}
	return at
}

// caused are the names of what is told of a plan at a moment.
func caused(t *testing.T, at, text, log string) (out []string) {
	t.Helper()
	now := london(t, at)
	r := compiled(t, now, text, log)
	if r.Roster == nil {
		t.Fatalf("the plan is not understood: %v", r.Findings)
	}
	for _, c := range Causes(Sight{Now: now, Result: r, UrgentAt: usualUrgentAt, After: 24 * time.Hour}) {
		out = append(out, c.Name+" "+c.Day.String())
	}
	return out
}

// TestRounds: somebody is told of a round that nobody ticked, from an hour after its end for
// half a day, and of no other.
func TestRounds(t *testing.T) {
	weekday := strings.Replace(house, "ticked = true", "ticked = true\n  on = [\"mon to fri\"]", 1)
	night := strings.Replace(house, "19:30", "23:00", 1)
	away := house + "away \"lead\" {\n  from = \"2026-11-23\"\n  to = \"2026-11-27\"\n}\n"
	const told = "round evening 2026-11-25"
	for _, c := range []struct{ name, at, text, log, want string }{
		{"before its end", "2026-11-25 20:15", house, "", ""},
		{"in the hour of grace", "2026-11-25 21:29", house, "", ""},
		{"after it", "2026-11-25 21:30", house, "", told},
		{"late in the evening", "2026-11-25 23:59", house, "", told},
		{"on the next morning", "2026-11-26 07:00", house, "", told},
		{"the next noon", "2026-11-26 12:00", house, "", ""},
		{"as long as it may take", "2026-11-25 21:30", strings.Replace(house, "ticked = true", "ticked = true\n  within = \"90 min\"", 1), "", ""},
		{"not declared", "2026-11-25 21:30", strings.Replace(house, "ticked = true", "ticked = false", 1), "", ""},
		{"ticked", "2026-11-25 21:30", house, "2026-11-25 tub-1 done look\n", ""},
		{"ticked the day before", "2026-11-25 21:30", house, "2026-11-24 tub-1 done look\n", told},
		{"a remark is no tick", "2026-11-25 21:30", house, "2026-11-25 tub-1 # quiet\n", told},
		{"ticked, on the next morning", "2026-11-26 07:00", house, "2026-11-25 tub-1 done look\n", ""},
		{"no round on Sundays", "2026-11-29 21:30", weekday, "", ""},
		{"after midnight", "2026-11-26 00:59", night, "", ""},
		{"after midnight and the hour", "2026-11-26 01:00", night, "", told},
		{"ticked after midnight", "2026-11-26 01:00", night, "2026-11-26 00:10 tub-1 done look\n", ""},
		{"nobody was to come", "2026-11-25 21:30", away, "", ""},
		{"clocks go back", "2026-10-25 21:30", house, "", "round evening 2026-10-25"},
		{"clocks go back, before", "2026-10-25 21:29", house, "", ""},
		{"clocks go forward", "2027-03-28 21:30", house, "", "round evening 2027-03-28"},
		{"clocks go forward, before", "2027-03-28 21:29", house, "", ""},
		{"clocks go back at night", "2026-10-25 00:59", night, "", ""},
	} {
		got := slices.DeleteFunc(caused(t, c.at, c.text, c.log), func(s string) bool { return strings.HasPrefix(s, "urgent") })
		if strings.Join(got, ", ") != c.want {
			t.Errorf("%s: %v, not %q", c.name, got, c.want)
		}
	}
}

// TestUrgent: what is urgent is told from the hour on, until it is not urgent any more.
func TestUrgent(t *testing.T) {
	text := strings.Replace(house, "ticked = true", "ticked = false", 1)
	lost := "2026-11-20 tub-1 fed\n2026-11-21 tub-1 escaped\n"
	for _, c := range []struct{ at, log, want string }{
		{"2026-11-25 09:59", lost, ""},
		{"2026-11-25 10:00", lost, "urgent 2026-11-25"},
		{"2026-11-26 00:00", lost, ""},
		{"2026-11-26 10:00", lost, "urgent 2026-11-26"},
		{"2026-10-25 10:00", "", ""},
		{"2026-11-25 10:00", lost + "2026-11-22 tub-1 recaptured\n", ""},
	} {
		if got := strings.Join(caused(t, c.at, text, c.log), ", "); got != c.want {
			t.Errorf("%s, %q: %q, not %q", c.at, c.log, got, c.want)
		}
	}
}

// TestUnbuilt: it is told once no build succeeded for a day, and on later days at the hour
// of what is urgent. Of a plan that is not understood nothing else is told.
func TestUnbuilt(t *testing.T) {
	bad := strings.Replace(house, "pandinus-imperator\"", "no-such", 1)
	since := london(t, "2026-11-24 18:00")
	for at, want := range map[string]bool{"2026-11-25 17:59": false, "2026-11-25 18:00": true, "2026-11-25 23:00": true, "2026-11-26 09:00": false, "2026-11-26 10:00": true} {
		now := london(t, at)
		r := compiled(t, now, bad, "")
		if !r.Refused() {
			t.Fatal("the plan is not refused")
		}
		got := Causes(Sight{Now: now, Result: r, UrgentAt: usualUrgentAt, Since: since, Why: "The plan has a mistake.", After: 24 * time.Hour})
		if (len(got) == 1) != want || want && (got[0].Name != "build" || !strings.Contains(strings.Join(got[0].Lines, "\n"), "home.care.hcl:")) {
			t.Errorf("%s: %v", at, got)
		}
	}
	none := &compile.Result{Plan: compiled(t, since, "", "").Plan}
	if got := Causes(Sight{Now: since.Add(25 * time.Hour), Result: none, Since: since, Why: "Why: no disk.", After: 24 * time.Hour}); len(got) != 1 {
		t.Error("a folder that cannot be read is told to nobody", got)
	}
}

// TestPeople: who is there is told, who is away is not; who stands in is told while they do.
func TestPeople(t *testing.T) {
	covered := house + "away \"lead\" {\n  from = \"2026-11-23\"\n  to = \"2026-11-27\"\n  cover = \"relief\"\n  visits = [\"tue\", \"thu\"]\n}\n"
	ring := &keys.Ring{Keepers: map[string]keys.Keeper{"lead": {Key: "key-of-lead", Mail: "lead@quillmoor.example"}, "relief": {Key: "key-of-relief", Mail: "relief@quillmoor.example"},
		"never": {Key: "key-of-never", Mail: "never@quillmoor.example"}, "gone": {Key: "key-of-gone", Mail: "gone@quillmoor.example"}}, Mail: &keys.Mail{To: []string{"club@quillmoor.example", "LEAD@quillmoor.example"}}}
	alone := &keys.Ring{Keepers: ring.Keepers, Mail: &keys.Mail{}}
	for _, c := range []struct {
		at, text string
		ring     *keys.Ring
		want     string
	}{
		{"2026-11-22 12:00", covered, ring, "lead club"},
		{"2026-11-23 12:00", covered, ring, "relief club LEAD"},
		{"2026-11-25 12:00", covered, ring, "relief club LEAD"}, // no visit, but theirs all the same
		{"2026-11-27 12:00", covered, ring, "lead club"},
		{"2026-11-25 12:00", house + "away \"lead\" {\n  from = \"2026-11-23\"\n  to = \"2026-11-27\"\n}\n", alone, "lead never relief"},
		{"2026-11-25 12:00", house, alone, "lead"},
	} {
		r := compiled(t, london(t, c.at), c.text, "")
		var got []string
		for _, p := range People(r, c.ring, "", r.Today) {
			if p.Page != "" {
				t.Errorf("%s: a link to %s, where it is not known how that is reached", p.Address, p.Page)
			}
		}
		for _, p := range People(r, c.ring, "https://care.example", r.Today) {
			name, _, _ := strings.Cut(p.Address, "@")
			got = append(got, name)
			if want := "https://care.example/k/key-of-" + p.Keeper + "/"; p.Keeper != "" && p.Page != want || p.Keeper == "" && p.Page != "" {
				t.Errorf("%s is sent to %s", p.Address, p.Page)
			}
		}
		if strings.Join(got, " ") != c.want {
			t.Errorf("%s: %v, not %s", c.at, got, c.want)
		}
	}
}

// TestAllTicked: in whatever plan, with each round declared as ticked: whoever logs all that
// is due today is told of no round, neither that evening nor on the morning after; and where
// nobody logs anything somebody is told of each round with something due.
func TestAllTicked(t *testing.T) {
	rounds := 0
	for seed := range uint64(120) {
		p := randomplan.New(seed)
		files := p.Files(p.Today - 1)
		for name, text := range files {
			files[name] = tickedOf(text)
		}
		loc, err := time.LoadLocation(p.Zone)
		if err != nil {
			t.Fatal(err)
		}
		night := p.Today.At(23*60+59, loc)
		r := compiledFiles(t, night, files)
		if r.Roster == nil || r.Refused() {
			continue
		}
		var log strings.Builder
		i, looks := r.Horizon.Today, []time.Time{night, (p.Today + 1).At(30, loc)}
		for _, round := range plan.Wholes(r.Roster.Rounds) {
			var all []*roster.Entry // whoever has it by a rota
			for _, part := range r.Roster.Parts(round) {
				all = append(all, due(r, part, i)...)
			}
			for _, e := range all {
				fmt.Fprintf(&log, "%s %s %s %s\n", p.Today, e.At(), e.Plan().Name.V, e.Said())
			}
			over := end(round, p.Today, loc).Add(grace)
			told := slices.Contains(roundsOf(r, over, p.Today), "round "+round.Name.V)
			if told != (round.Ticked.V && len(all) > 0) {
				t.Errorf("seed %d, %s with %d due: told %v", seed, round.Name.V, len(all), told)
			}
			if told {
				rounds++
				looks = append(looks, over)
			}
		}
		files["all.care.log"] = log.String()
		after := map[bool]*compile.Result{false: compiledFiles(t, night, files), true: compiledFiles(t, (p.Today+1).At(30, loc), files)}
		for _, at := range looks {
			if got := roundsOf(after[civil.FromTime(at) > p.Today], at, p.Today); len(got) > 0 {
				t.Errorf("seed %d, %s: all was logged, and it is told of %v\n%s", seed, at, got, log.String())
			}
		}
	}
	if rounds < 40 {
		t.Errorf("only %d rounds", rounds)
	}
}

// tickedOf declares each round of a plan as ticked.
func tickedOf(text string) string {
	var out strings.Builder
	for line := range strings.Lines(text) {
		out.WriteString(line)
		if strings.HasPrefix(line, "round \"") && strings.HasSuffix(line, "{\n") {
			out.WriteString("  ticked = true\n")
		}
	}
	return out.String()
}

// roundsOf are the rounds of a day of which is told.
func roundsOf(r *compile.Result, at time.Time, day civil.Date) (out []string) {
	for _, c := range Causes(Sight{Now: at, Result: r, UrgentAt: usualUrgentAt}) {
		if strings.HasPrefix(c.Name, "round ") && c.Day == day {
			out = append(out, c.Name)
		}
	}
	return out
}
