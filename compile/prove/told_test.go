package prove_test

import (
	"fmt"
	"strings"
	"testing"

	"vivary/compile/life"
	"vivary/compile/prove"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// TestMealsOfAnEndNear: that adults can wait makes a caution of meals that come late, and
// not of meals that end for good; unless the same end was shown before.
func TestMealsOfAnEndNear(t *testing.T) {
	today := day("2027-05-01")
	for until, want := range map[civil.Date]finding.Severity{today + 40: finding.Error, today + 340: finding.Caution} {
		text := strings.Replace(rare(7, ""), "per_animal", fmt.Sprintf("until      = %q\n    per_animal", until.String()), 1)
		all := found(compiled(t, text, "", today))
		if len(all) == 0 || all[0].Rule.ID != "food-gap" || all[0].Severity != want {
			t.Errorf("until %s: it says %s", until, said(compiled(t, text, "", today), all))
		}
	}
}

// TestARhythmOfAStateIsNoBreach: before a moult a killed item is offered once a week at the
// most. Meals every three days are then nine days apart on the way, which is no breach of
// seven days; a fortnight is.
func TestARhythmOfAStateIsNoBreach(t *testing.T) {
	today := day("2027-05-01")
	weekly := &schema.State{Name: "weekly"}
	weekly.May[schema.RowLive].Manner = schema.Held
	weekly.May[schema.RowKilled] = schema.May{Manner: schema.Hatch, Every: 7}
	for apart, sound := range map[int]bool{3: true, 9: true, 13: true, 14: false} {
		r := compiled(t, limits{look: 4, water: 3, food: 7}.sheet()+people+rounds+box("ash", looked), "", today)
		r.Lives[0].Groups[0].Holds = []life.Hold{{From: r.Horizon.From, Until: r.Horizon.Last() + 1, State: weekly, Why: "before a moult", At: r.Plan.Enclosures[0].At}}
		var on []int
		for d := 0; d < r.Horizon.Days-r.Horizon.Today; d += apart { // from today
			on = append(on, d)
		}
		for x := range r.Roster.All() {
			if x.Feeds() {
				shown(r, x, on...)
			}
		}
		for _, p := range prove.Of(r.Roster, 0) {
			if p.Name == schema.NeedFood && p.Met() != sound {
				t.Errorf("%d days apart: breach %+v", apart, p.Breach)
			}
		}
	}
}
