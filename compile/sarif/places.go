package sarif

import (
	"bytes"
	"net/url"
	"strings"
	"unicode/utf8"

	"vivary/plan/finding"
	"vivary/plan/source"
)

// location tells of a place and of enclosures; of neither where there is none.
func (w *writer) location(at source.Place, enclosures []string) location {
	var out location
	if at.Written() {
		out.Physical = &physicalLocation{w.artifact(at.File), w.region(at)}
		if at.Start > 0 || !bytes.HasPrefix(w.files.Text(at.File), []byte("\ufeff")) { // which is in no region of the text
			start, length := int(at.Start), int(max(at.Start, at.End)-at.Start)
			out.Physical.Region.ByteOffset, out.Physical.Region.ByteLength = &start, &length
		}
	}
	for _, name := range enclosures {
		out.Logical = append(out.Logical, logicalLocation{name, name, "enclosure"})
	}
	return out
}

func (w *writer) artifact(file source.ID) artifactLocation {
	base := ofCollection
	if file < 0 {
		base = ofBuiltIn
	}
	return artifactLocation{Address: address(w.files.Name(file)), Base: base}
}

// address is the name of a file or folder, below another, as a relative reference (RFC 3986).
func address(name string) string { return (&url.URL{Path: name}).String() }

func (w *writer) region(at source.Place) region {
	from, to := w.files.Points(at)
	return region{Line: from.Line, Column: from.Column, EndLine: to.Line, EndColumn: to.Column, Offset: from.Offset, Length: to.Offset - from.Offset}
}

// fix is the edits of a finding, or nil. Of a file that is no text in UTF-8 nothing can be
// said as one.
func (w *writer) fix(f *finding.Finding) *fix {
	var changes []artifactChange
	file := source.ID(0)
	for _, e := range finding.InOrder(f.Edits) {
		if !utf8.Valid(w.files.Text(e.At.File)) {
			return nil
		}
		if e.At.File != file {
			file = e.At.File
			changes = append(changes, artifactChange{Artifact: w.artifact(file)})
		}
		r := replacement{Deleted: w.region(e.At)}
		if e.Text != "" {
			r.Inserted = &content{e.Text}
		}
		last := &changes[len(changes)-1]
		last.Replacements = append(last.Replacements, r)
	}
	if changes == nil {
		return nil
	}
	return &fix{*plainly(f.Write), changes}
}

// plainly is a message that says a text as it is.
func plainly(s string) *message { return &message{Text: text(s)} }

// text is a text as it stands in a message. Braces that are not doubled would hold the place
// of an argument, and brackets before a parenthesis would be a link (SARIF 2.1.0, 3.11.5 and
// 3.11.6).
func text(s string) string { return plainText.Replace(s) }

var plainText = strings.NewReplacer("{", "{{", "}", "}}", "](", "] (")
