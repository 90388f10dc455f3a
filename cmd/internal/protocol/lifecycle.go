package protocol

import "encoding/json"

// InitializeParams is what an editor says of itself when it begins.
type InitializeParams struct {
	RootURI          string             `json:"rootUri"`
	WorkspaceFolders []WorkspaceFolder  `json:"workspaceFolders"`
	Capabilities     ClientCapabilities `json:"capabilities"`
}

// WorkspaceFolder is a folder that is open in an editor.
type WorkspaceFolder struct {
	URI  string `json:"uri"`
	Name string `json:"name"`
}

// ClientCapabilities are what an editor can do, as far as that is asked.
type ClientCapabilities struct {
	General struct {
		PositionEncodings []string `json:"positionEncodings"`
	} `json:"general"`
	Window struct {
		WorkDoneProgress bool `json:"workDoneProgress"`
	} `json:"window"`
	Workspace struct {
		WorkspaceEdit struct {
			DocumentChanges    bool     `json:"documentChanges"`
			ResourceOperations []string `json:"resourceOperations"`
		} `json:"workspaceEdit"`
		DidChangeWatchedFiles struct {
			DynamicRegistration bool `json:"dynamicRegistration"`
		} `json:"didChangeWatchedFiles"`
		CodeLens struct {
			RefreshSupport bool `json:"refreshSupport"`
		} `json:"codeLens"`
		InlayHint struct {
			RefreshSupport bool `json:"refreshSupport"`
		} `json:"inlayHint"`
		SemanticTokens struct {
			RefreshSupport bool `json:"refreshSupport"`
		} `json:"semanticTokens"`
	} `json:"workspace"`
	TextDocument struct {
		Completion struct {
			CompletionItem struct {
				SnippetSupport        bool `json:"snippetSupport"`
				InsertTextModeSupport struct {
					ValueSet []int `json:"valueSet"`
				} `json:"insertTextModeSupport"`
			} `json:"completionItem"`
		} `json:"completion"`
		DocumentSymbol struct {
			HierarchicalDocumentSymbolSupport bool `json:"hierarchicalDocumentSymbolSupport"`
		} `json:"documentSymbol"`
	} `json:"textDocument"`
}

// InitializeResult is what the server can do.
type InitializeResult struct {
	Capabilities ServerCapabilities `json:"capabilities"`
	ServerInfo   ServerInfo         `json:"serverInfo"`
}

// ServerInfo names the server.
type ServerInfo struct {
	Name    string `json:"name"`
	Version string `json:"version,omitempty"`
}

// ServerCapabilities are what the server answers.
type ServerCapabilities struct {
	PositionEncoding                string                   `json:"positionEncoding,omitempty"`
	TextDocumentSync                *TextDocumentSyncOptions `json:"textDocumentSync,omitempty"`
	CompletionProvider              *CompletionOptions       `json:"completionProvider,omitempty"`
	HoverProvider                   bool                     `json:"hoverProvider,omitempty"`
	DefinitionProvider              bool                     `json:"definitionProvider,omitempty"`
	ReferencesProvider              bool                     `json:"referencesProvider,omitempty"`
	DocumentHighlightProvider       bool                     `json:"documentHighlightProvider,omitempty"`
	DocumentSymbolProvider          bool                     `json:"documentSymbolProvider,omitempty"`
	WorkspaceSymbolProvider         bool                     `json:"workspaceSymbolProvider,omitempty"`
	CodeActionProvider              *CodeActionOptions       `json:"codeActionProvider,omitempty"`
	CodeLensProvider                *CodeLensOptions         `json:"codeLensProvider,omitempty"`
	DocumentFormattingProvider      bool                     `json:"documentFormattingProvider,omitempty"`
	DocumentRangeFormattingProvider bool                     `json:"documentRangeFormattingProvider,omitempty"`
	RenameProvider                  *RenameOptions           `json:"renameProvider,omitempty"`
	FoldingRangeProvider            bool                     `json:"foldingRangeProvider,omitempty"`
	SemanticTokensProvider          *SemanticTokensOptions   `json:"semanticTokensProvider,omitempty"`
	InlayHintProvider               bool                     `json:"inlayHintProvider,omitempty"`
}

// SyncIncremental says that an editor sends what has changed of a text, not all of it.
const SyncIncremental = 2

// TextDocumentSyncOptions say what the server wants to be told of files.
type TextDocumentSyncOptions struct {
	OpenClose bool `json:"openClose"`
	Change    int  `json:"change"`
	Save      bool `json:"save"`
}

// DidOpenTextDocumentParams says that a file was opened.
type DidOpenTextDocumentParams struct {
	TextDocument TextDocumentItem `json:"textDocument"`
}

// DidChangeTextDocumentParams says what changed in one, in order.
type DidChangeTextDocumentParams struct {
	TextDocument   VersionedTextDocumentIdentifier  `json:"textDocument"`
	ContentChanges []TextDocumentContentChangeEvent `json:"contentChanges"`
}

// TextDocumentContentChangeEvent is one change: of a stretch, or without Range of all.
type TextDocumentContentChangeEvent struct {
	Range *Range `json:"range,omitempty"`
	Text  string `json:"text"`
}

// DidCloseTextDocumentParams says that a file was closed.
type DidCloseTextDocumentParams struct {
	TextDocument TextDocumentIdentifier `json:"textDocument"`
}

// Registration asks an editor to tell of something that it does not tell of by itself.
type Registration struct {
	ID              string `json:"id"`
	Method          string `json:"method"`
	RegisterOptions any    `json:"registerOptions,omitempty"`
}

// RegistrationParams are several of these.
type RegistrationParams struct {
	Registrations []Registration `json:"registrations"`
}

// DidChangeWatchedFilesRegistrationOptions says of which files an editor is to tell when
// others change them.
type DidChangeWatchedFilesRegistrationOptions struct {
	Watchers []FileSystemWatcher `json:"watchers"`
}

// FileSystemWatcher is a pattern of names.
type FileSystemWatcher struct {
	GlobPattern string `json:"globPattern"`
}

// WorkDoneProgressCreateParams announces that something takes a while.
type WorkDoneProgressCreateParams struct {
	Token string `json:"token"`
}

// ProgressParams tells how far it is.
type ProgressParams struct {
	Token string `json:"token"`
	Value any    `json:"value"`
}

// WorkDoneProgress begins it, or ends it.
type WorkDoneProgress struct {
	Kind    string `json:"kind"` // "begin" or "end"
	Title   string `json:"title,omitempty"`
	Message string `json:"message,omitempty"`
}

// CancelParams takes a request back.
type CancelParams struct {
	ID json.RawMessage `json:"id"`
}

// ShowMessageParams is a message for people.
type ShowMessageParams struct {
	Type    int    `json:"type"` // 1 error, 2 warning, 3 information
	Message string `json:"message"`
}

// ApplyWorkspaceEditParams asks an editor to change files.
type ApplyWorkspaceEditParams struct {
	Label string        `json:"label,omitempty"`
	Edit  WorkspaceEdit `json:"edit"`
}
