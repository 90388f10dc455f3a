package main

import (
	"math"

	"vivary/compile/compare"
	"vivary/plan/change"
	"vivary/schema/civil"
)

// compareForm is the JSON form of a comparison; schema/json/compare.schema.json describes it.
// Enclosures, keepers and calendars go by their names in the plan.
type compareForm struct {
	envelope
	Was     string        `json:"was"`
	Is      string        `json:"is"`
	Today   string        `json:"today"` // as of which both are judged
	Outcome string        `json:"outcome"`
	Sum     string        `json:"sum"`
	Changes []pieceForm   `json:"changes"`
	Animals []effectForm  `json:"animals"`
	House   []houseForm   `json:"house"`
	Rounds  []walkForm    `json:"rounds"`
	People  []workForm    `json:"people"`
	Care    []careForm    `json:"care"`
	Phones  []phoneForm   `json:"calendars"`
	Moved   []movedForm   `json:"moved,omitempty"`
	Laid    []string      `json:"laid_out,omitempty"`
	Refuses []findingForm `json:"refuses,omitempty"`
}

type pieceForm struct {
	Block  string    `json:"block"` // "log" of lines of a log
	Name   string    `json:"name,omitempty"`
	Before string    `json:"before,omitempty"` // its name
	In     []string  `json:"in,omitempty"`
	Attr   string    `json:"attribute,omitempty"`
	Was    *sideForm `json:"was,omitempty"`
	Is     *sideForm `json:"is,omitempty"`
	Lines  []string  `json:"lines,omitempty"`
	Gone   []string  `json:"lines_gone,omitempty"`
	Effect bool      `json:"effect"`
}

type sideForm struct {
	File string `json:"file"`
	Line int    `json:"line"`
	Text string `json:"text"`
}

type effectForm struct {
	Way        string   `json:"way"`
	Topic      string   `json:"topic"`
	Enclosures []string `json:"enclosures"`
	Name       string   `json:"name"`
	Was        string   `json:"was,omitempty"`
	Is         string   `json:"is,omitempty"`
	Limit      string   `json:"limit,omitempty"`
	From       string   `json:"from,omitempty"`
	Rule       string   `json:"rule,omitempty"`
	Severity   string   `json:"severity,omitempty"`
	Under      []string `json:"under,omitempty"`
	Causes     []int    `json:"causes"` // places in changes
}

type houseForm struct {
	Topic  string `json:"topic"`
	Of     string `json:"of"` // the name of its block; "" for what other blocks end
	Shown  string `json:"shown"`
	Name   string `json:"name"`
	Was    string `json:"was,omitempty"`
	Is     string `json:"is,omitempty"`
	From   string `json:"from,omitempty"`
	Causes []int  `json:"causes"`
}

type walkForm struct {
	Round  string `json:"round"`
	Was    string `json:"was,omitempty"`
	Is     string `json:"is,omitempty"`
	Causes []int  `json:"causes"`
}

type workForm struct {
	Keeper  string   `json:"keeper"`
	Was     float64  `json:"minutes_a_week_was"`
	Is      float64  `json:"minutes_a_week_is"`
	LiveWas bool     `json:"live_prey_was"`
	LiveIs  bool     `json:"live_prey_is"`
	Skills  []string `json:"trained_in,omitempty"`
	Unasked []string `json:"not_trained_in,omitempty"`
	From    string   `json:"from,omitempty"`
	Causes  []int    `json:"causes"`
}

type careForm struct {
	Kind   string      `json:"kind"`
	Added  int         `json:"added"`
	Gone   int         `json:"taken_out"`
	Moved  int         `json:"moved"`
	From   string      `json:"from"`
	Months []monthForm `json:"months"`
	Causes []int       `json:"causes"`
}

type monthForm struct {
	Year  int `json:"year"`
	Month int `json:"month"`
	Added int `json:"added"`
	Gone  int `json:"taken_out"`
	Moved int `json:"moved"`
}

type phoneForm struct {
	Calendar string `json:"calendar"`
	State    string `json:"state"`
	Changed  int    `json:"changed"`
	Added    int    `json:"added"`
	Gone     int    `json:"gone"`
	All      int    `json:"entries"`
	From     string `json:"from,omitempty"`
}

