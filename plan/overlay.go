package plan

import (
	"slices"
	"sort"
	"strconv"
	"strings"

	"vivary/schema"
)

// overlay returns what is in top, and what is in base that top does not say.
func overlay(top, base *SpeciesSheet) *SpeciesSheet {
	if base == nil {
		return top
	}
	out := *top
	keep(&out.Type, base.Type)
	keep(&out.Like, base.Like)
	keep(&out.Title, base.Title)
	keep(&out.Latin, base.Latin)
	keep(&out.Family, base.Family)
	keep(&out.Note, base.Note)
	out.Also = slices.Concat(top.Also, base.Also)
	out.Former = slices.Concat(top.Former, base.Former)
	out.Mistaken = slices.Concat(top.Mistaken, base.Mistaken)
	out.Stages = under(top.Stages, base.Stages, func(s *Stage) string { return s.Name.V })
	figures, needs := beneath(top, base)
	out.Figures = under(top.Figures, figures, func(f *Figure) string {
		return f.Name.V + "/" + stagesKey(f.Stages) + "/" + instarKey(f.Instar)
	})
	out.States = slices.Concat(slices.DeleteFunc(slices.Clone(base.States), func(b *State) bool {
		return slices.ContainsFunc(top.States, func(t *State) bool { return t.What == b.What && slices.Equal(t.Rows, b.Rows) })
	}), top.States)
	out.resolve()
	out.Needs = under(top.Needs, needs, func(n *Need) string { return n.Name.V + "/" + stagesKey(n.Stages) })
	out.Care = layered(top.Care, base.Care, func(c *Care) (*Head, *Timing) { return &c.Head, &c.Timing })
	out.Feeding = layered(top.Feeding, base.Feeding, func(f *Feeding) (*Head, *Timing) { return &f.Head, &f.Timing })
	return &out
}

// layered returns the care of top, and that of base for the stages of which no care of its
// name speaks in top.
func layered[T any](top, base []*T, of func(*T) (*Head, *Timing)) []*T {
	out := top[:len(top):len(top)]
	for _, b := range base {
		left := *b
		head, timing := of(&left)
		any := true
		for _, t := range top {
			if h, said := of(t); any && h.Name.V == head.Name.V {
				timing.Stages, any = without(timing.Stages, said.Stages)
			}
		}
		if any {
			out = append(out, &left)
		}
	}
	return out
}

// without returns the stages that are not among those said; false where none is left. No
// stages are all of them.
func without(stages, said []Written[string]) (left []Written[string], any bool) {
	if len(said) == 0 {
		return nil, false
	}
	if len(stages) == 0 {
		for _, stage := range schema.Stages {
			left = append(left, Written[string]{V: stage.Name, At: said[0].At})
		}
	} else {
		left = slices.Clone(stages)
	}
	left = slices.DeleteFunc(left, func(w Written[string]) bool { return Lists(said, w.V) })
	return left, len(left) > 0
}

// beneath returns the figures and needs of base without those by stage of which a
// collection's own sheet, or any that is laid over a type, says something without stages:
// that holds for all of them. What a type knows of the size of the stages follows from
// that of the grown.
func beneath(top, base *SpeciesSheet) ([]*Figure, []*Need) {
	figures, needs := base.Figures, base.Needs
	for _, f := range top.Figures {
		if len(f.Stages) == 0 && !f.Instar.Set() {
			figures = slices.DeleteFunc(slices.Clone(figures), func(b *Figure) bool {
				return b.What == f.What && !b.Instar.Set() && (f.Own || b.OfType != "") && !b.ofItself()
			})
		}
	}
	for _, n := range top.Needs {
		if len(n.Stages) == 0 {
			needs = slices.DeleteFunc(slices.Clone(needs), func(b *Need) bool { return b.What == n.What && (n.Own || b.OfType != "") })
		}
	}
	return figures, needs
}

// bySize reports whether a figure is the size of a stage as a share of the grown.
func (f *Figure) bySize() bool {
	return f.times[0].set() && (f.What == schema.FigureLength || f.What == schema.FigureSpan)
}

// ofItself reports whether it is a share of what the grown have of the same: a length of
// the grown length, and not a leg span of a body length.
func (f *Figure) ofItself() bool {
	return f.bySize() && f.times[0].span == (f.What == schema.FigureSpan)
}

// overlayFeeder is overlay for feeder animals.
func overlayFeeder(top, base *FeederSheet) *FeederSheet {
	if base == nil {
		return top
	}
	out := *top
	keep(&out.Title, base.Title)
	keep(&out.Plural, base.Plural)
	keep(&out.Latin, base.Latin)
	keep(&out.Note, base.Note)
	out.Also = slices.Concat(top.Also, base.Also)
	out.Hazards = slices.Concat(top.Hazards, base.Hazards)
	out.Sizes = under(top.Sizes, base.Sizes, func(s *FeederSize) string { return s.Name.V })
	out.Figures = under(top.Figures, base.Figures, func(f *Figure) string { return f.Name.V })
	out.Stages = under(top.Stages, base.Stages, func(d *Development) string { return d.Name.V + " " + d.Size.V })
	out.Upkeep = under(top.Upkeep, base.Upkeep, func(u *Upkeep) string { return u.Name.V })
	return &out
}

func keep(dst *Written[string], src Written[string]) {
	if !dst.Set() {
		*dst = src
	}
}

// under returns top, and those of base whose key nothing in top has.
func under[T any](top, base []T, key func(T) string) []T {
	out := top[:len(top):len(top)]
	have := map[string]bool{}
	for _, t := range top {
		have[key(t)] = true
	}
	for _, b := range base {
		if !have[key(b)] {
			out = append(out, b)
		}
	}
	return out
}

func stagesKey(list []Written[string]) string {
	var s []string
	for _, w := range list {
		s = append(s, w.V)
	}
	sort.Strings(s)
	return strings.Join(s, ",")
}

func instarKey(w Written[int]) string {
	if !w.Set() {
		return ""
	}
	return strconv.Itoa(w.V)
}
