package compile_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/internal/planned"
	"vivary/internal/randomplan"
	"vivary/plan"
	"vivary/schema/civil"
)

// calendarsOf are the calendars of a compilation.
func calendarsOf(t *testing.T, r *compile.Result) (all [][]byte) {
	t.Helper()
	for _, f := range feeds.Of(r) {
		text, err := f.Bytes(nil)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, text)
	}
	return all
}

// after compiles files on a day with what calendars of before tell.
func after(t *testing.T, files map[string]string, day civil.Date, was [][]byte) *compile.Result {
	t.Helper()
	c, found := planned.Files(t, files)
	var known []compile.Known
	if c.About != nil {
		known = feeds.KnownOf(c, feeds.ReadHeads(was), true)
	}
	return compile.From(compile.Input{Plan: c, Loaded: found, Now: day.At(12*60, time.UTC), Known: known})
}

// missed is what is said of animals that are missing.
func missed(r *compile.Result) (all []string) {
	for i := range r.Findings {
		if f := &r.Findings[i]; f.Rule.ID == "animals-missing" {
			all = append(all, f.Text)
		}
	}
	return all
}

// box is an enclosure of some animals.
func boxOf(name string, animals int, more string) string {
	one := strings.Replace(strings.Replace(babyTub, "template \"baby-tub\"", "enclosure \""+name+"\"", 1), "  rack    = \"baby-rack\"\n", "  room    = \"east\"\n"+more, 1)
	return strings.Replace(one, "count  = 1", fmt.Sprintf("count  = %d", animals), 1)
}

// Three enclosures were built; then the plan or the log is another. What was there is
// there, or something says where it went.
func TestAnimalsMissing(t *testing.T) {
	const gone = "gone \"c\" { because = \"sold\" }\n"
	house := rackHouse
	a, b, c := boxOf("a", 1, ""), boxOf("b", 3, ""), boxOf("c", 1, "")
	all := house + a + b + c
	for say, x := range map[string]struct{ plan, log, want string }{
		"nothing changed":                {all, "", ""},
		"one more":                       {all + boxOf("d", 1, ""), "", ""},
		"one taken out":                  {house + a + b, "", `"C" (c) had 1 animal when the calendars were built on Sat 28 Nov 2026, and the plan has it no more`},
		"gone":                           {house + a + b + gone, "", ""},
		"gone is another":                {house + a + b + strings.Replace(gone, `"c"`, `"cc"`, 1), "", `"C" (c) had 1 animal`},
		"two taken out":                  {house + a, "", `2 enclosures had 4 animals when the calendars were built on Sat 28 Nov 2026, and the plan has them no more: "B" (b), "C" (c)`},
		"all taken out":                  {house, "", `3 enclosures had 5 animals`},
		"died by the log, and the block": {house + a + b + gone, "2026-12-01 c died\n", ""},
		"died, and the block is there":   {all, "2026-12-01 c died\n", ""},
		"died of three":                  {all, "2026-12-01 b died\n2026-12-02 b died 2\n", ""},
		"sold":                           {all, "2026-12-01 b sold 2\n", ""},
		"sold the day before":            {all, "2026-11-20 b sold 2\n", ""},
		"moved":                          {all, "2026-12-01 b moved 1 a\n", ""},
		"fewer":                          {house + a + boxOf("b", 2, "") + c, "", `"B" (b) had 3 animals when the calendars were built on Sat 28 Nov 2026, and by the plan it has 2: nothing says what became of 1`},
		"fewer, and said":                {house + a + boxOf("b", 2, "") + c + "gone \"b\" {\n  animals = 1\n  because = \"3 was a slip of the pen\"\n}\n", "", ""},
		"fewer, and too few said":        {house + a + boxOf("b", 1, "") + c + "gone \"b\" {\n  animals = 1\n  because = \"sold\"\n}\n", "", `nothing says what became of 1`},
		"sold, and taken off again":      {house + a + boxOf("b", 2, "") + c, "2026-12-01 b sold\n", `nothing says what became of 1`},
		"put into another block":         {house + a + boxOf("b", 2, "") + c + boxOf("d", 1, ""), "", ""},
		"put from one to another":        {house + boxOf("a", 2, "") + boxOf("b", 2, "") + c, "", ""},
		"put there, and one lost":        {house + boxOf("a", 2, "") + boxOf("b", 1, "") + c, "", `nothing says what became of 1`},
		"renamed":                        {house + a + b + boxOf("new", 1, ""), "", `"C" (c) had 1 animal when the calendars were built on Sat 28 Nov 2026, and the plan has it no more. "new" is new and may be the same under another name`},
		"renamed, and said":              {house + a + b + boxOf("new", 1, "  formerly = \"c\"\n"), "", ""},
		"another number of animals":      {house + a + b + boxOf("new", 2, ""), "", `"C" (c) had 1 animal when the calendars were built on Sat 28 Nov 2026, and the plan has it no more`},
		"a mistake in its block":         {house + a + b + "enclosure \"c\" {\n  speces = \n}\n", "", ""},
		"the collection was renamed":     {strings.Replace(all, "collection \"c\"", "collection \"d\"", 1), "", ""},
		"renamed, and one is missing":    {strings.Replace(house+a+b, "collection \"c\"", "collection \"d\"", 1), "", `"C" (c) had 1 animal`},
	} {
		day := civil.Must(2026, 11, 28)
		was := calendarsOf(t, after(t, map[string]string{"a.care.hcl": all}, day, nil))
		files := map[string]string{"a.care.hcl": x.plan}
		if x.log != "" {
			files["b.care.log"] = x.log
		}
		r := after(t, files, day+9, was)
		got := missed(r)
		if (x.want == "") != (got == nil) || x.want != "" && !strings.Contains(strings.Join(got, "; "), x.want) || len(got) > 1 {
			t.Errorf("%s: %q", say, got)
		}
		if len(got) > 0 && !r.Refused() {
			t.Errorf("%s: it is not refused", say)
		}
	}
}

