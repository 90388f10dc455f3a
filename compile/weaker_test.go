package compile_test

import (
	"strings"
	"testing"

	"vivary/compile/check"
	"vivary/internal/planned"
	"vivary/schema"
)

// own is a figure or a need of the collection's own, with its reason, source and review.
func own(what, name, rest, review string) string {
	return "  " + what + " \"" + name + "\" {\n" + rest + "    source  = [\"own records\"]\n    quality = \"own\"\n    seen    = \"2026-10-01\"\n    because = \"ten years of them\"\n    review  = \"" + review + "\"\n  }\n"
}

// TestWeakerSheets: what of a sheet of one's own asks less than the built-in one is named,
// whichever way less is, and what asks more is not; also for a species made with like.
func TestWeakerSheets(t *testing.T) {
	value := func(v string) string { return "    value   = \"" + v + "\"\n" }
	for _, c := range []struct {
		name, text string
		weaker     bool
	}{
		{"hotter", own("figure", "temperature-hard", value("12 to 37 C"), "2027-06-01"), true},
		{"narrower", own("figure", "temperature-hard", value("20 to 30 C"), "2027-06-01"), false},
		{"a shallower floor", own("figure", "substrate-depth-min", value("4 cm"), "2027-06-01"), true},
		{"a deeper one", own("figure", "substrate-depth-min", value("30 cm"), "2027-06-01"), false},
		{"left for longer", own("figure", "unattended", "    stages = [\"adult\"]\n"+value("40 days"), "2027-06-01"), true},
		{"left for less", own("figure", "unattended", "    stages = [\"adult\"]\n"+value("1 days"), "2027-06-01"), false},
		{"fed sooner after a moult", own("figure", "wait-after-moult", "    stages = [\"adult\"]\n"+value("1 days"), "2027-06-01"), true},
		{"left for longer, all stages", own("figure", "unattended", value("40 days"), "2027-06-01"), true},
		{"left for less, all stages", own("figure", "unattended", value("1 days"), "2027-06-01"), false},
		{"a shorter quarantine", own("figure", "quarantine", value("3 days"), "2027-06-01"), true},
		{"a longer one", own("figure", "quarantine", value("300 days"), "2027-06-01"), false},
		{"a shorter one for the wild", own("figure", "quarantine-wild", value("3 days"), "2027-06-01"), true},
		{"clear of mites sooner", own("figure", "mites-clear", value("1 days"), "2027-06-01"), true},
		{"any lid", own("figure", "lid", value("any"), "2027-06-01"), true},
		{"it does not moult hanging", own("figure", "growth-factor", value("1.2 to 1.4"), "2027-06-01"), false},
		{"water less often", own("need", "water", "    longest = \"9 days\"\n", "2027-06-01"), true},
		{"food less often, all stages", own("need", "food", "    longest = \"60 days\"\n", "2027-06-01"), true},
		{"water more often", own("need", "water", "    longest = \"1 day\"\n", "2027-06-01"), false},
	} {
		for _, head := range []string{"species \"pandinus-imperator\" {\n", "species \"my-kind\" {\n  like = \"pandinus-imperator\"\n"} {
			kind := strings.Split(head, "\"")[1]
			text := dwelling + head + c.text + "}\n" + box("colony", kind, "3", "")
			// How warm its kin may be is nothing that a species is measured by.
			c.weaker = c.weaker && (c.name != "hotter" || kind != "my-kind")
			plan, _ := planned.Files(t, planned.With(text, ""))
			if got := check.WeakerOf(plan); (len(got) > 0) != c.weaker {
				t.Errorf("%s of %s: %v", c.name, kind, got)
			}
			r := on(t, "2027-03-02", text, "")
			if said := strings.Join(r.InForce(), "\n"); c.weaker != strings.Contains(said, "until Tue 1 Jun 2027 (ten years of them)") {
				t.Errorf("%s of %s is in force: %q", c.name, kind, said)
			}
			if c.weaker && worst(r, "sheet-weaker") != "caution" {
				t.Errorf("%s of %s is not named: %q", c.name, kind, worst(r, "sheet-weaker"))
			}
			if late := on(t, "2027-07-01", text, ""); c.weaker && worst(late, "figure-overdue") != "urgent" || !c.weaker && worst(late, "figure-overdue") != "caution" {
				t.Errorf("%s of %s, once its review is past: %q", c.name, kind, worst(late, "figure-overdue"))
			}
		}
	}
}

// TestOwnForAllStages: what a sheet of one's own says without stages holds for all of them,
// also where the built-in one says it by stage.
func TestOwnForAllStages(t *testing.T) {
	text := dwelling + "species \"mine\" {\n  like = \"pandinus-imperator\"\n" + own("figure", "wait-after-moult", "    value   = \"21 days\"\n", "2027-06-01") +
		own("need", "food", "    longest = \"3 days\"\n", "2027-06-01") + "}\n" + box("colony", "mine", "3", "")
	plan, _ := planned.Files(t, planned.With(text, ""))
	sheet := plan.Library.Species("mine")
	for _, stage := range []string{"young", "juvenile", "subadult", "adult"} {
		if f := sheet.Figure(schema.FigureWaitAfterMoult, stage); f == nil || f.Value.V != "21 days" {
			t.Errorf("%s waits %v after a moult", stage, f)
		}
		for _, n := range sheet.NeedsOf(stage) {
			if n.Name.V == "food" && n.Longest.V.String() != "3 days" {
				t.Errorf("%s may go %s without food", stage, n.Longest.V)
			}
		}
	}
}

// TestCannibalsStayApart: a sheet of one's own that says "groups" of a species that eats its
// own kind is named, and does not put two of them together.
func TestCannibalsStayApart(t *testing.T) {
	text := dwelling + "species \"mine\" {\n  like = \"hadrurus-arizonensis\"\n" + own("figure", "keeping", "    value   = \"groups\"\n", "2027-06-01") + "}\n" + box("pair", "mine", "2", "")
	if got := worst(on(t, "2027-03-02", text, ""), "kept-alone"); got != "error" {
		t.Errorf("two together are %q", got)
	}
}

// A weaker limit has a reason, a source and a review within a year.
func TestWeakerNeedsReview(t *testing.T) {
	with := func(need string) string {
		return dwelling + "species \"pandinus-imperator\" {\n" + need + "}\n" + box("colony", "pandinus-imperator", "3", "")
	}
	const nine, one = "    longest = \"9 days\"\n", "    longest = \"1 day\"\n"
	if got := worst(on(t, "2027-03-02", with(own("need", "water", nine, "2029-06-01")), ""), "review-far"); got != "error" {
		t.Errorf("in two years: %q", got)
	}
	if got := worst(on(t, "2027-03-02", with(own("need", "water", one, "2029-06-01")), ""), "review-far"); got != "" {
		t.Errorf("what asks more: %q", got)
	}
	for _, part := range []string{"because", "source", "review"} {
		text := ""
		for line := range strings.Lines(own("need", "water", nine, "2027-06-01")) {
			if !strings.Contains(line, part+" ") {
				text += line
			}
		}
		if got := worst(on(t, "2027-03-02", with(text), ""), "unreasoned"); got != "error" {
			t.Errorf("without %s: %q", part, got)
		}
	}
}
