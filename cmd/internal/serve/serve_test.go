package serve

import (
	"bytes"
	"io"
	"log/slog"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/spf13/afero"

	"vivary/cmd/internal/builder"
)

// house is a collection that is served.
type house struct {
	*testing.T
	*Server
	root string
	disk afero.Fs
	log  *locked

	mu  sync.Mutex
	now time.Time
}

const begin = `collection "home" {
  title     = "Home"
  time_zone = "Europe/London"
}
keeper "lead" {
}
keeper "relief" {
}
round "evening" {
  at     = "19:30"
  keeper = "lead"
}
calendar "evening" {
}
calendar "morning" {
  kinds = ["water"]
}
room "east" {
  temperature = "22 to 25 C"
}
`

const tub = `enclosure "tub-1" {
  species = "pandinus-imperator"
  room    = "east"
  housing {
    inside = "60 x 45 x 40 cm"
    lid    = "solid, latched"
    vents  = "some"
    depth  = "16 cm"
    hides  = 1
  }
  animals "adult" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 118"
  }
}
`

func serving(t *testing.T) *house {
	t.Helper()
	return servingIn(t, t.TempDir())
}

// servingIn serves a collection that is made in a folder.
func servingIn(t *testing.T, root string) *house {
	t.Helper()
	h := &house{T: t, root: root, disk: afero.NewOsFs(), log: new(locked), now: time.Date(2026, 11, 25, 18, 0, 0, 0, time.UTC)}
	h.put("collection.care.hcl", begin)
	h.put("tub.care.hcl", tub)
	h.Server = New(Options{Disk: h.disk, Keys: filepath.Join(t.TempDir(), "home.keys"), Base: "https://care.example", Clock: h.clock, NoticeAfter: 24 * time.Hour, Secure: true,
		Log:     slog.New(slog.NewJSONHandler(h.log, nil)),
		Builder: &builder.Builder{Root: h.root, Out: filepath.Join(h.root, "feeds"), Now: func(*time.Location) (time.Time, error) { return h.clock(), nil }}})
	h.Rebuild(t.Context())
	if h.state.Load() == nil {
		t.Fatal("nothing is served: " + h.log.String())
	}
	return h
}

// locked is a log that several goroutines write and read.
type locked struct {
	mu sync.Mutex
	w  bytes.Buffer
}

func (l *locked) Write(p []byte) (int, error) {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.w.Write(p)
}

func (l *locked) String() string {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.w.String()
}

func (h *house) logged() string { return h.log.String() }

// forget begins the log anew.
func (h *house) forget() {
	h.log.mu.Lock()
	defer h.log.mu.Unlock()
	h.log.w.Reset()
}

func (h *house) clock() time.Time {
	h.mu.Lock()
	defer h.mu.Unlock()
	return h.now
}

func (h *house) later(d time.Duration) {
	h.mu.Lock()
	defer h.mu.Unlock()
	h.now = h.now.Add(d)
}

func (h *house) put(name, text string) {
	h.Helper()
	if err := os.WriteFile(filepath.Join(h.root, name), []byte(text), 0o600); err != nil {
		h.Fatal(err)
	}
}

// ask sends a request, with headers in pairs.
func (h *house) ask(method, path string, headers ...string) *http.Response {
	h.Helper()
	r := httptest.NewRequest(method, path, nil)
	for i := 0; i < len(headers); i += 2 {
		r.Header.Set(headers[i], headers[i+1])
	}
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	return w.Result()
}

func (h *house) calendar(name string) string {
	return "/c/" + string(h.state.Load().ring.Calendars[name]) + "/" + name + ".ics"
}

