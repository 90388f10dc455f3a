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

// unrefused makes urgent what only the log, or a line of it, would refuse.
func unrefused(in *Input, all []finding.Finding) []finding.Finding {
	doubtful := false
	for i := range all {
		f := &all[i]
		if f.Severity.Refuses() && inLog(in.Plan.Files, f.At) {
			f.Severity = finding.Urgent
		}
		doubtful = doubtful || f.Severity.Refuses()
	}
	if !doubtful || len(in.Plan.Log) == 0 {
		return all
	}
	stands := withoutLog(in)
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
// refuses it then.
func withoutLog(in *Input) map[refusal]bool {
	empty := Input{Plan: in.Plan.WithoutLog(), Loaded: in.Loaded, Now: in.Now, Told: in.Told}
	_, all := judged(&empty)
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
