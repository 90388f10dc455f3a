package main

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// twoKeepers is a collection in git of two keepers: an animal by itself, a group of four, and
// two boxes that nobody lives in yet.
func twoKeepers(t *testing.T) *clone {
	t.Helper()
	c := houseInGit(t)
	c.add("collection.care.hcl", "\nkeeper \"relief\" {\n  title   = \"Relief keeper\"\n  trained = \"feeding\"\n  phone   = \"on the door\"\n}\n")
	c.write("collection.care.hcl", strings.Replace(c.read("collection.care.hcl"), "  title = \"Me\"\n", "  title = \"Me\"\n  phone = \"on the door\"\n", 1))
	one := c.read("enclosures/burrow-a.care.hcl")
	box := func(name, title, count, hides, size string) {
		c.write("enclosures/"+name+".care.hcl", strings.NewReplacer("burrow-a", name, "Burrow A", title, `"0.1.0"`, count, "hides     = 1", "hides     = "+hides, "60 x 45 x 40", size).Replace(one))
	}
	box("burrow-b", "Burrow B", `"1.3.0"`, "8", "120 x 60 x 45")
	box("spare-1", "Spare 1", "0", "4", "120 x 60 x 45")
	box("spare-2", "Spare 2", "0", "4", "120 x 60 x 45")
	c.write("records/2026.care.log", "2026-11-16 burrow-a fed\n2026-11-16 burrow-b fed\n")
	c.vivary(fine, "check")
	c.commit("two keepers")
	return c
}

// met are the findings of a check by severity and rule, in order.
func met(out string) (all []string) {
	for _, f := range regexp.MustCompile(`(?m)^\S+: (\w+): .*\[([a-z-]+)\]$`).FindAllStringSubmatch(out, -1) {
		all = append(all, f[1]+" "+f[2])
	}
	slices.Sort(all)
	return all
}

// merged commits what each of two wrote on a branch of its own and merges them.
func (c *clone) merged(name string, lead, relief func()) error {
	c.Helper()
	c.git("checkout", "-q", "-b", name+"-lead", "main")
	lead()
	c.commit("lead")
	c.git("checkout", "-q", "-b", name+"-relief", "main")
	relief()
	c.commit("relief")
	out, err := c.try("git", "merge", "-q", "--no-edit", name+"-lead")
	if err != nil {
		c.git("merge", "--abort")
		return fmt.Errorf("%w: %s", err, out)
	}
	return nil
}

