package editor

import (
	"context"
	"fmt"
	"slices"
	"strings"

	"github.com/creachadair/jrpc2"

	"vivary/cmd/internal/protocol"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
)

// definition is where what is named at a place has its name.
func (s *Server) definition(ctx context.Context, p *protocol.TextDocumentPositionParams) ([]protocol.Location, error) {
	out := []protocol.Location{}
	if v := s.view(ctx, p.TextDocument.URI); v != nil {
		here, _ := v.named(p.Position)
		for _, u := range here {
			if l, ok := v.location(u.Defined); ok {
				out = append(out, l)
			}
		}
	}
	return out, nil
}

// references are the places at which the same is named.
func (s *Server) references(ctx context.Context, p *protocol.ReferenceParams) ([]protocol.Location, error) {
	out := []protocol.Location{}
	if v := s.view(ctx, p.TextDocument.URI); v != nil {
		for _, u := range usesOf(v.named(p.Position)) {
			if l, ok := v.location(u.At); ok && (p.Context.IncludeDeclaration || !u.Defines()) {
				out = append(out, l)
			}
		}
	}
	return out, nil
}

// highlights are those of them in the same file.
func (s *Server) highlights(ctx context.Context, p *protocol.TextDocumentPositionParams) ([]protocol.DocumentHighlight, error) {
	out := []protocol.DocumentHighlight{}
	if v := s.view(ctx, p.TextDocument.URI); v != nil {
		for _, u := range usesOf(v.named(p.Position)) {
			if u.At.File == v.id {
				kind := 2
				if u.Defines() {
					kind = 3
				}
				out = append(out, protocol.DocumentHighlight{Range: v.at(u.At), Kind: kind})
			}
		}
	}
	return out, nil
}

// renamable returns what can have another name at a place, where all of it is the plan's own.
func (v *view) renamable(p protocol.Position) (plan.Use, []plan.Use) {
	here, all := v.named(p)
	for _, u := range here {
		if u.Defined.File <= 0 {
			return plan.Use{}, nil // a word of the program, a sheet that comes with it, or nothing
		}
	}
	if len(here) == 0 {
		return plan.Use{}, nil
	}
	return here[0], usesOf(here, all)
}

func (s *Server) prepareRename(ctx context.Context, p *protocol.TextDocumentPositionParams) (*protocol.PrepareRenameResult, error) {
	v := s.view(ctx, p.TextDocument.URI)
	if v == nil {
		return nil, nil
	}
	use, all := v.renamable(p.Position)
	if len(all) == 0 {
		return nil, nil
	}
	name := v.files.Of(use.Defined)
	at := use.At
	if tail, of := strings.CutPrefix(v.files.Of(at), name); of && tail != "" { // tub-7 of a block with numbers
		at.End -= int32(len(tail))
	}
	return &protocol.PrepareRenameResult{Range: v.at(at), Placeholder: name}, nil
}

// rename gives something another name, at all places at which it is named. Where its name
// stands in calendars or in a log, its block keeps the one that it had first: entries on phones
// stay the same ones, and lines of the log go on to be about it. A line that has a name from
// between is changed, since nothing else would know it.
func (s *Server) rename(ctx context.Context, p *protocol.RenameParams) (*protocol.WorkspaceEdit, error) {
	v := s.view(ctx, p.TextDocument.URI)
	if v == nil {
		return nil, jrpc2.Errorf(jrpc2.InvalidParams, "this file is not read")
	}
	use, all := v.renamable(p.Position)
	if len(all) == 0 {
		return nil, jrpc2.Errorf(jrpc2.InvalidParams, "nothing here can have another name")
	}
	old, name := v.files.Of(use.Defined), p.NewName
	if err := v.free(use, name); err != nil {
		return nil, jrpc2.Errorf(jrpc2.InvalidParams, "%v", err)
	}
	keeps, had := v.formerly(use, old)
	edits := map[source.ID][]protocol.TextEdit{}
	for _, u := range all {
		if strings.HasSuffix(v.files.Name(u.At.File), plan.LogSuffix) && keeps != nil && !had {
			continue // what it had first is known there
		}
		tail, ok := strings.CutPrefix(v.files.Of(u.At), old)
		if !ok {
			continue
		}
		edits[u.At.File] = append(edits[u.At.File], protocol.TextEdit{Range: v.at(u.At), NewText: name + tail})
	}
	for _, e := range keeps {
		edits[e.At.File] = append(edits[e.At.File], protocol.TextEdit{Range: v.at(e.At), NewText: e.Text})
	}
	return v.change(edits), nil
}

// free says why something cannot have a name.
func (v *view) free(use plan.Use, name string) error {
	if err := plan.FitName(name); err != nil {
		return err
	}
	for _, u := range v.now.result.Plan.Uses() {
		if u.Defines() && u.Kind == use.Kind && u.Name == name && u.At != use.Defined {
			return fmt.Errorf("there is a %s %q already", use.Kind, name)
		}
	}
	return nil
}

// formerly returns the edit that writes the name that a block had first, where blocks of its
// type can say that and this one does not yet; had says that it does.
func (v *view) formerly(use plan.Use, old string) (edits []finding.Edit, had bool) {
	b := blockOf(schema.Plan, use.Kind)
	if b == nil || b.Attr("formerly") == nil {
		return nil, false
	}
	x := v.blockAt(use.Defined)
	if x == nil {
		return nil, false
	}
	var lines []string
	if had = x.Attr("formerly") != nil; !had {
		lines = append(lines, fmt.Sprintf("formerly = %q", old))
	}
	if b == schema.Care && x.Attr("kind") == nil && schema.FindKind(old) != nil { // its name said what it is
		lines = append(lines, fmt.Sprintf("kind = %q", old))
	}
	for _, line := range slices.Backward(lines) {
		edits = append(edits, finding.Inside(v.files.Text(use.Defined.File), head(x), x.Whole, line)...)
	}
	return edits, had
}

// blockOf is the description of a type of block, wherever it stands.
func blockOf(in *schema.Block, name string) *schema.Block {
	for _, b := range in.Blocks {
		if b.Name == name {
			return b
		}
	}
	for _, b := range in.Blocks {
		if x := blockOf(b, name); x != nil && b != in {
			return x
		}
	}
	return nil
}
