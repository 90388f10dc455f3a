package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

// by commits all that there is, as somebody on a day.
func (c *clone) by(who, day, about string) {
	c.Helper()
	env := c.env
	c.env = append(slices.Clone(env), "GIT_AUTHOR_NAME="+who, "GIT_AUTHOR_DATE="+day+"T10:00:00Z", "GIT_COMMITTER_DATE="+day+"T10:00:00Z")
	c.commit(about)
	c.env = env
}

const (
	lead   = "Lead keeper"
	relief = "Relief keeper"
	burrow = "enclosures/burrow-a.care.hcl"
	logged = "records/2026.care.log"
)

// on runs the program as of another day.
func (c *clone) on(day string, status int, args ...string) string {
	c.Helper()
	env := c.env
	for _, e := range env {
		if home, ok := strings.CutPrefix(e, "HOME="); ok {
			c.env = []string{"PATH=" + filepath.Join(home, "bin", "the") + ":" + os.Getenv("PATH"), "HOME=" + home, "TZ=UTC", "NO_COLOR=1"}
		}
	}
	out := c.vivary(status, append([]string{"--now", day}, args...)...)
	c.env = env
	return out
}

// storied is Quillmoor with a history of burrow-a by two people.
func storied(t *testing.T) *clone {
	t.Helper()
	g := inGit(t, filepath.Join(t.TempDir(), "house"), nobody(t))
	if err := os.CopyFS(g.dir, os.DirFS("../../examples/quillmoor")); err != nil {
		t.Fatal(err)
	}
	g.by(lead, "2026-03-02", "The house")
	g.edit(burrow, `every  = "day"`, `every  = "2 days"`)
	g.by(relief, "2026-04-03", "Mist half as often")
	g.edit(burrow, `every  = "2 days"`, `every  = "day"`)
	g.by(lead, "2026-05-10", "Mist daily again")
	g.edit(burrow, `enclosure "burrow-a" {`, "enclosure \"big-burrow\" {\n  formerly = \"burrow-a\"")
	g.git("mv", burrow, "shelf.care.hcl")
	g.by(lead, "2026-06-01", "Another name, another file")
	g.edit("shelf.care.hcl", "# Twice a day", "#   Twice a day")
	g.edit("enclosures/west.care.hcl", "title", "note = \"by the window\"\n  title")
	g.by(relief, "2026-06-15", "Laid out otherwise")
	g.add(logged, "2026-07-20 burrow-a moved 1 to burrow-b adults \"to the larger group\"\n")
	g.by(relief, "2026-07-21", "One more for the other burrow")
	g.add(logged, "2026-08-20 burrow-a died 1 \"found in the morning\"\n2026-08-21 burrow-a refused\n")
	g.by(relief, "2026-08-21", "A death")
	g.add("collection.care.hcl", "\naway \"lead\" {\n  from = \"2026-10-02\"\n  to   = \"2026-10-09\"\n}\n")
	g.by(lead, "2026-09-20", "A trip")
	return g
}

// history is what is printed of an enclosure, by its parts: the first line, each step, what is
// said at the end.
func (c *clone) history(args ...string) []string {
	c.Helper()
	return strings.Split(strings.TrimSpace(c.vivary(fine, append([]string{"history"}, args...)...)), "\n\n")
}

// holds holds that texts have words, each in its turn.
func holds(t *testing.T, texts []string, words ...[]string) {
	t.Helper()
	if len(texts) != len(words) {
		t.Fatalf("%d parts, not %d:\n%s", len(texts), len(words), strings.Join(texts, "\n\n"))
	}
	for i, text := range texts {
		for _, w := range words[i] {
			not := strings.HasPrefix(w, "!")
			if strings.Contains(text, strings.TrimPrefix(w, "!")) == not {
				t.Errorf("%q in\n%s", w, text)
			}
		}
	}
}

