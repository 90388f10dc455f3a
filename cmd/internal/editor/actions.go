package editor

import (
	"context"
	"fmt"
	"slices"
	"strings"

	"vivary/cmd/internal/protocol"
	"vivary/plan/finding"
	"vivary/plan/source"
)

// actions are the changes that are offered at a stretch of a text: what findings there would
// have typed, all of one rule at once, and what can be accepted for a time.
func (s *Server) actions(ctx context.Context, p *protocol.CodeActionParams) ([]protocol.CodeAction, error) {
	out := []protocol.CodeAction{}
	v := s.view(ctx, p.TextDocument.URI)
	if v == nil {
		return out, nil
	}
	start, end := v.offset(p.Range.Start), v.offset(p.Range.End)
	r := v.now.result
	for i := range r.Findings {
		f := &r.Findings[i]
		at := placeOf(r, f)
		if at.File != v.id || at.End < start || end < at.Start {
			continue
		}
		d := v.diagnostic(r, f, at)
		if len(f.Edits) > 0 {
			out = append(out, protocol.CodeAction{Title: title(v, f), Kind: protocol.ActionQuickFix, Diagnostics: []protocol.Diagnostic{d}, IsPreferred: true, Edit: v.edit(f.Edits)})
			if all := v.alike(f); len(all) > 1 {
				out = append(out, protocol.CodeAction{Title: fmt.Sprintf("%d findings of this kind: change them all (%s)", len(all), f.Rule.ID), Kind: protocol.ActionQuickFix, Edit: v.edit(joined(all))})
			}
		}
		out = append(out, v.rewrites(f, d)...)
	}
	if all := v.mendable(v.id); len(all) > 0 && slices.ContainsFunc(p.Context.Only, func(k string) bool { return strings.HasPrefix(protocol.ActionFixAll, k) }) {
		out = append(out, protocol.CodeAction{Title: "Make all changes that are plain in this file", Kind: protocol.ActionFixAll, Edit: v.edit(joined(all))})
	}
	return only(out, p.Context.Only), nil
}

// only leaves out what was not asked for.
func only(all []protocol.CodeAction, kinds []string) []protocol.CodeAction {
	if len(kinds) == 0 {
		return all
	}
	return slices.DeleteFunc(all, func(a protocol.CodeAction) bool {
		return !slices.ContainsFunc(kinds, func(k string) bool { return a.Kind == k || strings.HasPrefix(a.Kind, k+".") })
	})
}

// title says what an edit writes.
func title(v *view, f *finding.Finding) string {
	fix := finding.Edited(v.files, f.Edits)
	if len(fix) == 0 {
		if slices.ContainsFunc(f.Edits, func(e finding.Edit) bool { return e.Text != "" }) {
			return "Change it as said: " + f.Rule.ID
		}
		return "Take it out"
	}
	text := fix[0]
	if len(fix) > 1 {
		text += " …"
	}
	return "Write: " + text
}

// edit is a change of the collection's files.
func (v *view) edit(edits []finding.Edit) *protocol.WorkspaceEdit {
	by := map[source.ID][]protocol.TextEdit{}
	for _, e := range edits {
		by[e.At.File] = append(by[e.At.File], protocol.TextEdit{Range: v.at(e.At), NewText: e.Text})
	}
	return v.change(by)
}

// alike are the findings of a rule that an edit mends, in all files, those left out whose edits
// change the same text as that of another.
func (v *view) alike(f *finding.Finding) []*finding.Finding {
	return v.mending(func(o *finding.Finding) bool { return o.Rule == f.Rule })
}

// mendable are those of one file.
func (v *view) mendable(id source.ID) []*finding.Finding {
	return v.mending(func(o *finding.Finding) bool {
		return !slices.ContainsFunc(o.Edits, func(e finding.Edit) bool { return e.At.File != id })
	})
}

func (v *view) mending(is func(*finding.Finding) bool) (out []*finding.Finding) {
	var taken []finding.Edit
	all := v.now.result.Findings
	for i := range all {
		f := &all[i]
		if len(f.Edits) == 0 || !is(f) || slices.ContainsFunc(f.Edits, func(e finding.Edit) bool {
			return slices.ContainsFunc(taken, func(o finding.Edit) bool { return overlap(e, o) })
		}) {
			continue
		}
		taken = append(taken, f.Edits...)
		out = append(out, f)
	}
	return out
}

// overlap reports whether two edits change the same text, or put something in at one place.
func overlap(a, b finding.Edit) bool {
	return a.At.File == b.At.File && (a.At.Start < b.At.End && b.At.Start < a.At.End || a.At.Start == b.At.Start)
}

func joined(all []*finding.Finding) (out []finding.Edit) {
	for _, f := range all {
		out = append(out, f.Edits...)
	}
	return out
}