// The line that is offered where an enclosure has another name makes the finding go away.
func TestRenamedIsOffered(t *testing.T) {
	day := civil.Must(2026, 11, 28)
	a := boxOf("a", 1, "")
	was := calendarsOf(t, after(t, map[string]string{"a.care.hcl": rackHouse + a}, day, nil))
	text := rackHouse + boxOf("new", 1, "")
	r := after(t, map[string]string{"a.care.hcl": text}, day, was)
	for i := range r.Findings {
		f := &r.Findings[i]
		if f.Rule.ID != "animals-missing" {
			continue
		}
		if len(f.Edits) != 1 {
			t.Fatal("no edit")
		}
		e := f.Edits[0]
		text = text[:e.At.Start] + e.Text + text[e.At.End:]
	}
	if again := after(t, map[string]string{"a.care.hcl": text}, day, was); missed(again) != nil || !strings.Contains(text, "formerly = \"a\"") {
		t.Error(missed(again), text)
	}
}

// TestHonestLogMissesNobody: whatever is logged after the calendars were built, and however
// much time goes by, no animal is missing; and where a block with animals goes out of a plan,
// they are.
func TestHonestLogMissesNobody(t *testing.T) {
	takenOut := 0
	for seed := range uint64(60) {
		p := randomplan.New(seed)
		if seed%2 == 1 {
			p.Silly(6 * len(p.Boxes))
		}
		built := p.Today - 40
		first := after(t, p.Files(built), built, nil)
		if first.Roster == nil || first.Refused() {
			continue
		}
		was := calendarsOf(t, first)
		for _, day := range []civil.Date{built, built + 20, p.Today} {
			r := after(t, p.Files(day), day, was)
			if got := missed(r); got != nil {
				t.Errorf("seed %d, on %s: %q", seed, day, got)
			}
		}
		if late := after(t, p.Files(p.Today), p.Today+400, was); missed(late) != nil {
			t.Errorf("seed %d, a year later: %q", seed, missed(late))
		}
		out := -1
		for i, l := range first.Lives {
			if n, _ := living(l, first); n > 0 && shown(first, l.Plan) {
				out = i
			}
		}
		if out < 0 {
			continue
		}
		name := first.Lives[out].Plan.Name.V
		p.Boxes = slices.DeleteFunc(p.Boxes, func(b *randomplan.Box) bool { return b.Name == name })
		r := after(t, p.Files(built), built, was)
		if r.Roster == nil || !r.Plan.Complete() || slices.ContainsFunc(r.Plan.Enclosures, func(e *plan.Enclosure) bool { return e.Name.V == name }) {
			continue
		}
		takenOut++
		if missed(r) == nil {
			t.Errorf("seed %d: %s was taken out, and nobody is missing", seed, name)
		}
	}
	if takenOut < 20 {
		t.Errorf("only %d were taken out", takenOut)
	}
}

// shown reports whether a calendar shows something of an enclosure.
func shown(r *compile.Result, e *plan.Enclosure) bool {
	for i := range r.Roster.Calendars {
		for _, p := range r.Roster.Calendars[i].Picks() {
			if p.Entry.Life.Plan == e {
				return true
			}
		}
	}
	return false
}
