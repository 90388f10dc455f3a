package main

import "vivary/compile/past"

// historyForm is the JSON form of what was said of an enclosure; schema/json/history.schema.json
// describes it.
type historyForm struct {
	envelope
	Enclosure string     `json:"enclosure"`
	Title     string     `json:"title"`
	Steps     []stepForm `json:"steps"` // newest first
	Older     bool       `json:"older"` // there are more
	Looked    int        `json:"looked_through,omitempty"`
	Cut       string     `json:"known_from,omitempty"`
	Year      yearForm   `json:"year"`
}

type stepForm struct {
	Revision  string       `json:"revision,omitempty"`
	Short     string       `json:"short,omitempty"`
	Author    string       `json:"author,omitempty"`
	Subject   string       `json:"subject,omitempty"`
	Day       string       `json:"day"`
	Enclosure string       `json:"enclosure"`
	Changes   []pieceForm  `json:"changes"`
	Animals   []effectForm `json:"animals"`
	Log       []logForm    `json:"log"`
	Gone      []sideForm   `json:"log_gone,omitempty"`
	Begins    string       `json:"begins,omitempty"`
	Torn      string       `json:"not_understood,omitempty"`
}

type logForm struct {
	sideForm
	Day  string `json:"day"`
	Word string `json:"word"`
}

type yearForm struct {
	From  string        `json:"from"`
	Until string        `json:"until"`
	Known []string      `json:"known"` // the first day and the last of each stretch
	Care  []careDayForm `json:"care"`
}

type careDayForm struct {
	Name  string   `json:"name"`
	Kind  string   `json:"kind"`
	Stood []string `json:"stood"`
	Done  []string `json:"done"`
	Not   []string `json:"not_done"`
}

func historyForms(s *past.Story) historyForm {
	out := historyForm{envelope: begin("history"), Enclosure: s.Name, Title: s.Title, Steps: []stepForm{}, Older: s.Older, Looked: s.Looked, Cut: s.Cut}
	for i := range s.Steps {
		out.Steps = append(out.Steps, stepForms(&s.Steps[i]))
	}
	y := s.Year
	out.Year = yearForm{From: y.From.String(), Until: (y.Until() - 1).String(), Known: []string{}, Care: []careDayForm{}}
	for d := range y.Known {
		if y.Known[d] && (d == 0 || !y.Known[d-1]) {
			out.Year.Known = append(out.Year.Known, y.Day(d).String())
		}
		if y.Known[d] && (d == len(y.Known)-1 || !y.Known[d+1]) {
			out.Year.Known = append(out.Year.Known, y.Day(d).String())
		}
	}
	for _, r := range y.Rows {
		out.Year.Care = append(out.Year.Care, careDayForm{r.Name, r.Kind.Name, daysOf(y, &r.Stood), daysOf(y, &r.Done), daysOf(y, &r.Not)})
	}
	return out
}

func daysOf(y *past.Year, days *[past.Weeks * 7]bool) []string {
	out := []string{}
	for d := range days {
		if days[d] {
			out = append(out, y.Day(d).String())
		}
	}
	return out
}

func stepForms(s *past.Step) stepForm {
	out := stepForm{Revision: s.ID, Short: s.Short, Author: s.Author, Subject: s.Subject, Day: s.Day.String(), Enclosure: s.Name,
		Changes: []pieceForm{}, Animals: []effectForm{}, Log: []logForm{}, Begins: s.Begins, Torn: s.Torn}
	for i := range s.Log {
		l := &s.Log[i]
		out.Log = append(out.Log, logForm{*sideOf(l.Side), l.Event.Date.String(), l.Event.Word.Name})
	}
	for _, g := range s.Gone {
		out.Gone = append(out.Gone, *sideOf(g))
	}
	if s.Report == nil {
		return out
	}
	told, at := s.Pieces()
	for _, i := range told {
		p := pieceForms(&s.Report.Pieces[i])
		p.Effect = s.Brings(i)
		out.Changes = append(out.Changes, p)
	}
	for i := range s.Report.Effects {
		e := effectForms(&s.Report.Effects[i])
		for k := range e.Causes {
			e.Causes[k] = at[e.Causes[k]]
		}
		out.Animals = append(out.Animals, e)
	}
	return out
}
