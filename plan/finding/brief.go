package finding

import "vivary/schema/wording"

// Brief says a finding in one line, without its place.
func (f *Finding) Brief() string {
	return f.Severity.String() + ": " + wording.Line(f.Text) + " [" + f.Rule.ID + "]"
}
