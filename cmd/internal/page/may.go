package page

import (
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// table is how the care of each row may be done.
type table [schema.Rows]schema.May

// heed makes a table as strict as the states of a day ask for.
func (x *table) heed(holds []life.Hold, today civil.Date) {
	for i := range holds {
		h := &holds[i]
		if h.From > today || today >= h.Until {
			continue
		}
		for row := range x {
			if m := cellOf(h, row, today); m.Manner > x[row].Manner || m.Manner == x[row].Manner && x[row].Words == "" {
				x[row] = m
			}
		}
	}
}

// cellOf is a cell of the table of a state on a day: what is only to be done later in it is held
// until then.
func cellOf(h *life.Hold, row int, today civil.Date) schema.May {
	m := h.State.May[row]
	if h.Part && schema.Row(row) == schema.RowKilled && m.Manner == schema.Held { // the others of the group eat, and it is left out for none
		return schema.May{Words: "killed prey for all of them"}
	}
	if from := h.From + civil.Date(m.From); m.From > 0 && today < from {
		return schema.May{Manner: schema.Held, Words: "not before " + from.Words()}
	}
	if m.Every > 0 {
		m.Words = strings.Trim("at most every "+wording.Days(m.Every)+", "+m.Words, ", ")
	}
	m.From, m.Every, m.Source = 0, 0, ""
	return m
}

// mayOf is what may be done today, where anything may not be done as usual. The strictest state
// decides for all that is about the box; a meal is each group's own.
func mayOf(r *compile.Result, l *life.Enclosure) []may {
	var all table
	var own []table
	var names []string
	all.heed(l.Holds, r.Today)
	for _, g := range l.Groups {
		if g.Count(r.Today) == 0 {
			continue
		}
		var t table
		t.heed(l.Holds, r.Today)
		t.heed(g.Holds, r.Today)
		all.heed(g.Holds, r.Today)
		own, names = append(own, t), append(names, calledGroup(g))
	}
	if all == (table{}) {
		return nil
	}
	marks := [...]string{"usual", "hatch", "outside", "held"}
	out := make([]may, len(schema.Manners))
	for k := range out {
		m := schema.Manner(len(out) - 1 - k) // the strictest first
		out[k] = may{Manner: m.String(), Mark: marks[m]}
		for row := schema.RowLook; row < schema.Rows; row++ {
			out[k].Rows = append(out[k].Rows, rowsOf(row, m, &all, own, names)...)
		}
	}
	return slices.DeleteFunc(out, func(m may) bool { return len(m.Rows) == 0 })
}

// rowsOf words a row of the table where it may be done in a manner; none where it may not.
func rowsOf(row schema.Row, m schema.Manner, all *table, own []table, names []string) (out []string) {
	say := func(cell schema.May, who string) {
		if cell.Manner != m {
			return
		}
		text := row.String()
		if notes := strings.Trim(who+", "+cell.Words, ", "); notes != "" {
			text += " (" + notes + ")"
		}
		out = append(out, text)
	}
	meal := row == schema.RowLive || row == schema.RowKilled
	if !meal || !slices.ContainsFunc(own, func(t table) bool { return t[row].Manner != own[0][row].Manner }) {
		say(all[row], "")
		return out
	}
	for i := range own {
		say(own[i][row], names[i])
	}
	return out
}
