package compile

import (
	"strings"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
)

// What was seen never refuses. A plan is refused only for what is written in it: for an
// error that stands in the same way when nothing at all had been logged. Whatever else
// would refuse is harm that the log tells of, and urgent: the calendars of all the others
// go on, and this comes first in them.

// unrefused makes urgent what only the log, or a line of it, would refuse. all begins with
// what was found when the plan was read, which stands whatever was logged.
func (r *Result) unrefused(in *Input, all []finding.Finding) []finding.Finding {
	doubtful := false
	for i := range all {
		f := &all[i]
		if f.Severity.Refuses() && inLog(in.Plan.Files, f.At) {
			f.Severity = finding.Urgent
		}
		doubtful = doubtful || f.Severity.Refuses() && i >= len(in.Loaded)
	}
	if in.Last != nil && in.Last.Today == r.Today {
		r.bare = in.Last.bare
	}
	if !doubtful || len(in.Plan.Log) == 0 {
		return all
	}
	stands := r.withoutLog(in)
	for i := range all {
		if f := &all[i]; f.Severity.Refuses() && !stands[sameness(f)] {
			f.Severity = finding.Urgent
		}
	}
	return all
}

// refusal is what two findings share that say the same of the same.
type refusal struct {
	rule *finding.Rule
	at   source.Place
	in   finding.Box
}

func sameness(f *finding.Finding) refusal { return refusal{f.Rule, f.At, f.In} }

// withoutLog compiles a collection as if nothing had been logged, and returns what
// refuses it then. While somebody types, that is asked after each key: what did not change
// is taken from the last time, or from the compilation with the log.
func (r *Result) withoutLog(in *Input) map[refusal]bool {
	empty := Input{Plan: in.Plan.WithoutLog(), Loaded: in.Loaded, Now: in.Now, Told: in.Told}
	switch {
	case r.bare != nil:
		empty.Last = r.bare
	case in.Last != nil:
		empty.Last = r
	}
	var all []finding.Finding
	r.bare, all = judged(&empty)
	stands := map[refusal]bool{}
	for i := range all {
		if f := &all[i]; f.Severity.Refuses() {
			stands[sameness(f)] = true
		}
	}
	return stands
}

// inLog reports whether a place is in a log.
func inLog(files *source.Set, at source.Place) bool {
	return at.Written() && strings.HasSuffix(files.Name(at.File), plan.LogSuffix)
}
