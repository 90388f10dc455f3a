package finding

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"vivary/plan/source"
	"vivary/schema/wording"
)

// shown is how many findings are printed at the most. Nobody reads more at once, and what
// is put right takes others with it.
const shown = 200

// placesSaid is how many other places of the same words are named.
const placesSaid = 12

// alike is findings that say the same at several places: "no day of arrival is written" in
// each of sixty tubs. They are read once.
type alike struct {
	first *Finding
	at    []source.Place // of the others
	of    []string       // the enclosures of all
}

// groups puts findings together that say the same at several places, in the order of the
// first of each. Two alike stay two.
func groups(all []Finding) []alike {
	type words struct {
		rule                      *Rule
		severity                  Severity
		text, limit, write, where string
	}
	key := func(f *Finding) words {
		k := words{f.Rule, f.Severity, f.Text, f.Limit, f.Write, f.Where}
		if f.In.Name != "" {
			k.text = strings.ReplaceAll(f.Text, f.In.Name, "\x00")
		}
		return k
	}
	const few = 2
	times := map[words]int{}
	for i := range all {
		times[key(&all[i])]++
	}
	at := map[words]int{}
	var out []alike
	for i := range all {
		f := &all[i]
		k := key(f)
		if first, known := at[k]; known && times[k] > few && f.At.Written() && len(f.Also) == 0 {
			out[first].at = append(out[first].at, f.At)
			out[first].of = append(out[first].of, f.Of...)
			continue
		}
		at[k] = len(out)
		out = append(out, alike{first: f, of: slices.Clone(f.Of)})
	}
	return out
}

// most returns what is printed of groups, the worst of them if they are too many, in the
// order in which they stand; and the rest.
func most(all []alike) (printed, rest []alike) {
	if len(all) <= shown {
		return all, nil
	}
	worst := slices.Clone(all)
	slices.SortStableFunc(worst, func(a, b alike) int { return cmp.Compare(b.first.Severity, a.first.Severity) })
	keep := make(map[*Finding]bool, shown)
	for _, g := range worst[:shown] {
		keep[g.first] = true
	}
	for _, g := range all {
		if keep[g.first] {
			printed = append(printed, g)
		} else {
			rest = append(rest, g)
		}
	}
	return printed, rest
}

// others says at which other places the same is found.
func (p Printer) others(first *Finding, at []source.Place) string {
	var all []string
	file := p.Files.Name(first.At.File)
	for i, place := range at {
		if i == placesSaid {
			all = append(all, strconv.Itoa(len(at)-i)+" more")
			break
		}
		pos := p.Files.Start(place)
		text := strconv.Itoa(pos.Line) + ":" + strconv.Itoa(pos.Column)
		if i == 0 || pos.File != file {
			file = pos.File
			text = file + ":" + text
		}
		all = append(all, text)
	}
	return wording.Count(len(at), "more place", "more places") + ": " + wording.And(all)
}

// summaryOf says how many findings of which rules are not printed.
func summaryOf(rest []alike) string {
	type kind struct {
		severity Severity
		rule     string
	}
	times := map[kind]int{}
	var kinds []kind
	n := 0
	for _, g := range rest {
		k := kind{g.first.Severity, g.first.Rule.ID}
		if times[k] == 0 {
			kinds = append(kinds, k)
		}
		times[k] += 1 + len(g.at)
		n += 1 + len(g.at)
	}
	slices.SortFunc(kinds, func(a, b kind) int {
		return cmp.Or(cmp.Compare(b.severity, a.severity), cmp.Compare(times[b], times[a]), cmp.Compare(a.rule, b.rule))
	})
	var all []string
	for _, k := range kinds {
		all = append(all, k.severity.count(times[k])+" ["+k.rule+"]")
	}
	return "And " + strconv.Itoa(n) + " more, not printed: " + strings.Join(all, ", ") + ". What is printed comes first."
}

// count says how many there are of a severity.
func (s Severity) count(n int) string {
	one := s.String()
	many := one + "s"
	if s == Advice || s == Urgent {
		many = one
	}
	return wording.Count(n, one, many)
}