func body(t *testing.T, r *http.Response) string {
	t.Helper()
	text, err := io.ReadAll(r.Body)
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// TestDoors: an address leads to what it is of and to nothing else; what is nearly one leads
// nowhere, and looks the same whatever it nearly was.
func TestDoors(t *testing.T) {
	h := serving(t)
	ring := h.state.Load().ring
	evening, lead := string(ring.Calendars["evening"]), string(ring.Keepers["lead"].Key)
	nowhere := body(t, h.ask("GET", "/k/AAAAAAAAAAAAAAAAAAAAAA/"))
	for _, path := range []string{"/", "/c/", "/k/", "/t/", "/c/" + evening, "/c/" + evening + "/morning.ics", "/c/" + evening[:21] + "/evening.ics", "/c/" + evening + "x/evening.ics",
		"/c/" + lead + "/evening.ics", "/k/" + evening + "/", "/k/" + string(ring.Labels) + "/", "/c//evening.ics", "/t/" + string(ring.Labels) + "/tub-1",
		"/t/" + string(ring.Labels.Of("tub-1")) + "/tub-2", "/feeds/evening.ics", "/metrics", "/robots.txt", "/c/" + evening + "/../../k/x"} {
		if got := h.ask("GET", path); got.StatusCode != 404 || body(t, got) != nowhere {
			t.Errorf("%s leads somewhere: %d", path, got.StatusCode)
		}
	}
	for _, path := range []string{"/k/" + lead + "/", "/k/" + string(ring.Page) + "/", "/t/" + string(ring.Labels.Of("tub-1")) + "/tub-1", "/style.css", "/healthz"} {
		got := h.ask("GET", path)
		if got.StatusCode != 200 || got.Header.Get("Referrer-Policy") != "same-origin" || got.Header.Get("X-Robots-Tag") == "" || !strings.HasPrefix(got.Header.Get("Content-Security-Policy"), "default-src 'none'") {
			t.Errorf("%s: %d %v", path, got.StatusCode, got.Header)
		}
	}
	page := h.ask("GET", "/k/"+lead+"/")
	cookies := page.Cookies()
	if len(cookies) != 1 || !cookies[0].HttpOnly || !cookies[0].Secure || cookies[0].Path != "/t" {
		t.Fatal(cookies)
	}
	to := h.ask("GET", "/t/"+string(ring.Labels.Of("tub-1"))+"/tub-1", "Cookie", "keeper="+lead)
	if to.StatusCode != 303 || to.Header.Get("Location") != "/k/"+lead+"/tank/tub-1" {
		t.Error(to.Status, to.Header.Get("Location"))
	}
	if got := h.ask("GET", "/k/"+string(ring.Page)+"/"); len(got.Cookies()) > 0 {
		t.Error("a reader's phone is taken for a keeper's")
	}
}

// TestNothingSecretIsLogged: whatever is asked for, no key is in the log or in the measures.
func TestNothingSecretIsLogged(t *testing.T) {
	h := serving(t)
	ring := h.state.Load().ring
	var secret []string
	for _, k := range ring.Calendars {
		secret = append(secret, string(k))
	}
	for _, k := range ring.Keepers {
		secret = append(secret, string(k.Key))
	}
	secret = append(secret, string(ring.Page), string(ring.Labels), string(ring.Labels.Of("tub-1")))
	for _, k := range secret {
		for _, path := range []string{"/c/" + k + "/evening.ics", "/c/" + k + "/morning.ics", "/k/" + k + "/", "/k/" + k + "/tank/tub-1", "/k/" + k + "/lost", "/t/" + k + "/tub-1", "/x/" + k, "/?" + k} {
			for _, method := range []string{"GET", "HEAD", "POST", k} {
				h.ask(method, path, "Referer", "https://care.example/k/"+k, "Cookie", "keeper="+k, "User-Agent", k)
			}
		}
	}
	h.put("broken.care.hcl", "enclosure \"")
	h.Rebuild(t.Context())
	w := httptest.NewRecorder()
	h.Measures.Handler().ServeHTTP(w, httptest.NewRequest("GET", "/metrics", nil))
	if !strings.Contains(w.Body.String(), `vivary_requests_total{status="200",what="feed"}`) || !strings.Contains(w.Body.String(), `vivary_builds_total{outcome="refused"} 1`) {
		t.Error("the measures lack something")
	}
	for _, k := range secret {
		if strings.Contains(h.log.String(), k) || strings.Contains(w.Body.String(), k) {
			t.Fatal("a key was logged")
		}
	}
	if !strings.Contains(h.log.String(), `"what":"feed","name":"evening.ics"`) {
		t.Error("what was asked for is not logged")
	}
}

// TestRefused: while the plan is refused the calendars stay as they were, the page says so at
// once, and after a day each calendar has one more entry, on each day in the same place;
// once it is put right that is gone.
func TestRefused(t *testing.T) {
	h := serving(t)
	path := h.calendar("evening")
	good := body(t, h.ask("GET", path))
	home := "/k/" + string(h.state.Load().ring.Keepers["lead"].Key) + "/"
	if strings.Contains(body(t, h.ask("GET", home)), "refused") {
		t.Error("a good plan is said to be refused")
	}
	h.later(time.Hour)
	h.put("tub.care.hcl", strings.Replace(tub, `"60 x 45 x 40 cm"`, `"6 x 4 x 4 cm"`, 1))
	h.Rebuild(t.Context())
	if body(t, h.ask("GET", path)) != good {
		t.Error("a refused plan changed a calendar")
	}
	if !strings.Contains(body(t, h.ask("GET", home)), "refused") {
		t.Error("the page does not say that the plan is refused")
	}
	if got := h.ask("GET", "/healthz"); got.StatusCode != 200 || !strings.Contains(body(t, got), "refused") {
		t.Error("health does not say it")
	}
	old := entriesOf(t, good)
	var uid string
	sequence := ""
	for day := range 3 {
		h.later(24 * time.Hour)
		h.Rebuild(t.Context())
		now := body(t, h.ask("GET", path))
		all := entriesOf(t, now)
		var added []*ics.VEvent
		for id, e := range all {
			if old[id] == nil {
				added = append(added, e)
			}
		}
		if len(all) != len(old)+1 || len(added) != 1 {
			t.Fatalf("day %d: %d entries were %d", day, len(all), len(old))
		}
		e := added[0]
		if uid != "" && e.Id() != uid {
			t.Error("another entry each day")
		}
		uid = e.Id()
		if next := e.GetProperty(ics.ComponentPropertySequence).Value; next <= sequence {
			t.Errorf("SEQUENCE %s after %s", next, sequence)
		} else {
			sequence = next
		}
		if got := e.GetProperty(ics.ComponentPropertyDtStart).Value; got != h.clock().Format("20060102") {
			t.Errorf("day %d: it stands on %s", day, got)
		}
		if s := e.GetProperty(ics.ComponentPropertySummary).Value; !strings.Contains(s, "25 Nov") {
			t.Error(s)
		}
		if h.ask("GET", path, "If-None-Match", h.ask("GET", path).Header.Get("Etag")).StatusCode != 304 {
			t.Error("it is not the same twice")
		}
	}
	// A server that begins now knows since when.
	again := New(h.Options)
	again.Rebuild(t.Context())
	w := httptest.NewRecorder()
	again.ServeHTTP(w, httptest.NewRequest("GET", path, nil))
	if len(entriesOf(t, w.Body.String())) < len(old) {
		t.Error("a server that begins while the plan is refused has no calendars")
	}
	h.put("tub.care.hcl", tub)
	h.Rebuild(t.Context())
	for id := range entriesOf(t, body(t, h.ask("GET", path))) {
		if id == uid {
			t.Error("it stays after the plan was put right")
		}
	}
}

func entriesOf(t *testing.T, text string) map[string]*ics.VEvent {
	t.Helper()
	c, err := ics.ParseCalendar(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]*ics.VEvent{}
	for _, e := range c.Events() {
		out[e.Id()] = e
	}
	return out
}
