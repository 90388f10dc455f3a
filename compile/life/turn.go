package life

import (
	"slices"

	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
)

// Turn is one change of how many a group are. The number before the first of them is
// Numbers[0], and all of them up to a day make that of the day.
type Turn struct {
	On  civil.Date // 1970-01-01 where the plan tells of a brood without a day
	N   int        // how many more, or fewer; 0 where all were counted by their sexes
	Why Why
	// With is the group that they went to or came from, of those that were moved.
	With *Group
	At   source.Place // the line, of the log or of the plan
}

// Why is how it comes that a group are more, or fewer.
type Why uint8

// How it comes.
const (
	Arrived   Why = iota // into the collection
	Born                 // or hatched
	Found                // again, who had escaped
	MovedIn              // from another group
	MovedOut             // to another group
	Died                 // or found dead, who had escaped: then they were Found first
	Left                 // the collection: sold, given away, sent
	Escaped              // and not found yet
	Gone                 // nobody knows how: of a brood none were left
	Recounted            // how many they are, or of which sexes, was not known, and now is
)

// In reports whether a group are more by it.
func (w Why) In() bool { return w <= MovedIn }

// last says how the last of a group went, before the day.
func (w Why) last(to *track) string {
	switch {
	case to != nil:
		return "the last went to " + to.home.out.Plan.Name.V + " on "
	case w == Died:
		return "the last died on "
	case w == Escaped:
		return "the last escaped on "
	case w == Gone:
		return "none were left on "
	}
	return "the last left on "
}

// noted are the words of Noted.
var noted = [...]*schema.LogWord{schema.WordTreated, schema.WordIll, schema.WordInjured, schema.WordRecovered,
	schema.WordMated, schema.WordPaired}

// turn notes a change. What a line tells of days before those that are known was so from its
// day on: whoever died before the day on which the plan has them come had come by then.
func (t *track) turn(s seen, n int, why Why, with *track) {
	x := Turn{On: s.on, N: n, Why: why, At: s.at}
	if with != nil {
		x.With = with.Group
	}
	for i := range slices.Backward(t.Turns) {
		if t.Turns[i].On <= s.on {
			break
		}
		t.Turns[i].On = s.on
	}
	t.Turns = append(t.Turns, x)
}

// appeared makes the group one of which nobody was here before a day. What was known of how many
// they are is known no more.
func (t *track) appeared(s seen, n int, why Why) {
	t.Numbers = []Number{{s.on - 1, 0}, {s.on, n}}
	t.Turns = nil
	if n > 0 {
		t.turn(s, n, why, nil)
	}
}