// What two people logged without knowing of each other is merged by git without a conflict,
// whichever of them merges, and a check finds what counts an animal twice or leaves open
// where one is, and nothing in what is honest. No merge refuses a plan.
func TestLogsMerge(t *testing.T) {
	c := twoKeepers(t)
	const day = "2026-11-24 "
	for i, x := range []struct {
		about, lead, relief string
		found               string // severity and rule of each finding
	}{
		// What has to be found.
		{"one death of a group, in different words", day + `burrow-b died "on its back"`, day + `burrow-b died "in the hide"`, "caution log-twice"},
		{"one death, each by name", day + "by me burrow-b died", day + "by relief burrow-b died", "caution log-twice"},
		{"one death, both at the tank", day + "19:30 by me burrow-b died", day + "19:41 by relief burrow-b died", "caution log-twice"},
		{"the death of the only one, in different words", day + "burrow-a died", day + `burrow-a died "flat"`, "caution log-gone"},
		{"one animal into two boxes", day + "burrow-a moved to spare-1", day + "burrow-a moved to spare-2", "urgent log-gone"},
		{"some of a group, moved twice", day + "burrow-b moved 1 to spare-1", day + `burrow-b moved 1 to spare-1 "the small one"`, "caution log-twice"},
		{"a delivery, unpacked by two", day + "by me spare-1 arrived 2", day + "by relief spare-1 arrived 2", "caution log-twice, urgent act-now"},
		{"a birth, seen by two", day + "burrow-b born 12", day + `burrow-b born 12 "all white"`, "caution log-twice, urgent act-now"},
		{"an escape, seen by two", day + "burrow-b escaped", day + `burrow-b escaped "lid ajar"`, "caution log-twice, urgent act-now"},
		{"ate and refused", day + "by me burrow-a fed", day + "by relief burrow-a refused", "caution log-differs"},
		{"counted differently", day + "by me burrow-b counted 4", day + "by relief burrow-b counted 3", "caution log-differs"},
		{"more counted than there are", day + "burrow-b counted 4", day + "burrow-b counted 5", "urgent log-number"},
		{"two deaths, of which two take back one", day + "burrow-b died\n" + day + `burrow-b died "another"` + "\n" + day + "by me burrow-b withdrawn died 2026-11-24", day + "burrow-b died\n" + day + `by relief burrow-b withdrawn died 2026-11-24`, "caution log-withdrawn"},
		// What is honest.
		{"a refusal by name and a meal by nobody", day + "by me burrow-a refused", day + "burrow-a fed", ""},
		{"the same line", day + "burrow-b died", day + "burrow-b died", ""},
		{"two deaths, with their times", day + "08:10 by me burrow-b died", day + "19:40 by relief burrow-b died", ""},
		{"other boxes", day + "burrow-a fed", day + "burrow-b fed", ""},
		{"a meal that was refused at first", day + "08:10 by me burrow-a refused", day + "19:40 by relief burrow-a fed", ""},
		{"a group of which some ate", day + "by me burrow-b fed", day + "by relief burrow-b refused", ""},
		{"fed twice", day + "by me burrow-a fed", day + `by relief burrow-a fed 2 cricket "took both"`, ""},
		{"all were counted twice", day + "by me burrow-b counted 4", day + `by relief burrow-b counted 4 "all out"`, ""},
		{"a group that was parted by two", day + "by me burrow-b moved 1 to spare-1", day + "by relief burrow-b moved 1 to spare-2", ""},
		{"two parcels", day + "by me spare-1 arrived 2", day + "by relief spare-2 arrived 2", ""},
		{"one death, and a count of all that are left", day + "by me burrow-b died", day + "by relief burrow-b died\n2026-11-25 burrow-b counted 2", ""},
		{"meals that were taken up again", day + "by me burrow-a fed", day + "by relief burrow-a refused\n2026-11-25 burrow-a fed", ""},
		{"two take back the same", day + "burrow-b died\n" + day + "by me burrow-b withdrawn died 2026-11-24", day + "burrow-b died\n" + day + `by relief burrow-b withdrawn died 2026-11-24 "another box"`, ""},
		{"one takes back what both have", "2026-11-17 by me burrow-a withdrawn fed 2026-11-16", "2026-11-17 burrow-a fed", ""},
	} {
		var want []string
		if x.found != "" {
			want = strings.Split(x.found, ", ")
		}
		both := [2]string{x.lead, x.relief}
		for way := range 2 {
			err := c.merged(fmt.Sprintf("log-%d-%d", i, way), func() { c.add("records/2026.care.log", both[way]+"\n") }, func() { c.add("records/2026.care.log", both[1-way]+"\n") })
			if err != nil {
				t.Errorf("%s: %v", x.about, err)
				continue
			}
			log := c.read("records/2026.care.log")
			for _, line := range strings.Split(x.lead+"\n"+x.relief, "\n") {
				if strings.Count(log, line+"\n") != 1 {
					t.Errorf("%s: a line is lost, or there twice: %s\n%s", x.about, line, log)
				}
			}
			out := c.vivary(fine, "check")
			if got := met(out); !slices.Equal(got, want) {
				t.Errorf("%s, %d: found %q and not %q\n%s%s", x.about, way, got, want, log, out)
			}
		}
	}
}

