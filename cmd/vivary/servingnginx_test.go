//go:build unix

package main

import (
	"compress/gzip"
	"crypto/tls"
	"crypto/x509"
	"encoding/pem"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"vivary/cmd/internal/served"
	"vivary/internal/servers"
)

// nginx starts nginx with the configuration of the page, and returns the address of the
// server in it and a client that trusts it and follows no redirects.
func (r *recipes) nginx() (address, plain string, client *http.Client) {
	r.t.Helper()
	program, err := exec.LookPath("nginx")
	if err != nil {
		if program, err = exec.LookPath("/usr/sbin/nginx"); err != nil {
			r.t.Fatalf("%v: run testdata/oracles/setup", err)
		}
	}
	known := httptest.NewTLSServer(http.NotFoundHandler()) // its certificate is all that is wanted
	known.Close()
	of := known.TLS.Certificates[0]
	key, err := x509.MarshalPKCS8PrivateKey(of.PrivateKey)
	if err != nil {
		r.t.Fatal(err)
	}
	r.write(r.home+"/pem", string(pem.EncodeToMemory(&pem.Block{Type: "CERTIFICATE", Bytes: of.Certificate[0]})))
	r.write(r.home+"/key", string(pem.EncodeToMemory(&pem.Block{Type: "PRIVATE KEY", Bytes: key})))
	address, plain = servers.FreePort(r.t), servers.FreePort(r.t)
	all := blocks(r.t, "A web server of your own, for some", "nginx")
	if len(all) != 1 {
		r.t.Fatalf("%d configurations", len(all))
	}
	// Where it listens and where it keeps what it needs is all that is another here.
	r.here = append(r.here, "listen 80;", "listen "+plain+";", "listen 443 ssl;", "listen "+address+" ssl;",
		"/etc/ssl/care.pem", r.home+"/pem", "/etc/ssl/care.key", r.home+"/key", "/run/nginx.pid", r.home+"/pid", "/var/log/nginx/error.log", r.home+"/errors",
		"http {", "http { client_body_temp_path "+r.home+"/t1; proxy_temp_path "+r.home+"/t2; fastcgi_temp_path "+r.home+"/t3; uwsgi_temp_path "+r.home+"/t4; scgi_temp_path "+r.home+"/t5;")
	r.write(r.home+"/nginx.conf", r.put(all[0]))
	servers.Started(r.t, address, exec.Command(program, "-p", r.home, "-c", r.home+"/nginx.conf", "-g", "daemon off;"))
	roots := x509.NewCertPool()
	roots.AddCert(known.Certificate())
	return address, plain, &http.Client{
		Transport:     &http.Transport{TLSClientConfig: &tls.Config{RootCAs: roots, ServerName: "example.com"}, DisableCompression: true},
		CheckRedirect: func(*http.Request, []*http.Request) error { return http.ErrUseLastResponse },
	}
}

// get asks for an address.
func get(t *testing.T, client *http.Client, method, address string, headers ...string) (*http.Response, string) {
	t.Helper()
	request, err := http.NewRequest(method, address, nil)
	if err != nil {
		t.Fatal(err)
	}
	for i := 0; i < len(headers); i += 2 {
		request.Header.Set(headers[i], headers[i+1])
	}
	answer, err := client.Do(request)
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	body, err := io.ReadAll(answer.Body)
	if err != nil {
		t.Fatal(err)
	}
	return answer, string(body)
}

