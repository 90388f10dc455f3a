package protocol

import (
	"compress/gzip"
	"encoding/json"
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"
)

// model is the published description of the protocol: testdata/protocol.
type model struct {
	Structures []structure `json:"structures"`
}

type structure struct {
	Name       string     `json:"name"`
	Properties []property `json:"properties"`
	Extends    []typ      `json:"extends"`
	Mixins     []typ      `json:"mixins"`
}

type property struct {
	Name     string `json:"name"`
	Type     typ    `json:"type"`
	Optional bool   `json:"optional"`
	Since    string `json:"since"`
}

type typ struct {
	Kind    string          `json:"kind"`
	Name    string          `json:"name"`
	Items   []typ           `json:"items"`
	Element json.RawMessage `json:"element"`
}

func readModel(t *testing.T) *model {
	t.Helper()
	f, err := os.Open("../../../testdata/protocol/metaModel.json.gz")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	z, err := gzip.NewReader(f)
	if err != nil {
		t.Fatal(err)
	}
	m := &model{}
	if err := json.NewDecoder(z).Decode(m); err != nil {
		t.Fatal(err)
	}
	return m
}

// properties are those of a structure, with those of what it extends.
func (m *model) properties(name string) map[string]property {
	i := slices.IndexFunc(m.Structures, func(s structure) bool { return s.Name == name })
	if i < 0 {
		return nil
	}
	out := map[string]property{}
	for _, t := range slices.Concat(m.Structures[i].Extends, m.Structures[i].Mixins) {
		for name, p := range m.properties(t.Name) {
			out[name] = p
		}
	}
	for _, p := range m.Structures[i].Properties {
		out[p.Name] = p
	}
	return out
}

// sent are the messages that we make: what the model asks for is always there.
var sent = []any{
	Position{}, Range{}, Location{}, TextEdit{}, WorkspaceEdit{}, TextDocumentEdit{}, OptionalVersionedTextDocumentIdentifier{}, CreateFile{}, MarkupContent{}, Command{},
	Diagnostic{}, DiagnosticRelatedInformation{}, PublishDiagnosticsParams{}, InitializeResult{}, ServerCapabilities{}, TextDocumentSyncOptions{}, CompletionOptions{},
	RenameOptions{}, CodeActionOptions{}, CodeLensOptions{}, SemanticTokensOptions{}, SemanticTokensLegend{}, Registration{}, RegistrationParams{},
	DidChangeWatchedFilesRegistrationOptions{}, FileSystemWatcher{}, WorkDoneProgressCreateParams{}, CompletionList{}, CompletionItem{}, Hover{}, DocumentHighlight{},
	DocumentSymbol{}, SymbolInformation{}, FoldingRange{}, CodeAction{}, CodeLens{}, InlayHint{}, SemanticTokens{},
}

// received are those that we read, as far as we need them.
var received = []any{
	TextDocumentIdentifier{}, VersionedTextDocumentIdentifier{}, TextDocumentItem{}, TextDocumentPositionParams{}, InitializeParams{}, WorkspaceFolder{},
	DidOpenTextDocumentParams{}, DidChangeTextDocumentParams{}, DidCloseTextDocumentParams{}, CancelParams{}, ReferenceParams{}, ReferenceContext{}, RenameParams{},
	WorkspaceSymbolParams{}, CodeActionParams{}, CodeActionContext{}, InlayHintParams{}, DocumentFormattingParams{}, DocumentRangeFormattingParams{},
}

// TestModel holds the types against the published meta model: every field is a property of
// that name and of such a type, none is younger than 3.17, and what must be sent is.
func TestModel(t *testing.T) {
	m := readModel(t)
	for _, x := range sent {
		m.holds(t, reflect.TypeOf(x), true)
	}
	for _, x := range received {
		m.holds(t, reflect.TypeOf(x), false)
	}
}

func (m *model) holds(t *testing.T, of reflect.Type, sent bool) {
	t.Helper()
	all := m.properties(of.Name())
	if all == nil {
		t.Errorf("the model has no %s", of.Name())
		return
	}
	there := map[string]bool{}
	for i := range of.NumField() {
		name, options, _ := strings.Cut(of.Field(i).Tag.Get("json"), ",")
		p, known := all[name]
		there[name] = !strings.Contains(options, "omitempty")
		switch {
		case !known:
			t.Errorf("%s has no property %s", of.Name(), name)
		case p.Since == "3.18.0": // with more behind it, it is of another form of the same
			t.Errorf("%s of %s is of version %s", name, of.Name(), p.Since)
		case !fits(of.Field(i).Type, p.Type):
			t.Errorf("%s of %s is %s, in the model %s %s", name, of.Name(), of.Field(i).Type, p.Type.Kind, p.Type.Name)
		}
	}
	for name, p := range all {
		if sent && !p.Optional && !there[name] {
			t.Errorf("%s must be sent with every %s", name, of.Name())
		}
	}
}

// fits reports whether a Go type can be what the model asks for.
func fits(of reflect.Type, want typ) bool {
	if of == reflect.TypeFor[json.RawMessage]() {
		return true // as it was sent
	}
	if of.Kind() == reflect.Pointer {
		of = of.Elem()
	}
	switch want.Kind {
	case "or":
		return slices.ContainsFunc(want.Items, func(x typ) bool { return fits(of, x) })
	case "array":
		return of.Kind() == reflect.Slice
	case "map":
		return of.Kind() == reflect.Map
	case "base":
		switch want.Name {
		case "string", "URI", "DocumentUri":
			return of.Kind() == reflect.String
		case "integer", "uinteger", "decimal":
			return of.Kind() == reflect.Int || of.Kind() == reflect.Uint32
		case "boolean":
			return of.Kind() == reflect.Bool
		}
		return false
	case "stringLiteral":
		return of.Kind() == reflect.String
	}
	return true // a structure by its name, a number or a word of a list, which are held by their own names
}
