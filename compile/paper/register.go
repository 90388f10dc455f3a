package paper

import (
	"cmp"
	"path"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/register"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Register is the stock book as of a day, the balance up to it, and room for those who looked
// the animals through to sign: what an inventory is.
func Register(r *compile.Result, book *register.Register, b *register.Balance) *Document {
	d := document(r, "Register, "+r.Plan.Title())
	on := book.On.Words()
	parts := []Part{Title{Text: "Register of animals", Under: []string{r.Plan.Title() + " · " + on, wording.Animals(b.All.Are.Total()) + bySexes(b.All.Are)}}}
	here := Table{Columns: []string{"Animals", "How many", "Species, stage", "From", "What happened", "Line"}, Long: true}
	gone := Table{Columns: []string{"Animals", "Gone", "Species, stage", "From", "What happened", "Line"}, Long: true}
	for _, x := range book.Rows {
		row := []string{called(x), register.Sexes(x.Count), kindOf(x), sourced(x), happened(x), path.Base(book.Lines(x)[0])} // a column has no room for folders: the other forms have them
		if x.Here() {
			here.Rows = append(here.Rows, row)
			continue
		}
		row[1] = lines(dated(x.Out, "")+" "+x.Reason, x.To)
		gone.Rows = append(gone.Rows, row)
	}
	for _, t := range []struct {
		head string
		of   Table
	}{{"Who is here", here}, {"Who was here", gone}} {
		if len(t.of.Rows) > 0 {
			parts = append(parts, Head{Text: t.head}, t.of)
		}
	}
	if all := unwritten(book); len(all) > 0 {
		parts = append(parts, Head{Text: "Not written, of listed species"}, List{Look: Points, Items: items(all...)})
	}
	if all := kin(book); len(all) > 0 {
		parts = append(parts, Head{Text: "Kin, grown and together"}, List{Look: Points, Items: items(all...)})
	}
	d.add("Register · "+on+" · "+r.Plan.Title(), append(parts, cameAndWent(b)...)...)
	return d
}

func bySexes(c quantity.Count) string {
	if c.Total() == 0 {
		return ""
	}
	return ", " + register.Sexes(c) + " (males.females.of unknown sex)"
}

// lines are parts of a cell; those that say nothing are left out.
func lines(texts ...string) string {
	return strings.Join(slices.DeleteFunc(texts, func(s string) bool { return s == "" }), "; ")
}

func called(x *register.Row) string {
	name := x.ID
	if t := x.Group.Animals.Title; t.Set() {
		name += ", " + t.V
	}
	if at := x.Place.Name.V; !strings.HasPrefix(x.ID, at+"/") {
		name += ", in " + at
	}
	return name
}

func kindOf(x *register.Row) string {
	as := ""
	if w := x.Written(); w != "" {
		as = "written " + w
	}
	listed := ""
	if x.Listing != "" {
		listed = "CITES " + x.Listing
	}
	return lines(x.Species(), as, listed, x.Stage)
}

// sourced is where a row is from.
func sourced(x *register.Row) string {
	return lines(x.Origin, with("paper ", x.Paper), with("on it: ", x.OnPaper), dated(x.Checked, "list looked up "), dated(x.Born, "born "), dated(x.Came, "arrived "), with("from: ", x.From), with("mother ", x.Dam),
		with("brood ", x.Brood), with("parted from ", x.Parted), x.Note)
}

// happened are the moves, treatments and matings of a row, and who of it came and went.
func happened(x *register.Row) string {
	var all []string
	for i := range x.Steps {
		all = append(all, x.Steps[i].Words())
	}
	if x.Kept > 0 {
		all = append(all, "records kept until "+x.Kept.String())
	}
	return strings.Join(all, "; ")
}

func unwritten(book *register.Register) (out []string) {
	for _, x := range book.Rows {
		if len(x.Blank) > 0 {
			out = append(out, x.ID+": "+wording.And(x.Blank))
		}
	}
	return out
}

func kin(book *register.Register) (out []string) {
	for _, k := range book.Kin {
		who := k.A.ID
		if k.B != k.A {
			who += " and " + k.B.ID
		}
		out = append(out, who+": "+k.Why)
	}
	return out
}

// cameAndWent is the balance, and room to sign.
func cameAndWent(b *register.Balance) []Part {
	t := Table{Columns: []string{"Where", "Were", "More", "Fewer", "Known otherwise", "Are"}}
	row := func(where string, l *register.Line) {
		none := func(c quantity.Count) string { return cmp.Or(register.Sexes(c), "none") }
		t.Rows = append(t.Rows, []string{where, none(l.Were),
			counted([]column{{"born", l.Born}, {"arrived", l.Came}, {"moved in", l.In}, {"found", l.Found}}),
			counted([]column{{"died", l.Died}, {"left", l.Left}, {"lost", l.Lost}, {"moved out", l.Out}}), register.Sexes(l.Fixed), none(l.Are)})
	}
	for _, l := range b.Lines {
		row(l.Enclosure.Name.V+", "+l.Species, l)
	}
	row("In all", &b.All)
	return []Part{Head{Text: "Balance, " + wording.Dates(b.From, b.To)}, t,
		Blank{Head: "Looked through, and what was found otherwise", Lines: 3}, Sign{Fields: []string{"Counted by", "Seen by", "Day"}}}
}

// column is one of a balance.
type column struct {
	name string
	of   quantity.Count
}

// counted are columns, each behind its name, without those that are empty.
func counted(all []column) string {
	var out []string
	for _, c := range all {
		if n := register.Sexes(c.of); n != "" {
			out = append(out, c.name+" "+n)
		}
	}
	return strings.Join(out, ", ")
}

// dated is a day behind what was on it, as a register writes days; "" for none.
func dated(on civil.Date, what string) string {
	if on == 0 {
		return ""
	}
	return what + on.String()
}
