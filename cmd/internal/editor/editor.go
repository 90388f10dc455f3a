// Package editor is a language server: it tells a text editor what vivary finds in plans and
// logs while they are typed, what may stand at a place and what it means, and makes the changes
// that were asked for. It concludes nothing of its own: it puts what the compiler says into the
// words of the protocol.
package editor

import (
	"context"
	"errors"
	"io"
	"path/filepath"
	"strings"
	"sync"
	"time"

	"github.com/creachadair/jrpc2"
	"github.com/creachadair/jrpc2/channel"
	"github.com/spf13/afero"

	"vivary/cmd/internal/builder"
	"vivary/cmd/internal/protocol"
	"vivary/plan"
)

// Options are what a server needs of the world.
type Options struct {
	Disk afero.Fs
	In   io.Reader
	Out  io.WriteCloser
	// Root returns the folder of the collection to which a folder belongs.
	Root    func(folder string) string
	Now     builder.Moment
	Version string
}

// Server speaks with one editor. Of each collection of which a file is open it has a house.
type Server struct {
	Options
	rpc      *jrpc2.Server
	encoding protocol.Encoding
	client   protocol.ClientCapabilities

	mu     sync.Mutex
	houses map[string]*house // by root
	rooted map[string]string // roots of folders
	down   bool              // the editor has said that it ends
	end    context.CancelFunc
	until  context.Context
	tokens int
}

// errEnded is the end of a session in which the editor did not say that it would end.
var errEnded = errors.New("the editor went without saying so")

// Run speaks with an editor until it ends, or the context does. The error is of the connection,
// or says that the editor went without a word.
func Run(ctx context.Context, o Options) error { return newServer(o).run(ctx) }

func newServer(o Options) *Server {
	return &Server{Options: o, encoding: protocol.UTF16, houses: map[string]*house{}, rooted: map[string]string{}}
}

func (s *Server) run(ctx context.Context) error {
	s.until, s.end = context.WithCancel(ctx)
	defer s.end()
	s.rpc = jrpc2.NewServer(s.methods(), &jrpc2.ServerOptions{AllowPush: true, Concurrency: 4})
	s.rpc.Start(channel.LSP(s.In, s.Out))
	stopped := make(chan error, 1)
	go func() { stopped <- s.rpc.Wait() }()
	select {
	case <-s.until.Done():
		s.rpc.Stop()
		if ctx.Err() != nil || s.isDown() {
			return nil
		}
		return errEnded
	case err := <-stopped:
		if s.isDown() || ctx.Err() != nil {
			return nil
		}
		if err == nil {
			err = errEnded
		}
		return err
	}
}

func (s *Server) isDown() bool {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.down
}

// house returns the collection to which a file belongs, which is read first if it is new; nil
// for a file that is neither a plan nor a log.
func (s *Server) house(path string) *house {
	if !strings.HasSuffix(path, plan.PlanSuffix) && !strings.HasSuffix(path, plan.LogSuffix) {
		return nil
	}
	dir := filepath.Dir(path)
	s.mu.Lock()
	defer s.mu.Unlock()
	root, known := s.rooted[dir]
	if !known {
		root = filepath.Clean(s.Root(dir))
		s.rooted[dir] = root
	}
	h := s.houses[root]
	if h == nil {
		h = newHouse(s, root)
		s.houses[root] = h
		go h.work(s.until)
	}
	return h
}

// everywhere returns the houses that are known.
func (s *Server) everywhere() (all []*house) {
	s.mu.Lock()
	defer s.mu.Unlock()
	for _, h := range s.houses {
		all = append(all, h)
	}
	return all
}

// notify tells the editor something. What cannot be told any more is told to nobody.
func (s *Server) notify(method string, params any) { _ = s.rpc.Notify(s.until, method, params) }

// patience is how long the editor has for an answer.
const patience = 10 * time.Second

// ask asks the editor for something. Where it does not answer, nothing follows from that.
func (s *Server) ask(method string, params any) bool {
	ctx, done := context.WithTimeout(s.until, patience)
	defer done()
	_, err := s.rpc.Callback(ctx, method, params)
	return err == nil
}
