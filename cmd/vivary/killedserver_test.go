//go:build unix

package main

import (
	"bufio"
	"flag"
	"fmt"
	"io"
	"math/rand/v2"
	"net/http"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/keys"
)

var killedFor = flag.Duration("killed-for", 6*time.Second, "for how long servers are started and killed")

// killedOnes is a collection whose server is killed again and again.
type killedOnes struct {
	*rivals
	root, keys string
	noted      []string // what a page said to have written
}

// serve starts a server and returns its address once it listens.
func (s *killedOnes) serve() (*exec.Cmd, string) {
	s.Helper()
	c := exec.Command(s.program, "serve", s.root, "--keys", s.keys, "--listen", "127.0.0.1:0", "--now", noon.Format(time.RFC3339))
	out, err := c.StdoutPipe()
	if err == nil {
		err = c.Start()
	}
	if err != nil {
		s.Fatal(err)
	}
	line, err := bufio.NewReader(out).ReadString('\n')
	_, at, ok := strings.Cut(strings.TrimSpace(line), ", as ")
	if err != nil || !ok {
		s.Fatalf("%s: it does not begin: %q, %v", s.say, line, err)
	}
	return c, at
}

// edit writes the calendars of the one plan or of the other, as an editor does that replaces a
// file.
func (s *killedOnes) edit(plan int) {
	text, err := os.ReadFile(filepath.Join(s.plans[plan], "z.care.hcl"))
	path := filepath.Join(s.root, "z.care.hcl")
	if err == nil {
		err = os.WriteFile(path+".new", text, 0o600)
	}
	if err == nil {
		err = os.Rename(path+".new", path)
	}
	if err != nil {
		s.Error(err)
	}
}

// answer asks a server that may be killed at any moment; "" for no answer, or none that is
// whole.
func answer(method, address, form string) (status int, text string) {
	r, err := http.NewRequest(method, address, strings.NewReader(form))
	if err != nil {
		return 0, ""
	}
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	r.Header.Set("Sec-Fetch-Site", "same-origin")
	got, err := (&http.Transport{DisableKeepAlives: true}).RoundTrip(r)
	if err != nil {
		return 0, ""
	}
	defer got.Body.Close()
	body, err := io.ReadAll(got.Body)
	if err != nil {
		return 0, ""
	}
	return got.StatusCode, string(body)
}

// live edits, reads calendars and notes something until the server is gone, as several people
// do at once. It returns how many calendars were read.
func (s *killedOnes) live(at string, n int, gone <-chan struct{}) (reads int) {
	var wg sync.WaitGroup
	until := func(do func(i int)) {
		wg.Go(func() {
			for i := 0; ; i++ {
				select {
				case <-gone:
					return
				default:
					do(i)
				}
			}
		})
	}
	until(func(i int) { s.edit((n + i) % 2); time.Sleep(20 * time.Millisecond) })
	until(func(i int) {
		ring, err := keys.Read(afero.NewOsFs(), s.keys)
		if err != nil {
			return // not made yet
		}
		name := calendars[i%len(calendars)]
		if status, text := answer(http.MethodGet, at+"/c/"+string(ring.Calendars[name])+"/"+name+".ics", ""); status == http.StatusOK {
			if _, err := of([]byte(text)); err != nil {
				s.Errorf("%s: a calendar is served as %v", s.say, err)
			}
			reads++
		}
	})
	until(func(i int) {
		ring, err := keys.Read(afero.NewOsFs(), s.keys)
		if err != nil {
			return
		}
		key := ring.Page
		for _, k := range ring.Keepers {
			key = k.Key
		}
		note := fmt.Sprintf("seen %d-%d", n, i)
		form := url.Values{"day": {"2026-11-25"}, "note": {note}}
		if status, _ := answer(http.MethodPost, at+"/k/"+string(key)+"/tank/burrow-a/log/remark", form.Encode()); status == http.StatusSeeOther {
			s.noted = append(s.noted, note)
		}
		time.Sleep(10 * time.Millisecond)
	})
	wg.Wait()
	return reads
}

// logs are the lines of all logs.
func (s *killedOnes) logs() (lines []string) {
	s.Helper()
	files, err := filepath.Glob(filepath.Join(s.root, "records", "*"))
	if err != nil || len(files) == 0 {
		s.Fatal("no log", err)
	}
	for _, f := range files {
		if name := filepath.Base(f); !strings.HasSuffix(f, ".care.log") {
			if name != "README.txt" {
				s.Errorf("%s: %s lies beside the logs", s.say, f)
			}
			continue
		}
		text, err := os.ReadFile(f)
		if err != nil {
			s.Fatal(err)
		}
		if len(text) > 0 && text[len(text)-1] != '\n' {
			s.Errorf("%s: the last line of %s is torn: %q", s.say, f, text[max(0, len(text)-80):])
		}
		lines = append(lines, strings.Split(strings.TrimSuffix(string(text), "\n"), "\n")...)
	}
	return lines
}

