package rounds_test

import (
	"strings"
	"testing"

	"vivary/compile/rounds"
	"vivary/schema"
)

// What to see to is one line: of a few by name, of all as "all", of many that are alike by
// what is done, and of many among others by name.
func TestCautionForm(t *testing.T) {
	c := schema.Cautions[0]
	cleaned := func(n int, marked func(int) bool, due ...int) (out []rounds.Item) {
		for i := range n {
			it := do(schema.KindSpotClean, i)
			if len(due) > 0 {
				it.Days = on(1)
				for _, k := range due {
					if k == i {
						it.Days = on(0)
					}
				}
			}
			if marked(i) {
				it.Cautions = []*schema.Caution{c}
			}
			out = append(out, it)
		}
		return out
	}
	every, even := func(int) bool { return true }, func(i int) bool { return i%2 == 0 }
	for _, x := range []struct {
		title string
		n     int
		items []rounds.Item
		want  string
	}{
		{"one", 1, cleaned(1, every), ""},
		{"a few", 9, cleaned(9, every, 1, 2, 3), ": Tub 2 to 4"},
		{"all", 9, cleaned(9, every), ": all 9"},
		{"many that are alike", 9, cleaned(9, every, 1, 2, 4, 6), ": for clean"},
		{"many among others", 9, cleaned(9, even), ": Tub 1, 3, 5, 7 and 9"},
		{"two kinds, of which one is everywhere", 9, append(cleaned(9, every, 1, 2, 4, 6), all(schema.KindWater, 9)...), ": for clean"},
		{"the same box twice", 9, append(cleaned(9, every, 1), cleaned(9, every, 1)...), ": Tub 2"},
	} {
		r := rounds.Make(evening(), year, tubs(x.n), x.items, nil)
		text := string(r.Text(nil, 0))
		line, _, _ := strings.Cut(text, "\n")
		if want := "Gloves on, eyes covered (barbed hairs)" + x.want; line != want || strings.Count(text, "Gloves") != 1 {
			t.Errorf("%s: %q, want %q:\n%s", x.title, line, want, text)
		}
		if got := r.On(0).Before; len(got) != 1 || got[0] != line {
			t.Errorf("%s: apart from the text: %q", x.title, got)
		}
	}
	if text := string(rounds.Make(evening(), year, tubs(2), all(schema.KindWater, 2), nil).Text(nil, 0)); strings.Contains(text, "Gloves") {
		t.Errorf("of what asks for nothing:\n%s", text)
	}
}