// What git could not merge is told of as that, in a plan and in a log for which nobody told git
// how: its lines count.
func TestConflictsAreNamed(t *testing.T) {
	c := twoKeepers(t)
	c.git("rm", "-q", ".gitattributes")
	c.commit("no attributes")
	change := func(amount, log string) func() {
		return func() {
			c.write("enclosures/burrow-a.care.hcl", strings.Replace(c.read("enclosures/burrow-a.care.hcl"), `"60 ml"`, amount, 1))
			c.add("records/2026.care.log", log+"\n")
		}
	}
	c.git("config", "merge.conflictStyle", "diff3")
	c.git("checkout", "-q", "-b", "relief")
	change(`"70 ml"`, "2026-11-24 by relief burrow-a counted 1")()
	c.commit("relief")
	c.git("checkout", "-q", "main")
	change(`"80 ml"`, "2026-11-24 by me burrow-b died")()
	c.commit("lead")
	if out, err := c.try("git", "merge", "relief"); err == nil {
		t.Fatalf("no conflict: %s", out)
	}
	out := c.vivary(refused, "check")
	for _, want := range []string{"records/2026.care.log:3:1: urgent: git could not merge this log", "enclosures/burrow-a.care.hcl:46:1: error: git could not merge this", "3 more places: enclosures", "3 more places: records"} {
		if !strings.Contains(out, want) {
			t.Errorf("%q is not said:\n%s", want, out)
		}
	}
	if got := strings.Join(met(out), " "); strings.Contains(got, "twice") {
		t.Errorf("more is said of it: %s", got)
	}
	c.write("enclosures/burrow-a.care.hcl", strings.Replace(c.git("show", "main:enclosures/burrow-a.care.hcl"), `"80 ml"`, `"75 ml"`, 1))
	c.vivary(fine, "check")
	if out := c.vivary(refused, "note", "burrow-b", "counted", "4"); !strings.Contains(out, "there are 3") {
		t.Errorf("a line of the log beside a mark does not count: %s", out)
	}
}

// What was done before an animal died may stand after it, since git knows no hours: that is
// worth a word where no time tells, and no harm.
func TestFedAndDeadOnOneDay(t *testing.T) {
	c := twoKeepers(t)
	dead, fed := "2026-11-24 burrow-a died\n", "2026-11-24 burrow-a fed\n"
	for name, log := range map[string]string{dead + fed: "advice log-gone", fed + dead: "", strings.Replace(dead, "24", "24 19:40", 1) + strings.Replace(fed, "24", "24 08:10", 1): "",
		strings.Replace(dead, "24", "24 08:10", 1) + strings.Replace(fed, "24", "24 19:40", 1): "urgent log-gone", dead + strings.Replace(fed, "24", "25", 1): "urgent log-gone"} {
		c.write("records/2026.care.log", name)
		if got := strings.Join(met(c.vivary(fine, "check")), ", "); got != log {
			t.Errorf("found %q and not %q in\n%s", got, log, name)
		}
	}
	c.write("records/2026.care.log", dead)
	if out := c.vivary(refused, "note", "2026-11-24", "burrow-a", "fed"); !strings.Contains(out, "there are no adult") {
		t.Errorf("a meal of a dead animal is noted, since none asked: %s", out)
	}
}

// Logs that both began, as both do in January, that end without an end of line, or that were
// written on Windows, merge too; and each keeper's own need no merging at all.
func TestNewLogsMerge(t *testing.T) {
	c := twoKeepers(t)
	for i, x := range [][2]string{
		{"2026-11-24 burrow-a fed\n", "2026-11-24 burrow-b fed\n"},
		{"2026-11-24 burrow-a fed", "2026-11-24 burrow-b fed"},
		{"# ours\n2026-11-24 burrow-a fed\r\n", "2026-11-24 burrow-b fed\r\n"},
	} {
		if err := c.merged(fmt.Sprint("new-", i), func() { c.write("records/new.care.log", x[0]) }, func() { c.write("records/new.care.log", x[1]) }); err != nil {
			t.Error(err)
		}
		if log := c.read("records/new.care.log"); !strings.Contains(log+"\n", "2026-11-24 burrow-a fed\n") || !strings.Contains(log+"\n", "2026-11-24 burrow-b fed\n") {
			t.Errorf("not both are there: %q", log)
		}
		if got := met(c.vivary(fine, "check")); len(got) > 0 {
			t.Errorf("%q: %q", x, got)
		}
	}
}