// TestKilledServer: a server that is killed at any moment, while people edit, read and note,
// leaves every calendar whole, and each line of the log that was said to be written, once. The
// next one serves what a build that knows nothing of it makes, and leaves nothing behind.
func TestKilledServer(t *testing.T) {
	r := rivalry(t)
	s := &killedOnes{rivals: r, root: r.plans[0], keys: filepath.Join(t.TempDir(), "home.keys")}
	first := filepath.Join(t.TempDir(), "z")
	if err := os.Mkdir(first, 0o700); err != nil {
		t.Fatal(err)
	}
	text, err := os.ReadFile(filepath.Join(r.plans[0], "z.care.hcl"))
	if err == nil {
		err = os.WriteFile(filepath.Join(first, "z.care.hcl"), text, 0o600)
	}
	if err != nil {
		t.Fatal(err)
	}
	r.plans[0], r.out = first, filepath.Join(s.root, "feeds")
	if out, err := exec.Command(r.program, "build", s.root, "--now", noon.Format(time.RFC3339)).CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	last := r.set(r.seen)
	stop := r.readers()
	random := rand.New(rand.NewPCG(3, 4))
	kills, asked, half := 0, 0, 0
	for begun := time.Now(); time.Since(begun) < *killedFor && !t.Failed(); kills++ {
		r.say = fmt.Sprintf("kill %d", kills)
		c, at := s.serve()
		gone := make(chan struct{})
		ended := make(chan int)
		go func() { ended <- s.live(at, kills, gone) }()
		time.Sleep(time.Duration(random.Float64() * float64(700*time.Millisecond)))
		if err := c.Process.Signal(syscall.SIGKILL); err != nil {
			t.Fatal(err)
		}
		_ = c.Wait()
		close(gone)
		asked += <-ended
		if left, _ := filepath.Glob(filepath.Join(r.out, ".*.new")); len(left) > 0 {
			half++
		}
		for _, name := range calendars {
			feed, err := r.seen(name + ".ics")
			if err == nil {
				_, err = of(feed)
			}
			if err != nil {
				t.Errorf("%s: %s: %v", r.say, name, err)
			}
		}
		is := r.set(r.known)
		r.rises(last, is)
		last = is
		s.logs()
	}
	reads := stop()
	s.heals(last)
	lines := strings.Join(s.logs(), "\n")
	for _, note := range s.noted {
		if n := strings.Count(lines, "\""+note+"\""); n != 1 {
			t.Errorf("%q stands %d times in the log", note, n)
		}
	}
	if kills < 5 || asked == 0 || len(s.noted) == 0 {
		t.Errorf("%d kills, %d calendars from the server, %d notes", kills, asked, len(s.noted))
	}
	t.Logf("%d kills, %d of them half way through a set of calendars, %d reads of files and %d from the server, %d notes", kills, half, reads, asked, len(s.noted))
}

// ofThisBuild are the properties that say when and how often something was published.
var ofThisBuild = regexp.MustCompile(`(?m)^(DTSTAMP|LAST-MODIFIED|CREATED|SEQUENCE|X-VIVARY-[A-Z-]+)[:;].*\r\n(?: .*\r\n)*`)

// heals holds that a server that goes on serves the plan as it stands, as one does that never
// was killed, and that nothing else lies about.
func (s *killedOnes) heals(last map[string][]byte) {
	s.Helper()
	s.say = "healed"
	s.edit(1)
	c, at := s.serve()
	says := ""
	for n := 0; n < 500 && says != "serving\n"; n++ {
		_, says = answer(http.MethodGet, at+"/healthz", "")
		time.Sleep(20 * time.Millisecond)
	}
	if says != "serving\n" {
		s.Errorf("it says %q", says)
	}
	if err := c.Process.Signal(syscall.SIGTERM); err != nil {
		s.Fatal(err)
	}
	if err := c.Wait(); err != nil {
		s.Errorf("it ends with %v", err)
	}
	is := s.set(s.seen)
	s.rises(last, is)
	s.clean()
	if left, _ := filepath.Glob(s.keys + "*"); len(left) != 1 {
		s.Errorf("beside the keys lies: %v", left)
	}
	fresh := s.TempDir()
	if err := os.CopyFS(fresh, os.DirFS(s.root)); err != nil {
		s.Fatal(err)
	}
	if err := os.RemoveAll(filepath.Join(fresh, "feeds")); err != nil {
		s.Fatal(err)
	}
	if out, err := exec.CommandContext(s.Context(), s.program, "build", fresh, "--now", noon.Format(time.RFC3339)).CombinedOutput(); err != nil {
		s.Fatalf("%v: %s", err, out)
	}
	for name, feed := range is {
		want, err := os.ReadFile(filepath.Join(fresh, "feeds", name+".ics"))
		if err != nil {
			s.Fatal(err)
		}
		if got, want := ofThisBuild.ReplaceAllString(string(feed), ""), ofThisBuild.ReplaceAllString(string(want), ""); got != want {
			s.Errorf("%s is not as a fresh build makes it:\n%s\n\n%s", name, got, want)
		}
	}
}
