package plan

import (
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// State is a state block of a species sheet: how some care may be done with this
// species in a state, where it differs from the table of states.
type State struct {
	Head
	Cited
	Care     Written[[]string]          `care:"care"`
	Manner   Written[string]            `care:"manner"`
	Words    Written[string]            `care:"words"`
	Every    Written[quantity.Quantity] `care:"every"`
	From     Written[quantity.Quantity] `care:"from"`
	Is       Written[string]            `care:"is"`
	Rule     Written[string]            `care:"rule"`
	Disputed Written[string]            `care:"disputed"`
	Note     Written[string]            `care:"note"`
	Because  Written[string]            `care:"because"`
	Review   Written[civil.Date]        `care:"review"`

	What *schema.State
	Rows []schema.Row
	May  schema.May // the cell of each of the rows
	Own  bool       // from the collection's own sheet
}

// State returns what may be done with this species in a state: the state of the
// table, or the sheet's own of the same name where it differs. It is the same pointer
// each time, and of no sheet the table's.
func (s *SpeciesSheet) State(of *schema.State) *schema.State {
	if s != nil {
		if own := s.states[of]; own != nil {
			return own
		}
	}
	return of
}

// resolve makes the states that differ from the table, of each what the later block
// says.
func (s *SpeciesSheet) resolve() {
	s.states = map[*schema.State]*schema.State{}
	for _, b := range s.States {
		state := s.states[b.What]
		if state == nil {
			table := *b.What
			state = &table
			s.states[b.What] = state
		}
		for _, row := range b.Rows {
			state.May[row] = b.May
		}
		if b.Is.Set() {
			state.Is = b.Is.V
		}
		if b.Rule.Set() {
			state.Rule = b.Rule.V
		}
	}
}

// Weaker returns the rows in which the block allows what a sheet, or the table where
// there is none, does not.
func (b *State) Weaker(than *SpeciesSheet) (rows []schema.Row) {
	base := than.State(b.What)
	for _, row := range b.Rows {
		if b.May.Weaker(base.May[row]) {
			rows = append(rows, row)
		}
	}
	return rows
}

// states reads the cells of state blocks and returns those that could be read.
func (d *decoder) states(all []*State) []*State {
	out := make([]*State, 0, len(all))
	for _, b := range all {
		b.Own = d.own
		if b.What = schema.FindState(b.Name.V); b.What == nil {
			d.noWord(b.Name, "state", stateNames())
			continue
		}
		if d.cell(b) {
			out = append(out, b)
		}
	}
	return out
}

// cell puts together what a state block says of its rows. A block with a word that is
// not known, which has been found, says nothing: it might hold less than it means to.
func (d *decoder) cell(b *State) bool {
	for _, word := range b.Care.V {
		rows := schema.FindRows(word)
		if rows == nil {
			return false
		}
		b.Rows = append(b.Rows, rows...)
	}
	manner, ok := schema.FindManner(b.Manner.V)
	b.May = schema.May{Manner: manner, Words: b.Words.V, Every: wholeDays(b.Every), From: wholeDays(b.From), Source: codes(b.Source)}
	if (manner == schema.Held || b.From.Set()) && slices.Contains(b.Rows, schema.RowWater) {
		d.found.Add(finding.Finding{Rule: ruleValue, At: b.Care.At, Text: "drinking water is never held", Write: "care without water; or outside as manner, and words of how it is filled"})
		return false
	}
	return ok && len(b.Rows) > 0
}

func wholeDays(w Written[quantity.Quantity]) int { return int(w.V.Value / (24 * 60)) }

// codes are the sources of a cell as the table has them: none for common practice.
func codes(list []Written[string]) string {
	var out []string
	for _, w := range list {
		if w.V != "practice" {
			out = append(out, w.V)
		}
	}
	return strings.Join(out, ", ")
}

func stateNames() []string {
	var n []string
	for _, s := range schema.States {
		n = append(n, s.Name)
	}
	return n
}
