package editor

import (
	"context"
	"path/filepath"
	"slices"

	"vivary/cmd/internal/protocol"
	"vivary/plan"
	"vivary/plan/source"
)

// view is a file of a collection in which all that was typed is compiled.
type view struct {
	*texts
	h    *house
	now  *state
	path string
	id   source.ID // 0 for a file that is not read
}

// view waits until what was typed is compiled. It is nil where there is nothing to be seen.
func (s *Server) view(ctx context.Context, uri string) *view {
	path := pathOf(uri)
	h := s.house(path)
	if h == nil {
		return nil
	}
	now := h.settled(ctx)
	if now == nil {
		return nil
	}
	v := &view{s.textsOf(now.result), h, now, path, 0}
	v.id = v.fileOf(path)
	if v.id == 0 {
		return nil
	}
	return v
}

// fileOf is the id of a file, or 0.
func (v *view) fileOf(path string) source.ID {
	name := filepath.ToSlash(path)
	for _, id := range v.files.Files() {
		if v.files.Name(id) == name {
			return id
		}
	}
	return 0
}

// offset is the byte of a position in the file.
func (v *view) offset(p protocol.Position) int32 { return int32(v.of(v.id).Offset(p)) }

// location is a place as an editor goes there; false for one in no file of the collection.
func (v *view) location(at source.Place) (protocol.Location, bool) {
	if at.File <= 0 {
		return protocol.Location{}, false
	}
	return protocol.Location{URI: v.uri(at.File), Range: v.at(at)}, true
}

func (v *view) uri(id source.ID) string {
	path := filepath.FromSlash(v.files.Name(id))
	if d := v.now.docs[path]; d != nil {
		return d.uri
	}
	return uriOf(path)
}

// named returns what is named at a place: a use for each thing that it names there, with all
// uses there are.
func (v *view) named(p protocol.Position) (here, all []plan.Use) {
	at := v.offset(p)
	all = v.now.result.Plan.Uses()
	for _, u := range all {
		if u.At.File == v.id && u.At.Start <= at && at <= u.At.End {
			here = append(here, u)
		}
	}
	return here, all
}

// of returns the uses of what is named at a place, each place once.
func usesOf(here, all []plan.Use) (out []plan.Use) {
	for _, u := range all {
		same := slices.ContainsFunc(here, func(x plan.Use) bool {
			return x.Kind == u.Kind && x.Defined == u.Defined && (x.Defined.Written() || x.Name == u.Name)
		})
		if same && !slices.ContainsFunc(out, func(x plan.Use) bool { return x.At == u.At }) {
			out = append(out, u)
		}
	}
	return out
}

// change is an edit of several files, as far as the editor can make it.
func (v *view) change(edits map[source.ID][]protocol.TextEdit) *protocol.WorkspaceEdit {
	out := &protocol.WorkspaceEdit{}
	for _, id := range v.files.Files() {
		if len(edits[id]) == 0 {
			continue
		}
		if !v.h.s.client.Workspace.WorkspaceEdit.DocumentChanges {
			if out.Changes == nil {
				out.Changes = map[string][]protocol.TextEdit{}
			}
			out.Changes[v.uri(id)] = edits[id]
			continue
		}
		x := protocol.TextDocumentEdit{TextDocument: protocol.OptionalVersionedTextDocumentIdentifier{URI: v.uri(id)}, Edits: edits[id]}
		if d := v.now.docs[filepath.FromSlash(v.files.Name(id))]; d != nil {
			x.TextDocument.Version = &d.version
		}
		out.DocumentChanges = append(out.DocumentChanges, x)
	}
	return out
}
