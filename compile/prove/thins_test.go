package prove

import (
	"testing"

	"vivary/compile/life"
	"vivary/schema"
)

// TestThinnedMealsAreTheLogs: a state in which a killed item is offered once a week has a
// part in a gap of food, and in no other; what the plan tells without a day has none.
func TestThinnedMealsAreTheLogs(t *testing.T) {
	weekly, usual := &schema.State{}, &schema.State{}
	weekly.May[schema.RowKilled] = schema.May{Manner: schema.Hatch, Every: 7}
	for _, c := range []struct {
		hold life.Hold
		need *schema.NeedName
		want bool
	}{
		{life.Hold{From: 100, State: weekly}, schema.NeedFood, true},
		{life.Hold{From: 0, State: weekly}, schema.NeedFood, false},
		{life.Hold{From: 100, State: usual}, schema.NeedFood, false},
		{life.Hold{From: 100, State: weekly}, schema.NeedWater, false},
	} {
		if got := thins(&c.hold, c.need); got != c.want {
			t.Errorf("from %d, %s: %v", c.hold.From, c.need.Name, got)
		}
	}
}
