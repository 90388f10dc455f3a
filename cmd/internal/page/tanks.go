package page

import (
	"net/http"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema/wording"
)

// tanksPage lists the enclosures by room.
type tanksPage struct {
	frame
	Asked string
	Rooms []roomOf
	Count int
}

type roomOf struct {
	Title string
	Tanks []tankLine
}

type tankLine struct {
	Name, Shown, Species, Animals string
	States                        []string
	First                         bool
}

// tanks lists the enclosures in walking order, those that have what is asked for.
func (q *request) tanks() {
	asked := strings.TrimSpace(q.r.URL.Query().Get("for"))
	if len(asked) > 200 {
		asked = asked[:200]
	}
	out := tanksPage{frame: q.frame("Tanks", "tanks"), Asked: strings.ToValidUTF8(asked, "")}
	if r := q.readable(); r != nil {
		for i, l := range r.Lives {
			x := tankLineOf(r, l)
			if !x.has(l.Plan, out.Asked) {
				continue
			}
			x.First = len(aboutFirst(r, i)) > 0
			title := "Elsewhere"
			if l.Plan.Place != nil {
				title = l.Plan.Place.Shown()
			}
			if n := len(out.Rooms); n == 0 || out.Rooms[n-1].Title != title {
				out.Rooms = append(out.Rooms, roomOf{Title: title})
			}
			last := &out.Rooms[len(out.Rooms)-1]
			last.Tanks = append(last.Tanks, x)
			out.Count++
		}
	}
	q.show(http.StatusOK, "tanks", out)
}

func tankLineOf(r *compile.Result, l *life.Enclosure) tankLine {
	x := tankLine{Name: l.Plan.Name.V, Shown: l.Plan.Shown()}
	if s := l.Plan.Sheet; s != nil {
		x.Species = s.Shown()
	}
	n := 0
	add := func(holds []life.Hold) {
		for k := range holds {
			if h := &holds[k]; h.From <= r.Today && r.Today < h.Until && h.State.Rule != "" && !slices.Contains(x.States, h.State.Is) {
				x.States = append(x.States, h.State.Is)
			}
		}
	}
	add(l.Holds)
	for _, g := range l.Groups {
		n += g.Count(r.Today)
		add(g.Holds)
	}
	x.Animals = wording.Animals(n)
	return x
}

// has reports whether an enclosure has what is asked for in what its line says.
func (x *tankLine) has(e *plan.Enclosure, asked string) bool {
	text := strings.ToLower(x.Name + " " + x.Shown + " " + x.Species + " " + strings.Join(x.States, " "))
	if e.Sheet != nil {
		text += " " + strings.ToLower(e.Sheet.Latin.V)
	}
	for word := range strings.FieldsSeq(strings.ToLower(asked)) {
		if !strings.Contains(text, word) {
			return false
		}
	}
	return true
}

func aboutFirst(r *compile.Result, i int) (out []string) {
	for _, f := range r.Roster.Pressing[r.Lives[i]] {
		if f.On(r.Today) {
			out = append(out, f.Text)
		}
	}
	each(r.Lives[i], func(asks []life.Ask, _ string) {
		for k := range asks {
			if a := &asks[k]; a.Urgent && a.From <= r.Today && (a.Until == 0 || r.Today < a.Until) {
				out = append(out, a.Text)
			}
		}
	})
	return out
}
