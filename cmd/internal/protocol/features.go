package protocol

import "encoding/json"

// CompletionOptions say when an editor asks what may stand at a place without being told to.
type CompletionOptions struct {
	TriggerCharacters []string `json:"triggerCharacters,omitempty"`
}

// CompletionList is what may stand at a place.
type CompletionList struct {
	IsIncomplete bool             `json:"isIncomplete"`
	Items        []CompletionItem `json:"items"`
}

// CompletionItem is one of these.
type CompletionItem struct {
	Label            string         `json:"label"`
	Kind             int            `json:"kind,omitempty"`
	Detail           string         `json:"detail,omitempty"`
	Documentation    *MarkupContent `json:"documentation,omitempty"`
	SortText         string         `json:"sortText,omitempty"`
	FilterText       string         `json:"filterText,omitempty"`
	InsertTextFormat int            `json:"insertTextFormat,omitempty"`
	InsertTextMode   int            `json:"insertTextMode,omitempty"`
	TextEdit         *TextEdit      `json:"textEdit,omitempty"`
}

// The kinds of a CompletionItem that are used.
const (
	CompletionMethod    = 2
	CompletionField     = 5
	CompletionVariable  = 6
	CompletionClass     = 7
	CompletionModule    = 9
	CompletionProperty  = 10
	CompletionUnit      = 11
	CompletionValue     = 12
	CompletionKeyword   = 14
	CompletionReference = 18
	CompletionConstant  = 21
	CompletionStruct    = 22
	CompletionEvent     = 23
)

// The forms of what a CompletionItem puts in: as it stands, or with tab stops.
const (
	InsertPlain   = 1
	InsertSnippet = 2
)

// What becomes of what indents the lines behind the first: it is left as it is, or that of the
// line into which it is put goes before it.
const (
	IndentAsIs     = 1
	IndentAdjusted = 2
)

// Hover is what there is to say of a place.
type Hover struct {
	Contents MarkupContent `json:"contents"`
	Range    *Range        `json:"range,omitempty"`
}

// ReferenceParams asks where something is named.
type ReferenceParams struct {
	TextDocument TextDocumentIdentifier `json:"textDocument"`
	Position     Position               `json:"position"`
	Context      ReferenceContext       `json:"context"`
}

// ReferenceContext says whether the place at which it gets its name is asked for too.
type ReferenceContext struct {
	IncludeDeclaration bool `json:"includeDeclaration"`
}

// DocumentHighlight is a place in the same file at which the same is named.
type DocumentHighlight struct {
	Range Range `json:"range"`
	Kind  int   `json:"kind,omitempty"` // 1 text, 2 read, 3 write
}

// RenameOptions say that it can be asked beforehand whether something can be renamed.
type RenameOptions struct {
	PrepareProvider bool `json:"prepareProvider"`
}

// RenameParams asks for another name of something.
type RenameParams struct {
	TextDocument TextDocumentIdentifier `json:"textDocument"`
	Position     Position               `json:"position"`
	NewName      string                 `json:"newName"`
}

// PrepareRenameResult is the name that can be changed.
type PrepareRenameResult struct {
	Range       Range  `json:"range"`
	Placeholder string `json:"placeholder"`
}

// DocumentSymbol is something that stands in a file, with what stands in it.
type DocumentSymbol struct {
	Name           string           `json:"name"`
	Detail         string           `json:"detail,omitempty"`
	Kind           int              `json:"kind"`
	Range          Range            `json:"range"`
	SelectionRange Range            `json:"selectionRange"`
	Children       []DocumentSymbol `json:"children,omitempty"`
}

// SymbolInformation is something that stands in any file.
type SymbolInformation struct {
	Name          string   `json:"name"`
	Kind          int      `json:"kind"`
	Location      Location `json:"location"`
	ContainerName string   `json:"containerName,omitempty"`
}

