package editor

import (
	"context"
	"strings"

	"vivary/cmd/internal/protocol"
	"vivary/plan"
	"vivary/plan/source"
	"vivary/plan/tidy"
)

// layOut are the edits that lay a plan out.
func (s *Server) layOut(ctx context.Context, p *protocol.DocumentFormattingParams) ([]protocol.TextEdit, error) {
	return s.laidOut(ctx, p.TextDocument.URI, nil)
}

// layOutRange are those of the outermost blocks that a stretch touches.
func (s *Server) layOutRange(ctx context.Context, p *protocol.DocumentRangeFormattingParams) ([]protocol.TextEdit, error) {
	return s.laidOut(ctx, p.TextDocument.URI, &p.Range)
}

// laidOut are the edits of a plan; none of a log, which nobody rewrites. Nothing of them
// depends on what else there is, so that nothing is waited for.
func (s *Server) laidOut(ctx context.Context, uri string, r *protocol.Range) ([]protocol.TextEdit, error) {
	out := []protocol.TextEdit{}
	path := pathOf(uri)
	h := s.house(path)
	if h == nil || !strings.HasSuffix(path, plan.PlanSuffix) {
		return out, nil
	}
	_, d := h.latest(ctx, path)
	if d == nil {
		return out, nil
	}
	const it = source.ID(1) // whichever: the text stands alone
	l := protocol.NewLines(d.text, s.encoding)
	within := source.Place{}
	if r != nil {
		within = source.Place{File: it, Start: int32(l.Offset(r.Start)), End: int32(l.Offset(r.End))}
	}
	for _, e := range tidy.Edits(it, d.text, within) {
		out = append(out, protocol.TextEdit{Range: l.Range(int(e.At.Start), int(e.At.End)), NewText: e.Text})
	}
	return out, nil
}
