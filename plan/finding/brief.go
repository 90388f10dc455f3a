package finding

// Brief says a finding in one line, without its place.
func (f *Finding) Brief() string {
	return f.Severity.String() + ": " + clean(f.Text) + " [" + f.Rule.ID + "]"
}
