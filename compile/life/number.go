package life

import (
	"slices"
	"strconv"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/slip"
	"vivary/schema/wording"
)

// notNone are the words of which a line about none says nothing.
var notNone = []*schema.LogWord{schema.WordDied, schema.WordEscaped, schema.WordMoved, schema.WordPremoult, schema.WordHanging, schema.WordSealed}

// howMany reads the number after a word, or gives usual where there is none. A number
// that cannot be is found, and is none: a slip of the hand must not take care from
// those that live.
func (r *reader) howMany(e *plan.Event, usual, most int) (int, bool) {
	if !e.Number.Set() {
		return min(usual, most), true
	}
	n := int(e.Number.V)
	fault := ""
	switch {
	case n == 0 && slices.Contains(notNone, e.Word):
		fault = "0 " + e.Word.Name
	case float64(n) != e.Number.V:
		fault = "animals are whole numbers"
	case n > most:
		fault = strconv.Itoa(n) + " " + e.Word.Name + ", but there " + wording.Noun(most, "is ", "are ") + strconv.Itoa(most) + " on " + e.Date.Words()
	default:
		return n, true
	}
	write := "a number of at most " + strconv.Itoa(most) + "; or first a line for those that are missing from the log"
	if y := r.lastBrood(); y != nil && y.Animals.Name.V != e.Group.V && n <= y.now() {
		write = e.Date.String() + " " + e.Enclosure.V + " " + y.called() + " " + e.Word.Name + " " + strconv.Itoa(n) + ", where it is of the young; else " + write
	}
	r.found.Add(finding.Finding{Rule: ruleNumber, At: e.Number.At, Text: fault + ": the line changes nothing", Write: write})
	return 0, false
}

// number notes how many there are from a day on, and how it came to that: why, and with
// which group where they went there or came from it.
func (t *track) number(s seen, n int, why Why, with *track) {
	t.numbered = true
	on, last := s.on, &t.Numbers[len(t.Numbers)-1]
	if n != last.Count {
		t.turn(s, n-last.Count, why, with)
	}
	switch {
	case n == last.Count:
		return
	case len(t.Numbers) > 1 && last.From == on:
		last.Count = n
		return
	case len(t.Numbers) == 1 && last.From >= on:
		last.From = on - 1
	}
	t.Numbers = append(t.Numbers, Number{on, n})
}

// arrived notes animals that came. Those of a first line that tells no other number
// than the plan are the plan's own.
func (r *reader) arrived(t *track, e *plan.Event) {
	usual := 0
	if t.now() == 0 {
		usual = 1
	}
	n, ok := r.howMany(e, usual, quantity.MaxCount)
	if !ok {
		return
	}
	if !t.numbered && n == t.now() {
		n = 0
	}
	if !t.numbered && n == 0 && len(t.Turns) == 1 {
		t.Turns[0].At = e.At // the plan has the day, and the line may say more
	}
	if !t.numbered && n == 0 && len(t.Numbers) == 1 {
		t.appeared(see(e), t.now(), Arrived) // the plan's own, who were not here before
	}
	t.arrived = see(e)
	defer r.settling(t, t.arrived)
	if n > 0 && len(r.living()) > 0 {
		t.joined = see(e)
		r.mixed(t, t, e)
	}
	t.number(see(e), min(t.now()+n, quantity.MaxCount), Arrived, nil)
}

func (r *reader) diedLine(t *track, e *plan.Event) {
	if t.now() == 0 {
		r.foundDead(t, e)
		return
	}
	n, ok := r.howMany(e, 1, t.now())
	if !ok || n == 0 {
		return
	}
	r.died = see(e)
	r.bereave(t, n, e)
	r.lose(t, e, n, Died, nil)
	r.infected(t, e)
}

// movedOut takes animals to another enclosure, or out of the collection where none
// is named. Without a number all of them go.
func (r *reader) movedOut(t *track, e *plan.Event) {
	to, name, ok := r.goal(e)
	if !ok {
		return
	}
	if t.Mother != nil {
		r.takeOut(t.of, e, to, name)
		return
	}
	n, ok := r.howMany(e, t.now(), t.now())
	if !ok || n == 0 {
		return
	}
	if to == nil {
		t.parted = t.parted || len(t.matings) > 0 || t.gravid.ok
		r.bereave(t, n, e)
		r.lose(t, e, n, Left, nil)
		return
	}
	if to == r && (name == "" || name == t.Animals.Name.V) {
		r.found.Add(finding.Finding{Rule: ruleNowhere, At: e.At, Text: "they are in " + e.Enclosure.V + " already", Write: "the name of the enclosure that they went to"})
		return
	}
	whole := n == t.now()
	j := r.transfer(t, to, name, n, e)
	if whole {
		r.follow(t, j, e)
		t.stray = seen{}
	}
	r.lose(t, e, n, MovedOut, j)
}

// goal reads where a line moves animals to: nil for out of the collection. It is false
// where there is no such place: then they are where they were.
func (r *reader) goal(e *plan.Event) (to *reader, name string, ok bool) {
	if len(e.Args) == 0 {
		return nil, "", true
	}
	if len(e.Args) > 1 {
		name = e.Args[1].V
	}
	if to = r.world.of[e.Args[0].V]; to != nil {
		return to, name, true
	}
	f := finding.Finding{Rule: ruleNowhere, At: e.Args[0].At, Text: "there is no enclosure " + strconv.Quote(e.Args[0].V) + ": as long as that stands they are counted where they were",
		Write: "the name of the enclosure; or no name, where it left the collection"}
	var names []string
	for _, x := range r.c.Enclosures {
		names = append(names, x.Name.V)
	}
	if s := slip.Of(e.Args[0].V, names); s != "" {
		f.Text += ": did you mean " + s + "?"
		f.Write = s
		f.Edits = finding.Instead(e.Args[0].At, e.Args[0].V, s)
	}
	r.found.Add(f)
	return nil, "", false
}

func (r *reader) lose(t *track, e *plan.Event, n int, why Why, to *track) {
	t.number(see(e), t.now()-n, why, to)
	if t.now() == 0 {
		t.gone = why.last(to) + e.Date.Words()
		t.last(e)
		r.leave(t, e.Date)
	}
}

// last ends a brood of which the last one that was with its mother died or went.
func (t *track) last(e *plan.Event) {
	if b := t.of; b != nil && b.young == t && t.Mother != nil && !b.separated.ok {
		b.separated = see(e)
		b.mother.leaving++
	}
}

// meant says what may be meant by a quantity that is not read, or how it is written.
func meant(err error) string {
	e := err.(*quantity.Error)
	switch {
	case e.Instead != "":
		return e.Instead
	case len(e.Either) > 0:
		return wording.Or(e.Either) + ", whichever is meant"
	}
	return e.Like()
}

func (r *reader) weighed(t *track, e *plan.Event) {
	text := ""
	if e.Number.Set() {
		text = strconv.FormatFloat(e.Number.V, 'f', -1, 64)
	}
	at := e.WordAt
	for _, a := range e.Args {
		text += " " + a.V
		at = a.At
	}
	w, err := quantity.Parse(text, quantity.Mass)
	if err != nil {
		r.found.Add(finding.Finding{Rule: ruleWeight, At: at, Text: "there is no weight here: " + err.Error(), Write: meant(err)})
		return
	}
	if r.heavy(t, w, e) {
		return
	}
	r.thin(t, w, e)
	t.Weights = append(t.Weights, Weighing{e.Date, plan.Written[quantity.Quantity]{V: w, At: e.At}})
}
