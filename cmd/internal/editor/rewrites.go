package editor

import (
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"vivary/cmd/internal/protocol"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/syntax"
	"vivary/schema"
)

// rewrites are changes that are no mending: a finding is accepted until a day, an animal of
// which no sheet is known gets one of its keeper's own.
func (v *view) rewrites(f *finding.Finding, d protocol.Diagnostic) (out []protocol.CodeAction) {
	if a := v.acceptance(f); a != nil {
		a.Diagnostics = []protocol.Diagnostic{d}
		out = append(out, *a)
	}
	for _, a := range v.sheets(f) {
		a.Diagnostics = []protocol.Diagnostic{d}
		out = append(out, a)
	}
	return out
}

// accepted is for how long something is accepted, in days, until its keeper writes another day.
const accepted = 30

// acceptance is a block that silences a finding in its enclosure, of which the reason is left
// to the keeper: until it is written the plan is not built.
func (v *view) acceptance(f *finding.Finding) *protocol.CodeAction {
	if !f.Silenced() || f.In.Whole.File <= 0 || len(f.Of) > 1 {
		return nil
	}
	b := v.blockOf(f.In)
	if b == nil || slices.ContainsFunc(b.Blocks, func(x *syntax.Block) bool { return x.Type == schema.Accept.Name && called(x) == f.Rule.ID }) {
		return nil
	}
	until := (v.now.result.Today + accepted).String()
	text := fmt.Sprintf("%s %q {\n    because = \"\"\n    until   = %q\n  }\n", schema.Accept.Name, f.Rule.ID, until)
	edits := finding.Inside(v.files.Text(f.In.Whole.File), head(b), b.Whole, text)
	if edits == nil {
		return nil
	}
	return &protocol.CodeAction{Title: "Accept " + f.Rule.ID + " until " + until + ", for a reason that you write", Kind: protocol.ActionRewrite, Edit: v.edit(edits)}
}

// sheets are a sheet of a species of one's own for a name of which none is known, of each care
// type that has its genus, or of all.
func (v *view) sheets(f *finding.Finding) (out []protocol.CodeAction) {
	c := v.now.result.Plan
	if !slices.Contains(v.h.s.client.Workspace.WorkspaceEdit.ResourceOperations, "create") {
		return nil
	}
	name := ""
	for _, e := range c.Enclosures {
		if e.Species.At == f.At && e.Sheet == nil {
			name = plan.SheetName(e.Species.V)
		}
	}
	if !plan.FitsSheet(name) || c.Library.Species(name) != nil {
		return nil
	}
	genus, _, _ := strings.Cut(name, "-")
	types := c.Library.TypesOf(genus)
	if len(types) == 0 {
		types = c.Library.TypeNames()
	}
	for _, typ := range types {
		t := c.Library.Type(typ)
		if x := t.Exception(genus); x != nil && x.Empty() {
			continue
		}
		out = append(out, protocol.CodeAction{Title: fmt.Sprintf("Write a sheet of your own for %s, of the care type %s", name, typ), Kind: protocol.ActionRewrite,
			Edit: created(filepath.Join(v.h.root, "sheets", name+plan.PlanSuffix), plan.BlankSheet(name, t))})
	}
	return out
}

// created is a new file with a text.
func created(path, text string) *protocol.WorkspaceEdit {
	uri := uriOf(path)
	return &protocol.WorkspaceEdit{DocumentChanges: []any{
		protocol.CreateFile{Kind: "create", URI: uri},
		protocol.TextDocumentEdit{TextDocument: protocol.OptionalVersionedTextDocumentIdentifier{URI: uri}, Edits: []protocol.TextEdit{{NewText: text}}},
	}}
}
