// Package finding is the one form in which vivary says that something is wrong:
// data with a rule, a place and a remedy. How it is printed stands in the files
// beside this one; who finds what is the business of other packages.
package finding

import (
	"slices"
	"sort"

	"vivary/plan/source"
	"vivary/schema/civil"
)

// Severity says how bad a finding is. Higher is worse.
type Severity uint8

const (
	// Advice is worth knowing.
	Advice Severity = iota
	// Caution should be looked at; the plan is built.
	Caution
	// Urgent is harm now, known from the log, from the date or from what is overdue. It
	// never refuses: it stands first wherever anything is said, and comes back until it
	// is answered.
	Urgent
	// Error cannot be understood or met; the plan is refused.
	Error
	// Danger harms an animal or a person; the plan is refused.
	Danger
)

var severityNames = [...]string{"advice", "caution", "urgent", "error", "danger"}

// String returns the word that is printed.
func (s Severity) String() string { return severityNames[s] }

// Refuses reports whether a finding of this severity keeps a plan from being built.
func (s Severity) Refuses() bool { return s >= Error }

// Rule is one thing that can be found, with what there is to say about it. Rules
// are listed in registries; their ids are a closed list and never change meaning.
// The example of a rule stands in a file that has the id for its name.
type Rule struct {
	ID       string
	Severity Severity
	Silence  Silence // what an accept block may do about it
	// Slip says that a line of the log cannot be so: it changes nothing, and the note
	// command does not write it.
	Slip    bool
	Title   string // what is wrong, in general
	Why     string // why that matters
	Source  string // on whose word
	Instead string // what to do
	// Now is what to do at the enclosure at once where it is urgent, in the words of a
	// round; "" for what the finding itself says well enough.
	Now string
	// Told says that a round needs no line for it: it has a task of its own, or leaves out
	// what it is about.
	Told bool
}

// Finding is one thing found in a plan.
type Finding struct {
	Rule     *Rule
	Severity Severity
	At       source.Place
	// In is the enclosure that it is about, wherever At is: the line to change may stand
	// in a template or in a log.
	In     Box
	Text   string // what is wrong here
	Limit  string // the limit that was passed, and whose it is
	Source string // where the limit is from
	Write  string // what to write, in words
	// Edits are the same as a change of what was typed, where it is plain which.
	Edits []Edit
	Also  []Related
	// Of are the enclosures that it is about, by name in walking order, once those of one
	// cause are said together; none where it is about none. Where names those of which the
	// text is true, as their keeper knows them; "" where the text or its place says it.
	Of    []string
	Where string
	// Once is the same for findings of one cause, which are said together; "" for one
	// that stands alone. Own says that only those of the same enclosure have that cause.
	Once string
	Own  bool
	// Accepted says that an accept block silenced it, and has ended.
	Accepted bool
	// Strict orders findings of one cause: the lowest is the one whose fix mends the others
	// too. 0 is no order.
	Strict int
	// First is what of it stands first in the rounds of its enclosure while it is urgent;
	// none for what the rule says of all its findings.
	First []First
	// Told says that another finding, of the same cause, stands first in its place.
	Told bool
}

// Box is the enclosure that a finding is about: the whole of the block that writes it, and
// its name, since one block may write many. The zero Box is none.
type Box struct {
	Whole source.Place
	Name  string
}

// First is a line that stands first in the rounds that pass an enclosure: what to do,
// from a day on and before another, which are 0 where there is no such bound.
type First struct {
	Text        string
	From, Until civil.Date
}

// On reports whether the line stands on a day.
func (f First) On(day civil.Date) bool { return f.From <= day && (f.Until == 0 || day < f.Until) }

// Related is another place that belongs to a finding.
type Related struct {
	At   source.Place
	Text string
}

// List is findings in the making. The zero List is ready to use.
type List struct {
	All      []Finding
	refusing int
}

// Refusing returns how many of them keep the plan from being built.
func (l *List) Refusing() int { return l.refusing }

// Add adds a finding with the rule's own severity, unless one was given.
func (l *List) Add(f Finding) {
	if f.Severity < f.Rule.Severity {
		f.Severity = f.Rule.Severity
	}
	l.Soft(f, f.Severity)
}

// Soft adds a finding at a severity below the rule's own, for a milder case of it.
func (l *List) Soft(f Finding, s Severity) {
	f.Severity = s
	if s.Refuses() {
		l.refusing++
	}
	l.All = append(l.All, f)
}

// Refuses reports whether a finding keeps the plan from being built.
func Refuses(all []Finding) bool {
	for i := range all {
		if all[i].Severity.Refuses() {
			return true
		}
	}
	return false
}

// Count returns how many findings there are of each severity.
func Count(all []Finding) (n [Danger + 1]int) {
	for i := range all {
		n[all[i].Severity]++
	}
	return n
}

// Sort puts findings in the order in which they are printed: what is urgent first,
// whatever its place; then by file, place, severity (worst first), rule and text. Exact
// repeats are left out.
func Sort(set *source.Set, all []Finding) []Finding {
	sort.SliceStable(all, func(i, j int) bool {
		a, b := &all[i], &all[j]
		if u := a.Severity == Urgent; u != (b.Severity == Urgent) {
			return u
		}
		if a.At != b.At {
			return set.Before(a.At, b.At)
		}
		if a.Severity != b.Severity {
			return a.Severity > b.Severity
		}
		if a.Rule.ID != b.Rule.ID {
			return a.Rule.ID < b.Rule.ID
		}
		return a.Text < b.Text
	})
	return slices.CompactFunc(all, func(a, b Finding) bool {
		same := a.At == b.At && a.Rule == b.Rule && a.Text == b.Text
		return same && (a.In == b.In || a.In == Box{} || b.In == Box{}) // what is said of the line is said of all
	})
}
