package feeds_test

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"vivary/schema/civil"
)

// A swap is a change of the entries of its day, in the calendars of whoever it is about: nothing
// else changes its identity, its bytes or its day.
func TestSwapInARota(t *testing.T) {
	text := func(swap string) string {
		return `
collection "fixtures" {
  time_zone = "Etc/UTC"
}
keeper "lead" {
}
keeper "relief" {
}
rota "weekends" {
  turn "relief" {
    on = ["sat", "sun"]
  }
` + swap + `
}
round "evening" {
  at     = "20:00"
  keeper = "lead"
  rota   = "weekends"
}
calendar "all" {
}
calendar "lead" {
  keepers = ["lead"]
}
calendar "relief" {
  keepers = ["relief"]
}
` + sheet + box("alpha", `
  animals "only" {
    count = 3
    stage = "juvenile"
  }
  care "look" {
    every = "day"
  }
`)
	}
	on := civil.Must(2027, 3, 10) // a Wednesday; the swap is on the next
	before := compiled(t, text(""), "", on)
	after := compiled(t, text("  turn \"relief\" { on = [\"2027-03-17\"] }"), "", on)
	for name, want := range map[string][3]int{ // added, gone, changed
		"all":    {0, 0, 1},
		"lead":   {0, 1, 0},
		"relief": {1, 0, 0},
	} {
		first := built(t, before, name, nil)
		second := built(t, after, name, remembered(t, first))
		got := changes(t, first, second)
		if n := [3]int{len(got.added), len(got.gone), len(got.changed)}; n != want {
			t.Errorf("%s: %v: %+v", name, n, got)
		}
	}
	all := entries(t, built(t, after, "all", nil))
	var who []string
	for _, uid := range slices.SortedFunc(maps.Keys(all), func(a, b string) int {
		return strings.Compare(property(all[a], "DTSTART"), property(all[b], "DTSTART"))
	}) {
		if s := property(all[uid], "SUMMARY"); len(who) < 9 && strings.Contains(s, "Evening round") {
			_, name, _ := strings.Cut(s, "Evening round\\, ")
			who = append(who, name)
		}
	}
	if got := strings.Join(who, " "); got != "Lead Lead Lead Relief Relief Lead Lead Relief Lead" {
		t.Errorf("from Wednesday on: %s", got)
	}
}
