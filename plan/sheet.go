package plan

import (
	"cmp"
	"slices"
	"strings"

	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// SpeciesSheet is what is known of a species: the built-in sheet, with what the
// collection's own sheet adds or puts in its place.
type SpeciesSheet struct {
	Head
	Cited                      // of what in it does not say its own
	Title    Written[string]   `care:"title"`
	Latin    Written[string]   `care:"latin"`
	Family   Written[string]   `care:"family"`
	Also     []Written[string] `care:"also"`
	Former   []Written[string] `care:"former"`
	Mistaken []Written[string] `care:"mistaken"`
	Type     Written[string]   `care:"type"`
	Like     Written[string]   `care:"like"`
	Note     Written[string]   `care:"note"`
	Stages   []*Stage          `care:"stage"`
	Figures  []*Figure         `care:"figure"`
	States   []*State          `care:"state"`
	Needs    []*Need           `care:"need"`
	Care     []*Care           `care:"care"`
	Feeding  []*Feeding        `care:"feeding"`

	states map[*schema.State]*schema.State // those that differ from the table
}

// Shown returns the name that people see.
func (s *SpeciesSheet) Shown() string { return s.Title.Or(s.Name.V) }

// Cited says where a fact is from.
type Cited struct {
	Source  []Written[string]   `care:"source"`
	Quality Written[string]     `care:"quality"`
	Seen    Written[civil.Date] `care:"seen"`

	Of     string // the other species whose sheet lends it, or the type, "" for none
	OfType string // the title of the type of which it is common practice, "" for none
}

// or takes from the sheet what is not said.
func (c *Cited) or(sheet *Cited) {
	if len(c.Source) == 0 {
		c.Source = sheet.Source
	}
	if !c.Quality.Set() {
		c.Quality = sheet.Quality
	}
	if !c.Seen.Set() {
		c.Seen = sheet.Seen
	}
}

// Whose returns the species of which something is known that a sheet has.
func (c Cited) Whose(s *SpeciesSheet) string {
	return cmp.Or(c.OfType, c.Of, s.Name.V)
}

// Lent reports whether it is known of others only: of a type, or of a kin.
func (c Cited) Lent() bool { return c.OfType != "" || c.Of != "" }

// Stage is a stage block of a species sheet.
type Stage struct {
	Head
	Cited
	Instars Written[quantity.Range] `care:"instars"`
	Note    Written[string]         `care:"note"`
}

// Figure is one fact of a species or a feeder. Which of Range, Words and Truth
// holds its value is said by What.Kind.
type Figure struct {
	Head
	Cited
	Value    Written[string]     `care:"value"`
	Wrong    Written[string]     `care:"wrong"`
	Harm     Written[string]     `care:"harm"`
	Stages   []Written[string]   `care:"stages"`
	Instar   Written[int]        `care:"instar"`
	Disputed Written[string]     `care:"disputed"`
	Note     Written[string]     `care:"note"`
	Because  Written[string]     `care:"because"`
	Review   Written[civil.Date] `care:"review"`

	What  *schema.Figure
	Range quantity.Range
	Words []string
	Truth bool
	// Beyond is, of a figure of a type, from where on it is wrong for every member; the
	// zero Range where it has one value only.
	Beyond quantity.Range
	times  [2]times // of a multiple of the animal: value and wrong
	Own    bool     // from the collection's own sheet
}

// Need is a need block of a species sheet.
type Need struct {
	Head
	Cited
	Stages   []Written[string]          `care:"stages"`
	Longest  Written[quantity.Quantity] `care:"longest"`
	Wrong    Written[quantity.Quantity] `care:"wrong"`
	Shortest Written[quantity.Quantity] `care:"shortest"`
	Severity Written[string]            `care:"severity"`
	Disputed Written[string]            `care:"disputed"`
	Note     Written[string]            `care:"note"`
	Because  Written[string]            `care:"because"`
	Review   Written[civil.Date]        `care:"review"`

	What *schema.NeedName
	Own  bool
}

// FeederSheet is what is known of a feeder animal.
type FeederSheet struct {
	Head
	Title   Written[string]   `care:"title"`
	Plural  Written[string]   `care:"plural"`
	Latin   Written[string]   `care:"latin"`
	Also    []Written[string] `care:"also"`
	Hazards []Written[string] `care:"hazards"`
	Note    Written[string]   `care:"note"`
	Sizes   []*FeederSize     `care:"size"`
	Figures []*Figure         `care:"figure"`
	Stages  []*Development    `care:"development"`
	Upkeep  []*Upkeep         `care:"upkeep"`
}

// Upkeep is an upkeep block: something that is done for a feeder animal itself.
type Upkeep struct {
	Head
	Cited
	Task   Written[string]            `care:"task"`
	Every  Written[quantity.Interval] `care:"every"`
	In     []Written[string]          `care:"in"`
	Wet    Written[bool]              `care:"wet"`
	Cleans Written[bool]              `care:"cleans"`
	Note   Written[string]            `care:"note"`
}

// UpkeepIn returns what is done for the feeder in a tub or in a culture, whichever is named;
// nothing where the sheet does not say.
func (f *FeederSheet) UpkeepIn(where string) (out []*Upkeep) {
	for _, u := range f.Upkeep {
		if u.Task.Set() && u.Every.Set() && (len(u.In) == 0 || Lists(u.In, where)) {
			out = append(out, u)
		}
	}
	return out
}

// Size returns the size class of that name, or nil.
func (f *FeederSheet) Size(name string) *FeederSize {
	for _, s := range f.Sizes {
		if s.Name.V == name {
			return s
		}
	}
	return nil
}

// Figure returns what is stated of the feeder, or nil.
func (f *FeederSheet) Figure(what *schema.Figure) *Figure { return pick(f.Figures, what, "") }

// FeederSize is one size class of a feeder animal.
type FeederSize struct {
	Head
	Cited
	Also   []Written[string]       `care:"also"`
	Alone  []Written[string]       `care:"alone"`
	Mass   Written[quantity.Range] `care:"mass"`
	Length Written[quantity.Range] `care:"length"`
	Energy Written[quantity.Range] `care:"energy"`
	Note   Written[string]         `care:"note"`
}

// Source is a source block.
type Source struct {
	Head
	Cite  Written[string] `care:"cite"`
	Where Written[string] `care:"at"`
	Kind  Written[string] `care:"kind"`
	Part  Written[string] `care:"part"`
}

// Figure returns the figure that holds for a stage: the one that names the stage,
// else the one for all stages, else nil. An empty stage asks for the latter.
func (s *SpeciesSheet) Figure(what *schema.Figure, stage string) *Figure {
	return pick(s.Figures, what, stage)
}

// Preys reports whether prey is a meal for the species; where the sheet does not say what
// it lives on, it is taken to be.
func (s *SpeciesSheet) Preys() bool {
	f := s.Figure(schema.FigureEats, "")
	return f == nil || len(f.Words) == 0 || f.Words[0] == "prey" || f.Words[0] == "both"
}

// Hunts reports whether prey is a meal for the species: as it is said, else whether the
// sheet feeds any.
func (s *SpeciesSheet) Hunts() bool {
	if s.Figure(schema.FigureEats, "") != nil {
		return s.Preys()
	}
	return slices.ContainsFunc(s.Feeding, func(f *Feeding) bool { return len(f.Menu()) > 0 })
}

// Instar returns the figure stated for one instar, or nil.
func (s *SpeciesSheet) Instar(what *schema.Figure, instar int) *Figure {
	for _, f := range s.Figures {
		if f.What == what && f.Instar.Set() && f.Instar.V == instar {
			return f
		}
	}
	return nil
}

func pick(all []*Figure, what *schema.Figure, stage string) *Figure {
	var general *Figure
	for _, f := range all {
		if f.What != what || f.Instar.Set() {
			continue
		}
		if len(f.Stages) == 0 {
			general = f
		} else if stage != "" && Lists(f.Stages, stage) {
			return f
		}
	}
	return general
}

// Each calls use for all that is stated of a figure, for whatever stage or instar.
func (s *SpeciesSheet) Each(what *schema.Figure, use func(*Figure)) {
	for _, f := range s.Figures {
		if f.What == what {
			use(f)
		}
	}
}

// Is reports whether the sheet states the figure with that word, or true.
func (s *SpeciesSheet) Is(what *schema.Figure, word string) bool {
	f := s.Figure(what, "")
	if f == nil {
		return false
	}
	if f.What.Kind == schema.Truth {
		return f.Truth == (word == "true")
	}
	return slices.Contains(f.Words, word)
}

// NeedsOf returns the needs that hold for a stage: of each name the one that names the
// stage, and of several the topmost sheet's. An unknown stage, "", takes the strictest of
// all stages.
func (s *SpeciesSheet) NeedsOf(stage string) []*Need {
	var out []*Need
	for _, n := range s.Needs {
		if stage != "" && len(n.Stages) > 0 && !Lists(n.Stages, stage) {
			continue
		}
		found := false
		for i, o := range out {
			if o.Name.V != n.Name.V {
				continue
			}
			found = true
			specific := len(n.Stages) > 0 && len(o.Stages) == 0 && stage != ""
			stricter := n.Longest.V.Value < o.Longest.V.Value && stage == ""
			if specific || stricter {
				out[i] = n
			}
		}
		if !found {
			out = append(out, n)
		}
	}
	return out
}

// StageOf returns the stage that an instar belongs to, or "".
func (s *SpeciesSheet) StageOf(instar int) string {
	for _, st := range s.Stages {
		if st.Instars.Set() && st.Instars.V.Contains(float64(instar)) {
			return st.Name.V
		}
	}
	return ""
}

// Lists reports whether a list of words holds one.
func Lists(list []Written[string], word string) bool {
	return slices.ContainsFunc(list, func(w Written[string]) bool { return w.V == word })
}

// slug is the form in which names are compared: lower case, words joined by hyphens.
func slug(s string) string {
	return strings.Join(strings.FieldsFunc(strings.ToLower(s), func(r rune) bool {
		return r == ' ' || r == '-' || r == '_' || r == '.' || r == '(' || r == ')' || r == ','
	}), "-")
}
