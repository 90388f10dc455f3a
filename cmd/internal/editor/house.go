package editor

import (
	"context"
	"maps"
	"path/filepath"
	"sync"
	"time"

	"vivary/cmd/internal/builder"
	"vivary/cmd/internal/protocol"
	"vivary/compile"
	"vivary/plan/source"
	"vivary/schema/civil"
)

// house is a collection of which files are open. It is compiled behind what is typed: what
// was typed while it compiled is compiled together, next.
type house struct {
	s       *Server
	root    string
	builder *builder.Builder
	wake    chan struct{}
	// For the goroutine that works: what the editor shows, and the lines of the files of which
	// something is found.
	shown shown
	lines map[source.ID]*protocol.Lines
	again *time.Timer // until what stands beside the lines is asked for again

	mu       sync.Mutex
	docs     map[string]*document // that are open, by path
	edits    int                  // how often something has changed
	stale    bool                 // the disk is to be looked at
	now      *state               // the last that was compiled
	compiled chan struct{}        // is closed when the next is
}

// state is a collection as it was compiled, with the texts that were open then.
type state struct {
	result *compile.Result
	err    error // why there is none
	docs   map[string]*document
	edits  int
}

func newHouse(s *Server, root string) *house {
	return &house{
		s: s, root: root, builder: &builder.Builder{Root: root, Out: builder.Feeds(root), Now: s.Now},
		wake: make(chan struct{}, 1), docs: map[string]*document{}, stale: true, edits: 1, compiled: make(chan struct{}),
	}
}

func (h *house) open(path string, d *document) {
	h.touch(true, func() { h.docs[path] = d })
}

func (h *house) close(path string) {
	h.touch(true, func() { delete(h.docs, path) })
}

// look has the disk looked at again.
func (h *house) look() { h.touch(true, func() {}) }

func (h *house) change(path string, version int, changes []protocol.TextDocumentContentChangeEvent) {
	h.touch(false, func() {
		d := h.docs[path]
		if d == nil {
			d = &document{uri: uriOf(path)} // it was never opened: what it was is not known
		}
		text := d.text
		for _, c := range changes {
			text = protocol.Changed(text, c, h.s.encoding)
		}
		h.docs[path] = &document{d.uri, version, text}
	})
}

// touch changes what is open, and has the collection compiled.
func (h *house) touch(stale bool, change func()) {
	h.mu.Lock()
	change()
	h.edits++
	h.stale = h.stale || stale
	h.mu.Unlock()
	h.kick()
}

func (h *house) kick() {
	select {
	case h.wake <- struct{}{}:
	default: // it is known already
	}
}

// work compiles when something has changed, and when a new day begins. An editor that does not
// tell when others change files is not asked: the disk is looked at again and again.
func (h *house) work(ctx context.Context) {
	h.kick()
	every := lookSeldom
	if !h.s.client.Workspace.DidChangeWatchedFiles.DynamicRegistration {
		every = lookOften
	}
	look := time.NewTicker(every)
	defer look.Stop()
	for {
		next := time.NewTimer(h.untilTomorrow())
		select {
		case <-ctx.Done():
			next.Stop()
			return
		case <-next.C:
		case <-look.C:
			h.mu.Lock()
			h.stale = true
			h.mu.Unlock()
		case <-h.wake:
		}
		next.Stop()
		h.compile()
	}
}

// How often the disk is looked at without being told of a change: where an editor tells of
// none, and where it does, since what tells it may miss something.
const (
	lookOften  = 4 * time.Second
	lookSeldom = time.Minute
)

// hourly is how long nothing is compiled at the most: a clock may jump.
const hourly = time.Hour

// untilTomorrow is how long it is until the next day where the animals are.
func (h *house) untilTomorrow() time.Duration {
	h.mu.Lock()
	defer h.mu.Unlock()
	if h.now == nil || h.now.result == nil || h.now.result.Plan.Location == nil {
		return hourly
	}
	loc := h.now.result.Plan.Location
	now, err := h.s.Now(loc)
	if err != nil {
		return hourly
	}
	return max(time.Second, min(hourly, (civil.FromTime(now)+1).At(0, loc).Sub(now)+time.Second))
}

// compile compiles what is open and what the disk has, and shows what was found.
func (h *house) compile() {
	h.mu.Lock()
	next := &state{docs: maps.Clone(h.docs), edits: h.edits}
	stale, first := h.stale, h.now == nil
	h.stale = false
	h.mu.Unlock()

	ended := func() {}
	if first {
		ended = h.s.progress("Reading " + filepath.Base(h.root))
	}
	texts := make(map[string][]byte, len(next.docs))
	for path, d := range next.docs {
		texts[path] = d.text
	}
	if stale {
		h.builder.Open(texts)
		next.result, next.err = h.builder.Compile(h.s.Disk)
	} else {
		next.result, next.err = h.builder.Typed(texts)
	}
	ended()
	h.mu.Lock()
	if next.result == nil { // the folder is gone: it is looked for again when something is typed
		h.stale = true
	}
	h.now = next
	close(h.compiled)
	h.compiled = make(chan struct{})
	h.mu.Unlock()
	h.show(next)
}

// settled waits until all that was typed is compiled, and returns that. It is nil where the
// request was taken back, or there is no collection.
func (h *house) settled(ctx context.Context) *state {
	for {
		h.mu.Lock()
		now, edits, wait := h.now, h.edits, h.compiled
		h.mu.Unlock()
		if now != nil && now.edits >= edits {
			if now.result == nil {
				return nil
			}
			return now
		}
		select {
		case <-wait:
		case <-ctx.Done():
			return nil
		}
	}
}

// latest returns what was compiled last, with a document as it is typed now. It waits for the
// first compilation only.
func (h *house) latest(ctx context.Context, path string) (*state, *document) {
	for {
		h.mu.Lock()
		now, doc, wait := h.now, h.docs[path], h.compiled
		h.mu.Unlock()
		if now != nil {
			if now.result == nil || doc == nil {
				return nil, nil
			}
			return now, doc
		}
		select {
		case <-wait:
		case <-ctx.Done():
			return nil, nil
		}
	}
}

// progress tells that something takes a while, until what it returns is called.
func (s *Server) progress(title string) (ended func()) {
	if !s.client.Window.WorkDoneProgress {
		return func() {}
	}
	s.mu.Lock()
	s.tokens++
	token := "vivary-" + itoa(s.tokens)
	s.mu.Unlock()
	if !s.ask("window/workDoneProgress/create", protocol.WorkDoneProgressCreateParams{Token: token}) {
		return func() {}
	}
	s.notify("$/progress", protocol.ProgressParams{Token: token, Value: protocol.WorkDoneProgress{Kind: "begin", Title: title}})
	return func() {
		s.notify("$/progress", protocol.ProgressParams{Token: token, Value: protocol.WorkDoneProgress{Kind: "end"}})
	}
}