// Two people look after one house for a week, each in a copy of their own, in which they note
// what they saw. They meet every few days, and nothing honest is found fault with.
func TestAnHonestWeekOfTwo(t *testing.T) {
	me := twoKeepers(t)
	me.git("config", "receive.denyCurrentBranch", "updateInstead")
	relief := me.cloned()
	note := func(c *clone, args ...string) { c.vivary(fine, append([]string{"note"}, args...)...) }
	meet := func() {
		t.Helper()
		for _, c := range []*clone{me, relief} {
			if c.git("status", "--porcelain") != "" {
				c.commit("what was seen")
			}
		}
		relief.git("pull", "-q", "--no-rebase", "--no-edit", "origin", "main")
		relief.git("push", "-q", "origin", "HEAD:main")
		if a, b := me.read("records/2026.care.log"), relief.read("records/2026.care.log"); a != b {
			t.Errorf("they have two logs:\n%s\n%s", a, b)
		}
		if got := met(me.vivary(fine, "check")); len(got) > 0 {
			t.Errorf("found %q in\n%s", got, me.read("records/2026.care.log"))
		}
	}
	for i, day := range []string{"2026-11-17", "2026-11-18", "2026-11-19", "2026-11-20", "2026-11-21", "2026-11-22", "2026-11-23"} {
		note(me, day, "--by", "me", "--at", "08:05", "burrow-a", "done", "water")
		note(me, day, "burrow-b", "done", "water")
		note(relief, day, "burrow-b", "done", "water") // the same line, in both copies
		note(relief, day, "--by", "relief", "--at", "19:40", "burrow-b", "counted", "4")
		note(me, day, "--by", "me", "--at", "08:05", "burrow-b", "counted", "3") // one hid, in the morning
		switch i {
		case 1:
			note(me, day, "--by", "me", "--at", "08:20", "burrow-a", "refused")
			note(relief, day, "--by", "relief", "--at", "19:30", "burrow-a", "fed", "2", "cricket")
		case 2:
			note(relief, day, "burrow-b", "died", "by itself in a corner")
			note(relief, "--undo", "burrow-b")
		case 3:
			note(me, day, "--by", "me", "burrow-b", "fed")
			note(relief, day, "--by", "relief", "burrow-b", "refused", "the male")
		case 4:
			note(me, day, "--by", "me", "--at", "08:30", "burrow-b", "moved", "1", "to", "spare-1")
			note(me, day, "--by", "me", "--at", "08:40", "spare-1", "moved", "1", "to", "burrow-b", "she would not settle")
		}
		if i%3 == 2 {
			meet()
		}
	}
	meet()
}