// The kinds of symbols that are used.
const (
	SymbolModule    = 2
	SymbolNamespace = 3
	SymbolClass     = 5
	SymbolMethod    = 6
	SymbolProperty  = 7
	SymbolField     = 8
	SymbolEnum      = 10
	SymbolInterface = 11
	SymbolConstant  = 14
	SymbolObject    = 19
	SymbolStruct    = 23
	SymbolEvent     = 24
)

// WorkspaceSymbolParams asks for what is called so.
type WorkspaceSymbolParams struct {
	Query string `json:"query"`
}

// FoldingRange is lines that can be folded away.
type FoldingRange struct {
	StartLine int    `json:"startLine"`
	EndLine   int    `json:"endLine"`
	Kind      string `json:"kind,omitempty"` // "comment"
}

// CodeActionOptions say of which kinds actions are.
type CodeActionOptions struct {
	CodeActionKinds []string `json:"codeActionKinds,omitempty"`
}

// The kinds of actions.
const (
	ActionQuickFix = "quickfix"
	ActionRewrite  = "refactor.rewrite"
	ActionFixAll   = "source.fixAll"
)

// CodeActionParams asks what can be done at a stretch of a text.
type CodeActionParams struct {
	TextDocument TextDocumentIdentifier `json:"textDocument"`
	Range        Range                  `json:"range"`
	Context      CodeActionContext      `json:"context"`
}

// CodeActionContext says what is shown there, and what is wanted.
type CodeActionContext struct {
	Diagnostics []Diagnostic `json:"diagnostics"`
	Only        []string     `json:"only,omitempty"`
}

// CodeAction is a change that is offered.
type CodeAction struct {
	Title       string         `json:"title"`
	Kind        string         `json:"kind,omitempty"`
	Diagnostics []Diagnostic   `json:"diagnostics,omitempty"`
	IsPreferred bool           `json:"isPreferred,omitempty"`
	Edit        *WorkspaceEdit `json:"edit,omitempty"`
}

// CodeLensOptions say that a lens is whole when it is sent.
type CodeLensOptions struct {
	ResolveProvider bool `json:"resolveProvider"`
}

// CodeLens is a line of words above a line of a text.
type CodeLens struct {
	Range   Range    `json:"range"`
	Command *Command `json:"command,omitempty"`
}

// InlayHintParams asks for what is to be shown between what is written.
type InlayHintParams struct {
	TextDocument TextDocumentIdentifier `json:"textDocument"`
	Range        Range                  `json:"range"`
}

// InlayHint is words that are shown in a text and do not stand there.
type InlayHint struct {
	Position    Position `json:"position"`
	Label       string   `json:"label"`
	PaddingLeft bool     `json:"paddingLeft,omitempty"`
	Tooltip     string   `json:"tooltip,omitempty"`
}

// DocumentFormattingParams asks for the canonical layout of a file.
type DocumentFormattingParams struct {
	TextDocument TextDocumentIdentifier `json:"textDocument"`
	Options      json.RawMessage        `json:"options"`
}

// DocumentRangeFormattingParams asks for that of a stretch.
type DocumentRangeFormattingParams struct {
	TextDocument TextDocumentIdentifier `json:"textDocument"`
	Range        Range                  `json:"range"`
	Options      json.RawMessage        `json:"options"`
}

// SemanticTokensOptions say how tokens are told.
type SemanticTokensOptions struct {
	Legend SemanticTokensLegend `json:"legend"`
	Full   bool                 `json:"full"`
	Range  bool                 `json:"range"`
}

// SemanticTokensLegend names the kinds of tokens, which are told by their numbers.
type SemanticTokensLegend struct {
	TokenTypes     []string `json:"tokenTypes"`
	TokenModifiers []string `json:"tokenModifiers"`
}

// SemanticTokens are five numbers a token: lines and characters from the one before, length,
// kind, modifiers.
type SemanticTokens struct {
	Data []uint32 `json:"data"`
}

// DocumentParams asks for something of a whole file: symbols, folding, lenses, tokens.
type DocumentParams struct {
	TextDocument TextDocumentIdentifier `json:"textDocument"`
}
