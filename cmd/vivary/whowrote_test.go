package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

// writes is the same clone, for somebody else on another day.
func (c clone) writes(who, day string) *clone {
	c.env = append(c.env[:len(c.env):len(c.env)], "GIT_AUTHOR_NAME="+who, "GIT_AUTHOR_DATE="+day+"T21:10:00+01:00", "GIT_COMMITTER_DATE="+day+"T21:10:00+01:00")
	return &c
}

// change puts one text in the place of another in a file.
func (c *clone) change(name, old, text string) {
	c.Helper()
	was := c.read(name)
	if strings.Count(was, old) != 1 {
		c.Fatalf("%q does not stand in %s once", old, name)
	}
	c.write(name, strings.Replace(was, old, text, 1))
}

// wrote holds that the last lines of an answer are these, with the number of the last
// revision in the place of @.
func (c *clone) wrote(lines string, asked ...string) {
	c.Helper()
	head := strings.TrimSpace(c.git("rev-parse", "--short", "HEAD"))
	out := c.vivary(fine, append([]string{"why"}, asked...)...)
	if want := strings.ReplaceAll(lines, "@", head) + "\n"; !strings.HasSuffix(out, want) {
		c.Errorf("why %s ends in\n%s\nand not in\n%s", strings.Join(asked, " "), out[max(0, len(out)-len(want)-200):], want)
	}
}

// A care names the revision in which it was written when it is done: not one that changed
// what stands around it, nor one that brought only its animals or their sheet.
func TestWhoWroteCare(t *testing.T) {
	c := inGit(t, filepath.Join(t.TempDir(), "house"), nobody(t))
	c.vivary(fine, "start")
	c.wrote0("burrow-a/mist", "Written, and not committed yet")
	const plan = "enclosures/burrow-a.care.hcl"
	lead, helper := c.writes("Lead keeper", "2026-03-12"), c.writes("Wren", "2026-04-02")
	lead.commit("Mist every day")
	first := `Written by Lead keeper on Thu 12 Mar 2026 in @ "Mist every day"`
	c.wrote(first, "burrow-a/mist")
	c.wrote(first, "burrow-a/mist", "--on", "2026-11-27")
	first = strings.ReplaceAll(first, "@", strings.TrimSpace(c.git("rev-parse", "--short", "HEAD")))

	c.write(plan, "# Wren was here.\n"+c.read(plan))
	c.change(plan, `"60 ml"`, `"65 ml"`)
	c.wrote(first, "burrow-a/mist")
	helper.commit("More water")
	c.wrote(first, "burrow-a/mist")
	c.wrote(`  Last changed by Wren on Thu 2 Apr 2026 in @ "More water"`, "burrow-a")

	c.change(plan, `every  = "day"`, `every  = "2 days"`)
	c.wrote("Written, and not committed yet", "burrow-a/mist")
	c.wrote("  Last changed, and not committed yet", "burrow-a")
	helper.commit("A mark that steers \x1b[31m a terminal")
	c.wrote(`Written by Wren on Thu 2 Apr 2026 in @ "A mark that steers [31m a terminal"`, "burrow-a/mist")

	for _, asked := range [][]string{{"burrow-a/look"}, {"burrow-a/look", "--on", "2026-11-27"}, {"water-gap"}, {"pandinus-imperator"}, {"rounds"}} {
		if out := c.vivary(fine, append([]string{"why"}, asked...)...); strings.Contains(out, "ritten by") || strings.Contains(out, "hanged by") {
			t.Errorf("who wrote what comes with the program:\n%s", out)
		}
	}
}

// wrote0 is wrote before there is a revision.
func (c *clone) wrote0(asked, line string) {
	c.Helper()
	if out := c.vivary(fine, "why", asked); !strings.HasSuffix(out, "\n"+line+"\n") {
		c.Errorf("why %s ends without %q:\n%s", asked, line, out)
	}
}

// What decides a day may be an absence or a line of a log, and has a revision of its own.
func TestWhoWroteWhatDecides(t *testing.T) {
	c := houseInGit(t)
	c.add("collection.care.hcl", "\nkeeper \"wren\" {\n  title = \"Wren\"\n}\n")
	c.writes("Lead keeper", "2026-03-12").commit("Wren helps")
	c.add("collection.care.hcl", "\naway \"me\" {\n  from  = \"2026-12-05\"\n  to    = \"2026-12-12\"\n  cover = \"wren\"\n}\n")
	c.writes("Lead keeper", "2026-04-01").commit("Away in December")
	absence := `The absence from Sat 5 Dec 2026 was written by Lead keeper on Wed 1 Apr 2026 in @ "Away in December"`
	c.wrote("  "+absence, "evening")
	c.wrote(absence, "wren")
	c.wrote(absence, "me")

	c.add("records/2026.care.log", "2026-11-24 burrow-a sealed\n")
	c.writes("Wren", "2026-11-24").commit("She has sealed herself in")
	c.add("records/2026.care.log", "2026-11-25 burrow-a seen\n")
	out := c.vivary(fine, "why", "burrow-a/feed-adult", "--on", "2026-11-28")
	if !strings.Contains(out, "held: ") {
		t.Fatalf("it is not held:\n%s", out)
	}
	c.wrote(`What decides that day was written by Wren on Tue 24 Nov 2026 in @ "She has sealed herself in"`, "burrow-a/feed-adult", "--on", "2026-11-28")
}

