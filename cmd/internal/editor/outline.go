package editor

import (
	"bytes"
	"context"
	"slices"
	"strings"

	"vivary/cmd/internal/protocol"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/syntax"
	"vivary/schema"
)

// outlineOf are the outermost blocks of the file, as trees; none of a log.
func (v *view) outlineOf() []*syntax.Block {
	if !strings.HasSuffix(v.path, plan.PlanSuffix) {
		return nil
	}
	blocks := plan.TreeOf(v.id, v.files.Text(v.id)).Blocks
	return blocks
}

// head is the first line of a block without its brace: its type and its name.
func head(b *syntax.Block) source.Place {
	at := b.TypeAt
	for _, l := range b.Labels {
		at.End = l.At.End
	}
	return at
}

// called is the name of a block, or "".
func called(b *syntax.Block) string {
	if len(b.Labels) == 0 {
		return ""
	}
	return b.Labels[0].Text
}

// blockAt returns the block in which a place is its name, in whichever file; nil for none.
func (v *view) blockAt(name source.Place) *syntax.Block {
	blocks := plan.TreeOf(name.File, v.files.Text(name.File)).Blocks
	return find(blocks, func(b *syntax.Block) bool {
		return slices.ContainsFunc(b.Labels, func(l syntax.Label) bool { return l.At.Start <= name.Start && name.End <= l.At.End })
	})
}

// blockOf returns the block that writes an enclosure, or nil.
func (v *view) blockOf(box finding.Box) *syntax.Block {
	blocks := plan.TreeOf(box.Whole.File, v.files.Text(box.Whole.File)).Blocks
	return find(blocks, func(b *syntax.Block) bool { return b.Whole == box.Whole })
}

func find(blocks []*syntax.Block, is func(*syntax.Block) bool) *syntax.Block {
	for _, b := range blocks {
		if is(b) {
			return b
		}
		if x := find(b.Blocks, is); x != nil {
			return x
		}
	}
	return nil
}

// symbolKinds are what editors draw beside blocks.
var symbolKinds = map[*schema.Block]int{
	schema.Collection: protocol.SymbolModule, schema.Room: protocol.SymbolNamespace, schema.Rack: protocol.SymbolNamespace,
	schema.Enclosure: protocol.SymbolClass, schema.Template: protocol.SymbolInterface, schema.Round: protocol.SymbolEvent,
	schema.Care: protocol.SymbolMethod, schema.Feeding: protocol.SymbolMethod, schema.Animals: protocol.SymbolField,
	schema.Calendar: protocol.SymbolEnum, schema.Species: protocol.SymbolStruct,
}

func symbolKind(typ string) int {
	for b, kind := range symbolKinds {
		if b.Name == typ {
			return kind
		}
	}
	return protocol.SymbolObject
}

// symbols are the blocks of a file, with those in them.
func (s *Server) symbols(ctx context.Context, p *protocol.DocumentParams) (any, error) {
	v := s.view(ctx, p.TextDocument.URI)
	if v == nil {
		return []protocol.DocumentSymbol{}, nil
	}
	all := v.symbolsOf(v.outlineOf())
	if !s.client.TextDocument.DocumentSymbol.HierarchicalDocumentSymbolSupport {
		return v.flat(all, ""), nil
	}
	return all, nil
}

func (v *view) symbolsOf(blocks []*syntax.Block) []protocol.DocumentSymbol {
	out := []protocol.DocumentSymbol{}
	for _, b := range blocks {
		x := protocol.DocumentSymbol{Name: b.Type, Kind: symbolKind(b.Type), Range: v.at(b.Whole), SelectionRange: v.at(b.TypeAt)}
		if name := called(b); name != "" {
			x.Name, x.Detail, x.SelectionRange = name, b.Type, v.at(b.Labels[0].At)
		}
		if t := b.Attr("title"); t != nil && t.Value.Text != "" {
			x.Detail += ": " + t.Value.Text
		}
		if len(b.Blocks) > 0 {
			x.Children = v.symbolsOf(b.Blocks)
		}
		out = append(out, x)
	}
	return out
}

// flat are symbols for an editor that knows no trees.
func (v *view) flat(all []protocol.DocumentSymbol, in string) []protocol.SymbolInformation {
	out := []protocol.SymbolInformation{}
	for _, x := range all {
		out = append(out, protocol.SymbolInformation{Name: x.Name, Kind: x.Kind, ContainerName: in, Location: protocol.Location{URI: v.uri(v.id), Range: x.Range}})
		out = append(out, v.flat(x.Children, x.Name)...)
	}
	return out
}

// mostSymbols is how many are told at once.
const mostSymbols = 500

// symbolsEverywhere are the names that are given in any file, or those that hold a word.
func (s *Server) symbolsEverywhere(ctx context.Context, p *protocol.WorkspaceSymbolParams) ([]protocol.SymbolInformation, error) {
	out := []protocol.SymbolInformation{}
	word := strings.ToLower(p.Query)
	for _, h := range s.everywhere() {
		now := h.settled(ctx)
		if now == nil {
			continue
		}
		v := &view{s.textsOf(now.result), h, now, "", 0}
		for _, u := range now.result.Plan.Uses() {
			if !u.Defines() || !strings.Contains(strings.ToLower(u.Name), word) {
				continue
			}
			if l, ok := v.location(u.At); ok && len(out) < mostSymbols {
				out = append(out, protocol.SymbolInformation{Name: u.Name, Kind: symbolKind(u.Kind), Location: l, ContainerName: u.Kind})
			}
		}
	}
	return out, nil
}

// folds are the blocks, lists and remarks of several lines; in a log its days.
func (s *Server) folds(ctx context.Context, p *protocol.DocumentParams) ([]protocol.FoldingRange, error) {
	out := []protocol.FoldingRange{}
	v := s.view(ctx, p.TextDocument.URI)
	if v == nil {
		return out, nil
	}
	fold := func(at source.Place, kind string) {
		if r := v.at(at); r.End.Line > r.Start.Line {
			out = append(out, protocol.FoldingRange{StartLine: r.Start.Line, EndLine: r.End.Line, Kind: kind})
		}
	}
	var blocks func([]*syntax.Block)
	blocks = func(all []*syntax.Block) {
		for _, b := range all {
			fold(b.Whole, "")
			for _, a := range b.Attrs {
				fold(a.At, "")
			}
			blocks(b.Blocks)
		}
	}
	blocks(v.outlineOf())
	for _, at := range v.remarks() {
		fold(at, "comment")
	}
	slices.SortFunc(out, func(a, b protocol.FoldingRange) int { return a.StartLine - b.StartLine })
	return out, nil
}

// remarks are runs of lines that are remarks.
func (v *view) remarks() (out []source.Place) {
	text, from := v.files.Text(v.id), -1
	end := 0
	for at := 0; at <= len(text); {
		n := bytes.IndexByte(text[at:], '\n')
		if n < 0 {
			n = len(text) - at
		}
		line := bytes.TrimSpace(text[at : at+n])
		if bytes.HasPrefix(line, []byte("#")) || bytes.HasPrefix(line, []byte("//")) {
			if from < 0 {
				from = at
			}
			end = at + n
		} else if from >= 0 {
			out = append(out, source.Place{File: v.id, Start: int32(from), End: int32(end)})
			from = -1
		}
		at += n + 1
	}
	if from >= 0 {
		out = append(out, source.Place{File: v.id, Start: int32(from), End: int32(end)})
	}
	return out
}
