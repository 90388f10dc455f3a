// Package protocol is as much of the Language Server Protocol 3.17 as the editor needs: the
// messages as Go values, and positions in a text. It knows no plans; its names are the
// protocol's own, and a test holds them against the published meta model.
package protocol

import "encoding/json"

// Position is a place in a text: a line and a character of it, both from 0. What is counted
// as a character is agreed on when an editor and a server meet: see Encoding.
type Position struct {
	Line      int `json:"line"`
	Character int `json:"character"`
}

// Range is a stretch of a text, from Start up to but not including End.
type Range struct {
	Start Position `json:"start"`
	End   Position `json:"end"`
}

// Location is a stretch of a file.
type Location struct {
	URI   string `json:"uri"`
	Range Range  `json:"range"`
}

// TextDocumentIdentifier names a file.
type TextDocumentIdentifier struct {
	URI string `json:"uri"`
}

// VersionedTextDocumentIdentifier names a file as it was after some change.
type VersionedTextDocumentIdentifier struct {
	URI     string `json:"uri"`
	Version int    `json:"version"`
}

// TextDocumentItem is a file that was opened, with its text.
type TextDocumentItem struct {
	URI     string `json:"uri"`
	Version int    `json:"version"`
	Text    string `json:"text"`
}

// TextDocumentPositionParams asks about a place.
type TextDocumentPositionParams struct {
	TextDocument TextDocumentIdentifier `json:"textDocument"`
	Position     Position               `json:"position"`
}

// TextEdit writes another text for a stretch of one.
type TextEdit struct {
	Range   Range  `json:"range"`
	NewText string `json:"newText"`
}

// WorkspaceEdit changes several files at once.
type WorkspaceEdit struct {
	Changes map[string][]TextEdit `json:"changes,omitempty"`
	// DocumentChanges are TextDocumentEdit and CreateFile, for editors that know them.
	DocumentChanges []any `json:"documentChanges,omitempty"`
}

// TextDocumentEdit changes a file as it was after some change, or as it is on the disk.
type TextDocumentEdit struct {
	TextDocument OptionalVersionedTextDocumentIdentifier `json:"textDocument"`
	Edits        []TextEdit                              `json:"edits"`
}

// OptionalVersionedTextDocumentIdentifier names a file; Version is nil for one that is not
// open.
type OptionalVersionedTextDocumentIdentifier struct {
	URI     string `json:"uri"`
	Version *int   `json:"version"`
}

// CreateFile makes a file.
type CreateFile struct {
	Kind string `json:"kind"` // "create"
	URI  string `json:"uri"`
}

// MarkupContent is a text for people.
type MarkupContent struct {
	Kind  string `json:"kind"` // "markdown" or "plaintext"
	Value string `json:"value"`
}

// Command is something that the server does when an editor asks for it.
type Command struct {
	Title     string            `json:"title"`
	Command   string            `json:"command"`
	Arguments []json.RawMessage `json:"arguments,omitempty"`
}

// DiagnosticSeverity says how bad something is.
type DiagnosticSeverity int

// The severities of the protocol.
const (
	SeverityError       DiagnosticSeverity = 1
	SeverityWarning     DiagnosticSeverity = 2
	SeverityInformation DiagnosticSeverity = 3
	SeverityHint        DiagnosticSeverity = 4
)

// Diagnostic is something found in a file.
type Diagnostic struct {
	Range              Range                          `json:"range"`
	Severity           DiagnosticSeverity             `json:"severity,omitempty"`
	Code               string                         `json:"code,omitempty"`
	Source             string                         `json:"source,omitempty"`
	Message            string                         `json:"message"`
	RelatedInformation []DiagnosticRelatedInformation `json:"relatedInformation,omitempty"`
}

// DiagnosticRelatedInformation is another place that belongs to it.
type DiagnosticRelatedInformation struct {
	Location Location `json:"location"`
	Message  string   `json:"message"`
}

// PublishDiagnosticsParams is all that is found in a file.
type PublishDiagnosticsParams struct {
	URI         string       `json:"uri"`
	Version     *int         `json:"version,omitempty"`
	Diagnostics []Diagnostic `json:"diagnostics"`
}
