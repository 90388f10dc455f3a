package page

import (
	"html"
	"strings"
	"testing"

	"vivary/compile/daylist"
	"vivary/compile/rounds"
)

// TestSaysWhatDueSays: each line that is printed by due stands on the page of the day, in the
// same words and the same order.
func TestSaysWhatDueSays(t *testing.T) {
	lines := 0
	for name, s := range sites(t, 10) {
		page := pageWords(s.get(home + "/").Body.String())
		for _, l := range daylist.Of(s.house.Result, daylist.Asked{Days: 1, Keeper: s.visitor.Keeper}) {
			for i := range l.Walk {
				x := &l.Walk[i]
				parts := []string{strings.TrimSuffix(strings.TrimPrefix(x.Text, "FIRST: "), ":")}
				if x.Sort == rounds.Todo {
					parts = []string{x.Names}
					for _, j := range x.Jobs {
						parts = append(parts, j.Text, j.Stops[0].Should)
					}
				}
				for _, want := range parts {
					if lines++; !strings.Contains(page, flat(want)) {
						t.Errorf("%s: %q stands in the list, and not on the page", name, want)
					}
				}
			}
			for _, want := range append(l.Ticked, l.Ring...) {
				if !strings.Contains(page, flat(want)) {
					t.Errorf("%s: %q is told by the list, and not by the page", name, want)
				}
			}
		}
	}
	if lines < 100 {
		t.Errorf("only %d lines", lines)
	}
}

// pageWords are the words of a page, as they are read.
func pageWords(page string) string {
	var b strings.Builder
	in := false
	for _, r := range page {
		switch {
		case r == '<':
			in = true
		case r == '>':
			in = false
			b.WriteByte(' ')
		case !in:
			b.WriteRune(r)
		}
	}
	return flat(html.UnescapeString(b.String()))
}

func flat(s string) string { return strings.Join(strings.Fields(s), " ") }