// story is what is to be told of burrow-a, newest first.
var story = [][]string{
	{"Burrow A (big-burrow): 7 steps"},
	{"Sun 20 Sep 2026  Lead keeper  ", "  A trip", "Harm", "collection.care.hcl:74  away lead is new", "[water-gap]"},
	{"Fri 21 Aug 2026  Relief keeper  ", "A death", "animals, adults: 2 adult, emperor scorpion → 1 adult", "2 lines: died and refused", "2026-08-20 burrow-a died 1", "!  records/2026.care.log:21"},
	{"Tue 21 Jul 2026  Relief keeper  ", "One more for the other", "animals, adults: 3 adult, emperor scorpion → 2 adult", "1 line: moved"},
	{"Mon 1 Jun 2026  Lead keeper  ", "Another name", "shelf.care.hcl:1  enclosure burrow-a is called big-burrow", "!Worse", "!Otherwise", "!Better"},
	{"Sun 10 May 2026  Lead keeper  ", "Mist daily again", "Better for the animals", burrow + ":53  burrow-a, care mist, every: \"2 days\" → \"day\"", "moisture: every 2 days → every day"},
	{"Fri 3 Apr 2026  Relief keeper  ", "Mist half as often", "Worse for the animals", "moisture: every day → every 2 days", "from Fri 3 Apr 2026"},
	{"Mon 2 Mar 2026  Lead keeper  ", "The house", "the history begins here: it is in the plan, with 3 animals"},
	{"Thu 27 Nov 2025 to Wed 25 Nov 2026", "mist", "† died", "> moved", "s seen", "not"},
}

// TestHistoryInGit: a history by two people, each step with its day, author and effect; what is
// only laid out otherwise, or of others, is not told.
func TestHistoryInGit(t *testing.T) {
	g := storied(t)
	parts := g.history("big-burrow")
	holds(t, parts, story...)
	for _, name := range []string{"burrow-a", "big-burrow"} { // by either name, and the same bytes
		if again := g.history(name); !slices.Equal(parts, again) {
			t.Errorf("%s:\n%s", name, strings.Join(again, "\n\n"))
		}
	}
	holds(t, g.history("burrow-b")[2:4], []string{"One more for the other burrow", "burrow-a moved 1 to burrow-b"}, []string{"The house"})

	// A month later the past is the same, but for the window of the year.
	later := strings.Split(strings.TrimSpace(g.on("2026-12-25", fine, "history", "big-burrow")), "\n\n")
	if !slices.Equal(parts[:len(parts)-1], later[:len(later)-1]) {
		t.Errorf("a month later:\n%s", strings.Join(later, "\n\n"))
	}

	// What is not committed yet stands at the top, and is of today.
	g.edit("shelf.care.hcl", `per_animal = 2`, `per_animal = 3`)
	parts = g.history("burrow-a")
	holds(t, parts[:2], []string{"8 steps"}, []string{"Not committed yet", "per_animal: 2 → 3", "food, adults: 4 items"})
	g.edit("shelf.care.hcl", "enclosure", "enclosure {{")
	holds(t, g.history("burrow-a")[:3], []string{"8 steps"}, []string{"Not committed yet", "could not be understood", "shelf.care.hcl:1"}, []string{"A trip"})

	// One that is there no more is found by the name that it had.
	g.git("checkout", "-q", "--", ".")
	g.git("rm", "-q", "shelf.care.hcl")
	g.by(lead, "2026-11-01", "Given up")
	for _, name := range []string{"burrow-a", "big-burrow"} {
		holds(t, g.history(name)[:3], []string{"8 steps"}, []string{"Sun 1 Nov 2026", "Given up", "not in the plan any more", "[animals-missing]", "!In the log", "!no more in the log"}, []string{"A trip"})
	}
	g.git("revert", "-n", "HEAD")
	g.by(lead, "2026-11-02", "Kept after all")
	holds(t, g.history("burrow-a")[:3], []string{"9 steps"}, []string{"Kept after all", "new: 1 animal", "!In the log"}, []string{"Given up"})
	out := g.vivary(usage, "history", "burow-b")
	if !strings.Contains(out, "did you mean burrow-b?") {
		t.Error(out)
	}
}

