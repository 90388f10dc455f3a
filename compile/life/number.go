package life

import (
	"strconv"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// howMany reads the number after a word, or gives usual where there is none. It is
// never more than most.
func (r *reader) howMany(e *plan.Event, usual, most int) int {
	if !e.Number.Set() {
		return min(usual, most)
	}
	n := int(e.Number.V)
	fault := ""
	switch {
	case float64(n) != e.Number.V:
		fault = "animals are whole numbers"
	case n > most:
		fault = strconv.Itoa(n) + " " + e.Word.Name + ", but there " + wording.Noun(most, "is ", "are ") + strconv.Itoa(most) + " on " + e.Date.Words()
	}
	if fault != "" {
		r.found.Add(finding.Finding{Rule: ruleNumber, At: e.Number.At, Text: fault,
			Write: "a number of at most " + strconv.Itoa(most) + "; or first a line for those that are missing from the log"})
	}
	return min(n, most)
}

// number notes how many there are from a day on.
func (t *track) number(on civil.Date, n int) {
	t.numbered = true
	last := &t.Numbers[len(t.Numbers)-1]
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

// arrived notes animals that came. Those of a first line that tells no other
// number than the plan are the plan's own.
func (r *reader) arrived(t *track, e *plan.Event) {
	t.arrived = see(e)
	r.add(t, e, 0)
}

func (r *reader) add(t *track, e *plan.Event, usual int) {
	if t.now() == 0 {
		usual = max(usual, 1)
	}
	n := r.howMany(e, usual, quantity.MaxCount)
	if !t.numbered && n == t.now() {
		n = 0
	}
	t.number(e.Date, min(t.now()+n, quantity.MaxCount))
}

func (r *reader) diedLine(t *track, e *plan.Event) {
	n := r.howMany(e, 1, t.now())
	if n == 0 {
		return
	}
	r.died = see(e)
	r.lose(t, e, n, "the last died on ")
}

// movedOut takes animals to another enclosure, or out of the collection where none
// is named. Without a number all of them go.
func (r *reader) movedOut(t *track, e *plan.Event) {
	if len(e.Args) > 0 && r.c.Enclosure(e.Args[0].V) == nil {
		f := finding.Finding{Rule: ruleNowhere, At: e.Args[0].At, Text: "there is no enclosure " + strconv.Quote(e.Args[0].V),
			Write: "the name of the enclosure; or no name, where it left the collection"}
		var names []string
		for _, x := range r.c.Enclosures {
			names = append(names, x.Name.V)
		}
		if s := finding.Suggest(e.Args[0].V, names); s != "" {
			f.Text += ": did you mean " + s + "?"
			f.Write = s
			f.Edits = finding.Instead(e.Args[0].At, e.Args[0].V, s)
		}
		r.found.Add(f)
	}
	t.parted = t.parted || len(t.matings) > 0 || t.gravid.ok
	r.lose(t, e, r.howMany(e, t.now(), t.now()), "the last left on ")
}

func (r *reader) lose(t *track, e *plan.Event, n int, how string) {
	t.number(e.Date, t.now()-n)
	if t.now() == 0 {
		t.gone = how + e.Date.Words()
		r.leave(t, e.Date)
	}
}

// movedIn is the other end of a move.
func (r *reader) movedIn(e *plan.Event) {
	t := r.track(joins(r.out.Plan, e))
	if t == nil {
		r.found.Add(finding.Finding{Rule: ruleNowhere, At: e.At,
			Text:  "the line does not say which animals of " + r.out.Plan.Name.V + " were joined",
			Write: "moved " + r.out.Plan.Name.V + " and the name of an animals block there"})
		return
	}
	usual := 1
	if from := r.c.Enclosure(e.Enclosure.V); from != nil && from.Group(e.Group.V) != nil {
		usual = from.Group(e.Group.V).Count.V.Total()
	}
	r.add(t, e, usual)
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
		r.found.Add(finding.Finding{Rule: ruleWeight, At: at, Text: "there is no weight here: " + err.Error(), Write: "weighed 24 g"})
		return
	}
	t.Weight, t.Weighed = plan.Written[quantity.Quantity]{V: w, At: e.At}, e.Date
}
