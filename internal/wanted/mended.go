package wanted

import (
	"maps"
	"path"
	"regexp"
	"slices"
	"testing"

	"vivary/plan/finding"
	"vivary/plan/source"
)

// mended holds that a finding is gone once its edits are made, and that no error is
// there that was not there before.
func (s Suite) mended(t *testing.T, f finding.Finding, texts map[string]string, files *source.Set, before []finding.Finding) {
	edited, err := Apply(files, texts, f.Edits)
	if err != nil {
		t.Errorf("%s: %v", f.Text, err)
		return
	}
	now, after := s.Find(t, edited)
	for _, wrong := range unmended(f, before, after) {
		t.Errorf("%s: once the edits are made, there is: %s\n%s", f.Text, wrong, told(now, after))
	}
}

// code is what looks like a line of a plan.
var code = regexp.MustCompile(`\b[a-z_]+ = |[a-z_-]+( "[^"]*")? \{ |…`)

// Unwritten says what is wrong with what a finding says to write, or "": without an edit
// it is words, since what looks like the line to write is taken for it; and whoever has no
// editor reads words where the edit is not printed.
func Unwritten(f finding.Finding) string {
	switch {
	case len(f.Edits) == 0 && code.MatchString(f.Write):
		return "code and no edit: " + f.Write
	case len(f.Edits) > 0 && f.Write == "":
		return "an edit without words"
	}
	return ""
}

// unmended returns what an edit has left of its finding, and the errors that it made.
func unmended(f finding.Finding, before, after []finding.Finding) (wrong []string) {
	for _, a := range after {
		same := func(b finding.Finding) bool { return b.Rule == a.Rule && b.Text == a.Text }
		if same(f) || a.Severity.Refuses() && !slices.ContainsFunc(before, same) {
			wrong = append(wrong, a.Text)
		}
	}
	return wrong
}

// Apply returns texts, by the names of their files, as they are once edits are made.
func Apply(files *source.Set, texts map[string]string, edits []finding.Edit) (map[string]string, error) {
	byFile := map[source.ID][]finding.Edit{}
	for _, e := range edits {
		byFile[e.At.File] = append(byFile[e.At.File], e)
	}
	edited := maps.Clone(texts)
	for id, list := range byFile {
		text, err := finding.Apply(files.Text(id), list)
		if err != nil {
			return nil, err
		}
		edited[path.Base(files.Name(id))] = string(text)
	}
	return edited, nil
}
