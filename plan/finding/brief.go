package finding

import "vivary/schema/wording"

// Brief says a finding in one line, without its place.
func (f *Finding) Brief() string {
	return f.Severity.String() + ": " + wording.Line(f.Said()) + " [" + f.Rule.ID + "]"
}

// Said is what is wrong, and where if the text alone does not tell.
func (f *Finding) Said() string {
	if f.Where == "" {
		return f.Text
	}
	return f.Text + " (" + f.Where + ")"
}
