package compile_test

import (
	"fmt"
	"math/rand/v2"
	"regexp"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/check"
	"vivary/compile/feeds"
	"vivary/compile/rounds"
	"vivary/internal/planned"
	"vivary/internal/randomplan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

const dwelling = `collection "house" {
  time_zone  = "Europe/London"
  quarantine = "60 days"
}
room "east" {
  temperature = "24 to 26 C"
}
`

// box is an enclosure that is sound, but for what is written into it.
func box(name, species, count, more string) string {
	return fmt.Sprintf(`enclosure %q {
  species = %q
  housing {
    inside = "76 x 46 x 41 cm"
    lid    = "solid, latched"
    vents  = "some"
    depth  = "16 cm"
    hides  = 4
  }
  animals "all" {
    count = %q
    stage = "adult"
  }
%s}
`, name, species, count, more)
}

func on(t *testing.T, day, text, log string) *compile.Result {
	t.Helper()
	c, found := planned.Files(t, planned.With(text, log))
	return compile.Compile(c, found, planned.Day(day).At(12*60, c.Location))
}

// worst is the severity of the worst finding of a rule, in words; "" for none.
func worst(r *compile.Result, rule string) string {
	out := ""
	var most finding.Severity
	for _, f := range r.Findings {
		if f.Rule.ID == rule && (out == "" || f.Severity > most) {
			out, most = f.Severity.String(), f.Severity
		}
	}
	return out
}

// What was seen is urgent; the same, written in the plan, refuses.
func TestSeenIsUrgent(t *testing.T) {
	group := box("colony", "pandinus-imperator", "1.2", "")
	for _, c := range []struct{ name, text, log, rule, want string }{
		{"nothing", dwelling + group, "", "brood-in-group", ""},
		{"a gravid female in a group", dwelling + group, "2027-03-01 colony gravid\n", "act-now", "urgent"},
		{"the same in the plan", dwelling + strings.Replace(group, "    stage", "    state = \"gravid\"\n    stage", 1), "", "brood-in-group", "error"},
		{"both", dwelling + strings.Replace(group, "    stage", "    state = \"gravid\"\n    stage", 1), "2027-03-01 colony gravid\n", "brood-in-group", "error"},
		{"a day that is none", dwelling + group, "2027-02-30 colony fed\n", "log-line", "urgent"},
		{"a day that has not come", dwelling + group, "2027-05-01 colony moult\n", "log-future", "urgent"},
		{"a box that is not there", dwelling + group, "2027-03-01 colonie fed\n", "unknown-name", "urgent"},
		{"a move to nowhere", dwelling + group, "2027-03-01 colony moved atlantis\n", "moved-nowhere", "urgent"},
	} {
		r := on(t, "2027-03-02", c.text, c.log)
		if got := worst(r, c.rule); got != c.want {
			t.Errorf("%s: %s is %q, want %q", c.name, c.rule, got, c.want)
		}
		if r.Refused() != (c.want == "error") {
			t.Errorf("%s: refused is %v", c.name, r.Refused())
		}
		if said := strings.Contains(r.Verdict(), "Every need is met"); said && c.want != "" {
			t.Errorf("%s: %s", c.name, r.Verdict())
		}
		if c.want == "urgent" && r.Findings[0].Severity != finding.Urgent {
			t.Errorf("%s: what is urgent does not stand first", c.name)
		}
	}
}

// What is urgent in an enclosure stands first in its rounds, for days on end.
func TestPressingStandsFirst(t *testing.T) {
	mother := strings.Replace(box("colony", "pandinus-imperator", "0.1", ""), "    stage", "    state = \"with brood\"\n    stage", 1)
	r := on(t, "2027-03-02", dwelling+mother+box("other", "pandinus-imperator", "2", ""), "2027-03-01 other moved 1 colony\n")
	for day := range 15 {
		got := ""
		for _, line := range linesOn(r, r.Today+civil.Date(day)) {
			if strings.HasPrefix(line, "FIRST: gravid") {
				got = line
			}
		}
		if want := day < 14; (got != "") != want || strings.Contains(got, "Other") {
			t.Errorf("in %d days: %q", day, got)
		}
	}
}

// A log that cannot be read keeps nobody's calendars away, and hides no mistake of the
// plan.
func TestLogThatCannotBeRead(t *testing.T) {
	text := dwelling + box("colony", "pandinus-imperator", "3", "")
	for name, log := range map[string]string{"bytes": "2027-03-01 colony fed\x00\n", "a merge": "<<<<<<< ours\n2027-03-01 colony fed\n=======\n"} {
		if r := on(t, "2027-03-02", text, log); r.Refused() || r.Urgent() == 0 {
			t.Errorf("%s: refused is %v, with %d urgent", name, r.Refused(), r.Urgent())
		}
		wrong := strings.Replace(text, "  species", "  room = \"west\"\n  species", 1)
		if r := on(t, "2027-03-02", wrong, log); worst(r, "unknown-name") != "error" {
			t.Errorf("%s: a room that is not there is passed over", name)
		}
	}
}

// An accept that has ended brings back what it silenced, and refuses nothing.
func TestAcceptEnds(t *testing.T) {
	shallow := strings.Replace(dwelling+box("colony", "pandinus-imperator", "3", "  accept \"substrate-shallow\" {\n    because = \"deeper tank\"\n    until = \"2027-03-10\"\n  }\n"), "16 cm", "5 cm", 1)
	if r := on(t, "2027-03-09", shallow, ""); worst(r, "substrate-shallow") != "" || r.Refused() {
		t.Fatalf("before its end: %s", worst(r, "substrate-shallow"))
	} else if said := strings.Join(r.InForce(), "\n"); !strings.Contains(said, "substrate-shallow until Wed 10 Mar 2027 (deeper tank)") {
		t.Errorf("in force: %q", said)
	}
	for _, day := range []string{"2027-03-10", "2027-03-11", "2029-01-01"} {
		r := on(t, day, shallow, "")
		if worst(r, "substrate-shallow") != "urgent" || r.Refused() || len(r.InForce()) > 0 {
			t.Errorf("%s: %s, refused is %v", day, worst(r, "substrate-shallow"), r.Refused())
		}
		if !slices.ContainsFunc(r.Findings, func(f finding.Finding) bool {
			return f.Rule.ID == "substrate-shallow" && len(f.Also) > 0 && strings.Contains(f.Also[len(f.Also)-1].Text, "accepted until Wed 10 Mar 2027")
		}) {
			t.Errorf("%s: the accept is not named", day)
		}
		for _, line := range linesOn(r, r.Today) {
			if strings.HasPrefix(line, "FIRST") {
				t.Errorf("%s: whoever stands in front of the tank is told: %s", day, line)
			}
		}
	}
}

var heads = regexp.MustCompile(`(?m)^enclosure "[^"]*" \{$`)

// TestNeverIsNever: an accept of what is never silenced does nothing, and says so.
func TestNeverIsNever(t *testing.T) {
	never := []string{"temperature-harmful", "room-too-hot", "room-too-cold", "heat-lost", "heater-bare", "heater-overshoot", "heater-unguarded",
		"kept-alone", "brood-in-group", "disturbing-held", "venom-unlocked", "venom-untrained", "fall-high", "sheet-weaker", "review-far"}
	tried := 0
	for _, rule := range compile.Rules() {
		if rule.Silence != finding.Never {
			if slices.Contains(never, rule.ID) {
				t.Errorf("%s can be silenced", rule.ID)
			}
			continue
		}
		e := compile.Example(rule.ID)
		if e.Found.Text == "" || !slices.ContainsFunc(check.Rules, func(r *check.Rule) bool { return r.ID == rule.ID }) {
			continue
		}
		text, log := check.Example(e.Found.Text)
		silenced := heads.ReplaceAllString(text, "$0\n  accept \""+rule.ID+"\" {\n    because = \"we know better\"\n    until   = \"2027-06-01\"\n  }")
		before, after := on(t, "2026-11-25", text, log), on(t, "2026-11-25", silenced, log)
		if worst(before, rule.ID) == "" {
			t.Errorf("%s: its example has nothing of it", rule.ID)
		}
		if worst(after, rule.ID) != worst(before, rule.ID) || worst(after, "accept-never") != "error" {
			t.Errorf("%s: %q became %q, and accept-never is %q", rule.ID, worst(before, rule.ID), worst(after, rule.ID), worst(after, "accept-never"))
		}
		tried++
	}
	if tried < len(never) {
		t.Errorf("only %d rules were tried", tried)
	}
}

// TestSeenNeverRefuses: a line of the log, of any word and true or not, never refuses a
// plan that builds without it, and without any: what is written in a plan refuses it, also
// where a line took it out of sight, such as the death of the last who lived there.
func TestSeenNeverRefuses(t *testing.T) {
	tried := 0
	for seed := range uint64(400) {
		p := randomplan.New(seed)
		if len(p.Boxes) == 0 {
			continue
		}
		files := p.Files(p.Today)
		now := p.Today.String()
		if before := compiledFresh(t, files, now); before.Plan.Location == nil || before.Refused() {
			continue
		}
		bare := map[string]string{"plan.care.hcl": files["plan.care.hcl"]}
		if compiledFresh(t, bare, now).Refused() {
			continue
		}
		rng := rand.New(rand.NewPCG(seed, 7))
		for range 3 {
			line := randomLine(p, rng)
			with := map[string]string{}
			for name, text := range files {
				with[name] = text
			}
			with["more.care.log"] = line
			if r := compiledFresh(t, with, now); r.Refused() {
				t.Errorf("seed %d: %s refuses: %s", seed, strings.TrimSpace(line), refusal(r))
			}
			tried++
		}
	}
	if tried < 200 {
		t.Errorf("only %d lines were tried", tried)
	}
}

// TestTimeNeverRefuses: a plan that builds today builds on every day to come, whatever of
// it has passed. It is built again every three weeks, and the last feeds are known.
func TestTimeNeverRefuses(t *testing.T) {
	tried := 0
	for seed := range uint64(40) {
		p := randomplan.New(seed)
		files := p.Files(p.Today)
		if before := compiledFresh(t, files, p.Today.String()); before.Plan.Location == nil || before.Refused() {
			continue
		}
		var told [][]byte
		for day := p.Today; day < p.Today+500; day += 21 {
			r := compiledTold(t, files, day, told)
			if r.Refused() {
				t.Errorf("seed %d, built on %s: on %s refused: %s", seed, p.Today, day, refusal(r))
				break
			}
			told = nil
			for _, f := range feeds.Of(r) {
				text, _ := f.Bytes(nil)
				told = append(told, text)
			}
			tried++
		}
	}
	if tried < 150 {
		t.Errorf("only %d days were tried", tried)
	}
}

// TestManyLines: a log full of lines, true or not, refuses nothing, and calendars are made
// of what is left.
func TestManyLines(t *testing.T) {
	tried := 0
	for seed := range uint64(150) {
		p := randomplan.New(seed)
		files := map[string]string{"plan.care.hcl": p.Text()}
		now := p.Today.String()
		if before := compiledFresh(t, files, now); before.Plan.Location == nil || before.Refused() {
			continue
		}
		rng := rand.New(rand.NewPCG(seed, 9))
		for range 12 {
			files["more.care.log"] += randomLine(p, rng)
		}
		r := compiledFresh(t, files, now)
		if r.Refused() {
			t.Fatalf("seed %d: refused: %s\n%s", seed, refusal(r), files["more.care.log"])
		}
		for _, f := range feeds.Of(r) {
			if _, err := f.Bytes(nil); err != nil {
				t.Errorf("seed %d: %s: %v", seed, f.Name, err)
			}
		}
		tried++
	}
	if tried < 50 {
		t.Errorf("only %d logs were tried", tried)
	}
}

// randomLine is a line of the log about an animal of a plan: a word of the language, and
// something after it that may stand there or not.
func randomLine(p *randomplan.Plan, rng *rand.Rand) string {
	b := p.Boxes[rng.IntN(len(p.Boxes))]
	word := schema.LogWords[rng.IntN(len(schema.LogWords))]
	parts := []string{(p.Today - civil.Date(rng.IntN(120))).String(), b.Name}
	if len(b.Groups) > 1 || rng.IntN(2) == 0 {
		parts = append(parts, b.Groups[rng.IntN(len(b.Groups))].Name)
	}
	parts = append(parts, word.Name)
	switch rng.IntN(5) {
	case 0:
		parts = append(parts, fmt.Sprint(1+rng.IntN(30)))
	case 1:
		parts = append(parts, p.Boxes[rng.IntN(len(p.Boxes))].Name)
	case 2:
		parts = append(parts, []string{"water", "look", "feed", "mist", "12 g"}[rng.IntN(5)])
	}
	return strings.Join(parts, " ") + "\n"
}

// refusal is the first finding that refuses a plan.
func refusal(r *compile.Result) string {
	for _, f := range r.Findings {
		if f.Severity.Refuses() {
			at := r.Plan.Files.Start(f.At)
			return fmt.Sprintf("%s:%d: %s [%s]", at.File, at.Line, f.Text, f.Rule.ID)
		}
	}
	return ""
}

func compiledTold(t *testing.T, files map[string]string, day civil.Date, heads [][]byte) *compile.Result {
	t.Helper()
	c, found := planned.Files(t, files)
	in := compile.Input{Plan: c, Loaded: found, Now: day.At(12*60, c.Location)}
	if heads != nil {
		in.Told = feeds.ToldBy(c.About.Name.V, feeds.ReadHeads(heads))
	}
	return compile.From(in)
}

// TestEndComesNear: an end of care that was built once refuses nothing when it comes near.
// It is worth knowing, then urgent; one that was just written is an error.
func TestEndComesNear(t *testing.T) {
	files := planned.With(dwelling+box("colony", "pandinus-imperator", "3", "  care \"water\" {\n    every = \"2 days\"\n    until = \"2028-06-30\"\n  }\n"), "")
	var heads [][]byte
	said := map[string]bool{}
	end := planned.Day("2028-06-30")
	for day := end - 500; day < end+40; day += 9 {
		r := compiledTold(t, files, day, heads)
		got := worst(r, "water-gap")
		said[got] = true
		if want := day >= end-14; r.Refused() || want != (got == "urgent") {
			t.Fatalf("%d days before the end: %q, refused is %v", end-day, got, r.Refused())
		}
		if left := end - day; left < 300 && left >= 0 && worst(compiledTold(t, files, day, nil), "water-gap") != "error" {
			t.Errorf("%d days before the end, just written: no error", left)
		}
		heads = nil
		for _, f := range feeds.Of(r) {
			text, _ := f.Bytes(nil)
			heads = append(heads, text)
		}
	}
	if !said[""] || !said["caution"] {
		t.Errorf("said: %v", said)
	}
}

// What ended on a day of which the plan told is urgent once that day has passed.
func TestDatePassed(t *testing.T) {
	text := dwelling + box("colony", "pandinus-imperator", "3", "  care \"water\" {\n    every = \"2 days\"\n    until = \"2027-06-30\"\n  }\n")
	for day, want := range map[string]string{"2027-03-02": "error", "2027-06-30": "error", "2027-07-03": "urgent", "2028-03-02": "urgent"} {
		if got := worst(on(t, day, text, ""), "water-gap"); got != want {
			t.Errorf("%s: %q, want %q", day, got, want)
		}
	}
}

// linesOn are the lines of all rounds of a day.
func linesOn(r *compile.Result, on civil.Date) (out []string) {
	for _, round := range r.Roster.Rounds {
		sheet := rounds.New(r.Roster, round, r.Roster.Picks(round, "")).On(int(on - r.Horizon.From))
		out = append(out, sheet.Lines...)
	}
	return out
}