// TestHistoryYear: the weeks of the year are those of the plan that was in force.
func TestHistoryYear(t *testing.T) {
	g := storied(t)
	form := g.historyOf("burrow-a")
	stood := map[string]bool{}
	for _, c := range form.Year.Care {
		for _, d := range c.Stood {
			if c.Name == "mist" {
				stood[d] = true
			}
		}
		if c.Kind == "feed" && !slices.Equal(c.Not, []string{"2026-08-21"}) {
			t.Errorf("%+v", c)
		}
	}
	for _, d := range []string{"2026-03-02", "2026-04-02", "2026-05-10", "2026-11-25"} {
		if !stood[d] {
			t.Errorf("it is misted on %s", d)
		}
	}
	if stood["2026-03-01"] || stood["2026-04-20"] == stood["2026-04-21"] || stood["2026-05-01"] == stood["2026-05-02"] {
		t.Errorf("before the history, or daily: %v", stood)
	}
	// What stood while a plan was in force is what was due by it on its first day.
	g.git("checkout", "-q", "HEAD~1")
	var due dueForm
	out := g.on("2026-08-21", fine, "due", "--days", "30", "--format", "json")
	if err := json.Unmarshal([]byte(out), &due); err != nil {
		t.Fatal(err)
	}
	kinds := map[string]bool{}
	var was, is []string
	for _, c := range form.Year.Care {
		kinds[c.Kind] = true
		for _, d := range c.Stood {
			if d > "2026-08-21" && d < "2026-09-20" {
				was = append(was, d+" "+c.Kind)
			}
		}
	}
	for _, d := range due.Days {
		for _, r := range d.Rounds {
			for _, l := range r.Lines {
				if kinds[l.Kind] && d.Date > "2026-08-21" && d.Date < "2026-09-20" && slices.ContainsFunc(l.Enclosures, func(s stopForm) bool { return s.Enclosure == "big-burrow" }) {
					is = append(is, d.Date+" "+l.Kind)
				}
			}
		}
	}
	slices.Sort(was)
	slices.Sort(is)
	if is = slices.Compact(is); len(was) < 100 || !slices.Equal(slices.Compact(was), is) {
		t.Errorf("it stood\n%s\nand was due\n%s", strings.Join(was, "\n"), strings.Join(is, "\n"))
	}
}

// historyOf is the form of a history, as it is described.
func (c *clone) historyOf(args ...string) (f historyForm) {
	c.Helper()
	out := c.vivary(fine, append([]string{"history", "--format", "json"}, args...)...)
	form, err := jsonschema.UnmarshalJSON(strings.NewReader(out))
	if err == nil {
		err = forms(c.T)("history").Validate(form)
	}
	if err != nil {
		c.Errorf("%v\n%s", err, out)
	}
	if err := json.Unmarshal([]byte(out), &f); err != nil {
		c.Fatal(err)
	}
	return f
}

// TestHistoryAsCompared: the last step is what a comparison of the last two revisions says of that
// enclosure, as of that day.
func TestHistoryAsCompared(t *testing.T) {
	g := storied(t)
	for range 7 {
		var c compareForm
		out, _ := g.try("vivary", "compare", "HEAD~1", "HEAD", "--own-days", "--format", "json")
		if err := json.Unmarshal([]byte(out), &c); err != nil {
			t.Fatal(err)
		}
		told, several := map[bool][]string{}, map[string]bool{}
		add := func(compared bool, e *effectForm) {
			from := e.From
			if several[e.Name] = several[e.Name] || len(e.Enclosures) > 1; several[e.Name] {
				from = "" // it is that of the first of them
			}
			told[compared] = append(told[compared], e.Way+" "+e.Name+e.Rule+" "+e.Is+" "+from)
		}
		for i := range c.Animals {
			if e := &c.Animals[i]; slices.Contains(e.Enclosures, "burrow-a") || slices.Contains(e.Enclosures, "big-burrow") {
				add(true, e)
			}
		}
		subject := strings.TrimSpace(g.git("log", "-1", "--format=%s"))
		for _, s := range g.historyOf("burrow-a").Steps {
			for i := range s.Animals {
				if s.Subject == subject {
					add(false, &s.Animals[i])
				}
			}
		}
		slices.Sort(told[true])
		slices.Sort(told[false])
		if !slices.Equal(told[true], told[false]) {
			t.Errorf("%s: history\n%s\ncompare\n%s", subject, strings.Join(told[false], "\n"), strings.Join(told[true], "\n"))
		}
		g.git("reset", "-q", "--hard", "HEAD~1")
	}
}

