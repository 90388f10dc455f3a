package editor

import "time"

// quiet is how long nothing is typed until what stands beside the lines of other files is asked
// for again.
const quiet = 500 * time.Millisecond

// refresh has the editor ask again for what stands beside the lines, once it is quiet: what is
// typed in one file changes it in others.
func (h *house) refresh() {
	if h.again == nil {
		h.again = time.AfterFunc(quiet, h.s.askAgain)
		return
	}
	h.again.Reset(quiet)
}

func (s *Server) askAgain() {
	w := &s.client.Workspace
	for method, wanted := range map[string]bool{
		"workspace/codeLens/refresh":       w.CodeLens.RefreshSupport,
		"workspace/inlayHint/refresh":      w.InlayHint.RefreshSupport,
		"workspace/semanticTokens/refresh": w.SemanticTokens.RefreshSupport,
	} {
		if wanted && s.until.Err() == nil {
			s.ask(method, nil)
		}
	}
}