type movedForm struct {
	Block string `json:"block"`
	Name  string `json:"name,omitempty"`
	From  string `json:"from"`
	To    string `json:"to"`
}

func compareForms(r *compare.Report, was, is string) compareForm {
	out := compareForm{envelope: begin("compare"), Was: was, Is: is, Today: r.Is.Today.String(), Outcome: [...]string{fine: "none", refused: "harm", pressing: "change"}[differs(r)], Sum: r.Sum(),
		Changes: []pieceForm{}, Animals: []effectForm{}, House: []houseForm{}, Rounds: []walkForm{}, People: []workForm{}, Care: []careForm{}, Phones: []phoneForm{}, Laid: r.Laid}
	idle := map[int]bool{}
	for _, i := range r.Idle {
		idle[i] = true
	}
	for i := range r.Pieces {
		j := pieceForms(&r.Pieces[i])
		j.Effect = !idle[i]
		out.Changes = append(out.Changes, j)
	}
	for i := range r.Effects {
		out.Animals = append(out.Animals, effectForms(&r.Effects[i]))
	}
	for i := range r.House {
		e := &r.House[i]
		out.House = append(out.House, houseForm{e.Topic.String(), e.Of[0], e.Where, e.Name, e.Was, e.Is, dayOf(e.From), orEmpty(e.Cause)})
	}
	for _, x := range r.Rounds {
		out.Rounds = append(out.Rounds, walkForm{x.Round, x.Was, x.Is, orEmpty(x.Cause)})
	}
	for _, x := range r.People {
		out.People = append(out.People, workForm{x.Keeper, tenth(x.Was), tenth(x.Is), x.LiveWas, x.LiveIs, x.Skills, x.Unasked, dayOf(x.From), orEmpty(x.Cause)})
	}
	for _, x := range r.Care {
		j := careForm{x.Kind.Name, x.Added, x.Gone, x.Moved, dayOf(x.From), []monthForm{}, orEmpty(x.Cause)}
		for _, m := range x.Months {
			j.Months = append(j.Months, monthForm{m.Year, m.Month, m.Added, m.Gone, m.Moved})
		}
		out.Care = append(out.Care, j)
	}
	for _, x := range r.Phones {
		state := "changed"
		switch {
		case x.New:
			state = "new"
		case x.Old:
			state = "gone"
		}
		out.Phones = append(out.Phones, phoneForm{x.Calendar, state, x.Changed, x.Added, x.Gone, x.All, dayOf(x.From)})
	}
	for _, m := range r.Moves {
		out.Moved = append(out.Moved, movedForm{m.Type, m.Name, m.From, m.To})
	}
	if r.Unread != nil {
		out.Refuses = findingForms(r.Unread.Plan.Files, r.Refuses)
	}
	return out
}

func pieceForms(p *change.Piece) pieceForm {
	j := pieceForm{Block: p.Type, Name: p.Name, Before: p.Before, In: p.In, Attr: p.Attr, Was: sideOf(p.Was), Is: sideOf(p.Is), Lines: textsOf(p.Lines), Gone: textsOf(p.Gone)}
	if p.Log() {
		j.Block = "log"
	}
	return j
}

func effectForms(e *compare.Effect) effectForm {
	j := effectForm{Way: e.Way.Word(), Topic: e.Topic.String(), Enclosures: orEmpty(e.Of), Name: e.Name, Was: e.Was, Is: e.Is, Limit: e.Limit, From: dayOf(e.From), Under: e.Under, Causes: append([]int{}, e.Cause...)}
	if e.Found != nil {
		j.Rule, j.Severity = e.Found.Rule.ID, e.Found.Severity.String()
	}
	return j
}

func sideOf(s change.Side) *sideForm {
	if !s.Written() {
		return nil
	}
	return &sideForm{s.File, s.Line, s.Text}
}

func textsOf(all []change.Side) (out []string) {
	for _, s := range all {
		out = append(out, s.Text)
	}
	return out
}

func orEmpty[T any](all []T) []T {
	if all == nil {
		return []T{}
	}
	return all
}

func dayOf(d civil.Date) string {
	if d == 0 {
		return ""
	}
	return d.String()
}

func tenth(x float64) float64 { return math.Round(x*10) / 10 }
