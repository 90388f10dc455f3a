package editor

import (
	"context"
	"slices"

	"vivary/cmd/internal/protocol"
	"vivary/compile/margin"
	"vivary/plan/source"
	"vivary/schema"
)

// tokenTypes are what tokens are in the words of the protocol, by what they are to us.
var tokenTypes = map[margin.Sort]string{
	margin.BlockType: "keyword", margin.Attribute: "property", margin.Name: "variable", margin.Word: "enumMember",
	margin.Amount: "number", margin.When: "number", margin.Text: "string", margin.Remark: "comment",
}

// nameTypes are those of names, by what is named. Every other is a variable.
var nameTypes = map[string]string{
	schema.Enclosure.Name: "class", schema.Template.Name: "interface", schema.Room.Name: "namespace", schema.Rack.Name: "namespace",
	schema.Round.Name: "event", schema.Species.Name: "type", schema.Animals.Name: "parameter", schema.Care.Name: "method",
	schema.Calendar.Name: "enum", schema.Feeder.Name: "struct", schema.FeederSize.Name: "enumMember",
	schema.NamesKind: "function", schema.NamesRule: "decorator",
}

// legend is the order in which types and modifiers are told by their numbers.
var legend = protocol.SemanticTokensLegend{
	TokenTypes: []string{"keyword", "property", "variable", "enumMember", "number", "string", "comment", "class", "interface", "namespace",
		"event", "type", "parameter", "method", "enum", "struct", "function", "decorator"},
	TokenModifiers: []string{"declaration", "defaultLibrary", "deprecated", "modification"},
}

func (s *Server) tokensOf(ctx context.Context, p *protocol.DocumentParams) (*protocol.SemanticTokens, error) {
	return s.tokensIn(ctx, p.TextDocument.URI, nil), nil
}

func (s *Server) tokensOfRange(ctx context.Context, p *protocol.InlayHintParams) (*protocol.SemanticTokens, error) {
	return s.tokensIn(ctx, p.TextDocument.URI, &p.Range), nil
}

// tokensIn are the tokens of a file, or of those of its lines that a range touches.
func (s *Server) tokensIn(ctx context.Context, uri string, in *protocol.Range) *protocol.SemanticTokens {
	out := &protocol.SemanticTokens{Data: []uint32{}}
	v := s.view(ctx, uri)
	if v == nil {
		return out
	}
	out.Data = told(margin.Tokens(v.now.result, v.id), v.at, in)
	return out
}

// told are tokens as numbers: each from where the one before begins.
func told(all []margin.Token, at func(source.Place) protocol.Range, in *protocol.Range) []uint32 {
	data, last := []uint32{}, protocol.Position{}
	for i := range all {
		t := &all[i]
		r := at(t.At)
		if in != nil && (r.Start.Line < in.Start.Line || r.Start.Line > in.End.Line) {
			continue
		}
		line, from := r.Start.Line-last.Line, r.Start.Character
		if line == 0 {
			from -= last.Character
		}
		data = append(data, uint32(line), uint32(from), uint32(r.End.Character-r.Start.Character), typeOf(t), modifiers(t))
		last = r.Start
	}
	return data
}

func typeOf(t *margin.Token) uint32 {
	name := tokenTypes[t.Sort]
	if by, ok := nameTypes[t.Of]; ok && t.Sort == margin.Name {
		name = by
	}
	return uint32(slices.Index(legend.TokenTypes, name))
}

func modifiers(t *margin.Token) (bits uint32) {
	for i, is := range []bool{t.Given, t.BuiltIn, t.Out, t.Accepts} {
		if is {
			bits |= 1 << i
		}
	}
	return bits
}
