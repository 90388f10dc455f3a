// Package register is the stock book of a collection: every animal and every group that was
// ever in it, from where, with what papers, where it is and what became of it; and what came
// and went between two days. It counts nobody itself: how many there are on which day, and by
// which line, is what compile/life has read. It has dates and fields, and concludes nothing
// that is the law's.
package register

import (
	"cmp"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/deadline"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// Register is who there is and who there was, as is known now of the end of a day.
type Register struct {
	On   civil.Date
	Rows []*Row // in the order of the plan, what the log brought behind it
	Kin  []Kin

	book *book
}

// Row is one animal, or a group that nobody tells apart. It stays when they are gone, and
// goes on where all of them moved to a box of their own.
type Row struct {
	// ID is "enclosure/group" by their names, of where they were first; with a number behind
	// it where others bore that name there before.
	ID    string
	Group *life.Group // in which they are, or were last
	// Count is how many there are, by their sexes.
	Count quantity.Count
	// Place is the enclosure, also of those that are gone; Stage is "" where it is not known.
	Place  *plan.Enclosure
	Stage  string
	Origin string // as the trade writes it: "CB"; "born here" where the log tells of the birth
	Paper  string
	// OnPaper is the species as its paper has it, Checked the day on which somebody looked up
	// whether it is listed.
	OnPaper string
	Checked civil.Date
	// Kept is until when its last record is kept, by what the plan says; 0 where it does not.
	Kept   civil.Date
	Brood  string // as the plan names it
	Dam    string // the ID of who bore or laid them; "" where that is not known
	Born   civil.Date
	Came   civil.Date // into the collection; 0 where no day is written
	From   string     // the note of the line that tells of it
	Parted string     // the ID of those whom they were parted from; "" for none
	Note   string     // of the block in the plan
	// Steps are what the log tells of how many they are, of moves, treatments and matings.
	Steps []Step
	// Out is since when none of them are here, 0 while some are; Reason and To say how the
	// last of them went.
	Out    civil.Date
	Reason string
	To     string
	// Listing is the appendix in which the species is listed, and Blank which fields are not
	// filled in then; both are empty for all others.
	Listing string
	Blank   []string
	At      source.Place

	parted *Row // from whom they came, where only some did
	opened int  // the group in which they were first
	base   quantity.Count
}

// Step is one line of what became of a row.
type Step struct {
	On    civil.Date
	What  string // "arrived", "moved", "sold", "treated"
	Count quantity.Count
	To    string // where they went, or came from
	Note  string
	At    source.Place
}

// Of is the register of a collection that was understood, as of a day that is not after today.
func Of(r *compile.Result, on civil.Date) *Register {
	b := read(r)
	out := &Register{On: on, book: b}
	for i := range b.steps {
		if s := &b.steps[i]; s.turn.On <= on {
			s.row.take(b, s)
		}
	}
	for _, row := range b.rows { // whom some were parted from stands before them
		if row.Steps != nil || row.base.Total() > 0 { // else they came later
			b.end(row, on)
			out.Rows = append(out.Rows, row)
		}
	}
	b.noted(on)
	slices.SortStableFunc(out.Rows, func(a, c *Row) int { return a.opened - c.opened })
	for _, row := range out.Rows {
		slices.SortStableFunc(row.Steps, func(a, c Step) int { return cmp.Compare(a.On, c.On) })
		row.blanks()
		row.keep(r)
	}
	out.Kin = kin(out.Rows)
	return out
}

// Here reports whether any of a row are in the collection.
func (r *Row) Here() bool { return r.Count.Total() > 0 }

// Written is the name of the species as the plan has it, where that is another than its
// sheet's; else "".
func (r *Row) Written() string {
	if name := r.Place.Species.V; r.Group.Sheet != nil && r.Group.Sheet == r.Place.Sheet && name != r.Group.Sheet.Name.V {
		return name
	}
	return ""
}

// Species is the name of today: the scientific one without its author where the sheet has it,
// else that of the sheet, or as the plan writes it where there is none.
func (r *Row) Species() string { return species(r.Group, r.Place) }

func species(g *life.Group, in *plan.Enclosure) string {
	if g.Sheet == nil {
		return in.Species.V
	}
	if latin := strings.Fields(g.Sheet.Latin.V); len(latin) > 1 {
		return latin[0] + " " + latin[1]
	}
	return g.Sheet.Name.V
}

// code is how the trade writes an origin.
func code(origin string) string {
	for _, c := range schema.Origins {
		if c.Name != origin {
			continue
		}
		for _, a := range c.Also {
			if a == strings.ToUpper(a) {
				return a
			}
		}
	}
	return origin
}

// take puts what a step brings into its row.
func (r *Row) take(b *book, s *step) {
	g := b.groups[s.group]
	r.Count = plus(plus(r.Count, s.count), s.fixed)
	what := Step{On: s.turn.On, Count: absolute(s.count), At: s.turn.At}
	e := b.event(s.turn.At)
	if e != nil {
		what.Note = e.Note
	}
	switch why := s.turn.Why; why {
	case life.Arrived:
		what.What = "arrived"
		r.Came = cmp.Or(r.Came, s.turn.On)
		r.From = cmp.Or(r.From, what.Note)
	case life.Born:
		what.What = "born"
		if r.Born == 0 {
			r.Born = s.turn.On
		}
		r.Origin = cmp.Or(r.Origin, "born here")
	case life.Found:
		what.What = "found"
	case life.MovedIn:
		if s.on {
			r.Group, r.Place = g.Group, g.in.Plan
			return // the step out of where they were says it
		}
		what.What, what.To = "came from", b.called(s.turn.With)
	case life.MovedOut:
		what.What, what.To = "moved to", b.called(s.turn.With)
	case life.Died:
		what.What = "died"
	case life.Left:
		what.What = "moved out"
		if e != nil {
			if word := strings.ToLower(b.r.Plan.Files.Of(e.WordAt)); word != "moved" {
				what.What = word
			}
		}
	case life.Escaped:
		what.What = "escaped"
	case life.Gone:
		what.What = "gone"
	case life.Recounted:
		what.What, what.Count = "counted", r.Count
	}
	r.Steps = append(r.Steps, what)
}

// end says of a row what follows from all of its steps.
func (b *book) end(row *Row, on civil.Date) {
	if row.Here() {
		row.Stage = row.Group.Stage(on)
	} else {
		last := row.Steps[len(row.Steps)-1]
		row.Stage = row.Group.Stage(last.On - 1)
		row.Out, row.Reason, row.To = last.On, last.What, cmp.Or(last.To, last.Note)
	}
	if dam := row.Group.Dam; dam != nil {
		if i, ok := b.at[dam]; ok {
			if of := b.rowOn(i, row.Born); of != nil {
				row.Dam = of.ID
			}
		}
	}
	if p := row.parted; p != nil {
		row.Parted = p.ID
		row.OnPaper, row.Checked = cmp.Or(row.OnPaper, p.OnPaper), cmp.Or(row.Checked, p.Checked)
		row.Origin, row.Paper, row.Brood, row.Dam = cmp.Or(row.Origin, p.Origin), cmp.Or(row.Paper, p.Paper), cmp.Or(row.Brood, p.Brood), cmp.Or(row.Dam, p.Dam)
		row.Born, row.Came, row.From = cmp.Or(row.Born, p.Born), cmp.Or(row.Came, p.Came), cmp.Or(row.From, p.From)
	}
}

// noted puts what was noted of the health and the matings of groups into their rows.
func (b *book) noted(on civil.Date) {
	for i, g := range b.groups {
		for _, at := range g.Noted {
			e := b.event(at)
			if e == nil || e.Date > on {
				continue
			}
			row := b.rowOn(i, e.Date)
			row.Steps = append(row.Steps, Step{On: e.Date, What: e.Word.Name, Note: e.Note, At: at})
		}
	}
}

// keep says until when the last record of a row is kept.
func (r *Row) keep(of *compile.Result) {
	if !of.Plan.About.Kept.Set() {
		return
	}
	last := max(r.Came, r.Born)
	for i := range r.Steps {
		last = max(last, r.Steps[i].On)
	}
	if last > 0 {
		r.Kept = deadline.KeptUntil(last, of.Plan.About.Kept.V)
	}
}

// blanks names what is not written of an animal of a listed species.
func (r *Row) blanks() {
	if r.Group.Sheet == nil {
		return
	}
	f := r.Group.Sheet.Figure(schema.FigureCITES, "")
	if f == nil || len(f.Words) == 0 || slices.Contains(f.Words, "none") {
		return
	}
	r.Listing = f.Value.V
	for _, x := range []struct {
		name  string
		blank bool
	}{{"origin", r.Origin == ""}, {"paper", r.Paper == ""}, {"arrived or born", r.Came == 0 && r.Born == 0},
		{"from whom", r.From == "" && r.Note == "" && r.Dam == ""}, {"to whom", r.Out > 0 && r.To == "" && r.left()}} {
		if x.blank {
			r.Blank = append(r.Blank, x.name)
		}
	}
}

// left reports whether the last of them went out of the collection alive, to somebody.
func (r *Row) left() bool {
	return !slices.Contains([]string{"died", "escaped", "gone", "moved to", "counted"}, r.Reason)
}
