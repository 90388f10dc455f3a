//go:build unix

package main

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"vivary/internal/servers"
)

// load is what wrk says of one run.
type load struct{ rate, p99 float64 } // requests a second, milliseconds

var (
	rateIn = regexp.MustCompile(`Requests/sec:\s+([\d.]+)`)
	p99In  = regexp.MustCompile(`99%\s+([\d.]+)(us|ms|s)`)
)

// wrk asks for an address with 64 connections for some seconds.
func wrk(b *testing.B, address string, headers ...string) load {
	b.Helper()
	args := []string{"--latency", "-t2", "-c64", "-d4s"}
	for _, h := range headers {
		args = append(args, "-H", h)
	}
	out, err := exec.Command("wrk", append(args, address)...).CombinedOutput()
	rate, p99 := rateIn.FindSubmatch(out), p99In.FindSubmatch(out)
	if err != nil || rate == nil || p99 == nil || bytes.Contains(out, []byte("Non-2xx")) {
		b.Fatalf("%v: %s", err, out)
	}
	var l load
	l.rate, _ = strconv.ParseFloat(string(rate[1]), 64)
	l.p99, _ = strconv.ParseFloat(string(p99[1]), 64)
	l.p99 *= map[string]float64{"us": 0.001, "ms": 1, "s": 1000}[string(p99[2])]
	return l
}

// BenchmarkNginx: a calendar of some 15 kB compressed, and the answer that it has not changed,
// from vivary serve with its keys, log and measures, from nginx with a file and a log, and from
// a bare handler of the standard library that does nothing else, in turn on the same machine:
// requests a second as ratios to nginx, and the time within which 99 of 100 are answered.
func BenchmarkNginx(b *testing.B) {
	for _, name := range []string{"wrk", "nginx"} {
		if _, err := exec.LookPath(name); err != nil {
			b.Fatalf("%v: run testdata/oracles/setup", err)
		}
	}
	dir := b.TempDir()
	text, ours := servedByUs(b, dir)
	packed := compressed(text)
	theirs := static(b, dir, text, packed)
	nothing := bareServer(b, packed)
	tags := []string{tagOf(b, theirs), tagOf(b, ours), tagOf(b, nothing)}
	var ratio, least, p99 [2][]float64
	for b.Loop() {
		for k, name := range []string{"feed", "unchanged"} {
			var got [3]load
			for i, address := range []string{theirs, ours, nothing} {
				headers := []string{"Accept-Encoding: gzip"}
				if k == 1 {
					headers = append(headers, "If-None-Match: "+tags[i])
				}
				got[i] = wrk(b, address, headers...)
			}
			ratio[k], least[k], p99[k] = append(ratio[k], got[1].rate/got[0].rate), append(least[k], got[2].rate/got[0].rate), append(p99[k], got[1].p99)
			b.Logf("%s: nginx %.0f/s, 99 %% in %.2f ms; vivary %.0f/s, 99 %% in %.2f ms; bare %.0f/s, 99 %% in %.2f ms", name, got[0].rate, got[0].p99, got[1].rate, got[1].p99, got[2].rate, got[2].p99)
		}
	}
	for k, name := range []string{"feed", "unchanged"} {
		slices.Sort(ratio[k])
		slices.Sort(least[k])
		slices.Sort(p99[k])
		b.ReportMetric(ratio[k][len(ratio[k])/2], name+"-ratio")
		b.ReportMetric(least[k][len(least[k])/2], name+"-bare-ratio")
		b.ReportMetric(p99[k][len(p99[k])/2], name+"-p99-ms")
	}
	b.ReportMetric(float64(len(packed))/1000, "kB")
}

// asBare says to a process of this test that it is to be the bare server.
const asBare = "VIVARY_BARE_SERVER"

// bareServer starts a server that sends some bytes to whoever asks, in a process of its own, and
// returns its address.
func bareServer(b *testing.B, packed []byte) string {
	name := filepath.Join(b.TempDir(), "packed")
	if err := os.WriteFile(name, packed, 0o600); err != nil {
		b.Fatal(err)
	}
	at := servers.FreePort(b)
	c := exec.Command(os.Args[0], "-test.run", "^TestBareServer$")
	c.Env = append(os.Environ(), asBare+"="+at+" "+name)
	servers.Started(b, at, c)
	return "http://" + at + "/"
}

// TestBareServer is the bare server, where it is asked for, and nothing else.
func TestBareServer(t *testing.T) {
	at, name, asked := strings.Cut(os.Getenv(asBare), " ")
	if !asked {
		return
	}
	packed, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	const tag = `"bare"`
	t.Fatal(http.ListenAndServe(at, http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		h := w.Header()
		h.Set("Etag", tag)
		if r.Header.Get("If-None-Match") == tag {
			w.WriteHeader(http.StatusNotModified)
			return
		}
		h.Set("Content-Type", "text/calendar; charset=utf-8")
		h.Set("Content-Encoding", "gzip")
		_, _ = w.Write(packed)
	})))
}

