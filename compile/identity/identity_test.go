package identity_test

import (
	"testing"

	"vivary/compile/identity"
	"vivary/plan"
	"vivary/schema"
)

// word is a text that stands in a plan.
func word(s string) (w plan.Written[string]) {
	w.V, w.At.File, w.At.End = s, 1, int32(len(s))
	return w
}

// TestBlocksKeepTheirFirstName: whatever a block is called now, it is known by the
// name it had first.
func TestBlocksKeepTheirFirstName(t *testing.T) {
	var none plan.Written[string]
	for _, formerly := range []plan.Written[string]{none, word("was")} {
		want := formerly.Or("is")
		e, a, r, k, c := &plan.Enclosure{}, &plan.Animals{}, &plan.Round{}, &plan.Keeper{}, &plan.Calendar{}
		for _, x := range []*plan.Written[string]{&e.Name, &a.Name, &r.Name, &k.Name, &c.Name} {
			*x = word("is")
		}
		for _, x := range []*plan.Written[string]{&e.Formerly, &a.Formerly, &r.Formerly, &k.Formerly, &c.Formerly} {
			*x = formerly
		}
		for what, got := range map[string]string{"enclosure": identity.Enclosure(e), "animals": identity.Animals(a), "round": identity.Round(r), "keeper": identity.Keeper(k), "calendar": identity.Calendar(c)} {
			if got != want {
				t.Errorf("%s: %q, want %q", what, got, want)
			}
		}
		if got := identity.OfCare(e, word("mist"), none).String(); got != want+"/mist" {
			t.Errorf("care of it is %q", got)
		}
		if got := identity.OfTask(e, "moult/2027-03-01"); got.String() != want+"/moult/2027-03-01" || got.Of(a).String() != want+"/moult/2027-03-01/"+want {
			t.Errorf("a task of the log is %q, and of some animals %q", got, got.Of(a))
		}
		if got := identity.OfMeal(e, schema.KindFeed, a, nil).String(); got != want+"/feed "+want {
			t.Errorf("meals are %q", got)
		}
	}
	if got := identity.OfCare(&plan.Enclosure{Head: plan.Head{Name: word("box")}}, word("dew"), word("mist")); got.Care != "mist" {
		t.Errorf("care that was renamed is %q", got)
	}
}

// TestAMealAndItsLeftoversDiffer: a name that a feeding had formerly is one that the
// animals had, so that its leftovers have another than its meals.
func TestAMealAndItsLeftoversDiffer(t *testing.T) {
	e, a, f := &plan.Enclosure{}, &plan.Animals{}, &plan.Feeding{}
	e.Name, a.Name, a.Formerly, f.Timing.Formerly = word("box"), word("adults"), word("grown"), word("old")
	meal, rest := identity.OfMeal(e, schema.KindFeed, a, f), identity.OfMeal(e, schema.KindLeftovers, a, f)
	if meal.String() != "box/feed old" || rest.String() != "box/leftovers old" {
		t.Errorf("meals are %q and leftovers %q", meal, rest)
	}
	f.Timing.Formerly = plan.Written[string]{}
	if got := identity.OfMeal(e, schema.KindFeed, a, f).String(); got != "box/feed grown" {
		t.Errorf("meals of renamed animals are %q", got)
	}
}

// TestRoundsOfACare: care in one of its rounds has a name of its own, and the phase and memory
// of the care.
func TestRoundsOfACare(t *testing.T) {
	r := &plan.Round{}
	r.Name, r.Formerly = word("dusk"), word("evening")
	id := identity.Identity{Enclosure: "box", Care: "mist"}
	got := id.In(r)
	if got.String() != "box/mist/evening" || id.String() != "box/mist" {
		t.Errorf("%q in the round, %q as a whole", got, id)
	}
	if got.Phase(11) != id.Phase(11) || got.Told() != id.Told() {
		t.Errorf("%q has a phase or a memory of its own", got)
	}
	other := identity.Identity{Enclosure: "box-2", Care: "mist"}
	if id.Phase(1000) == other.Phase(1000) {
		t.Error("two boxes are due on one day")
	}
}
