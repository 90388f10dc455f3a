package editor

import (
	"context"
	"net/url"
	"path/filepath"
	"runtime"
	"strings"

	"vivary/cmd/internal/protocol"
)

// document is a file that is open in the editor. Its text is never written into: each change
// makes another.
type document struct {
	uri     string // as the editor writes it
	version int
	text    []byte
}

// pathOf is the path of a file that an editor names; "" for what is no file.
func pathOf(uri string) string {
	u, err := url.Parse(uri)
	if err != nil || u.Scheme != "file" || u.Path == "" {
		return ""
	}
	path := u.Path
	if runtime.GOOS == "windows" {
		path = strings.TrimPrefix(path, "/") // file:///c:/plans
	}
	return filepath.Clean(filepath.FromSlash(path))
}

// uriOf names a file for an editor.
func uriOf(path string) string {
	path = filepath.ToSlash(path)
	if !strings.HasPrefix(path, "/") {
		path = "/" + path
	}
	return (&url.URL{Scheme: "file", Path: path}).String()
}

func (s *Server) opened(_ context.Context, p *protocol.DidOpenTextDocumentParams) error {
	path := pathOf(p.TextDocument.URI)
	if h := s.house(path); h != nil {
		h.open(path, &document{p.TextDocument.URI, p.TextDocument.Version, []byte(p.TextDocument.Text)})
	}
	return nil
}

func (s *Server) changed(_ context.Context, p *protocol.DidChangeTextDocumentParams) error {
	path := pathOf(p.TextDocument.URI)
	if h := s.house(path); h != nil {
		h.change(path, p.TextDocument.Version, p.ContentChanges)
	}
	return nil
}

// saved has the disk looked at again: others may have changed something meanwhile.
func (s *Server) saved(_ context.Context, p *protocol.DidCloseTextDocumentParams) error {
	if h := s.house(pathOf(p.TextDocument.URI)); h != nil {
		h.look()
	}
	return nil
}

func (s *Server) closed(_ context.Context, p *protocol.DidCloseTextDocumentParams) error {
	path := pathOf(p.TextDocument.URI)
	if h := s.house(path); h != nil {
		h.close(path)
	}
	return nil
}
