package life

import (
	"slices"
	"strconv"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
)

// What two people logged of the same day, who did not know of each other: an identical
// line is one fact, and in other words it is two. Nothing in a log says that two lines
// tell the same, so that it is asked where that would count animals twice, or where
// what follows depends on which line was later. One person knows what they have written.

// remembered are the words of which a second line on the same day can tell the same
// again, or the opposite.
var remembered = [...]*schema.LogWord{schema.WordDied, schema.WordMoved, schema.WordSeparated, schema.WordEscaped,
	schema.WordArrived, schema.WordBorn, schema.WordHatched, schema.WordFed, schema.WordRefused}

// told are the last lines of a group with these words.
type told [len(remembered)]*plan.Event

// on is the line with a word on the day of another, or nil.
func (l *told) on(w *schema.LogWord, e *plan.Event) *plan.Event {
	if i := slices.Index(remembered[:], w); i >= 0 && l[i] != nil && l[i].Date == e.Date {
		return l[i]
	}
	return nil
}

func (l *told) remember(e *plan.Event) {
	if i := slices.Index(remembered[:], e.Word); i >= 0 {
		l[i] = e
	}
}

// atOnce is within how many minutes two people are taken to have been there at once, and
// to have seen the same (common practice, no source).
const atOnce = 60

// strangers reports whether two lines are of two people of whom one may not have known
// what the other wrote. Whoever wrote a line that names nobody may be anybody.
func strangers(a, b *plan.Event) bool { return a.By.V != b.By.V }

// named reports whether two lines are of two people for certain.
func named(a, b *plan.Event) bool { return strangers(a, b) && a.By.Set() && b.By.Set() }

// timed reports whether it is known which of two lines of a day was later.
func timed(a, b *plan.Event) bool { return a.Clock.Set() && b.Clock.Set() }

// same reports whether two lines of a day, with one word about one group, may tell of the
// same animals. Two deaths are "died 2" or lines with a time: so says the page on the log.
func same(a, b *plan.Event) bool {
	switch {
	case a.Sexes != b.Sexes && a.Sexes.Total() > 0 && b.Sexes.Total() > 0:
		return false // of a male and of a female
	case !slices.EqualFunc(a.Args, b.Args, func(x, y plan.Written[string]) bool { return x.V == y.V }):
		return false // to two places
	case timed(a, b):
		return strangers(a, b) && max(a.Clock.V-b.Clock.V, b.Clock.V-a.Clock.V) <= atOnce
	case strangers(a, b):
		return true
	}
	return a.By.V == "" && a.Number.V == b.Number.V
}

// twice notes what a line may tell again of what stood there before it. Lines that add or
// take away nobody are no matter, however often they are told.
func (r *reader) twice(t *track, e *plan.Event, before int) {
	first := t.told.on(e.Word, e)
	if first == nil || !same(first, e) {
		return
	}
	switch e.Word {
	case schema.WordFed, schema.WordRefused:
		return
	case schema.WordArrived, schema.WordBorn, schema.WordHatched:
		if !first.Number.Set() || !e.Number.Set() {
			return // what tells no number adds nobody
		}
	}
	if (e.Word == schema.WordDied || e.Word == schema.WordMoved || e.Word == schema.WordEscaped || e.Word == schema.WordArrived) && t.now() == before {
		return // it changed nothing, and that is found
	}
	t.doubts = append(t.doubts, finding.Finding{Rule: ruleTwice, At: e.At,
		Text:  e.Word.Name + " is said twice of " + t.Animals.Name.V + " on " + e.Date.Words() + ", in different words: both lines are counted",
		Write: r.withdrawal(e) + ", where both tell of the same animals; where they do not, counted and how many are here",
		Also:  []finding.Related{{At: first.At, Text: "the other line"}}})
}

// withdrawal is the line that takes another back, without its day.
func (r *reader) withdrawal(e *plan.Event) string {
	if line, err := r.c.Withdrawal(r.c.Files.Of(e.At)); err == nil {
		return line
	}
	return schema.WordWithdrawn.Name + ", the word and its day"
}

