//go:build unix

package caldav

import (
	"context"
	"io"
	"log"
	"net/http"
	"net/http/httptest"
	"net/http/httputil"
	"net/url"
	"slices"
	"strings"
	"sync"
	"testing"
)

// between stands between us and a server. It counts requests, and can do something before one,
// or break the line at one, before or after the server has heard of it, and from then on.
type between struct {
	url   string
	mu    sync.Mutex
	count int
	write int // requests that write

	before func(n int, r *http.Request) // may be nil
	die    int                          // the request at which the line breaks, from 1; 0 for none
	heard  bool                         // the server hears of that one, and its answer is lost
}

// stand puts one before a list.
func stand(t *testing.T, p *phone) *between {
	t.Helper()
	target, err := url.Parse(p.url)
	if err != nil {
		t.Fatal(err)
	}
	b := &between{}
	proxy := &httputil.ReverseProxy{ErrorLog: log.New(io.Discard, "", 0), Rewrite: func(r *httputil.ProxyRequest) {
		r.SetURL(&url.URL{Scheme: target.Scheme, Host: target.Host})
	}}
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		b.mu.Lock()
		b.count++
		n := b.count
		if r.Method == "PUT" || r.Method == "DELETE" {
			b.write++
		}
		before, die, heard := b.before, b.die, b.heard
		b.mu.Unlock()
		if before != nil {
			before(n, r)
		}
		if die == 0 || n < die {
			proxy.ServeHTTP(w, r)
			return
		}
		if n == die && heard {
			proxy.ServeHTTP(httptest.NewRecorder(), r)
		}
		panic(http.ErrAbortHandler)
	}))
	t.Cleanup(server.Close)
	b.url = server.URL + target.Path
	return b
}

// breaks has the line break at a request from now on; 0 mends it.
func (b *between) breaks(at int, heard bool) {
	b.mu.Lock()
	defer b.mu.Unlock()
	b.die, b.heard = at, heard
}

// writes returns how many requests wrote, and begins to count anew.
func (b *between) writes() (n int) {
	b.mu.Lock()
	defer b.mu.Unlock()
	n, b.write = b.write, 0
	return n
}

// Wherever the server, the line or the program dies, nothing is lost and nothing is there
// twice: what was ticked is in the log once, and the next run brings the list to where one
// that nothing hindered brings it.
func TestDiesAtEachRequest(t *testing.T) {
	onServers(t, func(t *testing.T, s *server) {
		// scene is a list that has everything to do: something ticked, something that is not
		// due any more, something changed, something that is missing.
		scene := func(t *testing.T) (*home, *phone) {
			h, p := newHome(t), s.list(t)
			if _, err := h.sync(p.url).Run(context.Background()); err != nil {
				t.Fatal(err)
			}
			h.now = evening
			p.edit("25 19:30 Fresh water", apps["Tasks.org"])
			path, _ := p.at("25 08:00 Mist")
			if status, _, _, err := request("DELETE", p.url[:strings.Index(p.url[8:], "/")+8]+path, nil, ""); err != nil || status/100 != 2 {
				t.Fatal(status, err)
			}
			h.write("records/2026.care.log", "2026-11-25 08:10 tub-1 done look\n2026-11-25 08:10 tub-1 done heat\n2026-11-25 08:10 tub-2 done heat\n2026-11-25 08:10 tub-3 done heat\n")
			return h, p
		}
		h, p := scene(t)
		line := stand(t, p)
		out, err := h.sync(line.url).Run(context.Background())
		if err != nil || out.New == 0 || out.Changed == 0 || out.Gone == 0 || len(out.Lines) != 3 {
			t.Fatalf("%+v, %v", out, err)
		}
		want, said, requests := p.shown(), h.log(), line.count
		for n := 1; n <= requests; n++ {
			for _, heard := range []bool{false, true} {
				h, p := scene(t)
				line := stand(t, p)
				line.breaks(n, heard)
				if out, err := h.sync(line.url).Run(context.Background()); err == nil {
					t.Errorf("request %d: no error: %+v", n, out)
				}
				line.breaks(0, false)
				if n > 1 && h.log() != said {
					t.Errorf("request %d: before anything is changed the log is\n%s", n, h.log())
				}
				if _, err := h.sync(line.url).Run(context.Background()); err != nil {
					t.Errorf("request %d: then %v", n, err)
				}
				if got := p.shown(); !slices.Equal(got, want) {
					t.Errorf("request %d, heard %t: the list is\n%s\nand without it\n%s", n, heard, strings.Join(got, "\n"), strings.Join(want, "\n"))
				}
				if h.log() != said {
					t.Errorf("request %d: the log is\n%s", n, h.log())
				}
				line.writes()
				_, err := h.sync(line.url).Run(context.Background())
				if writes := line.writes(); err != nil || writes > 0 {
					t.Errorf("request %d: a third run writes %d times, %v", n, writes, err)
				}
			}
		}
	})
}

// What somebody ticks between our look and our change is never written over: it is read, and
// goes into the log.
func TestTickedMeanwhile(t *testing.T) {
	onServers(t, func(t *testing.T, s *server) {
		for _, method := range []string{"PUT", "DELETE"} {
			h, p := newHome(t), s.list(t)
			if _, err := h.sync(p.url).Run(context.Background()); err != nil {
				t.Fatal(err)
			}
			h.now = evening
			title := "25 08:00 Lid shut"
			log := "2026-11-25 08:10 tub-1 done look\n"
			if method == "DELETE" {
				log += "2026-11-25 08:10 tub-2 done look\n2026-11-25 08:10 tub-3 done look\n"
			}
			h.write("records/2026.care.log", log)
			line := stand(t, p)
			var once sync.Once
			line.before = func(_ int, r *http.Request) {
				if r.Method == method {
					once.Do(func() { p.edit(title, apps["Tasks.org"]) })
				}
			}
			if _, err := h.sync(line.url).Run(context.Background()); err != nil {
				t.Fatal(err)
			}
			if shown := p.shown(); !slices.ContainsFunc(shown, func(s string) bool { return strings.HasPrefix(s, "[x] "+title) }) {
				t.Errorf("%s: what was ticked is not there as it was: %q", method, shown)
			}
			for _, tub := range []string{"tub-1", "tub-2", "tub-3"} {
				if n := strings.Count(h.log(), tub+" done look"); n != 1 {
					t.Errorf("%s: %s stands %d times:\n%s", method, tub, n, h.log())
				}
			}
		}
	})
}

// Several runs at once, of one collection: each comes to its end, nothing is there twice.
func TestRunsAtOnce(t *testing.T) {
	onServers(t, func(t *testing.T, s *server) {
		h, p := newHome(t), s.list(t)
		for round := range 2 {
			var wg sync.WaitGroup
			for range 3 {
				wg.Go(func() {
					if _, err := h.sync(p.url).Run(context.Background()); err != nil {
						t.Error(err)
					}
				})
			}
			wg.Wait()
			if round == 0 {
				h.now = evening
				p.edit("25 19:30 Fresh water", apps["Reminders"])
				h.write("records/2026.care.log", "2026-11-25 08:10 tub-1 done look\n")
			}
		}
		shown := p.shown()
		if len(slices.Compact(slices.Clone(shown))) != len(shown) {
			t.Errorf("%q", shown)
		}
		if n := strings.Count(h.log(), "done water"); n != 3 {
			t.Errorf("%d lines:\n%s", n, h.log())
		}
	})
}
