package editor

import (
	"context"

	"vivary/cmd/internal/protocol"
	"vivary/compile/margin"
)

// lenses are the lines of words above the blocks of a file. A lens shows the title of a
// command; there is none to be done.
func (s *Server) lenses(ctx context.Context, p *protocol.DocumentParams) ([]protocol.CodeLens, error) {
	out := []protocol.CodeLens{}
	v := s.view(ctx, p.TextDocument.URI)
	if v == nil {
		return out, nil
	}
	for _, n := range margin.Lenses(v.now.result, v.id) {
		out = append(out, protocol.CodeLens{Range: v.at(n.At), Command: &protocol.Command{Title: n.Text}})
	}
	return out, nil
}
