// Package serve serves a collection to phones: its calendars from memory, and pages on which
// is what is due, by private addresses. It watches the plan and the logs and builds again when
// they change; while a plan is refused the last good calendars go on being served.
package serve

import (
	"bytes"
	"compress/gzip"
	"context"
	"log/slog"
	"net/http"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/builder"
	"vivary/cmd/internal/page"
	"vivary/cmd/internal/publish"
	"vivary/cmd/internal/silence"
)

// Options are how a collection is served.
type Options struct {
	Disk    afero.Fs
	Builder *builder.Builder
	Lock    publish.Lock
	Keys    string // the file of keys, outside the collection
	// Base is how the server is reached, without a slash at its end: "https://care.example". It is
	// "" where nobody said so and it listens on all addresses of its machine.
	Base  string
	Clock func() time.Time
	Log   *slog.Logger
	// NoticeAfter is how long a plan is refused until each calendar says so.
	NoticeAfter time.Duration
	// Secure says that the connection is encrypted, here or by a proxy in front.
	Secure bool
}

// Server serves one collection.
type Server struct {
	Options
	Measures *Measures

	pages   *page.Pages
	state   atomic.Pointer[state]
	mu      sync.Mutex // one state is made at a time
	shown   int        // how many results came from elsewhere than a build
	journal journaling
	kick    chan struct{} // somebody wrote something: build
	teller  *silence.Teller
	good    time.Time // when a build succeeded last, or the server began
	bad     time.Time // since when none does, zero where the last one did
}

// New makes a server that has nothing to serve until Rebuild.
func New(o Options) *Server {
	s := &Server{Options: o, Measures: newMeasures(), kick: make(chan struct{}, 1), good: o.Clock()}
	s.teller = silence.NewTeller(o.Disk, o.Keys+".told", o.Log)
	s.journal.open(s)
	s.pages = &page.Pages{Now: o.Clock, Note: s.note}
	return s
}

// ServeHTTP answers a request. Of an address only what it leads to is logged, never the
// address.
func (s *Server) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	begun := time.Now()
	what, name, status, sent := s.answer(w, r)
	took := time.Since(begun)
	s.Measures.answered(what, status, took)
	s.Log.LogAttrs(r.Context(), slog.LevelInfo, "answered", slog.String("method", method(r.Method)), slog.String("what", what), slog.String("name", name),
		slog.Int("status", status), slog.Int("bytes", sent), slog.Duration("took", took))
}

// method is one as it is logged: others may be as long as a header.
func method(m string) string {
	switch m {
	case http.MethodGet, http.MethodHead, http.MethodPost:
		return m
	}
	return "other"
}

// answer answers, and returns what was asked for and what was sent.
func (s *Server) answer(w http.ResponseWriter, r *http.Request) (what, name string, status, sent int) {
	now := s.state.Load()
	path := r.URL.Path
	if rest, ok := strings.CutPrefix(path, "/c/"); ok && now != nil {
		key, file, _ := strings.Cut(rest, "/")
		if d, ok := now.open(key); ok && d.leads(file) {
			common(w.Header())
			if r.Method != http.MethodGet && r.Method != http.MethodHead {
				w.Header().Set("Allow", "GET, HEAD")
				w.WriteHeader(http.StatusMethodNotAllowed)
				return "feed", file, http.StatusMethodNotAllowed, 0
			}
			status, sent = d.feed.serve(w, r)
			return "feed", file, status, sent
		}
	}
	p := &recorder{header: http.Header{}, status: http.StatusOK}
	what, name = s.page(p, r, now)
	status, sent = p.send(w, r, s.Secure)
	return what, name, status, sent
}

// page answers what is no calendar.
func (s *Server) page(w *recorder, r *http.Request, now *state) (what, name string) {
	path := r.URL.Path
	switch {
	case path == "/healthz":
		s.health(w, now)
		return "health", ""
	case now == nil:
		http.Error(w, "not ready yet", http.StatusServiceUnavailable)
		return "early", ""
	case path == page.StylePath:
		page.Style(w)
		return "style", ""
	}
	if rest, ok := strings.CutPrefix(path, "/k/"); ok {
		key, rest, _ := strings.Cut(rest, "/")
		if d, ok := now.open(key); ok && d.visitor != nil {
			s.pages.Serve(w, r, now.house, *d.visitor, "/"+rest)
			if d.visitor.Writes && r.Method == http.MethodGet {
				http.SetCookie(w, &http.Cookie{Name: cookie, Value: key, Path: "/t", MaxAge: kept, HttpOnly: true, Secure: s.Secure, SameSite: http.SameSiteLaxMode})
			}
			return "page", d.visitor.Keeper
		}
	}
	if rest, ok := strings.CutPrefix(path, "/t/"); ok {
		key, tank, _ := strings.Cut(rest, "/")
		if now.ring.Labels.Of(tank).Is(key) {
			s.label(w, r, now, tank)
			return "label", tank
		}
	}
	page.Nothing(w)
	return "nothing", ""
}

// cookie is the name of the one in which a phone keeps whose it is, so that the code at a
// tank opens that tank's page of the keeper who holds it.
const cookie = "keeper"

