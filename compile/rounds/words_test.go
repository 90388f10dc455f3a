package rounds_test

import (
	"testing"

	"vivary/compile/rounds"
	"vivary/schema"
)

// TestPortionOfTheUncounted: of a brood that nobody has counted no number is said.
func TestPortionOfTheUncounted(t *testing.T) {
	task := rounds.Task{Kind: schema.KindFeed, Phrase: "Feed", Prey: rounds.Prey{One: "small cricket", Many: "small crickets", Each: 1, Animals: 30, Uncounted: true, Killed: true}}
	if got, want := task.Sentence(), "Feed killed small crickets, a little for each"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// TestOwnWordsWithinALine: a keeper's words begin small behind others, but for what is in
// capitals, and a sentence that may begin with a name stays as it is.
func TestOwnWordsWithinALine(t *testing.T) {
	for _, c := range []struct {
		task rounds.Task
		want string
	}{
		{rounds.Task{Phrase: "Take out mould", Own: true}, "take out mould"},
		{rounds.Task{Phrase: "UV lamp on?", Own: true}, "UV lamp on?"},
		{rounds.Task{Phrase: "Sat 3 Jul is over", Own: true, Whole: true}, "Sat 3 Jul is over"},
	} {
		if got := c.task.String(); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}