// nginx, with the configuration of the page, serves what the commands of the page put
// there as readers need it, and nothing else.
func TestServingNginx(t *testing.T) {
	r := newRecipes(t)
	r.quillmoor()
	ssh := servers.SSH(t)
	known, err := os.ReadFile(ssh.Known)
	if err != nil {
		t.Fatal(err)
	}
	key, err := os.ReadFile(ssh.Key)
	if err != nil {
		t.Fatal(err)
	}
	r.write(r.home+"/.ssh/known_hosts", string(known))
	r.write(r.home+"/.ssh/care", string(key))
	r.here = append([]string{"web@www.quillmoor.example", ssh.User + "@" + ssh.Address}, r.here...)
	commands := blocks(t, "A web server of your own, for some", "bash")
	if len(commands) != 2 {
		t.Fatalf("%d blocks", len(commands))
	}
	if out := r.done(commands[0]); !strings.Contains(out, "Sent 4 of 4 calendars to "+r.web+"/feeds: 8 files") || !strings.Contains(out, "Nothing to send: what is served from sftp://") {
		t.Error(out)
	}
	address, plain, client := r.nginx()
	built, err := os.ReadFile(filepath.Join(r.dir, "feeds/evening.ics"))
	if err != nil {
		t.Fatal(err)
	}
	at := "https://" + address + "/feeds/evening.ics"
	for _, encoding := range []string{"", "gzip", "gzip, deflate, br", "identity"} {
		for _, method := range []string{"GET", "HEAD"} {
			answer, body := get(t, client, method, at, "Accept-Encoding", encoding)
			for name, want := range map[string]string{
				"Content-Type": served.ContentType, "Cache-Control": served.CacheControl(built), "Vary": "Accept-Encoding",
				"X-Robots-Tag": "noindex, nofollow", "Referrer-Policy": "no-referrer", "X-Content-Type-Options": "nosniff",
			} {
				if got := answer.Header.Get(name); got != want {
					t.Errorf("%s %q: %s is %q, not %q", method, encoding, name, got, want)
				}
			}
			packed := strings.Contains(encoding, "gzip")
			if answer.StatusCode != 200 || (answer.Header.Get("Content-Encoding") == "gzip") != packed {
				t.Errorf("%s %q: %s %v", method, encoding, answer.Status, answer.Header)
			}
			if packed && method == "GET" {
				in, err := gzip.NewReader(strings.NewReader(body))
				if err != nil {
					t.Fatal(err)
				}
				text, err := io.ReadAll(in)
				if body = string(text); err != nil {
					t.Error(err)
				}
			}
			if want := map[string]string{"GET": string(built), "HEAD": ""}[method]; body != want {
				t.Errorf("%s %q: %d bytes, and not %d", method, encoding, len(body), len(want))
			}
			tag, date := answer.Header.Get("ETag"), answer.Header.Get("Last-Modified")
			if tag == "" || strings.HasPrefix(tag, "W/") {
				t.Errorf("%q: ETag %q", encoding, tag)
			}
			for _, same := range [][]string{{"If-None-Match", tag}, {"If-Modified-Since", date}} {
				again, body := get(t, client, method, at, "Accept-Encoding", encoding, same[0], same[1])
				if again.StatusCode != 304 || body != "" || again.Header.Get("Cache-Control") != served.CacheControl(built) {
					t.Errorf("%s %q %s: %s", method, encoding, same[0], again.Status)
				}
			}
		}
	}
	for _, path := range []string{"/", "/feeds", "/feeds/", "/feeds/.vivary-sent.json", "/feeds/evening.ics.gz", "/feeds/nothing.ics", "/feeds/.x.ics", "/feeds/c/", "/feeds/../feeds/", "/feeds/a/b/c.ics"} {
		if answer, body := get(t, client, "GET", "https://"+address+path); answer.StatusCode != 404 || strings.Contains(body, "evening") {
			t.Errorf("%s: %s", path, answer.Status)
		}
	}
	for _, method := range []string{"PUT", "DELETE", "POST"} {
		if answer, _ := get(t, client, method, at); answer.StatusCode != 403 {
			t.Errorf("%s: %s", method, answer.Status)
		}
	}
	if answer, _ := get(t, client, "GET", "http://"+plain+"/feeds/evening.ics"); answer.StatusCode != 301 || answer.Header.Get("Location") != "https://127.0.0.1/feeds/evening.ics" {
		t.Errorf("http: %s, %v", answer.Status, answer.Header)
	}
	servesChanges(t, r, client, at)
	servesPrivately(t, r, client, address, commands[1])
}

// privately finds the private address of a calendar in what is printed.
var privately = regexp.MustCompile(`calendar evening +(https://\S+)`)

// servesPrivately holds that the address that is printed is the one that is served, and that
// a key that is renewed takes the old one away.
func servesPrivately(t *testing.T, r *recipes, client *http.Client, address, commands string) {
	t.Helper()
	r.here = append(r.here, "care.quillmoor.example", address)
	out := r.done(commands)
	found := privately.FindStringSubmatch(out)
	if found == nil {
		t.Fatal(out)
	}
	answer, body := get(t, client, "GET", found[1])
	if answer.StatusCode != 200 || !strings.HasPrefix(body, "BEGIN:VCALENDAR") || answer.Header.Get("Content-Type") != served.ContentType {
		t.Errorf("%s: %s", found[1], answer.Status)
	}
	if unfolded := strings.ReplaceAll(body, "\r\n ", ""); !strings.Contains(unfolded, "\r\nSOURCE;VALUE=URI:"+found[1]+"\r\n") {
		t.Errorf("%s does not say its own address", found[1])
	}
	sent, _, _ := strings.Cut(out, "Whoever has one")
	if key := strings.Split(found[1], "/"); strings.Contains(sent, key[len(key)-2]) {
		t.Errorf("a publish prints a key: %s", sent)
	}
	out = r.done("vivary keys --renew evening; vivary publish /srv/www --private --remove")
	if answer, _ := get(t, client, "GET", found[1]); answer.StatusCode != 404 || !strings.Contains(out, "…/evening.ics  removed") {
		t.Errorf("the old address leads to it still: %s, %s", answer.Status, out)
	}
}

// servesChanges holds that a reader who asks whether a calendar is still the same sees
// every publish, also two in one second that leave it as long as it was.
func servesChanges(t *testing.T, r *recipes, client *http.Client, at string) {
	path := filepath.Join(r.dir, "feeds/evening.ics")
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	tags, dates := map[string]bool{}, map[string]bool{}
	for n := range 5 {
		r.write(path, strings.ReplaceAll(string(text), "X-WR-CALNAME:E", "X-WR-CALNAME:"+string(rune('F'+n))))
		r.done("vivary publish /srv/www/feeds")
		for _, encoding := range []string{"", "gzip"} {
			answer, _ := get(t, client, "GET", at, "Accept-Encoding", encoding)
			tag, date := encoding+answer.Header.Get("ETag"), encoding+answer.Header.Get("Last-Modified")
			if tags[tag] || dates[date] {
				t.Errorf("publish %d has the ETag %s or the date %s of one before", n, tag, date)
			}
			tags[tag], dates[date] = true, true
		}
	}
}
