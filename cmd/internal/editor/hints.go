package editor

import (
	"context"

	"vivary/cmd/internal/protocol"
	"vivary/compile/margin"
	"vivary/plan/source"
)

// hints are the words that are shown behind values of a stretch of a text.
func (s *Server) hints(ctx context.Context, p *protocol.InlayHintParams) ([]protocol.InlayHint, error) {
	out := []protocol.InlayHint{}
	v := s.view(ctx, p.TextDocument.URI)
	if v == nil {
		return out, nil
	}
	in := source.Place{File: v.id, Start: v.offset(p.Range.Start), End: v.offset(p.Range.End)}
	for _, n := range margin.Hints(v.now.result, v.id, in) {
		out = append(out, protocol.InlayHint{Position: v.at(n.At).End, Label: n.Text, PaddingLeft: true, Tooltip: n.More})
	}
	return out, nil
}
