package compile

import (
	"embed"
	"io/fs"

	"vivary/compile/check"
	"vivary/compile/life"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/finding/example"
)

// Rules returns every rule there is: what can be found while reading, in the
// roster, in the animals' lives, by the checks, by the proof, and about accept
// blocks. The list is the one that explains rules and makes their page.
func Rules() []*finding.Rule {
	var all []*finding.Rule
	for _, g := range ruleGroups() {
		all = append(all, g.rules...)
	}
	return all
}

// ruleGroup is rules that are about one thing.
type ruleGroup struct {
	title string
	rules []*finding.Rule
}

func ruleGroups() []ruleGroup {
	all := []ruleGroup{{"The text of a plan", plan.Rules}, {"Timing", roster.Rules}, {"The log and the animals' lives", life.Rules}}
	for _, f := range check.Families {
		g := ruleGroup{title: f.Title}
		for _, r := range f.Rules {
			g.rules = append(g.rules, &r.Rule)
		}
		all = append(all, g)
	}
	return append(all, ruleGroup{"The proof of the year", prove.Rules}, ruleGroup{"What is set aside, and what was there before", own})
}

// FindRule returns the rule of that id, or nil.
func FindRule(id string) *finding.Rule {
	for _, r := range Rules() {
		if r.ID == id {
			return r
		}
	}
	return nil
}

// own are the rules of this package.
var own = []*finding.Rule{ruleAcceptUnknown, ruleAcceptNever, ruleAcceptOver, ruleAcceptLong, ruleTooFar, Missing}

//go:embed examples
var examples embed.FS

// Example returns the example of the rule of that id. It is empty only where there
// is no such rule: tests hold that each has an example that can be read.
func Example(id string) example.Example {
	for _, files := range []fs.FS{plan.Examples, roster.Examples, life.Examples, check.Examples, prove.Examples, examples} {
		if e, err := example.Read(files, id); err == nil {
			return e
		}
	}
	return example.Example{}
}