// A template is where the care of its enclosures was written.
func TestWhoWroteTemplate(t *testing.T) {
	c := houseInGit(t)
	const plan = "enclosures/burrow-a.care.hcl"
	c.change(plan, "\n  # Takes the place of the sheet's own misting.\n  care \"mist\" {\n    every  = \"day\"\n    amount = \"60 ml\"\n  }\n", "")
	c.change(plan, "  title   = \"Burrow A\"\n", "  title   = \"Burrow A\"\n  template = \"damp\"\n")
	c.write("templates.care.hcl", "template \"damp\" {\n  care \"mist\" {\n    every  = \"day\"\n    amount = \"60 ml\"\n  }\n}\n")
	c.writes("Lead keeper", "2026-03-12").commit("What all have in common")
	c.wrote(`Written by Lead keeper on Thu 12 Mar 2026 in @ "What all have in common"`, "burrow-a/mist")
}

// The form for programs says the same.
func TestWhoWroteForm(t *testing.T) {
	c := houseInGit(t)
	c.write("notes.txt", "no plan\n")
	c.writes("Lead keeper", "2026-03-12").commit("Words")
	described := forms(t)("why")
	asked := func(state string) wroteForm {
		t.Helper()
		out := c.vivary(fine, "why", "burrow-a/mist", "--format", "json")
		form, err := jsonschema.UnmarshalJSON(strings.NewReader(out))
		if err == nil {
			err = described.Validate(form)
		}
		var why whyForm
		if err == nil {
			err = json.Unmarshal([]byte(out), &why)
		}
		if err != nil || len(why.Answers) != 1 || len(why.Answers[0].Wrote) != 1 || why.Answers[0].Wrote[0].State != state {
			t.Fatalf("%v: %s", err, out)
		}
		return why.Answers[0].Wrote[0]
	}
	id := strings.TrimSpace(c.git("rev-parse", "HEAD~1"))
	if got := asked("committed"); got.ID != id || got.Author != "Lead keeper" || got.Subject != "a first collection" || got.At == "" {
		t.Errorf("%+v, and it is %s", got, id)
	}
	c.change("enclosures/burrow-a.care.hcl", `every  = "day"`, `every  = "2 days"`)
	if got := asked("uncommitted"); got.ID != "" {
		t.Errorf("%+v", got)
	}
	c.git("checkout", "-q", ".")
	c.git("clone", "-q", "--depth=1", "file://"+c.dir, c.path("../shallow"))
	c = &clone{t, c.path("../shallow"), c.env}
	if got := asked("in-or-before"); got.ID == "" {
		t.Errorf("%+v", got)
	}
	c.wrote(`Written in or before @ of Thu 12 Mar 2026: what came before is not in this clone`, "burrow-a/mist")
}

// Where git is not, or keeps nothing of it, all else is said as ever.
func TestWhoWroteWithoutGit(t *testing.T) {
	c := houseInGit(t)
	with := c.vivary(fine, "why", "burrow-a/mist")
	at := strings.LastIndex(strings.TrimSpace(with), "\n")
	if !strings.HasPrefix(with[at+1:], "Written by ") {
		t.Fatal(with)
	}
	rest := with[:at+1]
	same := func(where string, c *clone) {
		t.Helper()
		if out := c.vivary(fine, "why", "burrow-a/mist"); out != rest {
			t.Errorf("%s:\n%s", where, out)
		}
	}
	bare := *c
	path := t.TempDir() // without git
	for _, program := range []string{"sh", "vivary"} {
		real := "/bin/sh"
		if program == "vivary" {
			bin, _, _ := strings.Cut(strings.TrimPrefix(c.env[0], "PATH="), ":")
			real = filepath.Join(bin, "vivary")
		}
		if err := os.Symlink(real, filepath.Join(path, program)); err != nil {
			t.Fatal(err)
		}
	}
	bare.env = append([]string{"PATH=" + path}, c.env[1:]...)
	same("without git", &bare)

	c.git("rm", "-q", "-r", "--cached", "enclosures")
	c.add(".gitignore", "enclosures\n")
	c.commit("The plans are elsewhere")
	same("what is left out of git", c)
	if err := os.Rename(c.path(".git"), c.path("../set-aside")); err != nil {
		t.Fatal(err)
	}
	same("outside of a repository", c)
	c.write(".git", "no repository\n")
	same("with a broken repository", c)
}