// meals notes that one animal ate and refused on one day, by two people, where no time says
// which was first: whether refusals are counted depends on it. The next meal answers it.
func (r *reader) meals(t *track, e *plan.Event) {
	other := schema.WordFed
	switch e.Word {
	case schema.WordFed:
		other = schema.WordRefused
	case schema.WordRefused:
	default:
		return
	}
	if t.meal != nil && t.meal.on != e.Date {
		t.meal = nil
	}
	if o := t.told.on(other, e); o != nil && t.now() == 1 && named(o, e) && !timed(o, e) {
		t.meal = &doubt{see(e), finding.Finding{Rule: ruleDiffer, At: e.At,
			Text:  "fed and refused are both said of " + t.Animals.Name.V + " on " + e.Date.Words() + ", by two people, and no time says which was later",
			Write: "what comes of the next meal; or, where one is wrong, " + r.withdrawal(e),
			Also:  []finding.Related{{At: o.At, Text: "the other line"}}}}
	}
}

// doubt is a question that a later line ends.
type doubt struct {
	seen
	finding.Finding
}

// differ notes that two people counted differently on one day, where no time says which of
// them was later and one found fewer than may hide. The next count answers it.
func (k *heads) differ(n, total, hidden int, e *plan.Event) {
	if k.doubt != nil && k.doubt.on != e.Date {
		k.doubt = nil
	}
	o := k.last
	k.last = &headcount{e, n, total}
	if o == nil || o.Date != e.Date || o.n == n || o.total != total || min(o.n, n) >= total-hidden || !named(o.Event, e) || timed(o.Event, e) {
		return
	}
	k.doubt = &doubt{see(e), finding.Finding{Rule: ruleDiffer, At: e.At,
		Text:  strconv.Itoa(o.n) + " and " + strconv.Itoa(n) + " were counted on " + e.Date.Words() + ", by two people, and no time says which was later",
		Write: "counted and how many, when they have been counted again",
		Also:  []finding.Related{{At: o.At, Text: "the other line"}}}}
}

// headcount is a count as it was logged, and how many there were.
type headcount struct {
	*plan.Event
	n, total int
}

// allHere ends what is asked of a group, and of the brood that it is: all of them were
// counted.
func (t *track) allHere() {
	t.doubts = nil
	if t.of != nil {
		t.of.mother.doubts = nil
	}
}

// sayDoubts says what is asked still.
func (r *reader) sayDoubts() {
	say := func(d *doubt) {
		if d != nil {
			r.found.Add(d.Finding)
		}
	}
	for _, t := range r.tracks {
		for _, f := range t.doubts {
			r.found.Add(f)
		}
		say(t.meal)
		say(t.heads.doubt)
	}
	say(r.heads.doubt)
}

// ofGone finds a line about animals that are gone. Where the same stands there of the same
// day in other words it is counted once, and where no time says that the line is not of the
// hours before they went, it may be right: neither is harm.
func (r *reader) ofGone(t *track, e *plan.Event) {
	f := finding.Finding{Rule: ruleGone, At: e.At,
		Text:  "there are no " + t.Animals.Name.V + " in " + e.Enclosure.V + " on " + e.Date.Words(),
		Write: "the right day or animals; where new ones came, their line with arrived and how many before this one"}
	if t.gone != "" {
		f.Text += ": " + t.gone
	}
	died, went := t.told.on(schema.WordDied, e), t.told.on(schema.WordMoved, e)
	end := died
	if end == nil {
		end = went
	}
	if end == nil {
		r.found.Add(f)
		return
	}
	f.Also = []finding.Related{{At: end.At, Text: "the line of that day"}}
	switch {
	case e.Word == end.Word && same(end, e):
		f.Text += ", and this line tells it again in other words"
		f.Write = r.withdrawal(e) + "; or the right animals, where it is about others"
		r.found.Soft(f, finding.Caution)
	case !timed(end, e) && slices.Contains(before[:], e.Word), !timed(end, e) && died != nil && e.Word.Subject == schema.OfAnimals && !slices.Contains(remembered[:], e.Word):
		f.Text += ", before or after this: it changes nothing"
		f.Write = "nothing; the next time, with the times of both the log knows which was first"
		r.found.Soft(f, finding.Advice)
	default:
		r.found.Add(f)
	}
}

// before are the words of what may well have been before animals went on the same day, and
// from which nothing follows where they are now.
var before = [...]*schema.LogWord{schema.WordFed, schema.WordRefused, schema.WordWeighed, schema.WordSeen}