// What each of two changed in a plan may be well by itself and twice together: git merges
// it without a word, and a check finds it.
func TestPlansMerge(t *testing.T) {
	c := twoKeepers(t)
	c.add("collection.care.hcl", "\nround \"morning\" {\n  at     = \"08:15\"\n  keeper = \"me\"\n}\n\n# The end of the file, so that both can add before it and behind.\n\n\n\n\n\n")
	c.commit("room for more")
	box := strings.ReplaceAll(strings.ReplaceAll(c.read("enclosures/burrow-a.care.hcl"), "burrow-a", "burrow-c"), "Burrow A", "Burrow C")
	away := "away \"me\" {\n  from  = \"2026-12-10\"\n  to    = \"2026-12-17\"\n  cover = %q\n}\n"
	third := "keeper \"third\" {\n  title   = \"Third keeper\"\n  trained = \"feeding\"\n  phone   = \"on the door\"\n}\n"
	put := func(name, text string) func() { return func() { c.write(name+".care.hcl", text) } }
	within := func(name, old, text string) func() {
		return func() { c.write(name, strings.Replace(c.read(name), old, text+old, 1)) }
	}
	burrow := "enclosures/burrow-a.care.hcl"
	for i, x := range []struct {
		about        string
		lead, relief func()
		found        string
	}{
		{"one box in two files", put("enclosures/burrow-c", box), put("new", box), "twice"},
		{"two covers of one absence", put("december", fmt.Sprintf(away, "relief")), put("winter", third+fmt.Sprintf(away, "third")), "two-covers"},
		{"two rounds of one name", put("night", "round \"night\" {\n  at     = \"21:30\"\n  keeper = \"me\"\n}\n"), put("rounds", "round \"night\" {\n  at     = \"22:00\"\n  keeper = \"me\"\n}\n"), "twice"},
		{"one keeper twice", put("people", third), put("third", third), "twice"},
		{"two calendars of one name", put("calendars", "calendar \"all\" {\n}\n"), put("phones", "calendar \"all\" {\n  remind = \"10 min\"\n}\n"), "twice"},
		{"one care twice in a box", within(burrow, "  # Takes the place", "  care \"dish\" {\n    every = \"7 days\"\n  }\n\n"), within(burrow, "  animals \"adult\"", "  care \"dish\" {\n    every = \"5 days\"\n  }\n\n"), "twice"},
		{"one attribute twice in a block", within(burrow, "    kind      =", "    places    = 1\n"), within(burrow, "    depth     =", "    places    = 2\n"), "twice"},
		{"two boxes of one former name", put("one", strings.Replace(box, "  title", "  formerly = \"old\"\n  title", 1)), put("two", strings.ReplaceAll(strings.Replace(box, "  title", "  formerly = \"old\"\n  title", 1), "burrow-c", "burrow-d")), "identity-clash"},
		{"a box that one took away and the other cares for", func() { c.git("rm", "-q", "enclosures/burrow-b.care.hcl") }, func() { c.add("records/2026.care.log", "2026-11-24 burrow-b fed\n") }, "unknown-name"},
		{"a round that one took away and the other uses", func() {
			c.write("collection.care.hcl", strings.Replace(c.read("collection.care.hcl"), "round \"morning\" {\n  at     = \"08:15\"\n  keeper = \"me\"\n}\n", "", 1))
		}, within(burrow, "    amount = \"60 ml\"", "    round  = \"morning\"\n"), "unknown-name"},
	} {
		if err := c.merged(fmt.Sprint("plan-", i), x.lead, x.relief); err != nil {
			t.Errorf("%s: %v", x.about, err)
			continue
		}
		out, _ := c.try("vivary", "check")
		if !strings.Contains(out, "["+x.found+"]") {
			t.Errorf("%s: %s is not found:\n%s", x.about, x.found, out)
		}
		for _, branch := range []string{"-lead", "-relief"} { // each by itself is sound
			c.git("checkout", "-q", fmt.Sprint("plan-", i, branch))
			if branch == "-relief" {
				c.git("checkout", "-q", "HEAD^1")
			}
			if got := met(c.vivary(fine, "check")); len(got) > 0 && !strings.Contains(x.about, "took away") {
				t.Errorf("%s: %s alone: %q", x.about, branch, got)
			}
		}
	}
	// One absence that both wrote is one set of days.
	if err := c.merged("away", put("december", fmt.Sprintf(away, "relief")), put("winter", fmt.Sprintf(away, "relief"))); err != nil {
		t.Error(err)
	}
	if got := met(c.vivary(fine, "check")); len(got) > 0 {
		t.Errorf("the same absence twice: %q", got)
	}
}
