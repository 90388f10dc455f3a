//go:build unix

package main

import (
	"bytes"
	"compress/gzip"
	"crypto/tls"
	"crypto/x509"
	"encoding/pem"
	"fmt"
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

// servingPage is the page of recipes, whose blocks are run here.
const servingPage = "examples/SERVING.md"

// blocks are the blocks of that page in a language, beneath a heading.
func blocks(t *testing.T, head, lang string) (texts []string) {
	t.Helper()
	for _, f := range fences(t, servingPage) {
		if f.head == head && f.lang == lang {
			texts = append(texts, f.text)
		}
	}
	if texts == nil {
		t.Fatalf("%s has no block of %s beneath %q", servingPage, lang, head)
	}
	return texts
}

// recipes is a machine on which blocks of the page are run as they stand, but for the
// addresses, which are those of servers of the test.
type recipes struct {
	t    *testing.T
	dir  string // the folder in which they are run
	home string
	web  string // what is /srv/www on the page
	env  []string
	here []string // what stands on the page, and in its place here
}

func newRecipes(t *testing.T) *recipes {
	r := &recipes{t: t, dir: t.TempDir(), home: t.TempDir(), web: filepath.Join(t.TempDir(), "www")}
	// nginx reads as another user.
	for _, dir := range []string{filepath.Dir(filepath.Dir(r.web)), filepath.Dir(r.web)} {
		if err := os.Chmod(dir, 0o755); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Mkdir(r.web, 0o755); err != nil {
		t.Fatal(err)
	}
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	bin := filepath.Join(r.home, "bin")
	if err := os.MkdirAll(filepath.Join(bin, "the"), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(self, filepath.Join(bin, "the", "vivary")); err != nil {
		t.Fatal(err)
	}
	r.write(filepath.Join(bin, "vivary"), "#!/bin/sh\nexec '"+bin+"/the/vivary' --now 2026-11-25 \"$@\"\n")
	if err := os.Chmod(filepath.Join(bin, "vivary"), 0o755); err != nil {
		t.Fatal(err)
	}
	r.env = []string{"PATH=" + bin + ":" + os.Getenv("PATH"), "HOME=" + r.home, "LC_ALL=C.UTF-8"}
	r.here = []string{"/srv/www", r.web}
	return r
}

func (r *recipes) write(path, text string) {
	r.t.Helper()
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		r.t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		r.t.Fatal(err)
	}
}

// put puts what is here in the place of what stands on the page.
func (r *recipes) put(text string) string { return strings.NewReplacer(r.here...).Replace(text) }

// do runs a block, by the shell that its language names.
func (r *recipes) do(text string, env ...string) (string, error) {
	cmd := exec.Command("bash", "-e", "-c", r.put(text))
	cmd.Dir, cmd.Env = r.dir, append(r.env, env...)
	out, err := cmd.CombinedOutput()
	return string(out), err
}

// done holds that a block does what it says.
func (r *recipes) done(text string, env ...string) string {
	r.t.Helper()
	out, err := r.do(text, env...)
	if err != nil {
		r.t.Fatalf("%s\n%v\n%s", text, err, out)
	}
	return out
}

func (r *recipes) quillmoor() {
	r.t.Helper()
	if err := os.CopyFS(r.dir, os.DirFS(filepath.Join(repository, "examples/quillmoor"))); err != nil {
		r.t.Fatal(err)
	}
}

// The commands for object storage do what the page says of them, with a server that others
// wrote.
func TestServingObjects(t *testing.T) {
	r := newRecipes(t)
	r.quillmoor()
	store := servers.Objects(t, "quillmoor-care")
	r.here = append(r.here, "https://objects.quillmoor.example", "http://"+store.Address)
	r.env = append(r.env, "AWS_ACCESS_KEY_ID="+servers.StoreKey, "AWS_SECRET_ACCESS_KEY="+servers.StoreSecret)
	for _, text := range blocks(t, "Object storage behind a CDN, for many readers", "bash") {
		if out := r.done(text); !strings.Contains(out, "Sent 4 of 4 calendars to s3://quillmoor-care/feeds: 4 files") || strings.Contains(out, servers.StoreSecret) {
			t.Error(out)
		}
		if out := r.done(text); !strings.Contains(out, "Nothing to send") {
			t.Error(out)
		}
	}
	text, err := os.ReadFile(filepath.Join(store.Dir, "quillmoor-care/feeds/evening.ics"))
	built, e := os.ReadFile(filepath.Join(r.dir, "feeds/evening.ics"))
	if err != nil || e != nil || !bytes.Equal(text, built) {
		t.Errorf("%v, %v: another one is stored", err, e)
	}
	r.says(served.CacheControl(built))
	r.says(fmt.Sprintf("are %d KB, and %d KB compressed", len(built)/1000, (len(served.Gzip(built))+500)/1000))
}

// says holds that the page says something.
func (r *recipes) says(text string) {
	r.t.Helper()
	if !strings.Contains(page(r.t, servingPage), text) {
		r.t.Errorf("%s does not say: %s", servingPage, text)
	}
}

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

// The ways to build a hundred collections do what the page says of them: all are built and
// published, and one that is refused keeps no other away.
func TestServingManyCollections(t *testing.T) {
	names := []string{"alder", "birch", "cedar", "dogwood", "elder"}
	setUp := func(t *testing.T) *recipes {
		r := newRecipes(t)
		for _, name := range names {
			r.done("vivary start collections/" + name)
		}
		return r
	}
	published := func(r *recipes, not string) {
		r.t.Helper()
		for _, name := range names {
			found, err := filepath.Glob(filepath.Join(r.web, name, "*.ics"))
			if err != nil || (len(found) > 0) != (name != not) {
				r.t.Errorf("%s: %v, %v", name, found, err)
			}
		}
	}
	refused := func(r *recipes, name string) {
		r.write(filepath.Join(r.dir, "collections", name, "zz.care.hcl"), "nonsense {\n}\n")
	}
	ways := blocks(t, "A hundred collections side by side", "bash")
	if len(ways) != 3 {
		t.Fatalf("%d ways", len(ways))
	}
	t.Run("cron", func(t *testing.T) {
		r := setUp(t)
		refused(r, "cedar")
		out, err := r.do(ways[0])
		if err == nil || !strings.Contains(out, "cedar") {
			t.Errorf("%v, %s", err, out)
		}
		published(r, "cedar")
		if err := os.Remove(filepath.Join(r.dir, "collections/cedar/zz.care.hcl")); err != nil {
			t.Fatal(err)
		}
		r.done(ways[0])
		published(r, "")
	})
	t.Run("jobs", func(t *testing.T) {
		r := setUp(t)
		refused(r, "birch")
		for job := range 3 {
			r.done(ways[1], fmt.Sprintf("JOB=%d", job), "JOBS=3")
		}
		published(r, "birch")
		if failed, err := os.ReadFile(filepath.Join(r.dir, "failed")); err != nil || string(failed) != "birch\n" {
			t.Errorf("%v, %q", err, failed)
		}
	})
	t.Run("queue", func(t *testing.T) {
		r := setUp(t)
		refused(r, "elder")
		r.write(filepath.Join(r.dir, "queue"), strings.Join(append(names, names...), "\n")+"\n")
		r.done(ways[2])
		published(r, "elder")
		if again, err := os.ReadFile(filepath.Join(r.dir, "again")); err != nil || string(again) != "elder\n" {
			t.Errorf("%v, %q", err, again)
		}
	})
}
