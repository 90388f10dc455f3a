package serve

import (
	"bytes"
	"compress/gzip"
	"crypto/rand"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"vivary/cmd/internal/keys"
	"vivary/compile/ical"
)

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
	h.Base = ""
	h.Rebuild(t.Context())
	if now, _ := says(); now != "" {
		t.Error(now)
	}
}
