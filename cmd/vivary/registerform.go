package main

import (
	"vivary/compile"
	"vivary/compile/register"
	"vivary/plan/source"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// registerForm is the JSON form of the register; schema/json/register.schema.json describes it.
type registerForm struct {
	envelope
	On      string      `json:"on"`
	Rows    []rowForm   `json:"rows"`
	Kin     []kinForm   `json:"kin"`
	Balance balanceForm `json:"balance"`
}

type rowForm struct {
	ID        string         `json:"id"`
	Title     string         `json:"title"`
	Species   string         `json:"species"`
	Written   string         `json:"species_as_written,omitempty"`
	Listing   string         `json:"listing,omitempty"`
	Count     countForm      `json:"count"`
	Stage     string         `json:"stage,omitempty"`
	Origin    string         `json:"origin,omitempty"`
	Paper     string         `json:"paper,omitempty"`
	OnPaper   string         `json:"species_on_paper,omitempty"`
	Checked   string         `json:"list_checked,omitempty"`
	Kept      string         `json:"keep_until,omitempty"`
	Born      string         `json:"born,omitempty"`
	Arrived   string         `json:"arrived,omitempty"`
	From      string         `json:"from,omitempty"`
	Mother    string         `json:"mother,omitempty"`
	Brood     string         `json:"brood,omitempty"`
	Parted    string         `json:"parted_from,omitempty"`
	Enclosure string         `json:"enclosure"`
	Steps     []happenedForm `json:"steps"`
	Out       string         `json:"out,omitempty"`
	Reason    string         `json:"reason,omitempty"`
	To        string         `json:"to,omitempty"`
	Blank     []string       `json:"not_written,omitempty"`
	Note      string         `json:"note,omitempty"`
	At        standsForm     `json:"at"`
}

type countForm struct {
	Males   int `json:"males"`
	Females int `json:"females"`
	Unsexed int `json:"unsexed"`
	Total   int `json:"total"`
}

type happenedForm struct {
	On    string     `json:"on,omitempty"`
	What  string     `json:"what"`
	Count *countForm `json:"count,omitempty"`
	To    string     `json:"to,omitempty"`
	Note  string     `json:"note,omitempty"`
	At    standsForm `json:"at"`
}

type standsForm struct {
	File string `json:"file"`
	Line int    `json:"line"`
}

type kinForm struct {
	Rows []string `json:"rows"`
	Why  string   `json:"why"`
}

type balanceForm struct {
	From  string            `json:"from"`
	To    string            `json:"to"`
	Lines []balanceLineForm `json:"lines"`
	All   balanceLineForm   `json:"all"`
}

type balanceLineForm struct {
	Enclosure string    `json:"enclosure,omitempty"`
	Species   string    `json:"species,omitempty"`
	Were      countForm `json:"were"`
	Born      countForm `json:"born"`
	Arrived   countForm `json:"arrived"`
	MovedIn   countForm `json:"moved_in"`
	Found     countForm `json:"found"`
	Died      countForm `json:"died"`
	Left      countForm `json:"left"`
	Lost      countForm `json:"lost"`
	MovedOut  countForm `json:"moved_out"`
	Fixed     countForm `json:"known_otherwise"`
	Are       countForm `json:"are"`
}

func newRegisterForm(r *compile.Result, book *register.Register, b *register.Balance) registerForm {
	out := registerForm{envelope: begin("register"), On: book.On.String(), Rows: []rowForm{}, Kin: []kinForm{},
		Balance: balanceForm{From: b.From.String(), To: b.To.String(), Lines: []balanceLineForm{}, All: balanceLine(&b.All)}}
	for _, x := range book.Rows {
		out.Rows = append(out.Rows, rowOf(r, x))
	}
	for _, k := range book.Kin {
		form := kinForm{[]string{k.A.ID, k.B.ID}, k.Why}
		if k.A == k.B {
			form.Rows = form.Rows[:1]
		}
		out.Kin = append(out.Kin, form)
	}
	for _, l := range b.Lines {
		out.Balance.Lines = append(out.Balance.Lines, balanceLine(l))
	}
	return out
}

func rowOf(r *compile.Result, x *register.Row) rowForm {
	at := func(p source.Place) standsForm {
		s := r.Plan.Files.Start(p)
		return standsForm{s.File, s.Line}
	}
	j := rowForm{ID: x.ID, Title: x.Group.Animals.Shown(), Species: x.Species(), Written: x.Written(), Listing: x.Listing, Count: countOf(x.Count), Stage: x.Stage,
		Origin: x.Origin, Paper: x.Paper, OnPaper: x.OnPaper, Checked: dateOf(x.Checked), Kept: dateOf(x.Kept), Born: dateOf(x.Born), Arrived: dateOf(x.Came), From: x.From, Mother: x.Dam, Brood: x.Brood, Parted: x.Parted,
		Enclosure: x.Place.Name.V, Steps: []happenedForm{}, Out: dateOf(x.Out), Reason: x.Reason, To: x.To, Blank: x.Blank, Note: x.Note, At: at(x.At)}
	for i := range x.Steps {
		s := &x.Steps[i]
		form := happenedForm{On: dateOf(s.On), What: s.What, To: s.To, Note: s.Note, At: at(s.At)}
		if s.Count.Total() > 0 {
			n := countOf(s.Count)
			form.Count = &n
		}
		j.Steps = append(j.Steps, form)
	}
	return j
}

func dateOf(on civil.Date) string {
	if on == 0 {
		return ""
	}
	return on.String()
}

func countOf(c quantity.Count) countForm {
	return countForm{c.Males, c.Females, c.Unsexed, c.Total()}
}

func balanceLine(l *register.Line) balanceLineForm {
	j := balanceLineForm{Species: l.Species, Were: countOf(l.Were), Born: countOf(l.Born), Arrived: countOf(l.Came), MovedIn: countOf(l.In), Found: countOf(l.Found),
		Died: countOf(l.Died), Left: countOf(l.Left), Lost: countOf(l.Lost), MovedOut: countOf(l.Out), Fixed: countOf(l.Fixed), Are: countOf(l.Are)}
	if l.Enclosure != nil {
		j.Enclosure = l.Enclosure.Name.V
	}
	return j
}
