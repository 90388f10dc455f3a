package rounds_test

import (
	"fmt"
	"strings"
	"testing"

	"vivary/compile/rounds"
	"vivary/schema"
)

// urgent is a question at a place that stands before everything else.
func urgent(place int, text, short, aside string, rank int) rounds.Item {
	it := do(schema.KindWatch, place)
	it.Phrase, it.Short, it.Aside = text, short, aside
	it.High, it.Passing, it.Rank = true, true, rank
	return it
}

// TestFirstLinesAreMerged: what is the same at several places but for a day stands in one
// line, and alone it stands as it is.
func TestFirstLinesAreMerged(t *testing.T) {
	items := append(all(schema.KindLook, 6),
		urgent(0, "ill since 9 Mar: how is it?", "ill: how is it?", "since 9 Mar", 0),
		urgent(2, "ill since 7 Mar: how is it?", "ill: how is it?", "since 7 Mar", 0),
		urgent(3, "ill since 7 Mar: how is it?", "ill: how is it?", "since 7 Mar", 0),
		urgent(1, "last meal on 2 Mar: get help", "get help", "last meal on 2 Mar", 0),
		urgent(4, "where are the 3 young?", "where are the young?", "3 young", -9000))
	got := string(rounds.Make(evening(), year, tubs(6), items, nil).Text(nil, 0))
	want := "FIRST: where are the 3 young?: Tub 5\n" +
		"FIRST: ill: how is it?: Tub 1 (since 9 Mar), Tub 3 and 4 (since 7 Mar)\n" +
		"FIRST: last meal on 2 Mar: get help: Tub 2\n\n"
	if !strings.HasPrefix(got, want) {
		t.Errorf("%s\nwant first:\n%s", got, want)
	}
}

// TestFirstLinesAreNotCut: a text that has no room for all of it is cut in its routine, and
// says so. Where even what is pressing has no room, the number that is left is said.
func TestFirstLinesAreNotCut(t *testing.T) {
	for _, c := range []struct{ pressing, whole int }{{30, 30}, {300, 20}} {
		places := tubs(400)
		var items []rounds.Item
		for i := range places {
			places[i].Title = fmt.Sprintf("%c %d, a rather long name of a box", 'A'+i%20, i)
			if i%2 == 0 {
				places[i].Apart = 9
			}
			items = append(items, do(schema.KindLook, i))
			if i%3 < 2 {
				items = append(items, do(schema.KindMist, i))
			}
			if i < c.pressing {
				items = append(items, urgent(i, fmt.Sprintf("question number %03d, in as many words as such a question has", i), "", "", -i))
			}
		}
		text := string(rounds.Make(evening(), year, places, items, nil).Text(nil, 0))
		if len(text) > rounds.MaxText || !strings.Contains(text, "split this round") || !strings.HasSuffix(text, " min") {
			t.Errorf("%d bytes: …%s", len(text), text[max(0, len(text)-200):])
		}
		said := strings.Count(text, "FIRST: question number")
		if said < c.whole || said < c.pressing && !strings.Contains(text, " more, for which there is no room here") {
			t.Errorf("%d of %d pressing lines stand, and it is not said:\n%s", said, c.pressing, text)
		}
		if c.pressing == c.whole && strings.Contains(text, "no room here") {
			t.Errorf("some are said to be left out:\n%s", text)
		}
	}
}
