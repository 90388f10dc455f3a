package serve

import (
	"bytes"
	"compress/gzip"
	"crypto/rand"
	"io"
	"log/slog"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/spf13/afero"

	"vivary/cmd/internal/builder"
	"vivary/cmd/internal/keys"
	"vivary/compile/ical"
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

// TestFeed: a calendar goes out as it was built, but that it says its private address as its
// own, of which the file knows nothing, whole or compressed, with a strong validator
// for each of the two; whoever has it is told so (RFC 9110, 8.8.3, 13).
func TestFeed(t *testing.T) {
	h := serving(t)
	want, err := os.ReadFile(filepath.Join(h.root, "feeds/evening.ics"))
	if err != nil {
		t.Fatal(err)
	}
	path := h.calendar("evening")
	key := string(h.state.Load().ring.Calendars["evening"])
	if bytes.Contains(want, []byte(key)) {
		t.Error("a key is in the folder of calendars")
	}
	want = ical.Sourced(want, "https://care.example"+path)
	if !strings.Contains(strings.ReplaceAll(string(want), "\r\n ", ""), "\r\nSOURCE;VALUE=URI:https://care.example/c/"+key+"/evening.ics\r\n") {
		t.Error("it does not say its address")
	}
	plain, packed := h.ask("GET", path), h.ask("GET", path, "Accept-Encoding", "br, gzip")
	if plain.StatusCode != 200 || body(t, plain) != string(want) || plain.Header.Get("Content-Encoding") != "" {
		t.Error("the plain calendar is not the one that was built")
	}
	z, err := gzip.NewReader(packed.Body)
	if err != nil {
		t.Fatal(err)
	}
	if un, err := io.ReadAll(z); err != nil || string(un) != string(want) || packed.Header.Get("Content-Encoding") != "gzip" {
		t.Error("the compressed calendar is not the one that was built", err)
	}
	tags := []string{plain.Header.Get("Etag"), packed.Header.Get("Etag")}
	if tags[0] == tags[1] || strings.HasPrefix(tags[0], "W/") {
		t.Error("validators", tags)
	}
	for name, value := range map[string]string{"Content-Type": "text/calendar; charset=utf-8", "Content-Disposition": `inline; filename="evening.ics"`,
		"Referrer-Policy": "no-referrer", "X-Robots-Tag": "noindex, nofollow, noarchive", "Vary": "Accept-Encoding", "X-Content-Type-Options": "nosniff"} {
		if got := plain.Header.Get(name); got != value {
			t.Errorf("%s is %q", name, got)
		}
	}
	if !strings.Contains(plain.Header.Get("Cache-Control"), "max-age=1800") {
		t.Error(plain.Header.Get("Cache-Control")) // PT6H asks to be fetched within that
	}
	modified := plain.Header.Get("Last-Modified")
	for _, c := range []struct {
		status  int
		headers []string
	}{
		{304, []string{"If-None-Match", tags[0]}},
		{200, []string{"If-None-Match", tags[1]}},
		{304, []string{"If-None-Match", tags[1], "Accept-Encoding", "gzip"}},
		{304, []string{"If-None-Match", `"other", W/` + tags[0]}},
		{304, []string{"If-None-Match", "*"}},
		{200, []string{"If-None-Match", `"other"`, "If-Modified-Since", modified}},
		{304, []string{"If-Modified-Since", modified}},
		{200, []string{"If-Modified-Since", "Wed, 21 Oct 2015 07:28:00 GMT"}},
		{200, []string{"If-Modified-Since", "yesterday"}},
		{200, []string{"Accept-Encoding", "gzip;q=0"}},
	} {
		for _, method := range []string{"GET", "HEAD"} {
			got := h.ask(method, path, c.headers...)
			text := body(t, got)
			if got.StatusCode != c.status || c.status == 304 && text != "" || method == "HEAD" && text != "" || got.Header.Get("Etag") == "" {
				t.Errorf("%s %v: %d, %d bytes", method, c.headers, got.StatusCode, len(text))
			}
			if c.status == 200 && got.Header.Get("Content-Encoding") != "" && slices.Contains(c.headers, "gzip;q=0") {
				t.Error("compressed for who does not take it")
			}
		}
	}
	if got := h.ask("POST", path); got.StatusCode != 405 || got.Header.Get("Allow") == "" {
		t.Error(got.Status)
	}
}

// TestSource: what a calendar says of its address is what leads to it: after a key is renewed
// the new one, and nothing where the server does not know how it is reached.
func TestSource(t *testing.T) {
	h := serving(t)
	h.put("collection.care.hcl", strings.Replace(begin, "{\n", "{\n  web = \"https://public.example/feeds\"\n", 1))
	says := func() (source, tag string) {
		t.Helper()
		got := h.ask("GET", h.calendar("evening"))
		text := strings.ReplaceAll(body(t, got), "\r\n ", "")
		_, source, _ = strings.Cut(text, "\r\nSOURCE;VALUE=URI:")
		source, _, _ = strings.Cut(source, "\r\n")
		if strings.Contains(text, "public.example") {
			t.Error("it says where it is not served from")
		}
		return source, got.Header.Get("Etag")
	}
	h.Rebuild(t.Context())
	was, tag := says()
	if was != "https://care.example"+h.calendar("evening") {
		t.Error(was)
	}
	if _, err := keys.Renew(h.disk, h.Keys, "calendar evening", rand.Reader); err != nil {
		t.Fatal(err)
	}
	h.Rebuild(t.Context())
	if now, other := says(); now == was || now != "https://care.example"+h.calendar("evening") || other == tag {
		t.Error(now, other)
	}
	for _, base := range []string{"http://[::]:8424", "http://0.0.0.0:8424"} {
		h.Base = base
		h.Rebuild(t.Context())
		if now, _ := says(); now != "" {
			t.Error(now)
		}
	}
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