// kept is for how many seconds it is kept from the last visit on: 400 days, the longest that
// browsers keep one.
const kept = 400 * 24 * 60 * 60

// label answers for the code at a tank: with the keeper's own page of it where the phone is a
// keeper's, else with what anybody in front of it may read.
func (s *Server) label(w *recorder, r *http.Request, now *state, tank string) {
	tank = now.house.Called(tank)
	if c, err := r.Cookie(cookie); err == nil {
		if d, ok := now.open(c.Value); ok && d.visitor != nil {
			http.Redirect(w, r, d.visitor.Home+"/tank/"+tank, http.StatusSeeOther)
			return
		}
	}
	s.pages.Public(w, r, now.house, tank)
}

// common sets the headers that all answers have (RFC 9110; W3C Referrer Policy).
func common(h http.Header) {
	h["X-Robots-Tag"], h["Referrer-Policy"], h["X-Content-Type-Options"] = noRobots, noReferrer, noSniff
}

var (
	noRobots   = []string{"noindex, nofollow, noarchive"}
	noReferrer = []string{"no-referrer"}
	noSniff    = []string{"nosniff"}
)

// policy lets a page have what comes from here and nothing else, and no script at all (W3C
// Content Security Policy 3).
const policy = "default-src 'none'; style-src 'self'; img-src 'self' data:; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"

// recorder keeps an answer until it is whole, so that it can be compressed and has a length.
type recorder struct {
	header http.Header
	body   bytes.Buffer
	status int
}

func (p *recorder) Header() http.Header         { return p.header }
func (p *recorder) Write(b []byte) (int, error) { return p.body.Write(b) }
func (p *recorder) WriteHeader(status int)      { p.status = status }

// least is from how many bytes on a page is compressed.
const least = 1400

var packers = sync.Pool{New: func() any { return gzip.NewWriter(nil) }}

func (p *recorder) send(w http.ResponseWriter, r *http.Request, secure bool) (status, sent int) {
	h := w.Header()
	for name, values := range p.header {
		h[name] = values
	}
	common(h)
	h.Set("Content-Security-Policy", policy)
	// Forms of a page are taken from a page of ours only, which the browser has to say.
	h.Set("Referrer-Policy", "same-origin")
	h.Set("Cross-Origin-Resource-Policy", "same-origin")
	h.Set("Vary", "Accept-Encoding, Cookie")
	if h.Get("Cache-Control") == "" {
		h.Set("Cache-Control", "private, no-store")
	}
	if secure {
		h.Set("Strict-Transport-Security", "max-age=31536000")
	}
	body := p.body.Bytes()
	if len(body) >= least && takesGzip(r.Header) && h.Get("Content-Encoding") == "" {
		var out bytes.Buffer
		z := packers.Get().(*gzip.Writer)
		z.Reset(&out)
		_, _ = z.Write(body)
		_ = z.Close()
		packers.Put(z)
		body = out.Bytes()
		h.Set("Content-Encoding", "gzip")
	}
	h.Set("Content-Length", strconv.Itoa(len(body)))
	w.WriteHeader(p.status)
	if r.Method == http.MethodHead {
		return p.status, 0
	}
	n, _ := w.Write(body)
	return p.status, n
}

// health says whether calendars are served and built: 200, or 503 and since when not.
func (s *Server) health(w http.ResponseWriter, now *state) {
	w.Header().Set("Content-Type", "text/plain; charset=utf-8")
	switch {
	case now == nil:
		w.WriteHeader(http.StatusServiceUnavailable)
		_, _ = w.Write([]byte("not ready yet\n"))
	case now.house.Failed != "":
		w.WriteHeader(http.StatusServiceUnavailable)
		_, _ = w.Write([]byte("no calendar could be written since " + now.house.Since.UTC().Format(time.RFC3339) + "\n"))
	case now.house.Result.Refused():
		_, _ = w.Write([]byte("serving; the plan is refused since " + now.house.Refused.UTC().Format(time.RFC3339) + "\n"))
	default:
		_, _ = w.Write([]byte("serving\n"))
	}
}

// Run rebuilds whenever something changes, and tells people of what nobody saw to, until the
// context ends.
func (s *Server) Run(ctx context.Context, changes <-chan struct{}) {
	var telling sync.WaitGroup
	telling.Go(func() { s.tell(ctx) })
	defer telling.Wait()
	for {
		wake := time.NewTimer(s.untilNext())
		select {
		case <-ctx.Done():
			wake.Stop()
			return
		case <-changes:
		case <-s.kick:
			s.quiet(ctx)
		case <-wake.C:
		}
		wake.Stop()
		s.Rebuild(ctx)
	}
}

// quiet waits until nothing was noted for a blink, as is waited for an edit: whoever ticks
// something off looks at the page next, and mostly ticks off more. Calendars are fetched hours
// later, and are not made in the time of that page.
func (s *Server) quiet(ctx context.Context) {
	most := time.After(patience)
	for {
		select {
		case <-s.kick:
		case <-time.After(settle):
			return
		case <-most:
			return
		case <-ctx.Done():
			return
		}
	}
}
