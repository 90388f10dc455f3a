package serve

import (
	"bytes"
	"context"
	"encoding/base64"
	"fmt"
	"io"
	"log/slog"
	"math/rand/v2"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/builder"
	"vivary/internal/generated"
)

// large serves 1,000 enclosures from a real disk.
func large(b *testing.B) (*Server, string) {
	root := b.TempDir()
	for name, text := range generated.Collection(1000, "Europe/London") {
		name = filepath.Join(root, name)
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			b.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o600); err != nil {
			b.Fatal(err)
		}
	}
	now := time.Date(2026, 11, 25, 18, 0, 0, 0, time.UTC)
	s := New(Options{Disk: afero.NewOsFs(), Keys: filepath.Join(b.TempDir(), "large.keys"), Base: "https://care.example", NoticeAfter: 24 * time.Hour,
		Clock: func() time.Time { return now }, Log: slog.New(slog.NewJSONHandler(io.Discard, nil)),
		Builder: &builder.Builder{Root: root, Out: filepath.Join(root, "feeds"), Now: func(*time.Location) (time.Time, error) { return now, nil }}})
	s.Rebuild(b.Context())
	ctx, cancel := context.WithCancel(b.Context())
	changes := s.Watch(ctx)
	ended := make(chan struct{})
	go func() { s.Run(ctx, changes); close(ended) }()
	b.Cleanup(func() { cancel(); <-ended })
	return s, root
}

func (s *Server) got(path string) *httptest.ResponseRecorder {
	w := httptest.NewRecorder()
	s.ServeHTTP(w, httptest.NewRequest("GET", path, nil))
	return w
}

// median of some times, in milliseconds.
func median(all []time.Duration) float64 {
	slices.Sort(all)
	return all[len(all)/2].Seconds() * 1000
}

var titleIn = regexp.MustCompile(`title   = "Tub \d+"`)

// BenchmarkEdit: from the moment at which a file of a house of 1,000 enclosures is written
// until its calendar is served, the time that it is waited for more included.
func BenchmarkEdit(b *testing.B) {
	s, root := large(b)
	name := filepath.Join(root, "rooms/room-7.care.hcl")
	text, err := os.ReadFile(name)
	if err != nil {
		b.Fatal(err)
	}
	at := titleIn.Find(text)
	var took []time.Duration
	for b.Loop() {
		was := s.state.Load()
		text = bytes.Replace(text, at, fmt.Appendf(nil, `title   = "Tub %d"`, 2000+len(took)), 1)
		at = titleIn.Find(text)
		begun := time.Now()
		if err := os.WriteFile(name, text, 0o600); err != nil {
			b.Fatal(err)
		}
		for changed := false; !changed; {
			if time.Sleep(time.Millisecond); time.Since(begun) > 30*time.Second {
				b.Fatalf("%s is not served: %s", name, at)
			}
			now := s.state.Load()
			for file, f := range now.feeds {
				changed = changed || was.feeds[file].plain.tag != f.plain.tag
			}
		}
		took = append(took, time.Since(begun))
	}
	b.ReportMetric(median(took), "median-ms")
	b.ReportMetric(median(took)-settle.Seconds()*1000, "after-settling-ms")
}

// BenchmarkTick: a form is sent from the page of a house of 1,000 enclosures, until the page
// without what was ticked has been made.
func BenchmarkTick(b *testing.B) {
	s, _ := large(b)
	home := "/k/"
	for _, k := range s.state.Load().ring.Keepers {
		home += string(k.Key) + "/"
		break
	}
	if home == "/k/" {
		home += string(s.state.Load().ring.Page) + "/"
	}
	var took, pages []time.Duration
	for b.Loop() {
		text := s.got(home).Body.String()
		form, action := firstForm(text)
		if form == nil {
			b.Fatal("nothing to tick on the page")
		}
		time.Sleep(2 * time.Second) // the calendars are built behind the last tick
		begun := time.Now()
		r := httptest.NewRequest("POST", action, strings.NewReader(form.Encode()))
		r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
		r.Header.Set("Sec-Fetch-Site", "same-origin")
		r.Header.Set("Origin", "https://care.example")
		w := httptest.NewRecorder()
		s.ServeHTTP(w, r)
		if w.Code != http.StatusSeeOther {
			b.Fatal(w.Code, w.Body.String())
		}
		asked := time.Now()
		after := s.got(home).Body.String()
		took, pages = append(took, time.Since(begun)), append(pages, time.Since(asked))
		if next, _ := firstForm(after); next != nil && next.Encode() == form.Encode() {
			b.Fatal("what was ticked is on the page still")
		}
	}
	b.ReportMetric(median(took), "median-ms")
	b.ReportMetric(median(pages), "page-ms")
}

var (
	formIn   = regexp.MustCompile(`(?s)<form[^>]* action="([^"]*/tick)"[^>]*>(.*?)</form>`)
	fieldIn  = regexp.MustCompile(`<input type="hidden" name="([^"]*)" value="([^"]*)"`)
	buttonIn = regexp.MustCompile(`<button[^>]* name="tick" value="([^"]*)"`)
)

// firstForm is the first thing on a page that can be ticked.
func firstForm(page string) (url.Values, string) {
	m := formIn.FindStringSubmatch(page)
	if m == nil {
		return nil, ""
	}
	v := url.Values{}
	for _, f := range fieldIn.FindAllStringSubmatch(m[2], -1) {
		v.Set(f[1], f[2])
	}
	if t := buttonIn.FindStringSubmatch(m[2]); t != nil {
		v.Set("tick", t[1])
	}
	return v, m[1]
}

// BenchmarkTenThousand: what a server needs for 10,000 calendars of 15 kB compressed.
func BenchmarkTenThousand(b *testing.B) {
	disk, dir := afero.NewOsFs(), b.TempDir()
	rng := rand.New(rand.NewPCG(1, 2))
	var names []string
	packed := 0
	for i := range 10_000 {
		var text strings.Builder
		text.WriteString("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//vivary//care calendar//EN\r\nREFRESH-INTERVAL;VALUE=DURATION:PT6H\r\n")
		var noise [48]byte
		for range 278 {
			for k := range noise {
				noise[k] = byte(rng.Uint32())
			}
			text.WriteString("BEGIN:VEVENT\r\nSUMMARY:" + base64.StdEncoding.EncodeToString(noise[:]) + "\r\nDESCRIPTION:" + strings.Repeat("Fresh water: all here\\n", 20) + "\r\nEND:VEVENT\r\n")
		}
		text.WriteString("END:VCALENDAR\r\n")
		name := fmt.Sprintf("c%05d.ics", i)
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text.String()), 0o600); err != nil {
			b.Fatal(err)
		}
		names = append(names, name)
	}
	for b.Loop() {
		runtime.GC()
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		all := load(disk, dir, names, nil, nil, func(string) string { return "" })
		runtime.GC()
		runtime.ReadMemStats(&after)
		packed = 0
		for _, f := range all {
			packed += len(f.packed)
		}
		b.ReportMetric(float64(after.HeapInuse-before.HeapInuse)/(1<<20), "MiB")
		b.ReportMetric(float64(packed)/float64(len(all))/1000, "kB/calendar")
	}
}