func compressed(text []byte) []byte {
	var packed bytes.Buffer
	z, _ := gzip.NewWriterLevel(&packed, gzip.BestCompression)
	_, _ = z.Write(text)
	_ = z.Close()
	return packed.Bytes()
}

// servedByUs serves a copy of Quillmoor by the program, as it is built for people, and returns one
// of its calendars and the address of that.
func servedByUs(b *testing.B, dir string) ([]byte, string) {
	program, root, keys := filepath.Join(dir, "vivary"), filepath.Join(dir, "c"), filepath.Join(dir, "quillmoor.keys")
	if out, err := exec.Command("go", "build", "-o", program, ".").CombinedOutput(); err != nil {
		b.Fatalf("%v: %s", err, out)
	}
	if err := os.CopyFS(root, os.DirFS("../../examples/quillmoor")); err != nil {
		b.Fatal(err)
	}
	at := servers.FreePort(b)
	c := exec.Command(program, "serve", root, "--keys", keys, "--listen", at, "--now", "2026-11-25T18:00", "--measures", servers.FreePort(b))
	log, err := os.Create(filepath.Join(dir, "log"))
	if err != nil {
		b.Fatal(err)
	}
	c.Stderr = log
	if err := c.Start(); err != nil {
		b.Fatal(err)
	}
	b.Cleanup(func() { _ = c.Process.Signal(syscall.SIGTERM); _ = c.Wait() })
	waitFor(b, "http://"+at+"/healthz")
	out, err := exec.Command(program, "keys", root, "--keys", keys, "--address", "http://"+at, "--now", "2026-11-25T18:00").Output()
	if err != nil {
		b.Fatal(err)
	}
	text, err := os.ReadFile(filepath.Join(root, "feeds/morning.ics"))
	if err != nil {
		b.Fatal(err)
	}
	return text, regexp.MustCompile(`http\S+/morning\.ics`).FindString(string(out))
}

// static serves a text from nginx, compressed beforehand, and returns its address.
func static(b *testing.B, dir string, text, packed []byte) string {
	www := filepath.Join(dir, "www")
	if err := os.MkdirAll(www, 0o755); err != nil {
		b.Fatal(err)
	}
	for name, bytes := range map[string][]byte{"morning.ics": text, "morning.ics.gz": packed} {
		if err := os.WriteFile(filepath.Join(www, name), bytes, 0o644); err != nil {
			b.Fatal(err)
		}
	}
	at := servers.FreePort(b)
	conf := fmt.Sprintf(`daemon off;
pid %[1]s/nginx.pid;
error_log %[1]s/error.log;
worker_processes 2;
events { worker_connections 1024; }
http {
  types { text/calendar ics; }
  access_log %[1]s/access.log combined buffer=64k flush=1s;
  keepalive_requests 100000000;
  open_file_cache max=1000;
  client_body_temp_path %[1]s/1; proxy_temp_path %[1]s/2; fastcgi_temp_path %[1]s/3; uwsgi_temp_path %[1]s/4; scgi_temp_path %[1]s/5;
  server { listen %[2]s; root %[1]s/www; gzip_static on; etag on; expires 30m; }
}
`, dir, at)
	if os.Getuid() == 0 {
		conf = "user root;\n" + conf
	}
	if err := os.WriteFile(filepath.Join(dir, "nginx.conf"), []byte(conf), 0o600); err != nil {
		b.Fatal(err)
	}
	servers.Started(b, at, exec.Command("nginx", "-c", filepath.Join(dir, "nginx.conf"), "-e", filepath.Join(dir, "error.log")))
	return "http://" + at + "/morning.ics"
}

// tagOf is the validator of what is compressed.
func tagOf(b *testing.B, address string) string {
	r, err := http.NewRequest(http.MethodGet, address, nil)
	if err != nil {
		b.Fatal(err)
	}
	r.Header.Set("Accept-Encoding", "gzip")
	got, err := http.DefaultTransport.RoundTrip(r)
	if err != nil {
		b.Fatal(err)
	}
	defer got.Body.Close()
	if got.StatusCode != http.StatusOK || got.Header.Get("Content-Encoding") != "gzip" {
		b.Fatal(got.Status, got.Header)
	}
	return got.Header.Get("Etag")
}

func waitFor(b *testing.B, address string) {
	for range 500 {
		if r, err := http.Get(address); err == nil {
			_ = r.Body.Close()
			if r.StatusCode == http.StatusOK {
				return
			}
		}
		time.Sleep(20 * time.Millisecond)
	}
	b.Fatal("it does not begin")
}