// TestHistoryOfClones: a merge is a step of who merged, a bare repository has a history, a shallow
// clone says where it ends, and where there is no git or no repository that is said.
func TestHistoryOfClones(t *testing.T) {
	g := storied(t)
	g.git("checkout", "-q", "-b", "side")
	g.edit("shelf.care.hcl", `per_animal = 2`, `per_animal = 3`)
	g.by(relief, "2026-10-20", "More prey")
	g.git("checkout", "-q", "main")
	g.edit("rooms.care.hcl", "East room", "The east room")
	g.by(lead, "2026-10-21", "A title")
	g.env = append(g.env, "GIT_AUTHOR_DATE=2026-10-22T10:00:00Z", "GIT_COMMITTER_DATE=2026-10-22T10:00:00Z")
	g.git("merge", "-q", "--no-ff", "-m", "Prey of the side", "side")
	want := g.history("burrow-a")
	holds(t, want[1:3], []string{"Thu 22 Oct 2026  Lead keeper", "Prey of the side", "per_animal: 2 → 3"}, []string{"A trip"})

	bare, shallow := filepath.Join(t.TempDir(), "bare.git"), filepath.Join(t.TempDir(), "shallow")
	g.git("clone", "-q", "--bare", g.dir, bare)
	if got := g.history("burrow-a", "--in", bare); !slices.Equal(got, want) {
		t.Errorf("bare:\n%s", strings.Join(got, "\n\n"))
	}
	g.git("clone", "-q", "--depth", "4", "file://"+g.dir, shallow)
	got := g.history("burrow-a", "--in", shallow)
	end := strings.TrimSpace(g.git("log", "--first-parent", "-1", "--skip", "3", "--format=%h"))
	holds(t, got, []string{"2 steps"}, []string{"Prey of the side"}, []string{"A trip"}, []string{"What was before " + end + " is not known", "git fetch --unshallow", "Weeks without a letter"})

	alone := t.TempDir()
	if err := os.CopyFS(alone, os.DirFS("../../examples/quillmoor")); err != nil {
		t.Fatal(err)
	}
	for words, args := range map[string][]string{
		"git repository":     {"burrow-a", "--in", alone},
		"whose history?":     {},
		"name one enclosure": {"burrow-a", "burrow-b"},
		"text or json":       {"burrow-a", "--format", "markdown"},
		"no enclosure is or": {"nothing-like-it"},
	} {
		if out := g.vivary(usage, append([]string{"history"}, args...)...); !strings.Contains(out, words) {
			t.Errorf("%v: %s", args, out)
		}
	}
	empty := inGit(t, filepath.Join(t.TempDir(), "new"), nobody(t))
	if out := empty.vivary(usage, "history", "burrow-a"); !strings.Contains(out, "nothing has been committed yet") {
		t.Error(out)
	}
}

// TestHistoryEnds: of many steps the last are told, and with --whole all.
func TestHistoryEnds(t *testing.T) {
	g := inGit(t, filepath.Join(t.TempDir(), "house"), nobody(t))
	if err := os.CopyFS(g.dir, os.DirFS("../../examples/quillmoor")); err != nil {
		t.Fatal(err)
	}
	g.by(lead, "2024-03-02", "The house")
	for i := range 24 {
		day := "2024-04-" + string(rune('0'+(i+1)/10)) + string(rune('0'+(i+1)%10))
		g.add(logged, day+" burrow-a seen\n")
		g.by(relief, day, "Seen again")
	}
	parts := g.history("burrow-a")
	if len(parts) != 22 || !strings.HasPrefix(parts[21], "There are older steps: all of them with --whole.") {
		t.Errorf("%d parts, the last\n%s", len(parts), parts[len(parts)-1])
	}
	if parts := g.history("burrow-a", "--whole"); len(parts) != 27 || !strings.Contains(parts[25], "the history begins here") {
		t.Errorf("%d parts", len(parts))
	}
}
