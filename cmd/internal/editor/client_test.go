package editor

import (
	"context"
	"encoding/json"
	"io"
	"path/filepath"
	"sync"
	"testing"
	"time"

	"github.com/creachadair/jrpc2"
	"github.com/creachadair/jrpc2/channel"
	"github.com/spf13/afero"

	"vivary/cmd/internal/protocol"
)

// client is an editor as a test plays it.
type client struct {
	t      testing.TB
	rpc    *jrpc2.Client
	ended  chan error
	end    context.CancelFunc
	disk   afero.Fs
	server *Server

	mu       sync.Mutex
	shown    map[string]protocol.PublishDiagnosticsParams // by URI, the last
	texts    map[string]string
	versions map[string]int
	asked    []string // what the server asked for
}

// capable are the capabilities of a usual editor.
const capable = `{"general": {"positionEncodings": ["utf-16"]}, "window": {"workDoneProgress": true},
	"workspace": {"workspaceEdit": {"documentChanges": true, "resourceOperations": ["create"]}, "didChangeWatchedFiles": {"dynamicRegistration": true},
		"codeLens": {"refreshSupport": true}, "inlayHint": {"refreshSupport": true}},
	"textDocument": {"completion": {"completionItem": {"snippetSupport": true}}, "documentSymbol": {"hierarchicalDocumentSymbolSupport": true}}}`

// meet begins a session with a server, of which every folder is the collection "/c".
func meet(t testing.TB, disk afero.Fs, capabilities string, now time.Time) *client {
	t.Helper()
	toServer, fromClient := io.Pipe()
	toClient, fromServer := io.Pipe()
	c := &client{t: t, ended: make(chan error, 1), disk: disk, shown: map[string]protocol.PublishDiagnosticsParams{}, texts: map[string]string{}, versions: map[string]int{}}
	var ctx context.Context
	ctx, c.end = context.WithCancel(context.Background())
	o := Options{Disk: disk, In: toServer, Out: fromServer, Version: "test", Root: func(string) string { return "/c" },
		Now: func(loc *time.Location) (time.Time, error) {
			if loc != nil {
				return now.In(loc), nil
			}
			return now, nil
		}}
	c.server = newServer(o)
	go func() { c.ended <- c.server.run(ctx) }()
	c.rpc = jrpc2.NewClient(ear{channel.LSP(toClient, fromClient), c}, &jrpc2.ClientOptions{OnNotify: func(*jrpc2.Request) {}, OnCallback: c.answer})
	t.Cleanup(func() {
		c.end()
		_ = fromClient.Close()
		_ = c.rpc.Close()
	})
	var out protocol.InitializeResult
	c.call("initialize", json.RawMessage(`{"rootUri": "file:///c", "capabilities": `+capabilities+`}`), &out)
	c.tell("initialized", json.RawMessage(`{}`))
	return c
}

// ear hears what is shown in the order in which it comes, which the client of the library does
// not keep.
type ear struct {
	channel.Channel
	c *client
}

func (e ear) Recv() ([]byte, error) {
	text, err := e.Channel.Recv()
	var m struct {
		Method string
		Params protocol.PublishDiagnosticsParams
	}
	if err == nil && json.Unmarshal(text, &m) == nil && m.Method == "textDocument/publishDiagnostics" {
		e.c.mu.Lock()
		e.c.shown[m.Params.URI] = m.Params
		e.c.mu.Unlock()
	}
	return text, err
}

func (c *client) answer(_ context.Context, r *jrpc2.Request) (any, error) {
	c.mu.Lock()
	defer c.mu.Unlock()
	c.asked = append(c.asked, r.Method())
	return nil, nil
}

func (c *client) call(method string, params, out any) {
	c.t.Helper()
	ctx, done := context.WithTimeout(context.Background(), time.Minute)
	defer done()
	if err := c.rpc.CallResult(ctx, method, params, out); err != nil {
		c.t.Fatalf("%s: %v", method, err)
	}
}

func (c *client) tell(method string, params any) {
	c.t.Helper()
	if err := c.rpc.Notify(context.Background(), method, params); err != nil {
		c.t.Fatalf("%s: %v", method, err)
	}
}

func uri(name string) string { return uriOf(filepath.Join("/c", name)) }

// open opens a file as it is on the disk.
func (c *client) open(name string) {
	c.t.Helper()
	text, err := afero.ReadFile(c.disk, "/c/"+name)
	if err != nil {
		c.t.Fatal(err)
	}
	c.openAs(name, string(text))
}

func (c *client) openAs(name, text string) {
	c.texts[name], c.versions[name] = text, 1
	c.tell("textDocument/didOpen", protocol.DidOpenTextDocumentParams{TextDocument: protocol.TextDocumentItem{URI: uri(name), Version: 1, Text: text}})
}

// edit writes something else from one byte of a file to another.
func (c *client) edit(name string, start, end int, text string) {
	c.versions[name]++
	was := c.texts[name]
	l := protocol.NewLines([]byte(was), protocol.UTF16)
	r := l.Range(start, end)
	c.texts[name] = was[:start] + text + was[end:]
	c.tell("textDocument/didChange", protocol.DidChangeTextDocumentParams{
		TextDocument:   protocol.VersionedTextDocumentIdentifier{URI: uri(name), Version: c.versions[name]},
		ContentChanges: []protocol.TextDocumentContentChangeEvent{{Range: &r, Text: text}},
	})
}

// settled waits until all that was typed is compiled: the answer to a request about the whole
// collection comes after that.
func (c *client) settled() {
	c.t.Helper()
	var out json.RawMessage
	c.call("workspace/symbol", protocol.WorkspaceSymbolParams{Query: "no such name"}, &out)
}

// found are the rules of what is shown of a file.
func (c *client) found(name string) (rules []string) {
	c.mu.Lock()
	defer c.mu.Unlock()
	for _, d := range c.shown[uri(name)].Diagnostics {
		rules = append(rules, d.Code)
	}
	return rules
}
