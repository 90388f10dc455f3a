package editor

import (
	"context"
	"encoding/json"
	"strings"

	"github.com/creachadair/jrpc2"
	"github.com/creachadair/jrpc2/handler"

	"vivary/cmd/internal/protocol"
)

// methods are what an editor asks and tells. A new one is an entry here, and what it needs to
// be told in capabilities.
func (s *Server) methods() handler.Map {
	nothing := func(context.Context, *json.RawMessage) error { return nil }
	return handler.Map{
		"initialize":                       handler.New(s.initialize),
		"initialized":                      handler.New(func(context.Context, *json.RawMessage) error { go s.register(); return nil }),
		"shutdown":                         handler.New(s.shutdown),
		"exit":                             handler.New(func(context.Context) error { s.end(); return nil }),
		"$/cancelRequest":                  handler.New(s.cancel),
		"$/setTrace":                       handler.New(nothing),
		"workspace/didChangeConfiguration": handler.New(nothing),
		"workspace/didChangeWatchedFiles":  handler.New(s.filesChanged),
		"textDocument/didOpen":             handler.New(s.opened),
		"textDocument/didChange":           handler.New(s.changed),
		"textDocument/didSave":             handler.New(s.saved),
		"textDocument/didClose":            handler.New(s.closed),

		"textDocument/completion":        handler.New(s.completion),
		"textDocument/hover":             handler.New(s.hover),
		"textDocument/definition":        handler.New(s.definition),
		"textDocument/references":        handler.New(s.references),
		"textDocument/documentHighlight": handler.New(s.highlights),
		"textDocument/prepareRename":     handler.New(s.prepareRename),
		"textDocument/rename":            handler.New(s.rename),
		"textDocument/documentSymbol":    handler.New(s.symbols),
		"workspace/symbol":               handler.New(s.symbolsEverywhere),
		"textDocument/foldingRange":      handler.New(s.folds),
		"textDocument/codeAction":        handler.New(s.actions),
		"textDocument/codeLens":          handler.New(s.lenses),
		"textDocument/inlayHint":         handler.New(s.hints),
		"textDocument/formatting":        handler.New(s.layOut),
		"textDocument/rangeFormatting":   handler.New(s.layOutRange),

		"textDocument/semanticTokens/full":  handler.New(s.tokensOf),
		"textDocument/semanticTokens/range": handler.New(s.tokensOfRange),
	}
}

func (s *Server) capabilities() protocol.ServerCapabilities {
	return protocol.ServerCapabilities{
		PositionEncoding:                string(s.encoding),
		TextDocumentSync:                &protocol.TextDocumentSyncOptions{OpenClose: true, Change: protocol.SyncIncremental, Save: true},
		CompletionProvider:              &protocol.CompletionOptions{TriggerCharacters: []string{"\"", " ", "="}},
		HoverProvider:                   true,
		DefinitionProvider:              true,
		ReferencesProvider:              true,
		DocumentHighlightProvider:       true,
		RenameProvider:                  &protocol.RenameOptions{PrepareProvider: true},
		DocumentSymbolProvider:          true,
		WorkspaceSymbolProvider:         true,
		FoldingRangeProvider:            true,
		DocumentFormattingProvider:      true,
		DocumentRangeFormattingProvider: true,
		CodeLensProvider:                &protocol.CodeLensOptions{},
		InlayHintProvider:               true,
		CodeActionProvider:              &protocol.CodeActionOptions{CodeActionKinds: []string{protocol.ActionQuickFix, protocol.ActionRewrite, protocol.ActionFixAll}},
		SemanticTokensProvider:          &protocol.SemanticTokensOptions{Legend: legend, Full: true, Range: true},
	}
}

// initialize agrees on what is spoken: bytes, where the editor can count them.
func (s *Server) initialize(_ context.Context, p *protocol.InitializeParams) (protocol.InitializeResult, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.client = p.Capabilities
	for _, e := range p.Capabilities.General.PositionEncodings {
		if e == string(protocol.UTF8) {
			s.encoding = protocol.UTF8
		}
	}
	return protocol.InitializeResult{Capabilities: s.capabilities(), ServerInfo: protocol.ServerInfo{Name: "vivary", Version: s.Version}}, nil
}

// register asks to be told when others change plans and logs.
func (s *Server) register() {
	if !s.client.Workspace.DidChangeWatchedFiles.DynamicRegistration {
		return
	}
	s.ask("client/registerCapability", protocol.RegistrationParams{Registrations: []protocol.Registration{{
		ID: "plans-and-logs", Method: "workspace/didChangeWatchedFiles",
		RegisterOptions: protocol.DidChangeWatchedFilesRegistrationOptions{Watchers: []protocol.FileSystemWatcher{{GlobPattern: "**/*.care.*"}}},
	}}})
}

func (s *Server) shutdown(context.Context) (any, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.down = true
	return nil, nil
}

// cancel takes a request back. The id of one is told as it was sent.
func (s *Server) cancel(ctx context.Context, p *protocol.CancelParams) error {
	jrpc2.ServerFromContext(ctx).CancelRequest(strings.TrimSpace(string(p.ID)))
	return nil
}

func (s *Server) filesChanged(context.Context, *json.RawMessage) error {
	for _, h := range s.everywhere() {
		h.look()
	}
	return nil
}
