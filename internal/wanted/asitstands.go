package wanted

import "vivary/plan/finding/example"

// asItStands is an example that is a whole plan already.
type asItStands struct{ plan, log example.Lines }

// AsItStands makes nothing of an example but a plan, and a log where it has lines of
// one.
func AsItStands(text string) Whole {
	var w asItStands
	w.plan, w.log = example.Split(text)
	return w
}

// Files returns the plan and the log.
func (w asItStands) Files() map[string]string {
	files := map[string]string{"a.care.hcl": w.plan.Text}
	if w.log.Text != "" {
		files["a.care.log"] = w.log.Text
	}
	return files
}

// Line returns the line of the example.
func (w asItStands) Line(file string, line int) int {
	if file == "a.care.log" {
		return w.log.Line(line)
	}
	return w.plan.Line(line)
}
