package page

import (
	"slices"
	"strings"
	"testing"

	"vivary/compile/life"
	"vivary/schema"
	"vivary/schema/civil"
)

// TestMay holds the list of what may be done against the states themselves: nothing stands
// under a milder manner than a state of today asks for, and everything stands once for each
// group whose meal it is, else once.
func TestMay(t *testing.T) {
	some := 0
	for name, s := range sites(t, 60) {
		r := s.house.Result
		if r.Roster == nil {
			continue
		}
		for _, l := range r.Lives {
			all := mayOf(r, l)
			if all == nil {
				continue
			}
			for row := schema.RowLook; row < schema.Rows; row++ {
				said := 0
				for k, m := range all {
					for _, text := range m.Rows {
						if text != row.String() && !strings.HasPrefix(text, row.String()+" (") {
							continue
						}
						said++
						if row == schema.RowLive || row == schema.RowKilled {
							continue
						}
						strict := slices.IndexFunc(marksOf(all), func(mark string) bool { return mark == strictest(l, row, r.Today) })
						if strict >= 0 && strict < k {
							t.Errorf("%s, %s: %s stands under %s", name, l.Plan.Name.V, text, m.Manner)
						}
						some++
					}
				}
				if said == 0 {
					t.Errorf("%s, %s: nothing is said of %s", name, l.Plan.Name.V, row)
				}
			}
		}
	}
	if some < 50 {
		t.Errorf("only %d", some)
	}
}

func marksOf(all []may) (marks []string) {
	for _, m := range all {
		marks = append(marks, m.Mark)
	}
	return marks
}

// strictest is the mark of the strictest manner that a state of the day has for a row.
func strictest(l *life.Enclosure, row schema.Row, today civil.Date) string {
	worst := schema.AsUsual
	look := func(holds []life.Hold) {
		for _, h := range holds {
			if h.From <= today && today < h.Until {
				worst = max(worst, h.State.May[row].Manner)
			}
		}
	}
	look(l.Holds)
	for _, g := range l.Groups {
		if g.Count(today) > 0 {
			look(g.Holds)
		}
	}
	return [...]string{"usual", "hatch", "outside", "held"}[worst]
}
